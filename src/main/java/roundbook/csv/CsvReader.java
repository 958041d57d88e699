package roundbook.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Reads a text table whatever its encoding, separator and line ends.
 *
 * <p>The encoding is told by its mark, else UTF-8 where the bytes are valid, else Windows-1252 with
 * a warning. The separator is told by a {@code sep=} line, else it is the one of tab, semicolon,
 * bar and comma that cuts the first lines most evenly. Where it is not the comma and numbers are
 * written with commas, those are decimal commas. A quote opens a field only at its start, so that
 * an inch mark after a number stays an inch mark.
 */
public final class CsvReader {
  private CsvReader() {}

  /**
   * Reads a text table.
   *
   * @param file the file's name, for messages
   * @param bytes its content
   * @return the table, or why there is none
   */
  public static Read<Table> read(String file, byte[] bytes) {
    Decoded decoded = Decoded.of(bytes);
    List<Problem> problems = new ArrayList<>();
    if (decoded.guessed()) {
      problems.add(
          Problem.of(
              ProblemCode.ENCODING_GUESSED,
              CellRef.ofFile(file),
              "",
              "the text is not UTF-8; it was read as Windows-1252"));
    }
    if (decoded.text().isBlank()) {
      problems.add(
          Problem.of(ProblemCode.EMPTY_FILE, CellRef.ofFile(file), "", "the file is empty"));
      return Read.failed(problems);
    }
    Layout layout = Layout.of(decoded.text());
    try {
      List<Row> rows = rows(layout);
      return Read.of(
          Table.of(
              file, "", layout.decimalComma() ? Set.of(Table.Mark.DECIMAL_COMMA) : Set.of(), rows),
          problems);
    } catch (IOException | IllegalStateException | java.io.UncheckedIOException broken) {
      problems.add(
          Problem.of(
              ProblemCode.UNREADABLE,
              CellRef.ofFile(file),
              "",
              "the text cannot be cut into cells: " + firstLine(broken)));
      return Read.failed(problems);
    }
  }

  private static List<Row> rows(Layout layout) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(layout.separator())
            .setTrailingData(true)
            .setLenientEof(true)
            .setIgnoreEmptyLines(false)
            .get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(layout.body(), format)) {
      long line = layout.skipped();
      for (CSVRecord record : parser) {
        Row row = row(record, (int) line + 1);
        if (!row.isBlank()) {
          rows.add(row);
        }
        line = parser.getCurrentLineNumber() + layout.skipped();
      }
    }
    return rows;
  }

  private static Row row(CSVRecord record, int line) {
    List<Cell> cells = new ArrayList<>(record.size());
    for (int i = 0; i < record.size(); i++) {
      cells.add(Cell.text(i + 1, record.get(i)));
    }
    return new Row(line, cells, false, false);
  }

  private static String firstLine(Exception fault) {
    return Optional.ofNullable(fault.getMessage()).orElse("").lines().findFirst().orElse("");
  }
}
