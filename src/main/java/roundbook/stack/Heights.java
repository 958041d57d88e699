package roundbook.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * Adds the heights of centre lines up, round by round.
 *
 * <p>A log lies on the necks of the logs that cross under it: the mean of their centre lines and
 * upper marks, and its own lower mark. Without marks cut otherwise all logs of one laying order
 * have one height.
 */
final class Heights {
  private final Building building;
  private final AsBuilt built;
  private final Map<Wall, Length> tops = new java.util.HashMap<>();
  private final Map<Place, Length> centres = new TreeMap<>();
  private final List<Length> first = new ArrayList<>();
  private final List<Length> second = new ArrayList<>();

  Heights(Building building, AsBuilt built, Length bed) {
    this.building = building;
    this.built = built;
    building.walls().forEach(wall -> tops.put(wall, bed));
  }

  /** Lays a round on those below. */
  void add(Course course) {
    first.add(lay(course, true));
    second.add(lay(course, false));
  }

  private Length lay(Course course, boolean firstLaid) {
    List<Wall> walls =
        building.walls().stream().filter(wall -> wall.laidFirst() == firstLaid).toList();
    Length sum = Length.ZERO;
    for (Wall wall : walls) {
      List<Wall> crossing = building.crossing(wall);
      Length under = crossing.stream().map(tops::get).reduce(Length.ZERO, Length::plus);
      Length centre = under.dividedBy(crossing.size()).plus(lower(course, wall));
      centres.put(new Place(course.round(), wall.name()), centre);
      sum = sum.plus(centre);
    }
    walls.forEach(wall -> tops.put(wall, top(course, wall)));
    return sum.dividedBy(Math.max(1, walls.size()));
  }

  private Length top(Course course, Wall wall) {
    return centres.get(new Place(course.round(), wall.name())).plus(upper(course, wall, built));
  }

  private Length lower(Course course, Wall wall) {
    return built
        .measures(course.round(), wall.name())
        .lowerCut()
        .orElseGet(() -> course.notch().lower());
  }

  /** Returns the upper mark of a round's log on a wall, as cut. */
  static Length upper(Course course, Wall wall, AsBuilt built) {
    return built
        .measures(course.round(), wall.name())
        .upperCut()
        .orElseGet(() -> course.notch().upper());
  }

  List<Length> means(boolean firstLaid) {
    return firstLaid ? first : second;
  }

  Map<Place, Length> centres() {
    return centres;
  }
}
