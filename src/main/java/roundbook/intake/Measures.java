package roundbook.intake;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Reads the measures of one row, and says of each what keeps it from being used.
 *
 * <p>Nothing is repaired in silence: a value is read as it is written, or it is a problem. A
 * problem that suggests another value leaves the choice to the person.
 */
final class Measures {
  private static final Map<Field, String> DIAMETERS = named(" diameter");
  private static final Map<Field, String> GIRTHS = named(" girth");

  private final Block block;
  private final Row row;
  private final String tag;
  private boolean refused;
  private boolean doubted;

  Measures(Block block, Row row, String tag) {
    this.block = block;
    this.row = row;
    this.tag = tag;
  }

  private static Map<Field, String> named(String what) {
    Map<Field, String> names = new EnumMap<>(Field.class);
    for (Field field : new Field[] {Field.BUTT, Field.MID, Field.TIP}) {
      names.put(field, field.word() + what);
    }
    return names;
  }

  /** Returns whether any cell keeps the log from being used. */
  boolean refused() {
    return refused;
  }

  /** Reads the log's length, 6 to 60 ft; null when it is missing or wrong, which is an error. */
  Length length() {
    Heading heading = block.heading(Field.LENGTH);
    Cell cell = row.cell(heading.column());
    Length known = block.readings().of(Field.LENGTH).known(cell);
    return known != null ? known : kept(Field.LENGTH, cell, lengthOf(heading, cell));
  }

  /** Remembers a measure that nothing had to be said of. */
  private Length kept(Field field, Cell cell, Optional<Length> read) {
    if (read.isPresent() && !doubted) {
      block.readings().of(field).keep(cell, read.get());
    }
    doubted = false;
    return read.orElse(null);
  }

  private Optional<Length> lengthOf(Heading heading, Cell cell) {
    if (isNothing(cell)) {
      refuse(heading, ProblemCode.MISSING_CELL, "the log has no length", "Fill the cell.");
      return Optional.empty();
    }
    return read(heading, "length", block.units().length())
        .filter(length -> isPlausible(heading, length, true));
  }

  /** Reads a diameter, or a girth divided by pi, 4 to 36 in; null when it is missing or wrong. */
  Length diameter(Field field) {
    Heading heading = block.through(field);
    if (heading == null) {
      return null;
    }
    Cell cell = row.cell(heading.column());
    Length known = block.readings().of(field).known(cell);
    return known != null ? known : kept(field, cell, diameterOf(field, heading, cell));
  }

  private Optional<Length> diameterOf(Field field, Heading heading, Cell cell) {
    if (isNothing(cell)) {
      return Optional.empty();
    }
    boolean girth = !block.has(field);
    return read(
            heading,
            girth ? GIRTHS.get(field) : DIAMETERS.get(field),
            heading.unit().or(block.units()::diameter))
        .map(length -> girth ? throughPi(length) : length)
        .filter(length -> isPlausible(heading, length, false));
  }

  /** Reads another length of the row, such as a sweep; empty when it is missing or wrong. */
  Optional<Length> other(Field field, Optional<LengthUnit> unit) {
    Heading heading = block.heading(field);
    if (heading == null || isNothing(row.cell(heading.column()))) {
      return Optional.empty();
    }
    return read(heading, field.word(), heading.unit().or(() -> unit));
  }

  /** Returns whether a cell is blank or says that there is no value. */
  static boolean isNothing(Cell cell) {
    return cell.isBlank()
        || cell.kind() == Cell.Kind.TEXT
            && !Character.isDigit(cell.text().charAt(0))
            && LengthReader.isNothing(cell.text());
  }

  private static Length throughPi(Length girth) {
    return Length.ofNanometres(Math.round(girth.nanometres() / Math.PI));
  }

  private Optional<Length> read(Heading heading, String name, Optional<LengthUnit> unit) {
    Cell cell = row.cell(heading.column());
    return switch (cell.kind()) {
      case NUMBER -> number(heading, name, unit);
      case TEXT -> text(heading, name, unit);
      case DATE -> date(heading, name);
      case ERROR -> bad(heading, name + " is the error value " + cell.text());
      case UNCOMPUTED ->
          bad(
              heading,
              name + " is a formula whose value was never stored",
              "Open the file in a" + " spreadsheet program, save it, and run again.");
      default -> bad(heading, name + " is no number: '" + cell.text() + "'");
    };
  }

  private Optional<Length> number(Heading heading, String name, Optional<LengthUnit> unit) {
    Cell cell = row.cell(heading.column());
    Optional<LengthUnit> own = LengthUnit.ofSymbol(cell.unit()).or(() -> unit);
    if (own.isEmpty()) {
      return noUnit(heading, name);
    }
    boolean sane = cell.number().abs().compareTo(BigDecimal.valueOf(1_000_000)) < 0;
    return sane
        ? Optional.of(Length.of(cell.number(), own.get()))
        : bad(heading, name + " is no measure: '" + cell.text() + "'");
  }

  private Optional<Length> text(Heading heading, String name, Optional<LengthUnit> unit) {
    String text = row.cell(heading.column()).text();
    LengthUnit bare = unit.orElse(LengthUnit.INCH);
    Optional<LengthReader.Reading> reading =
        heading.field().orElse(null) == Field.LENGTH
            ? block.readings().readLength(text, bare)
            : block.readings().read(text, bare);
    if (reading.isEmpty()) {
      return unreadable(heading, name, block.readings().reader(bare));
    }
    if (reading.get().unit().isEmpty() && unit.isEmpty()) {
      return noUnit(heading, name);
    }
    return Optional.of(
        reading.get().doubt().isEmpty()
            ? reading.get().length()
            : doubtful(heading, name, block.readings().reader(bare), reading.get()));
  }

  private Length doubtful(
      Heading heading, String name, LengthReader reader, LengthReader.Reading reading) {
    doubted = true;
    String text = row.cell(heading.column()).text();
    Optional<LengthReader.Reading> other = asOtherMark(heading, text, reader, reading.length());
    String message =
        other.isPresent()
            ? name + " '" + text + "' was read with a decimal mark; as thousands it is no log's"
            : name + " '" + text + "' was read although " + reading.doubt();
    block.say(block.problem(row, heading.column(), ProblemCode.DOUBTFUL_VALUE, message).about(tag));
    return other.orElse(reading).length();
  }

  /** A lone group of three digits that no log can have as thousands is a number with decimals. */
  private Optional<LengthReader.Reading> asOtherMark(
      Heading heading, String text, LengthReader bare, Length thousands) {
    return fits(heading, thousands)
        ? Optional.empty()
        : bare.otherMark().read(text).filter(other -> fits(heading, other.length()));
  }

  private static boolean fits(Heading heading, Length length) {
    return switch (heading.field().orElse(Field.REMARKS)) {
      case LENGTH -> Plausible.length(length);
      case BUTT, MID, TIP -> Plausible.diameter(length);
      default -> true;
    };
  }

  private Optional<Length> unreadable(Heading heading, String name, LengthReader reader) {
    String text = row.cell(heading.column()).text();
    if (LengthReader.isDateLike(text)) {
      return bad(heading, name + " looks like a date: '" + text + "'");
    }
    if (reader.isRange(text)) {
      String guess = heading.field().orElse(null) == Field.LENGTH ? HyphenFeet.marked(text) : "";
      String remedy = guess.isEmpty() ? "Type one number." : "Was it " + guess + "?";
      return bad(heading, name + " is a range or two numbers: '" + text + "'", remedy);
    }
    return bad(heading, name + " cannot be read as a measure: '" + text + "'");
  }

  private Optional<Length> date(Heading heading, String name) {
    Cell cell = row.cell(heading.column());
    Dates.Guess guess = Dates.guess(cell.number(), heading.field().orElse(null) == Field.LENGTH);
    String message =
        name + " is a date" + (guess.date().isEmpty() ? " or a time" : " (" + guess.date() + ")");
    return refuse(heading, ProblemCode.DATE_IN_NUMBER, message, guess.remedy());
  }

  private Optional<Length> noUnit(Heading heading, String name) {
    String message = name + " has no unit: '" + row.cell(heading.column()).text() + "'";
    return refuse(heading, ProblemCode.UNIT_UNKNOWN, message, ProblemCode.UNIT_UNKNOWN.remedy());
  }

  private boolean isPlausible(Heading heading, Length length, boolean along) {
    if (along ? Plausible.length(length) : Plausible.diameter(length)) {
      return true;
    }
    Cell cell = row.cell(heading.column());
    Optional<BigDecimal> bare =
        cell.number() != null
            ? Optional.of(cell.number())
            : block.readings().reader(LengthUnit.INCH).number(cell.text());
    boolean girth = heading.field().filter(Field::girth).isPresent();
    String suggestion =
        girth ? "" : bare.map(number -> Plausible.suggestion(number, along)).orElse("");
    String limits =
        along
            ? "a wall log is 6 to 60 ft (1.8 to 18.3 m) long"
            : "a wall log is 4 to 36 in (10 to 91 cm) thick";
    if (block.table().marks().contains(Table.Mark.LINES)) {
      passOver(heading, limits);
      return false;
    }
    String remedy =
        suggestion.isEmpty() ? ProblemCode.OUT_OF_RANGE.remedy() : "Was it " + suggestion + "?";
    refuse(
        heading,
        ProblemCode.OUT_OF_RANGE,
        "'" + cell.text() + "' is out of range: " + limits,
        remedy);
    return false;
  }

  /** A harvester cuts other things than wall logs; they are no mistakes. */
  private void passOver(Heading heading, String limits) {
    if (refused) {
      return;
    }
    String message = "passed over: " + limits;
    Problem problem = block.problem(row, heading.column(), ProblemCode.OUT_OF_RANGE, message);
    block.say(problem.as(Severity.INFO).about(tag).remedy(""));
    refused = true;
  }

  private Optional<Length> bad(Heading heading, String message) {
    return bad(heading, message, ProblemCode.BAD_NUMBER.remedy());
  }

  private Optional<Length> bad(Heading heading, String message, String remedy) {
    return refuse(heading, ProblemCode.BAD_NUMBER, message, remedy);
  }

  private Optional<Length> refuse(
      Heading heading, ProblemCode code, String message, String remedy) {
    Problem problem = block.problem(row, heading.column(), code, message);
    block.refuse(problem.remedy(remedy).as(Severity.ERROR), tag);
    refused = true;
    return Optional.empty();
  }
}
