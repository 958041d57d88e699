package roundbook.units;

import java.util.Locale;
import java.util.Optional;

/** A unit of length that tapes, tallies and harvesters write down. */
public enum LengthUnit {
  /** The international inch, 25.4 mm by definition. */
  INCH("in", 25_400_000L),
  /** The international foot, twelve inches. */
  FOOT("ft", 304_800_000L),
  /** The millimetre. */
  MILLIMETRE("mm", 1_000_000L),
  /** The centimetre. */
  CENTIMETRE("cm", 10_000_000L),
  /** The decimetre, in which forests of the north write lengths. */
  DECIMETRE("dm", 100_000_000L),
  /** The metre. */
  METRE("m", 1_000_000_000L);

  private final String symbol;
  private final long nanometres;

  LengthUnit(String symbol, long nanometres) {
    this.symbol = symbol;
    this.nanometres = nanometres;
  }

  /** Returns the symbol in common use, such as {@code in} or {@code mm}. */
  public String symbol() {
    return symbol;
  }

  /** Returns how many nanometres one of this unit holds, exactly. */
  public long nanometres() {
    return nanometres;
  }

  /** Returns whether this unit belongs to metric work. */
  public boolean metric() {
    return this != INCH && this != FOOT;
  }

  /** Returns the step of lengths that need not be known better: an inch, in metric work 10 mm. */
  public Length coarseStep() {
    return Length.of(1, metric() ? CENTIMETRE : INCH);
  }

  /** Finds the unit of a symbol, whatever its case; empty when there is none. */
  public static Optional<LengthUnit> ofSymbol(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    for (LengthUnit unit : values()) {
      if (unit.symbol.equals(wanted)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
