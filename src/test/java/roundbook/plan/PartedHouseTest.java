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
import roundbook.job.Log;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Verifier;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
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
    Plan plan = plan(parted(seed));
    for (int round = 1; round < plan.rounds(); round++) {
      Course course = plan.stack().courses().get(round - 1);
      Course next = plan.stack().courses().get(round);
      Junction here = Junction.crossings(plan.stack(), course).get(0);
      Junction above = Junction.crossings(plan.stack(), next).get(0);
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

  private static double centre(Plan plan, Wall wall, int round) {
    return plan.stack().centre(round, wall).inches();
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
}
