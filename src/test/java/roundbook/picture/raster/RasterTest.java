package roundbook.picture.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the raster against the JDK's own geometry, pixel middle by pixel middle. */
class RasterTest {
  private static final int SIZE = 90;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aSurfaceTakesThePixelsWhoseMiddleItHolds(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Spot> outline = Stream.generate(() -> spot(random)).limit(3 + random.nextInt(6)).toList();
    Raster raster = new Raster(SIZE, SIZE);
    raster.fill(outline, Ink.BLACK);
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    path.moveTo(outline.get(0).x(), outline.get(0).y());
    outline.forEach(spot -> path.lineTo(spot.x(), spot.y()));
    path.closePath();
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        boolean held = path.contains(column + 0.5, row + 0.5);
        assertEquals(held, raster.black(column, row), seed + ": " + column + ", " + row);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aStrokeTakesThePixelsNearItsLine(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Spot from = spot(random);
    Spot to = seed == 8 ? from : spot(random);
    double reach = 0.6 + 4 * random.nextDouble();
    Raster raster = new Raster(SIZE, SIZE);
    raster.stroke(from, to, reach, Ink.BLACK);
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        double away = Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), column + 0.5, row + 0.5);
        if (Math.abs(away - reach) > 1e-6) {
          assertEquals(away < reach, raster.black(column, row), seed + ": " + column + ", " + row);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"HATCH", "CROSS", "DOTS"})
  void patternsAreTellingAndSparse(String name) {
    Raster raster = new Raster(SIZE, SIZE);
    raster.fill(new Box(0, 0, SIZE, SIZE).corners(), Ink.valueOf(name));
    double part = count(raster) / (double) (SIZE * SIZE);
    assertTrue(part > 0.01 && part < 0.4, name + " " + part);
  }

  @Test
  void whiteWipesOutWhatLayThere() {
    Raster raster = new Raster(SIZE, SIZE);
    raster.fill(new Box(0, 0, SIZE, SIZE).corners(), Ink.BLACK);
    raster.fill(new Box(10, 10, 20, 20).corners(), Ink.WHITE);
    assertEquals(SIZE * SIZE - 100, count(raster));
  }

  private static Spot spot(SplittableRandom random) {
    return new Spot(random.nextDouble() * 120 - 15, random.nextDouble() * 120 - 15);
  }

  private static int count(Raster raster) {
    int count = 0;
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        count += raster.black(column, row) ? 1 : 0;
      }
    }
    return count;
  }
}
