package roundbook.site;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.TypedBox;

/**
 * What is ticked cut: whole rounds, and logs by their own boxes.
 *
 * @param rounds how many rounds are cut, from the lowest up, every log of them
 * @param own the walls whose logs are ticked by their own boxes, by round
 */
public record CutTicks(int rounds, Map<Integer, Set<String>> own) {
  /** Copies the map. */
  public CutTicks {
    own = new TreeMap<>(own);
  }

  /** Returns whether the log of a place is cut. */
  public boolean isCut(Place place) {
    return place.round() <= rounds
        || place.round() == rounds + 1 && own(place.round()).contains(place.wall());
  }

  /** Returns the walls whose logs are ticked by their own boxes in a round. */
  public Set<String> own(int round) {
    return own.getOrDefault(round, Set.of());
  }

  /** Returns the walls whose logs are not cut yet in a round of which some are; else none. */
  public Set<String> open(int round, Building building) {
    Set<String> open = building.walls().stream().map(Wall::name).collect(Collectors.toSet());
    open.removeIf(wall -> isCut(new Place(round, wall)));
    return open;
  }

  /** Returns how many rounds have marks that are fixed: a log of them is cut. */
  public int begun() {
    return rounds + (own(rounds + 1).isEmpty() ? 0 : 1);
  }

  /**
   * Reads the ticks, and says where one is missing: under a cut round, or of what was cut before.
   *
   * @param fields reads the cells
   * @param rounds how many rounds the workbook has
   */
  static CutTicks read(Fields fields, Building building, int rounds, AsBuilt recorded) {
    List<String> walls = building.walls().stream().map(Wall::name).toList();
    Map<Integer, Set<String>> own = new TreeMap<>();
    Set<Integer> whole = new TreeSet<>();
    for (int round = 1; round <= rounds; round++) {
      int here = round;
      Set<String> logs =
          walls.stream()
              .filter(wall -> fields.ticked(TypedBox.LOG_CUT.named(here, wall)))
              .collect(Collectors.toSet());
      if (!logs.isEmpty()) {
        own.put(round, logs);
      }
      if (fields.ticked(TypedBox.CUT.named(round)) || logs.size() == walls.size()) {
        whole.add(round);
      }
    }
    return checked(fields, whole, own, recorded, walls);
  }

  private static CutTicks checked(
      Fields fields,
      Set<Integer> whole,
      Map<Integer, Set<String>> own,
      AsBuilt recorded,
      List<String> walls) {
    Set<Integer> begun = new TreeSet<>(whole);
    begun.addAll(own.keySet());
    int cut = 0;
    for (int round : begun) {
      if (round != cut + 1) {
        String box = whole.contains(round) ? TypedBox.CUT.named(round) : first(round, own);
        fields.say(
            fields
                .contradiction("hole", box)
                .with("round", round)
                .with("below", cut + 1)
                .remedyOf("tick-below"));
      }
      cut = whole.contains(round) ? round : cut;
    }
    for (int round = cut + 1; round <= recorded.cut().size(); round++) {
      String missing = missing(round, recorded, own, walls);
      if (!missing.isEmpty()) {
        fields.say(
            fields.contradiction("unticked", missing).with("round", round).remedyOf("tick-again"));
      }
    }
    return new CutTicks(Math.max(cut, recorded.rounds()), own);
  }

  private static String first(int round, Map<Integer, Set<String>> own) {
    return TypedBox.LOG_CUT.named(
        round, own.get(round).stream().sorted().findFirst().orElseThrow());
  }

  /** Returns the box that was ticked in the revision before and is not now; empty for none. */
  private static String missing(
      int round, AsBuilt recorded, Map<Integer, Set<String>> own, List<String> walls) {
    if (recorded.isCut(round)) {
      return TypedBox.CUT.named(round);
    }
    return walls.stream()
        .filter(wall -> recorded.isCut(new Place(round, wall)))
        .filter(wall -> !own.getOrDefault(round, Set.of()).contains(wall))
        .map(wall -> TypedBox.LOG_CUT.named(round, wall))
        .findFirst()
        .orElse("");
  }
}
