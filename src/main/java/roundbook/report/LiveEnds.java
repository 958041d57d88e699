package roundbook.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.NeckFit.Fault;
import roundbook.page.Cell;
import roundbook.plan.PiecePlan;
import roundbook.report.LiveMap.PieceColumn;
import roundbook.report.LiveMap.RoundColumn;
import roundbook.report.LiveMap.RuleLine;
import roundbook.report.LiveMap.WallColumn;
import roundbook.stack.PlacedLog;

/** Whether the ends of each log hold their marks, as formulas of the diameters hewn. */
final class LiveEnds {
  private static final String PLUS = " + ";

  private final Live live;
  private final LiveMap map;

  LiveEnds(Live live) {
    this.live = live;
    this.map = live.map();
  }

  /** Returns the words of a fault in the workbook's language. */
  static String words(CrewContext context, Fault fault) {
    return context.text("fault." + fault.name().toLowerCase(Locale.ROOT));
  }

  /** Returns a cell of a log's ends. */
  Cell cell(PiecePlan plan, PieceColumn column) {
    return switch (column) {
      case BUTT_FAULTS -> Cell.formula(faults(plan, true), raw(plan.buttFit()));
      case TIP_FAULTS -> Cell.formula(faults(plan, false), raw(plan.tipFit()));
      case WEAK ->
          Cell.formula(
              "IF(OR(" + weak(plan, true) + "," + weak(plan, false) + "),1,0)",
              plan.buttFit().weak() || plan.tipFit().weak() ? 1 : 0);
      case SAID -> Cell.formula(said(plan), saidNow(plan));
      default -> Cell.formula(verdict(plan), verdictNow(plan));
    };
  }

  private String raw(NeckFit fit) {
    return fit.faults().stream()
        .map(fault -> words(live.context(), fault) + PLUS)
        .collect(Collectors.joining());
  }

  /** Returns what a page says of a log's ends as planned; empty when all marks show. */
  String saidNow(PiecePlan plan) {
    String verdict = verdictNow(plan);
    return verdict.equals(live.text("live.ok")) ? "" : sentence(plan, verdict);
  }

  private String sentence(PiecePlan plan, String verdict) {
    return live.text("live.ends", plan.placed().wall().name(), verdict);
  }

  /** Returns what is wrong with the log used instead, or with the ends. */
  private String said(PiecePlan plan) {
    PlacedLog placed = plan.placed();
    String source = map.piece(placed.round(), placed.wall(), PieceColumn.SOURCE);
    String verdict = map.piece(placed.round(), placed.wall(), PieceColumn.VERDICT);
    String[] parts = sentence(plan, "\u0001").split("\u0001", -1);
    return "IF("
        + source
        + "=-1,"
        + LiveMath.literal(sentence(plan, live.text("round.used_unknown")))
        + ",IF("
        + source
        + "=-2,"
        + LiveMath.literal(sentence(plan, live.text("round.used_short")))
        + ",IF("
        + verdict
        + "="
        + LiveMath.literal(live.text("live.ok"))
        + ",\"\","
        + LiveMath.literal(parts[0])
        + "&"
        + verdict
        + "&"
        + LiveMath.literal(parts[1])
        + ")))";
  }

  private String verdictNow(PiecePlan plan) {
    List<String> parts =
        java.util.stream.Stream.of(
                part("live.butt", raw(plan.buttFit())), part("live.tip", raw(plan.tipFit())))
            .filter(part -> !part.isEmpty())
            .toList();
    return parts.isEmpty() ? live.text("live.ok") : String.join("; ", parts);
  }

  private String part(String key, String raw) {
    return raw.isEmpty()
        ? ""
        : live.text(key) + " " + raw.substring(0, raw.length() - PLUS.length());
  }

  private String verdict(PiecePlan plan) {
    PlacedLog placed = plan.placed();
    String butt = map.piece(placed.round(), placed.wall(), PieceColumn.BUTT_FAULTS);
    String tip = map.piece(placed.round(), placed.wall(), PieceColumn.TIP_FAULTS);
    return "IF("
        + butt
        + "&"
        + tip
        + "=\"\","
        + LiveMath.literal(live.text("live.ok"))
        + ","
        + shown("live.butt", butt)
        + "&IF(OR("
        + butt
        + "=\"\","
        + tip
        + "=\"\"),\"\",\"; \")&"
        + shown("live.tip", tip)
        + ")";
  }

  private String shown(String key, String raw) {
    String label = LiveMath.literal(live.text(key) + " ");
    String bare = "LEFT(" + raw + ",LEN(" + raw + ")-" + PLUS.length() + ")";
    return "IF(" + raw + "=\"\",\"\"," + label + "&" + bare + ")";
  }

  private String faults(PiecePlan plan, boolean butt) {
    End end = new End(plan.placed(), butt);
    return word(end.diameter() + "<=" + end.thickness(), Fault.NO_FACE)
        + "&"
        + word(end.below(end.shoulder()), Fault.SHOULDER_THIN)
        + "&"
        + word(end.below(end.bearing()), Fault.BEARING_WANEY)
        + "&"
        + word(end.below(end.tail()), Fault.TAIL_WANEY);
  }

  private String word(String condition, Fault fault) {
    String words = LiveMath.literal(words(live.context(), fault) + PLUS);
    return "IF(" + condition + "," + words + ",\"\")";
  }

  private String weak(PiecePlan plan, boolean butt) {
    End end = new End(plan.placed(), butt);
    return end.diameter()
        + "<="
        + end.thickness()
        + ","
        + end.below("MAX(" + end.shoulder() + "," + end.bearing() + ")");
  }

  /** One end of a log: the heights that its sawn face must reach. */
  private final class End {
    private final PlacedLog placed;
    private final boolean butt;
    private final Wall crossing;

    End(PlacedLog placed, boolean butt) {
      this.placed = placed;
      this.butt = butt;
      this.crossing =
          butt ? placed.crossingAtButt(map.building()) : placed.crossingAtTip(map.building());
    }

    String diameter() {
      PieceColumn end = butt ? PieceColumn.BUTT : PieceColumn.TIP;
      PieceColumn shoulder = butt ? PieceColumn.NEAR : PieceColumn.FAR;
      return "MIN(" + at(end) + "," + at(shoulder) + ")";
    }

    String thickness() {
      return map.wall(placed.wall(), WallColumn.THICKNESS);
    }

    String shoulder() {
      return round(RoundColumn.UPPER) + "+" + map.rule(RuleLine.SHOULDER_LEAST);
    }

    String bearing() {
      String lower = round(RoundColumn.LOWER) + "+" + map.wall(crossing, WallColumn.DROP);
      return "MAX(" + round(RoundColumn.UPPER) + "," + lower + ")";
    }

    String tail() {
      String along = map.wall(crossing, WallColumn.THICKNESS) + "+" + map.rule(RuleLine.OVERHANG);
      return round(RoundColumn.LOWER) + "+(" + along + ")/" + map.rule(RuleLine.SLOPE_RUN);
    }

    /** Returns whether the end is thinner than a face that reaches a height wants. */
    String below(String height) {
      String least = "SQRT(" + thickness() + "^2+4*(" + height + ")^2)";
      return "ROUND(" + diameter() + "-" + least + ",6)<0";
    }

    private String at(PieceColumn column) {
      return map.piece(placed.round(), placed.wall(), column);
    }

    private String round(RoundColumn column) {
      return map.round(placed.round(), column);
    }
  }
}
