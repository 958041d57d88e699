package roundbook.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.problem.Phrase;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * The units of a tally's bare numbers, for lengths and for diameters.
 *
 * @param length of bare lengths; empty when it cannot be told
 * @param diameter of bare diameters; empty when it cannot be told
 * @param plausible the pairs of units that fit where neither headings nor settings tell both; one
 *     pair is taken, more than one leaves the question open
 * @param asking the first column with bare numbers whose unit nothing tells
 */
record Units(
    Optional<LengthUnit> length,
    Optional<LengthUnit> diameter,
    List<Pair> plausible,
    Optional<Heading> asking) {
  private static final double FIT = 0.95;
  private static final double FAIR = 0.6;
  private static final int SAMPLE = 2000;
  private static final List<Field> THROUGH =
      List.of(Field.BUTT, Field.MID, Field.TIP, Field.BUTT_GIRTH, Field.MID_GIRTH, Field.TIP_GIRTH);

  /** A unit for lengths and one for diameters. */
  record Pair(LengthUnit length, LengthUnit diameter) {
    /** Returns the pair as a problem names it. */
    Phrase phrase() {
      return Phrase.of("value.and").with("one", length.symbol()).with("other", diameter.symbol());
    }
  }

  /** Returns whether the units were concluded from the numbers themselves. */
  boolean assumed() {
    return asking.isPresent() && plausible.size() == 1;
  }

  /**
   * Tells the units: from the headings, else from what was asked, else from the other cells of the
   * column, else the only pair of units of one system in which the logs are plausible.
   *
   * @param feet whether lengths are written as feet and inches without marks
   */
  static Units of(
      Map<Field, Heading> block, Mapping mapping, List<Row> rows, boolean comma, boolean feet) {
    Optional<LengthUnit> length = unit(block, Field.LENGTH).or(mapping::length);
    Optional<LengthUnit> diameter = diameterUnit(block).or(mapping::diameter);
    Optional<Heading> lengths =
        length.isPresent() ? Optional.empty() : firstBare(block, rows, List.of(Field.LENGTH));
    Optional<Heading> diameters =
        diameter.isPresent() ? Optional.empty() : firstBare(block, rows, THROUGH);
    if (lengths.isEmpty() && diameters.isEmpty()) {
      return new Units(length, diameter, List.of(), Optional.empty());
    }
    CellUnits cells = new CellUnits(rows, comma);
    Optional<LengthUnit> seen =
        feet ? Optional.of(LengthUnit.FOOT) : lengths.flatMap(each -> cells.shown(each, false));
    Optional<LengthUnit> own =
        lengths.isPresent() ? seen : length.or(() -> stated(block, rows, comma));
    Optional<LengthUnit> through =
        diameter.or(() -> diameters.isPresent() ? cells.shown(throughs(block)) : Optional.empty());
    Optional<Heading> asking = lengths.or(() -> diameters);
    List<Pair> fitting =
        own.isPresent() && through.isPresent()
            ? List.of(new Pair(own.get(), through.get()))
            : fitting(pairs(own, through), new Sample(block, rows, comma, own).logs());
    if (fitting.size() != 1) {
      return new Units(length, diameter, fitting, asking);
    }
    Pair only = fitting.get(0);
    return new Units(Optional.of(only.length()), Optional.of(only.diameter()), fitting, asking);
  }

  private static List<Pair> fitting(List<Pair> pairs, List<Sample.Bare> logs) {
    List<Pair> fit = new ArrayList<>();
    List<Pair> fair = new ArrayList<>();
    for (Pair pair : pairs) {
      double share =
          logs.stream().filter(log -> Plausible.log(log, pair)).count() / (double) logs.size();
      if (share >= FIT) {
        fit.add(pair);
      } else if (share >= FAIR) {
        fair.add(pair);
      }
    }
    return fit.isEmpty() ? fair : fit;
  }

  private static List<Pair> pairs(Optional<LengthUnit> length, Optional<LengthUnit> diameter) {
    List<Pair> pairs = new ArrayList<>();
    for (LengthUnit one : length.map(List::of).orElse(Plausible.LENGTH_UNITS)) {
      for (LengthUnit other : diameter.map(List::of).orElse(Plausible.DIAMETER_UNITS)) {
        if (one.metric() == other.metric()) {
          pairs.add(new Pair(one, other));
        }
      }
    }
    return pairs;
  }

  private static Optional<Heading> firstBare(
      Map<Field, Heading> block, List<Row> rows, List<Field> fields) {
    return fields.stream()
        .filter(block::containsKey)
        .map(block::get)
        .filter(heading -> isBare(heading, rows))
        .min(Comparator.comparingInt(Heading::column));
  }

  /** Returns the unit that the first length states itself, in its cell or by its format. */
  private static Optional<LengthUnit> stated(
      Map<Field, Heading> block, List<Row> rows, boolean comma) {
    LengthReader reader = new LengthReader(LengthUnit.MILLIMETRE, comma);
    return rows.stream()
        .limit(SAMPLE)
        .map(row -> row.cell(block.get(Field.LENGTH).column()))
        .map(
            cell ->
                cell.kind() == CellKind.NUMBER
                    ? LengthUnit.ofSymbol(cell.unit())
                    : reader.read(cell.text()).flatMap(LengthReader.Reading::unit))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Returns whether a column has a number without any unit of its own. */
  static boolean isBare(Heading heading, List<Row> rows) {
    return rows.stream().limit(SAMPLE).anyMatch(row -> isBare(row.cell(heading.column())));
  }

  /** Returns whether a cell is a number without any unit of its own. */
  static boolean isBare(Cell cell) {
    if (cell.kind() == CellKind.NUMBER) {
      return cell.unit().isEmpty();
    }
    return cell.kind() == CellKind.TEXT
        && new LengthReader(LengthUnit.MILLIMETRE, false)
            .read(cell.text())
            .filter(reading -> reading.unit().isEmpty())
            .isPresent();
  }

  private static List<Heading> throughs(Map<Field, Heading> block) {
    return THROUGH.stream().filter(block::containsKey).map(block::get).toList();
  }

  /** Returns the unit that the headings of diameters state; empty where they state several. */
  private static Optional<LengthUnit> diameterUnit(Map<Field, Heading> block) {
    List<LengthUnit> stated =
        throughs(block).stream().map(Heading::unit).flatMap(Optional::stream).distinct().toList();
    return stated.size() == 1 ? Optional.of(stated.get(0)) : Optional.empty();
  }

  private static Optional<LengthUnit> unit(Map<Field, Heading> block, Field field) {
    return Optional.ofNullable(block.get(field)).flatMap(Heading::unit);
  }
}
