package roundbook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.units.Length;

/**
 * A pen that stands on a wall of the house and shares it: its far wall, parallel to the shared one,
 * and its sides.
 *
 * <p>A side that stands in from the corner dies in the shared wall, past whose far face its tail
 * shows. A side in line with a wall of the house is that wall itself, which then goes on along the
 * wing; there the shared wall's logs end past its outer face.
 *
 * @param shared the wall of the house that it stands on
 * @param far the wall across from it
 * @param right its own right side, seen from outside the shared wall; empty where a wall of the
 *     house goes on
 * @param left its own left side
 * @param before the wall of the house at the shared wall's right corner
 * @param after the wall of the house at its left corner
 */
record Wing(
    Wall shared, Wall far, Optional<Wall> right, Optional<Wall> left, Wall before, Wall after) {

  /** Finds the wing of walls that stand in their order; empty where there is none. */
  static Optional<Wing> of(List<Wall> walls) {
    return walls.stream().filter(Wall::isOnWall).findFirst().flatMap(far -> of(walls, far));
  }

  private static Optional<Wing> of(List<Wall> walls, Wall far) {
    List<Wall> house = Building.ring(walls, 1);
    List<Wall> own = Building.ring(walls, far.stand().pen());
    int at = house.stream().map(Wall::name).toList().indexOf(far.stand().between().get(0));
    if (at < 0 || house.contains(far)) {
      return Optional.empty();
    }
    int index = own.indexOf(far);
    return Optional.of(
        new Wing(
            house.get(at),
            far,
            index > 0 ? Optional.of(own.get(0)) : Optional.empty(),
            index < own.size() - 1 ? Optional.of(own.get(index + 1)) : Optional.empty(),
            house.get(Math.floorMod(at - 1, house.size())),
            house.get((at + 1) % house.size())));
  }

  /** Returns the walls of a wing clockwise: right side, far wall, left side. */
  static List<Wall> inOrder(List<Wall> own, List<Wall> house) {
    Optional<Wall> far = own.stream().filter(Wall::isOnWall).findFirst();
    List<String> names = house.stream().map(Wall::name).toList();
    int at = far.map(wall -> names.indexOf(wall.stand().between().get(0))).orElse(-1);
    if (at < 0) {
      return own;
    }
    List<Wall> sides = new ArrayList<>(own);
    sides.remove(far.get());
    Wall shared = house.get(at);
    String right = house.get(Math.floorMod(at - 1, house.size())).side();
    List<Wall> ordered = new ArrayList<>(List.of(far.get()));
    boolean one = sides.size() == 1;
    boolean flush = reach(far.get()).equals(shared.outside());
    for (Wall side : sides) {
      boolean first = one ? !flush : side.side().equals(right);
      ordered.add(first ? 0 : ordered.size(), side);
    }
    return ordered;
  }

  /**
   * Returns walls of which a wing's sides reach to the far face of the wall that they die in, and
   * so are longer by that than the wing is deep.
   */
  static List<Wall> withinReach(List<Wall> walls, List<Wall> house) {
    Optional<Wall> far = walls.stream().filter(Wall::isOnWall).findFirst();
    Optional<Wall> shared =
        far.flatMap(
            wall ->
                house.stream()
                    .filter(each -> each.name().equals(wall.stand().between().get(0)))
                    .findFirst());
    if (shared.isEmpty()) {
      return walls;
    }
    return walls.stream()
        .map(
            wall ->
                wall.stand().pen() == far.get().stand().pen()
                        && wall.stand().between().isEmpty()
                        && wall.stand().pen() > 1
                    ? wall.longer(shared.get().thickness())
                    : wall)
        .toList();
  }

  private static Length at(Wall far) {
    return far.stand().at().orElse(Length.ZERO);
  }

  private static Length reach(Wall far) {
    return at(far).plus(far.outside());
  }

  /** Returns whether it stands at the left corner, so that the wall there goes on along it. */
  boolean isFlushLeft() {
    return at(far).isZero();
  }

  /** Returns whether it stands at the right corner. */
  boolean isFlushRight() {
    return reach(far).equals(shared.outside());
  }

  /** Returns the wall of the house across from the one that goes on along it. */
  Wall across() {
    return isFlushRight() ? after : before;
  }

  /** Returns how far it stands out from the shared wall's outer face. */
  Length depth() {
    return right.or(() -> left).map(side -> side.outside().minus(shared.thickness())).orElseThrow();
  }

  /** Returns whether a wall is a side of its own, which dies in the shared wall. */
  boolean isSide(Wall wall) {
    return wall.stand().pen() == far.stand().pen() && !wall.equals(far) && !wall.isPartition();
  }

  /** Returns the wall of the house that goes on along it; empty where both sides are its own. */
  Optional<Wall> goesOn() {
    return isFlushRight() ? Optional.of(before) : isFlushLeft() ? Optional.of(after) : none();
  }

  private static Optional<Wall> none() {
    return Optional.empty();
  }

  /** Returns the wall at the start of a wall that it has to do with; empty for any other. */
  Optional<Wall> startOf(Wall wall) {
    if (wall.equals(far)) {
      return Optional.of(right.orElse(before));
    }
    if (isSide(wall)) {
      return Optional.of(right.filter(wall::equals).isPresent() ? shared : far);
    }
    return isFlushLeft() && wall.equals(after) ? Optional.of(far) : none();
  }

  /** Returns the wall at the end of a wall that it has to do with; empty for any other. */
  Optional<Wall> endOf(Wall wall) {
    if (wall.equals(far)) {
      return Optional.of(left.orElse(after));
    }
    if (isSide(wall)) {
      return Optional.of(right.filter(wall::equals).isPresent() ? far : shared);
    }
    return isFlushRight() && wall.equals(before) ? Optional.of(far) : none();
  }

  /** Returns where a wall is crossed because of it. */
  List<Saddle> saddles(Wall through) {
    List<Saddle> saddles = new ArrayList<>();
    if (through.equals(shared)) {
      left.ifPresent(wall -> saddles.add(new Saddle(through, wall, at(far), true)));
      right.ifPresent(
          wall -> saddles.add(new Saddle(through, wall, reach(far).minus(wall.thickness()), true)));
    }
    if (isFlushRight() && through.equals(before)) {
      saddles.add(new Saddle(through, shared, depth(), false));
    }
    if (isFlushLeft() && through.equals(after)) {
      Length rest = through.outside().minus(depth()).minus(shared.thickness());
      saddles.add(new Saddle(through, shared, rest, false));
    }
    return saddles;
  }
}
