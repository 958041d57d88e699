package roundbook.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundbook.job.BuildRules;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
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
          Problem.of(ProblemCode.DUPLICATE_COLUMN, table.at(found.row(), again.column()))
              .found(again.text()));
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
          block.say(block.ofColumn(ProblemCode.UNIT_ASSUMED, "hyphen", Optional.of(lengths)));
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
      problems.add(Problem.of(ProblemCode.NO_ROWS, table.at(header.row())));
    }
  }

  private void take(Row row, Doubles taker) {
    RowKind kind = RowKind.of(row, header);
    if (kind == RowKind.HEADINGS) {
      headings(row, taker);
    } else if (kind == RowKind.SUMMARY) {
      Cell first = row.filled().get(0);
      problems.add(
          Problem.of(ProblemCode.SUMMARY_ROW, table.at(row, first.column())).found(first.text()));
    } else if (kind == RowKind.NOTE) {
      say(row, ProblemCode.NOTE_ROW, "text");
    } else if (kind == RowKind.LOG) {
      log(row, taker);
    }
  }

  /** Words under the headings: the headings again, other headings, a note, or a poor log. */
  private void headings(Row row, Doubles taker) {
    Header other = Header.of(row, mapping);
    boolean tally = other.isTally();
    if (tally && other.means(header)) {
      say(row, ProblemCode.REPEATED_HEADER, "");
    } else if (tally && other.columns().size() >= 3) {
      endBlocks();
      begin(other);
    } else if (RowKind.isNote(row, header)) {
      say(row, ProblemCode.NOTE_ROW, "text");
    } else {
      log(row, taker);
    }
  }

  private void log(Row row, Doubles taker) {
    seenLog = true;
    if (row.hidden()) {
      say(row, ProblemCode.HIDDEN_ROW, "");
    }
    if (row.struck()) {
      say(row, ProblemCode.STRUCK_ROW, "");
    }
    readers.forEach(reader -> reader.read(row, taker::take));
  }

  private void noHeader() {
    CellRef where = table.rows().isEmpty() ? table.place() : table.at(table.rows().get(0));
    problems.add(Problem.of(ProblemCode.MISSING_COLUMN, "headings", where));
  }

  private void sideways() {
    Row first = table.rows().get(0);
    problems.add(
        Problem.of(ProblemCode.TRANSPOSED_TABLE, table.at(first, 1)).found(first.cell(1).text()));
  }

  private boolean isComplete(Map<Field, Heading> columns) {
    boolean diameter =
        columns.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
    if (columns.containsKey(Field.LENGTH) && diameter) {
      return true;
    }
    problems.add((diameter ? missing("length") : missingDiameter(columns)).remedyOf("mid-column"));
    return false;
  }

  private Problem missingDiameter(Map<Field, Heading> columns) {
    if (columns.containsKey(Field.DIAMETER)) {
      return missing("where").with("heading", columns.get(Field.DIAMETER).text());
    }
    return missing(columns.containsKey(Field.DBH) ? "breast-height" : "diameter");
  }

  private Problem missing(String variant) {
    return Problem.of(ProblemCode.MISSING_COLUMN, variant, table.at(header.row()));
  }

  private boolean unitsTold(Block block) {
    Units units = block.units();
    if (units.asking().isEmpty()) {
      return true;
    }
    if (units.assumed()) {
      block.say(
          block
              .ofColumn(ProblemCode.UNIT_ASSUMED, "taken", units.asking())
              .with("length", units.length().orElseThrow().symbol())
              .with("diameter", units.diameter().orElseThrow().symbol()));
      return true;
    }
    seenLog = true;
    List<Phrase> pairs = units.plausible().stream().map(Units.Pair::phrase).toList();
    block.say(
        pairs.isEmpty()
            ? block.ofColumn(ProblemCode.UNIT_UNKNOWN, "no-fit", units.asking())
            : block
                .ofColumn(ProblemCode.UNIT_UNKNOWN, "more", units.asking())
                .with("pairs", Value.list("list.comma-or", pairs)));
    return false;
  }

  private void say(Row row, ProblemCode code, String variant) {
    problems.add(Problem.of(code, variant, table.at(row)));
  }
}
