package roundbook.app;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** The parts of a zipped workbook, to be changed one by one and packed again. */
final class BookParts {
  static final String SHEET = "xl/worksheets/sheet1.xml";
  static final String BOOK = "xl/workbook.xml";
  static final String TEXTS = "xl/sharedStrings.xml";
  static final String STYLES = "xl/styles.xml";
  static final String TYPES = "[Content_Types].xml";
  static final String RELATIONS = "xl/_rels/workbook.xml.rels";
  static final String ROOT = "_rels/.rels";

  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String[] HEADINGS = {
    "Log", "Length (ft)", "Butt (in)", "Mid (in)", "Tip (in)"
  };

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  private BookParts() {}

  /** Returns a sound workbook of a tally of 24 logs, as small as one can be. */
  static BookParts sound() {
    BookParts book = new BookParts();
    book.put(TYPES, HEAD + types());
    book.put(ROOT, HEAD + relations("rId1", "officeDocument", "xl/workbook.xml"));
    book.put(BOOK, HEAD + workbook());
    book.put(
        RELATIONS,
        HEAD
            + "<Relationships"
            + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + relation("rId1", "worksheet", "worksheets/sheet1.xml")
            + relation("rId2", "styles", "styles.xml")
            + relation("rId3", "sharedStrings", "sharedStrings.xml")
            + "</Relationships>");
    book.put(STYLES, HEAD + styles());
    book.put(TEXTS, HEAD + texts());
    book.put(SHEET, HEAD + sheet());
    return book;
  }

  /** Returns the parts of a workbook as it stands. */
  static BookParts of(byte[] packed) throws IOException {
    BookParts book = new BookParts();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(packed))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        book.parts.put(entry.getName(), in.readAllBytes());
      }
    }
    return book;
  }

  private static String types() {
    return "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Default Extension=\"rels\""
        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
        + type("/xl/workbook.xml", "sheet.main+xml")
        + type("/xl/worksheets/sheet1.xml", "worksheet+xml")
        + type("/xl/styles.xml", "styles+xml")
        + type("/xl/sharedStrings.xml", "sharedStrings+xml")
        + "</Types>";
  }

  static String type(String part, String type) {
    return "<Override PartName=\"" + part + "\" ContentType=\"" + TYPE + type + "\"/>";
  }

  static String relation(String id, String type, String target) {
    return "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(id, OFFICE, type, target);
  }

  private static String relations(String id, String type, String target) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + relation(id, type, target)
        + "</Relationships>";
  }

  private static String workbook() {
    return "<workbook "
        + MAIN
        + " xmlns:r=\""
        + OFFICE
        + "\"><workbookPr/><sheets>"
        + "<sheet name=\"Logs\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>";
  }

  private static String styles() {
    return "<styleSheet "
        + MAIN
        + "><numFmts count=\"1\">"
        + "<numFmt numFmtId=\"164\" formatCode=\"# ??/16\"/></numFmts>"
        + "<fonts count=\"1\"><font><sz val=\"11\"/></font></fonts>"
        + "<cellXfs count=\"2\"><xf numFmtId=\"0\" fontId=\"0\"/>"
        + "<xf numFmtId=\"164\" fontId=\"0\"/></cellXfs></styleSheet>";
  }

  private static String texts() {
    StringBuilder texts = new StringBuilder("<sst " + MAIN + ">");
    for (String heading : HEADINGS) {
      texts.append("<si><t>").append(heading).append("</t></si>");
    }
    return texts + "</sst>";
  }

  private static String sheet() {
    StringBuilder rows = new StringBuilder("<row r=\"1\">");
    for (int i = 0; i < HEADINGS.length; i++) {
      rows.append("<c r=\"%c1\" t=\"s\"><v>%d</v></c>".formatted('A' + i, i));
    }
    rows.append("</row>");
    for (int i = 2; i <= 25; i++) {
      String row =
          "<row r=\"%1$d\"><c r=\"A%1$d\"><v>%1$d</v></c><c r=\"B%1$d\"><v>20</v></c>"
              + "<c r=\"C%1$d\" s=\"1\"><v>13.5</v></c><c r=\"D%1$d\"><v>12</v></c>"
              + "<c r=\"E%1$d\"><v>11</v></c></row>";
      rows.append(row.formatted(i));
    }
    return "<worksheet " + MAIN + "><sheetData>" + rows + "</sheetData></worksheet>";
  }

  /** Returns the text of a part. */
  String text(String name) {
    return new String(parts.get(name), StandardCharsets.UTF_8);
  }

  /** Returns the names of the parts. */
  String[] names() {
    return parts.keySet().toArray(String[]::new);
  }

  /** Puts a part of text. */
  BookParts put(String name, String text) {
    return put(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Puts a part. */
  BookParts put(String name, byte[] bytes) {
    parts.put(name, bytes);
    return this;
  }

  /** Takes a part out. */
  BookParts without(String name) {
    parts.remove(name);
    return this;
  }

  /** Changes the text of a part. */
  BookParts with(String name, UnaryOperator<String> change) {
    return put(name, change.apply(text(name)));
  }

  /** Replaces a text in a part that must hold it. */
  BookParts with(String name, String old, String now) {
    String text = text(name);
    if (!text.contains(old)) {
      throw new IllegalArgumentException(name + " has no " + old);
    }
    return put(name, text.replace(old, now));
  }

  /** Writes a part in another encoding, declared or not. */
  BookParts encoded(String name, Charset charset, String declared, String mark) {
    String text = text(name).replace("encoding=\"UTF-8\"", declared);
    return put(name, (mark + text).getBytes(charset));
  }

  /** Packs the parts as they are. */
  byte[] packed() {
    return packed(out -> {}, entry -> {});
  }

  /** Packs the parts with something done to the stream and to each entry first. */
  byte[] packed(Consumer<ZipArchiveOutputStream> setUp, Consumer<ZipArchiveEntry> each) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(bytes)) {
      setUp.accept(out);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        add(out, part.getKey(), part.getValue(), each);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }

  private static void add(
      ZipArchiveOutputStream out, String name, byte[] bytes, Consumer<ZipArchiveEntry> each)
      throws IOException {
    ZipArchiveEntry entry = new ZipArchiveEntry(name);
    entry.setSize(bytes.length);
    each.accept(entry);
    out.putArchiveEntry(entry);
    out.write(bytes);
    out.closeArchiveEntry();
  }

  /** Packs the parts and puts one in a second time under the same name. */
  byte[] packedTwice(String name) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        add(out, part.getKey(), part.getValue(), entry -> {});
      }
      add(out, name, parts.get(name), entry -> {});
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }
}
