package roundbook.sheet.write;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Sheet;
import roundbook.problem.Problem;
import roundbook.sheet.style.StyleTemplate;

/**
 * Writes a book as a workbook file, the same bytes every time.
 *
 * <p>The bytes depend on the book and the template only: not on the clock, the time zone, the
 * locale, the number of files written at once, or the machine. No function of the spreadsheet is
 * evaluated; each formula carries the value that the book gives.
 */
public final class BookWriter {
  /** What the names of sheets' ids begin with, such as {@code Sheet_round_01}. */
  public static final String SHEET_ID = "Sheet_";

  /** The namespace of workbooks, their sheets and styles. */
  static final String SPREADSHEET = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private static final String WORKBOOK = "xl/workbook.xml";

  private final Book book;
  private final Writing writing;
  private final Parts parts;

  private BookWriter(Book book, StyleTemplate template) {
    this.book = book;
    writing = new Writing(book, template);
    parts = writing.parts();
  }

  /**
   * Writes a book.
   *
   * @param book what to write
   * @param template how it looks
   * @param out where to, left open
   * @return what a person should know of, such as a text that was cut
   * @throws IOException if the stream refuses bytes
   */
  public static List<Problem> write(Book book, StyleTemplate template, OutputStream out)
      throws IOException {
    BookWriter writer = new BookWriter(book, template);
    writer.parts();
    writer.parts.write(out);
    return writer.writing.problems();
  }

  private void parts() {
    parts.relate("", WORKBOOK);
    new PropertyParts(parts).add(book.properties());
    Xml texts = Xml.part().open("sst").with("xmlns", SPREADSHEET);
    add(Part.TEXTS, "xl/sharedStrings.xml", texts.with("count", 0).with("uniqueCount", 0).close());
    int active = Math.max(0, firstSeen());
    Xml sheets = new Xml();
    for (int index = 0; index < book.sheets().size(); index++) {
      Sheet sheet = book.sheets().get(index);
      String part = "xl/worksheets/sheet" + (index + 1) + ".xml";
      Xml xml = new SheetWriter(sheet, part, writing).written(index == active);
      sheets.open("sheet").with("name", sheet.name()).with("sheetId", index + 1);
      if (sheet.view().hidden()) {
        sheets.with("state", "hidden");
      }
      sheets.with("r:id", add(Part.SHEET, part, xml)).close();
      new PageWriter(sheet, writing).names(index);
      if (!sheet.id().isEmpty()) {
        writing.name(SHEET_ID + sheet.id(), Area.cell(1, 1).on(sheet.name()));
      }
    }
    add(Part.STYLES, "xl/styles.xml", writing.styles().part());
    parts.add(Part.WORKBOOK, WORKBOOK, workbook(sheets, active).bytes());
  }

  private String add(Part kind, String name, Xml xml) {
    return parts.relate(WORKBOOK, parts.add(kind, name, xml.bytes()));
  }

  /** Returns the first sheet that is seen, which must be the active one. */
  private int firstSeen() {
    int index = 0;
    for (Sheet sheet : book.sheets()) {
      if (!sheet.view().hidden()) {
        return index;
      }
      index++;
    }
    return -1;
  }

  private Xml workbook(Xml sheets, int active) {
    Xml xml = Xml.part().open("workbook").with("xmlns", SPREADSHEET);
    xml.with("xmlns:r", DrawingPart.RELATIONS);
    xml.open("workbookPr").with("date1904", false).close();
    xml.open("bookViews").open("workbookView").with("activeTab", active);
    xml.with("firstSheet", active).close().close();
    xml.open("sheets").inside().append(sheets);
    xml.close();
    writing.defineNames(xml);
    return xml.close();
  }
}
