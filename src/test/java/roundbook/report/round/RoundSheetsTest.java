package roundbook.report.round;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.report.LivePlans;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.Tab;
import roundbook.stack.Course;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** What stands on the rounds' pages, against the plan they are made from. */
class RoundSheetsTest {
  static Stream<Arguments> plans() {
    return Stream.of(
        Arguments.of("inches", PlanFixtures.inches().plan(4)),
        Arguments.of("many rounds", PlanFixtures.inches().plan(14)),
        Arguments.of("millimetres", PlanFixtures.metric().plan(3)),
        Arguments.of(
            "thick",
            LivePlans.thick(
                PlanFixtures.inches().plan(3),
                Length.ofInches(6),
                Length.ofInches(7),
                Length.ofInches(8),
                Length.ofInches(7))));
  }

  private static Map<String, Cell> named(Book book) {
    Map<String, Cell> named = new TreeMap<>();
    cells(book.sheets()).stream()
        .filter(cell -> !cell.name().isEmpty())
        .forEach(cell -> named.put(cell.name(), cell));
    return named;
  }

  private static List<Cell> cells(List<Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> sheet.rows().values().stream())
        .flatMap(row -> row.values().stream())
        .toList();
  }

  /** The text or number that a cell shows without any calculation. */
  private static String shown(Cell cell) {
    Cell.Value value =
        cell.value() instanceof Cell.Formula formula ? formula.result() : cell.value();
    return value instanceof Cell.Text text
        ? text.text()
        : value instanceof Cell.Number number ? String.valueOf(number.number()) : "";
  }

  /** What comes off and what stays add up, as they are printed, to the raw length printed. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void printedLengthsAddUpToTheRawLength(String name, Plan plan) {
    LengthFormat format = LengthFormat.forJob(plan.job().rules().unit(), step(plan));
    Book book = CrewBook.of(LivePlans.context(plan));
    for (PiecePlan piece : plan.round(1)) {
      Piece cut = piece.placed().first().piece();
      Length sum =
          Stream.of(cut.cutOffButt(), cut.trimmed(), cut.fallsOff())
              .map(length -> length.roundedTo(step(plan)))
              .reduce(Length.ZERO, Length::plus);
      Sheet round =
          book.sheets().stream().filter(s -> s.id().equals(Tab.roundId(1))).findFirst().get();
      assertTrue(
          cells(List.of(round)).stream()
              .anyMatch(cell -> shown(cell).equals(format.feetInches(sum))),
          format.feetInches(sum));
    }
  }

  private static Length step(Plan plan) {
    return plan.job().rules().printStep();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void everyCellThatIsTypedInHasItsName(String name, Plan plan) {
    Set<String> wanted = new TreeSet<>(Set.of("Change_round"));
    for (var wall : plan.job().building().walls()) {
      wanted.add("Change_" + wall.name());
      for (int round = 1; round <= plan.rounds(); round++) {
        for (String kind :
            List.of(
                "Measured",
                "Measured_butt",
                "Measured_tip",
                "Used",
                "Lower_cut",
                "Upper_cut",
                "Cut")) {
          wanted.add(kind + "_" + round + "_" + wall.name());
        }
        for (String station : List.of("left", "middle", "right")) {
          if (round < plan.rounds()) {
            wanted.add("Gap_" + round + "_" + wall.name() + "_" + station);
          }
        }
      }
    }
    for (int round = 1; round <= plan.rounds(); round++) {
      wanted.add("Cut_" + round);
      for (String corner : plan.job().building().corners()) {
        if (round < plan.rounds()) {
          wanted.add("Reading_" + round + "_" + corner);
        }
        wanted.add("Reading_first_" + round + "_" + corner);
      }
    }
    wanted.add("Trial_offcut");
    for (var log : plan.job().logs()) {
      for (String box : List.of("Lost", "Hewn_mid", "Hewn_butt", "Hewn_tip")) {
        wanted.add(box + "_" + log.origin().row());
      }
    }
    Map<String, Cell> named = named(LivePlans.book(plan));
    Set<String> told = new TreeSet<>(named.keySet());
    told.removeIf(each -> !each.matches("(Lower_second|Pare)_\\d.*"));
    assertEquals(2 * plan.rounds() * plan.job().building().corners().size(), told.size());
    told.forEach(each -> assertFalse(named.remove(each).role().name().startsWith("TYPED_IN")));
    for (String corner : plan.job().building().corners()) {
      Cell last = named.remove("Reading_" + plan.rounds() + "_" + corner);
      assertEquals(Role.SHADED, last.role(), "nothing is seated on the last logs");
    }
    assertEquals(wanted, new TreeSet<>(named.keySet()));
    named.values().forEach(cell -> assertTrue(cell.role().name().startsWith("TYPED_IN")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void onlyRoundsAreNamedRound(String name, Plan plan) {
    List<String> rounds =
        CrewBook.of(LivePlans.context(plan)).sheets().stream()
            .map(Sheet::name)
            .filter(tab -> tab.startsWith("Round"))
            .toList();
    assertEquals(plan.rounds(), rounds.size());
    rounds.forEach(tab -> assertTrue(tab.matches("Round \\d\\d"), tab));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void thePageShowsTheMarksThatThePlanPrints(String name, Plan plan) {
    List<Sheet> sheets = LivePlans.rounds(LivePlans.context(plan));
    for (Course course : plan.choice().courses()) {
      List<Cell> cells = cells(List.of(sheets.get(course.round() - 1)));
      Set<Double> marks =
          cells.stream()
              .filter(cell -> cell.role().name().startsWith("MARK"))
              .filter(cell -> !cell.role().name().startsWith("MARK_NOTE"))
              .filter(cell -> cell.value() instanceof Cell.Formula)
              .map(cell -> Double.valueOf(shown(cell)))
              .collect(Collectors.toCollection(TreeSet::new));
      Set<Double> wanted = new TreeSet<>();
      wanted.add(number(plan, course.notch().upper()));
      wanted.add(number(plan, course.notch().lower()));
      List<Length> thick =
          plan.job().building().walls().stream().map(wall -> wall.thickness()).distinct().toList();
      if (thick.size() <= 2) {
        thick.forEach(each -> wanted.add(number(plan, course.notch().upperOutside(each))));
        thick.forEach(each -> wanted.add(number(plan, course.notch().lowerCorner(each))));
      } else {
        String all = texts(cells);
        thick.forEach(
            each ->
                assertTrue(
                    all.contains(formats(plan).mark(course.notch().upperOutside(each)) + " on ")));
      }
      assertEquals(wanted, marks, "round " + course.round());
    }
  }

  private static String texts(List<Cell> cells) {
    return cells.stream().map(RoundSheetsTest::shown).collect(Collectors.joining("\n"));
  }

  private static double number(Plan plan, Length length) {
    return length.in(plan.job().rules().unit());
  }

  private static LengthFormat formats(Plan plan) {
    return LengthFormat.forJob(plan.job().rules().unit(), plan.job().rules().printStep());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void eachLogHasItsRowWithItsDistances(String name, Plan plan) {
    List<Sheet> sheets = LivePlans.rounds(LivePlans.context(plan));
    for (PiecePlan piece : plan.pieces()) {
      Sheet sheet = sheets.get(piece.placed().round() - 1);
      String tag = piece.placed().first().piece().log().tag();
      List<String> row =
          sheet.rows().values().stream()
              .map(cells -> cells.values().stream().map(RoundSheetsTest::shown).toList())
              .filter(texts -> texts.contains(tag))
              .findFirst()
              .orElseThrow();
      List<String> wanted =
          List.of(
              piece.placed().wall().name(),
              "● " + piece.buttAt(),
              formats(plan).feetInches(piece.farShoulder()),
              formats(plan).feetInches(piece.placed().first().piece().trimmed()));
      assertTrue(row.containsAll(wanted), tag + ": " + row);
    }
  }

  @Test
  void theFirstAndLastRoundsSayWhatIsSpecial() {
    Plan plan = PlanFixtures.inches().plan(3);
    List<Sheet> sheets = LivePlans.rounds(LivePlans.context(plan));
    String first = texts(cells(List.of(sheets.get(0))));
    String step = formats(plan).mark(plan.stack().foundationStep());
    assertTrue(first.contains("N S: bed sawn flat at LOWER, all along"), first);
    assertTrue(first.contains("not held against sliding in along its axis"), first);
    assertTrue(first.contains("E W: foundation " + step + " in higher"), first);
    String last = texts(cells(List.of(sheets.get(2))));
    assertTrue(last.contains("E W: no upper cut unless a plate crosses; nothing holds it"), last);
    assertTrue(last.contains("CAUTION"), last);
    assertTrue(first.contains("N S: flat bed, no notch") && !last.contains("flat bed"), first);
    assertTrue(last.contains("no seat to read") && !first.contains("no seat to read"), last);
  }

  @Test
  void textFromTheInputStaysText() {
    Plan plan = PlanFixtures.inches().set(Setting.JOB_NAME, "=1+1").plan(2);
    for (Cell cell : cells(LivePlans.book(plan).sheets())) {
      boolean typed = shown(cell).startsWith("=1");
      assertTrue(!typed || cell.value() instanceof Cell.Text, shown(cell));
    }
  }

  @Test
  void numbersOfPagesAreFormulasAndTypedCellsAreEmpty() {
    Plan plan = PlanFixtures.inches().plan(2);
    List<Cell> cells = cells(LivePlans.rounds(LivePlans.context(plan)));
    cells.stream()
        .filter(cell -> cell.role().name().startsWith("TYPED_IN"))
        .forEach(cell -> assertTrue(cell.value() instanceof Cell.Blank));
    cells.stream()
        .filter(cell -> cell.role() == Role.MARK_HUGE || cell.role() == Role.MARK_HUGE_LOWER)
        .filter(cell -> !(cell.value() instanceof Cell.Blank))
        .forEach(cell -> assertTrue(cell.value() instanceof Cell.Formula));
  }
}
