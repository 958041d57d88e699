package roundbook.app;

import static roundbook.app.BookParts.BOOK;
import static roundbook.app.BookParts.RELATIONS;
import static roundbook.app.BookParts.ROOT;
import static roundbook.app.BookParts.SHEET;
import static roundbook.app.BookParts.STYLES;
import static roundbook.app.BookParts.TEXTS;
import static roundbook.app.BookParts.TYPES;
import static roundbook.app.HostileRun.Wanted.EITHER;
import static roundbook.app.HostileRun.Wanted.READ;
import static roundbook.app.HostileRun.Wanted.REFUSED;
import static roundbook.app.OddBooks.plain;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import roundbook.app.HostileRun.Wanted;
import roundbook.app.OddBooks.Odd;

/** Zipped workbooks whose XML, cells, numbers or rows are odd in one way each. */
final class OddCells {
  private static final String MARK = "\uFEFF";
  private static final String DOCUMENT_TYPE = "<!DOCTYPE x [<!ENTITY e \"%s\">]>";

  private final List<Odd> all = new ArrayList<>();

  private OddCells() {}

  /** Returns all of them. */
  static List<Odd> all() {
    OddCells cells = new OddCells();
    cells.writing();
    cells.cells();
    cells.numbers();
    cells.elements();
    return cells.all;
  }

  private void add(String name, BookParts book, Wanted wanted) {
    all.add(new Odd(name, book.packed(), wanted));
  }

  private static BookParts sound() {
    return BookParts.sound();
  }

  private void writing() {
    for (String name : new String[] {SHEET, BOOK, TEXTS, STYLES, RELATIONS, TYPES}) {
      String which = plain(name) + ".xlsx";
      boolean own = name.equals(RELATIONS) || name.equals(TYPES);
      Wanted fine = own ? EITHER : READ;
      String wide = "encoding=\"UTF-16\"";
      add("wide-" + which, sound().encoded(name, StandardCharsets.UTF_16LE, wide, MARK), fine);
      add("wide-big-" + which, sound().encoded(name, StandardCharsets.UTF_16BE, wide, MARK), fine);
      add(
          "marked-" + which,
          sound().encoded(name, StandardCharsets.UTF_8, "encoding=\"UTF-8\"", MARK),
          fine);
      add(
          "latin-" + which,
          sound().encoded(name, StandardCharsets.ISO_8859_1, "encoding=\"ISO-8859-1\"", ""),
          fine);
      add("undeclared-" + which, sound().encoded(name, StandardCharsets.UTF_8, "", ""), fine);
      add(
          "unknown-" + which,
          sound().encoded(name, StandardCharsets.UTF_8, "encoding=\"KLINGON\"", ""),
          EITHER);
      add("lie-" + which, sound().encoded(name, StandardCharsets.UTF_8, wide, ""), EITHER);
      add(
          "ebcdic-" + which,
          sound()
              .encoded(name, java.nio.charset.Charset.forName("IBM037"), "encoding=\"IBM037\"", ""),
          EITHER);
      add(
          "wide-32-" + which,
          sound()
              .encoded(
                  name, java.nio.charset.Charset.forName("UTF-32LE"), "encoding=\"UTF-32\"", MARK),
          EITHER);
      add("version-" + which, sound().with(name, "version=\"1.0\"", "version=\"1.1\""), EITHER);
      add("version-9-" + which, sound().with(name, "version=\"1.0\"", "version=\"9.0\""), EITHER);
      add(
          "notes-" + which,
          sound()
              .with(name, text -> text.replaceFirst("\\?>", "?><!-- a --><?b c?>") + "<!-- d -->"),
          fine);
      add("type-" + which, sound().with(name, text -> typed(text, "x")), EITHER);
      add(
          "entity-" + which,
          sound().with(name, text -> typed(text, "&e;").replaceFirst("</", "&e;</")),
          EITHER);
      add(
          "bad-letter-" + which,
          sound().with(name, text -> text.replaceFirst("</", "\u0001</")),
          EITHER);
      add(
          "lone-" + which,
          sound().with(name, text -> text.replaceFirst("</", "&#xD800;</")),
          EITHER);
      add("two-roots-" + which, sound().with(name, text -> text + "<a/>"), EITHER);
      add("tail-" + which, sound().with(name, text -> text + "tail"), EITHER);
    }
    add("bad-bytes.xlsx", sound().put(SHEET, badBytes()), REFUSED);
    add(
        "prefix.xlsx",
        sound()
            .with(
                SHEET,
                text -> text.replaceAll("<(/?)(\\w)", "<$1q:$2").replace("xmlns=", "xmlns:q=")),
        READ);
    add(
        "no-space.xlsx",
        sound().with(SHEET, text -> text.replaceFirst("xmlns=\"[^\"]*\"", "")),
        READ);
    add("lost-prefix.xlsx", sound().with(SHEET, "<sheetData>", "<z:sheetData>"), REFUSED);
    add("strict.xlsx", strict(), READ);
    add(
        "same-attribute.xlsx",
        sound().with(SHEET, "<row r=\"1\">", "<row r=\"1\" r=\"1\">"),
        REFUSED);
  }

  private static String typed(String text, String entity) {
    return text.replaceFirst("\\?>", "?>" + DOCUMENT_TYPE.formatted(entity.equals("x") ? "y" : "z"))
        + (entity.equals("x") ? "" : " ");
  }

  private static byte[] badBytes() {
    byte[] bytes = sound().text(SHEET).getBytes(StandardCharsets.UTF_8);
    bytes[bytes.length / 2] = (byte) 0xC3;
    return bytes;
  }

  private static BookParts strict() {
    BookParts book = sound();
    for (String name : new String[] {SHEET, BOOK, TEXTS, STYLES, RELATIONS, ROOT}) {
      book.with(
          name,
          text ->
              text.replace(
                      "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
                      "http://purl.oclc.org/ooxml/spreadsheetml/main")
                  .replace(
                      "http://schemas.openxmlformats.org/officeDocument/2006/",
                      "http://purl.oclc.org/ooxml/officeDocument/"));
    }
    return book;
  }

  private void cells() {
    String cell = "<c r=\"D9\"><v>12</v></c>";
    for (String other :
        new String[] {
          "<c><v>12</v></c>",
          "<c r=\"\"><v>12</v></c>",
          "<c r=\"d9\"><v>12</v></c>",
          "<c r=\"$D$9\"><v>12</v></c>",
          "<c r=\"D9\" s=\"1\"><f>C9-A1</f><v>12</v></c>",
          "<c r=\"D9\"><f t=\"shared\" si=\"99\"/><v>12</v></c>",
          "<c r=\"D9\"><f t=\"shared\" ref=\"#REF!\" si=\"-1\">1/0</f><v>12</v></c>",
          "<c r=\"D9\"><f t=\"array\" ref=\"D9:D1\">{1}</f><v>12</v></c>",
          "<c r=\"D9\" cm=\"1\" vm=\"99\"><v>12</v></c>",
          "<c r=\"D9\" s=\"-1\"><v>12</v></c>",
          "<c r=\"D9\" s=\"99999999999\"><v>12</v></c>",
          "<c r=\"D9\" s=\"x\"><v> 12 </v></c>",
          "<c r=\"D9\" t=\"str\"><v>12</v></c>",
          "<c r=\"D9\" t=\"inlineStr\"><is><t>12</t></is></c>",
          "<c r=\"D9\" t=\"inlineStr\"><is><r><t>1</t></r><r><t>2</t></r></is></c>",
          "<c r=\"D9\"><v>12</v><extLst><ext><v>7</v></ext></extLst></c>",
          "<c r=\"D9\"><v><![CDATA[12]]></v></c>",
          "<c r=\"D9\"><v>1<!-- x -->2</v></c>",
          "<c r=\"D9\"><v>12.0000</v></c>",
          "<c r=\"D9\"><v>1.2E1</v></c>",
          "<c r=\"D9\"><v>+12</v></c>"
        }) {
      add("cell-" + all.size() + ".xlsx", sound().with(SHEET, cell, other), unlessAddressed(other));
    }
    for (String other :
        new String[] {
          "<c r=\"D9\"/>",
          "<c r=\"D9\"><v/></c>",
          "<c r=\"XFE9\"><v>12</v></c>",
          "<c r=\"ZZZZZZZ9\"><v>12</v></c>",
          "<c r=\"D1048577\"><v>12</v></c>",
          "<c r=\"9D\"><v>12</v></c>",
          "<c r=\"\u00C49\"><v>12</v></c>",
          cell + cell,
          "<c r=\"B9\"><v>12</v></c>",
          "<c r=\"D9\" t=\"s\"><v>-1</v></c>",
          "<c r=\"D9\" t=\"s\"><v>99</v></c>",
          "<c r=\"D9\" t=\"s\"><v>99999999999</v></c>",
          "<c r=\"D9\" t=\"s\"><v>x</v></c>",
          "<c r=\"D9\" t=\"s\"/>",
          "<c r=\"D9\" t=\"e\"><v>#DIV/0!</v></c>",
          "<c r=\"D9\" t=\"e\"><v>odd</v></c>",
          "<c r=\"D9\" t=\"b\"><v>7</v></c>",
          "<c r=\"D9\" t=\"d\"><v>2026-02-31</v></c>",
          "<c r=\"D9\" t=\"d\"><v>99999999999-01-01</v></c>",
          "<c r=\"D9\" t=\"d\"><v>0001-01-01T00:00:00</v></c>",
          "<c r=\"D9\" t=\"zz\"><v>12</v></c>",
          "<c r=\"D9\"><f/></c>",
          "<c r=\"D9\"><f>" + "(".repeat(30_000) + "</f></c>",
          "<c r=\"D9\" t=\"inlineStr\"/>",
          "<c r=\"D9\" t=\"inlineStr\"><is/></c>",
          "<c r=\"D9\" t=\"str\"><v>" + "x".repeat(300_000) + "</v></c>",
          "<c r=\"D9\">" + "<a>".repeat(20_000) + "</a>".repeat(20_000) + "</c>"
        }) {
      add("odd-cell-" + all.size() + ".xlsx", sound().with(SHEET, cell, other), EITHER);
    }
  }

  private static Wanted unlessAddressed(String cell) {
    return cell.contains("\"d9\"") || cell.contains("$D") ? EITHER : READ;
  }

  private void numbers() {
    for (String value :
        new String[] {
          "NaN",
          "INF",
          "-INF",
          "Infinity",
          "1E400",
          "-1E400",
          "1E-400",
          "0x1p4",
          "1,5",
          "1 5",
          "\u0661\u0662",
          "1E5",
          "-12",
          "-0",
          "1e",
          "--1",
          "12d",
          "12f",
          "9".repeat(400),
          "0." + "3".repeat(20_000),
          "1E-2147483648",
          "1E2147483647",
          "1E9999999999"
        }) {
      add(
          "number-" + all.size() + ".xlsx",
          sound().with(SHEET, "<v>13.5</v>", "<v>" + value + "</v>"),
          EITHER);
    }
    for (String code :
        new String[] {
          "",
          ";",
          ";;;",
          "@",
          "\"",
          "\\",
          "[",
          "[Red",
          "[h]:mm",
          "yyyy",
          "000",
          "\"L-\"000",
          "0".repeat(5000),
          "#".repeat(5000),
          "[$-F800]",
          "[>1",
          "_",
          "*",
          "?/?",
          "# ?/0",
          "0.0E",
          "E+",
          "\\_",
          "General;General",
          "[DBNum1]0",
          "0%",
          "[$\u20AC-407]",
          "0;0;0;0;0;0",
          "00[",
          "00\"",
          "000\\",
          "00(",
          "00;[",
          "00@",
          "00*",
          "00/",
          "00 h",
          "00yy",
          "00 [m]",
          "00?",
          "00#/"
        }) {
      String escaped = code.replace("\"", "&quot;").replace("<", "&lt;").replace(">", "&gt;");
      add("format-" + all.size() + ".xlsx", sound().with(STYLES, "# ??/16", escaped), EITHER);
    }
  }

  private void elements() {
    add("row-high.xlsx", sound().with(SHEET, "<row r=\"25\">", "<row r=\"2147483648\">"), EITHER);
    add("row-below.xlsx", sound().with(SHEET, "<row r=\"25\">", "<row r=\"-5\">"), EITHER);
    add(
        "row-none.xlsx",
        sound().with(SHEET, text -> text.replaceAll("<row r=\"\\d+\">", "<row>")),
        EITHER);
    add(
        "row-same.xlsx",
        sound().with(SHEET, text -> text.replaceAll("<row r=\"\\d+\">", "<row r=\"3\">")),
        EITHER);
    add("row-turned.xlsx", sound().with(SHEET, "<row r=\"25\">", "<row r=\"2\">"), EITHER);
    add("row-in-row.xlsx", sound().with(SHEET, "</row><row r=\"9\">", "<row r=\"9\">"), EITHER);
    add(
        "no-data.xlsx",
        sound().with(SHEET, text -> text.replaceAll("(?s)<sheetData>.*</sheetData>", "")),
        REFUSED);
    add(
        "empty-data.xlsx",
        sound()
            .with(SHEET, text -> text.replaceAll("(?s)<sheetData>.*</sheetData>", "<sheetData/>")),
        REFUSED);
    add("two-data.xlsx", sound().with(SHEET, "</sheetData>", "</sheetData><sheetData/>"), READ);
    add("1904.xlsx", sound().with(BOOK, "<workbookPr/>", "<workbookPr date1904=\"1\"/>"), READ);
    String choice =
        "<mc:AlternateContent"
            + " xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\"><mc:Choice"
            + " Requires=\"zz\"><zz:a"
            + " xmlns:zz=\"urn:z\"/></mc:Choice><mc:Fallback/></mc:AlternateContent>";
    add("choice.xlsx", sound().with(SHEET, "<sheetData>", choice + "<sheetData>"), READ);
    add(
        "strike-alone.xlsx",
        sound().with(STYLES, "<font><sz val=\"11\"/></font>", "<strike/>"),
        EITHER);
    add(
        "formats-odd.xlsx",
        sound().with(STYLES, "numFmtId=\"164\" formatCode=\"# ??/16\"", ""),
        EITHER);
    add("fonts-odd.xlsx", sound().with(STYLES, "fontId=\"0\"", "fontId=\"-4\""), READ);
    add(
        "merged.xlsx",
        sound()
            .with(
                SHEET,
                "</sheetData>",
                "</sheetData><mergeCells><mergeCell ref=\"A1:ZZ0\"/></mergeCells>"),
        READ);
    add(
        "text-runs.xlsx",
        sound().with(TEXTS, "<t>Log</t>", "<r><t>L</t></r><r><t>og</t></r><rPh><t>x</t></rPh>"),
        READ);
    add("texts-fewer.xlsx", sound().with(TEXTS, "<si><t>Tip (in)</t></si>", ""), EITHER);
    add("texts-open.xlsx", sound().with(TEXTS, "<t>Log</t></si>", "<t>Log</t>"), REFUSED);
  }
}
