package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;
import roundbook.plan.OrderLine;
import roundbook.plan.OrderLine.Purpose;
import roundbook.plan.Plan;
import roundbook.stack.Stack;
import roundbook.takeoff.Top.LevelTop;
import roundbook.takeoff.Top.WantedHeight;
import roundbook.units.Length;

/** What the first logs lie on, and how the walls end. */
class TopAndBedTest {
  private static Bed bed(String kind) {
    return Cabins.ofRounds(14, 14)
        .with(Setting.FIRST_BED, kind)
        .with(Setting.CHINKING_GAP, Cabins.in(0.75))
        .takeoff()
        .bed()
        .orElseThrow();
  }

  /** D 14, g 3/4: the step (D₁ + g)/2 is 7 3/8; a flat at k is 2 √(49 − k²) wide, 6 at most. */
  @Test
  void aFlatBedStepsTheFoundation() {
    Bed bed = bed("flat");
    assertEquals(7.375, bed.step().inches());
    for (Bed.Under under : bed.logs()) {
      assertTrue(under.flat());
      assertEquals(6, under.mid().inches(), "the full thickness");
    }
  }

  /** D 14, g 1: k is 3 1/4; the tip is 8.1 in thick, its flat narrower than the wall. */
  @Test
  void aThinTipHasANarrowFlat() {
    Bed bed = Cabins.ofRounds(14, 14).tapering(12).takeoff().bed().orElseThrow();
    Bed.Under under = bed.logs().get(0);
    double tip = 14 - 12 * (248.0 - 125) / 250;
    assertEquals(2 * Math.sqrt(tip * tip / 4 - 3.25 * 3.25), under.tip().inches(), 1e-6);
    assertEquals(6, under.butt().inches());
  }

  /** On a level foundation the crown of the second-laid log wants k + g/2 of fill. */
  @Test
  void aLevelBedIsFilledUnderTheSecondLaidLogs() {
    Bed bed = bed("level");
    assertTrue(bed.step().isZero());
    double k = 3.3125;
    assertEquals(6, bed.logs().get(0).mid().inches());
    assertEquals(k + 0.375, bed.logs().get(1).mid().inches(), 1e-6);
    assertFalse(bed.logs().get(1).flat());
  }

  /** On a half-log starter the first crowns clear the foundation by g/2. */
  @Test
  void aStarterLeavesHalfAGapUnderTheFirstLogs() {
    Bed bed = bed("starter");
    assertTrue(bed.onStarter());
    assertEquals(0.375, bed.logs().get(0).mid().inches(), 1e-6);
    assertEquals(0.75, bed.logs().get(1).mid().inches(), 1e-6, "over the half log under it");
  }

  /**
   * D 12 and g 1, all cylinders: over each half log lies a joint just like those above, and every
   * second-laid wall has one joint more than the first-laid ones.
   */
  @Test
  void theJointOverAStarterIsFilled() {
    Takeoff takeoff = Cabins.ofRounds(12, 12, 12).with(Setting.FIRST_BED, "starter").takeoff();
    List<Chinking.Fill> east =
        takeoff.chinking().joints().stream()
            .filter(fill -> fill.joint().lower().wall().name().equals("E"))
            .toList();
    assertEquals(3, east.size());
    assertEquals(0, east.get(0).joint().lower().round());
    assertEquals(east.get(1).gapVolume(), east.get(0).gapVolume(), 1e-6);
    assertEquals(2 + 2 + 3 + 3, takeoff.chinking().joints().size());
    assertTrue(takeoff.starter().lacking(), "no log is left over");
  }

  /** The log kept is the one left over whose middle comes nearest the round's size. */
  @Test
  void aLogIsKeptForTheStarter() {
    Cabins cabin = Cabins.ofRounds(12).with(Setting.FIRST_BED, "starter");
    Plan plan = cabin.spare(250, 15).spare(182, 12.25).spare(150, 12).plan();
    Starter starter = plan.takeoff().starter();
    assertEquals(Set.of("S902"), starter.tags());
    assertFalse(starter.lacking());
    assertTrue(plan.order().stream().noneMatch(line -> line.purpose() == Purpose.STARTER));
    Plan none = Cabins.ofRounds(12).with(Setting.FIRST_BED, "starter").plan();
    OrderLine line =
        none.order().stream().filter(each -> each.purpose() == Purpose.STARTER).findFirst().get();
    assertEquals("E W", line.walls());
    assertEquals(12, line.midFrom().inches());
  }

  /**
   * D 14, g 3/4, T 6: the face reaches √(196 − 36)/2 = 6.3246, down to a sixteenth 6 5/16; U is 4
   * 1/16, so 2 1/4 stays; the part log is cut 6 5/16 − 7 3/8 = −1 1/16 from its centre line.
   */
  @Test
  void allWallsCanEndLevel() {
    Cabins cabin = Cabins.ofRounds(14, 14).with(Setting.CHINKING_GAP, Cabins.in(0.75));
    LevelTop level = cabin.takeoff().top().orElseThrow().level().orElseThrow();
    assertEquals(6.3125, level.flat().inches());
    assertEquals(-1.0625, level.partLog().inches());
    assertEquals(2.25, level.left().inches());
    // The part log's centre line lies (D + g)/2 above the last second-laid one.
    Stack stack = cabin.stack();
    double last = stack.secondHeights().get(1).inches();
    assertEquals(last + 6.3125, level.height().inches());
    assertEquals(level.height().inches(), last + 7.375 + level.partLog().inches());
  }

  @Test
  void thinLastLogsCannotEndLevel() {
    assertTrue(Cabins.ofRounds(14, 8).takeoff().top().orElseThrow().level().isEmpty());
  }

  @Test
  void crownsFollowTheTaper() {
    Top top = Cabins.ofRounds(12).tapering(4).takeoff().top().orElseThrow();
    Top.WallTop north = top.walls().get(0);
    // Round 1 runs clockwise: the butt lies at the wall's right end, seen from outside.
    assertEquals(4 * 228 / 250.0 / 2, north.right().minus(north.left()).inches(), 1e-5);
    assertEquals(2.75 + 6, north.middle().inches(), 1e-6);
    assertEquals(6.5, top.step().inches());
  }

  /** The gap found is tried: with it, and with exact marks, the wall has the height wanted. */
  @ParameterizedTest
  @ValueSource(strings = {"flat", "level", "starter"})
  void theGapFoundGivesTheHeightWanted(String kind) {
    double[] sizes = {14, 13, 13.5, 12, 12.5, 11};
    Cabins cabin =
        Cabins.ofRounds(sizes)
            .with(Setting.FIRST_BED, kind)
            .with(Setting.PRINT_STEP, Length.ZERO)
            .with(Setting.WALL_HEIGHT, Cabins.in(84));
    WantedHeight wanted = cabin.takeoff().top().orElseThrow().wanted().orElseThrow();
    cabin.with(Setting.CHINKING_GAP, Cabins.in(wanted.gap()));
    Stack changed = cabin.stack();
    assertEquals(84, changed.secondHeights().get(5).inches() + 5.5, 1e-5);
    assertEquals(wanted.gap() >= 0.5 && wanted.gap() <= 1.75, wanted.allowed());
  }

  @Test
  void noHeightWantedNoGapFound() {
    assertTrue(Cabins.ofRounds(12).takeoff().top().orElseThrow().wanted().isEmpty());
  }
}
