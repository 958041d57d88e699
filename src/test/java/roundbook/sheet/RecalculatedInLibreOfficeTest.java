package roundbook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The same in a spreadsheet program outside the project, and what it keeps of the rest. */
@Tag("long")
class RecalculatedInLibreOfficeTest extends RecalculatedTest {
  @BeforeEach
  void present() {
    LibreOffice.assumePresent();
  }

  @Override
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibreOffice.recalculate(book, typed);
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
