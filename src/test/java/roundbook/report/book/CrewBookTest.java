package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PlanFixtures;
import roundbook.report.ListFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;

/** The whole workbook: its sheets in order, and what holds of all of them. */
class CrewBookTest {
  static Stream<CrewContext> contexts() {
    return ListFixtures.several();
  }

  private static List<Sheet> seen(Book book) {
    return book.sheets().stream().filter(sheet -> !sheet.view().hidden()).toList();
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void sheetsStandInReadingOrder(CrewContext context) {
    List<String> expected = new ArrayList<>(List.of("Start", "Proof", "Notch chart"));
    IntStream.rangeClosed(1, context.plan().rounds())
        .forEach(round -> expected.add(String.format(Locale.ROOT, "Round %02d", round)));
    expected.addAll(List.of("Wall N", "Wall E", "Wall S", "Wall W", "Levels"));
    expected.addAll(List.of("Hewing", "Log list", "Spares"));
    expected.addAll(List.of("Openings", "Heights"));
    expected.addAll(List.of("Materials", "Chinking"));
    if (!context.plan().order().isEmpty()) {
      expected.add("Order");
    }
    expected.addAll(List.of("Lifting", "Tags", "Template", "Story pole", "Problems", "Settings"));
    assertEquals(expected, seen(CrewBook.of(context)).stream().map(Sheet::name).toList());
  }

  @Test
  void onlyRoundsAreNamedRound() {
    Book book = CrewBook.of(ListFixtures.inches(14));
    List<String> rounds =
        book.sheets().stream().map(Sheet::name).filter(name -> name.startsWith("Round")).toList();
    assertEquals(14, rounds.size());
    assertTrue(rounds.stream().allMatch(name -> name.matches("Round \\d\\d")), rounds.toString());
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyPageHasJobAndRevisionAndItsNumber(CrewContext context) {
    for (Sheet sheet : seen(CrewBook.of(context))) {
      PageSetup page = sheet.page();
      String header = page.header().toString();
      assertTrue(header.contains("Test cabin") && header.contains("REV 2"), sheet.name());
      assertTrue(page.footer().toString().contains("{page}"), sheet.name());
      assertTrue(page.footer().toString().contains("{pages}"), sheet.name());
      assertEquals(context.rules().metric() ? Paper.A4 : Paper.LETTER, page.paper());
    }
  }

  @Test
  void fullSizePagesAreNeverScaled() {
    List<String> fullSize =
        seen(CrewBook.of(ListFixtures.inches(2))).stream()
            .filter(sheet -> sheet.page().fit().isFullSize())
            .map(Sheet::name)
            .toList();
    assertEquals(List.of("Template"), fullSize);
  }

  @Test
  void textOfTheInputIsNeverAFormula() {
    CrewContext context =
        ListFixtures.of(
            PlanFixtures.inches()
                .set(Setting.JOB_NAME, "=HYPERLINK(\"x\")")
                .withOpenings()
                .plan(4));
    for (Sheet sheet : CrewBook.of(context).sheets()) {
      sheet.rows().values().stream()
          .flatMap(row -> row.values().stream())
          .filter(cell -> cell.value() instanceof Cell.Formula)
          .map(cell -> ((Cell.Formula) cell.value()).expression())
          .forEach(
              formula -> {
                assertFalse(formula.contains("HYPERLINK"), sheet.name());
                assertFalse(formula.contains("1+1"), sheet.name());
              });
    }
    Sheet logs = LivePlans.list(context, Tab.LOG_LIST);
    Cell remark =
        logs.rows().values().stream()
            .flatMap(row -> row.values().stream())
            .filter(cell -> ListFixtures.shown(cell).equals("=1+1"))
            .findFirst()
            .orElseThrow();
    assertTrue(remark.value() instanceof Cell.Text);
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void noWordIsLeftUnfilled(CrewContext context) {
    for (Sheet sheet : CrewBook.of(context).sheets()) {
      for (String text : ListFixtures.texts(sheet)) {
        assertFalse(text.matches("(?s).*\\{\\d}.*"), sheet.name() + ": " + text);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void tablesOfListsHaveNoBlankRows(CrewContext context) {
    for (Tab tab : List.of(Tab.HEWING, Tab.LOG_LIST, Tab.PROBLEMS, Tab.SETTINGS)) {
      Sheet sheet = LivePlans.list(context, tab);
      int last = sheet.rows().lastKey();
      assertEquals(last, sheet.rows().size(), sheet.name());
    }
  }

  @Test
  void propertiesSayWhatItIs() {
    Book.Properties properties = CrewBook.of(ListFixtures.inches(2)).properties();
    assertEquals("Test cabin - REV 2", properties.title());
    assertEquals("0.0-test", properties.custom().get(Book.CREW_PROPERTY));
  }

  @Test
  void aJobWithoutANameTakesThatOfItsFile() {
    CrewContext context = ListFixtures.of(PlanFixtures.inches().set(Setting.JOB_NAME, " ").plan(1));
    assertEquals("cabin", context.jobName());
  }

  @Test
  void aLongNameIsCutShortOverThePage() {
    String name = "n".repeat(300);
    CrewContext context =
        ListFixtures.of(PlanFixtures.inches().set(Setting.JOB_NAME, name).plan(1));
    String header = context.page(PageKind.TABLE).header().left();
    assertEquals(60, header.length());
    assertTrue(header.endsWith("…"));
    assertEquals(name, context.jobName());
  }

  @Test
  void aProblemOfInputAndPlanIsListedOnce() {
    CrewContext context = ListFixtures.inches(4);
    CrewContext twice = CrewContext.of(context.plan(), context.plan().problems(), context.issue());
    assertEquals(context.plan().problems(), twice.problems());
  }

  @Test
  void cautionsStandOnStartAndLifting() {
    CrewContext context = ListFixtures.inches(2);
    for (String tab : List.of("Start", "Lifting")) {
      Sheet sheet =
          CrewBook.of(context).sheets().stream()
              .filter(each -> each.name().equals(tab))
              .findFirst()
              .orElseThrow();
      String cautions =
          sheet.rows().values().stream()
              .flatMap(row -> row.values().stream())
              .filter(cell -> cell.role() == Role.CAUTION)
              .map(ListFixtures::shown)
              .reduce("", String::concat);
      for (String word :
          List.of(
              "estimates",
              "capacity",
              "Two slings",
              "tag line",
              "under or beside a hanging log",
              "protective gear",
              "braced before anyone climbs",
              "no structural design",
              "Local codes",
              "engineers")) {
        assertTrue(cautions.contains(word), tab + ": " + word);
      }
    }
  }
}
