package roundbook.report.round;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import roundbook.job.Measures;
import roundbook.page.LogColumn;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMath;
import roundbook.stack.Joint;

/**
 * Whether it pays to plan anew before the next round, by what was typed: only where a log that has
 * a place is lost, another one is used, a gap above comes to leave its limits, or logs were
 * measured in the yard by which rounds could be chosen. Else the pages follow by themselves.
 *
 * @param live the pages' formulas
 * @param round the round that was read
 */
record ReplanAdvice(LiveContext live, int round) {
  /** What any text but an empty one fulfils. */
  private static final String ANY = ",\"?*\"";

  /** Returns the formula of the advice, with a space before it; an empty text after the last. */
  String formula() {
    if (isLast()) {
      return "\"\"";
    }
    Map<String, String> reasons = new LinkedHashMap<>();
    String placed = LogColumn.ROUNDS.named() + ANY + ")>0";
    reasons.put("lost", "COUNTIFS(" + LogColumn.LOST.named() + ANY + "," + placed);
    reasons.put("used", "MAX(" + live.map().pieces(PieceColumn.SOURCE) + ")>0");
    String flags = live.map().piecesOver(round, PieceColumn.FLAG);
    reasons.put("gap", "COUNTIF(" + flags + ANY + ")>" + flagged());
    reasons.put("yard", "COUNT(" + LogColumn.HEWN_MIDS.named() + ")<>" + measured());
    String all =
        reasons.entrySet().stream()
            .map(each -> "IF(" + each.getValue() + "," + word(each.getKey()) + ",\"\")")
            .collect(Collectors.joining("&"));
    return "IF(OR("
        + String.join(",", reasons.values())
        + "),"
        + LiveMath.literal(text("yes"))
        + "&"
        + all
        + ","
        + LiveMath.literal(text("no"))
        + ")";
  }

  /** Returns the advice of a plan as it is printed: nothing was typed since. */
  String now() {
    return isLast() ? "" : text("no");
  }

  private boolean isLast() {
    return round == live.plan().rounds();
  }

  private String word(String reason) {
    return LiveMath.literal(text(reason));
  }

  private String text(String key) {
    return " " + live.text("round.replan." + key, round + 1);
  }

  /** Returns how many gaps above the round are outside their limits by the plan. */
  private long flagged() {
    return live.plan().stack().joints().stream()
        .filter(joint -> joint.upper().round() > round)
        .filter(joint -> joint.flag(live.rules()) != Joint.Flag.NONE)
        .count();
  }

  /** Returns how many middles measured in the yard this plan was made with. */
  private long measured() {
    return live.plan().job().built().ahead().values().stream()
        .map(each -> each.measures())
        .map(Measures::mid)
        .filter(mid -> mid.isPresent())
        .count();
  }
}
