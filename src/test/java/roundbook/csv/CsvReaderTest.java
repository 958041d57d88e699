package roundbook.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Text tables of any encoding, separator and line end; quotes that keep RFC 4180 and that do not.
 */
class CsvReaderTest {
  @TempDir Path folder;

  private Read<Table> read(byte[] bytes) throws IOException {
    return CsvReader.read("yard.csv", Files.write(folder.resolve("yard.csv"), bytes));
  }

  private Table table(String text) throws IOException {
    return table(text, StandardCharsets.UTF_8);
  }

  private Table table(String text, Charset charset) throws IOException {
    return read(text.getBytes(charset)).value().orElseThrow();
  }

  /**
   * Returns the cells of a row, joined by a bar, with a blank for each empty one before the last.
   */
  private static String cells(Row row) {
    StringBuilder cells = new StringBuilder();
    for (Cell cell : row.cells()) {
      while (cells.chars().filter(each -> each == '|').count() < cell.column() - 1) {
        cells.append('|');
      }
      cells.append(cell.text());
    }
    return cells.toString();
  }

  private static List<String> rows(Table table) {
    return table.rows().stream().map(row -> row.number() + " " + cells(row)).toList();
  }

  /** Byte order marks by the Unicode standard, chapter 23.8. */
  @ParameterizedTest(name = "{0}, mark {1}")
  @CsvSource({
    "UTF-8, false",
    "UTF-8, true",
    "UTF-16LE, false",
    "UTF-16LE, true",
    "UTF-16BE, false",
    "UTF-16BE, true"
  })
  void theEncodingIsToldByItsMarkOrItsBytes(String charset, boolean mark) throws IOException {
    String text = (mark ? "\uFEFF" : "") + "Länge,Größe\n5,½\n";
    Read<Table> read = read(text.getBytes(Charset.forName(charset)));
    assertEquals(List.of("1 Länge|Größe", "2 5|½"), rows(read.value().orElseThrow()));
    assertEquals(List.of(), read.problems());
  }

  @Test
  void whatIsNoUtf8IsTakenForWindows1252AndSaid() throws IOException {
    Read<Table> read = read("Länge,Größe\n5,½\n".getBytes(Charset.forName("windows-1252")));
    assertEquals(List.of("1 Länge|Größe", "2 5|½"), rows(read.value().orElseThrow()));
    assertEquals(
        List.of(ProblemCode.ENCODING_GUESSED),
        read.problems().stream().map(Problem::code).toList());
  }

  /** A byte that is wrong only after the first buffer is found all the same. */
  @Test
  void aWrongByteFarDownCountsToo() throws IOException {
    byte[] bytes = ("Log,Remarks\n" + "1,plain words\n".repeat(20_000) + "2,x\n").getBytes();
    bytes[bytes.length - 2] = (byte) 0xFC;
    Read<Table> read = read(bytes);
    assertEquals(ProblemCode.ENCODING_GUESSED, read.problems().get(0).code());
    List<String> last = new ArrayList<>();
    read.value().orElseThrow().forEach(row -> last.add(cells(row)));
    assertEquals("2|ü", last.get(last.size() - 1));
  }

  @ParameterizedTest(name = "{index}")
  @ValueSource(strings = {"\t", ";", "|", ","})
  void theSeparatorIsTheOneThatCutsMostEvenly(String mark) throws IOException {
    String text = "Log;Length;Butt\n1;18;13\n2;20;12\n".replace(";", mark);
    assertEquals(List.of("1 Log|Length|Butt", "2 1|18|13", "3 2|20|12"), rows(table(text)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"sep=;", "SEP=;", "'\"sep=;\"'"})
  void aLineThatTellsTheSeparatorIsNoRow(String told) throws IOException {
    List<String> rows = rows(table(told + "\nLog;A, B, C\n1;2, 3, 4\n"));
    assertEquals(List.of("2 Log|A, B, C", "3 1|2, 3, 4"), rows);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '#',
      value = {
        "1;6,25;30,5 # true",
        "1;6.25;30.5 # false",
        "1;6,250;7,500 # true",
        "1;6,25;30.5 # true",
        "1;6,25;30.5;31.5 # false",
        "1,'6,25',30 # true",
        "1,6,30 # false"
      })
  void aDecimalCommaIsToldByTheNumbers(String line, boolean comma) throws IOException {
    String mark = line.contains(";") ? ";" : ",";
    String text = "Log%sLength%sMid\n%s\n".formatted(mark, mark, line.replace('\'', '"'));
    assertEquals(comma, table(text).decimalComma(), text);
  }

  @ParameterizedTest(name = "{index}")
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void linesMayEndAnyWay(String end) throws IOException {
    String text = String.join(end, "Log,Length", "1,18", "", "2,20");
    assertEquals(List.of("1 Log|Length", "2 1|18", "4 2|20"), rows(table(text)));
  }

  /** RFC 4180: a quoted cell may hold separators, quotes that are doubled, and line ends. */
  @Test
  void quotedCellsHoldWhatTheStandardAllows() throws IOException {
    String text = "Log,Remarks,Mid\n1,\"a, b \"\"c\"\"\nd\",13\n2,plain,12\n";
    assertEquals(
        List.of("1 Log|Remarks|Mid", "2 1|a, b \"c\"\nd|13", "4 2|plain|12"), rows(table(text)));
  }

  /** Inch marks stand behind numbers in nearly every yard's list. */
  @Test
  void anInchMarkOpensNoQuote() throws IOException {
    String text = "Log,Butt,Mid\n1,14 1/2\",13\"\n2,14\",12\"\n";
    assertEquals(
        List.of("1 Log|Butt|Mid", "2 1|14 1/2\"|13\"", "3 2|14\"|12\""), rows(table(text)));
  }

  @Test
  void aQuoteThatIsNeverClosedEndsWithItsLine() throws IOException {
    List<String> rows = rows(table("Log,Remarks,Mid\n1,\"open,13\n2,b,12\n3,c,11\n"));
    assertEquals(4, rows.size(), rows.toString());
    assertTrue(rows.get(2).startsWith("3 2|b|12"), rows.toString());
  }

  /** Exports wrap a tag so that a spreadsheet leaves its zeros. */
  @Test
  void aWrappedTagIsTheTag() throws IOException {
    assertEquals("2 007|18", rows(table("Log,Length\n\"=\"\"007\"\"\",18\n")).get(1));
  }

  @ParameterizedTest(name = "{index}")
  @ValueSource(strings = {"", "\n\n\n", "  \n \t\n", "\uFEFF"})
  void aFileWithoutAnythingIsSaid(String text) throws IOException {
    Read<Table> read = read(text.getBytes(StandardCharsets.UTF_8));
    assertTrue(read.value().isEmpty());
    assertEquals(ProblemCode.EMPTY_FILE, read.problems().get(0).code());
  }

  @Test
  void aFileThatIsNotThereIsSaid() {
    Read<Table> read = CsvReader.read("none.csv", folder.resolve("none.csv"));
    assertEquals(ProblemCode.UNREADABLE, read.problems().get(0).code());
    assertEquals("none.csv", read.problems().get(0).where().file());
  }

  @Test
  void aLineLongerThanAnyTallysIsRefused() throws IOException {
    String text = "Log,Remarks\n1," + "x".repeat(Lines.LONGEST) + "\n";
    Read<Table> read = read(text.getBytes(StandardCharsets.UTF_8));
    assertEquals(ProblemCode.TOO_LARGE, read.problems().get(0).code());
  }

  /** A long tally holds its first rows and reads the rest when asked, as often as asked. */
  @Test
  void aLongTallyIsReadAgainWhenAsked() throws IOException {
    StringBuilder text = new StringBuilder("Log,Length\n");
    for (int log = 1; log <= Table.HELD_ROWS + 500; log++) {
      text.append(log).append(",18\n");
    }
    Table table = table(text.toString());
    assertEquals(Table.HELD_ROWS, table.rows().size());
    assertNotNull(table.all());
    for (int times = 0; times < 2; times++) {
      List<Integer> numbers = new ArrayList<>();
      assertTrue(table.forEach(row -> numbers.add(row.number())).isEmpty());
      assertEquals(Table.HELD_ROWS + 501, numbers.size());
      assertEquals(Table.HELD_ROWS + 501, numbers.get(numbers.size() - 1));
    }
    Files.delete(folder.resolve("yard.csv"));
    assertEquals(ProblemCode.UNREADABLE, table.forEach(row -> {}).orElseThrow().code());
  }

  /** The same text in one column is one cell, in another it is another. */
  @Test
  void aCellSeenBeforeIsGivenAgain() throws IOException {
    List<Row> rows = table("A,B\n13 1/2,13 1/2\n13 1/2,14\n").rows();
    assertTrue(rows.get(1).cell(1) == rows.get(2).cell(1));
    assertFalse(rows.get(1).cell(1) == rows.get(1).cell(2));
    assertEquals(2, rows.get(1).cell(2).column());
  }
}
