package roundbook.sheet.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.sheet.FormulaRules;
import roundbook.sheet.SampleBook;
import roundbook.sheet.SecondReader;
import roundbook.sheet.style.StyleTemplate;
import roundbook.units.Length;

public class BookWriterTest {
  private static final PageSetup PAGE = PageSetup.of(PageKind.TABLE, PageSetup.Paper.LETTER);

  @TempDir Path folder;

  public static byte[] written(Book book) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BookWriter.write(book, StyleTemplate.standard(), out);
    return out.toByteArray();
  }

  private static XSSFWorkbook reopened(Book book) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(written(book)));
  }

  private static Book one(Cell cell) {
    Sheet sheet = new SheetBuilder("Only", PAGE).put("A1", cell).build();
    return Book.of(Book.Properties.titled("one"), List.of(sheet));
  }

  @Test
  void anotherReaderReadsEveryCellAsItWasPut() throws IOException {
    Path file = folder.resolve("book.xlsx");
    Files.write(file, written(SampleBook.book()));
    assertEquals(List.of(), SecondReader.differences(SampleBook.book(), file));
  }

  @Test
  void theOtherReaderNoticesAWrongCell() throws IOException {
    Path file = folder.resolve("book.xlsx");
    Files.write(file, written(one(Cell.number(3.5))));
    assertEquals(1, SecondReader.differences(one(Cell.number(3.25)), file).size());
    assertEquals(1, SecondReader.differences(one(Cell.text("3.5")), file).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+3", "-4", "@A1", "=HYPERLINK(\"x\")", "1/2", "007", "'x", ""})
  void textIsNeverTakenForAnythingElse(String text) throws IOException {
    try (XSSFWorkbook workbook = reopened(one(Cell.text(text)))) {
      XSSFCell cell = workbook.getSheetAt(0).getRow(0).getCell(0);
      assertEquals(CellType.STRING, cell.getCellType());
      assertEquals(text, cell.getStringCellValue());
    }
  }

  @ParameterizedTest
  @CsvSource({"=1+1, true", "-4, true", "spruce, false", "007, false"})
  void textThatLooksLikeAFormulaStaysTextWhenTypedAgain(String text, boolean quoted)
      throws IOException {
    try (XSSFWorkbook workbook = reopened(one(Cell.text(text)))) {
      XSSFCell cell = workbook.getSheetAt(0).getRow(0).getCell(0);
      assertEquals(quoted, cell.getCellStyle().getQuotePrefixed());
    }
  }

  @Test
  void aTextTooLongForACellIsCutAndReported() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Book book = one(Cell.text("x".repeat(40_000)));
    List<Problem> problems = BookWriter.write(book, StyleTemplate.standard(), out);
    assertEquals(1, problems.size());
    assertEquals(ProblemCode.TEXT_CUT, problems.get(0).code());
    assertEquals("Only!A1", problems.get(0).where().toString());
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
      String read = workbook.getSheetAt(0).getRow(0).getCell(0).getStringCellValue();
      assertEquals("x".repeat(32_766) + "…", read);
    }
  }

  @Test
  void aFormulaCarriesItsTextAndItsValue() throws IOException {
    try (XSSFWorkbook workbook = reopened(one(Cell.formula("IF(1<2,\"<yes>\",\"\")", "<yes>")))) {
      XSSFCell cell = workbook.getSheetAt(0).getRow(0).getCell(0);
      assertEquals("IF(1<2,\"<yes>\",\"\")", cell.getCellFormula());
      assertEquals("<yes>", cell.getStringCellValue());
    }
  }

  @Test
  void theFileSaysWhatItIsAndNothingOfTheMachine() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      var core = workbook.getProperties().getCoreProperties();
      assertEquals("Cabin", core.getTitle());
      assertEquals("roundbook", core.getCreator());
      assertEquals(0, core.getCreated().getTime());
      assertEquals(0, core.getModified().getTime());
      assertNull(core.getLastModifiedByUser());
      var custom = workbook.getProperties().getCustomProperties();
      assertEquals("1", custom.getProperty(Book.CREW_PROPERTY).getLpwstr());
    }
  }

  @Test
  void onlyCellsThatAreTypedInAreUnlocked() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      XSSFSheet sheet = workbook.getSheet(SampleBook.ROUND);
      assertTrue(sheet.getProtect());
      assertFalse(sheet.getCTWorksheet().getSheetProtection().isSetPassword());
      assertFalse(sheet.getCTWorksheet().getSheetProtection().isSetHashValue());
      assertFalse(sheet.getRow(7).getCell(3).getCellStyle().getLocked());
      assertTrue(sheet.getRow(7).getCell(2).getCellStyle().getLocked());
      assertFalse(workbook.getSheet(SampleBook.LISTS).getProtect());
    }
  }

  @Test
  void namesLeadToTheirCells() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      assertEquals("'Round 01'!$D$8", workbook.getName("Measured_1_N").getRefersToFormula());
      assertEquals("'Wood''s list'!$A$2:$A$4", workbook.getName("Tags").getRefersToFormula());
      assertEquals("0.5", workbook.getName("Gap_least").getRefersToFormula());
      assertEquals("'Round 01'!$A$1", workbook.getName("Sheet_round_01").getRefersToFormula());
      var link = workbook.getSheet(SampleBook.ROUND).getRow(14).getCell(0).getHyperlink();
      assertEquals("'Wood''s list'!A1", link.getAddress());
    }
  }

  /** ECMA-376 part 1, 18.8.7: the style named Normal is the built-in one of number 0. */
  @Test
  void theUsualStyleIsNamed() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      String styles = workbook.getStylesSource().getCTStylesheet().xmlText();
      String usual = "cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"";
      assertTrue(styles.contains(usual), styles);
    }
  }

  @Test
  void checksAreKept() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      var checks = workbook.getSheet(SampleBook.ROUND).getDataValidations();
      assertEquals(4, checks.size());
      assertEquals("4.0", checks.get(0).getValidationConstraint().getFormula1());
      assertEquals("36.0", checks.get(0).getValidationConstraint().getFormula2());
      assertEquals("4 to 36 in", checks.get(0).getErrorBoxText());
      assertEquals("Tags", checks.get(1).getValidationConstraint().getFormula1());
      assertArrayEquals(
          new String[] {"x", "done"},
          checks.get(2).getValidationConstraint().getExplicitListValues());
      assertEquals(
          DataValidationConstraint.ValidationType.FORMULA,
          checks.get(3).getValidationConstraint().getValidationType());
    }
  }

  @Test
  void pagesAreSetUp() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      XSSFSheet round = workbook.getSheet(SampleBook.ROUND);
      assertTrue(round.getPrintSetup().getLandscape());
      assertEquals(1, round.getPrintSetup().getFitHeight());
      assertEquals("&\"Arial,Regular\"&10 Cabin && Sons", round.getHeader().getLeft());
      assertEquals("&\"Arial,Regular\"&10 page &P of &N", round.getFooter().getCenter());
      assertEquals("'Round 01'!$A$1:$H$20", workbook.getPrintArea(0));
      XSSFSheet list = workbook.getSheet(SampleBook.LISTS);
      assertEquals("1:1", list.getRepeatingRows().formatAsString());
      assertEquals(0, list.getPrintSetup().getFitHeight());
      assertArrayEquals(new int[] {40}, list.getRowBreaks());
      XSSFSheet template = workbook.getSheet("Template");
      assertFalse(template.getFitToPage());
      assertEquals(100, template.getPrintSetup().getScale());
      assertEquals(SheetVisibility.HIDDEN, workbook.getSheetVisibility(3));
    }
  }

  @Test
  void equalPicturesAreStoredOnceAndKeepTheirSizeAndWords() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      assertEquals(1, workbook.getAllPictures().size());
      assertArrayEquals(SampleBook.PNG, workbook.getAllPictures().get(0).getData());
      var drawing = workbook.getSheet("Template").getDrawingPatriarch().getCTDrawing();
      var anchor = drawing.getOneCellAnchorArray(0);
      assertEquals(3 * 914_400, anchor.getExt().getCx());
      assertEquals(914_400, anchor.getExt().getCy());
      assertEquals("3 in", anchor.getPic().getNvPicPr().getCNvPr().getDescr());
    }
  }

  @Test
  void picturesMayLieOffTheirCellsCorner() throws IOException {
    Length mm = Length.ofMillimetres(1);
    Figure.At at =
        new Figure.At(roundbook.page.Area.of("C4"), mm, mm.times(2), mm.times(30), mm.times(10));
    Sheet sheet =
        new SheetBuilder("Only", PAGE)
            .figure(new Figure.Picture(SampleBook.PNG, at, "a & b"))
            .build();
    Book book = Book.of(Book.Properties.titled("one"), List.of(sheet));
    try (XSSFWorkbook workbook = reopened(book)) {
      var anchor =
          workbook.getSheetAt(0).getDrawingPatriarch().getCTDrawing().getOneCellAnchorArray(0);
      assertEquals(2, anchor.getFrom().getCol());
      assertEquals(3, anchor.getFrom().getRow());
      assertEquals("36000", anchor.getFrom().getColOff().toString());
      assertEquals("72000", anchor.getFrom().getRowOff().toString());
      assertEquals("a & b", anchor.getPic().getNvPicPr().getCNvPr().getDescr());
    }
  }

  @Test
  void aChartShowsTheBooksOwnValues() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      var drawing = workbook.getSheet(SampleBook.LISTS).getDrawingPatriarch();
      assertEquals(1, drawing.getCharts().size());
      var plot = drawing.getCharts().get(0).getCTChart().getPlotArea();
      assertEquals(2, plot.getBarChartArray(0).sizeOfSerArray());
      assertEquals(1, plot.getLineChartArray(0).sizeOfSerArray());
      var onHand = plot.getBarChartArray(0).getSerArray(1).getVal().getNumRef();
      assertEquals("'Wood''s list'!$C$2:$C$7", onHand.getF());
      assertEquals("10", onHand.getNumCache().getPtArray(1).getV());
    }
  }

  @Test
  void rolesBecomeTheTemplatesLooksEachStyleOnce() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      XSSFSheet round = workbook.getSheet(SampleBook.ROUND);
      XSSFCellStyle mark = round.getRow(3).getCell(0).getCellStyle();
      assertEquals(48, mark.getFont().getFontHeightInPoints());
      assertEquals(VerticalAlignment.CENTER, mark.getVerticalAlignment());
      assertEquals("# ?/??", mark.getDataFormatString());
      assertTrue(workbook.getNumCellStyles() < 40, "styles: " + workbook.getNumCellStyles());
      assertTrue(round.getSheetConditionalFormatting().getNumConditionalFormattings() > 2);
    }
  }

  @Test
  void formulasUseNothingNewerThanTheyShould() throws IOException {
    Path file = folder.resolve("book.xlsx");
    Files.write(file, written(SampleBook.book()));
    assertEquals(List.of(), FormulaRules.broken(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IFS(1>2,3)",
        "TEXTJOIN(\",\",TRUE,A1:A3)",
        "MAXIFS(A1:A3,B1:B3,1)",
        "XLOOKUP(1,A1:A3,B1:B3)",
        "IFNA(A1,0)",
        "SWITCH(A1,1,2)",
        "CONCAT(A1,B1)",
        "NOW()",
        "RAND()",
        "1+"
      })
  void newerAndChangingFunctionsAreNoticed(String formula) throws IOException {
    Path file = folder.resolve("book.xlsx");
    Files.write(file, written(one(Cell.formula(formula, 1))));
    assertEquals(1, FormulaRules.broken(file).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFERROR(A1,0)", "SUMIFS(A1:A3,B1:B3,1)", "ROUND(INT(A1)+MOD(A1,1),2)"})
  void olderFunctionsPass(String formula) throws IOException {
    Path file = folder.resolve("book.xlsx");
    Files.write(file, written(one(Cell.formula(formula, 1))));
    assertEquals(List.of(), FormulaRules.broken(file));
  }

  @Test
  void longHeadersAreCutForAllThreePartsToFit() throws IOException {
    String name = "a very long name of a job & more ".repeat(10);
    Sheet sheet = new SheetBuilder("Only", PAGE.header(name, name, name)).build();
    Book book = Book.of(Book.Properties.titled("one"), List.of(sheet));
    try (XSSFWorkbook workbook = reopened(book)) {
      String header = workbook.getSheetAt(0).getCTWorksheet().getHeaderFooter().getOddHeader();
      assertTrue(header.length() <= 255, header.length() + " characters: " + header);
      assertTrue(header.contains("…"));
    }
  }

  @Test
  void boxesAreDrawnAroundCellsThatWereNeverPut() throws IOException {
    try (XSSFWorkbook workbook = reopened(SampleBook.book())) {
      XSSFSheet round = workbook.getSheet(SampleBook.ROUND);
      XSSFCellStyle corner = round.getRow(16).getCell(1).getCellStyle();
      assertEquals("MEDIUM MEDIUM", corner.getBorderTop() + " " + corner.getBorderLeft());
      assertEquals("NONE NONE", corner.getBorderBottom() + " " + corner.getBorderRight());
    }
    assertEquals(Role.PLAIN, SampleBook.book().sheets().get(0).cell("C17").orElseThrow().role());
  }
}
