package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Wall;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Placement;
import roundbook.stack.Joint;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Bowed logs lie crown up, so a gap at mid-wall is not the one of straight logs. */
class SweptGapsTest {
  private static final Length STEP = Length.ofInchFraction(1, 16);
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  /**
   * A bow of 2 in over the whole log is that times the square of the trimmed part of its length.
   */
  @Test
  void aBowIsToldWhereItTakesAGapOutOfItsLimits() {
    Job straight = Jobs.random(3, 36);
    Plan plan = Planner.of(straight, new BalancedChooser().choose(straight, SHORT));
    assertTrue(swept(plan).isEmpty(), "straight logs");
    Wall wall = straight.building().walls().get(0);
    Joint joint = plan.stack().joints(wall).get(3);
    Log log = joint.lower().first().piece().log();
    Job job = straight.withLogs(bowed(straight, log.tag()));
    Map<Place, Held> places = new TreeMap<>();
    plan.pieces().forEach(each -> places.put(each.placed().place(), each.placed().held()));
    Plan other = Planner.of(job, Placement.choice(job, places, plan.rounds()));
    Problem told =
        swept(other).stream()
            .filter(each -> each.log().equals(joint.upper().tags()))
            .findFirst()
            .orElseThrow();
    String words = Sentences.english().message(told);
    double part = joint.lower().trimmed().inches() / log.length().inches();
    double gap = joint.middle().inches() - 2 * part * part;
    Length printed = Length.ofInchFraction(StrictMath.round(16 * gap), 16);
    String mark = LengthFormat.forJob(LengthUnit.INCH, STEP).mark(printed);
    String begin =
        "wall " + wall.name() + ", round 5 on round 4: gap " + mark + " in at the middle";
    assertTrue(words.startsWith(begin), words);
  }

  private static List<Log> bowed(Job job, String tag) {
    return job.logs().stream()
        .map(log -> log.tag().equals(tag) ? Kept.log(log, Log.Keep.ANY, Length.ofInches(2)) : log)
        .toList();
  }

  private static List<Problem> swept(Plan plan) {
    return plan.problems().stream().filter(each -> each.code() == ProblemCode.GAP_SWEEP).toList();
  }
}
