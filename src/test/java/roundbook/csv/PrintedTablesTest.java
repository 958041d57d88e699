package roundbook.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Tables of odd cells, printed by a library in each way that RFC 4180 leaves open, and read back.
 */
class PrintedTablesTest {
  private static final List<String> ODD =
      List.of(
          "spruce",
          "16' 6\"",
          "12 1/2\"",
          "say \"no\"",
          "\"whole\"",
          "a, b",
          "a; b",
          "two\nlines",
          "",
          " ",
          "L\u00E4rche",
          "'",
          "=1+2",
          "-",
          "a|b");

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0} {1} {2} {3}")
  @CsvSource({
    "comma, UTF-8, MINIMAL, 1",
    "comma, UTF-8, ALL, 2",
    "semicolon, UTF-8, MINIMAL, 3",
    "semicolon, windows-1252, ALL, 4",
    "tab, UTF-8, MINIMAL, 5",
    "tab, UTF-16LE, ALL, 6",
    "bar, UTF-8, ALL, 7",
    "comma, UTF-16BE, MINIMAL, 8",
  })
  void comeBackAsTheyWerePrinted(String separator, String encoding, QuoteMode quotes, long seed)
      throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Log", "Length", "Butt", "Mid", "Remarks", "More"));
    for (int i = 1; i <= 60; i++) {
      rows.add(
          List.of(
              "A" + i,
              "" + (16 + random.nextInt(8)),
              "" + (14 + random.nextInt(3)),
              "12." + random.nextInt(1, 10),
              odd(random),
              odd(random)));
    }
    Table table = read(rows, separator, encoding, quotes);
    assertEquals(rows.size(), table.rows().size());
    for (int i = 0; i < rows.size(); i++) {
      Row row = table.rows().get(i);
      for (int column = 1; column <= 6; column++) {
        String printed = Cell.strip(rows.get(i).get(column - 1));
        assertEquals(printed, row.cell(column).text(), "row " + i + " column " + column);
      }
    }
  }

  private static String odd(SplittableRandom random) {
    return ODD.get(random.nextInt(ODD.size()));
  }

  private Table read(List<List<String>> rows, String separator, String encoding, QuoteMode quotes)
      throws IOException {
    char mark =
        switch (separator) {
          case "comma" -> ',';
          case "semicolon" -> ';';
          case "tab" -> '\t';
          default -> '|';
        };
    StringWriter text = new StringWriter();
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(mark).setQuoteMode(quotes).get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      printer.printRecords(rows);
    }
    String marked = encoding.startsWith("UTF-16") ? "\uFEFF" + text : text.toString();
    Path file = folder.resolve("tally.csv");
    Files.write(file, marked.getBytes(Charset.forName(encoding)));
    return CsvReader.read("tally.csv", file).value().orElseThrow();
  }
}
