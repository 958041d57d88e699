package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Log;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Reads a tally: a table with a heading row and a log a row.
 *
 * <p>Columns are found by their headings, in the trade's words of several languages, never by
 * position. Needed: a length, and at least one diameter or girth. Wanted: a tag, and butt, middle
 * and tip diameters. Also read: species, bark, sweep, keep for, wall, round, skip, count, butt or
 * upper log, how far from the butt the middle was measured, remarks. Other columns are carried
 * through. Title rows above the headings, blank rows, totals and notes are passed over.
 */
final class TallyReader {
  private final Table table;
  private final Asked asked;
  private final BuildRules rules;
  private final Problems problems = new Problems();
  private final List<Log> logs = new ArrayList<>();

  TallyReader(Table table, Asked asked, BuildRules rules) {
    this.table = table;
    this.asked = asked;
    this.rules = rules;
  }

  /** The logs of a tally and every problem found in it. */
  record Tally(List<Log> logs, List<Problem> problems) {}

  /** Reads the tally. */
  Tally read() {
    Optional<Header> header = Header.find(table);
    if (header.isEmpty()) {
      noHeader();
    } else if (Header.sideways(table) && header.get().row().filled().size() < 4) {
      sideways();
    } else {
      read(header.get());
    }
    return new Tally(logs, problems.sorted());
  }

  private void noHeader() {
    if (Header.sideways(table)) {
      sideways();
      return;
    }
    CellRef where = table.rows().isEmpty() ? table.place() : table.at(table.rows().get(0));
    problems.add(
        Problem.of(
            ProblemCode.MISSING_COLUMN,
            where,
            "",
            "no headings of a tally were found: a length and a butt, mid or tip diameter"));
  }

  private void sideways() {
    Row first = table.rows().get(0);
    problems.add(
        Problem.of(
            ProblemCode.TRANSPOSED_TABLE,
            table.at(first, 1),
            first.cell(1).text(),
            "the headings stand in column A and the logs run across"));
  }

  private void read(Header header) {
    List<Row> below =
        table.rows().stream().filter(row -> row.number() > header.row().number()).toList();
    List<Row> data = sorted(below, header);
    for (Map<Field, Heading> block : header.blocks()) {
      if (complete(block, header)) {
        readBlock(block, header, data);
      }
    }
    if (data.isEmpty()) {
      problems.add(
          Problem.of(
              ProblemCode.NO_ROWS,
              table.at(header.row()),
              "",
              "there are headings but no logs under them"));
    }
  }

  private void readBlock(Map<Field, Heading> block, Header header, List<Row> data) {
    Units units = Units.of(block, asked, data, table.decimalComma());
    if (!sayUnits(units, block, header)) {
      return;
    }
    LogReader reader = new LogReader(table, header, block, units, rules, problems);
    for (Row row : data) {
      if (block.values().stream().anyMatch(each -> !row.cell(each.column()).isBlank())) {
        logs.addAll(reader.read(row));
      }
    }
    new ColumnDoubts(table, header, block, problems).say(reader.seen());
  }

  private boolean sayUnits(Units units, Map<Field, Heading> block, Header header) {
    boolean bothTold = units.length().isPresent() && units.diameter().isPresent();
    if (!bothTold && units.assumed()) {
      Heading heading = block.get(Field.LENGTH);
      problems.add(
          Problem.of(
              ProblemCode.UNIT_UNKNOWN,
              table.at(header.row(), heading.column()),
              heading.text(),
              "no unit is given and more than one would fit the numbers"));
      return false;
    }
    if (bothTold && units.assumed()) {
      problems.add(
          Problem.of(
              ProblemCode.UNIT_ASSUMED,
              table.at(header.row()),
              "",
              "no unit is given: bare lengths were read as "
                  + units.length().get().symbol()
                  + ", bare diameters as "
                  + units.diameter().get().symbol()));
    }
    return true;
  }

  private boolean complete(Map<Field, Heading> block, Header header) {
    boolean diameter = block.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
    if (block.containsKey(Field.LENGTH) && diameter) {
      return true;
    }
    String missing =
        diameter
            ? "there is no length column"
            : block.containsKey(Field.DBH)
                ? "there is no butt, mid or tip diameter; a diameter at breast height is measured"
                    + " on the standing tree and is no butt diameter"
                : "there is no butt, mid or tip diameter";
    problems.add(Problem.of(ProblemCode.MISSING_COLUMN, table.at(header.row()), "", missing));
    return false;
  }

  /** Keeps the rows of logs and says which others were passed over. */
  private List<Row> sorted(List<Row> below, Header header) {
    List<Row> data = new ArrayList<>();
    for (Row row : below) {
      switch (RowKind.of(row, header)) {
        case REPEATED_HEADER -> say(row, ProblemCode.REPEATED_HEADER, "headings repeated");
        case SUMMARY -> {
          Cell first = row.filled().get(0);
          problems.add(
              Problem.of(
                  ProblemCode.SUMMARY_ROW,
                  table.at(row, first.column()),
                  first.text(),
                  "a total or count row was passed over"));
        }
        case NOTE -> say(row, ProblemCode.NOTE_ROW, "a row of free text was passed over");
        case LOG -> {
          hiddenOrStruck(row);
          data.add(row);
        }
      }
    }
    return data;
  }

  private void hiddenOrStruck(Row row) {
    if (row.hidden()) {
      say(row, ProblemCode.HIDDEN_ROW, "the row is hidden; it was read");
    }
    if (row.struck()) {
      say(row, ProblemCode.STRUCK_ROW, "the row is struck through; it was read");
    }
  }

  private void say(Row row, ProblemCode code, String message) {
    Severity severity = code.severity();
    problems.add(Problem.of(code, table.at(row), "", message).as(severity));
  }
}
