package roundbook.site;

import java.math.BigDecimal;
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

  Fields(NamedBook book, LengthUnit unit, Problems problems) {
    this.book = book;
    this.unit = unit;
    this.problems = problems;
  }

  /** Returns what a person sees in a cell; empty where there is no such cell. */
  String text(String name) {
    return book.cell(name).map(Found::text).orElse("");
  }

  /** Returns the place of a named cell, or of the file where the name is gone. */
  CellRef where(String name) {
    return book.cell(name).map(Found::where).orElse(CellRef.ofFile(book.file()));
  }

  /** Returns a length typed as a number of the job's unit or as text; empty where it is blank. */
  Optional<Length> length(String name) {
    return book.cell(name).flatMap(found -> length(found.cell(), found.where()));
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
    return book.cell(name).filter(found -> ticked(found.cell(), found.where())).isPresent();
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
