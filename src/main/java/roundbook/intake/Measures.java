package roundbook.intake;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.Value;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Doubt;
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
  private static final Phrase LENGTH = Phrase.of("field.length");
  private static final Map<Field, Phrase> DIAMETERS = named("-diameter");
  private static final Map<Field, Phrase> GIRTHS = named("-girth");

  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

  private final Block block;
  private final Row row;
  private final String tag;
  private boolean refused;
  private boolean passed;
  private boolean doubted;

  Measures(Block block, Row row, String tag) {
    this.block = block;
    this.row = row;
    this.tag = tag;
  }

  private static Map<Field, Phrase> named(String what) {
    Map<Field, Phrase> names = new EnumMap<>(Field.class);
    for (Field field : new Field[] {Field.BUTT, Field.MID, Field.TIP}) {
      names.put(field, Phrase.of(field.phrase().key() + what));
    }
    return names;
  }

  /** Returns whether a harvester cut something else than a wall log here, which is no mistake. */
  boolean passed() {
    return passed;
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
    Length length = known != null ? known : kept(Field.LENGTH, cell, lengthOf(heading, cell));
    return length == null || !block.has(Field.LENGTH_REST) ? length : withRest(length);
  }

  /** Adds the inches of a column of their own. */
  private Length withRest(Length length) {
    Heading rest = block.heading(Field.LENGTH_REST);
    if (isNothing(row.cell(rest.column()))) {
      return length;
    }
    return read(rest, LENGTH, rest.unit()).map(length::plus).orElse(null);
  }

  /** Remembers a measure that nothing had to be said of. */
  private Length kept(Field field, Cell cell, Optional<Length> read) {
    if (read.isPresent() && !doubted && block.outliers().isApart(field, read.get())) {
      doubted = true;
      Problem apart = block.problem(row, cell.column(), ProblemCode.DOUBTFUL_VALUE, "apart");
      block.say(apart.with("text", cell.text()).about(tag));
    }
    if (read.isPresent() && !doubted) {
      block.readings().of(field).keep(cell, read.get());
    }
    doubted = false;
    return read.orElse(null);
  }

  private Optional<Length> lengthOf(Heading heading, Cell cell) {
    if (isNothing(cell)) {
      return refuse(problem(heading, ProblemCode.MISSING_CELL, "length"));
    }
    return read(heading, LENGTH, block.units().length())
        .filter(length -> isPlausible(heading, length, true));
  }

  /** Reads a diameter, or a girth divided by pi, 4 to 36 in; null when it is missing or wrong. */
  Length diameter(Field field) {
    Heading heading = block.through(field);
    if (heading == null) {
      return null;
    }
    Length one = diameter(field, heading);
    Heading across = block.heading(field.across());
    Length other = across == null ? null : diameter(field, across);
    return one == null || other == null
        ? (one == null ? other : one)
        : one.plus(other).dividedBy(2);
  }

  private Length diameter(Field field, Heading heading) {
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
    return read(heading, field.phrase(), heading.unit().or(() -> unit));
  }

  /** Returns whether a cell is blank or says that there is no value. */
  static boolean isNothing(Cell cell) {
    return cell.isBlank()
        || cell.kind() == CellKind.TEXT
            && !Character.isDigit(cell.text().charAt(0))
            && LengthReader.isNothing(cell.text());
  }

  /** Reads a cell as a length without a word; empty where it is none, or larger than any log's. */
  static Optional<Length> plain(Cell cell, LengthReader reader) {
    if (cell.kind() != CellKind.NUMBER) {
      return reader.read(cell.text()).map(LengthReader.Reading::length);
    }
    LengthUnit unit = LengthUnit.ofSymbol(cell.unit()).orElse(reader.defaultUnit());
    return isSane(cell.number()) ? Optional.of(Length.of(cell.number(), unit)) : Optional.empty();
  }

  private static boolean isSane(BigDecimal number) {
    return number.abs().compareTo(MOST) < 0;
  }

  static Length throughPi(Length girth) {
    return Length.ofNanometres(Math.round(girth.nanometres() / Math.PI));
  }

  private Optional<Length> read(Heading heading, Phrase name, Optional<LengthUnit> unit) {
    Cell cell = row.cell(heading.column());
    return switch (cell.kind()) {
      case NUMBER ->
          isPointed(heading, cell) ? text(heading, name, unit) : number(heading, name, unit);
      case TEXT -> text(heading, name, unit);
      case DATE -> date(heading, name);
      case ERROR -> refuse(bad(heading, "error-value", name));
      case UNCOMPUTED -> refuse(bad(heading, "formula", name).remedyOf("saved-value"));
      default -> refuse(bad(heading, "no-number", name));
    };
  }

  private Optional<Length> number(Heading heading, Phrase name, Optional<LengthUnit> unit) {
    Cell cell = row.cell(heading.column());
    Optional<LengthUnit> own = LengthUnit.ofSymbol(cell.unit()).or(() -> unit);
    if (own.isEmpty()) {
      return noUnit(heading, name);
    }
    return isSane(cell.number())
        ? Optional.of(Length.of(cell.number(), own.get()))
        : refuse(bad(heading, "no-measure", name));
  }

  /** Returns whether a number stands under a heading of feet and inches with a point in it. */
  private boolean isPointed(Heading heading, Cell cell) {
    boolean along = heading.field().filter(Field.LENGTH::equals).isPresent();
    return along && cell.unit().isEmpty() && block.readings().isPointed(cell.text());
  }

  private Optional<Length> text(Heading heading, Phrase name, Optional<LengthUnit> unit) {
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
      Heading heading, Phrase name, LengthReader reader, LengthReader.Reading reading) {
    doubted = true;
    String text = row.cell(heading.column()).text();
    Optional<LengthReader.Reading> other = asOtherMark(heading, text, reader, reading.length());
    Problem doubtful =
        problem(
                heading,
                ProblemCode.DOUBTFUL_VALUE,
                other.isPresent() ? "decimal-mark" : "although")
            .with("what", name)
            .with("text", text);
    block.say(
        (other.isPresent() ? doubtful : doubtful.with("why", why(reading.doubt().orElseThrow())))
            .about(tag));
    return other.orElse(reading).length();
  }

  private static Phrase why(Doubt doubt) {
    return switch (doubt.kind()) {
      case UNCERTAIN -> Phrase.of("doubt.uncertain");
      case LARGE_FRACTION -> Phrase.of("doubt.large-fraction");
      case LARGE_PART -> Phrase.of("doubt.large-part").with("unit", doubt.written());
      case THOUSANDS ->
          Phrase.of("doubt.thousands")
              .with("written", doubt.written())
              .with("taken", doubt.taken());
    };
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

  private Optional<Length> unreadable(Heading heading, Phrase name, LengthReader reader) {
    String text = row.cell(heading.column()).text();
    if (isPointed(heading, row.cell(heading.column()))) {
      return refuse(bad(heading, "pointed", name).remedyOf("feet-inches"));
    }
    if (LengthReader.isDateLike(text)) {
      return refuse(bad(heading, "like-date", name));
    }
    if (reader.isRange(text)) {
      String guess = heading.field().orElse(null) == Field.LENGTH ? HyphenFeet.marked(text) : "";
      Problem range = bad(heading, "range", name);
      return refuse(
          guess.isEmpty()
              ? range.remedyOf("one-number")
              : range.remedy(Phrase.of("remedy.was-it").with("guess", guess)));
    }
    return refuse(bad(heading, "unread", name));
  }

  private Optional<Length> date(Heading heading, Phrase name) {
    Cell cell = row.cell(heading.column());
    Dates.Guess guess = Dates.guess(cell.number(), heading.field().orElse(null) == Field.LENGTH);
    Problem date =
        guess
            .date()
            .map(day -> problem(heading, ProblemCode.DATE_IN_NUMBER, "date").with("date", day))
            .orElseGet(() -> problem(heading, ProblemCode.DATE_IN_NUMBER, "date-or-time"));
    return refuse(date.with("what", name).remedy(guess.remedy()));
  }

  private Optional<Length> noUnit(Heading heading, Phrase name) {
    return refuse(
        problem(heading, ProblemCode.UNIT_UNKNOWN, "none")
            .with("what", name)
            .with("text", row.cell(heading.column()).text()));
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
    Optional<Value> suggestion =
        girth ? Optional.empty() : bare.flatMap(number -> Plausible.suggestion(number, along));
    if (block.table().marks().contains(Table.Mark.LINES)) {
      passed |= !refused;
      refused = true;
      return false;
    }
    Phrase limits = Phrase.of(along ? "limits.length" : "limits.diameter");
    Problem range =
        problem(heading, ProblemCode.OUT_OF_RANGE, "outside")
            .with("text", cell.text())
            .with("limits", limits);
    refuse(
        suggestion
            .map(guess -> range.remedy(Phrase.of("remedy.was-it").with("guess", guess)))
            .orElse(range));
    return false;
  }

  private Problem problem(Heading heading, ProblemCode code, String variant) {
    return block.problem(row, heading.column(), code, variant);
  }

  /** Returns that a cell holds no number, with what the cell is and what stands in it. */
  private Problem bad(Heading heading, String variant, Phrase name) {
    return problem(heading, ProblemCode.BAD_NUMBER, variant)
        .with("what", name)
        .with("text", row.cell(heading.column()).text());
  }

  private Optional<Length> refuse(Problem problem) {
    block.refuse(problem.as(Severity.ERROR), tag);
    refused = true;
    return Optional.empty();
  }
}
