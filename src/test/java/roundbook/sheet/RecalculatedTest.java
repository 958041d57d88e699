package roundbook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.SheetBuilder;

/** What a spreadsheet program outside the project makes of a written workbook. */
class RecalculatedTest {
  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void write() throws Exception {
    LibreOffice.assumePresent();
    book = folder.resolve("book.xlsx");
    Files.write(book, BookWriterTest.written(SampleBook.book()));
  }

  @Test
  void storedValuesAreTheOnesItComputes() throws Exception {
    LibreOffice.Comparison comparison = LibreOffice.compare(book, LibreOffice.recalculate(book));
    assertEquals(List.of(), comparison.differences());
    assertEquals(90, comparison.formulas());
  }

  @Test
  void aWrongStoredValueIsNoticed() throws Exception {
    PageSetup page = PageSetup.of(PageSetup.Kind.TABLE, PageSetup.Paper.A4);
    Book wrong =
        Book.of(
            Book.Properties.titled("wrong"),
            List.of(
                new SheetBuilder("Only", page)
                    .put("A1", Cell.formula("1+1", 3))
                    .put("A2", Cell.formula("\"a\"&\"b\"", "ab"))
                    .build()));
    Files.write(book, BookWriterTest.written(wrong));
    LibreOffice.Comparison comparison = LibreOffice.compare(book, LibreOffice.recalculate(book));
    assertEquals(List.of("Only!A1: stored 3.0, now 2.0 by 1+1"), comparison.differences());
  }

  @Test
  void typedValuesAreFollowed() throws Exception {
    Path after = LibreOffice.recalculate(book, Map.of("Measured_1_N", 0.25, "Round 01!D9", 9));
    assertEquals(0.25, LibreOffice.value(after, "Round 01!G8"));
    assertEquals("▼ low", LibreOffice.value(after, "Round 01!F8"));
    assertEquals("ok", LibreOffice.value(after, "Round 01!F9"));
    assertEquals("", LibreOffice.value(after, "Round 01!F10"));
    List<String> differences = LibreOffice.compare(book, after).differences();
    assertEquals(6, differences.size(), differences.toString());
  }

  @Test
  void everythingButValuesSurvives() throws Exception {
    Path saved = LibreOffice.recalculate(book);
    try (XSSFWorkbook before = new XSSFWorkbook(Files.newInputStream(book));
        XSSFWorkbook after = new XSSFWorkbook(Files.newInputStream(saved))) {
      before
          .getAllNames()
          .forEach(
              name ->
                  assertEquals(
                      plain(name.getRefersToFormula()),
                      plain(after.getName(name.getNameName()).getRefersToFormula())));
      assertEquals(plain(before.getPrintArea(0)), plain(after.getPrintArea(0)));
      for (int index = 0; index < before.getNumberOfSheets(); index++) {
        sameSheet(before.getSheetAt(index), after.getSheetAt(index));
      }
      assertEquals(1, after.getSheet(SampleBook.LISTS).getDrawingPatriarch().getCharts().size());
      assertFalse(after.getAllPictures().isEmpty());
    }
  }

  private static String plain(String reference) {
    return reference.replaceAll("[$']", "");
  }

  private static void sameSheet(XSSFSheet before, XSSFSheet after) {
    assertEquals(before.getSheetName(), after.getSheetName());
    assertEquals(before.getProtect(), after.getProtect());
    assertEquals(before.getRepeatingRows(), after.getRepeatingRows());
    assertEquals(before.getFitToPage(), after.getFitToPage());
    assertEquals(before.getPrintSetup().getLandscape(), after.getPrintSetup().getLandscape());
    assertEquals(new HashSet<>(before.getMergedRegions()), new HashSet<>(after.getMergedRegions()));
    assertEquals(before.getDataValidations().size(), after.getDataValidations().size());
    int rules = before.getSheetConditionalFormatting().getNumConditionalFormattings();
    assertTrue(after.getSheetConditionalFormatting().getNumConditionalFormattings() >= rules);
    if (before.getRow(7) != null && before.getProtect() && before.getRow(7).getCell(3) != null) {
      assertFalse(after.getRow(7).getCell(3).getCellStyle().getLocked());
      assertTrue(after.getRow(7).getCell(2).getCellStyle().getLocked());
    }
  }
}
