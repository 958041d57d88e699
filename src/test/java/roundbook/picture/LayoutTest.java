package roundbook.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.face.FaceCase;
import roundbook.picture.face.FaceDrawing;
import roundbook.picture.face.LowerChanges;
import roundbook.picture.full.SlopeTemplate;
import roundbook.picture.ground.CentreLineDrawing;
import roundbook.picture.ground.FoundationDrawing;
import roundbook.picture.ground.PlanDrawing;
import roundbook.picture.raster.Box;
import roundbook.picture.wall.WallDrawing;
import roundbook.picture.words.Wording;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** No text of any drawing is cut off at the edge or lies on another, whatever the plan. */
class LayoutTest {
  /** The four corners each put right by another amount, for the logs laid first. */
  private static final LowerChanges PUT_RIGHT = new LowerChanges(changes(5, 7), changes(-3, -8));

  private static List<LowerChanges.Change> changes(long north, long south) {
    return List.of(
        new LowerChanges.Change("N", Length.ofInchFraction(north, 16)),
        new LowerChanges.Change("S", Length.ofInchFraction(south, 16)),
        new LowerChanges.Change("E", Length.ZERO),
        new LowerChanges.Change("W", Length.ZERO));
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 12);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void facesKeepTheirTextsApart(long seed) {
    Stack stack = stack(seed);
    for (Wording wording : wordings(stack)) {
      for (FaceCase faces : cases(stack)) {
        for (boolean footed : new boolean[] {true, false}) {
          FaceDrawing drawing = new FaceDrawing(faces, LowerChanges.NONE, wording, footed);
          check("faces", seed, drawing.draw("ROUND 20 · N E S W"));
          check(
              "faces",
              seed,
              new FaceDrawing(faces, PUT_RIGHT, wording, footed).draw("ROUND 20 · N E S W"));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void plansKeepTheirTextsApart(long seed) {
    Stack stack = stack(seed);
    for (Wording wording : wordings(stack)) {
      for (Course course : stack.courses()) {
        check("plan", seed, new PlanDrawing(stack.building(), wording).draw(course));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatCrewsNeedFirstKeepsItsTextsApart(long seed) {
    Stack stack = stack(seed);
    for (Wording wording : wordings(stack)) {
      check("centre line", seed, new CentreLineDrawing(wording).draw());
      for (Length step : List.of(Length.ZERO, stack.foundationStep())) {
        Canvas canvas = new FoundationDrawing(stack.building(), step, wording).draw();
        check("foundation", seed, canvas);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void wallsKeepTheirTextsApart(long seed) {
    Stack stack = stack(seed);
    for (Wording wording : wordings(stack)) {
      for (Wall wall : stack.building().walls()) {
        double lowest = WallDrawing.lowest(stack.courses().size());
        for (double high : new double[] {1000, lowest}) {
          WallDrawing drawing =
              new WallDrawing(stack, wall, RandomStacks.openings(stack, seed), wording, high);
          check(
              "wall " + wall.name() + " " + high,
              seed,
              drawing.draw(opening -> Optional.of(Length.ofInches(2))));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fullSizePagesKeepTheirTextsApart(long seed) {
    Stack stack = stack(seed);
    for (Wording wording : wordings(stack)) {
      check("template", seed, new SlopeTemplate(stack, wording).draw());
    }
  }

  private static Stack stack(long seed) {
    return RandomStacks.of(seed, (int) (1 + (seed * 7) % 20));
  }

  private static Set<FaceCase> cases(Stack stack) {
    return stack.courses().stream()
        .flatMap(course -> course.places().stream())
        .map(log -> FaceCase.of(stack, log))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static List<Wording> wordings(Stack stack) {
    return List.of(RandomStacks.wording(stack), RandomStacks.longWording(stack));
  }

  private static void check(String what, long seed, Canvas canvas) {
    List<Box> seen = new ArrayList<>();
    assertTrue(canvas.texts().size() > 2, what);
    for (Box box : canvas.texts()) {
      assertTrue(box.inside(canvas.page()), () -> what + ", seed " + seed + ": cut off " + box);
      for (Box other : seen) {
        assertTrue(
            !box.overlaps(other), () -> what + ", seed " + seed + ": " + box + " on " + other);
      }
      seen.add(box);
    }
  }
}
