package roundbook.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Finds rows below a tally's logs that bear no tag and no word, and whose numbers are figures over
 * the columns above: the mean, median, least, most or sum of each.
 *
 * <p>Two columns at the least must agree whose logs differ, each to half of the last decimal that
 * stands in the row, so that a log that nobody tagged is not taken for an average.
 */
final class FigureRows {
  private static final int FEWEST_LOGS = 3;
  private static final int FEWEST_COLUMNS = 2;
  private static final int FIGURES = 5;
  private static final double SIXTEENTH = 1.0 / 16;
  private static final double ROUNDING = 1e-9;

  private final Block block;
  private final List<Row> rows;

  private FigureRows(Block block, List<Row> rows) {
    this.block = block;
    this.rows = rows;
  }

  /** Returns the numbers of such rows among the first of a block; none where no tag is headed. */
  static Set<Integer> of(Block block, List<Row> rows) {
    Set<Integer> numbers = new HashSet<>();
    int end = rows.size();
    while (end > 0 && block.has(Field.TAG) && block.cell(rows.get(end - 1), Field.TAG).isBlank()) {
      end--;
    }
    if (end >= FEWEST_LOGS && end < rows.size()) {
      FigureRows above = new FigureRows(block, rows.subList(0, end));
      for (Row row : rows.subList(end, rows.size())) {
        if (above.isFigures(row)) {
          numbers.add(row.number());
        }
      }
    }
    return numbers;
  }

  private boolean isFigures(Row row) {
    boolean[] agree = new boolean[FIGURES];
    Arrays.fill(agree, true);
    int columns = 0;
    for (Field field : block.columns().keySet()) {
      Cell cell = block.cell(row, field);
      boolean measure = field == Field.LENGTH || field.diameter() || field.girth();
      if (measure && !cell.isBlank()) {
        LengthReader reader = reader(field);
        Optional<Length> own = Measures.plain(cell, reader);
        double[] column = column(field, reader);
        if (own.isEmpty() || column.length < FEWEST_LOGS) {
          return false;
        }
        boolean differ = column[0] < column[column.length - 1];
        columns += differ ? 1 : 0;
        agree(agree, figures(column), own.get().in(reader.defaultUnit()), step(cell));
      }
    }
    boolean any = agree[0] || agree[1] || agree[2] || agree[3] || agree[4];
    return columns >= FEWEST_COLUMNS && any;
  }

  private LengthReader reader(Field field) {
    Optional<LengthUnit> unit =
        field == Field.LENGTH
            ? block.units().length()
            : block.heading(field).unit().or(() -> block.units().diameter());
    return block.readings().reader(unit.orElse(LengthUnit.MILLIMETRE));
  }

  /** Returns the values of a column from the least to the most, in the reader's unit. */
  private double[] column(Field field, LengthReader reader) {
    List<Double> values = new ArrayList<>();
    for (Row row : rows) {
      Measures.plain(block.cell(row, field), reader)
          .ifPresent(length -> values.add(length.in(reader.defaultUnit())));
    }
    return values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static double[] figures(double[] sorted) {
    int count = sorted.length;
    double sum = Arrays.stream(sorted).sum();
    double median = (sorted[(count - 1) / 2] + sorted[count / 2]) / 2;
    return new double[] {sum / count, median, sorted[0], sorted[count - 1], sum};
  }

  private static void agree(boolean[] agree, double[] figures, double own, double step) {
    for (int i = 0; i < FIGURES; i++) {
      agree[i] &= Math.abs(own - figures[i]) <= step / 2 + ROUNDING * Math.abs(own);
    }
  }

  /** Returns the last place of a number as it is shown; a sixteenth where it is no decimal. */
  private static double step(Cell cell) {
    String text = cell.text();
    int point = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
    boolean decimal = point >= 0 && text.substring(point + 1).chars().allMatch(Character::isDigit);
    boolean whole = text.chars().allMatch(Character::isDigit);
    return decimal ? StrictMath.pow(10, point + 1 - text.length()) : whole ? 1 : SIXTEENTH;
  }
}
