package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Files made to do harm, or broken on the way: one clear line each, and nothing written. */
class HostileFilesTest {
  private static final Path SAMPLE = Path.of("samples", "hill-cabin.xlsx");
  private static final String DOCUMENT_TYPE =
      "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY e SYSTEM \"file:///etc/passwd\">"
          + "<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">]>";
  private static final String HARVEST =
      "<HarvestedProduction xmlns=\"urn:skogforsk:stanford2010\">%s</HarvestedProduction>";

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> oneClearLineEach() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    byte[] sound = Files.readAllBytes(SAMPLE);
    files.put("cut-short.xlsx", Arrays.copyOf(sound, sound.length / 2));
    files.put("beheaded.xlsx", Arrays.copyOfRange(sound, 100, sound.length));
    files.put("locked.xlsx", locked(sound));
    files.put("blanks.xlsx", changed("sheet1.xml", part -> spaced(part)));
    files.put("texts.xlsx", changed("sheet3.xml", part -> longText(part)));
    files.put("entity.xlsx", changed("sheet3.xml", part -> entity(part, "&e;")));
    files.put("entities.xlsx", changed("sheet3.xml", part -> entity(part, "&c;")));
    files.put("no-sheets.xlsx", changed("worksheets/", part -> null));
    files.put("no-workbook.xlsx", changed("xl/workbook.xml", part -> null));
    files.put("page.xlsx", bytes("<html><body><p>Log</p></body></html>"));
    files.put("page.xls", bytes("<!DOCTYPE html><html><table></table></html>"));
    files.put("picture.csv", bytes("\u0089PNG\r\n\u001a\n\0\0\0"));
    files.put("noise.xls", noise());
    files.put("zeros.csv", new byte[100_000]);
    files.put("long-line.csv", bytes("Log,Length (ft),Mid (in)\n" + "x".repeat(2_000_000)));
    files.put("entity.hpr", bytes(DOCUMENT_TYPE + HARVEST.formatted("&e;")));
    files.put("entities.hpr", bytes(DOCUMENT_TYPE + HARVEST.formatted("&c;")));
    files.put("cut.hpr", bytes("<?xml version=\"1.0\"?>" + HARVEST.substring(0, 60)));
    return files.entrySet().stream()
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> isRefused(each)));
  }

  private void isRefused(Map.Entry<String, byte[]> each) throws IOException {
    Path own = Files.createDirectories(folder.resolve(each.getKey() + ".d"));
    Path file = Files.write(own.resolve(each.getKey()), each.getValue());
    for (String command : new String[] {"check", "plan"}) {
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
      int exit = Quick.run(new String[] {command, file.toString()}, stream, stream);
      String text = said.toString(StandardCharsets.UTF_8);
      assertTrue(exit == 3 || exit == 5, exit + " " + text);
      assertTrue(text.startsWith(each.getKey() + ": error "), text);
      assertTrue(text.lines().count() <= 2, text);
      assertFalse(text.contains("Exception") || text.contains("at fault"), text);
    }
    try (Stream<Path> left = Files.list(own)) {
      assertEquals(1, left.count(), "nothing is written beside it");
    }
  }

  /** Nobody writes into the pipe, so who opens it waits for ever. */
  @Test
  void aPipeIsNotOpened() throws Exception {
    Path pipe = folder.resolve("pipe.xlsx");
    boolean made;
    try {
      made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (IOException none) {
      made = false;
    }
    assumeTrue(made, "no pipes here");
    for (String command : new String[] {"check", "plan", "replan"}) {
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
      String[] args = {command, pipe.toString()};
      int exit =
          assertTimeoutPreemptively(
              Duration.ofSeconds(15), () -> Quick.run(args, stream, stream), command);
      assertEquals(5, exit, said.toString());
      assertTrue(said.toString().startsWith("pipe.xlsx: error unreadable"), said.toString());
    }
  }

  @Test
  void textThatLooksLikeAFormulaStaysText() throws IOException {
    StringBuilder tally =
        new StringBuilder("Log,Length (ft),Butt (in),Mid (in),Tip (in),Remarks\n");
    for (int i = 0; i < 20; i++) {
      tally.append("\"=HYPERLINK(\"\"http://x\"\",").append(i).append(")\"");
      tally.append(",20,13,12,11,@SUM(A1)+cmd|' /C calc'!A0\n");
    }
    Path file = Files.writeString(folder.resolve("formulas.csv"), tally);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] plan = {"plan", file.toString(), "--walls", "18x18", "--no-pictures"};
    assertEquals(0, Quick.run(plan, stream, stream), said.toString());
    Path written = folder.resolve("formulas - rounds rev1.xlsx");
    int seen = 0;
    try (Workbook book = WorkbookFactory.create(written.toFile(), null, true)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            boolean formula = cell.getCellType() == CellType.FORMULA;
            assertFalse(
                formula && cell.getCellFormula().contains("HYPERLINK(\"http://x"),
                sheet.getSheetName() + " " + cell.getAddress());
            seen += !formula && cell.toString().contains("=HYPERLINK") ? 1 : 0;
          }
        }
      }
    }
    assertTrue(seen >= 20, "the tags are still shown: " + seen);
  }

  private static byte[] changed(String part, UnaryOperator<byte[]> change) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(SAMPLE));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        byte[] other = entry.getName().contains(part) ? change.apply(content) : content;
        if (other != null) {
          out.putNextEntry(new ZipEntry(entry.getName()));
          out.write(other);
        }
      }
    }
    return bytes.toByteArray();
  }

  /** A part of blanks only, which packs to almost nothing. */
  private static byte[] spaced(byte[] part) {
    return bytes(text(part).replace("<sheetData>", "<sheetData>" + " ".repeat(200_000_000)));
  }

  private static byte[] longText(byte[] part) {
    return bytes(text(part).replaceFirst("</t>", "x".repeat(150_000_000) + "</t>"));
  }

  private static byte[] entity(byte[] part, String reference) {
    String text = text(part);
    return bytes(
        DOCUMENT_TYPE + text.substring(text.indexOf("?>") + 2).replace("</t>", reference + "</t>"));
  }

  private static byte[] locked(byte[] sound) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (POIFSFileSystem files = new POIFSFileSystem();
        OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(sound))) {
      Encryptor lock = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      lock.confirmPassword("a password");
      try (OutputStream out = lock.getDataStream(files)) {
        opened.save(out);
      }
      files.writeFilesystem(bytes);
    } catch (java.security.GeneralSecurityException
        | org.apache.poi.openxml4j.exceptions.InvalidFormatException broken) {
      throw new IOException(broken);
    }
    return bytes.toByteArray();
  }

  private static byte[] noise() {
    byte[] noise = new byte[20_000];
    new Random(7).nextBytes(noise);
    byte[] head = {
      (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
    };
    System.arraycopy(head, 0, noise, 0, head.length);
    return noise;
  }

  private static String text(byte[] part) {
    return new String(part, StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
