package roundbook.intake;

import java.math.BigDecimal;
import java.util.Optional;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Reads single cells of a row as lengths, and says what is wrong with each. */
final class CellReading {
  private final Table table;
  private final Row row;
  private final String tag;
  private final Problems problems;

  CellReading(Table table, Row row, String tag, Problems problems) {
    this.table = table;
    this.row = row;
    this.tag = tag;
    this.problems = problems;
  }

  /** Reads a log's length, 6 to 60 ft. */
  Optional<Length> length(Heading heading, Optional<LengthUnit> unit) {
    return measure(heading, unit, "length").filter(length -> inRange(heading, length, true));
  }

  /** Reads a diameter, 4 to 36 in. */
  Optional<Length> diameter(Heading heading, Optional<LengthUnit> unit, String name) {
    return measure(heading, unit, name).filter(length -> inRange(heading, length, false));
  }

  /** Reads a length of any size, such as a sweep. */
  Optional<Length> any(Heading heading, Optional<LengthUnit> unit, String name) {
    return measure(heading, unit, name);
  }

  private Optional<Length> measure(Heading heading, Optional<LengthUnit> unit, String name) {
    Cell cell = row.cell(heading.column());
    return switch (cell.kind()) {
      case BLANK -> Optional.empty();
      case NUMBER -> number(heading, cell, unit, name);
      case TEXT -> text(heading, cell, unit, name);
      case DATE -> fail(heading, ProblemCode.DATE_IN_NUMBER, dateMessage(cell, name));
      case ERROR -> fail(heading, ProblemCode.BAD_NUMBER, name + " is the error " + cell.text());
      case UNCOMPUTED ->
          fail(heading, ProblemCode.BAD_NUMBER, name + " is a formula without a stored value");
      case BOOLEAN -> fail(heading, ProblemCode.BAD_NUMBER, name + " is no number");
    };
  }

  private Optional<Length> number(
      Heading heading, Cell cell, Optional<LengthUnit> unit, String name) {
    Optional<LengthUnit> own = LengthUnit.ofSymbol(cell.unit()).or(() -> unit);
    if (own.isEmpty()) {
      return unknownUnit(heading, cell, name);
    }
    return Optional.of(Length.of(cell.number(), own.get()));
  }

  private Optional<Length> text(
      Heading heading, Cell cell, Optional<LengthUnit> unit, String name) {
    if (cell.text().matches("(?i)n/?a|-+|\\?|none|k\\.?a\\.?")) {
      return Optional.empty();
    }
    LengthReader reader = new LengthReader(unit.orElse(LengthUnit.INCH), table.decimalComma());
    Optional<LengthReader.Reading> reading = reader.read(cell.text());
    if (reading.isEmpty()) {
      boolean range = reader.isRange(cell.text());
      String what = range ? " is a range, " : " cannot be read as a measure: ";
      return fail(heading, ProblemCode.BAD_NUMBER, name + what + quoted(cell));
    }
    if (reading.get().unit().isEmpty() && unit.isEmpty()) {
      return unknownUnit(heading, cell, name);
    }
    if (!reading.get().doubt().isEmpty()) {
      String message = name + " " + quoted(cell) + ": " + reading.get().doubt();
      say(heading, ProblemCode.DOUBTFUL_VALUE, Severity.WARNING, message, "");
    }
    return Optional.of(reading.get().length());
  }

  private Optional<Length> unknownUnit(Heading heading, Cell cell, String name) {
    return fail(heading, ProblemCode.UNIT_UNKNOWN, name + " " + quoted(cell) + " has no unit");
  }

  private boolean inRange(Heading heading, Length length, boolean along) {
    double inches = length.inches();
    if (along ? inches >= 72 && inches <= 720 : inches >= 4 && inches <= 36) {
      return true;
    }
    Cell cell = row.cell(heading.column());
    Optional<BigDecimal> bare =
        cell.number() != null
            ? Optional.of(cell.number())
            : new LengthReader(LengthUnit.INCH, table.decimalComma()).number(cell.text());
    String suggestion =
        bare.map(number -> Units.suggestion(number.doubleValue(), along)).orElse("");
    String limits = along ? "a log's length is 6 to 60 ft" : "a log's diameter is 4 to 36 in";
    String message = quoted(cell) + " is out of range: " + limits + " (1.8 to 18.3 m, 10 to 91 cm)";
    message = along ? message.replace(", 10 to 91 cm", "") : message.replace("1.8 to 18.3 m, ", "");
    String remedy = suggestion.isEmpty() ? "" : "Was it " + suggestion + "?";
    say(heading, ProblemCode.OUT_OF_RANGE, Severity.ERROR, message, remedy);
    return false;
  }

  private String dateMessage(Cell cell, String name) {
    return name + " is a date, " + cell.text();
  }

  private Optional<Length> fail(Heading heading, ProblemCode code, String message) {
    String remedy = code == ProblemCode.DATE_IN_NUMBER ? wasIt(heading) : "";
    say(heading, code, Severity.ERROR, message, remedy);
    return Optional.empty();
  }

  private String wasIt(Heading heading) {
    String guess = Dates.fraction(row.cell(heading.column()).number());
    return guess.isEmpty() ? "" : "Was it " + guess + "? ";
  }

  private void say(
      Heading heading, ProblemCode code, Severity severity, String message, String remedy) {
    Problem problem =
        Problem.of(
                code, table.at(row, heading.column()), row.cell(heading.column()).text(), message)
            .as(severity)
            .about(tag);
    problems.add(
        remedy.isEmpty() ? problem : problem.remedy((remedy + " " + code.remedy()).strip()));
  }

  private static String quoted(Cell cell) {
    return "'" + cell.text() + "'";
  }
}
