package roundbook.intake.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import roundbook.job.BuildRules;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.units.Length;
import roundbook.units.LengthReader;

/**
 * Walls told in one line of the command line.
 *
 * <p>{@code 24x18} is one pen; {@code 16,10,16x18} are two and the passage between them; each
 * {@code + 15-9} behind it puts a partition so far from the left outside corner of wall N, {@code +
 * E:7} of wall E, {@code + N2:8} of the second pen's wall N.
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
            .findFirst()
            .orElse(Length.ZERO);
    return new Wall(
        wall.name(), outside, wall.laidFirst(), wall.thickness(), wall.remarks(), wall.stand());
  }

  /** Returns the walls in the order that they are told in; none where the text is no walls. */
  List<Wall> walls(String text) {
    String[] parts = text.strip().split("\\s*\\+\\s*", -1);
    List<Wall> walls = new ArrayList<>(rings(parts[0].toLowerCase(Locale.ROOT)));
    for (int number = 1; number < parts.length && !walls.isEmpty(); number++) {
      Optional<Wall> partition = partition(parts[number], number, walls);
      if (partition.isEmpty()) {
        return List.of();
      }
      walls.add(beside(partition.get(), walls));
    }
    return walls;
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
