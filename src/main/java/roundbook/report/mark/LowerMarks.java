package roundbook.report.mark;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.mark.PieceCells.LiveLength;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * The lower marks at the two ends of a placed log: those of the chart, each changed by as much as
 * its corner is put right.
 *
 * @param live what the live sheets share
 * @param piece the placed log
 */
public record LowerMarks(LiveContext live, PiecePlan piece) {
  private static final String BUTT = "● ";
  private static final String TIP = "○ ";

  /** Returns the lower mark at the shoulder of the butt or the tip. */
  public LiveLength shoulder(boolean butt) {
    return mark(butt, drains(butt));
  }

  /** Returns the lower mark at the corner line of the butt or the tip. */
  public LiveLength cornerLine(boolean butt) {
    return mark(butt, !drains(butt));
  }

  /** Returns the chart's mark of an end as its corner is put right, over the fall of its notch. */
  private LiveLength mark(boolean butt, boolean fallen) {
    Building building = live.map().building();
    Wall crossing =
        butt ? piece.placed().crossingAtButt(building) : piece.placed().crossingAtTip(building);
    String level = "(" + live.map().round(round(), RoundColumn.LOWER) + "+" + changed(butt) + ")";
    String drop = live.map().wall(crossing, WallColumn.DROP);
    Length chart = fallen ? notch().lowerCorner(crossing.thickness()) : notch().lower();
    return new LiveLength(
        fallen ? "(" + level + "+" + drop + ")" : level, chart.plus(change(butt)));
  }

  /** Returns whether an end drains, so that its notch is deeper at the shoulder. */
  private boolean drains(boolean butt) {
    FilledPlace placed = piece.placed();
    boolean start = placed.buttAtStart() == butt;
    return live.map().building().drains(placed.wall(), start, live.rules());
  }

  /** Returns whether an end's mark is other than the chart's, as planned. */
  public boolean differNow() {
    return Stream.of(true, false).anyMatch(butt -> !change(butt).isZero() || drains(butt));
  }

  /** Returns whether an end's mark is other than the chart's, as a formula. */
  public String differ() {
    return Stream.of(true, false)
        .map(butt -> drains(butt) ? "TRUE" : "ROUND(" + changed(butt) + ",6)<>0")
        .collect(Collectors.joining(",", "OR(", ")"));
  }

  /** Returns the formula of a mark as text: one, or butt then tip where they differ. */
  public String both(LiveLength butt, LiveLength tip, String between) {
    String same = "ROUND(" + butt.formula() + "-" + tip.formula() + ",6)=0";
    String one = live.math().mark(butt.formula());
    String other = live.math().mark(tip.formula());
    return String.join(
        "",
        "IF(" + same + "," + one + ",",
        LiveMath.literal(BUTT) + "&" + one + "&" + between + "&",
        LiveMath.literal(TIP) + "&" + other + ")");
  }

  /** Returns the same as it is planned. */
  public String bothNow(LiveLength butt, LiveLength tip, String between) {
    String one = live.math().markNow(butt.now());
    String other = live.math().markNow(tip.now());
    return butt.now().equals(tip.now()) ? one : BUTT + one + between + TIP + other;
  }

  private Length change(boolean butt) {
    boolean first = piece.placed().wall().laidFirst();
    return live.plan().stack().corners().change(round(), first, corner(butt));
  }

  private String changed(boolean butt) {
    boolean first = piece.placed().wall().laidFirst();
    CornerColumn column = first ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    return live.map().corner(round(), corner(butt), column);
  }

  private String corner(boolean butt) {
    FilledPlace placed = piece.placed();
    Building building = live.map().building();
    return placed.buttAtStart() == butt
        ? building.startCorner(placed.wall())
        : building.endCorner(placed.wall());
  }

  private Notch notch() {
    return live.course(round()).notch();
  }

  private int round() {
    return piece.placed().round();
  }
}
