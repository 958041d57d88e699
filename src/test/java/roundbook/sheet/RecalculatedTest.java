package roundbook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.SheetBuilder;
import roundbook.sheet.write.BookWriterTest;

/** What other programs reckon of a written workbook. */
class RecalculatedTest {
  @TempDir Path folder;
  Path book;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  @BeforeEach
  void write() throws Exception {
    book = folder.resolve("book.xlsx");
    Files.write(book, BookWriterTest.written(SampleBook.book()));
  }

  @Test
  void storedValuesAreTheOnesItComputes() throws Exception {
    LibreOffice.Comparison comparison = LibreOffice.compare(book, recalculated(book, Map.of()));
    assertEquals(List.of(), comparison.differences());
    assertEquals(90, comparison.formulas());
  }

  @Test
  void aWrongStoredValueIsNoticed() throws Exception {
    PageSetup page = PageSetup.of(PageKind.TABLE, PageSetup.Paper.A4);
    Book wrong =
        Book.of(
            Book.Properties.titled("wrong"),
            List.of(
                new SheetBuilder("Only", page)
                    .put("A1", Cell.formula("1+1", 3))
                    .put("A2", Cell.formula("\"a\"&\"b\"", "ab"))
                    .build()));
    Files.write(book, BookWriterTest.written(wrong));
    LibreOffice.Comparison comparison = LibreOffice.compare(book, recalculated(book, Map.of()));
    assertEquals(List.of("Only!A1: stored 3.0, now 2.0 by 1+1"), comparison.differences());
  }

  @Test
  void typedValuesAreFollowed() throws Exception {
    Path after = recalculated(book, Map.of("Measured_1_N", 0.25, "Round 01!D9", 9));
    assertEquals(0.25, LibreOffice.value(after, "Round 01!G8"));
    assertEquals("▼ low", LibreOffice.value(after, "Round 01!F8"));
    assertEquals("ok", LibreOffice.value(after, "Round 01!F9"));
    assertEquals("", LibreOffice.value(after, "Round 01!F10"));
    List<String> differences = LibreOffice.compare(book, after).differences();
    assertEquals(6, differences.size(), differences.toString());
  }
}
