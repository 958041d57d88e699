package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;

/**
 * A place that an opening with short logs cuts through.
 *
 * @param wall its wall
 * @param round its round
 * @param left length of the piece at the left, seen from outside
 * @param right length of the piece at the right
 */
record OpeningPlace(Wall wall, int round, Length left, Length right) {
  Place place() {
    return new Place(round, wall.name());
  }

  /** Returns whether a pair has the lengths that are wanted here. */
  boolean takes(FilledPlace pair) {
    return pair.logs().stream()
        .map(log -> log.piece().trimmed())
        .toList()
        .equals(List.of(left, right));
  }

  /** Returns whether what lies there is settled: it is cut or measured, or a pin says it. */
  boolean isSettled(Job job) {
    return job.built().isCut(place())
        || job.built().held().containsKey(place())
        || job.pins().stream()
            .anyMatch(
                pin ->
                    pin.wall().equalsIgnoreCase(wall.name())
                        && pin.round().orElse(0) == round
                        && !pin.log().isEmpty());
  }

  /** Returns the places that openings with short logs cut through, by round, then wall. */
  static Map<Place, OpeningPlace> of(Job job, Stack stack) {
    List<OpeningPlace> found = new ArrayList<>();
    for (OpeningCut opening : OpeningCut.of(job, stack)) {
      if (opening.opening().shortLogs()) {
        opening.of(CutExtent.THROUGH).forEach(cut -> of(cut).ifPresent(found::add));
      }
    }
    List<Wall> walls = job.building().walls();
    found.sort(
        Comparator.comparingInt(OpeningPlace::round).thenComparing(s -> walls.indexOf(s.wall)));
    Map<Place, OpeningPlace> places = new LinkedHashMap<>();
    found.forEach(each -> places.put(each.place(), each));
    return places;
  }

  private static Optional<OpeningPlace> of(LogCut cut) {
    return cut.sides()
        .filter(sides -> !sides.tooShort() && sides.atCorners())
        .map(
            sides ->
                new OpeningPlace(
                    cut.log().wall(),
                    cut.log().round(),
                    sides.left().length(),
                    sides.right().length()));
  }
}
