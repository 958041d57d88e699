package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static roundbook.rounds.TwoRounds.choice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Gaps and heights are checked as they are built: marks as cut and corners as read. */
class StackCheckTest {
  /** Logs of every taper, so that no two cancel each other in a gap. */
  private static final Job JOB = TwoRounds.job(8, TwoRounds::tapered);

  @Test
  void aSoundPlanOfUnevenLogsHasNoFault() {
    assertEquals(List.of(), faults(JOB, JOB));
  }

  /** With another overhang the inside faces and the middle of the trimmed logs lie elsewhere. */
  @Test
  void gapsAtOtherPlacesAreFound() {
    List<String> faults = faults(overhanging(5), JOB);
    for (String wall : List.of("N", "E", "S", "W")) {
      for (String place : List.of("left", "middle", "right")) {
        assertFault("gap of " + wall + " over round 1, " + place + " should be", faults);
      }
    }
  }

  /** Between faces that lie further apart is more of the gap than the extremes were sought in. */
  @Test
  void extremesThatAreNoneAreFound() {
    assertFault("over round 1 passes its own extremes", faults(overhanging(0), JOB));
  }

  /** Marks as cut raise a wall's next log by what they are off, and the round by their mean. */
  @Test
  void marksAsCutAreTakenIntoTheHeights() {
    Optional<Length> none = Optional.empty();
    Optional<Length> low = Optional.of(Length.ofInchFraction(5, 2));
    Optional<Length> high = Optional.of(Length.ofInchFraction(9, 2));
    Map<Place, Measures> typed =
        Map.of(
            new Place(1, "N"), new Measures(none, none, none, low, high),
            new Place(1, "E"), new Measures(none, none, none, high, none),
            new Place(2, "S"), new Measures(none, none, none, none, low));
    Job built = JOB.withBuilt(AsBuilt.NOTHING.withPlaces(Map.of(), typed));
    assertEquals(List.of(), faults(built, built));
    List<String> faults = faults(built, JOB);
    assertFault("height of round 1", faults);
    assertFault("second height of 1", faults);
  }

  /** Corners that read out of level tilt the gaps over them, straight from face to face. */
  @Test
  void cornersAsReadTiltTheGaps() {
    Choice plain = choice(JOB);
    Stack stack = TwoRounds.stack(JOB, plain);
    Notch notch = plain.courses().get(0).notch();
    Map<Place, Held> held = new HashMap<>();
    plain.courses().get(0).places().forEach(place -> held.put(place.place(), place.held()));
    Length level = stack.levelHeight(1);
    Map<Corner, Length> read =
        Map.of(
            new Corner(1, "NW"), level.plus(Length.ofInchFraction(3, 8)),
            new Corner(1, "NE"), level,
            new Corner(1, "SE"), level.minus(Length.ofInchFraction(1, 4)),
            new Corner(1, "SW"), level.plus(Length.ofInchFraction(1, 8)));
    Job built =
        JOB.withBuilt(
            AsBuilt.NOTHING
                .withCut(List.of(new CutSize(notch.size(), notch.gap())))
                .withPlaces(held, Map.of())
                .withReadings(read, Map.of()));
    Stack risen = TwoRounds.stack(built, choice(built));
    assertTrue(
        risen.joints().stream()
            .anyMatch(joint -> !joint.more().left().equals(joint.more().right())));
    assertEquals(List.of(), faults(built, built));
  }

  /** A mark that the step does not divide is rounded, ties up (common practice). */
  @Test
  void stepsAreRoundedWithTiesUp() {
    assertEquals(2.5, StackCheck.rounded(2.25, 0.5));
    assertEquals(2.0, StackCheck.rounded(2.2499, 0.5));
    assertEquals(2.2499, StackCheck.rounded(2.2499, 0));
    assertEquals(-2.0, StackCheck.rounded(-2.25, 0.5));
  }

  private static Job overhanging(int inches) {
    return JOB.with(JOB.rules().with(Setting.OVERHANG, Length.ofInches(inches), Origin.OPTION));
  }

  /** Checks the plan of one job as if it were that of another. */
  private static List<String> faults(Job asked, Job planned) {
    Choice choice = choice(planned);
    List<Course> courses = choice.courses();
    Checks checks = new Checks();
    new StackCheck(asked, courses, TwoRounds.stack(planned, choice), checks).check();
    return checks.verdict().faults();
  }

  private static void assertFault(String words, List<String> faults) {
    assertTrue(faults.stream().anyMatch(each -> each.contains(words)), words + ": " + faults);
  }

  @Test
  void aCutRoundKeepsTheGapOfItsTime() {
    Notch notch = choice(JOB).courses().get(0).notch();
    AsBuilt cut = AsBuilt.NOTHING.withCut(List.of(new CutSize(notch.size(), notch.gap())));
    Length wide = Length.ofInchFraction(3, 2);
    Job later =
        JOB.withBuilt(cut).with(JOB.rules().with(Setting.CHINKING_GAP, wide, Origin.OPTION));
    assertEquals(List.of(), faults(later, later));
    assertFault("round 1 lower mark", faults(later.withBuilt(AsBuilt.NOTHING), later));
  }
}
