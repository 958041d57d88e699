package roundbook.intake.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.units.Length;
import roundbook.units.LengthReader;

/**
 * Walls told by options of the command line.
 *
 * <p>{@code 24x18} is one pen; {@code 16,10,16x18} are two and the passage between them. {@code
 * 15-9} puts a partition so far from the left outside corner of wall N, {@code E:7} of wall E,
 * {@code N2:8} of the second pen's wall N. {@code S:14,14x12} puts a wing of 14 by 12 ft outside of
 * wall S, so far from its left outside corner.
 *
 * @param rules thickness of the logs
 * @param laidFirst names of the walls that are laid first
 * @param reader reads lengths in feet or metres
 */
record WallsOption(BuildRules rules, Set<String> laidFirst, LengthReader reader) {
  private static final List<String> SIDES = List.of("N", "E", "S", "W");

  /** Returns whether a wall is laid first: by its name, or by its side of a further pen. */
  static boolean isFirst(String name, Set<String> laidFirst) {
    return laidFirst.contains(name) || laidFirst.contains(name.replaceAll("\\d+$", ""));
  }

  /** Returns a partition without a length as long as the wall beside it; any other as it is. */
  static Wall beside(Wall wall, List<Wall> walls) {
    if (!wall.isPartition() || !wall.outside().isZero()) {
      return wall;
    }
    List<String> between = wall.stand().between();
    Length outside =
        walls.stream()
            .filter(each -> !each.isPartition() && each.stand().pen() == wall.stand().pen())
            .filter(each -> !between.contains(each.name()))
            .map(Wall::outside)
            .min(Comparator.naturalOrder())
            .orElse(Length.ZERO);
    return wall.longer(outside.minus(wall.outside()));
  }

  /**
   * What was read of options.
   *
   * @param walls the walls in the order that they are told in; none where an option cannot be read
   * @param option the option that cannot be read; empty where all can
   * @param text what was said there
   */
  record Told(List<Wall> walls, String option, String text) {
    private static Told not(String option, String text) {
      return new Told(List.of(), option, text);
    }
  }

  /** Reads the walls. */
  Told walls(HouseTold house) {
    String option = house.pens().isPresent() ? "--pens" : "--walls";
    String text = house.pens().or(house::walls).orElse("");
    boolean both = house.pens().isPresent() && house.walls().isPresent();
    boolean row = text.contains(",") == house.pens().isPresent();
    List<Wall> walls =
        both || !row ? List.of() : new ArrayList<>(rings(text.toLowerCase(Locale.ROOT)));
    if (walls.isEmpty()) {
      return Told.not(option, both ? house.walls().orElseThrow() + " " + text : text);
    }
    List<Wall> rings = List.copyOf(walls);
    for (String each : house.partitions()) {
      Optional<Wall> partition = partition(each, walls.size() - rings.size() + 1, rings);
      if (partition.isEmpty()) {
        return Told.not("--partition", each);
      }
      walls.add(beside(partition.get(), rings));
    }
    if (house.wing().isPresent()) {
      List<Wall> wing = wing(house.wing().get(), rings);
      if (wing.isEmpty()) {
        return Told.not("--wing", house.wing().get());
      }
      Length depth = wing.get(wing.size() - 1).outside();
      walls.replaceAll(wall -> goesOn(wall, wing.get(0), rings) ? wall.longer(depth) : wall);
      walls.addAll(Building.withinReach(wing, rings));
    }
    return new Told(walls, "", "");
  }

  /**
   * Reads a wing: its far wall first, then the sides that are its own; none where it is no wing.
   */
  private List<Wall> wing(String text, List<Wall> rings) {
    String[] parts = text.strip().split("\\s*[:,xX×]\\s*");
    boolean whole = text.matches("[^:,]+:[^:,]+,[^:,xX×]+[xX×][^:,xX×]+");
    String on = parts[0].toUpperCase(Locale.ROOT);
    Optional<Wall> shared = rings.stream().filter(wall -> wall.name().equals(on)).findFirst();
    if (!whole || shared.isEmpty() || rings.size() != SIDES.size()) {
      return List.of();
    }
    List<Length> lengths =
        Arrays.stream(parts).skip(1).flatMap(each -> length(each).stream()).toList();
    return lengths.size() == 3 ? wing(shared.get(), rings, lengths) : List.of();
  }

  private List<Wall> wing(Wall shared, List<Wall> rings, List<Length> lengths) {
    int at = rings.indexOf(shared);
    Stand stand = new Stand(2, List.of(shared.name()), Optional.of(lengths.get(0)));
    List<Wall> walls = new ArrayList<>();
    walls.add(own(shared, lengths.get(1), stand));
    Stand side = new Stand(2, List.of(), Optional.empty());
    Length right = shared.outside().minus(lengths.get(0)).minus(lengths.get(1));
    if (!right.isZero()) {
      walls.add(own(rings.get(Math.floorMod(at - 1, rings.size())), lengths.get(2), side));
    }
    if (!lengths.get(0).isZero() || right.isZero()) {
      walls.add(own(rings.get((at + 1) % rings.size()), lengths.get(2), side));
    }
    return walls;
  }

  private Wall own(Wall like, Length outside, Stand stand) {
    return new Wall(like.name() + "2", outside, like.laidFirst(), rules.thickness(), "", stand);
  }

  /** Returns whether a wall of the house is in line with a side of a wing and goes on along it. */
  private static boolean goesOn(Wall wall, Wall far, List<Wall> rings) {
    List<String> names = rings.stream().map(Wall::name).toList();
    int at = names.indexOf(far.stand().between().get(0));
    Length left = far.stand().at().orElseThrow();
    Length right = rings.get(at).outside().minus(left).minus(far.outside());
    int index = names.indexOf(wall.name());
    return left.isZero() != right.isZero()
        && index == Math.floorMod(at + (left.isZero() ? 1 : -1), rings.size());
  }

  private List<Wall> rings(String text) {
    String[] parts = text.split("\\s*[x×]\\s*");
    if (parts.length != 2) {
      return List.of();
    }
    List<Length> along =
        Arrays.stream(parts[0].split("\\s*,\\s*")).flatMap(each -> length(each).stream()).toList();
    Optional<Length> deep = length(parts[1]);
    boolean whole = along.size() == parts[0].split(",", -1).length && along.size() % 2 == 1;
    List<Wall> walls = new ArrayList<>();
    for (int pen = 1; whole && deep.isPresent() && 2 * pen - 1 <= along.size(); pen++) {
      Optional<Length> passage = pen == 1 ? Optional.empty() : Optional.of(along.get(2 * pen - 3));
      walls.addAll(ring(pen, along.get(2 * pen - 2), deep.get(), passage));
    }
    return walls;
  }

  private List<Wall> ring(int pen, Length along, Length deep, Optional<Length> passage) {
    List<Wall> walls = new ArrayList<>();
    for (String side : SIDES) {
      Optional<Length> at = side.equals("W") ? passage : Optional.empty();
      Length outside = side.equals("N") || side.equals("S") ? along : deep;
      String name = pen == 1 ? side : side + pen;
      boolean first = isFirst(name, laidFirst);
      Stand stand = new Stand(pen, List.of(), at);
      walls.add(new Wall(name, outside, first, rules.thickness(), "", stand));
    }
    return walls;
  }

  private Optional<Wall> partition(String text, int number, List<Wall> rings) {
    String[] parts = text.split("\\s*:\\s*");
    String from = parts.length == 2 ? parts[0].toUpperCase(Locale.ROOT) : "N";
    List<String> names = rings.stream().map(Wall::name).toList();
    int index = names.indexOf(from);
    if (index < 0 || parts.length > 2) {
      return Optional.empty();
    }
    int ring = index / SIDES.size() * SIDES.size();
    String across = names.get(ring + (index - ring + 2) % SIDES.size());
    Wall one = rings.get(index);
    return length(parts[parts.length - 1])
        .map(at -> new Stand(one.stand().pen(), List.of(from, across), Optional.of(at)))
        .map(
            stand ->
                new Wall(
                    "P" + number, Length.ZERO, !one.laidFirst(), rules.thickness(), "", stand));
  }

  /** A bare {@code 15-9} is feet and inches here, where no range can be meant. */
  private Optional<Length> length(String text) {
    String told = rules.metric() ? text : text.strip().replaceAll("^(\\d+)-(\\d.*)$", "$1' $2\"");
    return reader
        .read(told)
        .filter(reading -> reading.doubt().isEmpty())
        .map(LengthReader.Reading::length);
  }
}
