package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.sheet.LibreOffice;
import roundbook.site.SiteReport;

/** Crew workbooks that another program saved, sorted or laid out anew are read back alike. */
class ReplanRoundTripTest {
  @TempDir private Path folder;

  private static Map<String, Object> typed(CrewFolder site) {
    Map<String, Object> typed = new TreeMap<>(Map.of("Cut_1", "x", "Lower_cut_1_E", 3.125));
    site.planOf(1)
        .round(1)
        .forEach(
            piece -> {
              double mid = piece.placed().first().piece().mid().inches();
              String wall = piece.placed().wall().name();
              typed.put("Measured_1_" + wall, Math.rint(mid * 8) / 8 + 0.25);
            });
    double level = Math.rint(site.planOf(1).stack().levelHeight(1).inches() * 16) / 16;
    typed.put("Reading_1_NW", level - 0.75);
    typed.put("Reading_1_NE", level + 0.125);
    typed.put("Measured_butt_1_N", 14.25);
    typed.put("Measured_tip_2_S", 11.5);
    return typed;
  }

  private static void assertReadAlike(SiteReport before, SiteReport after) {
    assertEquals(before.typed(), after.typed());
    assertEquals(before.plan(), after.plan());
    assertEquals(before.job().logs(), after.job().logs());
  }

  @Test
  @Tag("long")
  void anotherProgramSavesWhatItReadsAndRecalculatesTheSame() throws Exception {
    LibreOffice.assumePresent();
    CrewFolder site = new CrewFolder(folder).tally(5, 3, 3).plan("--rounds", "3");
    Map<String, Object> typed = typed(site);
    Path saved = LibreOffice.recalculate(site.book(1), typed);
    TypedBook.type(site.book(1), typed);
    SiteReport before = site.report(1);
    Files.copy(saved, site.book(1), StandardCopyOption.REPLACE_EXISTING);
    assertReadAlike(before, site.report(1));
    assertEquals(0, site.replan(1), site.said());
    Path again = LibreOffice.recalculate(site.book(2));
    List<String> differences = LibreOffice.compare(site.book(2), again, 1e-6).differences();
    assertEquals(List.of(), differences);
  }

  @Test
  void aSortedListAndAddedColumnsChangeNothing() throws Exception {
    CrewFolder site =
        new CrewFolder(folder).tally(6, 2, 3).plan("--rounds", "2", "--set", "Language=de");
    TypedBook.type(site.book(1), Map.of("Lost_" + spareRow(site), "x"));
    SiteReport before = site.report(1);
    TypedBook.change(
        site.book(1),
        book -> {
          Cell tag = TypedBook.cell(book, "Log_tags");
          XSSFSheet list = (XSSFSheet) tag.getSheet();
          swap(list.getRow(tag.getRowIndex()), list.getRow(tag.getRowIndex() + 2));
          book.setSheetName(book.getSheetIndex(list), "Logs sorted by Sam");
          list.setColumnHidden(tag.getColumnIndex() + 3, true);
        });
    SiteReport after = site.report(1);
    assertEquals(before.typed().lost(), after.typed().lost());
    assertEquals(1, after.typed().lost().size());
    assertEquals(before.plan(), after.plan());
    assertEquals(before.job().logs(), after.job().logs());
    assertEquals(0, site.replan(1), site.said());
    // A spare that is lost changes the lists that name it, and no page that is worked by.
    String pages = "Kein Blatt der Zimmerleute muss neu gedruckt werden.";
    assertTrue(site.said().contains(pages), site.said());
  }

  @Test
  void aColumnPutIntoTheLogListChangesNothing() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(8, 2, 3).plan("--rounds", "2");
    TypedBook.type(site.book(1), Map.of("Lost_" + spareRow(site), "x"));
    SiteReport before = site.report(1);
    TypedBook.change(
        site.book(1),
        book -> {
          Cell tag = TypedBook.cell(book, "Log_tags");
          XSSFSheet list = (XSSFSheet) tag.getSheet();
          list.shiftColumns(tag.getColumnIndex() + 1, 40, 1);
          for (Row row : list) {
            row.createCell(tag.getColumnIndex() + 1).setCellValue("seen on " + row.getRowNum());
          }
        });
    assertReadAlike(before, site.report(1));
    assertEquals(0, site.replan(1), site.said());
    String pages = "No page of the crew's must be printed again.";
    assertTrue(site.said().contains(pages), site.said());
  }

  @Test
  void aColumnPutIntoARoundsPageChangesNothing() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(5, 3, 3).plan("--rounds", "3");
    TypedBook.type(site.book(1), typed(site));
    SiteReport before = site.report(1);
    TypedBook.change(
        site.book(1),
        book -> {
          Cell box = TypedBook.cell(book, "Measured_1_N");
          XSSFSheet page = (XSSFSheet) box.getSheet();
          int last = 0;
          for (Row row : page) {
            last = Math.max(last, row.getLastCellNum());
          }
          page.shiftColumns(box.getColumnIndex(), last, 1);
          page.getRow(box.getRowIndex()).createCell(box.getColumnIndex()).setCellValue("by Kim");
        });
    assertEquals("by Kim", shown(site, "Measured_1_N", -1));
    assertReadAlike(before, site.report(1));
    assertEquals(0, site.replan(1), site.said());
    assertEquals(before.typed(), site.report(2).typed(), "and it is recorded");
  }

  /** Returns the row of a log without a place, neither the first of the list nor the third. */
  private static int spareRow(CrewFolder site) {
    return site.planOf(1).choice().unused().stream()
        .mapToInt(log -> log.origin().row())
        .filter(row -> row > 4)
        .min()
        .orElseThrow();
  }

  /** Returns what stands beside a named cell. */
  private static String shown(CrewFolder site, String name, int columns) throws Exception {
    String[] text = new String[1];
    TypedBook.change(
        site.book(1),
        book -> {
          Cell cell = TypedBook.cell(book, name);
          text[0] = cell.getRow().getCell(cell.getColumnIndex() + columns).getStringCellValue();
        });
    return text[0];
  }

  /** From German to English and back, each time saved by another program in between. */
  @Test
  @Tag("long")
  void aWorkbookMaySwitchItsLanguageAfterAnotherProgramSavedIt() throws Exception {
    LibreOffice.assumePresent();
    CrewFolder site =
        new CrewFolder(folder).tally(9, 3, 3).plan("--rounds", "3", "--language", "de");
    Map<String, Object> typed = typed(site);
    typed.put("Language", "en");
    save(site, 1, typed);
    SiteReport german = site.report(1);
    assertEquals(0, site.replan(1), site.said());
    save(site, 2, Map.of("Language", "de"));
    SiteReport english = site.report(2);
    assertEquals(german.typed(), english.typed());
    assertEquals(german.plan().keySet(), english.plan().keySet());
    assertEquals(0, site.replan(2), site.said());
    assertTrue(site.said().contains("Diese Blätter neu drucken: Start, "), site.said());
    assertEquals(english.typed(), site.report(3).typed());
    assertEquals(english.plan(), site.report(3).plan());
  }

  private static void save(CrewFolder site, int revision, Map<String, ?> typed) throws Exception {
    Path saved = LibreOffice.recalculate(site.book(revision), new TreeMap<>(typed));
    Files.copy(saved, site.book(revision), StandardCopyOption.REPLACE_EXISTING);
  }

  /** Lets two rows change places as sorting does: contents move, names stay. */
  private static void swap(Row one, Row other) {
    for (int column = 0; column < 40; column++) {
      Cell first = one.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      Cell second = other.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      Object kept = value(first);
      put(first, value(second));
      put(second, kept);
    }
  }

  private static Object value(Cell cell) {
    return switch (cell.getCellType()) {
      case NUMERIC -> cell.getNumericCellValue();
      case STRING -> cell.getStringCellValue();
      default -> "";
    };
  }

  private static void put(Cell cell, Object value) {
    cell.setBlank();
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (!value.toString().isEmpty()) {
      cell.setCellValue(value.toString());
    }
  }
}
