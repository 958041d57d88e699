package roundbook.app;

import static roundbook.app.HostileRun.Wanted.EITHER;
import static roundbook.app.HostileRun.Wanted.READ;
import static roundbook.app.HostileRun.Wanted.REFUSED;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import roundbook.app.HostileRun.Wanted;
import roundbook.app.OddBooks.Odd;

/** Old binary files, locked files and files of other kinds: read, or refused in one clear line. */
@Tag("long")
class OddOldBooksTest {
  private static final String XML = "<?xml version=\"1.0\"?>";

  @TempDir Path folder;
  private final List<Odd> all = new ArrayList<>();

  @TestFactory
  Stream<DynamicTest> oldAndOther() throws Exception {
    byte[] sound = old();
    add("sound.xls", sound, READ);
    add("renamed.xlsx", sound, READ);
    add("new.xls", BookParts.sound().packed(), READ);
    streams(sound);
    locked(sound);
    damaged(sound);
    others();
    HostileRun run = new HostileRun(folder);
    return all.stream()
        .map(
            odd ->
                DynamicTest.dynamicTest(
                    odd.name(), () -> run.all(odd.name(), odd.bytes(), odd.wanted())));
  }

  private void add(String name, byte[] bytes, Wanted wanted) {
    all.add(new Odd(name, bytes, wanted));
  }

  private static byte[] old() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      HSSFSheet sheet = book.createSheet("Logs");
      String[] headings = {"Log", "Length (ft)", "Butt (in)", "Mid (in)", "Tip (in)"};
      for (int i = 0; i < 25; i++) {
        Row row = sheet.createRow(i);
        for (int j = 0; j < headings.length; j++) {
          if (i == 0) {
            row.createCell(j).setCellValue(headings[j]);
          } else {
            row.createCell(j).setCellValue(j == 0 ? i : j == 1 ? 20 : 15.5 - j);
          }
        }
      }
      sheet.getRow(3).createCell(6).setCellFormula("SUM(A1:A3)*B2");
      book.write(bytes);
    }
    return bytes.toByteArray();
  }

  /** Files of the old kind that hold other streams than a workbook's. */
  private void streams(byte[] sound) throws IOException {
    for (String stream :
        new String[] {
          "WordDocument",
          "PowerPoint Document",
          "\u0005SummaryInformation",
          "VisioDocument",
          "__properties_version1.0",
          "Quill",
          "MatOST",
          "Contents",
          "EncryptionInfo",
          "Odd"
        }) {
      add("stream-" + all.size() + ".xls", files(stream, new byte[600]), REFUSED);
    }
    for (String stream : new String[] {"Workbook", "WORKBOOK", "Book"}) {
      add("empty-" + stream + ".xls", files(stream, new byte[0]), REFUSED);
      add("zeros-" + stream + ".xls", files(stream, new byte[9000]), REFUSED);
      add("noise-" + stream + ".xls", files(stream, noise(9000)), REFUSED);
      byte[] biff5 = {9, 8, 8, 0, 0, 5, 5, 0, (byte) 0xBB, 13, (byte) 0xCC, 7, 10, 0, 0, 0};
      add("biff5-" + stream + ".xls", files(stream, Arrays.copyOf(biff5, 5000)), REFUSED);
    }
    add("no-streams.xls", files("", new byte[0]), REFUSED);
    byte[] inner = files("Workbook", sound);
    add("file-in-stream.xls", inner, REFUSED);
    for (int kind : new int[] {0, 2, 4}) {
      byte[] biff = {9, (byte) kind, 4, 0, 2, 0, 16, 0, 0, 0, 10, 0, 0, 0};
      add("biff" + kind + ".xls", Arrays.copyOf(biff, 3000), REFUSED);
    }
  }

  private static byte[] files(String stream, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      if (!stream.isEmpty()) {
        files.createDocument(new ByteArrayInputStream(content), stream);
      }
      files.writeFilesystem(bytes);
    }
    return bytes.toByteArray();
  }

  private static byte[] noise(int length) {
    byte[] noise = new byte[length];
    new java.util.Random(7).nextBytes(noise);
    return noise;
  }

  private void locked(byte[] sound) throws Exception {
    for (EncryptionMode mode :
        new EncryptionMode[] {EncryptionMode.standard, EncryptionMode.agile}) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (POIFSFileSystem files = new POIFSFileSystem()) {
        Encryptor encryptor = new EncryptionInfo(mode).getEncryptor();
        encryptor.confirmPassword("hewn");
        try (var out = encryptor.getDataStream(files)) {
          out.write(BookParts.sound().packed());
        }
        files.writeFilesystem(bytes);
      }
      add("locked-" + mode + ".xlsx", bytes.toByteArray(), REFUSED);
    }
    Biff8EncryptionKey.setCurrentUserPassword("hewn");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook(new ByteArrayInputStream(sound))) {
      book.write(bytes);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    add("locked.xls", bytes.toByteArray(), REFUSED);
  }

  /** Cuts, and changes of one byte: the head and the first records take the most harm. */
  private void damaged(byte[] sound) {
    for (int length = 1; length < sound.length; length += sound.length / 40) {
      add("cut-" + length + ".xls", Arrays.copyOf(sound, length), EITHER);
    }
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 120; i++) {
      byte[] changed = sound.clone();
      int reach = i % 3 == 0 ? 512 : i % 3 == 1 ? 4096 : sound.length;
      for (int each = 0; each < 4; each++) {
        changed[random.nextInt(reach)] = (byte) (random.nextBoolean() ? 0xFF : random.nextInt(256));
      }
      add("changed-" + i + ".xls", changed, EITHER);
    }
  }

  private void others() {
    String sheet = "<Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\"><Worksheet/>";
    text(
        "sheet-2003.xls",
        XML + "<?mso-application progid=\"Excel.Sheet\"?>" + sheet + "</Workbook>",
        REFUSED);
    text("open.fods", XML + "<office:document xmlns:office=\"urn:o\"/>", REFUSED);
    text("page.xls", "<html><table><tr><td>Log</td></tr></table></html>", REFUSED);
    text("archive.xls", "MIME-Version: 1.0\nContent-Type: multipart/related\n\n<html/>", EITHER);
    text("link.sylk", "ID;PWXL;N;E\nC;Y1;X1;K\"Log\"\nE\n", REFUSED);
    text("no-link.csv", "ID;Pituus (m);Latva (cm);Tyvi (cm)\n1;6,1;25;30\n", EITHER);
    text("data.dif", "TABLE\n0,1\n\"EXCEL\"\nVECTORS\n0,2\n\"\"\n", REFUSED);
    text("text.rtf", "{\\rtf1 Log}", REFUSED);
    text("paper.pdf", "%PDF-1.7\n", REFUSED);
    text("script.xlsx", "#!/bin/sh\nrm -rf /tmp/none\n", EITHER);
    text("deep.xml", XML + "<a>".repeat(200_000), EITHER);
    text(
        "harvest.hpr", XML + "<HarvestedProduction xmlns=\"urn:skogforsk:stanford2010\"/>", EITHER);
    text("empty.xlsx", "", REFUSED);
    text("one-letter.xls", "P", EITHER);
    text("two-letters.xlsx", "PK", EITHER);
    text("zip-head.xlsx", "PK\u0003\u0004", REFUSED);
    text("zip-end.xlsx", "PK\u0005\u0006" + "\0".repeat(18), REFUSED);
  }

  private void text(String name, String text, Wanted wanted) {
    add(name, text.getBytes(StandardCharsets.UTF_8), wanted);
  }
}
