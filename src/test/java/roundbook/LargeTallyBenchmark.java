package roundbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks of very large tallies, as multiples of a bare pass of a library's reader. */
class LargeTallyBenchmark {
  private static final int ROUNDS = 5;
  private static final int TEXT_ROWS = 1_000_000;
  private static final int BOOK_ROWS = 100_000;
  private static final String LITTLE = "-Xmx256m";

  @TempDir private Path folder;
  private String jar;

  @BeforeEach
  void findProgram() {
    jar = System.getProperty("roundbook.jar");
    assertTrue(Files.isRegularFile(Path.of(jar)), "package the program first");
  }

  @Test
  void aMillionRowsOfText() throws IOException, InterruptedException {
    Path tally = folder.resolve("tally.csv");
    SplittableRandom random = new SplittableRandom(5);
    try (BufferedWriter out = Files.newBufferedWriter(tally)) {
      out.write("Log,Length (ft),Butt (in),Mid (in),Tip (in),Species\n");
      for (int i = 1; i <= TEXT_ROWS; i++) {
        double[] log = log(random);
        String line = "%d,%.0f' %.0f\",%.2f,%.2f,%.2f,spruce%n";
        out.write(
            String.format(Locale.ROOT, line, i, log[0], (double) (i % 12), log[1], log[2], log[3]));
      }
    }
    race("Commons CSV alone, 1,000,000 rows", tally);
  }

  @Test
  void aHundredThousandRowsOfAWorkbook() throws IOException, InterruptedException {
    Path tally = folder.resolve("tally.xlsx");
    SplittableRandom random = new SplittableRandom(6);
    try (SXSSFWorkbook book = new SXSSFWorkbook(100);
        OutputStream out = Files.newOutputStream(tally)) {
      Sheet sheet = book.createSheet("Logs");
      Row headings = sheet.createRow(0);
      String[] texts = {"Log", "Length (ft)", "Butt (in)", "Mid (in)", "Tip (in)", "Species"};
      for (int i = 0; i < texts.length; i++) {
        headings.createCell(i).setCellValue(texts[i]);
      }
      for (int i = 1; i <= BOOK_ROWS; i++) {
        Row row = sheet.createRow(i);
        row.createCell(0).setCellValue(i);
        double[] log = log(random);
        for (int j = 0; j < log.length; j++) {
          row.createCell(j + 1).setCellValue(log[j]);
        }
        row.createCell(5).setCellValue("spruce");
      }
      book.write(out);
    }
    race("fastexcel-reader alone, 100,000 rows", tally);
  }

  private static double[] log(SplittableRandom random) {
    double mid = random.nextInt(40, 64) / 4.0;
    return new double[] {
      random.nextInt(14, 30),
      mid + random.nextInt(2, 10) / 4.0,
      mid,
      mid - random.nextInt(2, 8) / 4.0
    };
  }

  private void race(String bare, Path tally) throws IOException, InterruptedException {
    String classes = System.getProperty("java.class.path");
    String file = tally.toString();
    ProcessRace race =
        new ProcessRace(folder, ROUNDS)
            .java(bare, "-cp", classes, BarePass.class.getName(), file)
            .java("jar check, " + LITTLE, LITTLE, "-jar", jar, "check", file);
    System.out.print(ProcessRace.table(race.ratios()));
  }
}
