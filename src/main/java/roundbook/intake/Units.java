package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * The units of a tally's bare numbers, for lengths and for diameters.
 *
 * @param length of bare lengths; empty when it cannot be told
 * @param diameter of bare diameters; empty when it cannot be told
 * @param assumed whether either was concluded from the numbers themselves
 */
record Units(Optional<LengthUnit> length, Optional<LengthUnit> diameter, boolean assumed) {
  private static final double TAPER_LEAST = 0.03 / 12;
  private static final double TAPER_MOST = 0.6 / 12;
  private static final int SAMPLE = 2000;
  private static final List<LengthUnit> LENGTHS =
      List.of(
          LengthUnit.FOOT,
          LengthUnit.INCH,
          LengthUnit.METRE,
          LengthUnit.CENTIMETRE,
          LengthUnit.MILLIMETRE);
  private static final List<LengthUnit> DIAMETERS =
      List.of(LengthUnit.INCH, LengthUnit.CENTIMETRE, LengthUnit.MILLIMETRE);

  /**
   * Tells the units: from the headings, else from what was asked, else the only pair of units of
   * one system in which the logs are plausible: 6 to 60 ft long, 4 to 36 in thick, and tapering by
   * 0.03 to 0.6 in a foot.
   */
  static Units of(Map<Field, Heading> block, Asked asked, List<Row> rows, boolean comma) {
    Optional<LengthUnit> length = unit(block, Field.LENGTH).or(asked::lengthUnit);
    Optional<LengthUnit> diameter = diameterUnit(block).or(asked::diameterUnit);
    if (length.isPresent() && diameter.isPresent()) {
      return new Units(length, diameter, false);
    }
    List<double[]> logs = bareLogs(block, rows, comma);
    if (logs.isEmpty()) {
      return new Units(length, diameter, false);
    }
    Units best = new Units(length, diameter, true);
    long most = 0;
    boolean tie = false;
    for (Units pair : pairs(length, diameter)) {
      long plausible = logs.stream().filter(pair::plausible).count();
      tie = plausible == most || tie && plausible < most;
      if (plausible > most) {
        most = plausible;
        best = pair;
      }
    }
    return most == 0 || tie ? new Units(length, diameter, true) : best;
  }

  private static List<Units> pairs(Optional<LengthUnit> length, Optional<LengthUnit> diameter) {
    List<Units> pairs = new ArrayList<>();
    for (LengthUnit one : length.map(List::of).orElse(LENGTHS)) {
      for (LengthUnit other : diameter.map(List::of).orElse(DIAMETERS)) {
        boolean told = length.isPresent() && diameter.isPresent();
        if (told || one.metric() == other.metric()) {
          pairs.add(new Units(Optional.of(one), Optional.of(other), true));
        }
      }
    }
    return pairs;
  }

  private boolean plausible(double[] log) {
    double along = log[0] * length.orElseThrow().nanometres();
    double inch = LengthUnit.INCH.nanometres();
    double butt = log[1] * diameter.orElseThrow().nanometres();
    double tip = log[2] * diameter.orElseThrow().nanometres();
    boolean sizes =
        along >= 72 * inch && along <= 720 * inch && within(butt / inch) && within(tip / inch);
    double taper = Math.abs(butt - tip) / along;
    return sizes && (butt == tip || taper >= TAPER_LEAST && taper <= TAPER_MOST);
  }

  private static boolean within(double inches) {
    return inches >= 4 && inches <= 36;
  }

  private static List<double[]> bareLogs(Map<Field, Heading> block, List<Row> rows, boolean comma) {
    List<double[]> logs = new ArrayList<>();
    Heading length = block.get(Field.LENGTH);
    Heading large = first(block, Field.BUTT, Field.MID, Field.TIP);
    Heading small = first(block, Field.TIP, Field.MID, Field.BUTT);
    if (length == null || large == null) {
      return logs;
    }
    for (Row row : rows.subList(0, Math.min(rows.size(), SAMPLE))) {
      Optional<Double> along = bare(row.cell(length.column()), comma);
      Optional<Double> thick = bare(row.cell(large.column()), comma);
      Optional<Double> thin = bare(row.cell(small.column()), comma).or(() -> thick);
      if (along.isPresent() && thick.isPresent()) {
        logs.add(new double[] {along.get(), thick.get(), thin.get()});
      }
    }
    return logs;
  }

  private static Heading first(Map<Field, Heading> block, Field... fields) {
    for (Field field : fields) {
      if (block.containsKey(field)) {
        return block.get(field);
      }
    }
    return null;
  }

  private static Optional<Double> bare(Cell cell, boolean comma) {
    if (cell.kind() == Cell.Kind.NUMBER && cell.unit().isEmpty()) {
      return Optional.of(cell.number().doubleValue());
    }
    LengthReader reader = new LengthReader(LengthUnit.MILLIMETRE, comma);
    return cell.kind() != Cell.Kind.TEXT
        ? Optional.empty()
        : reader
            .read(cell.text())
            .filter(reading -> reading.unit().isEmpty())
            .map(reading -> reading.length().in(LengthUnit.MILLIMETRE));
  }

  private static Optional<LengthUnit> diameterUnit(Map<Field, Heading> block) {
    return block.entrySet().stream()
        .filter(entry -> entry.getKey().diameter() || entry.getKey().girth())
        .map(entry -> entry.getValue().unit())
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<LengthUnit> unit(Map<Field, Heading> block, Field field) {
    return Optional.ofNullable(block.get(field)).flatMap(Heading::unit);
  }

  /** Returns the other units in which a bare number would be plausible, in words. */
  static String suggestion(double bare, boolean length) {
    List<String> words = new ArrayList<>();
    for (LengthUnit unit : length ? LENGTHS : DIAMETERS) {
      double inches = Length.of(bare, unit).inches();
      boolean fits = length ? inches >= 72 && inches <= 720 : within(inches);
      if (fits) {
        words.add(
            bare == Math.rint(bare)
                ? (long) bare + " " + unit.symbol()
                : bare + " " + unit.symbol());
      }
    }
    return String.join(" or ", words);
  }
}
