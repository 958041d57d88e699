package roundbook.sheet.kind;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.sheet.SampleBook;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;

/** A workbook that lost anything on its way to the disk is not taken for one. */
class IntactTest {
  private static final String ROUND = "xl/worksheets/sheet1.xml";

  @TempDir Path folder;
  private byte[] written;

  @BeforeEach
  void write() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BookWriter.write(SampleBook.book(), StyleTemplate.standard(), out);
    written = out.toByteArray();
  }

  @Test
  void takesWhatWasWritten() {
    assertDoesNotThrow(() -> check(written));
  }

  @Test
  void seesOneBitOfAPicture() {
    int at = indexOf(written, Arrays.copyOf(SampleBook.PNG, 8));
    byte[] wrong = written.clone();
    wrong[at + 20] ^= 4;
    refuses(wrong);
  }

  @Test
  void seesThatTheEndIsLost() {
    refuses(Arrays.copyOf(written, written.length - 30));
    refuses(Arrays.copyOf(written, written.length / 2));
    refuses(new byte[0]);
  }

  @Test
  void seesAPartThatIsNoXml() throws IOException {
    assertDoesNotThrow(() -> check(with(ROUND, UnaryOperator.identity())));
    refuses(with(ROUND, text -> text.replaceFirst("</row>", "")));
    refuses(with(ROUND, text -> text.replaceFirst("<v>", "<v>\u0001")));
    refuses(with("xl/_rels/workbook.xml.rels", text -> text.substring(0, text.length() - 3)));
  }

  @Test
  void asksForASheet() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
      zip.write("<workbook/>".getBytes(StandardCharsets.UTF_8));
    }
    refuses(out.toByteArray());
  }

  private void refuses(byte[] book) {
    assertThrows(IOException.class, () -> check(book));
  }

  private void check(byte[] book) throws IOException {
    Intact.check(Files.write(folder.resolve("book.xlsx"), book));
  }

  /** Returns the book packed anew with one part changed. */
  private byte[] with(String name, UnaryOperator<String> change) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(written));
        ZipOutputStream to = new ZipOutputStream(out)) {
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        to.putNextEntry(new ZipEntry(part.getName()));
        byte[] bytes = from.readAllBytes();
        String text = new String(bytes, StandardCharsets.UTF_8);
        boolean wanted = part.getName().equals(name);
        to.write(wanted ? change.apply(text).getBytes(StandardCharsets.UTF_8) : bytes);
      }
    }
    return out.toByteArray();
  }

  private static int indexOf(byte[] all, byte[] part) {
    int at = 0;
    while (!Arrays.equals(all, at, at + part.length, part, 0, part.length)) {
      at++;
    }
    return at;
  }
}
