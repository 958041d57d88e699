package roundbook.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Setting;
import roundbook.page.Sheet;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.PlanFixtures;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.PieceWood;
import roundbook.takeoff.ShortStock;
import roundbook.units.Length;
import roundbook.wood.RoundProfile;
import roundbook.wood.SawnLog;

/** Short logs beside an opening stand on every list in place of the long one that they free. */
class ShortRowsTest {
  /** The short logs of the fixture are thin: wide gaps are allowed so that they serve. */
  private static final CrewContext CONTEXT =
      ListFixtures.of(
          PlanFixtures.inches().set(Setting.GAP_MOST, Length.ofInches(6)).withOpenings().plan(6));

  private static final ShortStock STOCK = CONTEXT.plan().takeoff().shortStock().get(0);

  static Stream<SheetMaker> lists() {
    return Stream.of(
        CutListSheet::sheets, HewingSheet::sheets, LiftingSheet::sheets, TagsSheet::sheets);
  }

  @ParameterizedTest
  @MethodSource("lists")
  void theShortLogsAreListedAndTheFreedOneIsNot(SheetMaker maker) {
    List<String> texts = ListFixtures.texts(ListFixtures.only(maker.sheets(CONTEXT)));
    STOCK.logs().forEach(log -> assertTrue(texts.contains(log.tag()), log.tag()));
    assertFalse(texts.contains(STOCK.freed().piece().log().tag()));
  }

  @Test
  void theRoundAndItsWallSayWhatToCutInstead() {
    int round = STOCK.freed().round();
    Sheet page = RoundSheets.of(CONTEXT).get(round - 1);
    String said = ShortRows.said(CONTEXT, STOCK);
    assertTrue(ListFixtures.texts(page).stream().anyMatch(text -> text.contains(said)), said);
    int wall = CONTEXT.plan().job().building().walls().indexOf(STOCK.freed().wall());
    assertTrue(ListFixtures.texts(WallSheets.of(CONTEXT).get(wall)).contains(said));
    for (ShortStock.Part part : List.of(STOCK.left(), STOCK.right())) {
      assertTrue(said.contains(CONTEXT.formats().feetInches(part.length())), said);
    }
  }

  /** The window is 80 to 120 in from the corner of a wall of 216; logs reach 3 in past it. */
  @Test
  void shouldersLieAtTheCornerEnd() {
    assertEquals(83, STOCK.left().length().inches());
    assertEquals(99, STOCK.right().length().inches());
    for (ShortStock.Part part : List.of(STOCK.left(), STOCK.right())) {
      double shoulder = part.shoulder(Length.ofInches(9)).inches();
      assertEquals(part.buttOut() ? 9 : part.length().inches() - 9, shoulder);
    }
  }

  @Test
  void theLongLogIsFreeAndCountedAsOnHand() {
    LogUse freed =
        CONTEXT.plan().uses().stream()
            .filter(use -> use.log().equals(STOCK.freed().piece().log()))
            .findFirst()
            .orElseThrow();
    assertTrue(freed.note().startsWith("free: short stock"), freed.note());
    List<PlacedLog> standing =
        CONTEXT.plan().takeoff().standing().stream().map(PieceWood::log).toList();
    assertFalse(standing.contains(STOCK.freed()));
    int stock = CONTEXT.plan().takeoff().shortStock().size();
    assertEquals(24 + stock, standing.size());
  }

  /**
   * A finished short log is its sawn part past the shoulder and one neck; the neck is {@code T (T +
   * o) ((D + g) / 2 + s o / 2)}, by hand for walls 6 in thick, 3 in past the corner, 1 in 3.
   */
  @Test
  void theFinishedWoodIsTheSawnPartAndOneNeck() {
    double size =
        CONTEXT.plan().stack().courses().get(STOCK.freed().round() - 1).notch().size().inches();
    double neck = 6 * 9 * ((size + 1) / 2 + 0.5);
    for (int side = 0; side < 2; side++) {
      PieceWood wood = CONTEXT.plan().takeoff().beside().get(side);
      boolean out = (side == 0 ? STOCK.left() : STOCK.right()).buttOut();
      RoundProfile profile = RoundProfile.inchesOf(wood.log().piece());
      double from = out ? 9 : 0;
      RoundProfile body = profile.between(from, from + profile.length() - 9);
      double finished = new SawnLog(body, 6).volume() + neck;
      assertEquals(finished, wood.finished(), finished / 200);
    }
  }
}
