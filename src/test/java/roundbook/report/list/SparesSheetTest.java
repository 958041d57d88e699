package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.exchange.Exchanges;
import roundbook.exchange.Substitute;
import roundbook.page.PlainTable;
import roundbook.page.Sheet;
import roundbook.report.ListFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ExchangeWords;
import roundbook.report.table.PlainTables;

/** Spares, substitutes and reasons on the pages and in the tables are those of the plan. */
class SparesSheetTest {
  static List<CrewContext> contexts() {
    return List.of(ListFixtures.inches(4), ListFixtures.metric(4));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyPlacedLogHasARowAndEverySpareToo(CrewContext context) {
    Sheet sheet = ListFixtures.only(SparesSheet.sheets(context));
    List<String> texts = ListFixtures.texts(sheet);
    Exchanges exchanges = context.plan().exchanges();
    assertFalse(exchanges.spares().isEmpty());
    exchanges.spares().forEach(spare -> assertTrue(texts.contains(spare.log().tag())));
    for (int round = 1; round <= 4; round++) {
      assertEquals(4, ListFixtures.rowsFrom(sheet, "" + round).size());
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void theTableHoldsEverySubstitute(CrewContext context) {
    List<Substitute> best = context.plan().exchanges().substitutes();
    PlainTable table = table(context, "spares");
    assertEquals(best.size(), table.rows().size());
    for (int row = 0; row < best.size(); row++) {
      assertEquals(best.get(row).in().log().tag(), table.rows().get(row).get(3));
      String after = String.valueOf(best.get(row).effect().flagsAfter());
      assertEquals(after, table.rows().get(row).get(8));
    }
    assertEquals(4, table(context, "reasons").rows().size());
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void eachRoundSaysWhyInNumbersOfItsOwn(CrewContext context) {
    List<String> whys =
        List.of(1, 2, 3, 4).stream().map(round -> new ExchangeWords(context).why(round)).toList();
    assertEquals(4, whys.stream().distinct().count(), whys::toString);
    Cells cells = new Cells(context);
    context
        .plan()
        .exchanges()
        .reasons()
        .forEach(
            reason -> {
              String why = whys.get(reason.round() - 1);
              assertTrue(why.contains(cells.withUnit(reason.thick())), why);
              assertTrue(why.contains(cells.formats().mark(reason.thin())), why);
              reason.next().ifPresent(next -> assertTrue(why.contains(next.in()), why));
            });
    for (Sheet sheet : LivePlans.rounds(context)) {
      assertTrue(ListFixtures.texts(sheet).stream().anyMatch(text -> text.startsWith("Why ")));
    }
  }

  @Test
  void aSpareOnTheLogListSaysWhereItCouldStand() {
    CrewContext context = ListFixtures.inches(4);
    Sheet list = ListFixtures.only(LogListSheet.sheets(context));
    assertTrue(
        ListFixtures.texts(list).stream().anyMatch(text -> text.contains("could stand in N 1–4")));
  }

  private static PlainTable table(CrewContext context, String name) {
    return PlainTables.of(context).stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
