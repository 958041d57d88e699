package roundbook.csv;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import roundbook.page.PlainTable;

/**
 * Writes plain tables as RFC 4180 text in UTF-8, row by row: lines ended by CR LF, quotes where
 * needed.
 */
public final class CsvText implements AutoCloseable {
  private final CSVPrinter printer;

  private CsvText(OutputStream out) throws IOException {
    this.printer =
        new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), CSVFormat.RFC4180);
  }

  /**
   * Begins a text.
   *
   * @param out takes the text; the caller closes it
   * @throws UncheckedIOException if it cannot be written
   */
  public static CsvText to(OutputStream out) {
    try {
      return new CsvText(out);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Returns a table as bytes, its heading row first. */
  public static byte[] bytes(PlainTable table) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (CsvText text = to(bytes)) {
      text.row(table.header());
      table.rows().forEach(text::row);
    }
    return bytes.toByteArray();
  }

  /**
   * Writes one row.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public void row(List<String> values) {
    try {
      printer.printRecord(values);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Writes what is left; the stream stays open. */
  @Override
  public void close() {
    try {
      printer.flush();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
