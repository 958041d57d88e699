package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import roundbook.notch.Notch;
import roundbook.units.Length;
import roundbook.units.Slope;

/**
 * Polygons drawn from the printed marks touch without overlapping (a general geometry library
 * checks it): the necks of two crossing logs at the corner, and of two neighbours through the log
 * between.
 */
class NeckPolygonsTest {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final long SEED = 7_301;
  private static final double HAIR = 1e-6;

  /**
   * Along the lower log's width: its neck's top falls outward from U' to U' − R, where the upper
   * log's underside falls from L' at the shoulder to L' + R at the corner line. Set U' + L' apart,
   * the two cover each other's edge over the whole thickness.
   */
  @Test
  void crossingNecksBearOverTheWholeCorner() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      Corner corner = Corner.random(random);
      Polygon lower = corner.lowerNeckAcross();
      Polygon upper = corner.upperNeckAlong();
      Geometry overlap = lower.intersection(upper);
      String seen = "seed " + SEED + ", case " + i + ", " + corner;
      assertTrue(overlap.getArea() < HAIR, seen);
      assertTrue(lower.distance(upper) < HAIR, seen);
      double bearing = lower.buffer(HAIR).intersection(upper.buffer(HAIR)).getLength() / 2;
      double slant = Math.hypot(corner.thickness(), corner.drop());
      assertEquals(slant, bearing, 1e-3, seen);
    }
  }

  /** A sixteenth more wood on one mark would overlap: the check can fail. */
  @Test
  void aMarkASixteenthOutWouldShow() {
    Corner corner = Corner.random(new SplittableRandom(SEED));
    Geometry lifted = corner.raised(1 / 16.0);
    Geometry sunk = corner.raised(-1 / 16.0);
    assertTrue(corner.lowerNeckAcross().intersection(sunk).getArea() > 0.1);
    assertTrue(corner.lowerNeckAcross().distance(lifted) > 0.05);
  }

  /** One corner: the lower log seen end on, the upper log seen from its side. */
  private record Corner(Notch below, Notch above, Length wall) {
    static Corner random(SplittableRandom random) {
      Length step = Length.ofInchFraction(1, 2);
      Length gap = Length.ofInchFraction(4 + random.nextInt(40), 32);
      Slope slope = new Slope(BigDecimal.valueOf(20 + random.nextInt(40), 1));
      Length print = Length.ofInchFraction(1, 16);
      Length size = step.times(20 + random.nextInt(16));
      Length next = step.times(20 + random.nextInt(16));
      return new Corner(
          new Notch(size, gap, slope, print),
          new Notch(next, gap, slope, print),
          Length.ofInchFraction(64 + random.nextInt(64), 16));
    }

    double thickness() {
      return wall.inches();
    }

    double drop() {
      return below.drop(wall).inches();
    }

    /** x runs outward from the inside face, y up from the lower log's centre line. */
    Polygon lowerNeckAcross() {
      double t = thickness();
      double top = below.upper().inches();
      double outside = below.upperOutside(wall).inches();
      double bottom = -below.lower().inches();
      return polygon(0, bottom, t, bottom, t, outside, 0, top);
    }

    /** The upper log's centre line lies U' of the lower plus its own L' above. */
    Polygon upperNeckAlong() {
      return raised(0);
    }

    Polygon raised(double by) {
      double t = thickness();
      double centre = below.upper().plus(above.lower()).inches() + by;
      double shoulder = centre - above.lower().inches();
      double corner = centre - above.lowerCorner(wall).inches();
      double top = centre + above.upper().inches();
      return polygon(0, shoulder, t, corner, t, top, 0, top);
    }

    private static Polygon polygon(double... xy) {
      Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
      for (int i = 0; i < xy.length / 2; i++) {
        ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
      }
      ring[ring.length - 1] = ring[0].copy();
      return SHAPES.createPolygon(ring);
    }
  }
}
