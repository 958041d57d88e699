package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Job;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Verifier;

/** Two thousand random jobs are planned, or refused with a reason that a builder understands. */
class RandomJobsTest {
  private static final int JOBS = Integer.getInteger("jobs", 2000);
  private static final Effort LITTLE = Effort.usual(1).withMoves(400);

  @Test
  void everyJobIsPlannedOrRefusedWithAReason() {
    TreeMap<String, Integer> ends = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    LongStream.rangeClosed(1, JOBS)
        .forEach(
            seed -> {
              try {
                ends.merge(end(seed), 1, Integer::sum);
              } catch (RuntimeException fault) {
                faults.add("seed " + seed + ": " + fault);
              }
            });
    ends.forEach((a, b) -> System.err.println(b + " " + a));
    assertEquals(List.of(), faults);
  }

  private static String end(long seed) {
    Read<JobReader.Findings> read =
        JobReader.read(RandomJobs.tables(RandomJobs.sheets(seed)), Asked.NOTHING);
    Optional<Job> job = read.value().orElseThrow().job();
    if (job.isEmpty()) {
      return reason(seed, read.problems());
    }
    Plan plan = new Planner(new BalancedChooser()).plan(job.get().corrected(), LITTLE);
    assertEquals(List.of(), Verifier.faults(plan.job(), plan.choice(), plan.stack()));
    return plan.rounds() == 0 ? reason(seed, plan.problems()) : "planned";
  }

  private static String reason(long seed, List<Problem> problems) {
    List<Problem> errors =
        problems.stream().filter(problem -> problem.severity() == Severity.ERROR).toList();
    assertTrue(!errors.isEmpty(), "seed " + seed + " is refused without a reason: " + problems);
    return errors.stream().map(e -> e.code().id() + ": " + e.message().replaceAll("missing.*", "")).sorted().distinct().collect(java.util.stream.Collectors.joining(" | "));
  }
}
