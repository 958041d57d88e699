package roundbook.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.page.PlainTable;
import roundbook.table.Cell;
import roundbook.table.Table;

/** Plain tables are written as RFC 4180 says, and read back as they were. */
class CsvTextTest {
  private static final PlainTable TABLE =
      new PlainTable(
          "odd",
          List.of("log", "remarks"),
          List.of(
              List.of("1", "plain"),
              List.of("2", "a, b"),
              List.of("3", "said \"no\""),
              List.of("4", "two\nlines"),
              List.of("5", "Größe ½")));

  @TempDir Path folder;

  /**
   * RFC 4180, section 2: CR LF after every record, quotes round what needs them, doubled inside.
   */
  @Test
  void keepsToTheStandard() {
    assertEquals(
        "log,remarks\r\n1,plain\r\n2,\"a, b\"\r\n3,\"said \"\"no\"\"\"\r\n"
            + "4,\"two\nlines\"\r\n5,Größe ½\r\n",
        new String(CsvText.bytes(TABLE), StandardCharsets.UTF_8));
  }

  @Test
  void isReadBackAsItWas() throws IOException {
    Path file = Files.write(folder.resolve("odd.csv"), CsvText.bytes(TABLE));
    Table read = CsvReader.read("odd.csv", file).value().orElseThrow();
    List<List<String>> rows =
        read.rows().stream()
            .skip(1)
            .map(row -> row.cells().stream().map(Cell::text).toList())
            .toList();
    assertEquals(TABLE.rows(), rows);
  }

  @Test
  void leavesTheStreamOpen() {
    boolean[] closed = {false};
    OutputStream out =
        new ByteArrayOutputStream() {
          @Override
          public void close() {
            closed[0] = true;
          }
        };
    try (CsvText text = CsvText.to(out)) {
      text.row(List.of("1"));
    }
    assertEquals(false, closed[0]);
    assertEquals("1\r\n", out.toString());
  }

  @Test
  void aStreamThatCannotBeWrittenIsNoSilence() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException("the disk is full");
          }
        };
    CsvText text = CsvText.to(full);
    text.row(List.of("1"));
    assertThrows(UncheckedIOException.class, text::close);
  }
}
