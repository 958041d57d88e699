package roundbook.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import roundbook.page.PlainTable;

/** Writes plain tables as RFC 4180 text in UTF-8. */
public final class CsvText {
  private CsvText() {}

  /** Returns a table as bytes: one heading row, lines ended by CR LF, quotes where needed. */
  public static byte[] bytes(PlainTable table) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(table.header());
      for (List<String> row : table.rows()) {
        printer.printRecord(row);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
