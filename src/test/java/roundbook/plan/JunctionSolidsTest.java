package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.PolyhedronsSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.stack.Stack;

/**
 * Crossings and tees as solids made from the printed marks: no wood in the same place, full bearing
 * at every contact, and what holds a log where it ends.
 */
class JunctionSolidsTest {
  private static final double LITTLE = 1.0 / 64;

  private static Stack stack(String house, long seed) {
    return switch (house) {
      case "parted" -> Houses.parted(seed).stack();
      case "crossed" -> Houses.crossed(seed).stack();
      case "hook" -> Houses.wing(true, "hook", seed).stack();
      default -> Houses.wing(false, "drain", seed).stack();
    };
  }

  /** Over all seeds well above twenty pairs of logs of each kind. */
  @ParameterizedTest(name = "{0}, seed {1}")
  @CsvSource({
    "parted, 1",
    "parted, 2",
    "parted, 3",
    "crossed, 1",
    "hook, 1",
    "hook, 2",
    "hook, 3",
    "drain, 1",
    "drain, 2"
  })
  void logsOfAJunctionBearWhollyAndShareNoWood(String house, long seed) {
    Stack stack = stack(house, seed);
    for (int round = 1; round < stack.courses().size(); round++) {
      List<Junction> here = Junction.crossings(stack, stack.courses().get(round - 1));
      List<Junction> above = Junction.crossings(stack, stack.courses().get(round));
      for (int each = 0; each < here.size(); each++) {
        JunctionSolids solids = new JunctionSolids(stack, here.get(each));
        JunctionSolids over = new JunctionSolids(stack, above.get(each));
        if (here.get(each).through().wall().laidFirst()) {
          contact(solids, solids.through(), ending(solids, stack));
          contact(solids, ending(solids, stack), over.through());
        } else {
          contact(solids, ending(solids, stack), solids.through());
          contact(solids, solids.through(), ending(over, stack));
        }
      }
    }
  }

  private static List<PolyhedronsSet> ending(JunctionSolids solids, Stack stack) {
    return solids.ending(stack.rules().overhang().inches());
  }

  /** The upper log let down by a little shares as much wood as the bearing is wide, times that. */
  private static void contact(
      JunctionSolids solids, List<PolyhedronsSet> lower, List<PolyhedronsSet> upper) {
    String where = solids.junction().corner() + " round " + solids.junction().through().round();
    assertEquals(0, JunctionSolids.shared(lower, upper), 1e-5, where);
    double pressed = JunctionSolids.shared(lower, JunctionSolids.moved(upper, 0, -LITTLE));
    assertEquals(solids.thick() * solids.width(), pressed / LITTLE, 1e-3, where);
  }

  /**
   * A log that hooks cannot be drawn out of the one that it ends in; one that drains comes out
   * freely, and so is pegged.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"parted, true", "hook, true", "drain, false"})
  void aHookHoldsAndADrainDoesNot(String house, boolean holds) {
    Stack stack = stack(house, 2);
    int seen = 0;
    for (Junction junction : Junction.crossings(stack, stack.courses().get(1))) {
      JunctionSolids solids = new JunctionSolids(stack, junction);
      if (house.equals("parted") || solids.isTee()) {
        double out = solids.isTee() ? -LITTLE : LITTLE;
        var drawn = JunctionSolids.moved(ending(solids, stack), out, 0);
        double shared = JunctionSolids.shared(solids.through(), drawn);
        assertTrue(holds ? shared > 0.1 : shared < 1e-5, junction.corner() + " " + shared);
        seen++;
      }
    }
    assertTrue(seen > 0);
  }
}
