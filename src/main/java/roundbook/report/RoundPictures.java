package roundbook.report;

import roundbook.page.SheetBuilder;
import roundbook.stack.Course;

/** The drawings on a round's page: both faces of a log, and the plan with the butts. */
final class RoundPictures {
  private static final double HEIGHT = 100;

  private RoundPictures() {}

  /** Puts the drawings in the current row of the sheet. */
  static void put(Live live, Course course, SheetBuilder sheet) {
    sheet.height(HEIGHT);
  }
}
