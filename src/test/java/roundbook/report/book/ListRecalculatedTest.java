package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Job;
import roundbook.job.OtherLog;
import roundbook.job.Price;
import roundbook.page.Book;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.report.LivePlans;
import roundbook.sheet.FormulaRules;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.sheet.SecondReader;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.stack.Hewn;
import roundbook.units.Length;

/**
 * The whole crew workbook as a spreadsheet program outside the project computes it, and as a second
 * reader reads it.
 */
public class ListRecalculatedTest {
  private static final double NANOMETRES = 2e-7;
  private static final List<String> FOLLOWING =
      List.of("Start!", "Hewing!", "Tags!", "Story pole!");

  @TempDir Path folder;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  private Path written(String name, Book book) throws Exception {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    return file;
  }

  private static Book book(Plan plan) {
    return CrewBook.of(LivePlans.context(plan));
  }

  private static Plan thick(int rounds) {
    return LivePlans.thick(
        PlanFixtures.inches().plan(rounds),
        Length.ofInches(6),
        Length.ofInches(7),
        Length.ofInches(6),
        Length.ofInches(8));
  }

  static Stream<Arguments> plans() {
    return Stream.of(
        Arguments.of("inches", PlanFixtures.inches().withOpenings().plan(4)),
        Arguments.of("millimetres", PlanFixtures.metric().withOpenings().plan(3)),
        Arguments.of("one round", PlanFixtures.inches().plan(1)),
        Arguments.of("too few logs", PlanFixtures.inches().wanting(5).plan(2)),
        Arguments.of("thick walls", thick(2)),
        Arguments.of("prices and other logs", priced("0.605")));
  }

  /** A plan whose logs are priced by three bases, and that wants joists. */
  private static Plan priced(String doyle) {
    Plan plan = PlanFixtures.inches().plan(2);
    List<Price> prices =
        List.of(
            price(Price.Basis.DOYLE, doyle),
            price(Price.Basis.TONNE, "91.15"),
            price(Price.Basis.CUBIC_METRE, "77.77"));
    OtherLog joist =
        new OtherLog(
            "joist",
            3,
            Length.ofInches(192),
            Length.ofInches(11),
            Length.ZERO,
            Optional.empty(),
            "",
            CellRef.ofFile(""));
    Job job = plan.job().withPrices(prices).withOthers(List.of(joist));
    return Planner.of(job, plan.choice());
  }

  private static Price price(Price.Basis basis, String money) {
    return new Price(basis, new BigDecimal(money), Set.of(), Optional.empty());
  }

  /**
   * Every cost by a price follows it to the cent, those of the round, the length and the wall too.
   */
  @Test
  void costsFollowTheirPrice() throws Exception {
    Path before = written("before.xlsx", book(priced("0.605")));
    Path changed = recalculated(before, Map.of("Selling_1_price", 0.735));
    Path after = written("after.xlsx", book(priced("0.735")));
    assertTrue(costs(after, before).size() >= 6, "nothing was to follow");
    assertEquals(List.of(), costs(after, changed));
  }

  private static List<String> costs(Path wanted, Path found) throws Exception {
    return LibreOffice.compare(wanted, found, 1e-9).differences().stream()
        .filter(line -> line.startsWith("Materials!"))
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void storedValuesAreTheOnesItComputes(String name, Plan plan) throws Exception {
    Book book = book(plan);
    Path file = written("plan.xlsx", book);
    assertEquals(List.of(), SecondReader.differences(book, file));
    assertEquals(List.of(), FormulaRules.broken(file));
    LibreOffice.Comparison found =
        LibreOffice.compare(file, recalculated(file, Map.of()), NANOMETRES);
    assertEquals(List.of(), found.differences());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void listsFollowWhatIsMeasured(String name, Plan plan) throws Exception {
    long seed = 21;
    Map<String, Hewn> mids = LivePlans.mids(plan, seed);
    Path planned = written("plan.xlsx", book(plan));
    Path typed = recalculated(planned, LivePlans.typed(plan, mids));
    Path hewn = written("hewn.xlsx", book(LivePlans.hewn(plan, mids)));
    assertTrue(!following(hewn, planned).isEmpty(), "nothing was to follow, seed " + seed);
    assertEquals(List.of(), following(hewn, typed), "seed " + seed);
  }

  /** What must be settled first has rows of its own on Start, which fall away once measured. */
  private static List<String> following(Path wanted, Path found) throws Exception {
    return LibreOffice.compare(wanted, found, NANOMETRES, Set.of("Start")).differences().stream()
        .filter(line -> FOLLOWING.stream().anyMatch(line::startsWith))
        .toList();
  }

  @Test
  void listsFollowTheLogUsedInstead() throws Exception {
    Plan plan = PlanFixtures.inches().plan(2);
    String spare = plan.choice().unused().get(0).tag();
    Path file = written("plan.xlsx", book(plan));
    Path typed = recalculated(file, Map.of("Used_2_N", spare));
    Path wanted = written("wanted.xlsx", book(LivePlans.used(plan, 2, "N", spare)));
    assertEquals(List.of(), following(wanted, typed).stream().filter(this::ofTags).toList());
    assertTrue(following(wanted, file).stream().anyMatch(this::ofTags));
  }

  private boolean ofTags(String line) {
    return line.startsWith("Tags!");
  }

  @Test
  void diagonalsAreCompared() throws Exception {
    Path file = written("plan.xlsx", book(PlanFixtures.inches().plan(1)));
    Path typed =
        recalculated(file, Map.of("Diagonal_outside_1", 360.5, "Diagonal_outside_2", 360.125));
    assertEquals(0.375, LibreOffice.value(typed, "Diagonal_outside_difference"));
    assertEquals("", LibreOffice.value(typed, "Diagonal_inside_difference"));
  }
}
