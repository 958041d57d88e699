package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * The first logs of a block as bare numbers, to conclude their units from.
 *
 * @param block the columns
 * @param rows the first rows
 * @param comma whether numbers are written with a decimal comma
 * @param own the unit in which lengths that state theirs are taken; empty leaves them out
 */
record Sample(Map<Field, Heading> block, List<Row> rows, boolean comma, Optional<LengthUnit> own) {
  private static final int MOST = 2000;

  /**
   * A log's bare numbers; what has a unit of its own, or is missing, is not a number here.
   *
   * @param length the length
   * @param thick the diameter nearest to the butt, a girth divided by pi
   * @param thin the diameter nearest to the tip
   */
  record Bare(double length, double thick, double thin) {}

  /** Returns the logs of which some number is bare. */
  List<Bare> logs() {
    List<Bare> logs = new ArrayList<>();
    for (Row row : rows.subList(0, Math.min(rows.size(), MOST))) {
      double length = length(row);
      double butt = diameter(row, Field.BUTT);
      double mid = diameter(row, Field.MID);
      double tip = diameter(row, Field.TIP);
      double thick = first(butt, mid, tip);
      if (!Double.isNaN(length) && !Double.isNaN(thick)) {
        logs.add(new Bare(length, thick, first(tip, mid, butt)));
      }
    }
    return logs;
  }

  private double length(Row row) {
    double bare = number(row, Field.LENGTH);
    Cell cell = row.cell(block.get(Field.LENGTH).column());
    if (!Double.isNaN(bare) || own.isEmpty()) {
      return bare;
    }
    Optional<Length> stated =
        cell.kind() == CellKind.NUMBER
            ? LengthUnit.ofSymbol(cell.unit()).map(unit -> Length.of(cell.number(), unit))
            : new LengthReader(own.get(), comma)
                .read(cell.text())
                .map(LengthReader.Reading::length);
    return stated.map(length -> length.in(own.get())).orElse(Double.NaN);
  }

  private double diameter(Row row, Field field) {
    double through = number(row, field);
    return Double.isNaN(through) ? number(row, field.asGirth()) / Math.PI : through;
  }

  private double number(Row row, Field field) {
    Heading heading = block.get(field);
    return heading == null ? Double.NaN : bare(row.cell(heading.column())).orElse(Double.NaN);
  }

  private static double first(double... numbers) {
    for (double number : numbers) {
      if (!Double.isNaN(number)) {
        return number;
      }
    }
    return Double.NaN;
  }

  private OptionalDouble bare(Cell cell) {
    if (!Units.isBare(cell)) {
      return OptionalDouble.empty();
    }
    if (cell.kind() == CellKind.NUMBER) {
      return OptionalDouble.of(cell.number().doubleValue());
    }
    return new LengthReader(LengthUnit.MILLIMETRE, comma)
        .read(cell.text())
        .map(reading -> OptionalDouble.of(reading.length().in(LengthUnit.MILLIMETRE)))
        .orElseGet(OptionalDouble::empty);
  }
}
