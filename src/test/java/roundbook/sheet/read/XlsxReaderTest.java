package roundbook.sheet.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.NamedBook;
import roundbook.table.Row;
import roundbook.table.Table;

/** Cells as the standard writes them (ISO/IEC 29500-1, 18.3.1.4 and 18.18.11), one by one. */
class XlsxReaderTest {
  @TempDir private Path folder;

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "<c r='A1'><v>12.5</v></c> | A NUMBER 12.5",
        "<c r='C1' t='n'><v> 12.5 </v></c> | C NUMBER 12.5",
        "<c><v>1</v></c><c><v>2</v></c> | A NUMBER 1, B NUMBER 2",
        "<c r='C1'><v>1</v></c><c><v>2</v></c> | C NUMBER 1, D NUMBER 2",
        "<c r='AA1'><v>1</v></c> | AA NUMBER 1",
        "<c r='xfd1'><v>1</v></c> | XFD NUMBER 1",
        "<c r='A1' t='s'><v>0</v></c> | A TEXT Log",
        "<c r='A1' t='s'><v>1</v></c> | A TEXT Mid dia",
        "<c r='A1' t='s'><v>2</v></c> | A TEXT base",
        "<c r='A1' t='str'><f>A2</f><v>told</v></c> | A TEXT told",
        "<c r='A1' t='str'><f>A2</f><v></v></c> |",
        "<c r='A1' t='inlineStr'><is><t>in line</t></is></c> | A TEXT in line",
        "<c r='A1' t='inlineStr'><is><r><t>in </t></r><r><t>runs</t></r></is></c> | A TEXT in runs",
        "<c r='A1' t='b'><v>1</v></c> | A BOOLEAN TRUE",
        "<c r='A1' t='b'><v>0</v></c> | A BOOLEAN FALSE",
        "<c r='A1' t='e'><v>#DIV/0!</v></c> | A ERROR #DIV/0!",
        "<c r='A1' t='d'><v>2004-10-03</v></c> | A DATE 2004-10-03",
        "<c r='A1' t='d'><v>2004-10-03T12:00:00Z</v></c> | A DATE 2004-10-03T12:00:00Z",
        "<c r='A1' t='d'><v>autumn</v></c> | A TEXT autumn",
        "<c r='A1'><f>B1*2</f></c> | A UNCOMPUTED",
        "<c r='A1'><f>B1*2</f><v>25</v></c> | A NUMBER 25",
        "<c r='A1'><v>1e999</v></c> | A ERROR 1e999",
        "<c r='A1'><v>twelve</v></c> | A TEXT twelve",
        "<c r='A1'><v></v></c> |",
        "<c r='A1'/> |",
        "<c r='A1' s='1'><v>12.5</v></c> | A NUMBER 12.5 in",
        "<c r='A1' s='2'><v>7</v></c> | A NUMBER 007",
        "<c r='A1' s='3'><v>38263</v></c> | A DATE 10/3/04",
        "<c r='A1' s='99'><v>7</v></c> | A NUMBER 7",
      })
  void readsACell(String cells, String read) throws IOException {
    Table table =
        RawBook.ofCells(cells)
            .strings(
                "<si><t>Log</t></si><si><r><t>Mid</t></r><r><t xml:space='preserve'> dia</t></r>"
                    + "</si><si><t>base</t><rPh sb='0' eb='1'><t>spoken</t></rPh></si>")
            .styles(
                "<numFmts count='2'><numFmt numFmtId='164' formatCode='0.0&quot; in&quot;'/>"
                    + "<numFmt numFmtId='165' formatCode='000'/></numFmts>"
                    + "<fonts><font/><font><strike/></font></fonts>"
                    + "<cellXfs><xf numFmtId='0' fontId='0'/><xf numFmtId='164' fontId='0'/>"
                    + "<xf numFmtId='165' fontId='0'/><xf numFmtId='14' fontId='0'/>"
                    + "<xf numFmtId='0' fontId='1'/></cellXfs>")
            .read(folder)
            .value()
            .orElseThrow()
            .get(0);
    assertEquals(read == null ? "" : read, shown(table));
  }

  private static String shown(Table table) {
    return table.rows().stream()
        .flatMap(row -> row.cells().stream())
        .map(XlsxReaderTest::shown)
        .collect(Collectors.joining(", "));
  }

  private static String shown(Cell cell) {
    String column = roundbook.problem.CellRef.columnName(cell.column());
    return (column + " " + cell.kind() + " " + cell.text() + " " + cell.unit()).strip();
  }

  @Test
  void rowsKnowTheirNumberAndWhetherTheyAreHiddenOrStruck() throws IOException {
    List<Row> rows =
        RawBook.of(
                "<row><c><v>1</v></c></row>"
                    + "<row r='4' hidden='1'><c r='A4' s='1'><v>2</v></c></row>"
                    + "<row r='5'/><row><c s='1'/><c><v>3</v></c></row>")
            .styles(
                "<fonts><font/><font><strike/></font></fonts><cellXfs><xf numFmtId='0'"
                    + " fontId='0'/><xf numFmtId='0' fontId='1'/></cellXfs>")
            .read(folder)
            .value()
            .orElseThrow()
            .get(0)
            .rows();
    assertEquals(
        "1 false false, 4 true true, 6 false false",
        rows.stream()
            .map(row -> row.number() + " " + row.hidden() + " " + row.struck())
            .collect(Collectors.joining(", ")));
  }

  @ParameterizedTest
  @CsvSource({
    "A1, NUMBER, ",
    "1, , unreadable.damaged",
    "AB, , unreadable.damaged",
    "XFE1, , unreadable.damaged",
    "AAAAAAA1, , unreadable.damaged",
  })
  void anAddressThatIsNoneIsDamage(String address, String kind, String said) throws IOException {
    assertEquals(said, key(RawBook.ofCells("<c r='" + address + "'><v>1</v></c>")));
  }

  @ParameterizedTest
  @CsvSource({"5", "-1", "x"})
  void aTextThatIsNotThereIsDamage(String number) throws IOException {
    RawBook book = RawBook.ofCells("<c r='A1' t='s'><v>" + number + "</v></c>");
    assertEquals("unreadable.damaged", key(book.strings("<si><t>Log</t></si>")));
  }

  @ParameterizedTest
  @CsvSource({"visible, false", "hidden, true", "veryHidden, true"})
  void sheetsMayBeHidden(String state, boolean hidden) throws IOException {
    RawBook book =
        RawBook.ofCells("<c r='A1'><v>1</v></c>")
            .sheets("<sheet name='Yard' sheetId='1' state='" + state + "' r:id='r1'/>");
    assertEquals(hidden, book.read(folder).value().orElseThrow().get(0).hidden());
  }

  @Test
  void aWorkbookWithoutItsSheetsIsSaid() throws IOException {
    String cells = "<c r='A1'><v>1</v></c>";
    assertEquals("empty-file.no-sheet", key(RawBook.ofCells(cells).sheets("")));
    assertEquals(
        "unreadable.damaged",
        key(RawBook.ofCells(cells).sheets("<sheet name='Lost' sheetId='1' r:id='r9'/>")));
    assertEquals(
        "unreadable.damaged",
        key(RawBook.ofCells(cells).sheets("<sheet name='Lost' sheetId='1' r:id='r5'/>")));
    assertEquals(
        "unreadable.damaged",
        key(RawBook.ofCells(cells).sheets("<sheet name='Lost' sheetId='1'/>")));
  }

  /** What is no workbook is told what it is. */
  @ParameterizedTest
  @CsvSource({
    "application/vnd.ms-excel.sheet.binary.macroEnabled.main, what.xlsb",
    "application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml, what.docx",
    "application/vnd.openxmlformats-officedocument.presentationml.presentation.main+xml, what.pptx",
    "application/xml, what.zip",
  })
  void otherPackagesAreToldWhatTheyAre(String type, String what) throws IOException {
    Read<List<Table>> read = RawBook.ofCells("<c><v>1</v></c>").type(type).read(folder);
    assertEquals(
        "not-a-workbook.other(what=" + what + ")", read.problems().get(0).said().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml",
  })
  void workbooksWithMacrosAndTemplatesAreRead(String type) throws IOException {
    assertEquals(null, key(RawBook.ofCells("<c><v>1</v></c>").type(type)));
  }

  @ParameterizedTest
  @CsvSource({
    "mimetype, application/vnd.oasis.opendocument.spreadsheet, what.ods",
    "mimetype, application/vnd.oasis.opendocument.text, what.open-document",
    "Index/Document.iwa, x, what.numbers",
    "notes.txt, x, what.zip",
  })
  void otherZippedFilesAreToldWhatTheyAre(String name, String text, String what)
      throws IOException {
    Path file = folder.resolve("other.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    assertEquals(
        "not-a-workbook.other(what=" + what + ")",
        BookReader.read("other.xlsx", file).problems().get(0).said().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "WordDocument, what.doc",
    "PowerPoint Document, what.ppt",
    "Anything, what.binary",
  })
  void otherOldFilesAreToldWhatTheyAre(String entry, String what) throws IOException {
    Path file = folder.resolve("other.xls");
    try (POIFSFileSystem files = new POIFSFileSystem();
        var out = Files.newOutputStream(file)) {
      files.createDocument(new java.io.ByteArrayInputStream(new byte[] {1}), entry);
      files.writeFilesystem(out);
    }
    assertEquals(
        "not-a-workbook.other(what=" + what + ")",
        BookReader.read("other.xls", file).problems().get(0).said().toString());
  }

  @Test
  void anEncryptedFileIsSaid() throws IOException {
    Path file = folder.resolve("locked.xlsx");
    try (POIFSFileSystem files = new POIFSFileSystem();
        var out = Files.newOutputStream(file)) {
      files.createDocument(new java.io.ByteArrayInputStream(new byte[] {1}), "EncryptedPackage");
      files.writeFilesystem(out);
    }
    assertEquals("encrypted", BookReader.read("locked.xlsx", file).problems().get(0).said().key());
  }

  /** Of a long sheet the first rows are held, and all are given when asked for, each time. */
  @Test
  void aLongSheetIsReadAgain() throws IOException {
    String rows = "<row><c><v>1</v></c></row>".repeat(Table.HELD_ROWS + 500);
    Table table = RawBook.of(rows).read(folder).value().orElseThrow().get(0);
    assertEquals(Table.HELD_ROWS, table.rows().size());
    for (int time = 0; time < 2; time++) {
      int[] count = {0, 0};
      table.forEach(
          row -> {
            count[0]++;
            count[1] = row.number();
          });
      assertEquals(Table.HELD_ROWS + 500, count[0]);
      assertEquals(Table.HELD_ROWS + 500, count[1]);
    }
    assertThrows(
        ArithmeticException.class,
        () ->
            table.forEach(
                row -> {
                  throw new ArithmeticException("the taker's own");
                }));
  }

  @Test
  void daysMayCountFrom1904() throws IOException {
    RawBook book =
        RawBook.ofCells("<c s='1'><v>0</v></c>")
            .dates1904()
            .styles(
                "<fonts><font/></fonts><cellXfs><xf numFmtId='0' fontId='0'/><xf numFmtId='14'"
                    + " fontId='0'/></cellXfs>");
    assertEquals("A DATE 1/1/04", shown(book.read(folder).value().orElseThrow().get(0)));
  }

  /** Defined names (18.2.5): areas of one sheet; others are none, and lost ones are known. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "Yard!$B$3; Yard 3 2 3 2",
        "Yard!$B$3:$D$9; Yard 3 2 9 4",
        "'The yard''s'!$A$1; The yard's 1 1 1 1",
        "Yard!B3:D9; Yard 3 2 9 4",
        "Yard!$AA$10; Yard 10 27 10 27",
        "Yard!#REF!; lost",
        "Yard!$A$1,Yard!$B$2; none",
        "SUM(Yard!$A$1:$A$3); none",
        "12.5; none",
      })
  void namesAreAreas(String area, String read) throws IOException {
    Path file =
        RawBook.ofCells("<c><v>1</v></c>")
            .names(
                "<definedName name='Mids'>"
                    + area
                    + "</definedName>"
                    + "<definedName name='Local' localSheetId='0'>Yard!$A$1</definedName>")
            .write(folder.resolve("yard.xlsx"));
    NamedBook book = BookReader.readNamed("yard.xlsx", file).value().orElseThrow();
    String found =
        book.range("MIDS")
            .map(
                range ->
                    range.sheet()
                        + " "
                        + range.top()
                        + " "
                        + range.left()
                        + " "
                        + range.bottom()
                        + " "
                        + range.right())
            .orElse(book.lost().contains("mids") ? "lost" : "none");
    assertEquals(read, found);
    assertEquals(false, book.has("Local"));
  }

  private String key(RawBook book) throws IOException {
    Read<List<Table>> read = book.read(folder);
    return read.problems().isEmpty() ? null : read.problems().get(0).said().key();
  }
}
