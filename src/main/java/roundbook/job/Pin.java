package roundbook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Value;

/**
 * A place that the builder has settled.
 *
 * @param round the round counted from 1; empty when only the wall is settled
 * @param wall the wall's name; empty when only the round is settled
 * @param log the log's tag; empty when only the direction of the butt is settled
 * @param buttAt the corner for its butt; empty when left to the plan
 * @param why the builder's reason, or empty
 * @param origin the row it was read from
 */
public record Pin(
    OptionalInt round, String wall, String log, String buttAt, String why, CellRef origin) {
  /** Returns what it settles, as far as it does: log, round and wall. */
  public Value phrase() {
    List<Phrase> parts = new ArrayList<>();
    if (!log.isEmpty()) {
      parts.add(Phrase.of("pin.log").with("log", log));
    }
    round.ifPresent(number -> parts.add(Phrase.of("pin.round").with("round", number)));
    if (!wall.isEmpty()) {
      parts.add(Phrase.of("pin.wall").with("wall", wall));
    }
    return Value.list("list.comma", parts);
  }

  /**
   * Returns why the butt cannot lie where it is wanted: butts run round the building one way, so a
   * round and a wall say where. Empty when it can, or when not all three are settled.
   */
  public Optional<Phrase> againstButt(Building building, BuildRules rules) {
    if (buttAt.isEmpty() || round.isEmpty()) {
      return Optional.empty();
    }
    int at = round.getAsInt();
    return building
        .wall(wall)
        .map(
            each ->
                building.isButtAtStart(each, at, rules)
                    ? building.startCorner(each)
                    : building.endCorner(each))
        .filter(corner -> !corner.equalsIgnoreCase(buttAt))
        .map(corner -> Phrase.of("bad-pin.butt").with("corner", corner));
  }
}
