package roundbook.sheet.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Read;
import roundbook.table.Table;

/** Names of parts as ECMA-376 part 2 allows them, and as programs write them nevertheless. */
class XlsxPackageTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "Target='worksheets/sheet1.xml', Target='/xl/worksheets/sheet1.xml'",
    "Target='worksheets/sheet1.xml', Target='./worksheets/sheet1.xml'",
    "Target='worksheets/sheet1.xml', Target='../xl/worksheets/Sheet1.XML'",
    "Target='worksheets/sheet1.xml', Target='worksheets\\sheet1.xml'",
    "PartName='/xl/worksheets/sheet1.xml', PartName='/XL/Worksheets/Sheet1.xml'",
  })
  void aSheetIsFoundByEachSpellingOfItsName(String plain, String other) throws IOException {
    Read<List<Table>> read = read(plain, other, 0);
    assertEquals(List.of(), read.problems());
    assertEquals("12.5", read.value().orElseThrow().get(0).rows().get(0).cells().get(0).text());
  }

  /** What is lost may have held logs. */
  @ParameterizedTest
  @CsvSource({
    "Target='worksheets/sheet1.xml', Target='worksheets/sheet2.xml'",
    "Target='worksheets/sheet1.xml', Target='../worksheets/sheet1.xml'",
    "Target='worksheets/sheet1.xml', TargetMode='External' Target='worksheets/sheet1.xml'",
    "PartName='/xl/worksheets/sheet1.xml', PartName='/xl/sheet1.xml'",
  })
  void aSheetThatIsNotThereIsDamage(String plain, String other) throws IOException {
    String key = read(plain, other, 0).problems().get(0).said().key();
    assertEquals("unreadable.damaged", key);
  }

  @Test
  void aThousandPartsAreTheMost() throws IOException {
    assertEquals("too-large.parts", read("x", "x", 1000).problems().get(0).said().key());
    assertEquals(List.of(), read("x", "x", 900).problems());
  }

  /** Reads a workbook in which a text is changed wherever it stands, with so many parts more. */
  private Read<List<Table>> read(String text, String other, int more) throws IOException {
    Path plain = RawBook.ofCells("<c r='A1'><v>12.5</v></c>").write(folder.resolve("plain.xlsx"));
    Path file = folder.resolve("yard.xlsx");
    try (ZipFile in = new ZipFile(plain.toFile());
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
      for (ZipEntry entry : in.stream().toList()) {
        String part = new String(in.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        put(out, entry.getName(), part.replace(text, other));
      }
      for (int i = 0; i < more; i++) {
        put(out, "xl/more" + i + ".txt", "");
      }
    }
    return BookReader.read("yard.xlsx", file);
  }

  private static void put(ZipOutputStream out, String name, String text) throws IOException {
    out.putNextEntry(new ZipEntry(name));
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.closeEntry();
  }
}
