package roundbook.intake;

import java.util.Locale;
import roundbook.problem.Phrase;

/** Why a column of a tally is not read but only carried through. */
enum Unread {
  /** It is read. */
  READ,
  /** A word of its heading is not known. */
  UNKNOWN,
  /** A quantity that no log is cut by. */
  OTHER,
  /** Half of a diameter. */
  RADIUS,
  /** A quarter of a girth. */
  QUARTER,
  /** Eighths of an inch. */
  EIGHTHS,
  /** Hundredths. */
  PERCENT,
  /** A place on the globe. */
  PLACE,
  /** What was ordered. */
  NOMINAL,
  /** A number of the row. */
  RUNNING,
  /** A label beside a tag. */
  LABEL,
  /** Over bark beside a column under bark. */
  OVER_BARK,
  /** Figures reckoned beside such as were measured. */
  ESTIMATED,
  /** Another column means the same. */
  SAME,
  /** Numbers that the heading's meaning does not fit. */
  NO_FIT,
  /** Nothing stands in it, and its heading is not certain. */
  EMPTY,
  /** A diameter that does not say where. */
  NOWHERE,
  /** A diameter of the standing tree. */
  STANDING;

  private final Phrase phrase =
      Phrase.of("unread." + name().toLowerCase(Locale.ROOT).replace('_', '-'));

  /** Returns the reason. */
  Phrase phrase() {
    return phrase;
  }
}
