package roundbook.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.intake.JobReader.Findings;
import roundbook.intake.house.HouseTold;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.words.Sentences;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.table.Table.Mark;
import roundbook.units.Length;

/**
 * A small tally as it is typed, a line a row and a bar between cells, and what is read of it.
 *
 * <p>A cell is text unless it begins with an equals sign: {@code =12.5} is a number, {@code
 * =12.5@ft} one whose format shows a unit, {@code =date 38263} a date, {@code =!} an error, {@code
 * =?} a formula without a value, {@code =true} a truth.
 */
public final class Tally {
  /** The headings of most tallies here. */
  public static final String HEADINGS = "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)";

  private final List<Row> rows = new ArrayList<>();
  private final Set<Mark> marks = EnumSet.noneOf(Mark.class);
  private final Map<String, String> settings = new LinkedHashMap<>();
  private Read<Findings> read;

  private Tally() {}

  /** Returns a tally of lines. */
  public static Tally of(String... lines) {
    Tally tally = new Tally();
    Arrays.stream(lines).forEach(tally::add);
    return tally;
  }

  /** Returns a tally of a heading row and one log. */
  static Tally one(String headings, String log) {
    return of(headings, log);
  }

  private void add(String line) {
    rows.add(row(rows.size() + 1, line));
  }

  /** Returns the row of a line. */
  public static Row row(int number, String line) {
    String[] texts = line.split("\\|", -1);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < texts.length; i++) {
      cells.add(cell(i + 1, texts[i]));
    }
    cells.removeIf(Cell::isBlank);
    return new Row(number, cells, false, false);
  }

  private static Cell cell(int column, String text) {
    if (!text.startsWith("=")) {
      return Cell.text(column, text);
    }
    String value = text.substring(1);
    if (value.equals("!") || value.equals("?")) {
      CellKind kind = value.equals("!") ? CellKind.ERROR : CellKind.UNCOMPUTED;
      return new Cell(column, kind, "#N/A", null, "");
    }
    if (value.equals("true")) {
      return new Cell(column, CellKind.BOOLEAN, "TRUE", null, "");
    }
    boolean date = value.startsWith("date ");
    String[] number = value.replace("date ", "").split("@");
    return new Cell(
        column,
        date ? CellKind.DATE : CellKind.NUMBER,
        number[0],
        new BigDecimal(number[0]),
        number.length > 1 ? number[1] : "");
  }

  /** Says a setting of the command line. */
  Tally set(String name, String value) {
    settings.put(name, value);
    return this;
  }

  /** Marks the table. */
  Tally mark(Mark mark) {
    marks.add(mark);
    return this;
  }

  /** Returns it as a text file's table. */
  public Table table() {
    return table("");
  }

  /** Returns it as a sheet of a workbook. */
  public Table table(String sheet) {
    return Table.of(sheet.isEmpty() ? "tally.csv" : "yard.xlsx", sheet, marks, rows);
  }

  /** Reads it, once. */
  Read<Findings> read() {
    if (read == null) {
      read = JobReader.read(List.of(table()), asked(settings, null));
    }
    return read;
  }

  /** Returns the usable logs. */
  List<Log> logs() {
    return read().value().orElseThrow().logs();
  }

  /** Returns the only log. */
  Log log() {
    if (logs().size() != 1) {
      throw new AssertionError(logs().size() + " logs: " + read().problems());
    }
    return logs().get(0);
  }

  /** Returns the tags of the usable logs. */
  String tags() {
    return logs().stream().map(Log::tag).collect(Collectors.joining(" "));
  }

  /** Returns each log's tag, length, butt, middle and tip in inches to the hundredth. */
  String measures() {
    return logs().stream()
        .map(
            log ->
                log.tag()
                    + " "
                    + inches(log.length())
                    + " "
                    + inches(log.butt())
                    + "/"
                    + inches(log.mid())
                    + "/"
                    + inches(log.tip()))
        .collect(Collectors.joining("; "));
  }

  /** Returns a length in inches to the hundredth. */
  public static String inches(Length length) {
    return length.decimal(roundbook.units.LengthUnit.INCH, 2).stripTrailingZeros().toPlainString();
  }

  /** Returns what is said, each with its cell, such as {@code B2 missing-cell.length}. */
  String said() {
    return said(read().problems());
  }

  /** Returns what the command line asks: settings, and one pen where walls are told. */
  public static Asked asked(Map<String, String> settings, String walls) {
    return new Asked(
        settings,
        Optional.ofNullable(walls).map(HouseTold::ofWalls),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Returns what problems say, each with its cell. */
  public static String said(List<Problem> problems) {
    return problems.stream()
        .map(each -> (each.where().address() + " " + each.said().key()).strip())
        .collect(Collectors.joining(", "));
  }

  /** Returns the problem of a sentence. */
  Problem problem(String key) {
    return read().problems().stream()
        .filter(each -> each.said().key().equals(key))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + key + " in " + read().problems()));
  }

  /** Returns what to do about the problem of a sentence, in English. */
  String remedy(String key) {
    return problem(key).remedies().stream()
        .map(each -> each.in(Sentences.english()))
        .collect(Collectors.joining(" "));
  }
}
