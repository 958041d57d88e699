package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Building;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;

/** Houses with a wing planned whole, and what is marked where its walls end in others. */
class WingHouseTest {
  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  /** B-W11: three first-laid and three second-laid logs a round; the verifier looks at all. */
  @ParameterizedTest(name = "ell {0}, {1}, seed {2}")
  @CsvSource({"true, hook, 1", "true, drain, 2", "false, hook, 3", "false, drain, 4"})
  void aHouseWithAWingIsPlannedWhole(boolean ell, String reentrant, long seed) {
    Plan plan = Houses.wing(ell, reentrant, seed);
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
    Stack stack = Houses.wing(true, reentrant, 1).stack();
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

  /**
   * By hand: of a wing that drains both sides in every round, in the first round the three logs
   * sawn flat underneath, in the last the two of the house that nothing lies on.
   */
  @Test
  void everyLogThatDrainsIsCountedForAPeg() {
    Plan plan = Houses.wing(false, "drain", 2);
    Quantity pegs =
        plan.quantities().stream()
            .filter(line -> line.item().equals("anchors"))
            .findFirst()
            .orElseThrow();
    assertEquals(2 * plan.rounds() + 3 + 2, pegs.amount(), 1e-9);
  }

  /** Every log rests on those under it, the wing as high as the house. */
  @Test
  void theWingRisesWithTheHouse() {
    Stack stack = Houses.wing(false, "hook", 5).stack();
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

  /**
   * By hand: the log of a wing's side begins a tail of 3 in and 6 in of wall before the corner that
   * a door 60 in off is measured from; of 144 in to the other corner 48 and a tail are left.
   */
  @Test
  void aDoorInAWingsSideIsMeasuredFromTheFaceOfTheHouse() {
    Plan plan = Houses.wingWithDoor();
    OpeningCut door = plan.takeoff().openings().get(0);
    assertEquals(in(60), door.opening().toldLeft(plan.job().building()));
    var sides = door.of(LogCut.CutExtent.THROUGH).get(0).sides().orElseThrow();
    assertEquals(in(60 + 6 + 3), sides.left().length());
    assertEquals(in(144 - 96 + 3), sides.right().length());
    assertEquals(in(60 - 4), door.frame().pinLeft());
  }

  /** By hand: 342 − 2 × 9 − 6 in of S, which a side of the wing dies in; E is crossed by S. */
  @Test
  void chinkingStopsWhereTheWingBegins() {
    Plan plan = Houses.wing(true, "hook", 1);
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
