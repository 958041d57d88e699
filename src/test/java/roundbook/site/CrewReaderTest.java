package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.intake.Asked;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.NamedBook;
import roundbook.units.Length;

/** A crew workbook is read back by the names of its cells: the job, the plan, what was typed. */
class CrewReaderTest {
  private static final Plan PLAN = PlanFixtures.inches().withOpenings().plan(3);

  private static CrewWorkbook book() {
    return CrewWorkbook.of(PLAN);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"en", "de"})
  void theJobAndThePlanComeBackAsTheyWerePrinted(String language) {
    Plan plan = PlanFixtures.inches().set(Setting.LANGUAGE, language).withOpenings().plan(3);
    SiteReport report = CrewWorkbook.of(plan).report();
    assertEquals(12, report.plan().size());
    for (PiecePlan piece : plan.pieces()) {
      Place place = new Place(piece.placed().round(), piece.placed().wall().name());
      assertEquals(piece.placed().held(), report.plan().get(place), place.toString());
    }
    assertSameJob(plan.job(), report.job());
    assertEquals(new SiteReport.Issue(1, "cabin.xlsx", OptionalInt.of(3)), report.issue());
    assertEquals(0, report.typed().cut());
    assertEquals(Map.of(), report.typed().measures());
    assertEquals(3, report.rounds());
  }

  /** A metric job comes back to a hundredth of a millimetre: its boxes hold decimal numbers. */
  @Test
  void aMetricJobComesBackToo() {
    Plan plan = PlanFixtures.metric().withOpenings().plan(2);
    assertSameJob(plan.job(), CrewWorkbook.of(plan).report().job());
  }

  private static void assertSameJob(Job was, Job now) {
    assertEquals(was.building(), now.building());
    assertEquals(was.openings().size(), now.openings().size());
    for (int index = 0; index < was.openings().size(); index++) {
      assertEquals(was.openings().get(index).leaf(), now.openings().get(index).leaf());
    }
    for (int index = 0; index < was.logs().size(); index++) {
      var log = was.logs().get(index);
      var read = now.logs().get(index);
      assertEquals(log.tag(), read.tag());
      assertEquals(log.length().inches(), read.length().inches(), 1e-3, log.tag());
      assertEquals(log.mid().inches(), read.mid().inches(), 1e-3, log.tag());
      assertEquals(log.butt().inches(), read.butt().inches(), 1e-3, log.tag());
      assertEquals(log.sources().mid(), read.sources().mid(), log.tag());
      assertEquals(log.traits().species(), read.traits().species(), log.tag());
    }
    for (Setting setting : Setting.values()) {
      assertEquals(shown(was, setting), shown(now, setting), setting.label());
    }
  }

  private static String shown(Job job, Setting setting) {
    Object value = job.rules().value(setting).map(BuildRules.Value::value).orElse("");
    return value instanceof BigDecimal number
        ? number.stripTrailingZeros().toPlainString()
        : value.toString();
  }

  @Test
  void whatIsTypedIsReadInItsOwnUnits() {
    Map<String, Object> typed = new TreeMap<>();
    typed.put("Cut_1", " X");
    typed.put("Measured_1_N", 13.25);
    typed.put("Measured_1_E", "13 1/8");
    typed.put("Measured_1_S", "335 mm");
    typed.put("Measured_butt_1_N", "14 1/2\"");
    typed.put("Lower_cut_1_N", 3.0);
    typed.put("Reading_1_NW", 11.5);
    SiteReport.Typed read = book().type(typed).report().typed();
    assertEquals(1, read.cut());
    assertEquals(Length.ofInchFraction(53, 4), mid(read, "N"));
    assertEquals(Length.ofInchFraction(105, 8), mid(read, "E"));
    assertEquals(Length.ofMillimetres(335), mid(read, "S"));
    var north = read.measures().get(new Place(1, "N"));
    assertEquals(Length.ofInchFraction(29, 2), north.butt().orElseThrow());
    assertEquals(Length.ofInches(3), north.lowerCut().orElseThrow());
    assertEquals(Length.ofInchFraction(23, 2), read.readings().get(new Corner(1, "NW")));
    assertEquals(1, read.readings().size());
  }

  private static Length mid(SiteReport.Typed typed, String wall) {
    return typed.measures().get(new Place(1, wall)).mid().orElseThrow();
  }

  @Test
  void aTagIsTakenAsTheLogListSpellsIt() {
    String spare = PLAN.choice().unused().get(0).tag();
    SiteReport report =
        book().type(Map.of("Used_2_S", " " + spare.toLowerCase(java.util.Locale.ROOT))).report();
    assertEquals(Map.of(new Place(2, "S"), spare), report.typed().used());
    assertTrue(report.uses(new Place(2, "S")));
    assertEquals(spare, report.tag(new Place(2, "S")).orElseThrow());
    assertFalse(report.uses(new Place(2, "N")));
  }

  @Test
  void aLostLogIsKnownByItsRow() {
    var log = PLAN.choice().unused().get(1);
    SiteReport report = book().type(Map.of("Lost_" + log.origin().row(), "x")).report();
    assertEquals(Set.of(log.tag()), report.typed().lost());
  }

  @Test
  void aSettingThatIsChangedCountsFromNowOnAndThePrintedOneIsKept() {
    SiteReport report = book().type(Map.of("Chinking_gap", 1.25)).report();
    assertEquals(Length.ofInchFraction(5, 4), report.job().rules().length(Setting.CHINKING_GAP));
    assertEquals(
        PLAN.job().rules().length(Setting.CHINKING_GAP),
        report.printed().length(Setting.CHINKING_GAP));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Round 02, cell-lost.box(round=2",
    "Settings, unreadable.settings-gone",
  })
  void aSheetThatIsGoneIsMissedAloud(String sheet, String words) {
    Read<SiteReport> read = book().without(sheet).read();
    assertTrue(read.value().isEmpty());
    assertTrue(read.problems().toString().contains(words), read.problems().toString());
  }

  @Test
  void rowsAndColumnsThatAreGoneAreSaidAndTheRestIsRead() {
    Read<SiteReport> read = book().lose("Opening_1_").lose("Log_remarks").read();
    assertEquals(1, read.value().orElseThrow().job().openings().size());
    List<String> said = read.problems().stream().map(Problem::toString).toList();
    assertEquals(
        2, said.stream().filter(line -> line.contains("cell-lost")).count(), said::toString);
    assertTrue(said.stream().allMatch(line -> !line.contains("pins")));
    assertEquals(List.of(), book().read().problems(), "nothing is missed in a whole workbook");
  }

  @Test
  void whatIsNoCrewWorkbookIsRefused() {
    NamedBook other = new NamedBook("job.xlsx", List.of(), Map.of(), Set.of());
    assertEquals(
        List.of(ProblemCode.NOT_A_CREW_WORKBOOK),
        CrewReader.read(other, Optional.empty(), List.of(), Asked.NOTHING).problems().stream()
            .map(Problem::code)
            .toList());
    Read<SiteReport> newer = book().type(Map.of("Made_layout", 99.0)).read();
    assertTrue(newer.value().isEmpty());
    assertEquals(ProblemCode.OTHER_VERSION, newer.problems().get(0).code());
    assertEquals("Settings", newer.problems().get(0).where().sheet());
    assertEquals(Severity.ERROR, newer.problems().get(0).severity());
  }
}
