package roundbook.report.mark;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Fit;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Positions;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.page.TypedBox;
import roundbook.picture.canvas.Picture;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Drawn;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveRounds;
import roundbook.stack.Course;
import roundbook.units.Length;

/** The notch numbers of every round on one page, as they follow from what was measured. */
public final class NotchChartSheet {
  /** The row of the table's headings. */
  public static final int HEAD_ROW = 2;

  private static final Positions<NotchChartColumn> COLUMNS = Positions.of(NotchChartColumn.class);
  private static final double[] WIDTHS = {8, 10, 13, 13, 13, 13, 8.5, 8.5, 11, 11, 7, 9, 8, 8};
  private static final int FIRST_MARK = 2;
  private static final int MARKS = 4;
  private static final double WITH_SIXTEENTHS = 16.8;
  private static final double TITLE = 34;
  private static final double HEAD = 44;
  private static final double LEAST_HEIGHT = 21.5;
  private static final double MOST_HEIGHT = 34;
  private static final double CENTRE_LINE = 57;

  /** By what part of a page the chart may be scaled down for all of it to stand on one. */
  private static final double SQUEEZE = 0.15;

  private static final double CENTRE_WIDE = 9.5;
  private final LiveContext live;
  private final SheetBuilder sheet;

  private NotchChartSheet(LiveContext live) {
    this.live = live;
    PageSetup page = live.context().page(PageKind.SITE).lying().fit(Fit.ONE_WIDE);
    String tab = Tab.NOTCH_CHART.in(live.context().words());
    this.sheet = new SheetBuilder(tab, page).id(Tab.NOTCH_CHART.id()).widths(widths());
  }

  /** The columns of the chart. */
  private enum NotchChartColumn {
    /** The round, ticked when cut. */
    ROUND,
    /** The size taken. */
    SIZE,
    /** The upper mark on the inside face. */
    UPPER_INSIDE,
    /** The upper mark on the outside face. */
    UPPER_OUTSIDE,
    /** The lower mark at the shoulder. */
    LOWER_SHOULDER,
    /** The lower mark at the corner line. */
    LOWER_CORNER,
    /** The height of the neck. */
    NECK,
    /** What the round adds to the wall. */
    RISE,
    /** The height of the first-laid centre lines. */
    FIRST_TOP,
    /** The height of the second-laid centre lines. */
    SECOND_TOP,
    /** Which way the butts run. */
    BUTTS,
    /** The least shoulder with the face wanted over UPPER. */
    SMALLEST,
    /** The gap below on the first-laid walls. */
    FIRST_GAP,
    /** The gap below on the second-laid walls. */
    SECOND_GAP
  }

  /** Returns the sheet. */
  public static List<Sheet> of(CrewContext context) {
    return List.of(new NotchChartSheet(LiveContext.of(context)).sheet());
  }

  /** Writes the sheet from the top down. */
  private Sheet sheet() {
    title();
    heads();
    for (Course course : live.plan().choice().courses()) {
      sheet.nextRow().height(rowHeight());
      for (NotchChartColumn column : NotchChartColumn.values()) {
        sheet.add(cell(course, column));
      }
      flags(course.round());
      putRight(course);
    }
    centreLine();
    notes();
    if (withChange()) {
      sheet.fit(Fit.ONE_PAGE);
    } else {
      sheet.breakAfter(sheet.row());
    }
    new NotchChange(live, sheet).put(widths());
    return sheet.printArea(new Area(1, 1, sheet.row(), WIDTHS.length)).build();
  }

  /** Returns the columns' widths; the marks' columns are wider where they need sixteenths. */
  private double[] widths() {
    double[] widths = WIDTHS.clone();
    for (int column = FIRST_MARK; column < FIRST_MARK + MARKS; column++) {
      widths[column] = eighths() ? widths[column] : WITH_SIXTEENTHS;
    }
    return widths;
  }

  /** Returns whether every mark is a whole number of eighths. */
  private boolean eighths() {
    Length eighth = live.unit().metric() ? Length.ofMillimetres(1) : Length.ofInchFraction(1, 8);
    return Stream.concat(
            Stream.of(
                live.rules().sizeStep().dividedBy(4),
                live.rules().gap().minus(live.rules().sizeStep()).dividedBy(4)),
            live.walls().stream()
                .map(wall -> live.rules().slope().dropOver(wall.thickness()))
                .map(drop -> drop.roundedTo(live.rules().printStep())))
        .allMatch(length -> length.nanometres() % eighth.nanometres() == 0 || live.unit().metric());
  }

  /** Returns the height of a round's row, as large as the page allows. */
  private double rowHeight() {
    double height = room(withChange()) / live.plan().rounds();
    return StrictMath.max(LEAST_HEIGHT, StrictMath.min(MOST_HEIGHT, height));
  }

  /** Returns whether the block for the round in hand has room on the page of the chart. */
  private boolean withChange() {
    return room(true) + SQUEEZE * page() >= LEAST_HEIGHT * live.plan().rounds();
  }

  /** Returns how high the rounds' rows may be together, in points. */
  private double room(boolean withChange) {
    double notes = noteLines().mapToDouble(NotchChartSheet::noteHeight).sum();
    double line = drawn() ? CENTRE_LINE : 0;
    return page()
        - TITLE
        - HEAD
        - notes
        - line
        - (withChange ? NotchChange.height(live, widths()) : 0);
  }

  /** Returns how high a page is, in points of the sheet. */
  private double page() {
    return (live.context().paper() == Paper.A4 ? 508 : 525) / scale();
  }

  /** Writes the black bar. */
  private void title() {
    sheet.row(1).height(TITLE);
    sheet.addAcross(4, Cell.text(live.text("chart.title")).role(Role.TITLE));
    sheet.addAcross(8, Cell.text(subtitle()).role(Role.TITLE_NOTE));
    sheet.addAcross(2, Cell.text(live.context().revision()).role(Role.REVISION));
  }

  /** Returns the rules that all marks rest on. */
  private String subtitle() {
    List<Length> thick = live.walls().stream().map(Wall::thickness).distinct().toList();
    String thickness = String.join(" / ", thick.stream().map(live.formats()::mark).toList());
    return live.text(
        "chart.subtitle",
        thickness,
        live.formats().mark(live.rules().gap()),
        live.context().slopeRun(),
        live.formats().mark(live.rules().overhang()),
        live.unit().symbol());
  }

  /** Writes the headings. */
  private void heads() {
    sheet.row(HEAD_ROW).height(HEAD);
    for (NotchChartColumn column : NotchChartColumn.values()) {
      String key = "chart.head." + column.name().toLowerCase(Locale.ROOT);
      boolean lower =
          column == NotchChartColumn.LOWER_SHOULDER || column == NotchChartColumn.LOWER_CORNER;
      boolean first = column == NotchChartColumn.FIRST_TOP || column == NotchChartColumn.FIRST_GAP;
      Cell head = Cell.text(live.text(key, live.names(first)));
      sheet.add(head.role(lower ? Role.COLUMN_HEAD_SHADED : Role.COLUMN_HEAD));
    }
    sheet.freeze(HEAD_ROW, 1).printTitles(1, HEAD_ROW);
  }

  /** Returns the cell of a column. */
  private Cell cell(Course course, NotchChartColumn column) {
    int round = course.round();
    return switch (column) {
      case ROUND -> round(round);
      case SIZE -> size(course);
      case UPPER_INSIDE ->
          upper(round, List.of(new WallMark(upperAt(round), course.notch().upper(), "")));
      case UPPER_OUTSIDE ->
          upper(
              round,
              WallMark.outside(
                  live, upperAt(round), course.notch(), round == live.plan().rounds()));
      case LOWER_SHOULDER ->
          shown(round, RoundColumn.LOWER, course.notch().lower(), Role.MARK_LOWER);
      case LOWER_CORNER -> corner(course);
      case NECK -> shown(round, RoundColumn.NECK, course.notch().neckHeight(), Role.BODY_CENTRE);
      case RISE ->
          shown(round, RoundColumn.RISE, course.notch().neckHeight().times(2), Role.BODY_CENTRE);
      case FIRST_TOP -> top(course, true);
      case SECOND_TOP -> top(course, false);
      case BUTTS -> Cell.text(buttsRun(course)).role(Role.LARGE_NUMBER);
      case SMALLEST -> smallest(round);
      case FIRST_GAP -> gap(round, true);
      case SECOND_GAP -> gap(round, false);
    };
  }

  private String upperAt(int round) {
    return live.map().round(round, RoundColumn.UPPER);
  }

  /** Returns an upper mark; in the last round only the logs laid first have one. */
  private Cell upper(int round, List<WallMark> marks) {
    return round == live.plan().rounds()
        ? WallMark.only(live, marks, true, Role.MARK)
        : WallMark.cell(live, marks, Role.MARK);
  }

  /** Returns the lower mark at the corner line, which a log sawn flat underneath has not. */
  private Cell corner(Course course) {
    String lower = live.map().round(course.round(), RoundColumn.LOWER);
    List<WallMark> marks = WallMark.corner(live, lower, course.notch());
    return new RoundLowers(live, course, sheet).hasFlatBed()
        ? WallMark.only(live, marks, false, Role.MARK_LOWER)
        : WallMark.cell(live, marks, Role.MARK_LOWER);
  }

  /** Returns the round's number, ticked when it is cut. */
  private Cell round(int round) {
    String cut = "IF(" + TypedBox.CUT.named(round) + "<>\"\",\"✓ \",\"\")&" + round;
    String tick = live.plan().job().built().isCut(round) ? "✓ " : "";
    return Cell.formula(cut, tick + round)
        .role(Role.LARGE)
        .linkTo(Tab.ofRound(live.context().words(), round));
  }

  /** Returns the size; the exact mean, where sizes have no step, with two decimals. */
  private Cell size(Course course) {
    boolean exact = live.rules().sizeStep().isZero();
    Cell cell =
        /** Returns a value of the working sheet in the format of marks. */
        shown(
            course.round(),
            RoundColumn.SIZE,
            course.notch().size(),
            exact ? Role.BODY_CENTRE : Role.LARGE_NUMBER);
    return exact ? cell.format(Cell.Format.DECIMAL_2) : cell;
  }

  private Cell shown(int round, RoundColumn column, Length now, Role role) {
    return live.mark(live.map().round(round, column), now, role);
  }

  /** Returns which way the butts run, pen by pen: the next one has them as in a mirror. */
  private String buttsRun(Course course) {
    Building building = live.map().building();
    int pens = building.hasWing() ? 1 : Math.max(1, building.pens().size());
    return IntStream.range(0, pens)
        .mapToObj(pen -> course.clockwise() == (pen % 2 == 0))
        .map(way -> live.text(way ? "chart.clockwise" : "chart.counterclockwise"))
        .collect(Collectors.joining(" "));
  }

  /** Returns the height of the necks' tops of a pair of walls above the first bed. */
  private Cell top(Course course, boolean first) {
    int round = course.round();
    RoundColumn column = first ? RoundColumn.FIRST_HEIGHT : RoundColumn.SECOND_HEIGHT;
    List<Length> heights =
        first ? live.plan().stack().firstHeights() : live.plan().stack().secondHeights();
    return live.tape(live.map().round(round, column), heights.get(round - 1), Role.BODY_CENTRE);
  }

  /** Returns the least shoulder with the face wanted over UPPER. */
  private Cell smallest(int round) {
    Cell cell = new LiveRounds(live).smallestEnd(live.course(round));
    Cell.Number now = (Cell.Number) ((Cell.Formula) cell.value()).result();
    return Cell.formula(live.map().round(round, RoundColumn.SMALLEST_END), now.number())
        .role(Role.BODY_CENTRE)
        .format(live.markFormat());
  }

  /** Returns the gap to the round below; a dash in the first round. */
  private Cell gap(int round, boolean first) {
    if (round == 1) {
      return Cell.text("–").role(Role.BODY_CENTRE);
    }
    RoundColumn column = first ? RoundColumn.FIRST_GAP : RoundColumn.SECOND_GAP;
    Length now = new LiveRounds(live).nominalGap(round, first);
    return live.printed(live.map().round(round, column), now, Role.BODY_CENTRE);
  }

  /** Marks the lower marks of a round in which corners are put right: its page has those. */
  private void putRight(Course course) {
    String changed = new RoundLowers(live, course, sheet).changed();
    int column = COLUMNS.number(NotchChartColumn.LOWER_SHOULDER);
    Area lowers = new Area(sheet.row(), column, sheet.row(), column + 1);
    sheet.rule(new Rule.LooksLike(lowers, changed, Role.FLAG));
  }

  /** Turns gaps outside the limits, and necks that are too thin, black. */
  private void flags(int round) {
    int first = COLUMNS.number(NotchChartColumn.FIRST_GAP);
    Area gaps = new Area(sheet.row(), first, sheet.row(), first + 1);
    String cell = Area.cell(sheet.row(), first).toString();
    String small = cell + "<" + live.map().rule(RuleLine.GAP_LEAST);
    String large = cell + ">" + live.map().rule(RuleLine.GAP_MOST);
    String out = "AND(ISNUMBER(" + cell + "),OR(" + small + "," + large + "))";
    sheet.rule(new Rule.LooksLike(gaps, out, Role.FLAG));
    Area neck = Area.cell(sheet.row(), COLUMNS.number(NotchChartColumn.NECK));
    String drops =
        live.walls().stream()
            .map(wall -> live.map().wall(wall, WallColumn.DROP))
            .reduce((one, other) -> one + "," + other)
            .orElseThrow();
    String thin =
        live.map().round(round, RoundColumn.NECK)
            + "-MAX("
            + drops
            + ")<"
            + live.map().rule(RuleLine.NECK_LEAST);
    sheet.rule(new Rule.LooksLike(neck, thin, Role.FLAG));
  }

  /**
   * Returns by how much the sheet is made smaller to fit the page across; a column is seven pixels
   * a character and five more wide, 96 pixels an inch.
   */
  private double scale() {
    double wide = live.context().paper() == Paper.A4 ? 784 : 734;
    double own = Arrays.stream(widths()).map(width -> (7 * width + 5) * 0.75).sum();
    return StrictMath.min(1, wide / own);
  }

  private boolean drawn() {
    return live.context().issue().pictures();
  }

  /** Draws how the line is found that all these marks are measured from. */
  private void centreLine() {
    Drawn drawn = new Drawn(live.context(), sheet);
    for (Picture picture : drawn.made(() -> List.of(drawn.drawings().centreLine()))) {
      sheet.nextRow().height(CENTRE_LINE);
      drawn.lay(picture, 0, 0.02, CENTRE_WIDE);
    }
  }

  /** Writes what the columns mean. */
  private void notes() {
    noteLines()
        .forEach(
            line -> {
              sheet.nextRow().height(noteHeight(line));
              sheet.addAcross(WIDTHS.length, Cell.text(line).role(Role.PLAIN));
            });
  }

  private Stream<String> noteLines() {
    return live.context().words().lines("chart.note").stream();
  }

  private static double noteHeight(String line) {
    return TextHeight.of(line, Role.PLAIN, StrictMath.floor(Arrays.stream(WIDTHS).sum()));
  }
}
