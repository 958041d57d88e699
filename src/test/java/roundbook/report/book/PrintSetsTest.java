package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.page.Book;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.replan.Replan;
import roundbook.replan.Replanner;
import roundbook.report.ListFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.PrintSet;
import roundbook.report.frame.PrintSet.Kind;
import roundbook.sheet.LibreOffice;
import roundbook.site.CrewWorkbook;

/** What is printed for whom, on which pages. */
class PrintSetsTest {
  private static final Effort FEW = Effort.usual(1).withMoves(300);

  @TempDir private Path folder;

  private static List<Sheet> seen(CrewContext context) {
    return CrewBook.of(context).sheets().stream().filter(sheet -> !sheet.view().hidden()).toList();
  }

  private static int pages(List<Sheet> sheets) {
    return sheets.stream().mapToInt(sheet -> PrintedPages.of(sheet).count()).sum();
  }

  private static Map<Kind, PrintSet> sets(CrewContext context) {
    Map<Kind, PrintSet> sets = new HashMap<>();
    List<Sheet> seen = seen(context);
    int start = PrintedPages.of(seen.get(0)).count();
    PrintSets.of(context, start, seen.subList(1, seen.size()))
        .forEach(set -> sets.put(set.kind(), set));
    return sets;
  }

  private static List<Integer> numbers(PrintSet set) {
    List<Integer> numbers = new ArrayList<>();
    for (String part : set.numbers().split(", ")) {
      String[] ends = part.split("–");
      IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]))
          .forEach(numbers::add);
    }
    return numbers;
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theCrewHasFewPagesAndASheetForEachRound(boolean metric) {
    CrewContext context = metric ? ListFixtures.metric(8) : ListFixtures.inches(8);
    int crew = sets(context).get(Kind.CREW).pages();
    assertTrue(crew <= 18, "pages for the crew: " + crew);
    for (Sheet sheet : seen(context)) {
      boolean round = sheet.id().startsWith("round_");
      assertTrue(!round || PrintedPages.of(sheet).count() == 1, sheet.name());
    }
  }

  @Test
  void everyPageIsInOneSetOrComesLater() {
    CrewContext context = ListFixtures.inches(8);
    TreeSet<Integer> told = new TreeSet<>();
    for (PrintSet set : sets(context).values()) {
      numbers(set).forEach(page -> assertTrue(told.add(page), "twice: " + page));
      assertEquals(set.pages(), numbers(set).size());
    }
    // Rounds 3 to 8 are not in hand yet, nor are three of the four pages of tags.
    assertEquals(pages(seen(context)) - 6 - 3, told.size());
  }

  @Test
  void startNamesTheNumbers() {
    CrewContext context = ListFixtures.inches(8);
    List<String> texts = ListFixtures.texts(seen(context).get(0));
    sets(context).values().forEach(set -> assertTrue(texts.contains(set.numbers()), set.numbers()));
  }

  @Test
  void roundsThatAreCutAreNotPrintedForTheCrew() {
    Plan plan = PlanFixtures.inches().plan(8);
    Map<String, String> typed = Map.of("Cut_1", "x", "Cut_2", "x", "Cut_3", "x");
    CrewContext context = LivePlans.context(replanned(plan, typed).plan());
    List<String> sheets = List.of(sets(context).get(Kind.CREW).sheets().split(", "));
    assertTrue(sheets.containsAll(List.of("Round 04", "Round 05", "Tags")), sheets.toString());
    assertTrue(sheets.stream().noneMatch("Template"::equals), sheets.toString());
    assertEquals(2, sheets.stream().filter(name -> name.startsWith("Round")).count());
  }

  /** Two logs of eight rounds are lost, three rounds are cut. */
  @Test
  void aLossIsFewPagesToPrintAgain() {
    Plan plan = PlanFixtures.inches().plan(8);
    Map<String, String> typed = new HashMap<>();
    IntStream.rangeClosed(1, 3).forEach(round -> typed.put("Cut_" + round, "x"));
    for (int round : new int[] {5, 7}) {
      int row = plan.round(round).get(1).placed().first().piece().log().origin().row();
      typed.put("Lost_" + row, "x");
    }
    var made = replanned(plan, typed);
    CrewContext context = LivePlans.context(made.plan());
    List<String> names = ChangedPages.of(made.before(), context);
    assertTrue(names.contains("Start") && names.stream().anyMatch(n -> n.startsWith("Tags ")));
    assertTrue(names.stream().noneMatch(n -> n.matches("Round 0[123]")), names.toString());
    int pages = 0;
    for (Sheet sheet : seen(context)) {
      boolean named = names.contains(sheet.name());
      pages += named ? PrintedPages.of(sheet).count() : 0;
    }
    assertTrue(pages + 1 <= 10, pages + " pages and tags: " + names);
  }

  private static Replan replanned(Plan plan, Map<String, String> typed) {
    return Replanner.replan(CrewWorkbook.of(plan).type(typed).report(), FEW).value().orElseThrow();
  }

  @Test
  void aPageTurnsWhereTheNextRowDoesNotFit() {
    SheetBuilder sheet = new SheetBuilder("x", PageSetup.of(PageKind.TABLE, Paper.LETTER));
    sheet.widths(20);
    for (int row = 1; row <= 14; row++) {
      sheet.row(row).height(100);
    }
    // Letter less 1.4 in of margins is 691 points: six rows.
    assertEquals(List.of(1, 7, 13), PrintedPages.of(sheet.build()).firstRows());
    sheet.breakAfter(2);
    assertEquals(List.of(1, 3, 9), PrintedPages.of(sheet.build()).firstRows());
    sheet.printTitles(1, 1);
    assertEquals(List.of(1, 3, 8, 13), PrintedPages.of(sheet.build()).firstRows());
    // Twice as wide as the paper it prints at half its size.
    sheet.widths(2 * 7.4 * 96 / 7);
    assertEquals(List.of(1, 3), PrintedPages.of(sheet.build()).firstRows());
  }

  /** The numbers of the pages are those that a spreadsheet program prints. */
  @Tag("long")
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aSpreadsheetProgramPrintsAsManyPages(boolean metric) throws Exception {
    LibreOffice.assumePresent();
    CrewContext context = metric ? ListFixtures.metric(8) : ListFixtures.inches(8);
    Book book = CrewBook.of(context);
    Path printed = LibreOffice.print(LivePlans.written(folder.resolve("book.xlsx"), book));
    String text = Files.readString(printed, StandardCharsets.ISO_8859_1);
    long pages = Pattern.compile("/Type\\s*/Page\\b").matcher(text).results().count();
    assertEquals(pages(seen(context)), pages);
  }
}
