package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.intake.Tally;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.job.Stems;
import roundbook.job.Stems.CrossCut;
import roundbook.plan.Houses;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.units.Length;

/** What a job holds besides logs and walls goes into the crew workbook and comes back the same. */
class ReadBackTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(2);
  private static final CellRef ROW = new CellRef("cabin.xlsx", "Other_logs", 2, 0);

  private static SiteReport back(Job job) {
    return CrewWorkbook.of(Planner.of(job, PLAN.choice())).report();
  }

  /** A wing's side is told from the outer face of the house, and so is a door in it. */
  @Test
  void aWingAndADoorInItComeBack() {
    Plan plan = Houses.wingWithDoor();
    CrewWorkbook book = CrewWorkbook.of(plan);
    int number = plan.job().building().walls().size();
    assertEquals("W2", shown(book, "Wall_" + number + "_name").text());
    assertEquals(144, shown(book, "Wall_" + number + "_outside").number().doubleValue());
    assertEquals(60, shown(book, "Opening_1_left").number().doubleValue());
    Job read = book.report().job();
    assertEquals(plan.job().building(), read.building());
    assertEquals(plan.job().openings().get(0).left(), read.openings().get(0).left());
  }

  private static Cell shown(CrewWorkbook book, String name) {
    return book.named().cell(name).orElseThrow().cell();
  }

  @Test
  void pricesComeBack() {
    List<Price> prices = new ArrayList<>();
    for (Basis basis : Basis.values()) {
      prices.add(
          new Price(
              basis,
              new BigDecimal("12.5"),
              basis == Basis.EACH ? Set.of() : Set.of(1, 3),
              basis == Basis.EACH ? Optional.empty() : Optional.of(new BigDecimal("80"))));
    }
    assertEquals(prices, back(PLAN.job().withPrices(prices)).job().prices());
  }

  @Test
  void logsForOtherPlacesComeBack() {
    List<OtherLog> others =
        List.of(
            other("plate", 2, 240, 9, 0, Optional.empty()),
            other("ridge", 1, 336, 0, 8, Optional.of(Length.ofInches(1))));
    List<OtherLog> read = back(PLAN.job().withOthers(others)).job().others();
    assertEquals(
        others.stream().map(ReadBackTest::told).toList(),
        read.stream().map(ReadBackTest::told).toList());
  }

  private static OtherLog other(
      String name, int count, long length, long mid, long tip, Optional<Length> sweep) {
    return new OtherLog(
        name,
        count,
        Length.ofInches(length),
        Length.ofInches(mid),
        Length.ofInches(tip),
        sweep,
        "straight",
        ROW);
  }

  private static String told(OtherLog log) {
    return log.name()
        + " "
        + log.count()
        + " "
        + log.length().inches()
        + " "
        + log.mid().inches()
        + " "
        + log.tip().inches()
        + " "
        + log.sweep().map(Length::inches).orElse(-1.0)
        + " "
        + log.remarks();
  }

  @Test
  void pinsComeBack() {
    List<Pin> pins =
        List.of(
            new Pin(OptionalInt.of(1), "N", PLAN.job().logs().get(0).tag(), "", "best face", ROW),
            new Pin(OptionalInt.empty(), "", PLAN.job().logs().get(1).tag(), "", "", ROW));
    Job job = PLAN.job();
    Job pinned = new Job(job.rules(), job.building(), job.logs(), List.of(), pins);
    List<Pin> read = back(pinned).job().pins();
    assertEquals(
        pins.stream().map(each -> each.phrase() + each.why() + each.buttAt()).toList(),
        read.stream().map(each -> each.phrase() + each.why() + each.buttAt()).toList());
  }

  /**
   * Two logs of round 1 as pieces of one stem, which has a crook; the second is cut and measured.
   */
  @Test
  void stemsComeBackWithWhatIsCutAndMeasured() {
    List<Log> logs =
        PLAN.round(1).stream().map(each -> each.placed().first().piece().log()).toList();
    String one = logs.get(0).tag();
    String other = logs.get(1).tag();
    Length second = Length.ofInches(400);
    List<Station> stations = new ArrayList<>(logs.get(0).profile().stations());
    logs.get(1)
        .profile()
        .stations()
        .forEach(each -> stations.add(new Station(each.fromButt().plus(second), each.diameter())));
    Length end = second.plus(logs.get(1).length());
    Length length = end.plus(Length.ofInches(60));
    stations.add(new Station(length, Length.ofInches(6)));
    Stem stem =
        new Stem(
            "T1",
            length,
            new DiameterProfile(stations),
            List.of(new Stretch(end.plus(Length.ofInches(10)), end.plus(Length.ofInches(30)))),
            new Log.Traits("larch", Log.Bark.OFF, Length.ofInches(2), Log.Keep.SILL, false, "wet"),
            false,
            new CellRef("woods.csv", "Stems", 4, 0));
    Map<String, CrossCut> cuts =
        Map.of(
            one, CrossCut.planned("T1", Length.ZERO),
            other, CrossCut.planned("T1", second));
    Job job = PLAN.job().withStems(new Stems(List.of(stem), cuts, Optional.empty()));
    CrewWorkbook book = CrewWorkbook.of(Planner.of(job, PLAN.choice()));
    Stems read = book.report().job().stems();
    assertEquals(List.of(stem), read.all());
    assertEquals(cuts, read.cuts());
    book.type(Map.of("Piece_cut_" + one, "x", "Piece_mid_" + other, 13.25));
    Stems typed = book.report().job().stems();
    assertEquals(new CrossCut("T1", Length.ZERO, true, Optional.empty()), typed.cuts().get(one));
    assertEquals(
        new CrossCut("T1", second, true, Optional.of(Length.ofInchFraction(53, 4))),
        typed.cuts().get(other));
  }

  /** Problems of the tally are carried as values, with what was found and what to do. */
  @Test
  void problemsComeBack() {
    CellRef where = new CellRef("yard.xlsx", "Logs", 7, 3);
    Problem doubt =
        Problem.of(ProblemCode.DOUBTFUL_VALUE, "apart", where)
            .with("text", "31.75 \"wide\"; and more")
            .found("31.75 \"wide\"; and more")
            .about("A7");
    Problem note = Problem.of(ProblemCode.NOTE_ROW, "text", where.atColumn(0));
    List<Problem> found = List.of(doubt, note);
    assertEquals(found, CrewWorkbook.of(PLAN, found).report().tally().found());
  }

  /** Where what is carried was typed over, the sentence that stands there is told instead. */
  @Test
  void aProblemThatWasTypedOverIsToldAsItStands() {
    Problem note =
        Problem.of(ProblemCode.HIDDEN_ROW, new CellRef("yard.xlsx", "Logs", 7, 0)).found("x");
    CrewWorkbook book = CrewWorkbook.of(PLAN, List.of(note)).never("Problem_carried");
    Problem told = book.report().tally().found().get(0);
    assertEquals(ProblemCode.HIDDEN_ROW, told.code());
    assertEquals(note.where(), told.where());
    assertEquals("told", told.said().key());
    assertTrue(told.said().toString().contains("the row is hidden"), told.toString());
  }

  @Test
  void furtherLogsComeToThoseOfTheWorkbook() {
    Tally more = Tally.of(Tally.HEADINGS, "Z1|26|14|13|12", "Z2|26|abc|13|12", "Z3|5|14|13|12");
    Read<SiteReport> read = CrewWorkbook.of(PLAN).read(List.of(more.table()));
    SiteReport report = read.value().orElseThrow();
    assertEquals(PLAN.job().logs().size() + 1, report.job().logs().size());
    assertEquals(Set.of("Z1"), report.tally().bought());
    assertTrue(read.problems().stream().anyMatch(each -> each.severity() == Severity.ERROR));
  }

  /** Nobody knows which of two logs a tag is on, whatever its case. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aTagThatTheWorkbookHasStopsTheReading(boolean capitals) {
    String tag = PLAN.job().logs().get(0).tag();
    String typed = capitals ? tag.toUpperCase() : tag.toLowerCase();
    Tally more = Tally.of(Tally.HEADINGS, typed + "|26|14|13|12", "Z2|26|14|13|12");
    Read<SiteReport> read = CrewWorkbook.of(PLAN).read(List.of(more.table()));
    assertEquals(Optional.empty(), read.value());
    assertEquals("A2 duplicate-id.known", Tally.said(read.problems()));
  }

  @Test
  void aTallyOfErrorsAloneStopsTheReading() {
    Tally more = Tally.of(Tally.HEADINGS, "Z1|5|14|13|12");
    assertEquals(Optional.empty(), CrewWorkbook.of(PLAN).read(List.of(more.table())).value());
  }
}
