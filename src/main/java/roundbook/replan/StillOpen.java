package roundbook.replan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.job.AsBuilt;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.Value;

/**
 * What was found when the tallies were read, as far as it is still open.
 *
 * <p>Estimated middles are counted anew: of logs that are measured, cut or lost none is open. What
 * was said of such a log stands in the list of problems, but asks for nothing any more.
 *
 * @param job the job with what is built
 */
public final class StillOpen {
  private static final int NAMED_MOST = 12;

  private final Job job;

  private StillOpen(Job job) {
    this.job = job;
  }

  /** Returns the problems found, in their order. */
  public static List<Problem> of(List<Problem> found, Job job) {
    StillOpen open = new StillOpen(job);
    List<Problem> left = new ArrayList<>();
    boolean counted = false;
    for (Problem problem : found) {
      if (problem.code() != ProblemCode.MID_ESTIMATED) {
        left.add(open.isSettled(problem.log()) ? problem.as(Severity.INFO) : problem);
      } else if (!counted) {
        counted = true;
        open.middles(problem.where()).ifPresent(left::add);
      }
    }
    return left;
  }

  /** Returns whether a log is cut, measured or lost; so is none without a tag. */
  private boolean isSettled(String tag) {
    AsBuilt built = job.built();
    return built.placeOf(tag).isPresent() || built.lost().contains(tag);
  }

  private Optional<Problem> middles(CellRef where) {
    List<String> tags =
        job.logs().stream()
            .filter(log -> log.sources().mid() == Log.Source.ESTIMATED)
            .filter(log -> !log.traits().skip() && !isCut(log.tag()))
            .map(Log::tag)
            .toList();
    List<Value> named = tags.stream().limit(NAMED_MOST).map(Value::text).toList();
    String variant = tags.size() > NAMED_MOST ? "left-many" : "left";
    return tags.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.of(ProblemCode.MID_ESTIMATED, variant, where)
                .with("count", tags.size())
                .with("tags", Value.list("list.comma", named)));
  }

  private boolean isCut(String tag) {
    return job.built().placeOf(tag).map(place -> job.built().isCut(place.round())).orElse(false);
  }
}
