package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.units.Length;

/** How far and how high the hook of a crane must reach, reckoned by hand. */
class ReachTest {
  /** Walls 24 and 18 ft outside of 6 in logs, a crane 20 ft outside of one of them. */
  @ParameterizedTest
  @CsvSource({
    "N, N, 243",
    "N, S, 453",
    "N, E, 375.48",
    "N, W, 375.48",
    "E, E, 243",
    "E, W, 525",
    "E, S, 398.10",
  })
  void radiiAreTheDistancesToTheMiddlesOfWalls(String crane, String wall, double inches) {
    Building building =
        Jobs.building(Length.ofInches(288), Length.ofInches(216), Length.ofInches(6));
    BuildRules rules =
        Jobs.rules(false)
            .with(Setting.CRANE_WALL, crane, Origin.OPTION)
            .with(Setting.CRANE_OFF, Length.ofInches(240), Origin.OPTION);
    Map<String, Double> radii =
        Reach.of(rules, building, List.of()).stream()
            .collect(Collectors.toMap(each -> each.wall().name(), each -> each.radius().inches()));
    assertEquals(inches, radii.get(wall), 0.005);
  }

  @Test
  void theFarthestWallStandsFirstAndABalancePointAsideIsFarther() {
    Plan plan = plan();
    List<Reach> bare = Reach.of(plan.job().rules(), plan.stack().building(), List.of());
    List<Reach> reaches =
        Reach.of(plan.job().rules(), plan.stack().building(), plan.takeoff().wood());
    for (int at = 0; at < reaches.size(); at++) {
      Reach reach = reaches.get(at);
      assertTrue(at == 0 || !reaches.get(at - 1).radius().isLessThan(reach.radius()));
      Reach middle =
          bare.stream().filter(each -> each.wall().equals(reach.wall())).findFirst().orElseThrow();
      assertTrue(reach.radius().isMoreThan(middle.radius()), reach.toString());
      assertTrue(reach.pounds() > 0);
    }
  }

  @Test
  void theHookIsOverWallsLogAndSlings() {
    Plan plan = plan();
    Reach.Hook hook = Reach.Hook.of(plan.stack(), plan.takeoff());
    double log =
        plan.pieces().stream()
            .flatMap(piece -> piece.logs().stream())
            .mapToDouble(placed -> placed.piece().log().butt().inches())
            .max()
            .orElseThrow();
    assertEquals(120 * Math.sqrt(3) / 2, hook.slings().inches(), 1e-6);
    assertEquals(36, hook.clear().inches());
    assertEquals(log, hook.log().inches());
    double walls =
        plan.takeoff().top().orElseThrow().walls().stream()
            .mapToDouble(wall -> Math.max(wall.left().inches(), wall.right().inches()))
            .max()
            .orElseThrow();
    assertEquals(walls, hook.walls().inches(), 1e-9);
    assertEquals(walls + 36 + log + hook.slings().inches(), hook.height().inches(), 1e-6);
  }

  @Test
  void withoutAPlaceThereIsNoReach() {
    Building building =
        Jobs.building(Length.ofInches(288), Length.ofInches(216), Length.ofInches(6));
    assertEquals(List.of(), Reach.of(Jobs.rules(false), building, List.of()));
  }

  private static Plan plan() {
    return PlanFixtures.inches()
        .set(Setting.CRANE_WALL, "N")
        .set(Setting.CRANE_OFF, Length.ofInches(240))
        .set(Setting.SLING_LEG, Length.ofInches(120))
        .plan(4);
  }
}
