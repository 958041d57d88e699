package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks with something changed inside: read or refused, never a fault and never a hang. */
@Tag("long")
class DamagedBooksTest {
  private static final long SEED = 20260109;
  private static final int COPIES = Integer.getInteger("copies", 60);
  private static final String[] PIECES = {
    "<", ">", "\"", "99999999999", "-1", "r=\"A1048577\"", "<row r=\"0\"/>",
        "<c t=\"s\"><v>9</v></c>",
    "<c r=\"XFE1\"><v>1</v></c>", "&#0;", "NaN", "1E400", "<v></v>", "t=\"e\"", "r=\"\"",
        "s=\"9999\""
  };

  @TempDir Path folder;

  @Test
  void newBooks() throws IOException {
    SplittableRandom random = new SplittableRandom(SEED);
    byte[] sample = Files.readAllBytes(Path.of("samples", "hill-cabin.xlsx"));
    for (int copy = 0; copy < COPIES; copy++) {
      isReadOrRefused(Files.write(folder.resolve("damaged.xlsx"), changed(sample, random)), copy);
    }
  }

  @Test
  void oldBooks() throws IOException {
    SplittableRandom random = new SplittableRandom(SEED);
    byte[] sample = oldBook();
    for (int copy = 0; copy < COPIES; copy++) {
      byte[] damaged = sample.clone();
      for (int i = random.nextInt(1, 40); i > 0; i--) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      }
      isReadOrRefused(Files.write(folder.resolve("damaged.xls"), damaged), copy);
    }
  }

  private static void isReadOrRefused(Path file, int copy) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] check = {"check", file.toString()};
    int exit =
        assertTimeoutPreemptively(
            Duration.ofSeconds(15), () -> Quick.run(check, stream, stream), "copy " + copy);
    String text = said.toString(StandardCharsets.UTF_8);
    assertFalse(exit == 1 || text.contains("Exception"), "copy " + copy + ": " + text);
    assertEquals(exit == 0, !text.contains(": error "), "copy " + copy + ": " + text);
  }

  /** Changes one part of a workbook, so that the zip around it is sound. */
  private static byte[] changed(byte[] book, SplittableRandom random) throws IOException {
    int wanted = random.nextInt(14);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new java.io.ByteArrayInputStream(book));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      int index = 0;
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        write(in.readAllBytes(), index == wanted ? random : null, out);
        index++;
      }
    }
    return bytes.toByteArray();
  }

  private static void write(byte[] part, SplittableRandom random, OutputStream out)
      throws IOException {
    StringBuilder text = new StringBuilder(new String(part, StandardCharsets.ISO_8859_1));
    for (int i = random == null ? 0 : random.nextInt(1, 6); i > 0; i--) {
      int at = random.nextInt(text.length());
      int end = Math.min(text.length(), at + random.nextInt(20));
      text.replace(at, end, PIECES[random.nextInt(PIECES.length)]);
    }
    out.write(text.toString().getBytes(StandardCharsets.ISO_8859_1));
  }

  private static byte[] oldBook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      Sheet sheet = book.createSheet("Logs");
      String[] headings = {"Log", "Length (ft)", "Butt (in)", "Mid (in)", "Tip (in)"};
      for (int i = 0; i < 40; i++) {
        Row row = sheet.createRow(i);
        for (int j = 0; j < headings.length; j++) {
          if (i == 0) {
            row.createCell(j).setCellValue(headings[j]);
          } else {
            row.createCell(j).setCellValue(j == 0 ? i : 18.5 - j * 1.5);
          }
        }
      }
      book.write(bytes);
    }
    return bytes.toByteArray();
  }
}
