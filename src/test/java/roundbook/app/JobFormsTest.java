package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The job workbooks under {@code templates} and {@code samples} are those that {@code new} writes.
 */
class JobFormsTest {
  @TempDir private Path folder;

  @ParameterizedTest(name = "new {0} {1}")
  @CsvSource({
    "'', templates/job.xlsx",
    "--example, samples/hill-cabin.xlsx",
    "--example --units=mm, samples/metric-hut.xlsx"
  })
  void aFormHasEveryCellAndNameThatNewWrites(String options, Path form) throws IOException {
    Path written = folder.resolve("job.xlsx");
    PrintStream nowhere = new PrintStream(new ByteArrayOutputStream());
    String[] args = ("new " + options + " " + written).strip().split(" +");
    assertEquals(0, Main.run(args, nowhere, nowhere));
    Map<String, String> expected = contents(written);
    Map<String, String> kept = contents(form);
    String again = "write it again with: new " + options + " " + form;
    expected.forEach((place, text) -> assertEquals(text, kept.get(place), place + ": " + again));
    assertEquals(expected.keySet(), kept.keySet(), again);
  }

  /** Returns what stands in each cell, and where each name points. */
  private static Map<String, String> contents(Path file) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Workbook book = WorkbookFactory.create(file.toFile(), null, true)) {
      book.forEach(
          sheet ->
              sheet.forEach(
                  row ->
                      row.forEach(
                          cell ->
                              contents.put(
                                  sheet.getSheetName() + "!" + cell.getAddress(),
                                  new DataFormatter().formatCellValue(cell)))));
      List.copyOf(book.getAllNames())
          .forEach(name -> contents.put(name.getNameName(), name.getRefersToFormula()));
    }
    return contents;
  }
}
