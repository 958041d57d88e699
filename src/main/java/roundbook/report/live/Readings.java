package roundbook.report.live;

import java.util.List;
import java.util.Optional;
import roundbook.job.AsBuilt;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.Corners;
import roundbook.stack.Levelling;
import roundbook.units.Length;

/** What the corner readings of a round say, as far as they were typed before this revision. */
public final class Readings {
  private final LiveContext live;
  private final int round;
  private final List<Length> read;
  private final Levelling levelling;

  public Readings(LiveContext live, int round) {
    AsBuilt built = live.plan().job().built();
    this.live = live;
    this.round = round;
    this.read =
        live.map().building().corners().stream()
            .flatMap(corner -> built.reading(round, corner).stream())
            .toList();
    this.levelling = Levelling.of(live.plan().stack().levelHeight(round), read, live.rules());
  }

  /** Returns a cell of a formula that is a number where there is one now, else an empty text. */
  public static Cell cell(LiveContext live, String formula, Optional<Length> now) {
    return now.map(length -> Cell.formula(formula, live.number(length)))
        .orElseGet(() -> Cell.formula(formula, ""))
        .role(Role.BODY_CENTRE)
        .format(live.markFormat());
  }

  /** Returns whether every corner was read. */
  public boolean complete() {
    return read.size() == live.map().building().corners().size();
  }

  /** Returns how much the top of a corner is to be pared down; zero until all are read. */
  public Length pare(String corner) {
    return live.plan().stack().corners().at(round, corner).pare();
  }

  /** Returns the lower mark that a corner's first-laid log gets in the next round. */
  public Length next(String corner) {
    Length chart = live.course(round + 1).notch().lower();
    return live.plan()
        .stack()
        .corners()
        .nextLower(round, corner, chart, live.map().building(), live.rules());
  }

  /** Returns the highest reading less the lowest; empty without readings. */
  public Optional<Length> spread() {
    return read.isEmpty() ? Optional.empty() : Optional.of(levelling.spread());
  }

  /** Returns the verdict; empty without readings. */
  public String verdict() {
    if (read.isEmpty()) {
      return "";
    }
    return live.text(levelling.level() ? "live.ok" : "levels.fix");
  }

  /** Returns what else must be said: the rest that waits, a next round cut already, the height. */
  public String note() {
    if (read.isEmpty()) {
      return "";
    }
    Corners corners = live.plan().stack().corners();
    Length most = Levelling.mostChange(live.rules());
    boolean over =
        live.map().building().corners().stream()
            .map(corner -> corners.at(round, corner))
            .map(at -> at.high().minus(at.pare()).minus(commonNow()).absolute())
            .anyMatch(low -> low.isMoreThan(most));
    boolean late = !levelling.level() && live.plan().job().built().isCut(round + 1);
    return (over ? live.text("levels.rest") : "")
        + (late ? live.text("levels.is_cut", round + 1) : "")
        + heightNow();
  }

  private Length commonNow() {
    return live.plan().stack().corners().common(round, live.map().building());
  }

  /**
   * Returns the formula of how high walls stand as a whole that are off the plan by more than half
   * the tolerance.
   */
  public String height() {
    String common = live.map().round(round, RoundColumn.COMMON);
    String off = "ROUND(ABS(" + common + ")-" + live.map().rule(RuleLine.TOLERANCE) + "/2,6)>0";
    return "IF("
        + off
        + ","
        + LiveMath.literal(live.text("levels.stand"))
        + "&"
        + live.math().mark("ABS(" + common + ")")
        + "&IF("
        + common
        + ">0,"
        + LiveMath.literal(live.text(stands(true)))
        + ","
        + LiveMath.literal(live.text(stands(false)))
        + "),\"\")";
  }

  /** Returns what that says now. */
  public String heightNow() {
    Length common = commonNow();
    Length half = live.rules().length(Setting.LEVEL_TOLERANCE).dividedBy(2);
    return common.absolute().isMoreThan(half)
        ? live.text("levels.stand")
            + live.math().markNow(common.absolute())
            + live.text(stands(!common.isNegative()))
        : "";
  }

  private String stands(boolean over) {
    return (over ? "levels.over" : "levels.under") + (live.rules().holdsHeight() ? ".held" : "");
  }
}
