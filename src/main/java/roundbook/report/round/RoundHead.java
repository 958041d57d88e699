package roundbook.report.round;

import java.util.List;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.mark.RoundLowers;
import roundbook.report.mark.WallMark;
import roundbook.stack.Course;
import roundbook.units.Length;

/** The top of a round's page: its number, the butts' direction, the revision, the four marks. */
final class RoundHead {
  private static final int NUMBER = 4;
  private static final int MARK = 8;
  private static final int WHOM = 3;

  /** More letters than these take two lines beside a mark. */
  private static final int WHOM_MOST = 10;

  private static final int FIRST_ROW = 2;
  private static final double VALUES = 56;
  private static final double LEAST_VALUE = 28;
  private static final int TITLE = 7;
  private static final int SIDE = 24;
  private final LiveContext live;
  private final Course course;
  private final SheetBuilder sheet;
  private final RoundLowers lowers;
  private final int rows;
  private final int lastRow;

  RoundHead(LiveContext live, Course course, SheetBuilder sheet) {
    this.live = live;
    this.course = course;
    this.sheet = sheet;
    this.lowers = new RoundLowers(live, course, sheet);
    this.rows = lowers.rows();
    this.lastRow = FIRST_ROW + rows + 1;
  }

  /** Puts the rows at the top of the sheet. */
  void put() {
    bar();
    sheet.row(FIRST_ROW).height(14);
    for (int row = 1; row <= rows; row++) {
      sheet.row(FIRST_ROW + row).height(StrictMath.max(LEAST_VALUE, VALUES / rows));
    }
    sheet.row(lastRow).height(14);
    Cell number = Cell.text(String.valueOf(course.round())).role(Role.ROUND_HUGE);
    sheet.merge(new Area(FIRST_ROW, 1, lastRow, NUMBER), number.align(Align.CENTRE));
    String upper = at(RoundColumn.UPPER);
    String lower = at(RoundColumn.LOWER);
    Notch notch = course.notch();
    box(0, "upper_inside", List.of(new WallMark(upper, notch.upper(), "")), false);
    box(
        1,
        "upper_outside",
        WallMark.outside(live, upper, notch, course.round() == live.plan().rounds()),
        false);
    String shown = lowers.unlessAll(lower);
    box(2, "lower_shoulder", List.of(new WallMark(shown, notch.lower(), "")), true);
    box(3, "lower_corner", WallMark.corner(live, lower, notch), true);
    sheet.row(lastRow);
  }

  /** Writes the black bar: round, butts' direction, revision. */
  private void bar() {
    int rounds = live.plan().rounds();
    String way = way(clockwise());
    String next = course.round() == rounds ? "" : live.text("round.next", arrow(!clockwise()));
    boolean listed = live.walls().stream().anyMatch(live.map().building()::isMirrored);
    sheet.row(1).height(22);
    sheet.addAcross(
        TITLE, Cell.text(live.text("round.title", course.round(), rounds)).role(Role.TITLE_SIDE));
    sheet.addAcross(
        SIDE,
        Cell.text(
                (listed
                        ? live.text("round.butts_listed")
                        : live.text("round.butts_run", way) + next)
                    + thickness())
            .role(Role.TITLE_SIDE));
    sheet.addAcross(
        RoundSheets.COLUMNS - TITLE - SIDE,
        Cell.text(live.context().revision()).role(Role.REVISION));
  }

  /** Returns how thick the logs are hewn; nothing where walls differ, for each has its own. */
  private String thickness() {
    List<Length> thick = live.walls().stream().map(Wall::thickness).distinct().toList();
    String unit = " " + live.unit().symbol();
    return thick.size() > 1
        ? ""
        : live.text("round.thick", live.formats().mark(thick.get(0)) + unit);
  }

  /** Returns the sign of a direction. */
  private String arrow(boolean clockwise) {
    return live.text(clockwise ? "chart.clockwise" : "chart.counterclockwise");
  }

  /** Returns whether this round's butts run clockwise. */
  private boolean clockwise() {
    return live.rules().clockwise(course.round());
  }

  /** Returns the word of a direction. */
  private String way(boolean clockwise) {
    return live.text(clockwise ? "round.clockwise" : "round.counterclockwise");
  }

  /** Returns where a value of the round stands. */
  private String at(RoundColumn column) {
    return live.map().round(course.round(), column);
  }

  /** Puts the box of one of the four marks: label, value, where it is measured. */
  private void box(int number, String key, List<WallMark> marks, boolean lower) {
    int left = NUMBER + 1 + number * MARK;
    Area label = Area.cell(FIRST_ROW, left).sized(1, MARK);
    Role head = lower ? Role.MARK_LABEL_LOWER : Role.MARK_LABEL;
    sheet.merge(label, Cell.text(live.text("mark." + key)).role(head));
    Area values = label.moved(1, 0).sized(rows, MARK);
    if (lower && lowers.changedNow()) {
      lowers.put(values, key.equals("lower_corner"));
    } else if (!lower && marks.size() == 1 && course.round() == live.plan().rounds()) {
      part(values, marks.get(0), true, live.text("mark.upper.none", live.names(false)));
    } else if (key.equals("lower_corner") && marks.size() == 1 && lowers.hasFlatBed()) {
      part(values, marks.get(0), false, live.text("mark.lower.flat", live.names(true)));
    } else if (marks.size() == 1) {
      WallMark mark = marks.get(0);
      Role huge = lower ? Role.MARK_HUGE_LOWER : Role.MARK_HUGE;
      sheet.merge(values, live.mark(mark.formula(), mark.now(), huge));
    } else if (marks.size() == 2) {
      marks.forEach(mark -> pair(values.moved(marks.indexOf(mark), 0), mark, lower));
    } else {
      several(values, marks, lower);
    }
    Role note = lower ? Role.MARK_NOTE_LOWER : Role.MARK_NOTE;
    String text = live.text("mark." + key + ".note", live.unit().symbol());
    Area under = label.moved(lastRow - FIRST_ROW, 0);
    if (lower && !lowers.changedNow()) {
      sheet.merge(under, lowers.note(text, key.equals("lower_corner")).role(note));
      lowers.flag(under);
    } else {
      sheet.merge(under, Cell.text(text).role(note));
    }
    sheet.box(new Area(FIRST_ROW, left, lastRow, left + MARK - 1));
  }

  /** Puts a mark that only the walls of one laying order have, and that the others have none. */
  private void part(Area values, WallMark mark, boolean first, String none) {
    pair(values, new WallMark(mark.formula(), mark.now(), live.names(first)), !first);
    Role note = first ? Role.MARK_NOTE : Role.MARK_NOTE_LOWER;
    sheet.merge(values.moved(1, 0).sized(1, MARK), Cell.text(none).role(note));
  }

  /** Puts one of two marks in a row of its own with the walls it is for. */
  private void pair(Area row, WallMark mark, boolean lower) {
    Role value = lower ? Role.MARK_LOWER : Role.MARK;
    Role note = lower ? Role.MARK_NOTE_LOWER : Role.MARK_NOTE;
    boolean names = !lower && mark.whom().length() > WHOM_MOST;
    Role label = names ? Role.BODY_CENTRE : note;
    sheet.merge(row.sized(1, MARK - WHOM), live.mark(mark.formula(), mark.now(), value));
    Cell whom = Cell.text(mark.whom()).role(label);
    sheet.merge(row.moved(0, MARK - WHOM).sized(1, WHOM), whom);
  }

  /** Puts more than two marks as texts, two in a row. */
  private void several(Area values, List<WallMark> marks, boolean lower) {
    for (int index = 0; index < marks.size(); index++) {
      WallMark mark = marks.get(index);
      String whom = " " + mark.whom();
      Cell cell =
          Cell.formula(
              live.math().mark(mark.formula()) + "&" + LiveMath.literal(whom),
              live.math().markNow(mark.now()) + whom);
      int half = MARK / 2;
      Area area = values.moved(index / 2, index % 2 * half).sized(1, half);
      sheet.merge(area, cell.role(lower ? Role.SHADED : Role.BODY_CENTRE).align(Align.CENTRE));
    }
  }
}
