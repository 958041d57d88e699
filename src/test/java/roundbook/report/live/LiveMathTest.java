package roundbook.report.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.SheetBuilder;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Printing and rounding by formula, against the program's own, in a program outside it. */
public class LiveMathTest {
  @TempDir Path folder;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  @Test
  void formulasPrintLengthsAsTheProgramDoes() throws Exception {
    SheetBuilder sheet = new SheetBuilder("Only", PageSetup.of(PageKind.TABLE, PageSetup.Paper.A4));
    for (long part : List.of(1L, 2L, 16L, 32L, 64L, 10L)) {
      Length step = Length.ofInchFraction(1, part);
      for (long count : List.of(0L, 1L, part - 1, part, 12 * part, 12 * part + 3, 295 * part + 5)) {
        add(sheet, LengthUnit.INCH, step, step.times(count));
      }
    }
    for (long count : List.of(0L, 7L, 76L, 7450L)) {
      add(sheet, LengthUnit.MILLIMETRE, Length.ofMillimetres(1), Length.ofMillimetres(count));
      add(sheet, LengthUnit.CENTIMETRE, Length.ofMillimetres(1), Length.ofMillimetres(count));
      LengthFormat comma =
          LengthFormat.forJob(LengthUnit.CENTIMETRE, Length.ofMillimetres(1)).withDecimalMark(',');
      add(sheet, new LiveMath(comma), Length.ofMillimetres(count));
    }
    Path file = folder.resolve("math.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      Book book = Book.of(Book.Properties.titled("math"), List.of(sheet.build()));
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    LibreOffice.Comparison found = LibreOffice.compare(file, recalculated(file, Map.of()));
    assertEquals(List.of(), found.differences());
    assertEquals(108, found.formulas());
  }

  @ParameterizedTest
  @CsvSource({
    "16, 4727, 24' 7 7/16\"",
    "16, 192, 1' 0\"",
    "16, 8, 0' 0 1/2\"",
    "10, 2955, 24' 7.5\""
  })
  void tapeDistancesReadAsOnATape(long parts, long count, String shown) {
    Length step = Length.ofInchFraction(1, parts);
    assertEquals(
        shown, new LiveMath(LengthFormat.forJob(LengthUnit.INCH, step)).tapeNow(step.times(count)));
  }

  private static void add(SheetBuilder sheet, LengthUnit unit, Length step, Length length) {
    add(sheet, new LiveMath(LengthFormat.forJob(unit, step)), length);
  }

  private static void add(SheetBuilder sheet, LiveMath math, Length length) {
    String value = "A" + sheet.nextRow().row();
    sheet.add(Cell.number(length.in(math.formats().unit())));
    sheet.add(Cell.formula(math.tape(value), math.tapeNow(length)));
    sheet.add(Cell.formula("\"\"&" + math.mark(value), math.markNow(length)));
  }

  @Test
  void tiesGoUpAsInTheProgram() throws Exception {
    SheetBuilder sheet = new SheetBuilder("Only", PageSetup.of(PageKind.TABLE, PageSetup.Paper.A4));
    Length half = Length.ofInchFraction(1, 2);
    List<Length> values = new ArrayList<>();
    for (int quarter = -3; quarter <= 60; quarter++) {
      values.add(Length.ofInchFraction(quarter, 4));
      values.add(Length.ofInchFraction(quarter, 4).minus(Length.ofNanometres(2)));
      values.add(Length.ofInchFraction(quarter, 4).plus(Length.ofNanometres(200)));
    }
    for (Length value : values) {
      String cell = "A" + sheet.nextRow().row();
      sheet.add(Cell.length(value, LengthUnit.INCH));
      String formula = LiveMath.rounded(cell, half, "0.5");
      sheet.add(Cell.formula(formula, value.roundedTo(half).inches()));
    }
    Path file = folder.resolve("ties.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      Book book = Book.of(Book.Properties.titled("ties"), List.of(sheet.build()));
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    LibreOffice.Comparison found = LibreOffice.compare(file, recalculated(file, Map.of()));
    assertEquals(List.of(), found.differences());
    assertEquals(values.size(), found.formulas());
  }
}
