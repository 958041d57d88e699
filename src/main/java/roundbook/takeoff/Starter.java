package roundbook.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * The half logs that second-laid walls begin on where they are asked for, flat side down.
 *
 * <p>One log of the first round's size, sawn along its middle, gives both: of the logs that lie in
 * no wall the one is kept whose middle comes nearest. Where none is long enough one is ordered, and
 * the halves are reckoned as cylinders of the round's size. Once the first round is cut the log is
 * sawn, and nothing more is kept or ordered.
 *
 * @param log the log kept for it; empty where none serves or the first round is cut
 * @param lacking whether one is to be ordered
 * @param halves what lies under each second-laid wall, as places of round 0
 */
public record Starter(Optional<Log> log, boolean lacking, List<FilledPlace> halves) {
  private static final Starter NONE = new Starter(Optional.empty(), false, List.of());

  /** Copies the list. */
  public Starter {
    halves = List.copyOf(halves);
  }

  /** Returns the starter of a job's walls; without halves where none is asked for. */
  static Starter of(Job job, Stack stack) {
    boolean asked = job.rules().text(Setting.FIRST_BED).equals("starter");
    if (!asked || stack.courses().isEmpty()) {
      return NONE;
    }
    Course first = stack.courses().get(0);
    List<Wall> walls = stack.building().walls().stream().filter(wall -> !wall.laidFirst()).toList();
    boolean open = !job.built().isCut(1);
    Optional<Log> kept = open ? kept(job, stack, walls) : Optional.empty();
    List<FilledPlace> halves =
        walls.stream().map(wall -> half(job, wall, kept, first.notch().size())).toList();
    return new Starter(kept, open && kept.isEmpty(), halves);
  }

  private static Optional<Log> kept(Job job, Stack stack, List<Wall> walls) {
    Set<String> placed =
        stack.courses().stream()
            .flatMap(course -> course.logs().stream())
            .map(PlacedLog::piece)
            .map(piece -> piece.log().tag())
            .collect(Collectors.toSet());
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE).times(2);
    Length least = walls.stream().map(wall -> trimmed(job, wall)).reduce(Length.ZERO, Length::most);
    Length size = stack.courses().get(0).notch().size();
    return job.logs().stream()
        .filter(log -> !log.traits().skip() && !placed.contains(log.tag()))
        .filter(log -> !log.length().isLessThan(least.plus(allowance)))
        .min(Comparator.comparing(log -> log.mid().minus(size).absolute()));
  }

  private static Length trimmed(Job job, Wall wall) {
    return job.building().trimmed(wall, job.rules().overhang());
  }

  private static FilledPlace half(Job job, Wall wall, Optional<Log> kept, Length size) {
    Length trimmed = trimmed(job, wall);
    Piece piece =
        kept.map(log -> new Piece(log, job.rules().length(Setting.SQUARING_ALLOWANCE), trimmed))
            .orElseGet(() -> new Piece(cylinder(job, trimmed, size), Length.ZERO, trimmed));
    return FilledPlace.of(piece, wall, 0, job.isButtAtStart(wall, 0));
  }

  private static Log cylinder(Job job, Length length, Length size) {
    DiameterProfile round = DiameterProfile.of(length, size, size, size);
    return job.logs().get(0).tagged("").measured(round).cutTo(length);
  }

  /** Returns what lies under a wall. */
  Optional<FilledPlace> under(Wall wall) {
    return halves.stream().filter(half -> half.wall().equals(wall)).findFirst();
  }

  /** Returns the joint between the half log under a wall and the wall's first log. */
  Optional<Joint> joint(Stack stack, Wall wall) {
    FilledPlace first = stack.courses().get(0).on(wall).orElseThrow();
    Length overhang = stack.rules().overhang();
    return under(wall)
        .map(half -> Joint.of(half, first, stack.centre(first), stack.building(), overhang));
  }

  /** Returns the tag of the log that is kept; none where there is no such log. */
  public Set<String> tags() {
    return log.map(Log::tag).map(Set::of).orElse(Set.of());
  }
}
