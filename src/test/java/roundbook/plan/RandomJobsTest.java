package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Job;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Verifier;

/** Random jobs are planned, or refused with a reason that a builder understands. */
class RandomJobsTest {
  private static final Effort LITTLE = Effort.usual(1).withMoves(400);

  /** What a reason may be when no log is placed; a pin alone says nothing of the logs. */
  private static final List<ProblemCode> REASONS =
      List.of(ProblemCode.TOO_FEW_LOGS, ProblemCode.NO_ROWS, ProblemCode.BAD_SETTING);

  @Test
  void someArePlannedOrRefusedWithAReason() {
    assertSound(1, 500);
  }

  @Test
  @Tag("long")
  void twoThousandArePlannedOrRefusedWithAReason() {
    assertSound(501, 2000);
  }

  private static void assertSound(long from, long to) {
    TreeMap<String, Integer> ends = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    LongStream.rangeClosed(from, to)
        .forEach(
            seed -> {
              try {
                ends.merge(end(seed), 1, Integer::sum);
              } catch (RuntimeException fault) {
                faults.add("seed " + seed + ": " + fault);
              }
            });
    assertEquals(List.of(), faults);
    double planned = ends.getOrDefault("planned", 0) / (double) (to - from + 1);
    assertEquals(.87, planned, .05, "planned and refused: " + ends);
  }

  private static String end(long seed) {
    Read<JobReader.Findings> read =
        JobReader.read(RandomJobs.tables(RandomJobs.sheets(seed)), Asked.NOTHING);
    Optional<Job> job = read.value().orElseThrow().job().filter(each -> !each.logs().isEmpty());
    if (job.isEmpty()) {
      return reason(read.problems());
    }
    Plan plan = new Planner(new BalancedChooser()).plan(job.get().corrected(), LITTLE);
    List<String> faults = Verifier.faults(plan.job(), plan.choice(), plan.stack());
    if (!faults.isEmpty()) {
      throw new IllegalStateException(faults.toString());
    }
    return plan.rounds() == 0 ? reason(plan.problems()) : "planned";
  }

  private static String reason(List<Problem> problems) {
    Problem first =
        problems.stream()
            .filter(problem -> problem.severity() == Severity.ERROR)
            .filter(problem -> REASONS.contains(problem.code()))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no reason among " + problems));
    if (Sentences.english().message(first).isBlank() || first.remedies().isEmpty()) {
      throw new IllegalStateException("nothing is said with " + first);
    }
    return first.code().id();
  }
}
