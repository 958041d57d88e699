package roundbook.units;

/**
 * What makes a length that was read doubtful.
 *
 * @param kind what kind of doubt it is
 * @param written what was written, or the symbol of the larger unit; empty where neither matters
 * @param taken what it was taken as, or empty
 */
public record Doubt(DoubtKind kind, String written, String taken) {
  /** The kinds of doubts. */
  public enum DoubtKind {
    /** The text itself says that it is uncertain. */
    UNCERTAIN,
    /** Inches make a foot or more, centimetres a metre or more. */
    LARGE_PART,
    /** A fraction is one or more. */
    LARGE_FRACTION,
    /** A lone group of three digits was taken as a thousand and more. */
    THOUSANDS
  }

  /** Returns a doubt that needs no more words. */
  static Doubt of(DoubtKind kind) {
    return new Doubt(kind, "", "");
  }
}
