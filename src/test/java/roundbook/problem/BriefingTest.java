package roundbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import roundbook.problem.Briefing.Line;

/** Of many problems what costs most is told first, and no more than a person reads. */
class BriefingTest {
  private static List<Problem> some(ProblemCode code, int count) {
    return Collections.nCopies(count, Problem.of(code, CellRef.ofFile("tally.csv")));
  }

  private static Briefing of(Object... codesAndCounts) {
    List<Problem> all = new ArrayList<>();
    for (int i = 0; i < codesAndCounts.length; i += 2) {
      all.addAll(some((ProblemCode) codesAndCounts[i], (int) codesAndCounts[i + 1]));
    }
    return Briefing.of(all);
  }

  private static List<ProblemCode> codes(List<Line> lines) {
    return lines.stream().map(line -> line.problem().code()).toList();
  }

  @Test
  void openingsComeBeforeEndsHoweverMany() {
    Briefing briefing =
        of(ProblemCode.TIP_THIN, 26, ProblemCode.GAP_SMALL, 2, ProblemCode.OPENING_SILL, 1);
    assertEquals(
        List.of(
            ProblemCode.OPENING_SILL,
            ProblemCode.GAP_SMALL,
            ProblemCode.GAP_SMALL,
            ProblemCode.TIP_THIN),
        codes(briefing.first()));
    assertEquals(25, briefing.first().get(3).more());
  }

  @Test
  void whatMakesEveryLogWrongComesFirst() {
    Briefing briefing =
        of(ProblemCode.OPENING_SILL, 1, ProblemCode.LOG_UNFIT, 1, ProblemCode.UNIT_ASSUMED, 1);
    assertEquals(
        List.of(ProblemCode.UNIT_ASSUMED, ProblemCode.OPENING_SILL, ProblemCode.LOG_UNFIT),
        codes(briefing.first()));
  }

  @Test
  void noMoreThanEightLinesAreTold() {
    Briefing briefing =
        of(
            ProblemCode.UNIT_ASSUMED, 3,
            ProblemCode.OPENING_SILL, 3,
            ProblemCode.OPENING_HEADER, 3,
            ProblemCode.GAP_LARGE, 9);
    assertEquals(Briefing.LINES_MOST - 1, briefing.first().size());
    assertEquals(List.of(ProblemCode.OPENING_HEADER), codes(briefing.counted()));
    assertEquals(2, briefing.counted().get(0).more());
    assertEquals(8, briefing.first().get(6).more());
  }

  @Test
  void errorsStopAndNotesAreCounted() {
    Briefing briefing =
        of(
            ProblemCode.BAD_NUMBER, 4,
            ProblemCode.SHEET_SKIPPED, 2,
            ProblemCode.TOO_SHORT, 2,
            ProblemCode.BAD_PIN, 1);
    assertEquals(5, briefing.stops().size());
    assertEquals(ProblemCode.BAD_PIN, briefing.stops().get(0).code());
    assertEquals(3, briefing.stopKinds().get(1).more());
    assertTrue(briefing.first().isEmpty());
    assertEquals(
        List.of(ProblemCode.SHEET_SKIPPED, ProblemCode.TOO_SHORT), codes(briefing.counted()));
  }
}
