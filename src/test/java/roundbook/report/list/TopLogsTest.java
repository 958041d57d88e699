package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.plan.Plan;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.plan.PlanFixtures;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Spares that are named for plates and part logs over the last round. */
class TopLogsTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(6);

  private static List<Piece> pieces(boolean plate) {
    return TopLogs.of(PLAN).stream()
        .filter(each -> each.plate() == plate)
        .map(TopLogs.Candidate::piece)
        .flatMap(Optional::stream)
        .toList();
  }

  @Test
  void noSpareIsNamedTwiceAndNoPlacedLogOnce() {
    List<Log> named =
        TopLogs.of(PLAN).stream().flatMap(each -> each.piece().stream()).map(Piece::log).toList();
    assertEquals(named.size(), named.stream().distinct().count());
    List<Log> spares =
        PLAN.uses().stream().filter(use -> use.use() == Use.SPARE).map(LogUse::log).toList();
    assertTrue(spares.containsAll(named));
    assertFalse(named.isEmpty());
  }

  /**
   * Plates lie on the walls laid second, which end higher; the fixture's spares are long enough.
   */
  @Test
  void everyWallHasARow() {
    List<String> walls =
        TopLogs.of(PLAN).stream().map(each -> each.wall().name() + each.plate()).toList();
    assertEquals(List.of("Etrue", "Wtrue", "Nfalse", "Sfalse"), walls);
  }

  /** By hand: of all spares none is straighter than the first plate. */
  @Test
  void thePlateIsTheStraightest() {
    double least =
        PLAN.uses().stream()
            .filter(use -> use.use() == Use.SPARE)
            .mapToDouble(use -> use.log().traits().sweep().inches())
            .min()
            .orElseThrow();
    assertEquals(least, pieces(true).get(0).log().traits().sweep().inches());
  }

  /** A log is trimmed to 288 + 2 × 3 in; its middle there is as near the last size as can be. */
  @Test
  void thePartLogHasTheSizeOfTheLastRound() {
    double size = PLAN.stack().courses().get(5).notch().size().inches();
    List<Log> plates = pieces(true).stream().map(Piece::log).toList();
    double nearest =
        PLAN.uses().stream()
            .filter(use -> use.use() == Use.SPARE && !plates.contains(use.log()))
            .filter(use -> use.log().length().inches() >= 298)
            .mapToDouble(use -> Math.abs(nearestMid(use.log(), size) - size))
            .min()
            .orElseThrow();
    assertEquals(nearest, Math.abs(pieces(false).get(0).mid().inches() - size), 1e-6);
  }

  /** Two inches at least come off each end; the rest off the tip, the butt, or half of each. */
  private static double nearestMid(Log log, double size) {
    double excess = log.length().inches() - 298;
    double best = Double.MAX_VALUE;
    for (double part : new double[] {0, Math.floor(excess / 2 * 16 + 0.5) / 16, excess}) {
      double at = 2 + part + 147;
      double mid = log.profile().at(Length.of(at, LengthUnit.INCH)).inches();
      best = Math.abs(mid - size) < Math.abs(best - size) ? mid : best;
    }
    return best;
  }
}
