package roundbook.site;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Found;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Reads single named cells; says where one cannot be read. */
final class Fields {
  private static final Set<String> YES =
      Set.of("x", "✓", "✔", "yes", "y", "ja", "j", "oui", "true", "1");

  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
  private static final int SHOWN = 40;

  private final NamedBook book;
  private final LengthUnit unit;
  private final Problems problems;
  private final Optional<NamedBook> copy;
  private final Set<String> differ = new HashSet<>();

  Fields(NamedBook book, LengthUnit unit, Problems problems) {
    this(book, Optional.empty(), unit, problems);
  }

  private Fields(NamedBook book, Optional<NamedBook> copy, LengthUnit unit, Problems problems) {
    this.book = book;
    this.copy = copy;
    this.unit = unit;
    this.problems = problems;
  }

  /**
   * Returns fields that take what only a copy of the workbook has, and say where both have
   * something and not the same.
   */
  Fields with(NamedBook other) {
    return new Fields(book, Optional.of(other), unit, problems);
  }

  /** Returns a cell: where it is blank, that of the copy. */
  private Optional<Found> cell(String name) {
    Optional<Found> own = book.cell(name);
    Optional<Found> other = copy.flatMap(each -> each.cell(name)).filter(cell -> !cell.isBlank());
    if (other.isEmpty() || own.filter(cell -> !cell.isBlank()).isEmpty()) {
      return other.or(() -> own);
    }
    if (!same(own.get().cell(), other.get().cell()) && differ.add(name)) {
      problems.add(
          Problem.of(ProblemCode.CONTRADICTION, "copies", own.get().where())
              .with("own", shortened(own.get().text()))
              .with("other", shortened(other.get().text()))
              .with("where", other.get().where().toString())
              .found(own.get().text())
              .remedyOf("clear-wrong"));
    }
    return own;
  }

  private static boolean same(Cell one, Cell other) {
    return one.kind() == CellKind.NUMBER && other.kind() == CellKind.NUMBER
        ? one.number().compareTo(other.number()) == 0
        : one.text().strip().equalsIgnoreCase(other.text().strip());
  }

  /** Returns what a person sees in a cell; empty where there is no such cell. */
  String text(String name) {
    return cell(name).map(Found::text).orElse("");
  }

  /** Returns the place of a named cell, or of the file where the name is gone. */
  CellRef where(String name) {
    return cell(name).map(Found::where).orElse(CellRef.ofFile(book.file()));
  }

  /** Returns a length typed as a number of the job's unit or as text; empty where it is blank. */
  Optional<Length> length(String name) {
    return cell(name).flatMap(found -> length(found.cell(), found.where()));
  }

  /** Returns a length of any cell; a doubtful one, such as {@code about 14}, is none. */
  Optional<Length> length(Cell cell, CellRef where) {
    if (cell.isBlank() || LengthReader.isNothing(cell.text()) && cell.kind() == CellKind.TEXT) {
      return Optional.empty();
    }
    Optional<Length> length =
        switch (cell.kind()) {
          case NUMBER ->
              Optional.of(cell.number())
                  .filter(number -> number.abs().compareTo(MOST) < 0)
                  .map(number -> Length.of(number, LengthUnit.ofSymbol(cell.unit()).orElse(unit)));
          case TEXT ->
              new LengthReader(unit, false)
                  .read(cell.text())
                  .filter(reading -> reading.doubt().isEmpty())
                  .map(LengthReader.Reading::length);
          default -> Optional.empty();
        };
    if (length.isEmpty()) {
      ProblemCode code =
          cell.kind() == CellKind.DATE ? ProblemCode.DATE_IN_NUMBER : ProblemCode.BAD_NUMBER;
      problems.add(
          Problem.of(code, "box", where)
              .with("text", shortened(cell.text()))
              .with("unit", unit.symbol())
              .found(cell.text())
              .remedyOf("type-measured"));
    }
    return length;
  }

  /** Returns the beginning of a text that may be hundreds of digits long. */
  static String shortened(String text) {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
  }

  /** Returns a length written as a plain number of the job's unit. */
  Optional<Length> plain(String number) {
    return new LengthReader(unit, false).read(number).map(LengthReader.Reading::length);
  }

  /** Returns whether a box is ticked; says so where something else stands in it. */
  boolean ticked(String name) {
    return cell(name).filter(found -> ticked(found.cell(), found.where())).isPresent();
  }

  /** Returns whether any cell is ticked. */
  boolean ticked(Cell cell, CellRef where) {
    if (cell.isBlank() || cell.text().equalsIgnoreCase("FALSE")) {
      return false;
    }
    if (!YES.contains(cell.text().toLowerCase(Locale.ROOT))) {
      problems.add(
          Problem.of(ProblemCode.BAD_NUMBER, "tick", where)
              .with("text", shortened(cell.text()))
              .found(cell.text())
              .remedyOf("type-x"));
    }
    return true;
  }

  /** Returns a problem of a named cell, with what stands in it. */
  Problem problem(ProblemCode code, String variant, String name) {
    return Problem.of(code, variant, where(name)).found(text(name));
  }

  /** Returns that what the crew typed into a named cell cannot be true. */
  Problem contradiction(String variant, String name) {
    return problem(ProblemCode.CONTRADICTION, variant, name);
  }

  /** Says a problem. */
  void say(Problem problem) {
    problems.add(problem);
  }
}
