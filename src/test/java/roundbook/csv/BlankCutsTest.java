package roundbook.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/** Text tables whose columns are apart by blanks alone. */
class BlankCutsTest {
  @TempDir private Path folder;

  @Test
  void cutsColumnsThatStandUnderOneAnother() throws IOException {
    assertEquals(
        List.of("Log|Length (ft)|Butt (in)|Species", "A1|16.5|12 1/2|white pine", "A2||11|fir"),
        read(
            """
            Log  Length (ft)  Butt (in)  Species
            A1      16.5      12 1/2     white pine
            A2                11         fir
            """));
  }

  @Test
  void cutsWordsApartByOneBlank() throws IOException {
    assertEquals(
        List.of("Log Length Butt Tip".replace(' ', '|'), "1|16|12.5|10", "20|9.5|13|11.25"),
        read("Log Length Butt Tip\n1 16 12.5 10\n20 9.5 13 11.25\n"));
  }

  @Test
  void takesCommasBetweenDigitsForDecimals() throws IOException {
    assertEquals(
        List.of("Nr|Länge|Zopf", "1|4,90|27,1", "2|5,10|30"),
        read("Nr   Länge  Zopf\n1    4,90   27,1\n2    5,10   30\n"));
  }

  @Test
  void leavesCommasBetweenCells() throws IOException {
    assertEquals(
        List.of("Log|Length ft|Butt in", "1|16|12"), read("Log,Length ft,Butt in\n1,16,12\n"));
  }

  private List<String> read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("tally.txt"), text);
    Table table = CsvReader.read("tally.txt", file).value().orElseThrow();
    List<String> rows = new ArrayList<>();
    for (Row row : table.rows()) {
      int last = row.cells().get(row.cells().size() - 1).column();
      List<String> cells = new ArrayList<>();
      for (int i = 1; i <= last; i++) {
        Cell cell = row.cell(i);
        cells.add(cell.text());
      }
      rows.add(String.join("|", cells));
    }
    return rows;
  }
}
