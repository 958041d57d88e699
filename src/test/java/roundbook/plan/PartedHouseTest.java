package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import roundbook.balance.Effort;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Log.Keep;
import roundbook.job.Piece;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.notch.RoundSize;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Verifier;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Houses of five and eight walls planned whole, and their crossings from the printed marks. */
class PartedHouseTest {
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static List<Wall> ring(int pen, String number, long along, long deep) {
    return Stream.of("N", "E", "S", "W")
        .map(
            side -> {
              boolean first = side.equals("N") || side.equals("S");
              Optional<Length> at =
                  pen > 1 && side.equals("W") ? Optional.of(in(120)) : Optional.empty();
              Length outside = in(first ? along : deep);
              Stand stand = new Stand(pen, List.of(), at);
              return new Wall(side + number, outside, first, in(6), "", stand);
            })
        .toList();
  }

  private static Job job(List<Wall> walls, long seed, int logs, int longer) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Log> made = new ArrayList<>();
    for (int i = 1; i <= logs; i++) {
      Length length = in((i % 5 < longer ? 400 : 232) + random.nextInt(12));
      double mid = 11.5 + random.nextInt(9) / 4.0;
      made.add(
          Jobs.log(
              "L" + i,
              length,
              String.valueOf(mid + 1),
              String.valueOf(mid),
              String.valueOf(mid - .75)));
    }
    BuildRules rules = Jobs.rules(false);
    return new Job(rules, new Building(Building.inOrder(walls)), made, List.of(), List.of());
  }

  private static Job parted(long seed) {
    List<Wall> walls = new ArrayList<>(ring(1, "", 384, 216));
    Stand stand = new Stand(1, List.of("N", "S"), Optional.of(in(150)));
    walls.add(new Wall("P1", in(216), false, in(6), "", stand));
    return job(walls, seed, 25, 2);
  }

  private static Plan plan(Job job) {
    return new Planner(new BalancedChooser()).plan(job, SHORT);
  }

  /** As many rounds as the logs give, one size a round; the verifier looks as the plan is made. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void aHouseWithAPartitionIsPlannedWhole(long seed) {
    Plan plan = plan(parted(seed));
    assertEquals(5, plan.rounds());
    for (Course course : plan.stack().courses()) {
      assertEquals(5, course.size().count());
      boolean east = course.places().get(1).buttAtStart();
      assertEquals(!east, course.places().get(4).buttAtStart(), "opposite to the wall left of it");
    }
  }

  /** Logs kept for sills lie in the first round, in the partition as in the ring. */
  @Test
  void keptLogsLieInThePartitionToo() {
    Job job = parted(1);
    List<Log> logs = new ArrayList<>(job.logs());
    int[] left = {3};
    logs.replaceAll(
        log -> log.length().isLessThan(in(300)) && left[0]-- > 0 ? Kept.log(log, Keep.SILL) : log);
    Job kept = new Job(job.rules(), job.building(), logs, List.of(), List.of());
    Course first = plan(kept).stack().courses().get(0);
    for (FilledPlace place : first.places().subList(1, 5)) {
      boolean along = place.wall().laidFirst();
      Keep keep = place.first().piece().log().traits().keep();
      assertEquals(along ? Keep.ANY : Keep.SILL, keep, place.wall().name());
    }
  }

  /** B-W12: eight walls of a round take eight logs; both pens have one height. */
  @Test
  void twoPensRiseTogether() {
    List<Wall> walls = new ArrayList<>(ring(1, "", 192, 216));
    walls.addAll(ring(2, "2", 192, 216));
    Plan plan = plan(job(walls, 4, 26, 0));
    assertEquals(3, plan.rounds());
    Building building = plan.job().building();
    for (Course course : plan.stack().courses()) {
      assertEquals(8, course.places().size());
      for (String side : List.of("N", "E", "S", "W")) {
        Wall one = building.wall(side).orElseThrow();
        Wall other = building.wall(side + "2").orElseThrow();
        assertEquals(
            plan.stack().centre(course.round(), one), plan.stack().centre(course.round(), other));
        assertEquals(
            !course.on(one).orElseThrow().buttAtStart(),
            course.on(other).orElseThrow().buttAtStart());
      }
    }
  }

  @Test
  void aPartitionTurnedRoundIsFound() {
    Plan plan = plan(parted(2));
    List<Course> courses = new ArrayList<>(plan.stack().courses());
    Course course = courses.get(1);
    List<FilledPlace> places = new ArrayList<>(course.places());
    FilledPlace place = places.get(4);
    places.set(
        4,
        FilledPlace.of(place.first().piece(), place.wall(), place.round(), !place.buttAtStart()));
    courses.set(1, new Course(2, places, course.size(), course.notch(), course.clockwise()));
    var choice =
        new roundbook.rounds.Choice(
            courses,
            plan.choice().unused(),
            plan.choice().score(),
            plan.choice().shortage(),
            plan.choice().problems());
    Verifier.Verdict verdict = Verifier.verify(plan.job(), choice, plan.stack());
    assertTrue(
        verdict.faults().contains("round 2 has a butt at the wrong end"),
        verdict.faults().toString());
    assertFalse(verdict.faults().isEmpty());
  }

  /**
   * The section along the partition's axis through a crossing, drawn from the marks alone: the log
   * that goes through lies under the partition's log and the next one over it. They meet over the
   * whole thickness and share no area.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 5, 9})
  void marksOfACrossingMeetWithoutOverlap(long seed) {
    meets(plan(parted(seed)).stack());
  }

  private static void meets(Stack plan) {
    for (int round = 1; round < plan.courses().size(); round++) {
      Course course = plan.courses().get(round - 1);
      Course next = plan.courses().get(round);
      Junction here = Junction.crossings(plan, course).get(0);
      Junction above = Junction.crossings(plan, next).get(0);
      double through = centre(plan, here.through().wall(), round);
      double partition = centre(plan, here.wall().wall(), round);
      double over = centre(plan, here.through().wall(), round + 1);
      double upper = here.upper().orElseThrow().inches();
      double outside = here.upperOutside().orElseThrow().inches();
      double lower = course.notch().lower().inches();
      double corner = course.notch().lowerCorner(in(6)).inches();
      Polygon under = quad(through - 1, through - 1, through + outside, through + upper);
      Polygon neck =
          quad(partition - corner, partition - lower, partition + upper, partition + upper);
      double nextLower = above.lower().orElseThrow().inches();
      Polygon top = quad(over - nextLower, over - nextLower, over + 1, over + 1);
      assertEquals(0, under.intersection(neck).getArea(), 1e-6, "round " + round);
      assertEquals(0, neck.intersection(top).getArea(), 1e-6);
      assertEquals(StrictMath.hypot(6, upper - outside), shared(under, neck), 1e-6, "bearing");
      assertEquals(6, shared(neck, top), 1e-6, "level bearing");
    }
  }

  private static double shared(Polygon one, Polygon other) {
    return one.getBoundary().intersection(other.getBoundary()).getLength();
  }

  /** Outer face at 0, inner face at 6: bottom outside, bottom inside, top outside, top inside. */
  private static Polygon quad(double bottomOut, double bottomIn, double topOut, double topIn) {
    return new GeometryFactory()
        .createPolygon(
            new Coordinate[] {
              new Coordinate(0, bottomOut),
              new Coordinate(6, bottomIn),
              new Coordinate(6, topIn),
              new Coordinate(0, topOut),
              new Coordinate(0, bottomOut)
            });
  }

  private static double centre(Stack plan, Wall wall, int round) {
    return plan.centre(round, wall).inches();
  }

  /** By hand: 390 − 2 × 9 − 6 in of a wall that is crossed once, 222 − 2 × 9 of the partition. */
  @Test
  void chinkingStopsAtThePartition() {
    Plan plan = plan(parted(1));
    plan.takeoff()
        .chinking()
        .joints()
        .forEach(
            fill -> {
              String name = fill.joint().lower().wall().name();
              double run = name.equals("N") || name.equals("S") ? 366 : 204;
              assertEquals(run, fill.run(), 1e-6, name);
            });
  }

  /** A 32 by 18 ft house with its partition, all logs of a round of one diameter. */
  private static Stack even(String... sizes) {
    BuildRules rules = Jobs.rules(false);
    Building building = parted(1).building();
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= sizes.length; round++) {
      List<FilledPlace> places = new ArrayList<>();
      for (Wall wall : building.walls()) {
        Length trimmed = building.trimmed(wall, rules.overhang());
        String size = sizes[round - 1];
        Piece piece = new Piece(Jobs.log("1", trimmed, size, size, size), Length.ZERO, trimmed);
        places.add(FilledPlace.of(piece, wall, round, building.isButtAtStart(wall, round, rules)));
      }
      courses.add(Course.of(round, places, rules));
    }
    return Stack.of(rules, building, courses);
  }

  /** B-W01, B-W05, by hand: five middles share one size; the marks of the partition's log. */
  @Test
  void fiveLogsShareOneSizeAndItsMarks() {
    List<Length> mids =
        Stream.of("13.25", "13", "12.75", "13.5", "12.5").map(Jobs::inches).toList();
    RoundSize size = RoundSize.of(mids, Jobs.inches("1/2"));
    assertEquals(in(13), size.mean());
    assertEquals(in(13), size.taken());
    Notch notch = Notch.of(size.taken(), Jobs.rules(false));
    assertEquals(in(4), notch.upper(), "level on both faces");
    assertEquals(in(3), notch.lower(), "at the shoulder");
    assertEquals(in(5), notch.lowerCorner(in(6)), "at the outer face");
    assertEquals(in(6), notch.lowerEnd(in(6), in(3)), "at the end");
    assertEquals(in(7), notch.neckHeight(), "its neck at the shoulder");
    assertEquals(in(10), notch.upper().plus(notch.lowerEnd(in(6), in(3))), "and at the end");
  }

  /** B-W03, B-W07, by hand: marks of the log that goes through, and the heights of two rounds. */
  @Test
  void marksAndHeightsOfAHouseWithAPartition() {
    Stack stack = even("13", "12.5");
    for (Junction here : Junction.crossings(stack, stack.courses().get(0))) {
      assertEquals(Optional.of(in(4)), here.upper());
      assertEquals(Optional.of(in(2)), here.upperOutside());
      assertEquals(Optional.empty(), here.lower(), "the first bed is sawn flat all along");
    }
    Stack same = even("13", "13");
    Junction second = Junction.crossings(same, same.courses().get(1)).get(0);
    assertEquals(Optional.of(in(3)), second.lower());
    List<Length> first = stack.firstHeights();
    List<Length> partition = stack.secondHeights();
    assertEquals(List.of(in(3), Jobs.inches("16.875")), first);
    assertEquals(List.of(in(10), Jobs.inches("23.625")), partition);
    Wall wall = stack.building().wall("P1").orElseThrow();
    assertEquals(Jobs.inches("23.625"), stack.centre(2, wall));
  }

  /** B-W08: each contact of a crossing bears on all of 6 by 6 in, without overlap. */
  @ParameterizedTest
  @ValueSource(strings = {"13 12.5", "13 13", "13 12"})
  void contactsOfACrossingBearWhole(String sizes) {
    meets(even(sizes.split(" ")));
  }

  /** B-W09: two pens planned apart, each from its own logs, miss each other at the plate. */
  @Test
  void pensPlannedApartMissEachOther() {
    Length one = even("13", "13", "12.5", "12.5", "12", "12", "11.5", "11.5").wallHeight();
    Length other = even("13", "12.5", "12.5", "12", "12", "11.5", "11.5", "11").wallHeight();
    assertEquals(Jobs.inches("108.125"), one);
    assertEquals(in(106), other);
  }
}
