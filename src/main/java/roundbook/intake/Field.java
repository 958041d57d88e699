package roundbook.intake;

import java.util.Locale;
import java.util.Optional;
import roundbook.problem.Phrase;

/** What a column of a tally means. */
enum Field {
  /** The tag on the butt end. */
  TAG,
  /** The tree that the log was cut from. */
  STEM,
  /** What stands before a tag that is not the only one: a load, a deck, a lot. */
  LOT,
  /** A number that only counts the rows. */
  RUNNING,
  /** What is stuck on the log: a bar code or a label. */
  LABEL,
  /** Logs in the plural: their tags, or how many there are. */
  LOGS,
  /** The length, end to end. */
  LENGTH,
  /** The inches beside a length's feet, or the centimetres beside its metres. */
  LENGTH_REST,
  /** The diameter at the thick end. */
  BUTT,
  /** The diameter halfway. */
  MID,
  /** The diameter at the thin end. */
  TIP,
  /** The girth at the thick end. */
  BUTT_GIRTH,
  /** The girth halfway. */
  MID_GIRTH,
  /** The girth at the thin end. */
  TIP_GIRTH,
  /** A second diameter across the first at the thick end. */
  BUTT_ACROSS,
  /** A second diameter across the first halfway. */
  MID_ACROSS,
  /** A second diameter across the first at the thin end. */
  TIP_ACROSS,
  /** A diameter that does not say where it was taken. */
  DIAMETER,
  /** The diameter of the standing tree at breast height. */
  DBH,
  /** The kind of tree. */
  SPECIES,
  /** How many logs alike the row stands for. */
  COUNT,
  /** Whether diameters were taken over the bark. */
  BARK,
  /** The greatest bow. */
  SWEEP,
  /** What the log is kept for. */
  KEEP,
  /** The wall wanted. */
  WALL,
  /** The round wanted. */
  ROUND,
  /** Whether to leave the log out. */
  SKIP,
  /** How far from the butt the middle diameter was taken. */
  MID_AT,
  /** Whether it is a butt log or an upper log. */
  PART,
  /** Diameters at many places along the log. */
  PROFILE,
  /** Free text. */
  REMARKS;

  private final Phrase phrase =
      Phrase.of("field." + name().toLowerCase(Locale.ROOT).replace('_', '-'));

  /** Returns whether it is a diameter at a known place. */
  boolean diameter() {
    return this == BUTT || this == MID || this == TIP;
  }

  /** Returns whether it is a girth. */
  boolean girth() {
    return this == BUTT_GIRTH || this == MID_GIRTH || this == TIP_GIRTH;
  }

  /** Returns the girth at the place of a diameter. */
  Field asGirth() {
    return switch (this) {
      case BUTT -> BUTT_GIRTH;
      case MID -> MID_GIRTH;
      case TIP -> TIP_GIRTH;
      default -> throw new IllegalArgumentException(this + " is no diameter");
    };
  }

  /** Returns the second reading at the place of a diameter. */
  Field across() {
    return switch (this) {
      case BUTT -> BUTT_ACROSS;
      case MID -> MID_ACROSS;
      case TIP -> TIP_ACROSS;
      default -> throw new IllegalArgumentException(this + " is no diameter");
    };
  }

  /** Returns whether it may name the log. */
  boolean names() {
    return this == TAG || this == STEM || this == RUNNING || this == LABEL || this == LOGS;
  }

  /** Returns the word used in problems. */
  Phrase phrase() {
    return phrase;
  }

  /** Returns the name by which a setting says which column it is, such as {@code Column_butt}. */
  String label() {
    return "Column_" + (this == TAG ? "log" : name().toLowerCase(Locale.ROOT));
  }

  /** Finds the field of a name such as {@code mid} or {@code butt_girth}. */
  static Optional<Field> named(String name) {
    String wanted = name.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
    for (Field field : values()) {
      if (field.name().equals(wanted) || wanted.equals("LOG") && field == TAG) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }
}
