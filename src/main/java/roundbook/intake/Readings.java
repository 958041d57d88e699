package roundbook.intake;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import roundbook.table.Table;
import roundbook.units.LengthReader;
import roundbook.units.LengthReader.Reading;
import roundbook.units.LengthUnit;

/**
 * Reads the measures of a tally, each text once.
 *
 * <p>A tally's measures are taken to the nearest quarter of an inch or centimetre, so a long one
 * writes the same few hundred texts over and over.
 */
final class Readings {
  private static final int MOST = 10_000;

  private final boolean decimalComma;
  private final Map<LengthUnit, Map<String, Optional<Reading>>> read =
      new EnumMap<>(LengthUnit.class);

  Readings(Table table) {
    this.decimalComma = table.decimalComma();
  }

  /** Reads a text; empty when it is no measure. */
  Optional<Reading> read(String text, LengthUnit unit) {
    Map<String, Optional<Reading>> known = read.computeIfAbsent(unit, each -> new HashMap<>());
    if (known.size() >= MOST) {
      known.clear();
    }
    return known.computeIfAbsent(text, reader(unit)::read);
  }

  /** Returns the reader of texts whose bare numbers have a unit. */
  LengthReader reader(LengthUnit unit) {
    return new LengthReader(unit, decimalComma);
  }
}
