package roundbook.intake;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import roundbook.table.Cell;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Remembers the measures of cells that were read without a word being said.
 *
 * <p>A tally's measures are taken to the nearest quarter of an inch or centimetre, so a long one
 * writes the same few hundred cells over and over.
 */
final class Readings {
  private static final int MOST = 10_000;

  private final boolean decimalComma;
  private final boolean hyphenFeet;
  private final Heading lengths;
  private final Map<Field, OfField> fields = new EnumMap<>(Field.class);

  /** The cells of one field. */
  static final class OfField {
    private final Map<String, Known> known = new HashMap<>();

    /** Returns what a cell was read as when it stood here before; null when it did not. */
    Length known(Cell cell) {
      Known like = known.get(cell.text());
      return like == null || !like.is(cell) ? null : like.length();
    }

    /** Remembers what a cell was read as. */
    void keep(Cell cell, Length length) {
      if (known.size() >= MOST) {
        known.clear();
      }
      known.put(cell.text(), new Known(cell, length));
    }
  }

  /** A cell and what it was read as. */
  private record Known(Cell cell, Length length) {
    boolean is(Cell other) {
      return other == cell
          || other.kind() == cell.kind()
              && other.unit().equals(cell.unit())
              && Objects.equals(other.number(), cell.number());
    }
  }

  /**
   * Begins without a measure.
   *
   * @param table the tally
   * @param hyphenFeet whether a length such as {@code 16-6} is feet and inches
   * @param lengths the heading of the lengths
   */
  public Readings(Table table, boolean hyphenFeet, Heading lengths) {
    this.decimalComma = table.decimalComma();
    this.hyphenFeet = hyphenFeet;
    this.lengths = lengths;
  }

  /** Returns the cells of a field that were read. */
  OfField of(Field field) {
    return fields.computeIfAbsent(field, each -> new OfField());
  }

  /** Reads a text; empty when it is no measure. */
  Optional<LengthReader.Reading> read(String text, LengthUnit unit) {
    return reader(unit).read(text);
  }

  /** Reads a length; empty when it is none. */
  Optional<LengthReader.Reading> readLength(String text, LengthUnit unit) {
    if (isPointed(text)) {
      String marked = lengths.wording().isFeetDotInches() ? HyphenFeet.pointed(text) : "";
      return marked.isEmpty() ? Optional.empty() : read(marked, unit);
    }
    return read(text, unit)
        .or(() -> hyphenFeet ? read(HyphenFeet.marked(text), unit) : Optional.empty());
  }

  /** Returns whether a length under a heading of feet and inches has a point in it. */
  boolean isPointed(String text) {
    return hyphenFeet && lengths.wording().isFeetAndInches() && HyphenFeet.isPointed(text);
  }

  /** Returns the reader of texts whose bare numbers have a unit. */
  LengthReader reader(LengthUnit unit) {
    return new LengthReader(unit, decimalComma);
  }
}
