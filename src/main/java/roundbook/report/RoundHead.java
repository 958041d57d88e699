package roundbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.report.LiveMap.RoundColumn;
import roundbook.report.LiveMap.WallColumn;
import roundbook.stack.Course;
import roundbook.units.Length;

/** The top of a round's page: its number, the butts' direction, the revision, the four marks. */
final class RoundHead {
  private static final int NUMBER = 4;
  private static final int MARK = 8;
  private static final int SIDE = 20;
  private final Live live;
  private final Course course;
  private final SheetBuilder sheet;

  RoundHead(Live live, Course course, SheetBuilder sheet) {
    this.live = live;
    this.course = course;
    this.sheet = sheet;
  }

  void put() {
    bar();
    sheet.row(2).height(16).row(3).height(62).row(4).height(16);
    Cell number = Cell.text(String.valueOf(course.round())).role(Role.ROUND_HUGE);
    sheet.merge(new Area(2, 1, 4, NUMBER), number.align(Align.CENTRE));
    box(0, "upper_inside", upper(), false);
    box(1, "upper_outside", upperOutside(), false);
    box(2, "lower_shoulder", lower(), true);
    box(3, "lower_corner", lowerCorner(), true);
    sheet.row(4);
  }

  private void bar() {
    int rounds = live.plan().rounds();
    String way = way(live.rules().clockwise(course.round()));
    String next = course.round() == rounds ? "" : live.text("round.next_other_way");
    sheet.row(1).height(25);
    sheet.addAcross(
        NUMBER + 1,
        Cell.text(live.text("round.title", course.round(), rounds)).role(Role.TITLE_SIDE));
    sheet.addAcross(
        SIDE, Cell.text(live.text("round.butts_run", way) + next).role(Role.TITLE_SIDE));
    sheet.addAcross(
        RoundSheets.COLUMNS - NUMBER - 1 - SIDE,
        Cell.text(live.context().revision()).role(Role.REVISION));
  }

  private String way(boolean clockwise) {
    return live.text(clockwise ? "round.clockwise" : "round.counterclockwise");
  }

  /** A mark for some of the walls: where it stands, what it is now, for whom. */
  private record Mark(String formula, Length now, String whom) {}

  private String at(RoundColumn column) {
    return live.map().round(course.round(), column);
  }

  private List<Mark> upper() {
    return List.of(new Mark(at(RoundColumn.UPPER), course.notch().upper(), ""));
  }

  private List<Mark> lower() {
    return List.of(new Mark(at(RoundColumn.LOWER), course.notch().lower(), ""));
  }

  private List<Mark> upperOutside() {
    List<Mark> marks = new ArrayList<>();
    thicknesses()
        .forEach(
            (thickness, walls) ->
                marks.add(
                    new Mark(
                        at(RoundColumn.UPPER) + "-" + drop(walls.get(0)),
                        course.notch().upperOutside(thickness),
                        live.text("round.on_walls", names(walls)))));
    return marks;
  }

  private List<Mark> lowerCorner() {
    List<Mark> marks = new ArrayList<>();
    thicknesses()
        .forEach(
            (thickness, walls) ->
                marks.add(
                    new Mark(
                        at(RoundColumn.LOWER) + "+" + drop(walls.get(0)),
                        course.notch().lowerCorner(thickness),
                        live.text("round.over_walls", names(walls)))));
    return marks;
  }

  private Map<Length, List<Wall>> thicknesses() {
    Map<Length, List<Wall>> groups = new LinkedHashMap<>();
    live.walls()
        .forEach(
            wall -> groups.computeIfAbsent(wall.thickness(), key -> new ArrayList<>()).add(wall));
    return groups;
  }

  private String drop(Wall wall) {
    return live.map().wall(wall, WallColumn.DROP);
  }

  private static String names(List<Wall> walls) {
    return String.join(" ", walls.stream().map(Wall::name).toList());
  }

  private void box(int number, String key, List<Mark> marks, boolean lower) {
    int left = NUMBER + 1 + number * MARK;
    Area label = new Area(2, left, 2, left + MARK - 1);
    Role head = lower ? Role.MARK_LABEL_LOWER : Role.MARK_LABEL;
    sheet.merge(label, Cell.text(live.text("mark." + key)).role(head));
    int each = MARK / marks.size();
    for (int index = 0; index < marks.size(); index++) {
      boolean last = index == marks.size() - 1;
      int from = left + index * each;
      value(new Area(3, from, 3, last ? left + MARK - 1 : from + each - 1), marks, index, lower);
    }
    note(label.moved(2, 0), marks, lower, live.text("mark." + key + ".note", live.unit().symbol()));
    sheet.box(new Area(2, left, 4, left + MARK - 1));
  }

  private void value(Area area, List<Mark> marks, int index, boolean lower) {
    Role huge = lower ? Role.MARK_HUGE_LOWER : Role.MARK_HUGE;
    Role small = lower ? Role.MARK_LOWER : Role.MARK;
    Mark mark = marks.get(index);
    sheet.merge(area, live.mark(mark.formula(), mark.now(), marks.size() == 1 ? huge : small));
  }

  private void note(Area area, List<Mark> marks, boolean lower, String text) {
    Role role = lower ? Role.MARK_NOTE_LOWER : Role.MARK_NOTE;
    String whom = String.join(" | ", marks.stream().map(Mark::whom).toList());
    sheet.merge(area, Cell.text(marks.size() == 1 ? text : whom).role(role));
  }
}
