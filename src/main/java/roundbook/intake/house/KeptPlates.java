package roundbook.intake.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Wall;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/**
 * Finds logs kept for plates of walls on which no plate should lie.
 *
 * <p>The walls laid last stand half a course higher in the last round, so a plate lies level on
 * them alone. A log is for another wall where it is wished there, or where it is shorter than each
 * wall laid last; which logs will lie there only a plan can tell.
 */
public final class KeptPlates {
  private final List<Wall> laidLast;
  private final List<Log> elsewhere = new ArrayList<>();

  /** Takes the house whose plates the logs may be kept for; without one no line is said. */
  public KeptPlates(Optional<Building> building) {
    laidLast =
        building.map(Building::walls).orElse(List.of()).stream()
            .filter(wall -> !wall.laidFirst())
            .toList();
  }

  /** Takes one log as it is read. */
  public void see(Log log) {
    boolean kept = log.traits().keep() == Log.Keep.PLATE && !log.traits().skip();
    if (kept && laidLast.stream().noneMatch(wall -> mayServe(log, wall))) {
      elsewhere.add(log);
    }
  }

  private static boolean mayServe(Log log, Wall wall) {
    String wished = log.place().wall();
    return (wished.isEmpty() || wall.name().equalsIgnoreCase(wished))
        && !log.length().isLessThan(wall.outside());
  }

  /** Returns the one line that is said of all such logs; empty where there is none. */
  public Optional<Problem> problem() {
    if (elsewhere.isEmpty() || laidLast.isEmpty()) {
      return Optional.empty();
    }
    String logs = elsewhere.stream().map(Log::tag).collect(Collectors.joining(", "));
    String walls = laidLast.stream().map(Wall::name).collect(Collectors.joining(", "));
    return Optional.of(
        Problem.of(ProblemCode.PLATE_ELSEWHERE, elsewhere.get(0).origin())
            .with("logs", logs)
            .with("walls", walls));
  }
}
