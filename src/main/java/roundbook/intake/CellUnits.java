package roundbook.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * The units that cells state themselves, which decide those of the bare cells beside them.
 *
 * <p>A fraction such as {@code 12 1/2} is one of inches, whatever it stands beside.
 *
 * @param rows the rows
 * @param comma whether numbers are written with a decimal comma
 */
record CellUnits(List<Row> rows, boolean comma) {
  private static final int LOOKED_AT = 500;
  private static final Pattern FRACTION = Pattern.compile("\\d[ -]\\d{1,2}/\\d{1,2}|\\d?[¼-¾⅛-⅞]");

  /** Returns the one unit that the cells of columns state; empty where they state none or two. */
  Optional<LengthUnit> shown(List<Heading> headings) {
    Set<LengthUnit> units = new HashSet<>();
    headings.forEach(heading -> add(heading, true, units));
    return units.size() == 1 ? units.stream().findFirst() : Optional.empty();
  }

  /** Returns the one unit that the cells of a column state; empty where they state none or two. */
  Optional<LengthUnit> shown(Heading heading, boolean fractions) {
    Set<LengthUnit> units = new HashSet<>();
    add(heading, fractions, units);
    return units.size() == 1 ? units.stream().findFirst() : Optional.empty();
  }

  private void add(Heading heading, boolean fractions, Set<LengthUnit> units) {
    LengthReader reader = new LengthReader(LengthUnit.MILLIMETRE, comma);
    for (Row row : rows.subList(0, Math.min(rows.size(), LOOKED_AT))) {
      Cell cell = row.cell(heading.column());
      if (cell.kind() == CellKind.NUMBER) {
        LengthUnit.ofSymbol(cell.unit()).ifPresent(units::add);
      } else if (!cell.isBlank()) {
        reader.read(cell.text()).flatMap(LengthReader.Reading::unit).ifPresent(units::add);
        if (fractions && FRACTION.matcher(cell.text()).find()) {
          units.add(LengthUnit.INCH);
        }
      }
    }
  }
}
