package roundbook.picture.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static roundbook.picture.canvas.Pixels.pixels;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;
import roundbook.picture.Drawings;
import roundbook.picture.RandomStacks;
import roundbook.picture.canvas.Picture;
import roundbook.picture.canvas.Pixels;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.words.Wording;
import roundbook.plan.PlanFixtures;
import roundbook.stack.Stack;

/**
 * Which log is drawn how, and where the ink lies. That butts alternate, the outside face is the
 * mirrored inside one, and a first log on a flat bed has no lower notch is common practice.
 */
class FaceDrawingTest {
  private static final double LEFT_SIGN = 28;
  private static final double RIGHT_SIGN = FaceStrip.WIDTH - 28;
  private static final double CENTRE = FaceStrip.CENTRE;

  /** Where the outside face begins, right of the inside one. */
  private static final double OUTSIDE = FaceStrip.WIDTH + FaceDrawing.BETWEEN;

  @ParameterizedTest
  @CsvSource({
    "flat, 1, 2",
    "level, 1, 2",
    "starter, 1, 1",
    "flat, 2, 1",
    "flat, 3, 2",
    "starter, 3, 2"
  })
  void alikeLogsShareADrawing(String bed, int round, int drawings) {
    assertEquals(drawings, faces(bed, round).size());
  }

  @ParameterizedTest
  @CsvSource({"1, true", "2, false", "3, true"})
  void theButtIsBlackAndOnItsOwnSide(int round, boolean leftInside) {
    for (Picture picture : faces("flat", round)) {
      Pixels pixels = new Pixels(picture);
      assertEquals(leftInside, sign(pixels, LEFT_SIGN) > 0.95);
      assertEquals(!leftInside, sign(pixels, RIGHT_SIGN) > 0.95);
      assertEquals(!leftInside, sign(pixels, OUTSIDE + LEFT_SIGN) > 0.95);
      assertEquals(leftInside, sign(pixels, OUTSIDE + RIGHT_SIGN) > 0.95);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void moreIsCutOffTheTopOnTheOutsideFace(int round) {
    Pixels pixels = new Pixels(faces("flat", round).get(0));
    Box inside = pixels(104, CENTRE - 26, 164, CENTRE - 20);
    Box outside = pixels(OUTSIDE + 104, CENTRE - 26, OUTSIDE + 164, CENTRE - 20);
    assertEquals(0, pixels.part(inside), 1e-9);
    assertEquals(Ink.HATCH, pattern(pixels, outside));
  }

  @Test
  void aFlatBedIsHatchedAllAlongAndASecondLogOnlyBetweenItsShoulders() {
    List<Picture> first = withoutWords("flat").faces(1);
    Box neck = pixels(100, CENTRE + 20, 120, CENTRE + 34);
    Box body = pixels(190, CENTRE + 20, 230, CENTRE + 36);
    assertEquals(Ink.HATCH, pattern(new Pixels(first.get(0)), neck));
    assertEquals(Ink.HATCH, pattern(new Pixels(first.get(0)), body));
    assertEquals(Ink.HATCH, pattern(new Pixels(first.get(1)), body));
    Pixels second = new Pixels(withoutWords("flat").faces(2).get(0));
    assertEquals(0, second.part(body), 1e-9);
  }

  @Test
  void nothingIsHatchedAboveWhereNothingCrosses() {
    Box top = pixels(60, CENTRE - 37, 88, CENTRE - 30);
    List<Picture> last = faces("flat", 3);
    assertEquals(Ink.HATCH, pattern(new Pixels(last.get(0)), top));
    assertEquals(0, new Pixels(last.get(1)).part(top), 1e-9);
  }

  @Test
  void theWordsGiveTheFourMarks() {
    Stack stack = PlanFixtures.inches().plan(3).stack();
    String words = drawings(stack).faces(2).get(0).altText();
    var notch = stack.courses().get(1).notch();
    var format = RandomStacks.wording(stack).lengths();
    var thickness = stack.rules().thickness();
    assertTrue(words.contains(format.mark(notch.upper()) + " inside"), words);
    assertTrue(words.contains(format.mark(notch.upperOutside(thickness)) + " outside"), words);
    String lower = format.mark(notch.lower()) + " / " + format.mark(notch.lowerCorner(thickness));
    assertTrue(words.contains(lower), words);
    assertTrue(words.startsWith("ROUND 2 · N E S W"), words);
  }

  @Test
  void wallsOfUnequalThicknessHaveDrawingsOfTheirOwn() {
    for (long seed = 1; seed < 40; seed++) {
      Stack stack = RandomStacks.of(seed, 3);
      long kinds =
          stack.building().walls().stream().map(wall -> wall.thickness()).distinct().count();
      int drawings = drawings(stack).faces(2).size();
      assertTrue(kinds == 1 ? drawings == 1 : drawings > 1, "seed " + seed + ": " + drawings);
    }
  }

  @Test
  void anUpperMarkBelowTheCentreLineSaysSo() {
    Stack stack = PlanFixtures.inches().set(Setting.SLOPE_RUN, BigDecimal.ONE).plan(2).stack();
    FaceCase faces = FaceCase.of(stack, stack.courses().get(1).places().get(0));
    assertTrue(faces.notch().upperOutside(faces.thickness()).isNegative());
    FaceDrawing drawing =
        new FaceDrawing(faces, LowerChanges.NONE, RandomStacks.wording(stack), true);
    assertTrue(new FaceStrip(drawing, false, 0).upper(faces.butt()) < 0);
    assertTrue(new FaceStrip(drawing, true, 0).upper(faces.butt()) > 0);
  }

  private static double sign(Pixels pixels, double x) {
    return pixels.part(pixels(x - 4, CENTRE - 24, x + 4, CENTRE - 16));
  }

  /** Returns hatching where a box is neither white nor black, else nothing. */
  private static Ink pattern(Pixels pixels, Box box) {
    double part = pixels.part(box);
    return part > 0.1 && part < 0.35 ? Ink.HATCH : null;
  }

  private static List<Picture> faces(String bed, int round) {
    return drawings(PlanFixtures.inches().set(Setting.FIRST_BED, bed).plan(3).stack()).faces(round);
  }

  /** Returns drawings of three rounds whose words hide no ink. */
  private static Drawings withoutWords(String bed) {
    Stack stack = PlanFixtures.inches().set(Setting.FIRST_BED, bed).plan(3).stack();
    Wording wording = RandomStacks.wording(stack);
    return new Drawings(stack, new Wording(wording.lengths(), (key, values) -> "."));
  }

  private static Drawings drawings(Stack stack) {
    return new Drawings(stack, RandomStacks.wording(stack));
  }
}
