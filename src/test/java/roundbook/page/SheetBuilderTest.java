package roundbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.page.PageSetup.PageKind;
import roundbook.units.Length;

class SheetBuilderTest {
  private static SheetBuilder sheet() {
    return new SheetBuilder("Logs", PageSetup.of(PageKind.TABLE, PageSetup.Paper.LETTER));
  }

  @Test
  void aTableIsFilledRowByRow() {
    Sheet sheet =
        sheet()
            .row(3)
            .height(20)
            .add(Cell.text("log"))
            .skip(1)
            .add(Cell.text("length"))
            .nextRow()
            .addAcross(2, Cell.text("wide"))
            .add(Cell.number(3))
            .build();
    assertEquals(Set.of(3, 4), sheet.rows().keySet());
    assertEquals(Optional.of(Cell.text("length")), sheet.cell("C3"));
    assertEquals(Optional.empty(), sheet.cell("B3"));
    assertEquals(Optional.of(Cell.number(3)), sheet.cell(4, 3));
    assertEquals(List.of(Area.of("A4:B4")), sheet.merges());
    assertEquals(20, sheet.heights().get(3));
  }

  @Test
  void mergedCellsAllHaveTheLooksOfTheFirst() {
    Sheet sheet = sheet().merge("B2:C3", Cell.text("x").role(Role.MARK)).build();
    assertEquals(Cell.blank(Role.MARK), sheet.cell("C3").orElseThrow());
    assertEquals(Cell.text("x").role(Role.MARK), sheet.cell("B2").orElseThrow());
    SheetBuilder again = sheet().merge("B2:C3", Cell.text("x"));
    assertThrows(IllegalArgumentException.class, () -> again.merge("C3:D4", Cell.text("y")));
  }

  @Test
  void aMergeOfOneCellIsACell() {
    assertTrue(sheet().merge("B2", Cell.text("x")).build().merges().isEmpty());
  }

  @Test
  void settingsKeepTheOthers() {
    Sheet sheet =
        sheet()
            .freeze(2, 1)
            .zoom(80)
            .unlocked()
            .hidden()
            .printTitles(1, 2)
            .printArea(Area.of("A1:D9"))
            .breakAfter(9)
            .breakAfter(5)
            .id("logs")
            .build();
    assertEquals(new Sheet.View(true, false, 2, 1, 80), sheet.view());
    assertEquals(Optional.of(Area.of("A1:D9")), sheet.print().area());
    assertEquals(2, sheet.print().lastTitleRow());
    assertEquals(List.of(5, 9), List.copyOf(sheet.print().breaks()));
    assertEquals("logs", sheet.id());
  }

  @Test
  void aBuiltSheetNoLongerChanges() {
    SheetBuilder builder = sheet().put("A1", Cell.number(1));
    Sheet sheet = builder.build();
    builder.put("A1", Cell.number(2)).put("B1", Cell.number(3));
    assertEquals(Optional.of(Cell.number(1)), sheet.cell("A1"));
    assertFalse(sheet.cell("B1").isPresent());
    assertThrows(UnsupportedOperationException.class, () -> sheet.rows().remove(1));
  }

  @Test
  void anAreaHasASizeOnPaper() {
    SheetBuilder builder = sheet().widths(96 / 7.0, 2 * 96 / 7.0).row(1).height(72).row(2);
    Figure.Size size = builder.height(36).sizeOf(Area.of("A1:B2"));
    assertEquals(Length.ofInches(3), size.width());
    assertEquals(Length.ofInchFraction(3, 2), size.height());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a/b", "a name that is far too long for any tab", "'x", "a:b"})
  void aNameThatNoTabCanHaveIsRefused(String name) {
    PageSetup page = PageSetup.of(PageKind.SITE, PageSetup.Paper.A4);
    assertThrows(IllegalArgumentException.class, () -> new SheetBuilder(name, page));
  }
}
