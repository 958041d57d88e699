package roundbook.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.RowTaker;
import roundbook.table.Table;

/**
 * Reads a text table whatever its encoding, separator and line ends.
 *
 * <p>The encoding is told by its mark, else UTF-8 where the bytes are valid, else Windows-1252 with
 * a warning. The separator is told by a {@code sep=} line, else it is the one of tab, semicolon,
 * bar and comma that cuts the first lines most evenly. Numbers are written with decimal commas
 * where the first lines show that. A quote opens a field only at its start, so that an inch mark
 * after a number stays an inch mark, and quotes that break the rules are mended. Rows carry the
 * number of the physical line that they begin on.
 */
public final class CsvReader {
  private static final int MOST_HELD_CELLS = 2_000_000;

  private final String file;
  private final Path path;
  private final Layout layout;

  private CsvReader(String file, Path path, Layout layout) {
    this.file = file;
    this.path = path;
    this.layout = layout;
  }

  /**
   * Reads a text table: its first rows at once, the others of a large one when they are asked for.
   *
   * @param file the file's name, for messages
   * @param path the file
   * @return the table, or why there is none
   */
  public static Read<Table> read(String file, Path path) {
    try {
      return new CsvReader(file, path, Layout.of(path)).read();
    } catch (IOException | UncheckedIOException broken) {
      return Read.failed(List.of(problem(file, broken)));
    }
  }

  private Read<Table> read() throws IOException {
    List<Problem> problems = new ArrayList<>();
    if (layout.encoding().guessed()) {
      problems.add(Problem.of(ProblemCode.ENCODING_GUESSED, CellRef.ofFile(file)));
    }
    List<Row> rows = new ArrayList<>();
    int[] cells = {0};
    boolean whole =
        eachRow(
            row -> {
              rows.add(row);
              cells[0] += row.cells().size();
              return rows.size() <= Table.HELD_ROWS && cells[0] <= MOST_HELD_CELLS;
            });
    if (rows.isEmpty()) {
      problems.add(Problem.of(ProblemCode.EMPTY_FILE, "nothing", CellRef.ofFile(file)));
      return Read.failed(problems);
    }
    Set<Table.Mark> marks = layout.decimalComma() ? Set.of(Table.Mark.DECIMAL_COMMA) : Set.of();
    List<Row> held = whole ? rows : rows.subList(0, rows.size() - 1);
    return Read.of(new Table(file, "", marks, held, whole ? null : this::readAll), problems);
  }

  private Optional<Problem> readAll(RowTaker taker) {
    try {
      eachRow(
          row -> {
            taker.take(row);
            return true;
          });
      return Optional.empty();
    } catch (IOException | UncheckedIOException broken) {
      return Optional.of(problem(file, broken));
    }
  }

  /** Gives rows to the taker until it wants no more; returns whether it had them all. */
  private boolean eachRow(Predicate<Row> taker) throws IOException {
    try (Lines lines = new Lines(layout.encoding().open(path), layout.cuts())) {
      for (int i = 0; i < layout.skipped(); i++) {
        lines.next();
      }
      char separator = layout.separator();
      Records records = new Records(new MendedText(lines, separator), separator, layout.skipped());
      for (List<Cell> cells = records.next(); cells != null; cells = records.next()) {
        if (!cells.isEmpty() && !taker.test(new Row(records.line(), cells, false, false))) {
          return false;
        }
      }
      return true;
    }
  }

  private static Problem problem(String file, Exception broken) {
    CellRef where = CellRef.ofFile(file);
    Throwable cause = broken.getCause() instanceof Lines.TooLong ? broken.getCause() : broken;
    return cause instanceof Lines.TooLong
        ? Problem.of(ProblemCode.TOO_LARGE, "line", where).with("most", Lines.LONGEST)
        : Problem.of(ProblemCode.UNREADABLE, "end", where);
  }
}
