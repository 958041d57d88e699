package roundbook.sheet.read;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import roundbook.problem.Read;
import roundbook.table.Table;

/**
 * A workbook written part by part, as ISO/IEC 29500-1 names them, with what no library would write:
 * the least that one of them needs, and what a test puts in.
 */
final class RawBook {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private final Map<String, String> parts = new LinkedHashMap<>();
  private String mainType = TYPE + "sheet.main+xml";
  private String sheets = "<sheet name='Yard' sheetId='1' r:id='r1'/>";
  private String properties = "";
  private String names = "";

  private RawBook() {}

  /** Returns a workbook of one sheet with these rows. */
  static RawBook of(String rows) {
    RawBook book = new RawBook();
    book.parts.put(
        "xl/worksheets/sheet1.xml", part("worksheet", "<sheetData>" + rows + "</sheetData>"));
    book.parts.put("xl/sharedStrings.xml", part("sst", ""));
    book.parts.put("xl/styles.xml", part("styleSheet", ""));
    return book;
  }

  /** Returns a workbook of one sheet with these cells in its first row. */
  static RawBook ofCells(String cells) {
    return of("<row r='1'>" + cells + "</row>");
  }

  RawBook strings(String items) {
    parts.put("xl/sharedStrings.xml", part("sst", items));
    return this;
  }

  RawBook styles(String content) {
    parts.put("xl/styles.xml", part("styleSheet", content));
    return this;
  }

  RawBook sheets(String list) {
    sheets = list;
    return this;
  }

  RawBook dates1904() {
    properties = "<workbookPr date1904='1'/>";
    return this;
  }

  RawBook names(String defined) {
    names = "<definedNames>" + defined + "</definedNames>";
    return this;
  }

  RawBook type(String contentType) {
    mainType = contentType;
    return this;
  }

  private static String part(String root, String content) {
    return "<"
        + root
        + " xmlns='"
        + MAIN
        + "' xmlns:r='"
        + OFFICE
        + "'>"
        + content
        + "</"
        + root
        + ">";
  }

  /** Writes it. */
  Path write(Path file) throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(
        "[Content_Types].xml",
        "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
            + "<Default Extension='rels' ContentType='application/vnd.openxmlformats-package."
            + "relationships+xml'/><Default Extension='xml' ContentType='application/xml'/>"
            + override("/xl/workbook.xml", mainType)
            + override("/xl/worksheets/sheet1.xml", TYPE + "worksheet+xml")
            + override("/xl/sharedStrings.xml", TYPE + "sharedStrings+xml")
            + override("/xl/styles.xml", TYPE + "styles+xml")
            + "</Types>");
    all.put("_rels/.rels", relations(relation("r1", "officeDocument", "xl/workbook.xml")));
    all.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            relation("r1", "worksheet", "worksheets/sheet1.xml")
                + relation("r2", "sharedStrings", "sharedStrings.xml")
                + relation("r3", "styles", "styles.xml")
                + relation("r4", "worksheet", "worksheets/sheet1.xml")
                + relation("r5", "worksheet", "worksheets/lost.xml")));
    all.put(
        "xl/workbook.xml",
        part("workbook", properties + "<sheets>" + sheets + "</sheets>" + names));
    all.putAll(parts);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, String> each : all.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  private static String override(String name, String type) {
    return "<Override PartName='" + name + "' ContentType='" + type + "'/>";
  }

  private static String relations(String all) {
    return "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
        + all
        + "</Relationships>";
  }

  private static String relation(String id, String type, String target) {
    return "<Relationship Id='"
        + id
        + "' Type='"
        + OFFICE
        + "/"
        + type
        + "' Target='"
        + target
        + "'/>";
  }

  /** Writes it into a folder and reads it. */
  Read<List<Table>> read(Path folder) throws IOException {
    return BookReader.read("yard.xlsx", write(folder.resolve("yard.xlsx")));
  }
}
