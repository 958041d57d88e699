package roundbook.page;

import java.util.Locale;

/**
 * The named columns of the cross-cuts and, under them, of the stems: what a later revision reads
 * back. Lengths are numbers of the job's unit.
 */
public enum CutColumn {
  /** The tags of the pieces; empty in a row of what is sawn off. */
  PIECES,
  /** The tag of each piece's stem. */
  OF_STEMS,
  /** Where each piece begins on its stem. */
  FROMS,
  /** The boxes to tick for a piece that is cut. */
  DONE,
  /** The boxes for the middle as measured. */
  MEASURED,
  /** The tags of the stems, in their own table. */
  STEMS,
  /** Their lengths. */
  LENGTHS,
  /** All diameters with their distances from the butt. */
  STATIONS,
  /** The stretches that are not used. */
  BAD,
  /** The species. */
  SPECIES,
  /** Whether diameters were taken over bark. */
  BARKS,
  /** The sweeps. */
  SWEEPS,
  /** What a stem is kept for. */
  KEEPS,
  /** Whether it is a log of the tally. */
  LOGS,
  /** The remarks. */
  REMARKS,
  /** The file it was read from. */
  FILES,
  /** The sheet. */
  SHEETS,
  /** The row. */
  ROWS;

  /** Returns the defined name, such as {@code Bucked_stations}. */
  public String named() {
    return Book.nameOf("Bucked", name().toLowerCase(Locale.ROOT));
  }

  /** Returns the name of the box to tick for a piece that is cut. */
  public static String cutBox(String piece) {
    return Book.nameOf("Piece_cut", piece);
  }

  /** Returns the name of the box for the middle of a piece as measured. */
  public static String midBox(String piece) {
    return Book.nameOf("Piece_mid", piece);
  }
}
