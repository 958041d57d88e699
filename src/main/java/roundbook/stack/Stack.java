package roundbook.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * The courses laid on each other, with the height of every centre line.
 *
 * <p>Two necks meet where their planes coincide, so a log's centre line lies {@code U' of the log
 * below + L' of its own} above the centre line of the crossing log below it. With marks that needed
 * no rounding this is {@code b = a + (D + g) / 2} inside a round and {@code a₊ = b + (D + D₊ + 2 g)
 * / 4} from one round to the next. Heights run from the underside of the first bed; they depend on
 * the rounds' sizes only, never on single logs, so corners stay level. Marks that were cut
 * otherwise than the chart has them count as they were cut; over a round whose corners were read
 * the heights go on from where the walls stand ({@link Corners}).
 *
 * @param rules the job's rules
 * @param building the ring of walls
 * @param courses the rounds from the lowest up
 * @param firstHeights height of the centre lines of the first-laid logs, a round each
 * @param secondHeights height of the centre lines of the second-laid logs, a round each
 * @param built what is built and measured
 * @param centres height of the centre line of each log, by place; empty: as its round's
 * @param corners how high the corners stand against these heights
 */
public record Stack(
    BuildRules rules,
    Building building,
    List<Course> courses,
    List<Length> firstHeights,
    List<Length> secondHeights,
    AsBuilt built,
    Map<Place, Length> centres,
    Corners corners) {
  /** Copies the lists and the map. */
  public Stack {
    courses = List.copyOf(courses);
    firstHeights = List.copyOf(firstHeights);
    secondHeights = List.copyOf(secondHeights);
    centres = new TreeMap<>(centres);
  }

  /** A stack of which nothing is built yet. */
  public Stack(
      BuildRules rules,
      Building building,
      List<Course> courses,
      List<Length> firstHeights,
      List<Length> secondHeights) {
    this(
        rules,
        building,
        courses,
        firstHeights,
        secondHeights,
        AsBuilt.NOTHING,
        Map.of(),
        Corners.AS_PLANNED);
  }

  /** Returns the stack of these courses on the first bed that the rules ask for. */
  public static Stack of(BuildRules rules, Building building, List<Course> courses) {
    return of(rules, building, courses, AsBuilt.NOTHING);
  }

  /** Returns the stack of these courses, the lower ones as they are built. */
  public static Stack of(BuildRules rules, Building building, List<Course> courses, AsBuilt built) {
    Heights heights = new Heights(building, built, bed(rules, courses));
    courses.forEach(heights::add);
    Stack planned =
        new Stack(
            rules,
            building,
            courses,
            heights.means(true),
            heights.means(false),
            built,
            heights.centres(),
            Corners.AS_PLANNED);
    return planned.standing(Corners.of(rules, building, planned, built));
  }

  /** Returns this stack as its corners stand: its heights go on from where the walls are. */
  private Stack standing(Corners other) {
    List<Length> risen = new ArrayList<>();
    Length sum = Length.ZERO;
    for (int round = 1; round <= courses.size(); round++) {
      risen.add(sum);
      sum = sum.plus(other.step(round, building, rules));
    }
    Map<Place, Length> heights = new TreeMap<>(centres);
    heights.replaceAll((place, centre) -> centre.plus(risen.get(place.round() - 1)));
    return new Stack(
        rules,
        building,
        courses,
        plus(firstHeights, risen),
        plus(secondHeights, risen),
        built,
        heights,
        other);
  }

  private static List<Length> plus(List<Length> heights, List<Length> risen) {
    return IntStream.range(0, heights.size())
        .mapToObj(round -> heights.get(round).plus(risen.get(round)))
        .toList();
  }

  private static Length bed(BuildRules rules, List<Course> courses) {
    boolean starter = rules.text(Setting.FIRST_BED).equals("starter");
    return starter && !courses.isEmpty() ? courses.get(0).notch().upper() : Length.ZERO;
  }

  /** Returns the height of a log's centre line above the underside of the first bed. */
  public Length centre(FilledPlace place) {
    return centre(place.round(), place.wall());
  }

  /** Returns the height of the centre line of a round on a wall. */
  public Length centre(int round, Wall wall) {
    Length mean = (wall.laidFirst() ? firstHeights : secondHeights).get(round - 1);
    return centres.getOrDefault(new Place(round, wall.name()), mean);
  }

  /**
   * Returns the height of the top of the second-laid logs' necks at the inside shoulder, from which
   * corners are checked for level after a round: {@code b + U'}, the mean of the walls.
   */
  public Length levelHeight(int round) {
    return neckTop(round, false);
  }

  /**
   * Returns the height of the top of the first-laid logs' necks at the inside shoulder, from which
   * corners can be checked within a round: {@code a + U'}, the mean of the walls.
   */
  public Length firstLevelHeight(int round) {
    return neckTop(round, true);
  }

  private Length neckTop(int round, boolean firstLaid) {
    Course course = courses.get(round - 1);
    List<Length> uppers =
        building.walls().stream()
            .filter(wall -> wall.laidFirst() == firstLaid)
            .map(wall -> Heights.upper(course, wall, built))
            .toList();
    Length sum = uppers.stream().reduce(Length.ZERO, Length::plus);
    Length mean = uppers.isEmpty() ? course.notch().upper() : sum.dividedBy(uppers.size());
    return (firstLaid ? firstHeights : secondHeights).get(round - 1).plus(mean);
  }

  /** Returns the joints of a wall from the lowest up. */
  public List<Joint> joints(Wall wall) {
    return IntStream.range(1, courses.size()).mapToObj(round -> joint(wall, round)).toList();
  }

  /** Returns the joints of a wall over and under one round. */
  public List<Joint> joints(Wall wall, int round) {
    return IntStream.of(round - 1, round)
        .filter(lower -> lower >= 1 && lower < courses.size())
        .mapToObj(lower -> joint(wall, lower))
        .toList();
  }

  private Joint joint(Wall wall, int round) {
    FilledPlace lower = courses.get(round - 1).on(wall).orElseThrow();
    FilledPlace upper = courses.get(round).on(wall).orElseThrow();
    Length spacing = centre(upper).minus(centre(lower));
    Joint joint = Joint.of(lower, upper, spacing, building, rules.overhang());
    return joint.with(corners.between(lower, upper, building));
  }

  /** Returns every joint of the building, wall by wall in clockwise order. */
  public List<Joint> joints() {
    return building.walls().stream().flatMap(wall -> joints(wall).stream()).toList();
  }

  /**
   * Returns how much higher the foundation stands under the second-laid walls when both first logs
   * are sawn flat at the lower mark: {@code (D₁ + g) / 2}.
   */
  public Length foundationStep() {
    return courses.get(0).notch().neckHeight();
  }

  /**
   * Returns the height that a wanted wall height is compared with: the last second-laid centre line
   * and half the size of its round, {@code b_n + D_n / 2}; zero when nothing stands.
   */
  public Length wallHeight() {
    if (courses.isEmpty()) {
      return Length.ZERO;
    }
    int last = courses.size() - 1;
    return secondHeights.get(last).plus(courses.get(last).notch().size().dividedBy(2));
  }

  /** Returns the crown height at mid-length of a wall's last log, above the first bed. */
  public Length top(Wall wall) {
    FilledPlace last = courses.get(courses.size() - 1).on(wall).orElseThrow();
    return centre(last).plus(last.mid().dividedBy(2));
  }
}
