package roundbook.report.round;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import roundbook.page.Area;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Fit;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.stack.Course;
import roundbook.units.LengthUnit;

/**
 * One page a round, from which a crew lays out, cuts and sets the logs of that round.
 *
 * <p>From the top: the round's number with its four marks, both faces of a log, the table of the
 * logs, what is typed in after measuring, the corner readings, what is special, the cautions.
 */
public final class RoundSheets {
  /** More walls than one ring has take two pages. */
  private static final int RING = 4;

  /** How many columns the grid of a page has. */
  static final int COLUMNS = 36;

  /** The width of a column in characters. */
  static final double COLUMN_WIDTH = 3.86;

  /**
   * The least scale at which a page is still read at arm's length: what is marked by stands at 11
   * points or more, notes of 11 points become 8.
   */
  private static final double LEAST_SCALE = 0.73;

  private final LiveContext live;
  private final int round;
  private final PageSetup page;
  private final SheetBuilder sheet;
  private final RoundHead head;
  private final RoundPictures pictures;
  private final RoundNotes notes;
  private int printed;

  /** The first row of the page that is written. */
  private int top = 1;

  private RoundSheets(LiveContext live, Course course, RoundDrawings drawings, Fit fit) {
    this.live = live;
    this.round = course.round();
    this.page = live.context().page(PageKind.SITE).lying().fit(fit);
    String name = Tab.ofRound(live.context().words(), round);
    this.sheet = new SheetBuilder(name, page).id(Tab.roundId(round));
    double[] widths = new double[COLUMNS];
    Arrays.fill(widths, COLUMN_WIDTH);
    sheet.widths(widths);
    this.head = new RoundHead(live, course, sheet);
    this.pictures = new RoundPictures(live, drawings, sheet);
    this.notes = new RoundNotes(live, round, sheet);
  }

  /** Returns the sheets of all rounds from the lowest up. */
  public static List<Sheet> sheets(CrewContext context) {
    LiveContext live = LiveContext.of(context);
    return live.plan().choice().courses().stream().map(course -> sheet(live, course)).toList();
  }

  /** Returns the sheet of one round. */
  public static Sheet sheet(LiveContext live, int round) {
    return sheet(live, live.plan().choice().courses().get(round - 1));
  }

  /**
   * Writes one round's page, or two pages where one would print too small to be read.
   *
   * <p>Before a second page is taken, what is of no use at the log goes under what is printed: why
   * these logs were chosen, then the plan, for the table has its corners too.
   */
  private static Sheet sheet(LiveContext live, Course course) {
    RoundDrawings drawings = new RoundDrawings(live, course.round());
    for (Extra extra : live.walls().size() > RING ? new Extra[0] : Extra.values()) {
      RoundSheets whole = new RoundSheets(live, course, drawings, Fit.ONE_PAGE);
      whole.onOnePage(extra);
      if (whole.high(1) * LEAST_SCALE <= whole.page.high()) {
        return whole.build();
      }
    }
    RoundSheets parted = new RoundSheets(live, course, drawings, Fit.ONE_WIDE);
    parted.onTwoPages();
    return parted.build();
  }

  /** What is printed besides what is marked and typed, from much to little. */
  private enum Extra {
    /** The plan, and why these logs were chosen. */
    PLAN_AND_WHY,
    /** The plan. */
    PLAN,
    /** Nothing. */
    NONE
  }

  /** Puts everything in the order of work, to be scaled to one page. */
  private void onOnePage(Extra extra) {
    head.put();
    pictures.putFaces(sheet, false);
    new RoundTable(live, round, sheet).put();
    new RoundTyped(live, round, sheet).put();
    if (extra == Extra.NONE) {
      notes.put(notes.all(false), COLUMNS);
      printed = sheet.row();
      besidePlan(notes.why());
      return;
    }
    besidePlan(notes.all(extra == Extra.PLAN_AND_WHY));
    printed = sheet.row();
    if (extra == Extra.PLAN) {
      notes.put(notes.why(), COLUMNS);
    }
  }

  /** Puts what is needed to lay out on one page and what is typed afterwards on the next. */
  private void onTwoPages() {
    sheet.printTitles(1, 1);
    head.put();
    if (live.walls().size() > RING) {
      marksThenBoxes();
      return;
    }
    pictures.putFaces(sheet, false);
    int table = sheet.row() + 1;
    new RoundTable(live, round, sheet).put();
    if (high(1) > page.high()) {
      sheet.breakAfter(table - 1);
    } else {
      table = 1;
    }
    List<RoundNotes.Line> left = whatIsLeft(notes.laying(), table);
    left.addAll(notes.others());
    sheet.breakAfter(sheet.row());
    top = sheet.row() + 1;
    new RoundTyped(live, round, sheet).put();
    besidePlan(left);
    printed = sheet.row();
  }

  /**
   * Puts all that is marked by on one page; on the next how it looks and what is typed. So many
   * logs leave no room for the drawings beside their table.
   */
  private void marksThenBoxes() {
    new RoundTable(live, round, sheet).put();
    new RoundJunctions(live, round, sheet).put();
    List<RoundNotes.Line> left = whatIsLeft(notes.laying(), 1);
    left.addAll(whatIsLeft(notes.others(), 1));
    sheet.breakAfter(sheet.row());
    top = sheet.row() + 1;
    boolean planned = pictures.putFaces(sheet, true);
    new RoundTyped(live, round, sheet).put();
    if (planned) {
      notes.put(left, COLUMNS);
    } else {
      besidePlan(left);
    }
    printed = sheet.row();
  }

  /** Puts the lines for which the page that begins with a row has room, and returns the others. */
  private List<RoundNotes.Line> whatIsLeft(List<RoundNotes.Line> lines, int first) {
    List<RoundNotes.Line> left = new ArrayList<>();
    for (RoundNotes.Line line : lines) {
      if (high(first) + notes.height(line, COLUMNS) <= page.high()) {
        notes.put(List.of(line), COLUMNS);
      } else {
        left.add(line);
      }
    }
    return left;
  }

  /** Puts notes with the plan beside them, in rows at least as high as the plan. */
  private void besidePlan(List<RoundNotes.Line> lines) {
    int first = sheet.row() + 1;
    if (!pictures.fits(room())) {
      sheet.breakAfter(sheet.row());
      top = first;
      // A page with nothing but a drawing is left out by some programs.
      lines = lines.isEmpty() ? List.of(notes.caution()) : lines;
    }
    double plan = pictures.putPlanWithin(first, room());
    notes.put(lines, pictures.noteColumns());
    double missing = plan - high(first);
    if (missing > 0) {
      sheet.nextRow().height(missing);
    }
  }

  /** Returns how much room is left on a second page, in points; a sheet of one page is scaled. */
  private double room() {
    if (top == 1) {
      return Double.MAX_VALUE;
    }
    double used = top > sheet.row() ? 0 : high(top);
    return page.high() - (high(1) - high(2)) - used;
  }

  /** Returns how high the rows from one to the last printed or current row stand, in points. */
  private double high(int from) {
    int last = printed > 0 ? printed : sheet.row();
    return 72
        * sheet
            .sizeOf(new Area(from, 1, StrictMath.max(from, last), 1))
            .height()
            .in(LengthUnit.INCH);
  }

  private Sheet build() {
    return sheet.printArea(new Area(1, 1, printed, COLUMNS)).build();
  }
}
