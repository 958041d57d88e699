package roundbook.job;

import java.util.Comparator;
import java.util.Locale;

/**
 * A station of a joint at which its gap is measured.
 *
 * @param below the round under the gap, counted from 1
 * @param wall the wall's name
 * @param at where on the wall, seen from outside
 */
public record GapSpot(int below, String wall, Station at) implements Comparable<GapSpot> {
  private static final Comparator<GapSpot> ORDER =
      Comparator.comparing(GapSpot::wall).thenComparing(GapSpot::below).thenComparing(GapSpot::at);

  /** Where on a wall. */
  public enum Station {
    /** At the left inside face. */
    LEFT,
    /** At the middle of the wall's logs. */
    MIDDLE,
    /** At the right inside face. */
    RIGHT;

    /** Returns its word in the names of cells. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Returns the wall and the station, by which cells are named. */
  public String named() {
    return wall + " " + at.word();
  }

  @Override
  public int compareTo(GapSpot other) {
    return ORDER.compare(this, other);
  }
}
