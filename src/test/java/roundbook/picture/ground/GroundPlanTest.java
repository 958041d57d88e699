package roundbook.picture.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Building;
import roundbook.job.Rings;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;
import roundbook.units.Length;

/** Where walls lie in a drawing seen from above, north on top, by hand. */
class GroundPlanTest {
  private static final Box BOX = new Box(100, 50, 500, 250);

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static Wall partition(String name, long outside, String one, String other, long at) {
    Stand stand = new Stand(1, List.of(one, other), Optional.of(in(at)));
    return new Wall(name, in(outside), one.startsWith("E"), in(6), "", stand);
  }

  private static GroundPlan plan(List<Wall> walls) {
    return new GroundPlan(new Building(Building.inOrder(walls)), BOX);
  }

  private static Wall wall(GroundPlan plan, String name) {
    return plan.building().wall(name).orElseThrow();
  }

  private static String spots(GroundPlan plan, String name) {
    Spot start = plan.start(wall(plan, name));
    Spot end = plan.end(wall(plan, name));
    return Math.round(start.x())
        + ","
        + Math.round(start.y())
        + " "
        + Math.round(end.x())
        + ","
        + Math.round(end.y());
  }

  @ParameterizedTest
  @CsvSource({
    "N, '100,50 500,50'",
    "E, '500,50 500,250'",
    "S, '500,250 100,250'",
    "W, '100,250 100,50'",
  })
  void aPensWallsRunClockwiseRoundTheBox(String name, String spots) {
    GroundPlan plan = plan(Rings.ring(1, 240, 168, ""));
    assertEquals(spots, spots(plan, name));
    assertFalse(plan.isMore() || plan.isRow());
    assertEquals(BOX, plan.pen(wall(plan, name)));
    assertEquals(0.5, plan.free(wall(plan, name)));
  }

  /**
   * N is 384 in, drawn 400 long. A partition of 6 in whose near face is 93 from the left corner
   * seen from outside, which is the right one of the drawing, has its axis 96 in from there: a
   * quarter.
   */
  @Test
  void aPartitionStandsAtItsPart() {
    List<Wall> walls = Rings.ring(1, 384, 216, "");
    walls.add(partition("P", 216, "N", "S", 93));
    GroundPlan plan = plan(walls);
    Spot start = plan.start(wall(plan, "P"));
    Spot end = plan.end(wall(plan, "P"));
    assertEquals(400, start.x(), 1e-9);
    assertEquals(400, end.x(), 1e-9);
    assertEquals(200, Math.abs(start.y() - end.y()), 1e-9);
    assertTrue(GroundPlan.isUpright(start, end));
    assertTrue(plan.isMore());
  }

  /** Beside that crossing 288 in of N are free, less the half of a log: the longer part. */
  @Test
  void theFreePartIsTheLongest() {
    List<Wall> walls = Rings.ring(1, 384, 216, "");
    walls.add(partition("P", 216, "N", "S", 93));
    GroundPlan plan = plan(walls);
    assertEquals((1 - 93 / 384.0) / 2, plan.free(wall(plan, "N")), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"E, W, 213", "E, W, 12"})
  void aPartitionAcrossLiesLevel(String one, String other, long at) {
    List<Wall> walls = Rings.ring(1, 384, 432, "");
    walls.add(partition("P", 384, one, other, at));
    GroundPlan plan = plan(walls);
    Spot start = plan.start(wall(plan, "P"));
    assertFalse(GroundPlan.isUpright(start, plan.end(wall(plan, "P"))));
    // Seen from outside, the left corner of E is its southern one, at the foot of the drawing.
    assertEquals(250 - 200 * (at + 3) / 432.0, start.y(), 1e-9);
    assertEquals(start.y(), plan.end(wall(plan, "P")).y(), 1e-9);
  }

  /** Pens in a row fill the box from left to right, as wide as they are long, apart. */
  @Test
  void pensStandInARow() {
    List<Wall> walls = Rings.ring(1, 192, 216, "");
    walls.addAll(Rings.ring(2, 288, 216, "2"));
    GroundPlan plan = plan(walls);
    Box one = plan.pen(wall(plan, "N"));
    Box two = plan.pen(wall(plan, "E2"));
    assertEquals(BOX.left(), one.left(), 1e-9);
    assertEquals(BOX.right(), two.right(), 1e-9);
    assertTrue(one.right() < two.left());
    assertEquals(288 / 192.0, two.width() / one.width(), 1e-9);
    assertEquals(BOX.height(), two.height(), 1e-9);
    assertTrue(plan.isRow());
    for (Wall wall : plan.building().walls()) {
      Wall next = plan.building().after(wall);
      assertEquals(plan.end(wall), plan.start(next), wall.name());
    }
  }
}
