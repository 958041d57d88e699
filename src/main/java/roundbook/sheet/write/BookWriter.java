package roundbook.sheet.write;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.io.output.CloseShieldOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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

  private static final String PROGRAM = "roundbook";

  private BookWriter() {}

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
    LocaleUtil.setUserLocale(Locale.ENGLISH);
    XSSFWorkbook workbook = new XSSFWorkbook();
    try {
      Writing writing = new Writing(workbook, book, template);
      properties(workbook, book.properties());
      fill(writing);
      store(writing, out);
      return writing.problems();
    } finally {
      // To close it would write it all once more, into memory.
      workbook.getPackage().revert();
      LocaleUtil.resetUserLocale();
    }
  }

  private static void fill(Writing writing) throws IOException {
    for (Sheet sheet : writing.book().sheets()) {
      XSSFSheet written = writing.workbook().createSheet(sheet.name());
      new SheetWriter(sheet, written, writing).write();
      new PageWriter(sheet, written, writing).write();
      RuleWriter rules = new RuleWriter(written, writing);
      rules.write(sheet.rules());
      rules.shortenFractions(Fractions.of(sheet));
      if (!sheet.id().isEmpty()) {
        writing.name(SHEET_ID + sheet.id(), Area.cell(1, 1).on(sheet.name()));
      }
    }
    writing.defineNames();
    figures(writing);
    hide(writing);
  }

  private static void figures(Writing writing) throws IOException {
    DrawingWriter drawings = new DrawingWriter(writing.workbook(), writing.book());
    for (Sheet sheet : writing.book().sheets()) {
      if (!sheet.figures().isEmpty()) {
        drawings.write(sheet.figures(), writing.workbook().getSheet(sheet.name()));
      }
    }
  }

  /** Hides sheets last, for the first one seen must be the active one. */
  private static void hide(Writing writing) {
    List<Sheet> sheets = writing.book().sheets();
    for (int index = sheets.size() - 1; index >= 0; index--) {
      if (!sheets.get(index).view().hidden()) {
        writing.workbook().setActiveSheet(index);
        writing.workbook().setFirstVisibleTab(index);
      }
    }
    int active = writing.workbook().getActiveSheetIndex();
    for (int index = 0; index < sheets.size(); index++) {
      writing.workbook().getSheetAt(index).setSelected(index == active);
      if (sheets.get(index).view().hidden()) {
        writing.workbook().setSheetVisibility(index, SheetVisibility.HIDDEN);
      }
    }
  }

  private static void properties(XSSFWorkbook workbook, Book.Properties properties) {
    POIXMLProperties all = workbook.getProperties();
    POIXMLProperties.CoreProperties core = all.getCoreProperties();
    core.setTitle(properties.title());
    core.setSubjectProperty(properties.subject());
    core.setKeywords(properties.keywords());
    core.setDescription(properties.description());
    core.setCreator(PROGRAM);
    core.setCreated(Optional.of(new Date(0)));
    core.setModified(Optional.of(new Date(0)));
    all.getExtendedProperties().getUnderlyingProperties().setApplication(PROGRAM);
    properties.custom().forEach((key, value) -> all.getCustomProperties().addProperty(key, value));
  }

  private static void store(Writing writing, OutputStream out) throws IOException {
    OutputStream shielded = CloseShieldOutputStream.wrap(out);
    try (WorkbookZip zip = new WorkbookZip(shielded, writing.rows())) {
      writing.workbook().write(zip);
    }
    out.flush();
  }
}
