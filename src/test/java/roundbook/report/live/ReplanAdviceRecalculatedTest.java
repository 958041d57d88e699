package roundbook.report.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell.Formula;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.report.LivePlans;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;

/** A round's page asks for a new plan only where one pays, and else says that none is needed. */
public class ReplanAdviceRecalculatedTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(3);
  @TempDir Path folder;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  private String said(int round, Map<String, ?> typed) throws Exception {
    Book book = LivePlans.book(PLAN);
    Map<String, Object> all = new TreeMap<>(typed);
    for (String corner : PLAN.job().building().corners()) {
      all.put("Reading_" + round + "_" + corner, PLAN.stack().levelHeight(round).inches());
    }
    Path written = LivePlans.written(folder.resolve("plan.xlsx"), book);
    return String.valueOf(LibreOffice.value(recalculated(written, all), place(book, round)));
  }

  private static String place(Book book, int round) {
    Sheet sheet =
        book.sheets().stream()
            .filter(each -> each.name().equals("Round 0" + round))
            .findFirst()
            .orElseThrow();
    for (var row : sheet.rows().entrySet()) {
      for (var cell : row.getValue().entrySet()) {
        if (cell.getValue().value() instanceof Formula formula
            && formula.expression().contains("No top need be pared")) {
          return Area.cell(row.getKey(), cell.getKey()).on(sheet.name());
        }
      }
    }
    throw new AssertionError("no line says what is to be done");
  }

  private static int row(int round, String wall) {
    return PLAN.round(round).stream()
        .filter(piece -> piece.placed().wall().name().equals(wall))
        .map(piece -> piece.placed().first().piece().log().origin().row())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingIsAskedWhereNothingPays() throws Exception {
    String level = said(1, Map.of());
    assertTrue(
        level.endsWith(
            "No need to replan: go on with round 2, whose page follows what is" + " typed."),
        level);
    int spare = PLAN.choice().unused().get(0).origin().row();
    assertEquals(level, said(1, Map.of("Lost_" + spare, "x")), "a lost spare moves nothing");
    assertFalse(said(3, Map.of()).contains("eplan"), "nothing lies over the last round");
  }

  @Test
  void eachReasonIsNamed() throws Exception {
    String lost = said(1, Map.of("Lost_" + row(3, "N"), "x"));
    assertTrue(lost.endsWith("▲ REPLAN before round 2: a log that has a place is lost;"), lost);
    String spare = PLAN.choice().unused().get(0).tag();
    String used = said(1, Map.of("Used_2_E", spare));
    assertTrue(used.contains("another log than planned is used;"), used);
    String yard = said(2, Map.of("Hewn_mid_" + row(3, "W"), 12.5));
    assertTrue(yard.endsWith("▲ REPLAN before round 3: logs were measured in the yard;"), yard);
    String gap = said(1, Map.of("Measured_2_S", 9.0));
    assertTrue(gap.contains("a gap above comes to leave its limits;"), gap);
  }
}
