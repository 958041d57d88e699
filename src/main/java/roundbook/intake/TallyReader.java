package roundbook.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundbook.job.BuildRules;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Reads a tally: a table with a heading row and a log a row, in one pass.
 *
 * <p>Columns are found by their headings, in the trade's words of several languages, never by
 * position. Needed: a length, and at least one diameter or girth. Wanted: a tag, and butt, middle
 * and tip diameters. Also read: species, bark, sweep, keep for, wall, round, skip, count, butt or
 * upper log, how far from the butt the middle was measured, remarks. Other columns are carried
 * through. Title rows above the headings, blank rows, totals and notes are passed over. Blocks of
 * columns side by side are read each, and so are tables one under another with headings of their
 * own. Units are told from the cell, else its number format, else the heading, else a setting, else
 * concluded from the first 2000 rows.
 *
 * <pre>
 * Log, Length (ft), Butt (in), Mid (in), Tip (in), Species, Remarks
 * 12,  16' 6",      14 3/4,    12 1/2,   11,       spruce,  sweep to the north
 * </pre>
 */
final class TallyReader {
  private final Table table;
  private final Mapping mapping;
  private final BuildRules rules;
  private final Problems problems;
  private final List<LogReader> readers = new ArrayList<>();
  private PlainRows plain;
  private Header header;
  private boolean seenLog;

  TallyReader(Table table, Mapping mapping, BuildRules rules, Problems problems) {
    this.table = table;
    this.mapping = mapping;
    this.rules = rules;
    this.problems = problems;
  }

  /** Reads the tally and gives its logs to the taker. */
  void read(Doubles taker) {
    Optional<Header> found = Header.find(table, mapping);
    boolean sideways = Header.sideways(table);
    if (sideways && (found.isEmpty() || found.get().row().filled().size() < 4)) {
      sideways();
    } else if (found.isEmpty()) {
      noHeader();
    } else {
      int top = found.get().row().number();
      plain =
          new PlainRows(
              taker,
              row -> {
                if (row.number() > top) {
                  take(row, taker);
                }
              });
      begin(found.get());
      Optional<Problem> broken = table.forEach(plain);
      end();
      broken.ifPresent(problems::add);
    }
  }

  private void begin(Header found) {
    header = found;
    readers.clear();
    List<Row> sample =
        table.rows().stream()
            .filter(row -> row.number() > found.row().number())
            .filter(row -> RowKind.of(row, found) == RowKind.LOG)
            .toList();
    for (Heading again : found.doubles()) {
      problems.add(
          Problem.of(
              ProblemCode.DUPLICATE_COLUMN,
              table.at(found.row(), again.column()),
              again.text(),
              "another column means the same; this one is only carried through"));
    }
    for (Map<Field, Heading> columns : found.blocks()) {
      if (isComplete(columns)) {
        Units units = Units.of(columns, mapping, sample, table.decimalComma());
        Heading lengths = columns.get(Field.LENGTH);
        boolean stated = HyphenFeet.isStated(lengths);
        boolean meant = !stated && HyphenFeet.isMeant(lengths, sample);
        Readings readings = new Readings(table, stated || meant);
        Block block = new Block(table, found, columns, units, problems, readings);
        if (meant) {
          String message = "lengths such as 16-6 were read as feet and inches";
          block.sayColumn(ProblemCode.UNIT_ASSUMED, Optional.of(lengths), message);
        }
        if (unitsTold(block)) {
          readers.add(new LogReader(block, rules));
        }
      }
    }
    plain.end();
    readers.forEach(reader -> reader.leave(plain));
  }

  private void endBlocks() {
    Set<ProblemCode> said = new HashSet<>();
    readers.forEach(reader -> reader.end(said));
  }

  private void end() {
    endBlocks();
    if (!seenLog) {
      problems.add(
          Problem.of(
              ProblemCode.NO_ROWS,
              table.at(header.row()),
              "",
              "there are headings but no logs under them"));
    }
  }

  private void take(Row row, Doubles taker) {
    RowKind kind = RowKind.of(row, header);
    if (kind == RowKind.HEADINGS) {
      headings(row, taker);
    } else if (kind == RowKind.SUMMARY) {
      Cell first = row.filled().get(0);
      problems.add(
          Problem.of(
              ProblemCode.SUMMARY_ROW,
              table.at(row, first.column()),
              first.text(),
              "a total or count row was passed over"));
    } else if (kind == RowKind.NOTE) {
      say(row, ProblemCode.NOTE_ROW, "a row of free text was passed over");
    } else if (kind == RowKind.LOG) {
      log(row, taker);
    }
  }

  /** Words under the headings: the headings again, other headings, a note, or a poor log. */
  private void headings(Row row, Doubles taker) {
    Header other = Header.of(row, mapping);
    boolean tally = other.isTally();
    if (tally && other.means(header)) {
      say(row, ProblemCode.REPEATED_HEADER, "the headings stand here again");
    } else if (tally && other.columns().size() >= 3) {
      endBlocks();
      begin(other);
    } else if (RowKind.isNote(row, header)) {
      say(row, ProblemCode.NOTE_ROW, "a row of free text was passed over");
    } else {
      log(row, taker);
    }
  }

  private void log(Row row, Doubles taker) {
    seenLog = true;
    if (row.hidden()) {
      say(row, ProblemCode.HIDDEN_ROW, "the row is hidden; it was read");
    }
    if (row.struck()) {
      say(row, ProblemCode.STRUCK_ROW, "the row is struck through; it was read");
    }
    readers.forEach(reader -> reader.read(row, taker::take));
  }

  private void noHeader() {
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

  private boolean isComplete(Map<Field, Heading> columns) {
    boolean diameter =
        columns.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
    if (columns.containsKey(Field.LENGTH) && diameter) {
      return true;
    }
    String missing = diameter ? "there is no length column" : missingDiameter(columns);
    problems.add(
        Problem.of(ProblemCode.MISSING_COLUMN, table.at(header.row()), "", missing)
            .remedy("Add the column, or say which it is with --set Column_mid=\"its heading\"."));
    return false;
  }

  private static String missingDiameter(Map<Field, Heading> columns) {
    if (columns.containsKey(Field.DIAMETER)) {
      return "the column '"
          + columns.get(Field.DIAMETER).text()
          + "' does not say where on the log the diameter was taken: butt, mid or tip";
    }
    return columns.containsKey(Field.DBH)
        ? "there is no butt, mid or tip diameter; a diameter at breast height is measured on the"
            + " standing tree, over bark, and is no butt diameter"
        : "there is no butt, mid or tip diameter";
  }

  private boolean unitsTold(Block block) {
    Units units = block.units();
    if (units.asking().isEmpty()) {
      return true;
    }
    if (units.assumed()) {
      block.sayColumn(
          ProblemCode.UNIT_ASSUMED,
          units.asking(),
          "no unit is given: bare lengths were read as "
              + units.length().orElseThrow().symbol()
              + ", bare diameters as "
              + units.diameter().orElseThrow().symbol());
      return true;
    }
    seenLog = true;
    List<String> pairs = units.plausible().stream().map(Units.Pair::words).toList();
    block.sayColumn(
        ProblemCode.UNIT_UNKNOWN,
        units.asking(),
        pairs.isEmpty()
            ? "no unit is given and none fits the numbers"
            : "no unit is given and more than one would fit: " + String.join(", or ", pairs));
    return false;
  }

  private void say(Row row, ProblemCode code, String message) {
    problems.add(Problem.of(code, table.at(row), "", message));
  }
}
