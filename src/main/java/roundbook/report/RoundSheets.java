package roundbook.report;

import java.util.Arrays;
import java.util.List;
import roundbook.page.Area;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Fit;
import roundbook.page.PageSetup.Kind;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.stack.Course;

/**
 * One page a round, from which a crew lays out, cuts and sets the logs of that round.
 *
 * <p>From the top: the round's number with its four marks, both faces of a log, the table of the
 * logs, what is typed in after measuring, the corner readings, what is special, the cautions.
 */
final class RoundSheets {
  /** How many columns the grid of a page has. */
  static final int COLUMNS = 36;

  private static final double COLUMN_WIDTH = 3.86;

  private RoundSheets() {}

  /** Returns the sheets of all rounds from the lowest up. */
  static List<Sheet> of(CrewContext context) {
    Live live = Live.of(context);
    return context.plan().choice().courses().stream().map(course -> sheet(live, course)).toList();
  }

  /** Writes one round's page. */
  private static Sheet sheet(Live live, Course course) {
    int round = course.round();
    PageSetup page = live.context().page(Kind.SITE).lying().fit(Fit.ONE_PAGE);
    String name = Tab.ofRound(live.context().words(), round);
    SheetBuilder sheet = new SheetBuilder(name, page).id(Tab.roundId(round));
    double[] widths = new double[COLUMNS];
    Arrays.fill(widths, COLUMN_WIDTH);
    sheet.widths(widths);
    new RoundHead(live, course, sheet).put();
    RoundNotes notes = new RoundNotes(live, round, sheet);
    RoundPictures pictures = new RoundPictures(live, course, sheet.nextRow());
    pictures.putFaces();
    new RoundTable(live, round, sheet).put();
    new RoundTyped(live, round, sheet).put();
    pictures.putPlan(sheet.row() + 1);
    notes.put(pictures.noteColumns());
    return sheet.printArea(new Area(1, 1, sheet.row(), COLUMNS)).build();
  }
}
