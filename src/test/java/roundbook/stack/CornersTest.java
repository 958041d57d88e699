package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/**
 * Corners as read, worked out by hand: rounds of 14 in with a gap of 1 in have marks of 3 1/4 and 4
 * 1/4 in, so every course is 15 in high and second-laid logs lie 7 1/2 in over first-laid ones.
 */
class CornersTest {
  private static final BuildRules RULES = Jobs.rules(false);
  private static final Building BUILDING =
      Jobs.building(Length.ofInches(240), Length.ofInches(168), RULES.thickness());
  private static final Wall NORTH = BUILDING.walls().get(0);
  private static final Wall EAST = BUILDING.walls().get(1);
  private static final Length CHART = sixteenths(52);

  @Test
  void aWallGrowsByItsCourses() {
    Stack stack = stack(RULES, AsBuilt.NOTHING);
    Length first = stack.firstHeights().get(0);
    assertEquals(first.plus(sixteenths(120)), stack.centre(1, EAST));
    assertEquals(first.plus(Length.ofInches(15)), stack.centre(2, NORTH));
    assertEquals(first.plus(sixteenths(120 + 68)), stack.levelHeight(1));
    assertEquals(first.plus(sixteenths(120 + 480 + 7 * 16)), stack.wallHeight());
    assertEquals(first.plus(Length.ofInches(30 + 7)), stack.top(NORTH));
    assertEquals(8, stack.joints().size());
    assertEquals(2, stack.joints(NORTH).size());
    assertEquals(1, stack.joints(NORTH, 1).size());
    assertEquals(2, stack.joints(NORTH, 2).size());
    assertEquals(1, stack.joints(NORTH, 3).size());
    assertEquals(
        Length.ZERO, new Stack(RULES, BUILDING, List.of(), List.of(), List.of()).wallHeight());
  }

  /** Uppers of the second-laid logs cut otherwise move the height that corners are checked at. */
  @Test
  void theLevelHeightIsThatOfTheMarksAsCut() {
    Stack chart = stack(RULES, AsBuilt.NOTHING);
    Stack cut = stack(RULES, built(Map.of(), Map.of(new Place(1, "E"), cut(52, 72))));
    assertEquals(chart.levelHeight(1).plus(sixteenths(2)), cut.levelHeight(1));
    Stack first = stack(RULES, built(Map.of(), Map.of(new Place(1, "N"), cut(52, 72))));
    assertEquals(chart.levelHeight(1).plus(sixteenths(2)), first.levelHeight(1), "half of 1/4 in");
  }

  @Test
  void aLowCornerIsPutRightInTheNextRound() {
    Stack stack = stack(RULES, read(-4));
    Corners corners = stack.corners();
    assertEquals(sixteenths(-4), corners.high(1, "NW"));
    assertEquals(Length.ZERO, corners.high(1, "NE"));
    assertEquals(sixteenths(4), corners.change(2, true, "NW"));
    assertEquals(Length.ZERO, corners.change(1, true, "NW"));
    assertEquals(Length.ZERO, corners.high(2, "NW"));
    assertEquals(sixteenths(56), corners.nextLower(1, "NW", CHART, BUILDING, RULES));
    assertEquals(CHART, corners.nextLower(1, "NE", CHART, BUILDING, RULES));
  }

  /**
   * Three corners 1/4 in under the plan and one 5/16: the plan goes on from there, no mark changes.
   */
  @Test
  void aLowWallThatIsLevelStaysAsItIs() {
    AsBuilt low = readings(-4, -4, -4, -5);
    Stack plan = stack(RULES, AsBuilt.NOTHING);
    Stack stack = stack(RULES, low);
    for (String corner : BUILDING.corners()) {
      assertEquals(Length.ZERO, stack.corners().change(2, true, corner), corner);
    }
    assertEquals(sixteenths(-4), stack.corners().common(1, BUILDING));
    assertEquals(plan.levelHeight(1), stack.levelHeight(1));
    assertEquals(plan.levelHeight(2).minus(sixteenths(4)), stack.levelHeight(2));
    assertEquals(plan.levelHeight(3).minus(sixteenths(4)), stack.levelHeight(3));
    assertEquals(plan.top(NORTH).minus(sixteenths(4)), stack.top(NORTH));
    assertEquals(
        plan.joints(NORTH).get(1).middle(), stack.joints(NORTH).get(1).middle(), "higher gaps");
  }

  /** Held: + 1/4 in for all within the 1/2 in that a mark changes, beside what levels them. */
  @Test
  void aHeightThatIsHeldComesBackAfterTheDifferences() {
    BuildRules held = RULES.with(Setting.HOLD_HEIGHT, "yes", Origin.OPTION);
    Corners corners = stack(held, at(2, -12, -8, -8, -9)).corners();
    List<Long> marks = List.of(8L, 4L, 4L, 5L);
    for (int corner = 0; corner < 4; corner++) {
      assertEquals(
          sixteenths(marks.get(corner)),
          corners.change(3, true, BUILDING.corners().get(corner)),
          BUILDING.corners().get(corner));
    }
    Corners two = stack(held, readings(-4, -4, -4, -4)).corners();
    assertEquals(sixteenths(2), two.change(2, true, "NW"), "half in each of two rounds");
    assertEquals(sixteenths(2), two.change(3, true, "NW"));
    assertEquals(Length.ZERO, two.high(3, "NW"));
  }

  /** A top that stands alone and high is pared, and no lower mark is changed for it too. */
  @Test
  void aHighTopIsParedAndItsLowerMarkStays() {
    Corners corners = stack(RULES, readings(6, 0, 0, 0)).corners();
    String high = BUILDING.corners().get(0);
    assertEquals(sixteenths(4), corners.at(1, high).pare());
    assertEquals(Length.ZERO, corners.change(2, true, high));
    assertEquals(sixteenths(2), corners.high(2, high));
  }

  /** One mark of four is the first-laid log's own, the second-laid one stands on three more. */
  @Test
  void whatACornerReadsIsSharedAmongFourMarks() {
    Corners corners = stack(RULES, read(-4)).corners();
    assertEquals(sixteenths(-1), corners.lift(1, true, "NW"));
    assertEquals(sixteenths(-3), corners.lift(1, false, "NW"));
    assertEquals(Length.ZERO, corners.lift(2, true, "NW"));
  }

  /** Seen from outside the north, the north-west corner is on the right. */
  @Test
  void theGapOverALowCornerIsWider() {
    Joint planned = stack(RULES, AsBuilt.NOTHING).joints(NORTH).get(0);
    Joint joint = stack(RULES, read(-4)).joints(NORTH).get(0);
    assertEquals(planned.left(), joint.left());
    assertEquals(planned.right().plus(sixteenths(1)), joint.right());
    assertEquals(planned.middle().plus(Length.ofInchFraction(1, 32)), joint.middle());
  }

  /** A mark that was cut otherwise stands as it was cut, whatever the readings would ask. */
  @Test
  void aMarkThatIsCutIsNotChanged() {
    Map<Corner, Length> readings = read(-4).readings();
    AsBuilt built = built(readings, Map.of(new Place(2, "N"), cut(53, 68)));
    Corners corners = stack(RULES, built).corners();
    assertEquals(Length.ZERO, corners.change(2, true, "NW"));
    assertEquals(sixteenths(-4), corners.high(2, "NW"));
  }

  @Test
  void flagsTellWhichLimitIsPassed() {
    Joint joint = stack(RULES, AsBuilt.NOTHING).joints(NORTH).get(0);
    assertEquals(Joint.Flag.NONE, joint.flag(limits(16, 16)));
    assertEquals(Joint.Flag.SMALL, joint.flag(limits(17, 20)));
    assertEquals(Joint.Flag.LARGE, joint.flag(limits(8, 15)));
    assertEquals(Joint.Flag.BOTH, joint.flag(limits(17, 15)));
    assertEquals("▼▲", Joint.Flag.BOTH.symbol());
    assertEquals("", Joint.Flag.NONE.symbol());
  }

  @Test
  void buttsAndTipsLieAtTheirCorners() {
    FilledPlace round1 = stack(RULES, AsBuilt.NOTHING).courses().get(0).on(NORTH).orElseThrow();
    FilledPlace round2 = stack(RULES, AsBuilt.NOTHING).courses().get(1).on(NORTH).orElseThrow();
    assertEquals(round1.buttAtStart() ? "NW" : "NE", round1.buttCorner(BUILDING));
    assertEquals(round2.buttAtStart() ? "NW" : "NE", round2.buttCorner(BUILDING));
    assertEquals(round1.buttAtStart(), !round2.buttAtStart(), "ends alternate");
    String west = BUILDING.before(NORTH).name();
    assertEquals(round1.buttAtStart() ? west : "E", round1.crossingAtButt(BUILDING).name());
    assertEquals(round1.buttAtStart() ? "E" : west, round1.crossingAtTip(BUILDING).name());
    assertEquals(Length.ZERO, stack(RULES, AsBuilt.NOTHING).courses().get(0).spread());
  }

  @Test
  void endsAreRefusedOnlyWhereTheRulesSaySo() {
    BuildRules refuse = RULES.with(Setting.TIP_RULE, "refuse", Origin.OPTION);
    assertTrue(new EndFit(refuse, BUILDING).refuses());
    assertFalse(new EndFit(RULES, BUILDING).refuses());
    Course course = stack(RULES, AsBuilt.NOTHING).courses().get(0);
    EndFit fit = new EndFit(RULES, BUILDING);
    FilledPlace thick = course.on(NORTH).orElseThrow();
    assertTrue(fit.holds(thick, course.notch()));
    assertFalse(fit.isFlagged(course, thick));
    for (String[] ends : new String[][] {{"14", "7"}, {"7", "14"}}) {
      Log log = Jobs.log("1", thick.trimmed(), ends[0], "14", ends[1]);
      FilledPlace thin = thick.with(new Piece(log, Length.ZERO, thick.trimmed()));
      assertFalse(fit.holds(thin, course.notch()));
      assertTrue(fit.isFlagged(course, thin));
    }
  }

  /** A log on the ground has no lower notch; nothing crosses the last logs of the ring. */
  @Test
  void onlyMarksThatAreCutAreGraded() {
    Stack stack = stack(RULES, AsBuilt.NOTHING);
    int last = stack.courses().size();
    EndFit fit = new EndFit(RULES, BUILDING, last);
    FilledPlace ground = slim(stack.courses().get(0).on(NORTH).orElseThrow());
    assertEquals(1, fit.tip(stack.courses().get(0), ground).bearingShare());
    assertTrue(
        new EndFit(starter(), BUILDING, last).tip(stack.courses().get(0), ground).bearingShare()
            < 1);
    FilledPlace top = slim(stack.courses().get(last - 1).on(EAST).orElseThrow());
    Course course = stack.courses().get(last - 1);
    assertFalse(fit.tip(course, top).isUpperOff());
    assertTrue(fit.tip(course, top).bearingShare() < 1);
    assertTrue(new EndFit(RULES, BUILDING).tip(course, top).isUpperOff());
  }

  private static BuildRules starter() {
    return RULES.with(Setting.FIRST_BED, "starter", Origin.OPTION);
  }

  /** Returns a place with a log so slim at both ends that a whole notch would lose much. */
  private static FilledPlace slim(FilledPlace place) {
    Log log = Jobs.log("1", place.trimmed(), "9", "14", "9");
    return place.with(new Piece(log, Length.ZERO, place.trimmed()));
  }

  private static BuildRules limits(long least, long most) {
    return RULES
        .with(Setting.GAP_LEAST, sixteenths(least), Origin.OPTION)
        .with(Setting.GAP_MOST, sixteenths(most), Origin.OPTION);
  }

  /** Returns readings after round 1: the corner NW off by so many sixteenths, the others true. */
  private static AsBuilt read(long off) {
    Length level = stack(RULES, AsBuilt.NOTHING).levelHeight(1);
    Map<Corner, Length> readings = new LinkedHashMap<>();
    BUILDING.corners().forEach(corner -> readings.put(new Corner(1, corner), level));
    readings.put(new Corner(1, "NW"), level.plus(sixteenths(off)));
    return built(readings, Map.of());
  }

  /** Returns readings after round 1, in sixteenths above the plan, corner by corner. */
  private static AsBuilt readings(long... off) {
    return at(1, off);
  }

  private static AsBuilt at(int round, long... off) {
    Length level = stack(RULES, AsBuilt.NOTHING).levelHeight(round);
    Map<Corner, Length> readings = new LinkedHashMap<>();
    for (int corner = 0; corner < off.length; corner++) {
      readings.put(
          new Corner(round, BUILDING.corners().get(corner)), level.plus(sixteenths(off[corner])));
    }
    return built(readings, Map.of());
  }

  private static AsBuilt built(Map<Corner, Length> readings, Map<Place, Measures> measures) {
    return AsBuilt.NOTHING.withPlaces(Map.of(), measures).withReadings(readings, Map.of());
  }

  private static Measures cut(long lower, long upper) {
    return new Measures(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(sixteenths(lower)),
        Optional.of(sixteenths(upper)));
  }

  private static Stack stack(BuildRules rules, AsBuilt built) {
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= 3; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (Wall wall : BUILDING.walls()) {
        Length trimmed = BUILDING.trimmed(wall, rules.overhang());
        Piece piece = new Piece(Jobs.log("1", trimmed, "14", "14", "14"), Length.ZERO, trimmed);
        logs.add(FilledPlace.of(piece, wall, round, rules.clockwise(round)));
      }
      courses.add(Course.of(round, logs, rules));
    }
    return Stack.of(rules, BUILDING, courses, built);
  }

  private static Length sixteenths(long count) {
    return Length.ofInchFraction(count, 16);
  }
}
