package roundbook.heading;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** What a single word of a tally can mean. */
public enum Term {
  /** Along the log. */
  LENGTH,
  /** The thick end. */
  BUTT,
  /** Halfway along. */
  MID,
  /** The thin end. */
  TIP,
  /** Through the log. */
  DIAMETER,
  /** Round the log. */
  GIRTH,
  /** From the pith to the outside, half of a diameter. */
  RADIUS,
  /** A quarter of a girth, with which some scales begin. */
  QUARTER,
  /** A count of eighths or sixteenths of an inch. */
  EIGHTHS,
  /** At breast height of a standing tree. */
  BREAST,
  /** The kind of tree. */
  SPECIES,
  /** The log itself, or what is painted on it. */
  TAG,
  /** What is stuck on the log: a bar code or a label. */
  LABEL,
  /** Logs in the plural: a tag or a count. */
  LOGS,
  /** The tree that it was cut from. */
  STEM,
  /** What it came or lies in: a load, a deck, a lot. */
  LOT,
  /** A number that names something. */
  NUMBER,
  /** A number that only counts the rows. */
  RUNNING,
  /** How many alike. */
  COUNT,
  /** The bark. */
  BARK,
  /** Measured over the bark. */
  OVER,
  /** Measured under the bark, or peeled. */
  UNDER,
  /** With; over, before the bark. */
  WITH,
  /** Without; under, before the bark. */
  WITHOUT,
  /** On; over, before the bark. */
  ON,
  /** How bent it is. */
  SWEEP,
  /** What it is kept for. */
  KEEP,
  /** The wall it is wanted on. */
  WALL,
  /** The round it is wanted in. */
  ROUND,
  /** Whether to leave it out. */
  SKIP,
  /** How far from an end. */
  DISTANCE,
  /** An upper log. */
  UPPER,
  /** Which part of the stem. */
  PART,
  /** Diameters at many places. */
  PROFILE,
  /** Free text. */
  REMARKS,
  /** Of something, as in a number of logs. */
  OF,
  /** At a place. */
  AT,
  /** Says nothing of its own. */
  FILLER,
  /** Reckoned or guessed, not measured. */
  ESTIMATED,
  /** Ordered or wanted, not measured. */
  NOMINAL,
  /** One of two readings at a place. */
  READING,
  /** The excess length for squaring off. */
  TRIM,
  /** In hundredths. */
  PERCENT,
  /** On the globe. */
  PLACE,
  /** A quantity that no diameter or length is. */
  OTHER,
  /** In a cell: a total, an average or another figure over rows. */
  SUM,
  /** In a cell: what is counted, as in {@code 12 logs}. */
  COUNT_OF,
  /** In a cell: yes. */
  YES,
  /** In a cell: no. */
  NO,
  /** In a cell: a log that cannot be built with. */
  UNFIT,
  /** In a cell: turns the next word round. */
  NOT,
  /** In a cell: as in the row above. */
  DITTO;

  /** Returns the term of a name such as {@code tip} or {@code count-of}; null when none has it. */
  static Term named(String name) {
    return Named.TERMS.get(name);
  }

  /** The terms by name: a language has hundreds of lines, and each names one. */
  private static final class Named {
    static final Map<String, Term> TERMS = new HashMap<>();

    static {
      for (Term term : values()) {
        TERMS.put(term.name().toLowerCase(Locale.ROOT).replace('_', '-'), term);
      }
    }
  }

  /** Returns whether it is a word of cells, not of headings. */
  boolean inCells() {
    return compareTo(SUM) >= 0;
  }
}
