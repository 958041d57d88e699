package roundbook.csv;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import roundbook.table.Cell;

/**
 * The records of a text, each as its cells that are not blank.
 *
 * <p>A line in which no cell begins with a quote is cut at its separators, which is all that the
 * rules of quotes would do to it; every other goes through the library's parser.
 */
final class Records {
  private final MendedText text;
  private final char separator;
  private final SeenTexts seen = new SeenTexts();
  private final List<Cell> cells = new ArrayList<>();
  private final Feed feed = new Feed();
  private final Iterator<CSVRecord> parsed;
  private long line;
  private long lines;

  /**
   * Begins at the top.
   *
   * @param text the lines
   * @param separator the character between cells
   * @param before how many lines stand above them
   */
  Records(MendedText text, char separator, int before) throws IOException {
    this.text = text;
    this.separator = separator;
    this.lines = before;
    this.parsed = CSVParser.builder().setReader(feed).setFormat(format(separator)).get().iterator();
  }

  private static CSVFormat format(char separator) {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(separator)
        .setTrailingData(true)
        .setLenientEof(true)
        .setIgnoreEmptyLines(false)
        .get();
  }

  /** Gives one record at a time to the parser, which never asks for more than it needs. */
  private static final class Feed extends Reader {
    private String record = "";
    private int at;

    void put(String next) {
      record = next;
      at = 0;
    }

    @Override
    public int read(char[] target, int from, int length) {
      int count = Math.min(length, record.length() - at);
      record.getChars(at, at + count, target, from);
      at += count;
      return count == 0 ? -1 : count;
    }

    @Override
    public void close() {
      put("");
    }
  }

  /** Returns the cells of the next record, in a list that the one after takes; null at the end. */
  List<Cell> next() throws IOException {
    String record = text.next();
    if (record == null) {
      return null;
    }
    cells.clear();
    line = lines + 1;
    lines++;
    if (text.isBare()) {
      return cut(record);
    }
    for (int end = record.indexOf('\n'); end >= 0; end = record.indexOf('\n', end + 1)) {
      lines++;
    }
    return parsed(record);
  }

  /** Returns the physical line that the last record began on, counted from 1. */
  int line() {
    return (int) Math.min(line, Integer.MAX_VALUE);
  }

  private List<Cell> cut(String record) {
    int column = 1;
    int from = 0;
    for (int end = record.indexOf(separator); end >= 0; end = record.indexOf(separator, from)) {
      add(seen.cell(column++, record, from, end));
      from = end + 1;
    }
    add(seen.cell(column, record, from, record.length()));
    return cells;
  }

  private List<Cell> parsed(String record) throws IOException {
    feed.put(record + '\n');
    try {
      int column = 1;
      for (String value : parsed.next()) {
        add(seen.cell(column++, value, 0, value.length()));
      }
    } catch (UncheckedIOException broken) {
      throw broken.getCause();
    }
    return cells;
  }

  private void add(Cell cell) {
    if (!cell.isBlank()) {
      cells.add(cell);
    }
  }
}
