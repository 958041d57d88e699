package roundbook.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.problem.Phrase;
import roundbook.problem.Value;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * What keeps pens and partitions from being planned: a partition that does not close, that stands
 * too near to a corner or to another, or pens that are no row under one roof.
 */
final class LayoutFault {
  private final List<Wall> walls;
  private final String bed;
  private final Building building;
  private final Length least;
  private final LengthFormat format;

  LayoutFault(List<Wall> walls, BuildRules rules) {
    this.walls = walls;
    this.bed = rules.text(Setting.FIRST_BED);
    this.building = new Building(walls);
    this.least = rules.length(Setting.PIECE_LEAST);
    this.format = LengthFormat.forJob(rules.unit(), rules.printStep());
  }

  /** Returns the first fault of the pens, each of whose rings is sound. */
  Optional<WallsFault> pens() {
    List<Integer> pens = building.pens();
    for (int pen = 1; pen <= pens.size(); pen++) {
      if (pens.get(pen - 1) != pen) {
        Wall wall = building.ring(pens.get(pen - 1)).get(0);
        return fault(wall, said("pen-number").with("pen", pens.get(pen - 1)), "pen");
      }
    }
    return pens.stream()
        .skip(1)
        .filter(pen -> building.ring(pen).stream().noneMatch(Wall::isOnWall))
        .filter(pen -> building.ring(pen - 1).stream().noneMatch(Wall::isOnWall))
        .flatMap(pen -> pen(pen).stream())
        .findFirst();
  }

  /** A pen stands in a row with the one before it, across an open passage. */
  private Optional<WallsFault> pen(int pen) {
    Wall one = building.alongRow(pen - 1);
    Wall other = building.alongRow(pen);
    if (building.passage(pen).filter(each -> each.isMoreThan(Length.ZERO)).isEmpty()) {
      return fault(other, said("no-passage").with("pen", pen), "passage");
    }
    if (one.laidFirst() != other.laidFirst()) {
      return fault(other, named(said("pen-first"), one, other), "pen-first");
    }
    Length deep = building.after(one).outside();
    Length by = building.after(other).outside().minus(deep);
    Phrase differ = named(said("pen-deep"), building.after(one), building.after(other));
    return by.isZero()
        ? Optional.empty()
        : fault(building.after(other), differ.with("by", measure(by.absolute())), "pen-deep");
  }

  /** One log sawn along its middle begins the two second-laid walls of one pen, and no more. */
  Optional<WallsFault> starter() {
    Wall last = walls.get(walls.size() - 1);
    return bed.equals("starter") ? fault(last, said("starter"), "starter") : Optional.empty();
  }

  /** Returns the first fault of a partition. */
  Optional<WallsFault> partitions() {
    return Stream.<java.util.function.Function<Wall, Optional<WallsFault>>>of(
            this::between, this::order, this::length, this::place)
        .flatMap(
            check ->
                walls.stream()
                    .filter(Wall::isPartition)
                    .flatMap(wall -> check.apply(wall).stream()))
        .findFirst()
        .or(this::near);
  }

  /** A partition runs between two walls of its pen that face each other. */
  private Optional<WallsFault> between(Wall wall) {
    List<Wall> ring = building.ring(wall.stand().pen());
    List<Integer> ends =
        wall.stand().between().stream()
            .map(name -> ring.stream().map(each -> each.name()).toList().indexOf(name))
            .toList();
    boolean facing =
        ends.size() == 2 && ends.get(0) >= 0 && ends.get(1) == ends.get(0) + ring.size() / 2;
    if (!facing) {
      String names = String.join(" ", wall.stand().between());
      return fault(wall, of("between", wall).with("names", names), "between");
    }
    return wall.stand().at().isPresent() ? Optional.empty() : fault(wall, of("no-at", wall), "at");
  }

  private Optional<WallsFault> order(Wall wall) {
    Wall through = building.before(wall);
    return wall.laidFirst() != through.laidFirst()
        ? Optional.empty()
        : fault(
            wall,
            named(said(wall.laidFirst() ? "both-first" : "neither-first"), through, wall),
            "partition-first");
  }

  /** The lengths of a partition and of the wall beside it are between the same two walls. */
  private Optional<WallsFault> length(Wall wall) {
    Wall one = building.after(building.before(wall));
    Wall other = building.before(building.before(wall));
    Wall beside = one.outside().isMoreThan(other.outside()) ? other : one;
    Length by = wall.outside().minus(beside.outside());
    return by.isZero()
        ? Optional.empty()
        : fault(
            wall,
            of("partition-length", wall)
                .with("beside", beside.name())
                .with("found", measure(wall.outside()))
                .with("wanted", measure(beside.outside()))
                .with("by", measure(by.absolute())),
            "partition-length");
  }

  /** Between a partition and a corner there is room for a piece of the log that goes through. */
  private Optional<WallsFault> place(Wall wall) {
    Wall through = building.before(wall);
    Length left = wall.stand().at().orElseThrow();
    Length right = through.outside().minus(left).minus(wall.thickness());
    if (left.isNegative() || right.isNegative()) {
      Phrase said = of("outside", wall).with("other", through.name());
      return fault(wall, said.with("long", measure(through.outside())), "at");
    }
    Wall before = building.before(through);
    Wall after = building.after(through);
    return near(wall, after, left, after.thickness().plus(least))
        .or(() -> near(wall, before, right, before.thickness().plus(least)));
  }

  private Optional<WallsFault> near(Wall wall, Wall corner, Length found, Length wanted) {
    return found.isLessThan(wanted)
        ? fault(
            wall,
            of("near-corner", wall)
                .with("other", corner.name())
                .with("found", measure(found))
                .with("least", measure(wanted)),
            "at-apart")
        : Optional.empty();
  }

  private Optional<WallsFault> near() {
    for (Wall through : walls) {
      List<Saddle> saddles = new ArrayList<>(building.saddles(through));
      saddles.sort(Comparator.comparing(Saddle::from));
      for (int each = 1; each < saddles.size(); each++) {
        Saddle left = saddles.get(each - 1);
        Saddle right = saddles.get(each);
        Length clear = right.from().minus(left.to());
        if (clear.isNegative()) {
          Phrase said = of("same-place", right.partition()).with("other", left.partition().name());
          return fault(right.partition(), said, "at-apart");
        }
        if (clear.isLessThan(least)) {
          return fault(
              right.partition(),
              of("near-partition", right.partition())
                  .with("other", left.partition().name())
                  .with("found", measure(clear))
                  .with("least", measure(least)),
              "at-apart");
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<WallsFault> fault(Wall wall, Phrase said, String remedy) {
    return Optional.of(new WallsFault(wall, said, remedy));
  }

  private Value measure(Length length) {
    return Value.tape(length, format);
  }

  private static Phrase of(String variant, Wall wall) {
    return said(variant).with("wall", wall.name());
  }

  static Phrase said(String variant) {
    return Phrase.of("bad-walls." + variant);
  }

  static Phrase named(Phrase said, Wall one, Wall other) {
    return said.with("one", one.name()).with("other", other.name());
  }
}
