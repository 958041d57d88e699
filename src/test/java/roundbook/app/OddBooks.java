package roundbook.app;

import static roundbook.app.BookParts.BOOK;
import static roundbook.app.BookParts.RELATIONS;
import static roundbook.app.BookParts.ROOT;
import static roundbook.app.BookParts.SHEET;
import static roundbook.app.BookParts.STYLES;
import static roundbook.app.BookParts.TYPES;
import static roundbook.app.HostileRun.Wanted.EITHER;
import static roundbook.app.HostileRun.Wanted.READ;
import static roundbook.app.HostileRun.Wanted.REFUSED;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import roundbook.app.HostileRun.Wanted;

/** Zipped workbooks that are odd in one way each, sound ones among them. */
final class OddBooks {
  private final List<Odd> all = new ArrayList<>();

  private OddBooks() {}

  /** A file and what is to become of it. */
  record Odd(String name, byte[] bytes, Wanted wanted) {}

  /** Returns all of them. */
  static List<Odd> all() {
    OddBooks books = new OddBooks();
    books.add("sound.xlsx", BookParts.sound(), READ);
    books.packing();
    books.missing();
    books.relations();
    books.kinds();
    books.growth();
    books.all.addAll(OddCells.all());
    books.all.addAll(OddParts.all());
    return books.all;
  }

  private void add(String name, BookParts book, Wanted wanted) {
    add(name, book.packed(), wanted);
  }

  private void add(String name, byte[] bytes, Wanted wanted) {
    all.add(new Odd(name, bytes, wanted));
  }

  private static BookParts sound() {
    return BookParts.sound();
  }

  private void packing() {
    add(
        "stored.xlsx",
        sound().packed(out -> out.setMethod(ZipEntry.STORED), OddBooks::sum),
        EITHER);
    add("zip64.xlsx", sound().packed(out -> out.setUseZip64(Zip64Mode.Always), each -> {}), EITHER);
    add("comment.xlsx", sound().packed(out -> out.setComment("a note"), each -> {}), READ);
    add("named-so.xlsx", sound().packed(out -> {}, each -> each.setComment("x")), READ);
    for (String name : sound().names()) {
      add("twice-" + plain(name) + ".xlsx", sound().packedTwice(name), EITHER);
    }
    byte[] packed = sound().packed();
    add("after-noise.xlsx", joined("noise before the zip".getBytes(), packed), EITHER);
    add("before-noise.xlsx", joined(packed, new byte[5000]), EITHER);
    add("two-in-one.xlsx", joined(packed, packed), EITHER);
    add("backslashes.xlsx", replaced(packed, "xl/worksheets/", "xl\\worksheets\\"), EITHER);
    add("folders-above.xlsx", replaced(packed, "xl/styles.xml", "../styles.xml"), EITHER);
    add("absolute.xlsx", replaced(packed, "xl/styles.xml", "/l/styles.xml"), EITHER);
    add("small-letters.xlsx", replaced(packed, "[Content_Types]", "[content_types]"), EITHER);
    add("large-letters.xlsx", replaced(packed, "xl/workbook.xml", "XL/WORKBOOK.XML"), EITHER);
    for (int cut = 1; cut < packed.length; cut += packed.length / 60) {
      add("cut-" + cut + ".xlsx", Arrays.copyOf(packed, packed.length - cut), REFUSED);
    }
    for (int at = 0; at < packed.length; at += packed.length / 80) {
      byte[] flipped = packed.clone();
      flipped[at] ^= (byte) (1 << at % 8);
      add("flipped-" + at + ".xlsx", flipped, EITHER);
    }
    BookParts many = sound();
    for (int i = 0; i < 3000; i++) {
      many.put("xl/media/image" + i + ".bin", "");
    }
    add("many-entries.xlsx", many, EITHER);
  }

  private static void sum(org.apache.commons.compress.archivers.zip.ZipArchiveEntry entry) {
    java.util.zip.CRC32 sum = new java.util.zip.CRC32();
    sum.update(sound().text(entry.getName()).getBytes(StandardCharsets.UTF_8));
    entry.setCrc(sum.getValue());
  }

  private void missing() {
    for (String name : sound().names()) {
      boolean small = name.equals(STYLES);
      add("without-" + plain(name) + ".xlsx", sound().without(name), small ? READ : EITHER);
      add("empty-" + plain(name) + ".xlsx", sound().put(name, ""), EITHER);
      add("blank-" + plain(name) + ".xlsx", sound().put(name, "   \n"), EITHER);
      add("text-" + plain(name) + ".xlsx", sound().put(name, "no XML"), EITHER);
      add("other-root-" + plain(name) + ".xlsx", sound().put(name, "<a/>"), EITHER);
      add("unclosed-" + plain(name) + ".xlsx", cutEnd(name), EITHER);
      add("zeros-" + plain(name) + ".xlsx", sound().put(name, new byte[2000]), EITHER);
    }
    add("only-types.xlsx", only(TYPES), REFUSED);
    add("only-sheet.xlsx", only(SHEET), REFUSED);
    add("no-parts.xlsx", only(""), REFUSED);
  }

  private static BookParts only(String kept) {
    BookParts book = sound();
    for (String name : book.names()) {
      if (!name.equals(kept)) {
        book.without(name);
      }
    }
    return book;
  }

  private static BookParts cutEnd(String name) {
    String text = sound().text(name);
    return sound().put(name, text.substring(0, text.length() - 8));
  }

  private void relations() {
    String target = "worksheets/sheet1.xml";
    for (String other :
        new String[] {
          "/xl/worksheets/sheet1.xml",
          "../xl/worksheets/sheet1.xml",
          "./worksheets/./sheet1.xml",
          "worksheets\\sheet1.xml",
          "worksheets/sheet9.xml",
          "../../../../etc/passwd",
          "file:///etc/passwd",
          "http://localhost:1/x.xml",
          "C:\\logs\\sheet1.xml",
          "",
          " ",
          "#Logs!A1",
          "worksheets/sheet1.xml#x",
          "worksheets/sheet%31.xml",
          "%",
          "w\u00F6rk/sheet1.xml",
          "workbook.xml",
          "sharedStrings.xml",
          "styles.xml",
          "?",
          "//",
          "mailto:a",
          "worksheets/"
        }) {
      add("target-" + all.size() + ".xlsx", sound().with(RELATIONS, target, other), EITHER);
    }
    add("self.xlsx", sound().with(ROOT, "xl/workbook.xml", "_rels/.rels"), EITHER);
    add(
        "outside.xlsx",
        sound().with(RELATIONS, target + "\"", target + "\" TargetMode=\"External\""),
        EITHER);
    add(
        "odd-mode.xlsx",
        sound().with(RELATIONS, target + "\"", target + "\" TargetMode=\"Odd\""),
        EITHER);
    add("same-id.xlsx", sound().with(RELATIONS, "rId2", "rId1"), EITHER);
    add("no-id.xlsx", sound().with(RELATIONS, "Id=\"rId1\" ", ""), EITHER);
    add("other-id.xlsx", sound().with(BOOK, "r:id=\"rId1\"", "r:id=\"rId7\""), REFUSED);
    add("no-sheet-id.xlsx", sound().with(BOOK, " r:id=\"rId1\"", ""), REFUSED);
    add("no-target.xlsx", sound().with(RELATIONS, "Target=\"" + target + "\"", ""), EITHER);
    String link = BookParts.relation("rId9", "externalLink", "externalLinks/externalLink1.xml");
    add(
        "link-lost.xlsx",
        sound().with(RELATIONS, "</Relationships>", link + "</Relationships>"),
        READ);
    String sheet = "<sheet name=\"Logs\" sheetId=\"1\" r:id=\"rId1\"/>";
    add("sheet-twice.xlsx", sound().with(BOOK, sheet, sheet + sheet), EITHER);
    add("sheets-999.xlsx", sound().with(BOOK, sheet, sheet.repeat(999)), EITHER);
    add("no-name.xlsx", sound().with(BOOK, "name=\"Logs\" ", ""), EITHER);
    add("empty-name.xlsx", sound().with(BOOK, "name=\"Logs\"", "name=\"\""), EITHER);
    add("no-sheets.xlsx", sound().with(BOOK, sheet, ""), REFUSED);
    String names = "</sheets><definedNames><definedName%s</definedName></definedNames>";
    for (String name :
        new String[] {
          "></definedName>".substring(0, 1),
          " name=\"a\">#REF!",
          " name=\"a\">Logs!$A$1:$XFE$99999999999",
          " name=\"a\">'Logs'!A",
          " name=\"\">'Lo''gs!$A$1",
          " name=\"a\" localSheetId=\"-7\">Logs!$A$1",
          " name=\"a\">" + "(".repeat(20_000),
          " name=\"a\"><b/>x"
        }) {
      add(
          "name-" + all.size() + ".xlsx",
          sound().with(BOOK, "</sheets>", names.formatted(name)),
          EITHER);
    }
  }

  private void kinds() {
    String main = "spreadsheetml.sheet.main+xml";
    String template = "spreadsheetml.template.main+xml";
    add("template.xltx", sound().with(TYPES, main, template), READ);
    String office = "application/vnd.openxmlformats-officedocument.";
    String macro = "application/vnd.ms-excel.sheet.macroEnabled.main+xml";
    add("macro.xlsm", sound().with(TYPES, office + main, macro), READ);
    add(
        "binary.xlsb",
        sound()
            .with(TYPES, office + main, "application/vnd.ms-excel.sheet.binary.macroEnabled.main"),
        REFUSED);
    add("document.xlsx", sound().with(TYPES, main, "wordprocessingml.document.main+xml"), REFUSED);
    add("slides.xlsx", sound().with(TYPES, main, "presentationml.presentation.main+xml"), REFUSED);
    add("unknown-type.xlsx", sound().with(TYPES, main, "odd"), REFUSED);
    add("bad-type.xlsx", sound().with(TYPES, office + main, "///;;"), REFUSED);
    for (String sheet : new String[] {"chartsheet+xml", "dialogsheet+xml", "styles+xml"}) {
      add("as-" + sheet + ".xlsx", sound().with(TYPES, "worksheet+xml", sheet), EITHER);
    }
    add(
        "macro-sheet.xlsx",
        sound()
            .with(
                TYPES,
                office + "spreadsheetml.worksheet+xml",
                "application/vnd.ms-excel.macrosheet+xml"),
        EITHER);
    add("open.ods", new String[] {"mimetype", "application/vnd.oasis.opendocument.spreadsheet"});
    add("open.odt", new String[] {"mimetype", "application/vnd.oasis.opendocument.text"});
    add("pages.zip", new String[] {"Index/Document.iwa", "x", "preview.jpg", "y"});
    add("java.jar", new String[] {"META-INF/MANIFEST.MF", "Manifest-Version: 1.0\n"});
    BookParts inner = only("").put("inner.xlsx", sound().packed());
    add("zip-in-zip.xlsx", inner, REFUSED);
  }

  private void add(String name, String[] parts) {
    BookParts book = only("");
    for (int i = 0; i < parts.length; i += 2) {
      book.put(parts[i], parts[i + 1]);
    }
    add(name, book, REFUSED);
  }

  private void growth() {
    String end = "</sheetData>";
    add("blank-rows.xlsx", sound().with(SHEET, end, "<row/>".repeat(300_000) + end), EITHER);
    add(
        "wide-row.xlsx",
        sound().with(SHEET, end, "<row>" + "<c><v>1</v></c>".repeat(200_000) + "</row>" + end),
        EITHER);
    add("deep.xlsx", sound().with(SHEET, end, "<a>".repeat(300_000) + end), REFUSED);
    StringBuilder attributes = new StringBuilder("<row");
    for (int i = 0; i < 50_000; i++) {
      attributes.append(" a").append(i).append("=\"\"");
    }
    add("attributes.xlsx", sound().with(SHEET, end, attributes + "/>" + end), REFUSED);
    add(
        "long-name.xlsx",
        sound().with(SHEET, end, "<" + "n".repeat(2_000_000) + "/>" + end),
        EITHER);
    StringBuilder spaces = new StringBuilder("<row");
    for (int i = 0; i < 30_000; i++) {
      spaces.append(" xmlns:n").append(i).append("=\"urn:").append(i).append("\"");
    }
    add("spaces.xlsx", sound().with(SHEET, end, spaces + "/>" + end), REFUSED);
    String sound = sound().text(STYLES);
    add(
        "many-looks.xlsx",
        sound()
            .put(
                STYLES,
                sound.replace("</cellXfs>", "<xf numFmtId=\"14\"/>".repeat(70_000) + "</cellXfs>")),
        EITHER);
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  private static byte[] replaced(byte[] bytes, String old, String now) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return text.replace(old, now).getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Returns a part's name without what a file's name cannot hold. */
  static String plain(String name) {
    return name.replaceAll("[^A-Za-z]+", "-");
  }
}
