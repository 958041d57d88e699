package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Pairs of short logs at the very limits of what the check lets pass, worked by hand.
 *
 * <p>All logs are cylinders of 12 in, so with a gap of 1 in L = 2 3/4 and U = 3 3/4; on a flat bed
 * the centre lines of N and S lie at 2 3/4 and 15 3/4 in, those of E and W at 9 1/4 in. The walls
 * are 20 by 14 ft outside, N, S and E 6 in thick, W 10 in.
 */
class PairCheckByHandTest {
  private static final String WHERE = "lies where no opening cuts through";
  private static final String SHORT = "is too short";
  private static final String NOTCH = "is too short past its notch";
  private static final Length OFF = Length.ofInchFraction(1, 64);

  /** The bed lies at the lower mark where it is sawn flat, at the belly where it is not. */
  @ParameterizedTest(name = "{0} {1}, bed {2}, {3} to {4} in")
  @CsvSource({
    "S, 2, flat, 9.75, 21.75, true",
    "S, 2, flat, 9.76, 21.75, false",
    "S, 2, flat, 9.75, 21.74, false",
    "S, 1, flat, 0, 8.75, true",
    "S, 1, flat, 0.01, 8.75, false",
    "S, 1, level, 0, 8.75, true",
    "S, 1, level, 0.01, 8.75, false",
    "S, 1, starter, 0.5, 12.5, true",
    "S, 1, starter, 0.51, 12.5, false",
    "E, 1, flat, 6.5, 15.25, true",
    "E, 1, flat, 6.51, 15.25, false",
    "E, 1, level, 3.25, 15.25, true",
    "E, 1, level, 6.5, 15.25, false",
    "E, 1, starter, 7, 19, true",
    "E, 1, starter, 7.01, 19, false"
  })
  void anOpeningMustReachOverTheWholeLog(
      String wall, int round, String bed, String sill, String head, boolean cut) {
    BuildRules rules = Jobs.rules(false).with(Setting.FIRST_BED, bed, Origin.OPTION);
    Sides sides = new Sides(wall, round, "60", "40");
    Job job = job(rules, sides.opening(sill, head, true));
    assertEquals(cut ? List.of() : List.of(WHERE), said(job, sides));
  }

  @Test
  void theOpeningMustBeThisOne() {
    Sides sides = new Sides("S", 2, "60", "40");
    BuildRules rules = Jobs.rules(false);
    assertEquals(List.of(), said(job(rules, sides.opening("0", "82", true)), sides));
    assertEquals(List.of(WHERE), said(job(rules, sides.opening("0", "82", false)), sides));
    Sides other = new Sides("N", 2, "60", "40");
    assertEquals(List.of(WHERE), said(job(rules, other.opening("0", "82", true)), sides));
    Sides nearer = new Sides("S", 2, "59.9", "40.1");
    assertEquals(List.of(WHERE), said(job(rules, nearer.opening("0", "82", true)), sides));
    Sides wider = new Sides("S", 2, "60", "40.1");
    assertEquals(List.of(WHERE), said(job(rules, wider.opening("0", "82", true)), sides));
  }

  /** Past the crossing wall and the overhang of 3 in a piece wants 12 in. */
  @ParameterizedTest(name = "{0}: {1} and {2} in beyond the overhang")
  @CsvSource({
    "S, 22, 196, ''",
    "S, 21.9, 196.1, L1",
    "S, 22, 200.1, L2",
    "E, 18, 128, ''",
    "E, 17.9, 128.1, L1",
    "E, 18, 132.1, L2"
  })
  void aPieceMustHoldItsNotch(String wall, String left, String width, String lacking) {
    Sides sides = new Sides(wall, 2, left, width);
    List<String> faults = faults(job(Jobs.rules(false), sides.opening("0", "82", true)), sides);
    assertEquals(lacking.isEmpty() ? 0 : 1, faults.size(), faults.toString());
    assertTrue(faults.stream().allMatch(each -> each.contains("short log " + lacking)));
    assertTrue(faults.stream().allMatch(each -> each.endsWith(NOTCH)));
  }

  /** Two inches are squared off each end. */
  @Test
  void aPieceMustBeSquaredAtBothEnds() {
    Sides sides = new Sides("S", 2, "60", "40");
    Job job = job(Jobs.rules(false), sides.opening("0", "82", true));
    Length two = Length.ofInches(2);
    assertEquals(List.of(), said(job, sides.squared(two, two)));
    assertEquals(List.of(SHORT), said(job, sides.squared(two.minus(OFF), two)));
    assertEquals(List.of(SHORT), said(job, sides.squared(two, two.minus(OFF))));
  }

  /** What is settled is built; the check has nothing to say of where it ought to have gone. */
  @Test
  void aSettledPairIsOnlyMeasured() {
    Sides sides = new Sides("S", 2, "10", "220");
    Job job = job(Jobs.rules(false), sides.opening("30", "40", false));
    Sides cut = sides.squared(OFF, OFF);
    assertEquals(4, faults(job, cut).size(), "the opening, both notches, one length");
    Map<Place, Held> held = Map.of(new Place(2, "S"), cut.filled(job).held());
    AsBuilt built = AsBuilt.NOTHING.withPlaces(held, Map.of());
    assertEquals(List.of(), faults(job.withBuilt(built), cut));
  }

  private static List<String> said(Job job, Sides sides) {
    return faults(job, sides).stream()
        .map(each -> each.substring(each.indexOf("wall ") + "wall S ".length()))
        .toList();
  }

  private static List<String> faults(Job job, Sides sides) {
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= 2; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        boolean here = round == sides.round && wall.name().equals(sides.wall);
        boolean start = job.rules().clockwise(round);
        FilledPlace whole = FilledPlace.of(whole(job, wall), wall, round, start);
        logs.add(here ? sides.filled(job) : whole);
      }
      courses.add(Course.of(round, logs, job.rules()));
    }
    Stack stack = Stack.of(job.rules(), job.building(), courses);
    Checks checks = new Checks();
    new PairCheck(job, stack, checks).pairs();
    return checks.verdict().faults();
  }

  private static Piece whole(Job job, Wall wall) {
    Length least = new Fit(job).least(wall);
    return new Piece(
        Jobs.log("L9", least, "12", "12", "12"), Length.ofInches(2), new Fit(job).trimmed(wall));
  }

  private static Job job(BuildRules rules, Opening opening) {
    Length six = Length.ofInches(6);
    Building alike = Jobs.building(Length.ofInches(240), Length.ofInches(168), six);
    List<Wall> walls = new ArrayList<>(alike.walls());
    walls.set(3, new Wall("W", Length.ofInches(168), false, Length.ofInches(10), ""));
    return new Job(rules, new Building(walls), List.of(), List.of(opening), List.of());
  }

  /** An opening in a wall and the pair beside it, in inches, and what is squared off each log. */
  private record Sides(
      String wall, int round, String left, String width, Length offButt, Length offTip) {
    Sides(String wall, int round, String left, String width) {
      this(wall, round, left, width, Length.ofInches(2), Length.ofInches(2));
    }

    Sides squared(Length butt, Length tip) {
      return new Sides(wall, round, left, width, butt, tip);
    }

    Opening opening(String sill, String head, boolean shortLogs) {
      return new Opening(
          "Door",
          wall,
          Jobs.inches(left),
          Jobs.inches(width),
          Jobs.inches(sill),
          Jobs.inches(head),
          shortLogs,
          "",
          new CellRef("yard.xlsx", "Openings", 2, 0));
    }

    FilledPlace filled(Job job) {
      Wall own = job.building().wall(wall).orElseThrow();
      Length overhang = job.rules().overhang();
      Length near = Jobs.inches(left).plus(overhang);
      Length far = new Fit(job).trimmed(own).minus(near).minus(Jobs.inches(width));
      Piece left = cut("L1", near, offButt, offTip);
      Piece right = cut("L2", far, Length.ofInches(2), Length.ofInches(2));
      return FilledPlace.of(
          job,
          new PlacedLog(left, own, round, false, Length.ZERO),
          new PlacedLog(right, own, round, true, new Fit(job).trimmed(own).minus(far)));
    }

    private static Piece cut(String tag, Length trimmed, Length offButt, Length offTip) {
      Length length = trimmed.plus(offButt).plus(offTip);
      return new Piece(Jobs.log(tag, length, "12", "12", "12"), offButt, trimmed);
    }
  }
}
