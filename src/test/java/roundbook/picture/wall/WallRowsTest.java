package roundbook.picture.wall;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Wall;
import roundbook.picture.RandomStacks;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.raster.Box;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;

/** A wall's drawing names every log and tells its middle, however low its logs are drawn. */
class WallRowsTest {
  private static final double NARROW = 220;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 24);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLogHasItsTagAndItsMiddle(long seed) {
    Stack stack = RandomStacks.of(seed, (int) (1 + (seed * 7) % 20));
    for (Wall wall : stack.building().walls()) {
      double lowest = WallDrawing.lowest(stack.courses().size());
      for (double high : new double[] {1000, lowest}) {
        WallDrawing drawing =
            new WallDrawing(stack, wall, List.of(), RandomStacks.wording(stack), high);
        Canvas canvas = drawing.draw(opening -> Optional.empty());
        for (FilledPlace log : drawing.logs()) {
          String what = "seed " + seed + " " + wall.name() + log.round() + ", " + drawing.course();
          List<Box> texts = textsIn(log, drawing, canvas);
          double centre = drawing.on(drawing.elevation().length() / 2, 0).x();
          assertTrue(texts.stream().anyMatch(box -> box.left() < centre), what);
          assertTrue(texts.size() == 2 || isNarrow(drawing), what);
        }
      }
    }
  }

  /** Returns whether there is no room for two texts beside those of the gaps. */
  private static boolean isNarrow(WallDrawing drawing) {
    return drawing.on(drawing.elevation().length(), 0).x() - drawing.on(0, 0).x() < NARROW;
  }

  /** Returns the texts that stand at the middle of a log's height, between the walls across. */
  private static List<Box> textsIn(FilledPlace log, WallDrawing drawing, Canvas canvas) {
    Elevation elevation = drawing.elevation();
    double middle = elevation.length() / 2;
    double z = (elevation.crown(log, middle) + elevation.belly(log, middle)) / 2;
    double left = drawing.on(elevation.leftFace(), z).x();
    double right = drawing.on(elevation.rightFace(), z).x();
    double y = drawing.on(0, z).y();
    return canvas.texts().stream()
        .filter(box -> Math.abs(box.middle().y() - y) < 2)
        .filter(box -> box.left() > left && box.right() < right)
        .toList();
  }
}
