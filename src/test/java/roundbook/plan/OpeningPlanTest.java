package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import roundbook.plan.PiecePlan.Note;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.problem.words.Sentences;
import roundbook.takeoff.Cabins;

/** What openings change in the rest of a plan: spares, notes and doubts. */
class OpeningPlanTest {
  private static final Plan WITH = PlanFixtures.inches().withOpenings().plan(8);
  private static final Plan WITHOUT = PlanFixtures.inches().plan(8);

  private static List<String> messages(Plan plan, ProblemCode code) {
    return plan.problems().stream()
        .filter(problem -> problem.code() == code)
        .map(Sentences.english()::message)
        .toList();
  }

  /** A window cuts one log of S in two; two logs too short for any wall lie there instead. */
  @Test
  void aLongLogThatShortStockSavesIsASpare() {
    Plan with = cabin(true);
    Plan without = cabin(false);
    assertEquals(0, without.supply().get(0).spare());
    assertEquals(1, with.supply().get(0).spare());
    assertEquals(without.supply().get(0).needed() - 1, with.supply().get(0).needed());
    assertEquals(without.supply().get(1), with.supply().get(1));
    assertEquals(1, without.order().get(0).count());
    assertTrue(with.order().stream().noneMatch(line -> line.walls().contains("S")));
    assertEquals(
        List.of("left of opening O1", "right of opening O1"),
        with.uses().stream()
            .map(use -> use.note().in(Sentences.english()))
            .filter(note -> note.contains("O1"))
            .toList());
    assertTrue(with.quantities().stream().anyMatch(line -> line.item().equals("freed")));
  }

  private static Plan cabin(boolean shortLogs) {
    return Cabins.ofRounds(12, 12, 12, 12, 12, 12)
        .opening("S", shortLogs, 60, 36, 20, 48)
        .spare(70, 12)
        .spare(151, 12)
        .chosen();
  }

  @Test
  void headersAndCutLogsAreNotedOnTheirPages() {
    WITH.takeoff()
        .openings()
        .forEach(
            opening -> {
              PiecePlan header =
                  WITH.pieces().stream()
                      .filter(piece -> piece.placed().equals(opening.header().orElseThrow()))
                      .findFirst()
                      .orElseThrow();
              assertTrue(header.notes().contains(Note.HEADER));
              assertFalse(header.notes().contains(Note.CUT_AT_OPENING));
            });
    long cut =
        WITH.pieces().stream().filter(piece -> piece.notes().contains(Note.CUT_AT_OPENING)).count();
    long through =
        WITH.takeoff().openings().stream().mapToLong(opening -> opening.cut().size()).sum();
    long headers =
        WITH.takeoff().openings().stream()
            .filter(each -> each.cut().stream().anyMatch(c -> c.log().equals(each.header().get())))
            .count();
    assertEquals(through - headers, cut);
  }

  @Test
  void aSillCutInTwoAndAMissingHeaderAreSaid() {
    assertEquals(
        List.of("opening Front door, wall S: cuts the first log, L3, in two"),
        messages(WITH, ProblemCode.OPENING_SILL));
    assertEquals(List.of(), messages(WITHOUT, ProblemCode.OPENING_SILL));
    Plan low = PlanFixtures.inches().withOpenings().plan(2);
    assertEquals(
        List.of(
            "opening Front door, wall S: has no whole log over its head",
            "opening East window, wall E: has no whole log over its head"),
        messages(low, ProblemCode.OPENING_HEADER));
  }

  @Test
  void logsToAnchorAreThoseWithoutALock() {
    Quantity anchors =
        WITH.quantities().stream()
            .filter(line -> line.item().equals("anchors"))
            .findFirst()
            .orElseThrow();
    assertEquals(4, anchors.amount());
    assertEquals(List.of(Value.text("L1, L3, L30, L32")), anchors.values());
  }
}
