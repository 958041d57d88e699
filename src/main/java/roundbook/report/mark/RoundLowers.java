package roundbook.report.mark;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.plan.PiecePlan;
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

  /** Returns whether the logs laid first are sawn flat underneath, without corner line marks. */
  public boolean hasFlatBed() {
    return live.plan().round(course.round()).stream()
        .anyMatch(piece -> piece.notes().contains(PiecePlan.Note.BED_FLAT));
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
   * Returns how many rows the marks take: two, or with corners put right a row for each wall of a
   * laying order whose logs differ from corner to corner and one for the other order.
   */
  public int rows() {
    return changedNow() ? rows(true) + rows(false) : 2;
  }

  private int rows(boolean first) {
    long walls = live.walls().stream().filter(wall -> wall.laidFirst() == first).count();
    return isOne(first) ? 1 : (int) walls;
  }

  /** Returns whether the logs of a laying order have one mark at all corners, as planned. */
  private boolean isOne(boolean first) {
    boolean alike = live.walls().stream().map(Wall::thickness).distinct().count() == 1;
    boolean drains = corners.stream().anyMatch(corner -> drains(first, corner));
    return alike
        && !drains
        && corners.stream().map(corner -> change(first, corner)).distinct().count() == 1;
  }

  /** Puts a mark for every end of the round's logs, a row for each wall and its two corners. */
  public void put(Area values, boolean cornerLine) {
    int half = (values.right() - values.left() + 1) / 2;
    int row = 0;
    for (boolean first : new boolean[] {true, false}) {
      if (first && cornerLine && hasFlatBed()) {
        String none = live.text("mark.lower.flat", live.names(true));
        sheet.merge(values.moved(row++, 0).sized(1, 2 * half), Cell.text(none).role(Role.SHADED));
        continue;
      }
      if (isOne(first)) {
        Area area = values.moved(row++, 0).sized(1, 2 * half);
        put(
            area,
            live.names(first),
            mark(first, corners.get(0), cornerLine),
            formula(first, corners.get(0), cornerLine));
        continue;
      }
      for (Wall wall : live.walls().stream().filter(each -> each.laidFirst() == first).toList()) {
        Building building = live.map().building();
        int column = 0;
        for (String corner : List.of(building.startCorner(wall), building.endCorner(wall))) {
          Area area = values.moved(row, column).sized(1, half);
          String whom = wall.name() + "\n" + corner;
          put(area, whom, mark(first, corner, cornerLine), formula(first, corner, cornerLine));
          column += half;
        }
        row++;
      }
    }
  }

  /** Puts one mark with the wall and the corner that it is for before it. */
  private void put(Area area, String whom, Length now, String formula) {
    sheet.merge(area.sized(1, 1), Cell.text(whom).role(Role.SHADED).align(Align.CENTRE));
    int wide = area.right() - area.left();
    sheet.merge(area.moved(0, 1).sized(1, wide), live.mark(formula, now, Role.MARK_LOWER));
  }

  private String formula(boolean first, String corner, boolean cornerLine) {
    CornerColumn column = first ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    boolean fallen = cornerLine != drains(first, corner);
    String drop = fallen ? "+" + live.map().wall(crossing(first, corner), WallColumn.DROP) : "";
    String mark = live.map().round(course.round(), RoundColumn.LOWER);
    String changed = mark + "+" + live.map().corner(course.round(), corner, column) + drop;
    String all = live.map().corners(course.round(), column);
    String differ = "ROUND(MAX(" + all + ")-MIN(" + all + "),6)<>0";
    return isOne(first) ? "IF(" + differ + ",\"▼\"," + changed + ")" : changed;
  }

  private Length mark(boolean first, String corner, boolean cornerLine) {
    Length chart =
        cornerLine != drains(first, corner)
            ? course.notch().lowerCorner(crossing(first, corner).thickness())
            : course.notch().lower();
    return chart.plus(change(first, corner));
  }

  /** Returns whether a log drains where it dies in another, deeper at its shoulder. */
  private boolean drains(boolean first, String corner) {
    return new ShoulderFall(live, first, corner).isDeeper();
  }

  /** Returns the wall of the other laying order at a corner. */
  private Wall crossing(boolean first, String corner) {
    return live.map().building().wallAt(corner, !first);
  }
}
