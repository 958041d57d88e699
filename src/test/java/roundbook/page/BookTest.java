package roundbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.page.PageSetup.PageKind;

class BookTest {
  private static final PageSetup PAGE = PageSetup.of(PageKind.TABLE, PageSetup.Paper.A4);

  private static SheetBuilder sheet(String name) {
    return new SheetBuilder(name, PAGE);
  }

  private static Book book(SheetBuilder... sheets) {
    return Book.of(
        Book.Properties.titled("test"), List.of(sheets).stream().map(SheetBuilder::build).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "Measured_1_N, true",
    "_1, true",
    "Größe, true",
    "Round.01, true",
    "R, false",
    "c, false",
    "R1C1, false",
    "RC, false",
    "A1, false",
    "xfd12, false",
    "ABCD1, true",
    "1a, false",
    "a b, false",
    "a-b, false",
    "TRUE, false",
    "'', false"
  })
  void namesAreTheOnesThatSpreadsheetsAccept(String name, boolean accepted) {
    assertEquals(accepted, Book.isName(name));
  }

  @ParameterizedTest
  @CsvSource({
    "Measured, 1, N, Measured_1_N",
    "Measured, 2, North wall, Measured_2_North_wall",
    "R, '', '', R__",
    "1, x, y, _1_x_y",
    "A1, '', '', A1__"
  })
  void partsMakeAName(String first, String second, String third, String name) {
    assertEquals(name, Book.nameOf(first, second, third));
    assertTrue(Book.isName(name));
  }

  @Test
  void aLongNameIsCutAndStaysAName() {
    assertTrue(Book.isName(Book.nameOf("x".repeat(400))));
    assertEquals("_A1", Book.nameOf("A1"));
  }

  @Test
  void aNameGivenTwiceIsRefusedWhateverItsCase() {
    SheetBuilder one = sheet("One").put("A1", Cell.number(1).named("Gap"));
    SheetBuilder two = sheet("Two").put("A1", Cell.number(1).named("gap"));
    assertThrows(IllegalArgumentException.class, () -> book(one, two));
    Book alone = book(one);
    assertThrows(IllegalArgumentException.class, () -> alone.names(Map.of("GAP", "1")));
  }

  @Test
  void sheetsWithTheSameNameAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> book(sheet("One"), sheet("ONE")));
  }

  @Test
  void aLinkMustLeadToASheet() {
    SheetBuilder from = sheet("One").put("A1", Cell.text("go").linkTo("Two"));
    assertThrows(IllegalArgumentException.class, () -> book(from));
    assertEquals(2, book(from, sheet("Two")).sheets().size());
    assertEquals(3, book(from, sheet("Two")).plus(sheet("Three").build()).sheets().size());
  }

  @ParameterizedTest
  @CsvSource({
    "Round 01, Round 01",
    "a/b:c*d?e, a b c d e",
    "[x], x",
    "'''quoted''', quoted",
    "'', Sheet",
    "'[]', Sheet",
    "a name that is far too long for any tab of a sheet, a name that is far too long for"
  })
  void anyTextMakesASheetName(String wanted, String name) {
    assertEquals(name, Sheet.safeName(wanted));
    assertEquals(name, Sheet.safeName(name));
  }

  @Test
  void propertiesGrow() {
    Book.Properties properties = Book.Properties.titled("t").with("a", "1").with("b", "2");
    assertEquals(Map.of("a", "1", "b", "2"), properties.custom());
  }
}
