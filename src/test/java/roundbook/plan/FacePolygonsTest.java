package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import roundbook.balance.Effort;
import roundbook.job.Piece;
import roundbook.rounds.BalancedChooser;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * The long elevations of neighbouring logs, drawn as polygons from a plan's heights and diameters,
 * stand as far apart as the printed gaps say (a general geometry library measures it).
 */
class FacePolygonsTest {
  private static final GeometryFactory SHAPES = new GeometryFactory();

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void neighboursStandApartByTheirGap(long seed) {
    Plan plan =
        new Planner(new BalancedChooser())
            .plan(
                Jobs.random(seed, 36, seed % 2 == 0),
                new Effort(5_000, seed, () -> false, done -> {}));
    for (Joint joint : plan.stack().joints()) {
      Polygon lower = between(plan.stack(), joint.lower(), joint);
      Polygon upper = between(plan.stack(), joint.upper(), joint);
      String seen = "seed " + seed + ", " + joint.lower().wall().name();
      if (joint.least().inches() > 0.01) {
        assertTrue(lower.intersection(upper).isEmpty(), seen);
        double slack = 1e-3 + joint.least().inches() * 0.01;
        assertEquals(joint.least().inches(), lower.distance(upper), slack, seen);
      } else {
        assertTrue(lower.distance(upper) < 0.02, seen);
      }
    }
  }

  /** The log's outline between the two inside faces, x from the left, y the height. */
  private static Polygon between(Stack stack, FilledPlace log, Joint joint) {
    List<Coordinate> ring = new ArrayList<>();
    List<Coordinate> crown = new ArrayList<>();
    double centre = stack.centre(log).inches();
    Piece piece = log.first().piece();
    int strips = 400;
    Length run = joint.rightFace().minus(joint.leftFace());
    for (int i = 0; i <= strips; i++) {
      Length at = joint.leftFace().plus(run.timesRatio(i, strips));
      double half = log.fromLeft(at).inches() / 2;
      ring.add(new Coordinate(at.inches(), centre - half));
      crown.add(0, new Coordinate(at.inches(), centre + half));
    }
    assertTrue(piece.trimmed().isMoreThan(run));
    ring.addAll(crown);
    ring.add(ring.get(0).copy());
    return SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
  }
}
