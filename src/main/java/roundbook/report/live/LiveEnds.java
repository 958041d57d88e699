package roundbook.report.live;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.notch.NeckFit;
import roundbook.page.Cell;
import roundbook.plan.EndPhrase;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.FilledPlace;

/** What the ends of each log lose under their marks, as formulas of the diameters hewn. */
public final class LiveEnds {
  private final LiveContext live;
  private final LiveMap map;

  public LiveEnds(LiveContext live) {
    this.live = live;
    this.map = live.map();
  }

  /** Returns a cell of a log's ends. */
  Cell cell(PiecePlan plan, PieceColumn column) {
    LiveEnd butt = new LiveEnd(live, plan, true);
    LiveEnd tip = new LiveEnd(live, plan, false);
    return switch (column) {
      case BUTT_NECK, BUTT_WHOLE, BUTT_BEARS, BUTT_OVER -> butt.number(column);
      case TIP_NECK, TIP_WHOLE, TIP_BEARS, TIP_OVER -> tip.number(column);
      case BUTT_SAID -> Cell.formula(said(butt), saidNow(plan, true));
      case TIP_SAID -> Cell.formula(said(tip), saidNow(plan, false));
      case WANE ->
          Cell.formula(
              "IF(" + butt.wane() + ",1,0)+IF(" + tip.wane() + ",1,0)",
              Stream.of(plan.buttFit(), plan.tipFit()).filter(NeckFit::hasWaneyTail).count());
      case WEAK ->
          Cell.formula(
              "IF(" + at(plan, PieceColumn.VERDICT) + "=\"\",0,1)",
              verdictNow(plan).isEmpty() ? 0 : 1);
      case SAID -> Cell.formula(sentence(plan), sentenceNow(plan));
      default -> Cell.formula(verdict(plan), verdictNow(plan));
    };
  }

  /** Returns what a page says of a log's ends as planned; empty when none is flagged. */
  public String sentenceNow(PiecePlan plan) {
    String verdict = verdictNow(plan);
    return verdict.isEmpty() ? "" : sentence(plan, verdict);
  }

  /** Returns the longest that is likely to be told of an end. */
  public static String likely(LiveContext live) {
    String over = live.formats().mark(live.rules().printStep()) + " " + live.unit().symbol();
    return told(live, EndPhrase.BEARS).replace("{share}", "88").replace("{over}", "15/" + over);
  }

  private static String told(LiveContext live, String key) {
    return live.context().sentences().pattern(key);
  }

  /** Returns what is told of an end as planned; empty when it is not flagged. */
  private String saidNow(PiecePlan plan, boolean butt) {
    NeckFit fit = butt ? plan.buttFit() : plan.tipFit();
    if (!fit.isFlagged()) {
      return "";
    }
    String said = live.context().end(plan, butt);
    return fit.grade() == NeckFit.Grade.STOP ? live.text("live.stop", said) : said;
  }

  /** Returns the formula of what is told of an end. */
  private String said(LiveEnd end) {
    String key = end.hasUpper() ? EndPhrase.BEARS : EndPhrase.BEARS_LOWER;
    String bears = filled(told(live, key), end);
    String off = filled(told(live, EndPhrase.OFF), end);
    String none = LiveMath.literal(told(live, EndPhrase.NONE));
    String said = "IF(" + end.noFace() + "," + none + ",IF(" + end.off() + "," + off + "," + bears;
    String[] stop = live.text("live.stop", "\u0001").split("\u0001", -1);
    String stopped = "IF(" + end.stop() + "," + LiveMath.literal(stop[0]) + ",\"\")&";
    return "IF(" + end.flagged() + "," + stopped + said + ")),\"\")";
  }

  /** Returns a pattern's formula with an end's share and face in its holes. */
  private String filled(String pattern, LiveEnd end) {
    return Stream.of(pattern.split("(?=\\{)|(?<=\\})"))
        .map(
            part ->
                switch (part) {
                  case "{share}" -> percent(end.at(PieceColumn.TIP_BEARS));
                  case "{over}" -> face(end.at(PieceColumn.TIP_OVER));
                  default -> LiveMath.literal(part);
                })
        .collect(Collectors.joining("&"));
  }

  /** Returns the formula of a share in whole percent, rounded down. */
  public static String percent(String share) {
    return "INT(ROUND(" + share + "*100,4))";
  }

  /** Returns the formula of a face over the upper mark with its unit, rounded down to the step. */
  public String face(String over) {
    String lower = over + "-" + map.rule(RuleLine.PRINT_STEP) + "/2";
    return live.math().mark(lower) + "&" + LiveMath.literal(" " + live.unit().symbol());
  }

  /** Returns a verdict as a sentence that begins with the wall. */
  private String sentence(PiecePlan plan, String verdict) {
    return live.text("live.ends", plan.placed().wall().name(), verdict);
  }

  /** Returns what is wrong with the log used instead, or with the ends. */
  private String sentence(PiecePlan plan) {
    String source = at(plan, PieceColumn.SOURCE);
    String verdict = at(plan, PieceColumn.VERDICT);
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
        + "=\"\",\"\","
        + LiveMath.literal(parts[0])
        + "&"
        + verdict
        + "&"
        + LiveMath.literal(parts[1])
        + ")))";
  }

  /** Returns the verdict on both ends as planned; empty when none is flagged. */
  private String verdictNow(PiecePlan plan) {
    String butt = saidNow(plan, true);
    String tip = saidNow(plan, false);
    return Stream.of(
            butt.isEmpty() ? "" : label(plan, true) + " " + butt,
            tip.isEmpty() ? "" : label(plan, false) + " " + tip)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  /** Returns how an end is called; those of two short logs by their corners. */
  private String label(PiecePlan plan, boolean butt) {
    if (plan.halves().isEmpty()) {
      return live.text(butt ? "live.butt" : "live.tip");
    }
    boolean left = butt != plan.placed().buttAtStart();
    return plan.halves().get(left ? 0 : 1).corner();
  }

  /** Returns the formula of the verdict on both ends. */
  private String verdict(PiecePlan plan) {
    String butt = at(plan, PieceColumn.BUTT_SAID);
    String tip = at(plan, PieceColumn.TIP_SAID);
    String between = "IF(OR(" + butt + "=\"\"," + tip + "=\"\"),\"\",\"; \")";
    return shown(label(plan, true), butt) + "&" + between + "&" + shown(label(plan, false), tip);
  }

  /** Returns the formula of one end's part of the verdict. */
  private static String shown(String named, String said) {
    return "IF(" + said + "=\"\",\"\"," + LiveMath.literal(named + " ") + "&" + said + ")";
  }

  private String at(PiecePlan plan, PieceColumn column) {
    FilledPlace placed = plan.placed();
    return map.piece(placed.round(), placed.wall(), column);
  }
}
