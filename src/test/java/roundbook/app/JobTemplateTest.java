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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job workbook under {@code templates} is the one that {@code new} writes. */
class JobTemplateTest {
  private static final Path TEMPLATE = Path.of("templates", "job.xlsx");

  @TempDir private Path folder;

  @Test
  void theTemplateHasEveryCellAndNameThatNewWrites() throws IOException {
    Path written = folder.resolve("job.xlsx");
    PrintStream nowhere = new PrintStream(new ByteArrayOutputStream());
    assertEquals(0, Main.run(new String[] {"new", written.toString()}, nowhere, nowhere));
    Map<String, String> expected = contents(written);
    Map<String, String> template = contents(TEMPLATE);
    String again = "write it again with: new " + TEMPLATE;
    expected.forEach(
        (place, text) -> assertEquals(text, template.get(place), place + ": " + again));
    assertEquals(expected.keySet(), template.keySet(), again);
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
