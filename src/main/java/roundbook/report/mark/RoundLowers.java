package roundbook.report.mark;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.stack.Course;
import roundbook.units.Length;

/**
 * What the large boxes of a round's lower marks say where corners are put right: no number may
 * stand there alone that some end is not cut by.
 */
public final class RoundLowers {
  private final LiveContext live;
  private final Course course;
  private final SheetBuilder sheet;
  private final List<String> corners;

  public RoundLowers(LiveContext live, Course course, SheetBuilder sheet) {
    this.live = live;
    this.course = course;
    this.sheet = sheet;
    this.corners = live.map().building().corners();
  }

  /** Returns whether a corner of the round is put right, as planned. */
  public boolean changedNow() {
    return changedNow(true) || changedNow(false);
  }

  private boolean changedNow(boolean first) {
    return corners.stream().anyMatch(corner -> !change(first, corner).isZero());
  }

  private Length change(boolean first, String corner) {
    return live.plan().stack().corners().change(course.round(), first, corner);
  }

  /** Returns whether a log of a laying order is put right at a corner, as a formula. */
  private String changed(boolean first) {
    CornerColumn column = first ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    String all = live.map().corners(course.round(), column);
    return "OR(ROUND(MAX(" + all + "),6)<>0,ROUND(MIN(" + all + "),6)<>0)";
  }

  /** Returns whether any log is put right at a corner, as a formula. */
  String changed() {
    return "OR(" + changed(true) + "," + changed(false) + ")";
  }

  /** Returns a number's formula, which gives way to a sign when no log is cut by it any more. */
  public String unlessAll(String number) {
    return "IF(" + changed(false) + ",\"▼\"," + number + ")";
  }

  /**
   * Returns what stands under a box: where the mark is measured, or, once readings are typed, for
   * whom it is and where the others' stand.
   */
  public Cell note(String usual, boolean cornerLine) {
    String more = cornerLine ? live.text("mark.more", drops(live)) : "";
    String part = live.text("mark.partly", live.names(false), live.names(true)) + more;
    String none = live.text("mark.below") + more;
    String formula =
        "IF("
            + changed(false)
            + ","
            + LiveMath.literal(none)
            + ",IF("
            + changed(true)
            + ","
            + LiveMath.literal(part)
            + ","
            + LiveMath.literal(usual)
            + "))";
    return Cell.formula(formula, usual);
  }

  /** Turns an area black once a corner is put right. */
  public void flag(Area area) {
    sheet.rule(new Rule.LooksLike(area, changed(), Role.FLAG));
  }

  /** Returns by how much the corner line's mark is larger than the shoulder's. */
  public static String drops(LiveContext live) {
    return live.walls().stream()
        .map(wall -> live.rules().slope().dropOver(wall.thickness()))
        .map(drop -> live.formats().mark(drop))
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  /**
   * Puts the marks of both laying orders one over the other, corner by corner where they differ.
   */
  public void put(Area values, boolean cornerLine) {
    int half = values.bottom() - values.top() + 1;
    for (boolean first : new boolean[] {false, true}) {
      Area row = Area.cell(values.top() + (first ? half / 2 : 0), values.left());
      Area area = row.sized(half - half / 2, values.right() - values.left() + 1);
      sheet.merge(
          area, Cell.formula(text(first, cornerLine), now(first, cornerLine)).role(Role.BODY_BOLD));
    }
  }

  private String text(boolean first, boolean cornerLine) {
    String each =
        corners.stream()
            .map(corner -> corner(first, corner, cornerLine))
            .collect(Collectors.joining("&"));
    String who = LiveMath.literal(live.names(first) + ":");
    return isOne()
        ? who + "&IF(" + changed(first) + "," + each + "," + one(cornerLine) + ")"
        : who + "&" + each;
  }

  /** Returns whether all walls are alike, so that unchanged marks are one number. */
  private boolean isOne() {
    return live.walls().stream().map(Wall::thickness).distinct().count() == 1;
  }

  private String one(boolean cornerLine) {
    String drop = "+" + live.map().wall(live.walls().get(0), WallColumn.DROP);
    String chart = live.map().round(course.round(), RoundColumn.LOWER);
    return LiveMath.literal(" ") + "&" + live.math().mark(chart + (cornerLine ? drop : ""));
  }

  private String corner(boolean first, String corner, boolean cornerLine) {
    CornerColumn column = first ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    String drop = cornerLine ? "+" + live.map().wall(crossing(first, corner), WallColumn.DROP) : "";
    String mark =
        live.map().round(course.round(), RoundColumn.LOWER)
            + "+"
            + live.map().corner(course.round(), corner, column)
            + drop;
    String before = isSecondLine(corner) ? "CHAR(10)&" : LiveMath.literal(" ") + "&";
    return before + LiveMath.literal(corner + "\u00a0") + "&" + live.math().mark(mark);
  }

  private String now(boolean first, boolean cornerLine) {
    if (isOne() && !changedNow(first)) {
      Length mark = mark(first, corners.get(0), cornerLine);
      return live.names(first) + ": " + live.math().markNow(mark);
    }
    return corners.stream()
        .map(
            corner ->
                (isSecondLine(corner) ? "\n" : " ")
                    + corner
                    + "\u00a0"
                    + live.math().markNow(mark(first, corner, cornerLine)))
        .collect(Collectors.joining("", live.names(first) + ":", ""));
  }

  /** Returns whether a corner begins the second line of a list, lest a fraction be parted. */
  private boolean isSecondLine(String corner) {
    return corners.indexOf(corner) == (corners.size() + 1) / 2;
  }

  private Length mark(boolean first, String corner, boolean cornerLine) {
    Length chart =
        cornerLine
            ? course.notch().lowerCorner(crossing(first, corner).thickness())
            : course.notch().lower();
    return chart.plus(change(first, corner));
  }

  /** Returns the wall of the other laying order at a corner. */
  private Wall crossing(boolean first, String corner) {
    Building building = live.map().building();
    return live.walls().stream()
        .filter(wall -> wall.laidFirst() != first)
        .filter(
            wall ->
                building.startCorner(wall).equals(corner)
                    || building.endCorner(wall).equals(corner))
        .findFirst()
        .orElseThrow();
  }
}
