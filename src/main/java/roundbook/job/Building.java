package roundbook.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import roundbook.units.Length;

/**
 * The walls of a house: one pen or several in a row, each a rectangle of four walls, the partitions
 * in them, and a wing on a wall of the only pen.
 *
 * <p>The ring of a pen stands in clockwise order seen from above, then its partitions from the left
 * to the right of the wall that they start at. A wall's <em>start</em> corner is the one met first
 * going clockwise: seen from outside it is the right one, seen from inside the left one. Walls
 * along one direction are laid first, the others second. A partition starts at the first of its two
 * walls and is looked at from the side of the wall left of it, as that wall is from outside; so
 * whatever is said of a wall's left and right holds for partitions too.
 *
 * @param walls the walls in that order; what {@link WallsFault} finds no fault with
 */
public record Building(List<Wall> walls) {
  private static final List<String> CLOCKWISE = List.of("N", "E", "S", "W");

  /** Copies the list. */
  public Building {
    walls = List.copyOf(walls);
  }

  /**
   * Returns walls pen by pen, each ring in its order round the house, from the first of the list
   * on. Where they are named N, E, S and W, with the pen's number or without, their names tell it;
   * others are taken as they are listed. Partitions follow, told from the first of their two walls.
   */
  public static List<Wall> inOrder(List<Wall> listed) {
    List<Wall> all = new ArrayList<>();
    for (int pen : pens(listed)) {
      List<Wall> ring = Wing.inOrder(ringInOrder(listed, pen), ring(all, 1));
      all.addAll(ring);
      listed.stream()
          .filter(wall -> wall.stand().pen() == pen && wall.isPartition())
          .map(wall -> toldFromFirst(wall, ring))
          .sorted(Comparator.comparing(wall -> order(wall, ring)))
          .forEach(all::add);
    }
    return all;
  }

  private static TreeSet<Integer> pens(List<Wall> walls) {
    TreeSet<Integer> pens = new TreeSet<>();
    walls.forEach(wall -> pens.add(wall.stand().pen()));
    return pens;
  }

  /** Returns the walls of a pen's ring, in the order of the list. */
  static List<Wall> ring(List<Wall> walls, int pen) {
    return walls.stream().filter(wall -> wall.stand().pen() == pen && !wall.isPartition()).toList();
  }

  private static List<Wall> ringInOrder(List<Wall> listed, int pen) {
    List<Wall> ring = ring(listed, pen);
    boolean only = listed.size() == CLOCKWISE.size();
    List<String> sides = ring.stream().map(wall -> side(wall, only)).toList();
    boolean told = ring.size() == CLOCKWISE.size() && sides.containsAll(CLOCKWISE);
    if (!told) {
      return ring;
    }
    int first = CLOCKWISE.indexOf(sides.get(0));
    return ring.stream()
        .sorted(
            Comparator.comparingInt(
                wall ->
                    Math.floorMod(CLOCKWISE.indexOf(side(wall, only)) - first, CLOCKWISE.size())))
        .toList();
  }

  /** A number after a side tells a pen among others; of four walls it is part of the name. */
  private static String side(Wall wall, boolean only) {
    return only ? wall.name() : wall.side();
  }

  /** A partition that is told from the later of its two walls is told from the earlier one. */
  private static Wall toldFromFirst(Wall wall, List<Wall> ring) {
    List<String> names = ring.stream().map(Wall::name).toList();
    List<String> between = wall.stand().between();
    int one = names.indexOf(between.get(0));
    int other = between.size() < 2 ? -1 : names.indexOf(between.get(1));
    if (one < 0 || other < 0 || one < other) {
      return wall;
    }
    Length long1 = ring.get(one).outside().minus(wall.thickness());
    return wall.at(
        new Stand(
            wall.stand().pen(),
            List.of(between.get(1), between.get(0)),
            wall.stand().at().map(long1::minus)));
  }

  private static Length order(Wall wall, List<Wall> ring) {
    boolean later = !ring.isEmpty() && !wall.stand().ends(ring.get(0));
    Length at = wall.stand().at().orElse(Length.ZERO);
    return later ? at.plus(ring.get(0).outside()) : at;
  }

  /** Returns the wall of a name; empty when there is none. */
  public Optional<Wall> wall(String name) {
    return walls.stream().filter(wall -> wall.name().equalsIgnoreCase(name)).findFirst();
  }

  /** Returns the numbers of the pens from the first to the last. */
  public List<Integer> pens() {
    return List.copyOf(pens(walls));
  }

  /** Returns the four walls of a pen in clockwise order. */
  public List<Wall> ring(int pen) {
    return walls.size() == CLOCKWISE.size() ? walls : ring(walls, pen);
  }

  /** Returns the width of the open passage before a pen, between outer faces; empty before 1. */
  public Optional<Length> passage(int pen) {
    return ring(pen).stream()
        .filter(wall -> !wall.isOnWall())
        .flatMap(wall -> wall.stand().at().stream())
        .findFirst();
  }

  /** Returns how far pens in a row reach from end to end over their passages; empty for one pen. */
  public Optional<Length> row() {
    boolean row = pens().size() > 1 && !hasWing();
    return Optional.of(Length.ZERO)
        .filter(none -> row)
        .map(
            none ->
                pens().stream()
                    .map(pen -> alongRow(pen).outside().plus(passage(pen).orElse(Length.ZERO)))
                    .reduce(none, Length::plus));
  }

  /** Returns the wall of a pen along a row of pens: the one named N, or the first of its ring. */
  Wall alongRow(int pen) {
    List<Wall> ring = ring(pen);
    return ring.stream().filter(wall -> wall.side().equals("N")).findFirst().orElse(ring.get(0));
  }

  /** Returns whether a wing stands on a wall. */
  public boolean hasWing() {
    return wing().isPresent();
  }

  private Optional<Wing> wing() {
    return walls.size() == CLOCKWISE.size() ? Optional.empty() : Wing.of(walls);
  }

  /** Returns the wall that a wing stands on, seen from that wing; empty where there is none. */
  public Optional<Wall> sharedWall() {
    return wing().map(Wing::shared);
  }

  /** Returns the wall that goes on along a wing, past the wall that the wing stands on. */
  public Optional<Wall> goesOn() {
    return wing().flatMap(Wing::goesOn);
  }

  /**
   * Returns how far a wing stands out from the wall that it stands on; zero where there is none.
   */
  public Length wingDepth() {
    return wing().map(Wing::depth).orElse(Length.ZERO);
  }

  /** Returns walls whose lengths are as they are told, as they are planned. */
  public static List<Wall> withinReach(List<Wall> told, List<Wall> house) {
    return Wing.withinReach(told, house);
  }

  /** Returns a wall's length as it is told: of a wing's side without the wall that it dies in. */
  public Length told(Wall wall) {
    return wing()
        .filter(wing -> wing.isSide(wall))
        .map(wing -> wall.outside().minus(wing.shared().thickness()))
        .orElse(wall.outside());
  }

  /**
   * Returns how much of a wall's outside length lies left of the corner that places on it are told
   * from: of a wing's side the thickness of the wall that its left end dies in.
   */
  public Length beforeLeft(Wall wall) {
    return isTee(wall, false) ? after(wall).thickness() : Length.ZERO;
  }

  /** Returns the wall that crosses at the start corner (right end seen from outside). */
  public Wall before(Wall wall) {
    return wall.isPartition()
        ? wall(wall.stand().between().get(0)).orElseThrow()
        : wing().flatMap(wing -> wing.startOf(wall)).orElseGet(() -> next(wall, -1));
  }

  /** Returns the wall that crosses at the end corner (left end seen from outside). */
  public Wall after(Wall wall) {
    return wall.isPartition()
        ? wall(wall.stand().between().get(1)).orElseThrow()
        : wing().flatMap(wing -> wing.endOf(wall)).orElseGet(() -> next(wall, 1));
  }

  private Wall next(Wall wall, int way) {
    List<Wall> ring = ring(wall.stand().pen());
    return ring.get(Math.floorMod(ring.indexOf(wall) + way, ring.size()));
  }

  /**
   * Returns every wall that crosses a wall: at its start, at its end, and between from the left.
   */
  public List<Wall> crossing(Wall wall) {
    return Stream.concat(
            Stream.of(before(wall), after(wall)), saddles(wall).stream().map(Saddle::partition))
        .toList();
  }

  /** Returns where other walls end at a wall away from its corners, from the left. */
  public List<Saddle> saddles(Wall through) {
    if (walls.size() == CLOCKWISE.size()) {
      return List.of();
    }
    if (through.isPartition()) {
      return crossed(through);
    }
    Stream<Saddle> partitions =
        walls.stream()
            .filter(wall -> wall.isPartition() && wall.stand().ends(through))
            .map(wall -> saddle(through, wall));
    Stream<Saddle> wing = wing().stream().flatMap(each -> each.saddles(through).stream());
    return Stream.concat(partitions, wing).sorted(Comparator.comparing(Saddle::from)).toList();
  }

  /** Returns where partitions that run the other way cross a partition, told as the wall beside. */
  private List<Saddle> crossed(Wall through) {
    Wall beside = after(before(through));
    return walls.stream()
        .filter(wall -> wall.isPartition() && wall.stand().ends(beside))
        .map(wall -> new Saddle(through, wall, saddle(beside, wall).from(), false))
        .sorted(Comparator.comparing(Saddle::from))
        .toList();
  }

  private Saddle saddle(Wall through, Wall partition) {
    Length at = partition.stand().at().orElseThrow();
    boolean first = before(partition).equals(through);
    Length other = through.outside().minus(at).minus(partition.thickness());
    return new Saddle(through, partition, first ? at : other, false);
  }

  /** Returns the place where an end of a wall crosses one that goes through; empty at a corner. */
  public Optional<Saddle> saddle(Wall wall, boolean atStart) {
    return saddles(atStart ? before(wall) : after(wall)).stream()
        .filter(saddle -> saddle.partition().equals(wall))
        .findFirst();
  }

  /**
   * Returns whether an end of a wall dies in one that it comes to from outside, as a wing's side
   * does, its tail past the inner face.
   */
  public boolean isTee(Wall wall, boolean atStart) {
    return saddle(wall, atStart).filter(Saddle::inward).isPresent();
  }

  /** Returns whether an end of a wall dies in another and drains there: it does not hook. */
  public boolean drains(Wall wall, boolean atStart, BuildRules rules) {
    return rules.drains() && isTee(wall, atStart);
  }

  /** Returns every place where a wall ends at one that goes through, by the one going through. */
  public List<Saddle> saddles() {
    return walls.stream().flatMap(wall -> saddles(wall).stream()).toList();
  }

  /**
   * Returns whether the butts of a wall lie at the other end than those of the first pen's ring
   * would: a second pen mirrors the one before it, and a partition lies opposite to the wall left
   * of it, so that every wall that goes through shares thick ends and thin ones.
   */
  public boolean isMirrored(Wall wall) {
    boolean pen = (wall.stand().pen() - 1) % 2 == 1;
    if (!wall.isPartition()) {
      return pen;
    }
    Wall through = before(wall);
    int left =
        saddles(through).stream()
            .map(Saddle::partition)
            .filter(Wall::isPartition)
            .toList()
            .indexOf(wall);
    return pen != (left % 2 == 0);
  }

  /** Returns whether the butts of a round lie at the start corner of a wall. */
  public boolean isButtAtStart(Wall wall, int round, BuildRules rules) {
    return rules.clockwise(round) != isMirrored(wall);
  }

  /** Returns the name of a wall's start corner, such as {@code NW} for N. */
  public String startCorner(Wall wall) {
    return cornerOf(before(wall), wall);
  }

  /** Returns the name of a wall's end corner, such as {@code NE} for N. */
  public String endCorner(Wall wall) {
    return cornerOf(wall, after(wall));
  }

  /** Returns the name of the place where a partition crosses a wall, such as {@code NP1}. */
  public String corner(Saddle saddle) {
    return cornerOf(saddle.through(), saddle.partition());
  }

  /**
   * Returns the names of the places where two walls cross: the corners of each pen clockwise, from
   * the first wall's start corner, then both ends of each of its partitions, then where partitions
   * cross.
   */
  public List<String> corners() {
    LinkedHashSet<String> corners = new LinkedHashSet<>();
    for (Wall wall : walls) {
      corners.add(startCorner(wall));
      if (saddle(wall, false).isPresent()) {
        corners.add(endCorner(wall));
      }
    }
    saddles().stream().filter(Saddle::isLevel).map(this::corner).forEach(corners::add);
    return List.copyOf(corners);
  }

  /**
   * Returns the wall of one laying order that meets another at a corner.
   *
   * @throws java.util.NoSuchElementException if there is no such corner: a fault of the program
   */
  public Wall wallAt(String corner, boolean laidFirst) {
    return walls.stream()
        .flatMap(
            wall ->
                startCorner(wall).equals(corner)
                    ? Stream.of(wall, before(wall))
                    : endCorner(wall).equals(corner) ? Stream.of(wall, after(wall)) : Stream.of())
        .filter(wall -> wall.laidFirst() == laidFirst)
        .findFirst()
        .orElseGet(() -> partitionAt(corner, laidFirst));
  }

  private Wall partitionAt(String corner, boolean laidFirst) {
    return saddles().stream()
        .filter(saddle -> saddle.isLevel() && corner(saddle).equals(corner))
        .map(Saddle::through)
        .filter(wall -> wall.laidFirst() == laidFirst)
        .findFirst()
        .orElseThrow();
  }

  /** Returns the trimmed length of a wall's logs: outside length and an overhang at each end. */
  public Length trimmed(Wall wall, Length overhang) {
    return wall.outside().plus(overhang.times(2));
  }

  private String cornerOf(Wall one, Wall other) {
    if (one.isPartition() && other.isPartition()) {
      boolean ordered = one.name().compareTo(other.name()) < 0;
      return ordered ? one.name() + other.name() : other.name() + one.name();
    }
    if (one.isPartition() || other.isPartition()) {
      return one.isPartition() ? other.name() + one.name() : one.name() + other.name();
    }
    boolean only = walls.size() == CLOCKWISE.size();
    String side = side(other, only);
    boolean northSouth = side.equals("N") || side.equals("S");
    Wall first = northSouth ? other : one;
    Wall second = northSouth ? one : other;
    boolean sides = !only && CLOCKWISE.contains(one.side()) && CLOCKWISE.contains(side);
    boolean shared = sides && !hasWing() && first.number().equals(second.number());
    return (shared ? first.side() : first.name()) + second.name();
  }
}
