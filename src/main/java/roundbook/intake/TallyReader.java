package roundbook.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import roundbook.heading.CellWords;
import roundbook.job.BuildRules;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
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
 * the other cells of the column, else concluded from the first 2000 rows.
 *
 * <pre>
 * Log, Length (ft), Butt (in), Mid (in), Tip (in), Species, Remarks
 * 12,  16' 6",      14 3/4,    12 1/2,   11,       spruce,  sweep to the north
 * </pre>
 */
final class TallyReader {
  private static final int FEWEST_HEADINGS = 3;

  private final Table table;
  private final Mapping mapping;
  private final BuildRules rules;
  private final Problems problems;
  private final CellWords words;
  private final PassedRows passed;
  private final List<LogReader> readers = new ArrayList<>();
  private PlainRows plain;
  private HeadingRow headings;
  private Header header;
  private RowKinds kinds;
  private Row lastLog;
  private boolean seenLog;

  TallyReader(Table table, Mapping mapping, BuildRules rules, Problems problems) {
    this.table = table;
    this.mapping = mapping;
    this.rules = rules;
    this.problems = problems;
    this.words = new CellWords(mapping.vocabulary());
    this.passed = new PassedRows(table, problems);
  }

  /** Reads the tally and gives its logs to the taker. */
  void read(UniqueLogs taker) {
    Optional<HeadingRow> found = Header.find(table, mapping);
    boolean sideways = Header.sideways(table, mapping);
    if (sideways && (found.isEmpty() || found.get().row().filled().size() < 4)) {
      sideways();
    } else if (found.isEmpty()) {
      CellRef where = table.rows().isEmpty() ? table.place() : table.at(table.rows().get(0));
      problems.add(Problem.of(ProblemCode.MISSING_COLUMN, "headings", where));
    } else {
      plain =
          new PlainRows(
              taker,
              row -> {
                if (row.number() > headings.row().number()) {
                  take(row, taker);
                }
              });
      begin(found.get());
      Optional<Problem> broken = table.forEach(plain);
      end();
      broken.ifPresent(problems::add);
    }
  }

  private void begin(HeadingRow found) {
    headings = found;
    header = Header.of(found, table);
    kinds = new RowKinds(header, words);
    readers.clear();
    new HeadingDoubts(table, header, problems).say();
    List<Row> sample = sample();
    BlockOpener opener = new BlockOpener(table, header, mapping, words, problems);
    for (int i = 0; i < header.blocks().size(); i++) {
      Map<Field, Heading> columns = header.blocks().get(i);
      int number = i;
      Optional<Block> block = opener.open(columns, sample);
      block.ifPresent(each -> readers.add(reader(each, number, FigureRows.of(each, sample))));
      seenLog |= block.isEmpty() && opener.hasLengths(columns);
    }
    plain.end();
    readers.forEach(reader -> reader.leave(plain));
  }

  private LogReader reader(Block block, int number, Set<Integer> figures) {
    Predicate<Row> sums = row -> kinds.isSummary(row, number);
    return new LogReader(block, rules, sums, row -> figures.contains(row.number()));
  }

  /** Returns the logs from the headings down to the next ones that mean something else. */
  private List<Row> sample() {
    List<Row> sample = new ArrayList<>();
    for (Row row : table.rows()) {
      if (row.number() > headings.row().number()) {
        RowKind kind = kinds.of(row);
        if (kind == RowKind.HEADINGS && isOther(HeadingRow.of(row, mapping))) {
          break;
        }
        if (kind == RowKind.LOG) {
          sample.add(row);
        }
      }
    }
    return sample;
  }

  private boolean isOther(HeadingRow row) {
    return row.isUnits()
        || row.isTally() && row.headings().size() >= FEWEST_HEADINGS && !headings.isRepeatedBy(row);
  }

  private void endBlocks() {
    Set<ProblemCode> said = new HashSet<>();
    readers.forEach(reader -> reader.end(said));
  }

  private void end() {
    endBlocks();
    passed.end(Math.max(lastLog == null ? 0 : lastLog.number(), plain.lastNumber()));
    if (!seenLog && !plain.hasAny()) {
      problems.add(Problem.of(ProblemCode.NO_ROWS, table.at(header.row())));
    }
  }

  private void take(Row row, UniqueLogs taker) {
    switch (kinds.of(row)) {
      case HEADINGS -> headings(row, taker);
      case SUMMARY ->
          problems.add(
              Problem.of(ProblemCode.SUMMARY_ROW, table.at(row, kinds.summaryColumn(row)))
                  .found(row.cell(kinds.summaryColumn(row)).text()));
      case NOTE -> passed.note(row);
      case NUMBERED -> passed.numbered(row);
      case LOG -> log(row, taker);
      case RULE -> {}
    }
  }

  /** Words under the headings: the headings again, other headings, a note, or a poor log. */
  private void headings(Row row, UniqueLogs taker) {
    HeadingRow next = next(row);
    if (next.isUnits()) {
      endBlocks();
      begin(HeadingRow.under(headings.top(), row, mapping));
    } else if (next.isTally() && headings.isRepeatedBy(next)) {
      problems.add(Problem.of(ProblemCode.REPEATED_HEADER, table.at(row)));
    } else if (next.isTally() && next.headings().size() >= FEWEST_HEADINGS) {
      endBlocks();
      begin(next);
    } else if (kinds.isNote(row)) {
      passed.note(row);
    } else {
      log(row, taker);
    }
  }

  /** Reads a row of words as headings, with the rows under it where they are held. */
  private HeadingRow next(Row row) {
    int index = table.rows().indexOf(row);
    return index < 0 ? HeadingRow.of(row, mapping) : HeadingRow.at(table.rows(), index, mapping);
  }

  private void log(Row row, UniqueLogs taker) {
    seenLog = true;
    if (row.hidden()) {
      problems.add(Problem.of(ProblemCode.HIDDEN_ROW, table.at(row)));
    }
    if (row.struck()) {
      problems.add(Problem.of(ProblemCode.STRUCK_ROW, table.at(row)));
    }
    Row above = plain.laterThan(lastLog);
    Row filled = readers.isEmpty() ? row : readers.get(0).dittosFilled(row, above);
    lastLog = filled;
    readers.forEach(reader -> reader.read(filled, taker::take));
  }

  private void sideways() {
    Row first = table.rows().get(0);
    problems.add(
        Problem.of(ProblemCode.TRANSPOSED_TABLE, table.at(first, 1)).found(first.cell(1).text()));
  }
}
