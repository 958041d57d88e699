package roundbook.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import roundbook.problem.Phrase;
import roundbook.problem.Value;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * What keeps a wing from being planned: one that does not close, that has no room on its wall, or
 * of which it is not said whether its ends hook or drain.
 */
final class WingFault {
  private static final int SIDES = 4;

  private final List<Wall> walls;
  private final BuildRules rules;
  private final Wall far;
  private final List<Wall> own;

  private WingFault(List<Wall> walls, BuildRules rules, Wall far) {
    this.walls = walls;
    this.rules = rules;
    this.far = far;
    this.own = Building.ring(walls, far.stand().pen());
  }

  /** Returns the fault of a wing that does not stand on a wall; without it nothing else is told. */
  static Optional<WallsFault> placed(List<Wall> walls, BuildRules rules) {
    return of(walls, rules, WingFault::placed);
  }

  /** Returns the first fault of a wing; empty where it is sound or there is none. */
  static Optional<WallsFault> of(List<Wall> walls, BuildRules rules) {
    return of(walls, rules, WingFault::first);
  }

  private static Optional<WallsFault> of(
      List<Wall> walls, BuildRules rules, Function<WingFault, Optional<WallsFault>> fault) {
    return walls.stream()
        .filter(Wall::isOnWall)
        .findFirst()
        .flatMap(far -> fault.apply(new WingFault(walls, rules, far)));
  }

  /**
   * Returns the ring of the house by itself: a wall that goes on along a wing is as long there as
   * the one across from it.
   */
  static List<Wall> house(List<Wall> walls) {
    List<Wall> ring = Building.ring(walls, 1);
    Optional<Wing> wing = Wing.of(walls);
    if (ring.size() != SIDES || wing.isEmpty()) {
      return ring;
    }
    Optional<Wall> on = wing.get().goesOn();
    Length across = wing.get().across().outside();
    return ring.stream()
        .map(wall -> on.filter(wall::equals).isPresent() ? as(wall, across) : wall)
        .toList();
  }

  private static Wall as(Wall wall, Length outside) {
    return new Wall(
        wall.name(), outside, wall.laidFirst(), wall.thickness(), wall.remarks(), wall.stand());
  }

  private Optional<WallsFault> placed() {
    Optional<Wing> wing = Wing.of(walls);
    if (wing.isEmpty() || far.stand().at().isEmpty()) {
      String on = far.stand().between().get(0);
      return fault(far, of("wing-on").with("on", on), "wing-on");
    }
    return more().or(() -> place(wing.get()));
  }

  private Optional<WallsFault> first() {
    Wing wing = Wing.of(walls).orElseThrow();
    return count(wing)
        .or(() -> sides(wing))
        .or(() -> goesOn(wing))
        .or(() -> partition(wing))
        .or(() -> asked(wing));
  }

  /** One wing, and no other pen beside it. */
  private Optional<WallsFault> more() {
    return walls.stream()
        .filter(wall -> wall.stand().pen() > 1 && !own.contains(wall) && !wall.isPartition())
        .findFirst()
        .or(() -> own.stream().filter(wall -> wall.isOnWall() && !wall.equals(far)).findFirst())
        .flatMap(wall -> fault(wall, LayoutFault.said("wing-more"), "wing-more"));
  }

  private Optional<WallsFault> place(Wing wing) {
    Length left = far.stand().at().orElseThrow();
    Length right = wing.shared().outside().minus(left).minus(far.outside());
    if (left.isNegative() || right.isNegative()) {
      Value past = measure(left.least(right).negated());
      Phrase said = of("wing-past").with("on", wing.shared().name()).with("by", past);
      return fault(far, said, "wing-on");
    }
    if (left.isZero() && right.isZero()) {
      return fault(far, of("wing-whole").with("on", wing.shared().name()), "wing-whole");
    }
    return near(wing, left, wing.after()).or(() -> near(wing, right, wing.before()));
  }

  private Optional<WallsFault> near(Wing wing, Length found, Wall corner) {
    Length least = corner.thickness().plus(rules.length(Setting.PIECE_LEAST));
    return found.isZero() || !found.isLessThan(least)
        ? Optional.empty()
        : fault(
            far,
            of("wing-near")
                .with("on", wing.shared().name())
                .with("other", corner.name())
                .with("found", measure(found))
                .with("least", measure(least)),
            "at-apart");
  }

  /** A wing has its far wall and two sides, one of which may be a wall of the house. */
  private Optional<WallsFault> count(Wing wing) {
    boolean flush = wing.isFlushLeft() || wing.isFlushRight();
    int wanted = flush ? 2 : 3;
    boolean placed = flush || wing.left().isPresent() && wing.right().isPresent();
    if (own.size() == wanted && placed) {
      return Optional.empty();
    }
    Phrase said = of(flush ? "wing-two" : "wing-three").with("count", own.size());
    return fault(far, said, flush ? "wing-two" : "wing-three");
  }

  private Optional<WallsFault> sides(Wing wing) {
    List<Wall> sides = own.stream().filter(wall -> !wall.equals(far)).toList();
    Wall one = sides.get(0);
    Wall other = sides.get(sides.size() - 1);
    if (!one.outside().equals(other.outside())) {
      return fault(other, LayoutFault.named(LayoutFault.said("opposite"), one, other), "lengths");
    }
    Length corners = wing.before().thickness().plus(wing.after().thickness());
    if (!wing.depth().isMoreThan(far.thickness()) || !far.outside().isMoreThan(corners)) {
      return fault(far, LayoutFault.said("short").with("wall", far.name()), "outside");
    }
    if (far.laidFirst() != wing.shared().laidFirst()) {
      Phrase said = LayoutFault.named(LayoutFault.said("pen-first"), wing.shared(), far);
      return fault(far, said, "pen-first");
    }
    return sides.stream()
        .filter(side -> side.laidFirst() == far.laidFirst())
        .findFirst()
        .flatMap(
            side -> {
              String both = side.laidFirst() ? "both-first" : "neither-first";
              return fault(side, LayoutFault.named(LayoutFault.said(both), far, side), "first");
            });
  }

  /** The wall that goes on is as long as the one across from it and the wing is deep. */
  private Optional<WallsFault> goesOn(Wing wing) {
    if (wing.goesOn().isEmpty()) {
      return Optional.empty();
    }
    Wall on = wing.goesOn().get();
    Length wanted = wing.across().outside().plus(wing.depth());
    Length by = on.outside().minus(wanted).absolute();
    return by.isZero()
        ? Optional.empty()
        : fault(
            on,
            LayoutFault.said("wing-goes-on")
                .with("wall", on.name())
                .with("found", measure(on.outside()))
                .with("wanted", measure(wanted))
                .with("by", measure(by)),
            "wing-goes-on");
  }

  /** Partitions stand in the house, across walls that do not go on past it. */
  private Optional<WallsFault> partition(Wing wing) {
    return walls.stream()
        .filter(Wall::isPartition)
        .filter(
            wall ->
                wall.stand().pen() != 1
                    || wing.goesOn().filter(on -> wall.stand().ends(on)).isPresent())
        .findFirst()
        .flatMap(
            wall ->
                fault(
                    wall,
                    LayoutFault.said("wing-partition").with("wall", wall.name()),
                    "wing-partition"));
  }

  private Optional<WallsFault> asked(Wing wing) {
    return rules.text(Setting.REENTRANT).isEmpty()
        ? fault(
            far,
            LayoutFault.said("reentrant")
                .with("wall", wing.left().or(wing::right).orElseThrow().name())
                .with("on", wing.shared().name()),
            "reentrant")
        : Optional.empty();
  }

  private Phrase of(String variant) {
    return LayoutFault.said(variant).with("wall", far.name());
  }

  private Value measure(Length length) {
    return Value.tape(length, LengthFormat.forJob(rules.unit(), rules.printStep()));
  }

  private static Optional<WallsFault> fault(Wall wall, Phrase said, String remedy) {
    return Optional.of(new WallsFault(wall, said, remedy));
  }
}
