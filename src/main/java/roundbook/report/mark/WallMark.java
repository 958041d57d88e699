package roundbook.report.mark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.Role;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.units.Length;

/**
 * A mark that depends on the thickness of a wall, for the walls that share it.
 *
 * @param formula what it is as typed in
 * @param now what it is as planned
 * @param whom the walls it is for, in words
 */
public record WallMark(String formula, Length now, String whom) {

  /**
   * Returns the upper marks on the outside face: the inside one less the drop of the own wall; the
   * top of a partition's logs is level, so there it is the inside one; eight names of the others
   * would not fit a box, so they are the others where they share one mark. Of the last round only
   * walls are told that are crossed above.
   */
  public static List<WallMark> outside(LiveContext live, String upper, Notch notch, boolean last) {
    List<Wall> crossed =
        live.walls().stream().filter(wall -> !last || wall.laidFirst() || !hasMore(live)).toList();
    Building building = live.map().building();
    List<Wall> ring = crossed.stream().filter(wall -> !wall.isPartition()).toList();
    List<WallMark> marks = of(live, ring, upper + "-", "round.on_walls", notch::upperOutside);
    List<String> level = crossed.stream().flatMap(wall -> level(building, wall)).toList();
    if (!level.isEmpty()) {
      if (marks.size() == 1) {
        WallMark others = marks.get(0);
        marks.set(0, new WallMark(others.formula, others.now, live.text("round.on_other_walls")));
      }
      String whom = live.text("round.on_walls", String.join(" ", level));
      marks.add(new WallMark(upper, notch.upper(), whom));
    }
    return marks;
  }

  /**
   * Returns the lower marks at the corner line: the shoulder's and the drop over a crossing wall.
   */
  public static List<WallMark> corner(LiveContext live, String lower, Notch notch) {
    List<Wall> ring = live.walls().stream().filter(wall -> !wall.isPartition()).toList();
    return of(live, ring, lower + "+", "round.over_walls", notch::lowerCorner);
  }

  private static boolean hasMore(LiveContext live) {
    return !live.map().building().saddles().isEmpty();
  }

  /** Returns a partition's name, and of a wall that ends in mid-wall at one end where that is. */
  private static Stream<String> level(Building building, Wall wall) {
    return wall.isPartition()
        ? Stream.of(wall.name())
        : Stream.of(true, false)
            .flatMap(start -> building.saddle(wall, start).stream())
            .map(saddle -> wall.name() + "/" + saddle.through().name());
  }

  /** Returns a mark for each thickness that the walls have. */
  private static List<WallMark> of(
      LiveContext live, List<Wall> all, String base, String key, UnaryOperator<Length> now) {
    Map<Length, List<Wall>> groups = new LinkedHashMap<>();
    for (Wall wall : all) {
      groups.computeIfAbsent(wall.thickness(), thickness -> new ArrayList<>()).add(wall);
    }
    List<WallMark> marks = new ArrayList<>();
    groups.forEach(
        (thickness, walls) -> {
          String drop = live.map().wall(walls.get(0), WallColumn.DROP);
          String names = String.join(" ", walls.stream().map(Wall::name).toList());
          String whom = live.text(key, names);
          marks.add(new WallMark(base + drop, now.apply(thickness), whom));
        });
    return marks;
  }

  /** Returns one cell for marks: a number in a role, or a text where they differ by wall. */
  static Cell cell(LiveContext live, List<WallMark> marks, Role role) {
    return marks.size() == 1
        ? live.mark(marks.get(0).formula(), marks.get(0).now(), role)
        : text(live, marks, role);
  }

  /** Returns the same for the walls of one laying order only, which it names. */
  static Cell only(LiveContext live, List<WallMark> marks, boolean first, Role role) {
    return marks.size() > 1
        ? text(live, marks, role)
        : text(
            live,
            List.of(new WallMark(marks.get(0).formula, marks.get(0).now, live.names(first))),
            role);
  }

  private static Cell text(LiveContext live, List<WallMark> marks, Role role) {
    String formula = "";
    String now = "";
    for (WallMark mark : marks) {
      String whom = " " + mark.whom();
      String comma = now.isEmpty() ? "" : ", ";
      now += comma + live.math().markNow(mark.now()) + whom;
      formula += formula.isEmpty() ? "" : "&\", \"&";
      formula += live.math().mark(mark.formula()) + "&" + LiveMath.literal(whom);
    }
    Role text = role == Role.MARK_LOWER ? Role.SHADED : Role.BODY_CENTRE;
    return Cell.formula(formula, now).role(text).align(Align.CENTRE);
  }
}
