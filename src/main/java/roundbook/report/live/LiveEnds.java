package roundbook.report.live;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.NeckFit.Fault;
import roundbook.page.Cell;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.CrewContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.stack.FilledPlace;

/** Whether the ends of each log hold their marks, as formulas of the diameters hewn. */
public final class LiveEnds {
  private static final String PLUS = " + ";

  private final LiveContext live;
  private final LiveMap map;

  public LiveEnds(LiveContext live) {
    this.live = live;
    this.map = live.map();
  }

  /** Returns the words of a fault in the workbook's language. */
  public static String words(CrewContext context, Fault fault) {
    return context.sentences().pattern("fault." + fault.name().toLowerCase(Locale.ROOT));
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

  /** Returns an end's faults as planned, each with the joining sign behind it. */
  private String raw(NeckFit fit) {
    return fit.faults().stream()
        .map(fault -> words(live.context(), fault) + PLUS)
        .collect(Collectors.joining());
  }

  /** Returns what a page says of a log's ends as planned; empty when all marks show. */
  public String saidNow(PiecePlan plan) {
    String verdict = verdictNow(plan);
    return verdict.equals(live.text("live.ok")) ? "" : sentence(plan, verdict);
  }

  /** Returns a verdict as a sentence that begins with the wall. */
  private String sentence(PiecePlan plan, String verdict) {
    return live.text("live.ends", plan.placed().wall().name(), verdict);
  }

  /** Returns what is wrong with the log used instead, or with the ends. */
  private String said(PiecePlan plan) {
    FilledPlace placed = plan.placed();
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

  /** Returns the verdict on both ends as planned. */
  private String verdictNow(PiecePlan plan) {
    List<String> parts =
        Stream.of(
                part(label(plan, true), raw(plan.buttFit())),
                part(label(plan, false), raw(plan.tipFit())))
            .filter(part -> !part.isEmpty())
            .toList();
    return parts.isEmpty() ? live.text("live.ok") : String.join("; ", parts);
  }

  /** Returns how an end is called; those of two short logs by their corners. */
  private String label(PiecePlan plan, boolean butt) {
    if (plan.halves().isEmpty()) {
      return live.text(butt ? "live.butt" : "live.tip");
    }
    boolean left = butt != plan.placed().buttAtStart();
    return plan.halves().get(left ? 0 : 1).corner();
  }

  /** Returns one end's part of the verdict as planned; empty when it has no fault. */
  private String part(String label, String raw) {
    return raw.isEmpty() ? "" : label + " " + raw.substring(0, raw.length() - PLUS.length());
  }

  /** Returns the formula of the verdict on both ends. */
  private String verdict(PiecePlan plan) {
    FilledPlace placed = plan.placed();
    String butt = map.piece(placed.round(), placed.wall(), PieceColumn.BUTT_FAULTS);
    String tip = map.piece(placed.round(), placed.wall(), PieceColumn.TIP_FAULTS);
    return "IF("
        + butt
        + "&"
        + tip
        + "=\"\","
        + LiveMath.literal(live.text("live.ok"))
        + ","
        + shown(label(plan, true), butt)
        + "&IF(OR("
        + butt
        + "=\"\","
        + tip
        + "=\"\"),\"\",\"; \")&"
        + shown(label(plan, false), tip)
        + ")";
  }

  /** Returns the formula of one end's part of the verdict. */
  private String shown(String named, String raw) {
    String label = LiveMath.literal(named + " ");
    String bare = "LEFT(" + raw + ",LEN(" + raw + ")-" + PLUS.length() + ")";
    return "IF(" + raw + "=\"\",\"\"," + label + "&" + bare + ")";
  }

  /** Returns the formula of an end's faults, each with the joining sign behind it. */
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

  /** Returns the formula that says a fault where a condition holds. */
  private String word(String condition, Fault fault) {
    String words = LiveMath.literal(words(live.context(), fault) + PLUS);
    return "IF(" + condition + "," + words + ",\"\")";
  }

  /** Returns the condition that an end lacks more than its tail. */
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
    private final FilledPlace placed;
    private final boolean butt;
    private final Wall crossing;

    End(FilledPlace placed, boolean butt) {
      this.placed = placed;
      this.butt = butt;
      this.crossing =
          butt ? placed.crossingAtButt(map.building()) : placed.crossingAtTip(map.building());
    }

    /** Returns d, the smallest diameter in the neck: at the end or at the shoulder. */
    String diameter() {
      PieceColumn end = butt ? PieceColumn.BUTT : PieceColumn.TIP;
      PieceColumn shoulder = butt ? PieceColumn.NEAR : PieceColumn.FAR;
      return "MIN(" + at(end) + "," + at(shoulder) + ")";
    }

    /** Returns T of the log's own wall. */
    String thickness() {
      return map.wall(placed.wall(), WallColumn.THICKNESS);
    }

    /** Returns the height of the shoulder's wood, {@code U' + m}. */
    String shoulder() {
      return round(RoundColumn.UPPER) + "+" + map.rule(RuleLine.SHOULDER_LEAST);
    }

    /** Returns the height of the full bearing, {@code max(U', L' + r(s T_x))}. */
    String bearing() {
      String lower = round(RoundColumn.LOWER) + "+" + map.wall(crossing, WallColumn.DROP);
      return "MAX(" + round(RoundColumn.UPPER) + "," + lower + ")";
    }

    /** Returns the height of the full tail, {@code L' + s (T_x + o)}. */
    String tail() {
      String along = map.wall(crossing, WallColumn.THICKNESS) + "+" + map.rule(RuleLine.OVERHANG);
      return round(RoundColumn.LOWER) + "+(" + along + ")/" + map.rule(RuleLine.SLOPE_RUN);
    }

    /** Returns whether the end is thinner than a face that reaches a height wants. */
    String below(String height) {
      String least = "SQRT(" + thickness() + "^2+4*(" + height + ")^2)";
      return "ROUND(" + diameter() + "-" + least + ",6)<0";
    }

    /** Returns where a value of the log stands. */
    private String at(PieceColumn column) {
      return map.piece(placed.round(), placed.wall(), column);
    }

    /** Returns where a value of the round stands. */
    private String round(RoundColumn column) {
      return map.round(placed.round(), column);
    }
  }
}
