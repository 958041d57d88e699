package roundbook.report.live;

import roundbook.job.Wall;
import roundbook.page.CellNames;

/**
 * The defined names of cells that are typed in on site.
 *
 * <p>They are the same in every language, so that a later revision and other programs find them.
 */
public final class LiveNames {
  private LiveNames() {}

  /** Returns the name of the lower mark as cut. */
  public static String lowerCut(int round, Wall wall) {
    return CellNames.lowerCut(round, wall.name());
  }

  /** Returns the name of the upper mark as cut. */
  public static String upperCut(int round, Wall wall) {
    return CellNames.upperCut(round, wall.name());
  }

  /** Returns the name of the x that says a round is cut. */
  public static String cut(int round) {
    return CellNames.cut(round);
  }

  /** Returns the name of a corner's height as read after a round. */
  public static String reading(int round, String corner) {
    return CellNames.reading(round, corner);
  }

  /** Returns the name of a corner's height as read on top of a round's first-laid logs. */
  public static String firstReading(int round, String corner) {
    return CellNames.firstReading(round, corner);
  }
}
