package roundbook.picture.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.picture.RandomStacks;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;
import roundbook.plan.PlanFixtures;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;

/** The shapes of a wall, held against the gaps and heights that the stack gives. */
class ElevationTest {
  private static final double NANOMETRE = 1e-6;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theSpaceBetweenTwoOutlinesIsTheGap(long seed) {
    Stack stack = RandomStacks.of(seed, 6);
    for (Wall wall : stack.building().walls()) {
      Elevation elevation = new Elevation(stack, wall);
      for (Joint joint : stack.joints(wall)) {
        double left = elevation.leftFace();
        double middle = elevation.length() / 2;
        assertEquals(joint.left().inches(), space(elevation, joint, left), NANOMETRE, "" + seed);
        assertEquals(joint.middle().inches(), space(elevation, joint, middle), NANOMETRE);
        double right = elevation.rightFace();
        assertEquals(joint.right().inches(), space(elevation, joint, right), NANOMETRE);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyOutlineStaysInItsWall(long seed) {
    Stack stack = RandomStacks.of(seed, 6);
    for (Wall wall : stack.building().walls()) {
      Elevation elevation = new Elevation(stack, wall);
      for (FilledPlace log : elevation.logs()) {
        Box box = Box.around(elevation.outline(log));
        assertEquals(0, box.left());
        assertEquals(elevation.length(), box.right(), NANOMETRE);
        assertTrue(box.bottom() <= elevation.top() + NANOMETRE);
        assertTrue(box.top() > -NANOMETRE - 2, "seed " + seed + ": " + box);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"flat, N, 0", "flat, E, step", "level, N, 0", "starter, E, half"})
  void theFoundationStandsAsTheBedAsks(String bed, String name, String high) {
    Stack stack = PlanFixtures.inches().set(Setting.FIRST_BED, bed).plan(2).stack();
    Elevation elevation = new Elevation(stack, stack.building().wall(name).orElseThrow());
    double wanted =
        switch (high) {
          case "step" -> stack.foundationStep().inches();
          case "half" -> stack.courses().get(0).size().taken().inches() / 2;
          default -> 0;
        };
    assertEquals(wanted, elevation.foundation(), NANOMETRE);
  }

  @Test
  void theEndGrainOfACrossingLogFallsToTheOutside() {
    Stack stack = PlanFixtures.inches().plan(3).stack();
    Elevation elevation = new Elevation(stack, stack.building().walls().get(0));
    for (boolean left : new boolean[] {true, false}) {
      List<Spot> end = elevation.crossingEnd(stack.courses().get(1), left);
      double drop = end.get(0).y() - end.get(1).y();
      assertEquals(2, drop, NANOMETRE);
      assertEquals(left, end.get(1).x() < end.get(0).x());
      assertEquals(6, Math.abs(end.get(1).x() - end.get(0).x()), NANOMETRE);
    }
  }

  @Test
  void openingsOutsideOfTheWallAreCutToIt() {
    Stack stack = RandomStacks.of(5, 4);
    Elevation elevation = new Elevation(stack, stack.building().walls().get(0));
    RandomStacks.openings(stack, 5)
        .forEach(
            opening -> {
              Box box = elevation.opening(opening);
              assertTrue(box.right() <= elevation.length() && box.left() <= box.right());
              assertTrue(box.bottom() <= elevation.top() && box.top() <= box.bottom());
            });
  }

  private static double space(Elevation elevation, Joint joint, double x) {
    double above = elevation.belly(joint.upper(), x);
    return above - elevation.crown(joint.lower(), x);
  }
}
