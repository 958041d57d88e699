package roundbook.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Finds values that lie apart from all others of their column by the ratio of two units.
 *
 * <p>A value is far out when it lies more than three spreads of the quartiles beyond them (Tukey,
 * Exploratory Data Analysis, 1977); it is a doubt only where, divided by the ratio of two units, it
 * lies among the others. A tally of few logs has no quartiles worth the name and is left alone.
 */
final class Outliers {
  /** Centimetres and inches, feet and metres, a slipped point, inches and feet, millimetres. */
  private static final double[] FACTORS = {2.54, 3.2808, 10, 12, 25.4};

  private static final int FEWEST = 6;
  private static final int LOOKED_AT = 500;
  private static final double FAR = 3;
  private static final double NEAR = 1.5;
  private static final double LEAST_SPREAD = 0.05;

  private final Map<Field, Range> ranges = new EnumMap<>(Field.class);

  /** Where the middle half of a column's values lies, in nanometres. */
  private record Range(double low, double high) {
    double spread() {
      return Math.max(high - low, LEAST_SPREAD * (low + high));
    }

    boolean holds(double value, double spreads) {
      return value >= low - spreads * spread() && value <= high + spreads * spread();
    }
  }

  /**
   * Looks at the first rows of a block.
   *
   * @param columns the columns
   * @param units the units of bare numbers
   * @param rows the rows
   * @param comma whether numbers are written with a decimal comma
   */
  Outliers(Map<Field, Heading> columns, Units units, List<Row> rows, boolean comma) {
    columns.forEach(
        (field, heading) -> {
          boolean along = field == Field.LENGTH;
          Optional<LengthUnit> unit = along ? units.length() : heading.unit().or(units::diameter);
          if (unit.isPresent() && (along || field.diameter())) {
            take(field, values(heading, rows, new LengthReader(unit.get(), comma)));
          }
        });
  }

  private void take(Field field, double[] values) {
    if (values.length >= FEWEST) {
      Arrays.sort(values);
      double low = values[values.length / 4];
      double high = values[values.length - 1 - values.length / 4];
      ranges.put(field, new Range(low, high));
    }
  }

  private static double[] values(Heading heading, List<Row> rows, LengthReader reader) {
    double[] values = new double[Math.min(LOOKED_AT, rows.size())];
    int count = 0;
    for (Row row : rows.subList(0, values.length)) {
      Optional<Length> value = Measures.plain(row.cell(heading.column()), reader);
      if (value.isPresent()) {
        values[count++] = value.get().nanometres();
      }
    }
    return Arrays.copyOf(values, count);
  }

  /** Returns whether a value is far from its column's others and among them by another unit. */
  boolean isApart(Field field, Length value) {
    Range range = ranges.get(field);
    if (range == null || range.holds(value.nanometres(), FAR)) {
      return false;
    }
    for (double factor : FACTORS) {
      if (range.holds(value.nanometres() * factor, NEAR)
          || range.holds(value.nanometres() / factor, NEAR)) {
        return true;
      }
    }
    return false;
  }
}
