package roundbook.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.job.Log.Bark;
import roundbook.job.Log.Keep;
import roundbook.job.Log.Traits;
import roundbook.job.Log.Wish;
import roundbook.job.Setting;
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

/** Reads one row of a tally as a log, or as several alike. */
final class LogReader {
  private final Table table;
  private final Header header;
  private final Map<Field, Heading> block;
  private final Units units;
  private final BuildRules rules;
  private final Problems problems;
  private final List<SeenLog> seen = new ArrayList<>();

  LogReader(
      Table table,
      Header header,
      Map<Field, Heading> block,
      Units units,
      BuildRules rules,
      Problems problems) {
    this.table = table;
    this.header = header;
    this.block = block;
    this.units = units;
    this.rules = rules;
    this.problems = problems;
  }

  /** A row that was read as a log, with the diameters as they stood. */
  record SeenLog(Row row, Length length, Diameters diameters) {}

  /** Returns the rows read so far. */
  List<SeenLog> seen() {
    return seen;
  }

  /** Reads a row; empty when it has an error. */
  List<Log> read(Row row) {
    String tag = tag(row);
    if (tag == null || !extraCellsFit(row)) {
      return List.of();
    }
    CellReading cells = new CellReading(table, row, tag, problems);
    Heading lengths = block.get(Field.LENGTH);
    Optional<Length> length = cells.length(lengths, units.length());
    if (length.isEmpty() && row.cell(lengths.column()).isBlank()) {
      missing(row, lengths, tag, Severity.ERROR, "log " + named(tag) + " has no length");
    }
    EnumOptional read = new EnumOptional();
    boolean broken = length.isEmpty();
    for (Field field : List.of(Field.BUTT, Field.MID, Field.TIP)) {
      broken |= !readDiameter(row, cells, field, read);
    }
    if (broken) {
      return List.of();
    }
    Optional<Diameters> diameters =
        new EndsCheck(table, row, block, problems, tag).complete(length.get(), read, upperLog(row));
    return diameters.map(each -> logs(row, tag, length.get(), each, cells)).orElseGet(List::of);
  }

  /** The diameters of a row that were read. */
  static final class EnumOptional {
    private final Map<Field, Length> lengths = new java.util.EnumMap<>(Field.class);

    Optional<Length> get(Field field) {
      return Optional.ofNullable(lengths.get(field));
    }

    void put(Field field, Length length) {
      lengths.put(field, length);
    }
  }

  private boolean readDiameter(Row row, CellReading cells, Field field, EnumOptional read) {
    Heading heading = block.get(field);
    Heading girth = heading == null ? girth(field) : null;
    Heading either = heading == null ? girth : heading;
    if (either == null || row.cell(either.column()).isBlank()) {
      return true;
    }
    String name = field.name().toLowerCase(java.util.Locale.ROOT);
    boolean blankWord = row.cell(either.column()).text().matches("(?i)n/?a|-+|\\?|none|k\\.?a\\.?");
    Optional<LengthUnit> unit = either.unit().or(units::diameter);
    Optional<Length> length =
        girth == null
            ? cells.diameter(either, unit, name)
            : cells.any(either, unit, name + " girth").map(LogReader::throughPi);
    length.ifPresent(each -> read.put(field, each));
    return length.isPresent() || blankWord;
  }

  private Heading girth(Field field) {
    return block.entrySet().stream()
        .filter(entry -> entry.getKey().girth() && entry.getKey().asDiameter() == field)
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(null);
  }

  private static Length throughPi(Length girth) {
    return Length.ofNanometres(Math.round(girth.nanometres() / Math.PI));
  }

  private List<Log> logs(
      Row row, String tag, Length length, Diameters diameters, CellReading cells) {
    seen.add(new SeenLog(row, length, diameters));
    int count = count(row, tag);
    List<Log> logs = new ArrayList<>();
    Traits traits = traits(row, cells);
    DiameterProfile profile = peeled(profile(row, length, diameters, cells), traits.bark());
    for (int i = 1; i <= count; i++) {
      String own = tag.isEmpty() ? row.number() + "-" + i : count == 1 ? tag : tag + "-" + i;
      logs.add(
          new Log(
              own,
              length,
              profile,
              diameters.sources(),
              traits,
              wish(row),
              table.at(row),
              extra(row)));
    }
    return logs;
  }

  private DiameterProfile profile(Row row, Length length, Diameters diameters, CellReading cells) {
    Optional<Length> at =
        block.containsKey(Field.MID_AT) && diameters.sources().mid() == Log.Source.MEASURED
            ? cells.any(block.get(Field.MID_AT), units.length(), "measured from the butt")
            : Optional.empty();
    Length middle =
        at.filter(place -> place.isMoreThan(Length.ZERO) && place.isLessThan(length))
            .orElse(length.dividedBy(2));
    return new DiameterProfile(
        List.of(
            new Station(Length.ZERO, diameters.butt()),
            new Station(middle, diameters.mid()),
            new Station(length, diameters.tip())));
  }

  private DiameterProfile peeled(DiameterProfile profile, Bark bark) {
    Length off = rules.optionalLength(Setting.BARK_OFF).orElse(Length.ZERO);
    return bark == Bark.OVER && !off.isZero() ? profile.thinnedBy(off) : profile;
  }

  private Traits traits(Row row, CellReading cells) {
    Length sweep =
        block.containsKey(Field.SWEEP)
            ? cells.any(block.get(Field.SWEEP), units.diameter(), "sweep").orElse(Length.ZERO)
            : Length.ZERO;
    String keep = text(row, Field.KEEP).toUpperCase(java.util.Locale.ROOT);
    Keep kept = keep.matches("SILL|PLATE|HEADER|SPARE") ? Keep.valueOf(keep) : Keep.ANY;
    boolean skip = text(row, Field.SKIP).matches("(?i)x|y|yes|true|1|skip|ja|oui|si|kyllä");
    String species = text(row, Field.SPECIES);
    return new Traits(
        species.isEmpty() ? rules.text(Setting.SPECIES) : species,
        bark(row),
        sweep,
        kept,
        skip,
        remarks(row));
  }

  private Bark bark(Row row) {
    String word = text(row, Field.BARK).toLowerCase(java.util.Locale.ROOT);
    String headings =
        block.values().stream()
            .map(Heading::text)
            .reduce("", (a, b) -> a + " " + b)
            .toLowerCase(java.util.Locale.ROOT);
    if (word.matches("over|ob|o\\.b\\.|on|mit rinde|m\\.r\\.|pb")
        || word.isEmpty() && headings.matches(".*\\b(?:ob|over bark)\\b.*")) {
      return Bark.OVER;
    }
    boolean off = word.matches("off|ub|u\\.b\\.|under|peeled|ohne rinde|o\\.r\\.");
    boolean named = word.isEmpty() && headings.matches(".*\\b(?:ub|under bark|peeled)\\b.*");
    return off || named ? Bark.OFF : Bark.UNSTATED;
  }

  private String remarks(Row row) {
    List<String> words = new ArrayList<>();
    words.add(text(row, Field.REMARKS));
    row.filled().stream()
        .filter(cell -> !header.columns().contains(cell.column()))
        .forEach(cell -> words.add(cell.text()));
    return String.join(" ", words).strip();
  }

  private Wish wish(Row row) {
    OptionalInt round =
        new LengthReader(LengthUnit.MILLIMETRE, false)
            .number(numberText(row, Field.ROUND))
            .map(BigDecimal::intValue)
            .map(OptionalInt::of)
            .orElseGet(OptionalInt::empty);
    return new Wish(text(row, Field.WALL), round);
  }

  private boolean upperLog(Row row) {
    return text(row, Field.PART).toLowerCase(java.util.Locale.ROOT).startsWith("u");
  }

  private int count(Row row, String tag) {
    if (!block.containsKey(Field.COUNT)) {
      return 1;
    }
    int column = block.get(Field.COUNT).column();
    int count =
        new LengthReader(LengthUnit.MILLIMETRE, false)
            .number(numberText(row, Field.COUNT))
            .map(BigDecimal::intValue)
            .orElse(1);
    if (count > 1) {
      problems.add(
          Problem.of(
                  ProblemCode.QUANTITY_ROW,
                  table.at(row, column),
                  row.cell(column).text(),
                  "the row stands for " + count + " logs alike")
              .about(tag));
    }
    return count;
  }

  private Map<String, String> extra(Row row) {
    Map<String, String> extra = new LinkedHashMap<>();
    for (Heading other : header.others()) {
      String text = row.cell(other.column()).text();
      if (!text.isEmpty()) {
        extra.putIfAbsent(other.text(), text);
      }
    }
    return extra;
  }

  /** Returns the tag, empty where there is no column for it, or null where it cannot be used. */
  private String tag(Row row) {
    Heading heading = block.get(Field.TAG);
    if (heading == null) {
      return "";
    }
    Cell cell = row.cell(heading.column());
    if (cell.kind() == Cell.Kind.DATE) {
      problems.add(
          Problem.of(
              ProblemCode.DATE_IN_NUMBER,
              table.at(row, heading.column()),
              cell.text(),
              "the tag is a date, " + cell.text()));
      return null;
    }
    if (cell.isBlank()) {
      missing(row, heading, "", Severity.WARNING, "the log has no tag; it is named by its row");
    }
    return cell.text();
  }

  private boolean extraCellsFit(Row row) {
    List<Cell> extra =
        row.filled().stream().filter(cell -> !header.columns().contains(cell.column())).toList();
    if (extra.isEmpty()) {
      return true;
    }
    Cell first = extra.get(0);
    boolean numbers = extra.stream().allMatch(cell -> cell.text().matches("[\\d.,/ ]+"));
    String message =
        numbers
            ? "more cells than headings; were decimal commas cut?"
            : "a cell without a heading was kept as a remark";
    problems.add(
        Problem.of(ProblemCode.EXTRA_CELL, table.at(row, first.column()), first.text(), message)
            .as(numbers ? Severity.ERROR : Severity.WARNING));
    return !numbers;
  }

  private void missing(Row row, Heading heading, String tag, Severity severity, String message) {
    problems.add(
        Problem.of(ProblemCode.MISSING_CELL, table.at(row, heading.column()), "", message)
            .as(severity)
            .about(tag));
  }

  private String text(Row row, Field field) {
    return block.containsKey(field) ? row.cell(block.get(field).column()).text() : "";
  }

  private String numberText(Row row, Field field) {
    return text(row, field).replaceAll("\\.0+$", "");
  }

  private static String named(String tag) {
    return tag.isEmpty() ? "without a tag" : tag;
  }
}
