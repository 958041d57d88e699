package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.plan.RandomJobs;

/** Random jobs go through whole workbooks: planned, and what was planned is read back. */
@Tag("long")
class RandomBooksTest {
  private static final int JOBS = 50;
  private static final List<Integer> SOUND = List.of(0, 4);

  @TempDir Path folder;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  @Test
  void fiftyArePlannedAndReadBack() throws IOException {
    List<String> faults = new ArrayList<>();
    int planned = 0;
    for (long seed = 1; seed <= JOBS; seed++) {
      Path job = written(seed);
      int exit = run("plan", job.toString(), seed % 5 == 0 ? "--strict" : "--no-pictures");
      Path book = folder.resolve(seed + " - rounds rev1.xlsx");
      if (!Files.exists(book)) {
        assertEquals(3, exit, "seed " + seed + ": " + said);
      } else if (exit == 1 || !SOUND.contains(run("replan", book.toString(), "--no-pictures"))) {
        faults.add("seed " + seed + ": " + said);
      } else {
        planned++;
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(planned > JOBS / 2, "planned: " + planned);
  }

  private Path written(long seed) throws IOException {
    Path file = folder.resolve(seed + ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream to = Files.newOutputStream(file)) {
      RandomJobs.sheets(seed).forEach((name, rows) -> fill(book.createSheet(name), rows));
      book.write(to);
    }
    return file;
  }

  private static void fill(Sheet sheet, List<List<String>> rows) {
    for (List<String> texts : rows) {
      Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
      for (int column = 0; column < texts.size(); column++) {
        if (!texts.get(column).isEmpty()) {
          row.createCell(column).setCellValue(texts.get(column));
        }
      }
    }
  }

  private int run(String... args) {
    said.reset();
    PrintStream both = new PrintStream(said, true, StandardCharsets.UTF_8);
    return Quick.run(args, both, both);
  }
}
