package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.plan.PlanFixtures;
import roundbook.report.ListFixtures;
import roundbook.report.frame.CrewContext;
import roundbook.sheet.FormulaRules;
import roundbook.sheet.LibreOffice;
import roundbook.sheet.SecondReader;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;

/** The crew workbook as a file: its size, what other programs read, what survives their saving. */
class WholeBookTest {
  private static final long MOST_BYTES = 2_000_000;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void fourteenRoundsAreSmallAndReadAlikeByAnotherReader(String language) throws Exception {
    Book book = book(14, language);
    Path file = written(book);
    assertTrue(Files.size(file) < MOST_BYTES, "bytes: " + Files.size(file));
    assertEquals(List.of(), SecondReader.differences(book, file));
    assertEquals(List.of(), FormulaRules.broken(file));
  }

  /** The list of 89 rounds and more to choose from was longer than a workbook holds as a text. */
  @Test
  @Tag("long")
  void asManyRoundsAsMayBeAskedForAreWritten() throws Exception {
    CrewContext context =
        CrewContext.of(
            PlanFixtures.inches().plan(200),
            List.of(),
            new CrewContext.Issue(1, "cabin.xlsx", "0.0-test", false));
    Book book = CrewBook.of(context);
    assertEquals(List.of(), SecondReader.differences(book, written(book)));
  }

  /** Programs find sheets by the ids among the names, whatever the tabs are called. */
  @Test
  void namesAreTheSameInEveryLanguage() throws Exception {
    assertEquals(names(written(book(2, "en"))), names(written(book(2, "de"))));
  }

  @Test
  @Tag("long")
  void everythingSurvivesAnotherProgram() throws Exception {
    LibreOffice.assumePresent();
    Path file = written(book(2, "de"));
    Path saved = LibreOffice.recalculate(file);
    try (XSSFWorkbook before = new XSSFWorkbook(Files.newInputStream(file));
        XSSFWorkbook after = new XSSFWorkbook(Files.newInputStream(saved))) {
      assertEquals(facts(before), facts(after));
    }
    assertEquals(names(file), names(saved));
  }

  /** Returns a line for each thing of each sheet that another program could lose. */
  private static List<String> facts(XSSFWorkbook book) {
    List<String> facts = new ArrayList<>();
    for (int index = 0; index < book.getNumberOfSheets(); index++) {
      XSSFSheet sheet = book.getSheetAt(index);
      String name = sheet.getSheetName();
      facts.add(name + " locked " + sheet.getProtect());
      facts.add(name + " hidden " + book.isSheetHidden(index));
      facts.add(name + " checks " + sheet.getDataValidations().size());
      facts.add(name + " titles " + sheet.getRepeatingRows());
      facts.add(name + " lying " + sheet.getPrintSetup().getLandscape());
      facts.add(name + " looks " + changing(sheet));
      facts.add(name + " area " + plain(book.getPrintArea(index)));
      facts.add(name + " pictures " + altTexts(sheet));
    }
    return facts;
  }

  private static boolean changing(XSSFSheet sheet) {
    return sheet.getSheetConditionalFormatting().getNumConditionalFormattings() > 0;
  }

  private static String plain(String reference) {
    return reference == null ? "" : reference.replaceAll("[$']", "");
  }

  private static List<String> altTexts(XSSFSheet sheet) {
    List<String> texts = new ArrayList<>();
    if (sheet.getDrawingPatriarch() != null) {
      for (XSSFShape shape : sheet.getDrawingPatriarch()) {
        if (shape instanceof XSSFPicture picture) {
          texts.add(picture.getCTPicture().getNvPicPr().getCNvPr().getDescr());
        }
      }
    }
    return texts;
  }

  private static TreeSet<String> names(Path file) throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      TreeSet<String> names = new TreeSet<>();
      book.getAllNames().stream()
          .map(Name::getNameName)
          .filter(name -> !name.startsWith("_"))
          .forEach(names::add);
      return names;
    }
  }

  private static Book book(int rounds, String language) {
    return CrewBook.of(
        ListFixtures.of(PlanFixtures.inches().set(Setting.LANGUAGE, language).plan(rounds)));
  }

  private Path written(Book book) throws Exception {
    Path file = Files.createTempFile(folder, "book", ".xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    return file;
  }
}
