package roundbook.report.list;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import roundbook.job.Setting;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Fit;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.page.TypedBox;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMath;
import roundbook.report.live.Readings;
import roundbook.report.mark.ShoulderFall;
import roundbook.stack.Course;
import roundbook.units.Length;

/**
 * The corner readings of every round with their verdict and the next lower marks.
 *
 * <p>Readings are typed on the rounds' own pages; this page gathers them. A round whose corners are
 * all within the tolerance changes nothing.
 */
final class LevelsSheet {
  private static final int HEAD_ROW = 4;
  private static final int FIRST_CORNER = 4;

  /** With more rounds two pages are better read. */
  private static final int ON_ONE_PAGE = 10;

  private final LiveContext live;
  private final List<String> corners;
  private final SheetBuilder sheet;

  private LevelsSheet(LiveContext live) {
    this.live = live;
    this.corners = live.map().building().corners();
    PageSetup page = live.context().page(PageKind.SITE).lying();
    page = isRead() || live.plan().rounds() > ON_ONE_PAGE ? page : page.fit(Fit.ONE_PAGE);
    this.sheet = new SheetBuilder(tab(live), page).id(Tab.LEVELS.id());
  }

  /** Returns the sheet. */
  static List<Sheet> of(CrewContext context) {
    return List.of(new LevelsSheet(LiveContext.of(context)).sheet());
  }

  /** Returns the name on the sheet's tab. */
  private static String tab(LiveContext live) {
    return Tab.LEVELS.in(live.context().words());
  }

  /** Returns whether any corner was read, so that the chart has something to show. */
  private boolean isRead() {
    return !live.plan().job().built().readings().isEmpty();
  }

  /** Returns how many columns the sheet has. */
  private int columns() {
    return FIRST_CORNER + corners.size() * 2 + 2;
  }

  /** Writes the sheet from the top down. */
  private Sheet sheet() {
    widths();
    title();
    heads();
    live.plan().choice().courses().forEach(this::row);
    int last = HEAD_ROW + live.plan().rounds();
    for (String line : live.context().words().lines("levels.how")) {
      double high = TextHeight.of(line, Role.PLAIN, characters());
      sheet.row(last + 1).height(high).addAcross(columns(), Cell.text(line).role(Role.PLAIN));
      last++;
    }
    if (isRead()) {
      sheet.breakAfter(last);
    } else {
      sheet.printTitles(HEAD_ROW - 1, HEAD_ROW);
    }
    new LevelsWithin(live, sheet).put();
    last = sheet.row();
    new DriftChart(live, sheet, columns()).put(HEAD_ROW + 1);
    last = isRead() ? sheet.row() : last;
    return sheet.freeze(HEAD_ROW, 1).printArea(new Area(1, 1, last, columns())).build();
  }

  /** Makes the first, second and last columns fit their texts. */
  private void widths() {
    double[] widths = new double[columns()];
    Arrays.fill(widths, 10);
    widths[0] = 8;
    widths[1] = 15;
    widths[columns() - 1] = 24;
    sheet.widths(widths);
  }

  /** Writes the black bar and the line that says when a round is level. */
  private void title() {
    sheet.row(1).height(44);
    sheet.addAcross(4, Cell.text(live.text("levels.title")).role(Role.TITLE));
    sheet.addAcross(
        columns() - 6,
        Cell.text(live.text("levels.side", live.names(false))).role(Role.TITLE_NOTE));
    sheet.addAcross(2, Cell.text(live.context().revision()).role(Role.REVISION));
    String tolerance = live.formats().mark(live.rules().length(Setting.LEVEL_TOLERANCE));
    String level =
        live.text("levels.tolerance", tolerance, live.unit().symbol())
            + live.readFaces().map(faces -> " " + faces).orElse("");
    sheet.row(2).height(TextHeight.of(level, Role.PLAIN_BOLD, characters()));
    sheet.addAcross(columns(), Cell.text(level).role(Role.PLAIN_BOLD));
  }

  /** Returns how wide all columns are together. */
  private double characters() {
    return 8 + 15 + 24 + 10 * (columns() - 3);
  }

  /** Writes the two rows of headings. */
  private void heads() {
    sheet.row(HEAD_ROW - 1).height(20);
    sheet.addAcross(3, head("levels.head.planned"));
    sheet.addAcross(corners.size(), head("levels.head.read"));
    sheet.addAcross(2, head("levels.head.check"));
    sheet.addAcross(
        corners.size() + 1,
        Cell.text(live.text("levels.head.next", live.names(true))).role(Role.COLUMN_HEAD_SHADED));
    sheet.row(HEAD_ROW).height(32);
    sheet.add(head("levels.head.round")).add(head("levels.head.tape"));
    sheet.add(Cell.text(live.unit().symbol()).role(Role.COLUMN_HEAD));
    corners.forEach(corner -> sheet.add(Cell.text(corner).role(Role.COLUMN_HEAD)));
    sheet.add(head("levels.head.spread")).add(head("levels.head.verdict"));
    corners.forEach(corner -> sheet.add(Cell.text(corner).role(Role.COLUMN_HEAD_SHADED)));
    sheet.add(head("levels.head.note"));
  }

  /** Returns a heading by its key. */
  private Cell head(String key) {
    return Cell.text(live.text(key)).role(Role.COLUMN_HEAD);
  }

  /** Writes one round: planned height, readings, check, next lower marks, note. */
  private void row(Course course) {
    int round = course.round();
    String planned = live.map().round(round, RoundColumn.LEVEL_HEIGHT);
    Length now = live.plan().stack().levelHeight(round);
    sheet.row(HEAD_ROW + round).height(20);
    String tab = Tab.ofRound(live.context().words(), round);
    sheet.add(Cell.number(round).role(Role.LARGE).linkTo(tab));
    sheet.add(live.tape(planned, now, Role.LARGE_NUMBER));
    sheet.add(live.printed(planned, now, Role.BODY_CENTRE));
    for (String corner : corners) {
      String name = TypedBox.READING.named(round, corner);
      String formula = "IF(ISNUMBER(" + name + ")," + name + ",\"\")";
      Optional<Length> read = live.plan().job().built().reading(round, corner);
      sheet.add(Readings.cell(live, formula, read));
    }
    Readings known = new Readings(live, round);
    sheet.add(Readings.cell(live, spread(round), known.spread()));
    sheet.add(Cell.formula(verdict(round), known.verdict()).role(Role.GOOD));
    looks(round);
    corners.forEach(corner -> sheet.add(next(round, corner)));
    sheet.add(Cell.formula(note(round), known.note()).role(Role.BODY));
  }

  /** Returns the cells of a round's readings. */
  private Area readings(int round) {
    return Area.cell(HEAD_ROW + round, FIRST_CORNER).sized(1, corners.size());
  }

  /** Returns the cell of a round's verdict. */
  private Area verdictCell(int round) {
    return Area.cell(HEAD_ROW + round, FIRST_CORNER + corners.size() + 1);
  }

  /** Returns the highest reading less the lowest; empty without readings. */
  private String spread(int round) {
    String read = readings(round).toString();
    return "IF(COUNT(" + read + ")=0,\"\",MAX(" + read + ")-MIN(" + read + "))";
  }

  /** Returns the verdict: out where the spread is over the tolerance; empty without readings. */
  private String verdict(int round) {
    String spread = Area.cell(HEAD_ROW + round, FIRST_CORNER + corners.size()).toString();
    return "IF("
        + spread
        + "=\"\",\"\",IF(ROUND("
        + spread
        + "-"
        + live.map().rule(RuleLine.TOLERANCE)
        + ",6)>0,"
        + LiveMath.literal(live.text("levels.fix"))
        + ","
        + LiveMath.literal(live.text("live.ok"))
        + "))";
  }

  /** Turns a verdict that asks for a change black. */
  private void looks(int round) {
    String fix = verdictCell(round).absolute() + "=" + LiveMath.literal(live.text("levels.fix"));
    sheet.rule(new Rule.LooksLike(verdictCell(round), fix, Role.FLAG));
  }

  /** Returns a corner's next lower mark, from the working sheet. */
  private Cell next(int round, String corner) {
    if (round == live.plan().rounds()) {
      return Cell.text("–").role(Role.SHADED).align(Cell.Align.CENTRE);
    }
    String chart = live.map().round(round + 1, RoundColumn.LOWER);
    Area own = Area.cell(HEAD_ROW + round, verdictCell(round).left() + 1 + corners.indexOf(corner));
    ShoulderFall fall = new ShoulderFall(live, true, corner);
    String planned = fall.isDeeper() ? "ROUND(" + chart + fall.plus() + ",6)" : chart;
    String found = fall.isDeeper() ? "ROUND(" + own.absolute() + ",6)" : own.absolute();
    sheet.rule(new Rule.LooksLike(own, found + "<>" + planned, Role.CHANGED));
    String next = live.map().corner(round, corner, CornerColumn.NEXT) + fall.plus();
    Length now = new Readings(live, round).next(corner).plus(fall.more());
    return live.mark(next, now, Role.RESULT);
  }

  /** Returns what else must be said, as {@link Readings#note} has it. */
  private String note(int round) {
    String left = live.map().corners(round, CornerColumn.LEFT);
    String common = live.map().round(round, RoundColumn.COMMON);
    String out = "MAX(MAX(" + left + ")-" + common + "," + common + "-MIN(" + left + "))";
    String over = "ROUND(" + out + "-" + live.map().rule(RuleLine.MOST_CHANGE) + ",6)>0";
    String rest = "IF(" + over + "," + LiveMath.literal(live.text("levels.rest")) + ",\"\")";
    boolean last = round == live.plan().rounds();
    String height = new Readings(live, round).height();
    return "IF(COUNT("
        + readings(round)
        + ")=0,\"\","
        + String.join("&", last ? List.of(rest, height) : List.of(rest, late(round), height))
        + ")";
  }

  private String late(int round) {
    String fix = verdictCell(round) + "=" + LiveMath.literal(live.text("levels.fix"));
    String cut = LiveMath.literal(live.text("levels.is_cut", round + 1));
    return "IF(AND(" + fix + "," + TypedBox.CUT.named(round + 1) + "<>\"\")," + cut + ",\"\")";
  }
}
