package roundbook.page;

import java.util.List;
import java.util.Locale;

/**
 * The named columns of the log list: what formulas look logs up by and what a new plan is made
 * from. The writer of the list and the reader of what came back name its columns by this list
 * alone.
 *
 * <p>The names are the same in every language, so that a later revision and other programs find
 * them. Lengths are numbers of the job's unit.
 */
public enum LogColumn {
  /** The row of the tally. */
  ROWS,
  /** The tags, as text. */
  TAGS,
  /** The butt diameters. */
  BUTTS,
  /** The middle diameters. */
  MIDS,
  /** The tip diameters. */
  TIPS,
  /** The species. */
  SPECIES,
  /** The sweeps. */
  SWEEPS,
  /** The rounds in which logs are placed. */
  ROUNDS,
  /** The walls on which logs are placed. */
  WALLS,
  /** The boxes for the butt as hewn, measured at the end of the log as it lies in the yard. */
  HEWN_BUTTS,
  /** The boxes for the middle as hewn, measured at half the length of the log as it lies. */
  HEWN_MIDS,
  /** The boxes for the tip as hewn. */
  HEWN_TIPS,
  /** The boxes to tick for a log that is lost. */
  LOST,
  /** The exact lengths. */
  LENGTHS,
  /** All diameters with their distances from the butt. */
  STATIONS,
  /** Where the butt comes from. */
  BUTT_SOURCES,
  /** Where the middle comes from. */
  MID_SOURCES,
  /** Where the tip comes from. */
  TIP_SOURCES,
  /** Whether diameters were taken over bark. */
  BARKS,
  /** What a log is kept for. */
  KEEPS,
  /** The wall that was wished for. */
  WISHED_WALLS,
  /** The round that was wished for. */
  WISHED_ROUNDS,
  /** Whether a log is passed over. */
  SKIPS,
  /** The remarks. */
  REMARKS,
  /** The file of the tally. */
  FILES,
  /** The sheet of the tally. */
  SHEETS,
  /** What a log measured as hewn when the list was written: butt, middle, tip. */
  HEWN_BEFORE,
  /** What is squared off the butt. */
  OFF_BUTTS,
  /** On which side of an opening a short log lies. */
  SIDES,
  /** How long a short log is cut. */
  SIDE_LENGTHS,
  /** At which end of it the butt of a short log lies. */
  SIDE_BUTTS;

  /** The boxes for diameters as hewn, from the butt on. */
  public static final List<LogColumn> HEWN = List.of(HEWN_BUTTS, HEWN_MIDS, HEWN_TIPS);

  /** Returns the defined name, such as {@code Log_stations}. */
  public String named() {
    return Book.nameOf("Log", name().toLowerCase(Locale.ROOT));
  }

  /** Returns the defined name of a column that the tally has beyond these, counted from 1. */
  public static String extra(int number) {
    return Book.nameOf("Log", "extra", number);
  }
}
