package roundbook.stack;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.units.Length;

/**
 * The courses laid on each other, with the height of every centre line.
 *
 * <p>Two necks meet where their planes coincide, so a log's centre line lies {@code U' of the log
 * below + L' of its own} above the centre line of the crossing log below it. With marks that needed
 * no rounding this is {@code b = a + (D + g) / 2} inside a round and {@code a₊ = b + (D + D₊ + 2 g)
 * / 4} from one round to the next. Heights run from the underside of the first bed; they depend on
 * the rounds' sizes only, never on single logs, so corners stay level.
 *
 * @param rules the job's rules
 * @param building the ring of walls
 * @param courses the rounds from the lowest up
 * @param firstHeights height of the centre lines of the first-laid logs, a round each
 * @param secondHeights height of the centre lines of the second-laid logs, a round each
 */
public record Stack(
    BuildRules rules,
    Building building,
    List<Course> courses,
    List<Length> firstHeights,
    List<Length> secondHeights) {
  /** Copies the lists. */
  public Stack {
    courses = List.copyOf(courses);
    firstHeights = List.copyOf(firstHeights);
    secondHeights = List.copyOf(secondHeights);
  }

  /** Returns the stack of these courses on the first bed that the rules ask for. */
  public static Stack of(BuildRules rules, Building building, List<Course> courses) {
    List<Length> first = new ArrayList<>();
    List<Length> second = new ArrayList<>();
    Length below = Length.ZERO;
    for (Course course : courses) {
      Notch notch = course.notch();
      Length own = first.isEmpty() ? bed(rules, notch) : below.plus(notch.lower());
      first.add(own);
      second.add(own.plus(notch.neckHeight()));
      below = own.plus(notch.neckHeight()).plus(notch.upper());
    }
    return new Stack(rules, building, courses, first, second);
  }

  /**
   * Returns the height of the first centre line above its bed: the lower mark where the first logs
   * are sawn flat there, or {@code (D + g) / 2} on a half-log starter.
   */
  private static Length bed(BuildRules rules, Notch notch) {
    boolean starter = rules.text(Setting.FIRST_BED).equals("starter");
    return starter ? notch.neckHeight() : notch.lower();
  }

  /** Returns the height of a log's centre line above the underside of the first bed. */
  public Length centre(PlacedLog log) {
    return centre(log.round(), log.wall());
  }

  /** Returns the height of the centre line of a round on a wall. */
  public Length centre(int round, Wall wall) {
    return (wall.laidFirst() ? firstHeights : secondHeights).get(round - 1);
  }

  /**
   * Returns the height of the top of the second-laid logs' necks at the inside shoulder, from which
   * corners are checked for level after a round: {@code b + U'}.
   */
  public Length levelHeight(int round) {
    return secondHeights.get(round - 1).plus(courses.get(round - 1).notch().upper());
  }

  /** Returns the joints of a wall from the lowest up. */
  public List<Joint> joints(Wall wall) {
    List<Joint> joints = new ArrayList<>();
    for (int round = 1; round < courses.size(); round++) {
      PlacedLog lower = courses.get(round - 1).on(wall).orElseThrow();
      PlacedLog upper = courses.get(round).on(wall).orElseThrow();
      Length spacing = centre(upper).minus(centre(lower));
      joints.add(Joint.of(lower, upper, spacing, building, rules.overhang()));
    }
    return List.copyOf(joints);
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
    PlacedLog last = courses.get(courses.size() - 1).on(wall).orElseThrow();
    return centre(last).plus(last.piece().mid().dividedBy(2));
  }
}
