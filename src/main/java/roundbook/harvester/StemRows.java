package roundbook.harvester;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Turns trees into rows of a tally, a cut log a row.
 *
 * <p>Diameters under bark are taken where the middle and the top have them, else those over bark.
 * Where the tree was measured all along, the log's part of it becomes a profile; over bark, it is
 * thinned by the bark known at the log's butt, middle and top.
 *
 * @param reader knows the names of species and products
 * @param along the file's unit of length
 * @param through the file's unit of diameter
 */
record StemRows(StemReader reader, LengthUnit along, LengthUnit through) {
  /** The place of the headings, before the file's first line. */
  static final int HEADING_ROW = 0;

  private static final int FEWEST_STATIONS = 4;

  /** Returns the headings, with the file's own units. */
  Row headings() {
    String length = "Length (" + along.symbol() + ")";
    String unit = " (" + through.symbol() + ")";
    List<String> texts =
        List.of(
            "Log",
            "Species",
            length,
            "Butt" + unit,
            "Mid" + unit,
            "Tip" + unit,
            "Bark",
            "Part",
            "Profile",
            "Product");
    List<Cell> cells = new ArrayList<>();
    for (String text : texts) {
      cells.add(Cell.text(cells.size() + 1, text));
    }
    return new Row(HEADING_ROW, cells, false, false);
  }

  /** Returns the rows of a tree's logs. */
  List<Row> rows(Stem stem) {
    List<Row> rows = new ArrayList<>();
    for (CutLog log : stem.logs) {
      rows.add(row(stem, log));
    }
    return rows;
  }

  private Row row(Stem stem, CutLog log) {
    boolean under = log.isUnderBark();
    String part = log.key.equals("1") ? "butt" : "upper";
    List<Cell> cells =
        List.of(
            Cell.text(1, stem.key + "-" + log.key),
            Cell.text(2, reader.species(stem.speciesKey)),
            number(3, log.length),
            number(4, log.diameter("butt", under)),
            number(5, log.diameter("mid", under)),
            number(6, log.diameter("top", under)),
            Cell.text(7, under ? "under" : "over"),
            Cell.text(8, part),
            Cell.text(9, profile(stem, log, under)),
            Cell.text(10, reader.product(log.product)));
    return new Row(log.line, cells, false, false);
  }

  static Cell number(int column, double value) {
    if (Double.isNaN(value)) {
      return Cell.blank(column);
    }
    BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
    return new Cell(column, CellKind.NUMBER, number.toPlainString(), number, "");
  }

  /** Returns places and diameters such as {@code 0mm=186mm 100mm=180mm}; empty when unknown. */
  private String profile(Stem stem, CutLog log, boolean under) {
    if (stem.profile.isEmpty() || Double.isNaN(log.length)) {
      return "";
    }
    double start = stem.startOf(log);
    double end = start + log.length;
    boolean thin = under && stem.overBark;
    if (thin && (Double.isNaN(log.bark("mid")) || Double.isNaN(log.bark("top")))
        || !under && !stem.overBark) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    int count = 0;
    for (Map.Entry<Double, Double> each : stem.profile.subMap(start, true, end, true).entrySet()) {
      double from = each.getKey() - start;
      double bark = thin ? barkAt(log, from / log.length) : 0;
      text.append(count++ == 0 ? "" : " ").append(station(from, each.getValue() - bark));
    }
    return count < FEWEST_STATIONS ? "" : text.toString();
  }

  private String station(double from, double diameter) {
    return Length.of(from, along) + "=" + Length.of(Math.max(0, diameter), through);
  }

  /** Returns the bark at a share of the length, straight between butt, middle and top. */
  private static double barkAt(CutLog log, double share) {
    double mid = log.bark("mid");
    double butt = Double.isNaN(log.bark("butt")) ? mid : log.bark("butt");
    double top = log.bark("top");
    return share < 0.5 ? butt + (mid - butt) * share * 2 : mid + (top - mid) * (share - 0.5) * 2;
  }
}
