package roundbook.intake;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Tells how well a column's cells fit what its heading may mean.
 *
 * @param rows the rows under the headings
 * @param comma whether numbers are written with a decimal comma
 */
record Fit(List<Row> rows, boolean comma) {
  private static final int LOOKED_AT = 200;
  private static final BigDecimal MOST_ALIKE = BigDecimal.valueOf(100);

  /** Returns the share of a column's filled cells that are a measure of a log; 0 where none is. */
  double share(Heading heading) {
    boolean along = heading.field().filter(field -> field == Field.LENGTH).isPresent();
    List<Cell> cells = filled(heading);
    long fit = cells.stream().filter(cell -> isMeasure(cell, heading, along)).count();
    return cells.isEmpty() ? 0 : fit / (double) cells.size();
  }

  /** Returns whether nothing stands in a column. */
  boolean isEmpty(Heading heading) {
    return rows.stream().allMatch(row -> row.cell(heading.column()).isBlank());
  }

  private List<Cell> filled(Heading heading) {
    return rows.stream()
        .limit(LOOKED_AT)
        .map(row -> row.cell(heading.column()))
        .filter(cell -> !cell.isBlank())
        .toList();
  }

  private boolean isMeasure(Cell cell, Heading heading, boolean along) {
    List<LengthUnit> units =
        heading
            .unit()
            .map(List::of)
            .orElse(along ? Plausible.LENGTH_UNITS : Plausible.DIAMETER_UNITS);
    boolean girth = heading.field().filter(Field::girth).isPresent();
    return units.stream()
        .map(unit -> Measures.plain(cell, new LengthReader(unit, comma)))
        .flatMap(Optional::stream)
        .map(length -> girth ? Measures.throughPi(length) : length)
        .anyMatch(length -> along ? Plausible.length(length) : Plausible.diameter(length));
  }

  /**
   * Returns whether every measure of a column is a part of a larger unit, and there are some: a
   * fraction of inches too.
   *
   * @param unit the unit of bare numbers
   * @param most how many of them make the larger unit
   */
  boolean isPart(Heading heading, LengthUnit unit, int most) {
    LengthReader reader = new LengthReader(unit, comma);
    List<Cell> cells = filled(heading).stream().filter(cell -> !Measures.isNothing(cell)).toList();
    return !cells.isEmpty()
        && cells.stream()
            .allMatch(
                cell ->
                    Measures.plain(cell, reader)
                        .filter(part -> !part.isNegative())
                        .filter(part -> part.isLessThan(Length.of(most, unit)))
                        .isPresent());
  }

  private Optional<BigDecimal> number(Cell cell) {
    return cell.kind() == CellKind.NUMBER
        ? Optional.of(cell.number())
        : new LengthReader(LengthUnit.MILLIMETRE, comma).number(cell.text());
  }

  /** Returns whether a column holds small whole numbers of which some stand twice: counts. */
  boolean isCount(Heading heading) {
    return repeats(heading)
        && filled(heading).stream()
            .map(this::number)
            .allMatch(number -> number.filter(Fit::isSmallCount).isPresent());
  }

  private static boolean isSmallCount(BigDecimal number) {
    return number.scale() <= 0 && number.compareTo(MOST_ALIKE) < 0;
  }

  /** Returns whether something stands twice in a column. */
  boolean repeats(Heading heading) {
    List<Cell> cells = filled(heading);
    Set<String> texts = new HashSet<>();
    cells.forEach(cell -> texts.add(cell.text()));
    return texts.size() < cells.size();
  }
}
