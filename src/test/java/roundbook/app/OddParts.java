package roundbook.app;

import static roundbook.app.BookParts.BOOK;
import static roundbook.app.BookParts.RELATIONS;
import static roundbook.app.BookParts.SHEET;
import static roundbook.app.BookParts.TYPES;
import static roundbook.app.HostileRun.Wanted.READ;
import static roundbook.app.HostileRun.Wanted.REFUSED;

import java.util.ArrayList;
import java.util.List;
import roundbook.app.HostileRun.Wanted;
import roundbook.app.OddBooks.Odd;

/** Zipped workbooks with parts in them that are lost, endless, nonsense, or hold themselves. */
final class OddParts {
  private static final String OF_SHEET = "xl/worksheets/_rels/sheet1.xml.rels";
  private static final String HEAD =
      "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">";

  private final List<Odd> all = new ArrayList<>();

  private OddParts() {}

  /** Returns all of them. */
  static List<Odd> all() {
    OddParts parts = new OddParts();
    parts.lost();
    parts.endless();
    parts.beside();
    return parts.all;
  }

  private void add(String name, BookParts book, Wanted wanted) {
    all.add(new Odd(name, book.packed(), wanted));
  }

  private static BookParts sound() {
    return BookParts.sound();
  }

  /** A second sheet whose logs nobody would miss, a text that may have been a wish. */
  private void lost() {
    String second = "<sheet name=\"More\" sheetId=\"2\" r:id=\"rId9\"/></sheets>";
    BookParts unrelated = sound().with(BOOK, "</sheets>", second);
    add("sheet-unrelated.xlsx", unrelated, REFUSED);
    String relation = BookParts.relation("rId9", "worksheet", "worksheets/sheet2.xml");
    add("sheet-lost.xlsx", related(sound().with(BOOK, "</sheets>", second), relation), REFUSED);
    for (String number : new String[] {"5", "-1", "x", "99999999999"}) {
      String text = "<c r=\"F9\" t=\"s\"><v>%s</v></c></row><row r=\"10\">".formatted(number);
      add("text-%s.xlsx".formatted(number), cell(text), REFUSED);
    }
    for (String address : new String[] {"XFE9", "ZZZZZZZ9", "9", "F", "$F$9", "\u00C49"}) {
      String text = "<c r=\"%s\"><v>1</v></c></row><row r=\"10\">".formatted(address);
      add("at-%s.xlsx".formatted(OddBooks.plain(address) + all.size()), cell(text), REFUSED);
    }
  }

  private static BookParts cell(String text) {
    return sound().with(SHEET, "</row><row r=\"10\">", text);
  }

  private static BookParts related(BookParts book, String relation) {
    return book.with(RELATIONS, "</Relationships>", relation + "</Relationships>");
  }

  private void endless() {
    StringBuilder relations = new StringBuilder();
    StringBuilder names = new StringBuilder("</sheets><definedNames>");
    StringBuilder types = new StringBuilder();
    for (int i = 0; i < 100_000; i++) {
      relations.append(BookParts.relation("q" + i, "image", "i.png"));
      names.append("<definedName name=\"n").append(i).append("\">Logs!$A$1</definedName>");
      types.append("<Default Extension=\"e").append(i).append("\" ContentType=\"a/b\"/>");
    }
    add("relations.xlsx", related(sound(), relations.toString()), REFUSED);
    add("types.xlsx", sound().with(TYPES, "</Types>", types + "</Types>"), READ);
    add("names.xlsx", sound().with(BOOK, "</sheets>", names + "</definedNames>"), READ);
    byte[] zeros = BookParts.sound().put("zeros", new byte[5_000_000]).packed();
    BookParts nested = sound();
    for (int depth = 0; depth < 8; depth++) {
      nested = sound();
      for (int i = 0; i < 10; i++) {
        nested.put("xl/embeddings/" + i + ".xml", zeros);
      }
      zeros = nested.packed();
    }
    add("nested.xlsx", nested, READ);
    BookParts only = sound();
    for (String name : only.names()) {
      only.without(name);
    }
    add("nested.zip.xlsx", only.put("0.zip", zeros).put("1.zip", zeros), REFUSED);
    BookParts many = sound();
    for (int i = 0; i < 1200; i++) {
      many.put("xl/worksheets/other" + i + ".xml", "<worksheet/>");
    }
    add("parts-1200.xlsx", many, REFUSED);
  }

  /** What the tally does not need is not looked at. */
  private void beside() {
    String drawing = BookParts.relation("rId1", "drawing", "../drawings/d1.xml");
    add(
        "drawing-in-itself.xlsx",
        sound()
            .put(OF_SHEET, HEAD + drawing + "</Relationships>")
            .put(
                "xl/drawings/_rels/d1.xml.rels",
                HEAD + drawing.replace("../drawings/", "") + "</Relationships>")
            .put("xl/drawings/d1.xml", "<wsDr/>"),
        READ);
    String sheet = BookParts.relation("rId1", "worksheet", "sheet1.xml");
    add("sheet-in-itself.xlsx", sound().put(OF_SHEET, HEAD + sheet + "</Relationships>"), READ);
    String book = BookParts.relation("rId9", "officeDocument", "workbook.xml");
    add("book-in-itself.xlsx", related(sound(), book), READ);
    for (String text : new String[] {"", "nonsense", "<comments><comment ref=\"ZZ-1\"/></a>"}) {
      String comments = BookParts.relation("rId1", "comments", "../comments1.xml");
      add(
          "comments-" + all.size() + ".xlsx",
          sound()
              .with(
                  TYPES,
                  "</Types>",
                  BookParts.type("/xl/comments1.xml", "comments+xml") + "</Types>")
              .put(OF_SHEET, HEAD + comments + "</Relationships>")
              .put("xl/comments1.xml", text),
          READ);
    }
    String start = "<worksheet ";
    for (String type :
        new String[] {
          "<!DOCTYPE w SYSTEM \"http://127.0.0.1:1/x.dtd\">",
          "<!DOCTYPE w [<!ENTITY % p SYSTEM \"http://127.0.0.1:1/x\"> %p;]>"
        }) {
      add("outside-" + all.size() + ".xlsx", sound().with(SHEET, start, type + start), READ);
    }
  }
}
