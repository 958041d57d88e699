package roundbook.report.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedSet;
import org.junit.jupiter.api.Test;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.ListFixtures;

/** Where pages of a list turn: before a block that does not fit, however high it turned out. */
class ListSheetTest {
  private static final CrewContext CONTEXT = ListFixtures.inches(2);
  private static final int PAGE_ROWS = 40;

  private static ListSheet list() {
    return new ListSheet(CONTEXT, Tab.MATERIALS, CONTEXT.page(PageKind.TABLE), 45, 45);
  }

  private static void rows(ListSheet list, int count) {
    for (int row = 0; row < count; row++) {
      list.row(List.of(Cell.text("a").role(Role.BODY), Cell.text("b").role(Role.BODY)));
    }
  }

  private static SortedSet<Integer> breaks(Sheet sheet) {
    return sheet.print().breaks();
  }

  @Test
  void aBlockThatFitsOnNoRestOfThePageBeginsTheNext() {
    ListSheet list = list();
    rows(list, PAGE_ROWS - 8);
    int heading = list.heading("block").next() - 1;
    rows(list, 20);
    assertEquals(List.of(heading - 1), List.copyOf(breaks(list.build())));
  }

  @Test
  void aBlockThatFitsStaysAndTheOneAfterItTurns() {
    ListSheet list = list();
    rows(list, 10);
    rows(list.heading("first"), 20);
    int second = list.heading("second").next() - 1;
    rows(list, 30);
    assertEquals(List.of(second - 1), List.copyOf(breaks(list.build())));
  }

  /** A long word-wrapped text counts as high as it stands. */
  @Test
  void aTextCountsByItsLines() {
    ListSheet list = list();
    rows(list, 20);
    list.heading("block").text(Role.PLAIN, "word ".repeat(640));
    assertEquals(1, breaks(list.build()).size());
  }

  @Test
  void aBlockHigherThanAPageBeginsWhereAThirdOfOneIsFree() {
    ListSheet early = list();
    rows(early, 10);
    rows(early.heading("long"), 2 * PAGE_ROWS);
    assertTrue(breaks(early.build()).isEmpty());
    ListSheet late = list();
    rows(late, PAGE_ROWS - 4);
    rows(late.heading("long"), 2 * PAGE_ROWS - 14);
    assertEquals(1, breaks(late.build()).size());
  }

  /** A little over one page is made smaller instead. */
  @Test
  void nothingTurnsOnASheetThatIsScaledToOnePage() {
    ListSheet list = list();
    rows(list, PAGE_ROWS - 10);
    rows(list.heading("block"), 12);
    Sheet sheet = list.build();
    assertTrue(breaks(sheet).isEmpty());
    assertEquals(1, sheet.page().fit().tall());
  }

  @Test
  void whatIsForTheScreenOnlyTurnsNothing() {
    ListSheet list = list();
    rows(list, PAGE_ROWS - 8);
    list.endPrint();
    rows(list.heading("block"), 30);
    assertTrue(breaks(list.build()).isEmpty());
  }
}
