package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.rounds.BalancedChooser;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Houses with a wing planned whole, and what is marked where its walls end in others. */
class WingHouseTest {
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static Wall wall(String name, long outside, int pen) {
    boolean first = name.startsWith("N") || name.startsWith("S");
    Stand stand = new Stand(pen, List.of(), Optional.empty());
    return new Wall(name, in(outside), first, in(6), "", stand);
  }

  /**
   * 28 by 20 ft with a wing of 14 by 12 ft outside of S, at its right end or 7 ft from the left.
   */
  private static Job job(boolean ell, String reentrant, long seed) {
    List<Wall> walls = new ArrayList<>();
    walls.add(wall("N", 336, 1));
    walls.add(wall("E", ell ? 384 : 240, 1));
    walls.add(wall("S", 336, 1));
    walls.add(wall("W", 240, 1));
    Stand on = new Stand(2, List.of("S"), Optional.of(in(ell ? 168 : 84)));
    walls.add(wall("S2", 168, 2).at(on));
    walls.add(wall("W2", 150, 2));
    if (!ell) {
      walls.add(wall("E2", 150, 2));
    }
    BuildRules rules = Jobs.rules(false).with(Setting.REENTRANT, reentrant, Origin.OPTION);
    return new Job(rules, new Building(Building.inOrder(walls)), logs(seed), List.of(), List.of());
  }

  private static List<Log> logs(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long[] lengths = {398, 350, 350, 254, 254, 182, 182, 164, 164};
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < 36; i++) {
      double mid = 11.5 + random.nextInt(9) / 4.0;
      String butt = String.valueOf(mid + 1);
      String tip = String.valueOf(mid - .75);
      Length length = in(lengths[i % lengths.length] + random.nextInt(12));
      logs.add(Jobs.log("L" + i, length, butt, String.valueOf(mid), tip));
    }
    return logs;
  }

  private static Plan plan(Job job) {
    return new Planner(new BalancedChooser()).plan(job, SHORT);
  }

  /** B-W11: three first-laid and three second-laid logs a round; the verifier looks at all. */
  @ParameterizedTest(name = "ell {0}, {1}, seed {2}")
  @CsvSource({"true, hook, 1", "true, drain, 2", "false, hook, 3", "false, drain, 4"})
  void aHouseWithAWingIsPlannedWhole(boolean ell, String reentrant, long seed) {
    Plan plan = plan(job(ell, reentrant, seed));
    assertTrue(plan.rounds() >= 3, "rounds " + plan.rounds());
    for (Course course : plan.stack().courses()) {
      assertEquals(ell ? 6 : 7, course.places().size());
      long first = course.places().stream().filter(each -> each.wall().laidFirst()).count();
      assertEquals(3, first);
    }
  }

  /**
   * By hand: a tee that hooks has its saddle fall to the tail, which is inside the house; one that
   * drains has it fall outwards as everywhere in that wall. Underneath both are level.
   */
  @ParameterizedTest
  @ValueSource(strings = {"hook", "drain"})
  void aTeeFallsToItsTailOrOutwards(String reentrant) {
    Stack stack = plan(job(true, reentrant, 1)).stack();
    Course course = stack.courses().get(1);
    Length upper = course.notch().upper();
    Length fallen = upper.minus(in(2));
    boolean hook = reentrant.equals("hook");
    for (Junction here : Junction.crossings(stack, course)) {
      boolean inwards = hook && here.kind() == Junction.Kind.TEE;
      assertEquals(Optional.of(inwards ? fallen : upper), here.upper(), here.corner());
      assertEquals(Optional.of(inwards ? upper : fallen), here.upperOutside(), here.corner());
      assertEquals(Optional.of(course.notch().lower()), here.lower());
    }
    assertEquals(
        List.of("E SE CROSSING", "S SW2 TEE"),
        Junction.crossings(stack, course).stream()
            .map(each -> each.through().wall().name() + " " + each.corner() + " " + each.kind())
            .sorted()
            .toList());
  }

  /** Every log rests on those under it, the wing as high as the house. */
  @Test
  void theWingRisesWithTheHouse() {
    Stack stack = plan(job(false, "hook", 5)).stack();
    Building building = stack.building();
    for (Course course : stack.courses()) {
      int round = course.round();
      Length house = stack.centre(round, building.wall("S").orElseThrow());
      assertEquals(house, stack.centre(round, building.wall("S2").orElseThrow()));
      Length side = stack.centre(round, building.wall("W").orElseThrow());
      assertEquals(side, stack.centre(round, building.wall("W2").orElseThrow()));
      assertEquals(course.notch().neckHeight(), side.minus(house));
    }
  }

  /** By hand: 342 − 2 × 9 − 6 in of S, which a side of the wing dies in; E is crossed by S. */
  @Test
  void chinkingStopsWhereTheWingBegins() {
    Plan plan = plan(job(true, "hook", 1));
    plan.takeoff()
        .chinking()
        .joints()
        .forEach(
            fill -> {
              double run =
                  switch (fill.joint().lower().wall().name()) {
                    case "N" -> 324;
                    case "E" -> 366;
                    case "S" -> 318;
                    case "W" -> 228;
                    case "S2" -> 156;
                    default -> 138;
                  };
              assertEquals(run, fill.run(), 1e-6, fill.joint().lower().wall().name());
            });
  }
}
