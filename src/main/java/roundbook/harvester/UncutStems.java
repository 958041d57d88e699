package roundbook.harvester;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.LengthUnit;

/**
 * Turns trees that were measured all along and not cut into a table of stems, a tree a row, with a
 * column for every place that any of them was measured at. Such a tree is as long as it was
 * measured.
 *
 * @param reader knows the names of species
 * @param along the file's unit of length
 * @param through the file's unit of diameter
 */
record UncutStems(StemReader reader, LengthUnit along, LengthUnit through) {
  private static final int FEWEST_STATIONS = 4;

  /** Returns whether a tree is whole and known well enough to be cut up. */
  static boolean isOne(Stem stem) {
    return stem.logs.isEmpty() && stem.profile.size() >= FEWEST_STATIONS;
  }

  Table table(String file, List<Stem> stems) {
    TreeSet<Double> places = new TreeSet<>();
    stems.forEach(stem -> places.addAll(stem.profile.keySet()));
    List<Cell> heads = new ArrayList<>();
    List.of("Stem", "Species", "Length (" + along.symbol() + ")", "Bark")
        .forEach(text -> heads.add(Cell.text(heads.size() + 1, text)));
    for (double place : places) {
      String text = plain(place) + " " + along.symbol() + " (" + through.symbol() + ")";
      heads.add(Cell.text(heads.size() + 1, text));
    }
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(StemRows.HEADING_ROW, heads, false, false));
    stems.forEach(stem -> rows.add(row(stem, places)));
    return Table.of(file, "Stems", Set.of(Table.Mark.LINES), rows);
  }

  private Row row(Stem stem, Set<Double> places) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(1, stem.key));
    cells.add(Cell.text(2, reader.species(stem.speciesKey)));
    cells.add(StemRows.number(3, stem.profile.lastKey()));
    cells.add(Cell.text(4, stem.overBark ? "over" : "under"));
    for (double place : places) {
      double diameter = stem.profile.getOrDefault(place, Double.NaN);
      cells.add(StemRows.number(cells.size() + 1, diameter));
    }
    return new Row(stem.line, cells, false, false);
  }

  private static String plain(double number) {
    return StemRows.number(1, number).text();
  }
}
