package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.Job;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** The chance of a gap outside its limits, against a library's normal distribution. */
class GapChanceTest {
  private static final NormalDistribution LIBRARY = new NormalDistribution();

  @Test
  void theNormalDistributionIsTheLibrarys() {
    for (double value = -6; value <= 6; value += 0.01) {
      assertEquals(LIBRARY.cumulativeProbability(value), GapChance.below(value), 7.5e-8);
    }
  }

  /**
   * By hand: four marks out by 1/16 in and two ends by 1/8 in make √(4/256 + 2/(64 · 4)) in at an
   * end, two marks √2/16 in at the middle; printed to the sixteenth 1/2 in reaches 1/32 in lower.
   */
  @Test
  void aGapAtItsLimitIsOutsideFourTimesOfTen() {
    Plan plan = PlanFixtures.inches().plan(3);
    Joint planned = plan.stack().joints().get(0);
    Length left = Length.ofInchFraction(1, 2).minus(planned.left());
    Length right = Length.ofInches(1).minus(planned.right());
    Joint joint = planned.with(new Joint.More(left, right));
    double end = Math.sqrt(4 / 256.0 + 2 / 256.0);
    double inside =
        (1 - outside(0.5, end))
            * (1 - outside(joint.middle().inches(), Math.sqrt(2) / 16))
            * (1 - outside(1, end));
    GapChance chances = new GapChance(plan.job(), plan.stack());
    assertEquals(1 - inside, chances.outside(joint), 1e-6);
    assertEquals(0.42, outside(0.5, end), 0.005);
    assertFalse(chances.canTell(joint), "nothing is measured yet");
  }

  /**
   * By hand, the round below read at all corners: of its four marks' misfit a quarter is the
   * first-laid log's own, which leaves 3/4 of a mark's variance, and its upper log has one mark
   * over the top that was read; a second-laid one has three.
   */
  @Test
  void readCornersLeaveFewerMarksUnknown() {
    Plan plan = PlanFixtures.inches().plan(3);
    Map<Corner, Length> read = new TreeMap<>();
    for (String corner : plan.job().building().corners()) {
      read.put(new Corner(1, corner), plan.stack().levelHeight(1));
    }
    Job job = plan.job().withBuilt(AsBuilt.NOTHING.withReadings(read, Map.of()));
    GapChance chances = new GapChance(job, plan.stack());
    for (Joint planned : plan.stack().joints()) {
      if (planned.lower().round() == 1) {
        Length left = Length.ofInchFraction(1, 2).minus(planned.left());
        Length right = Length.ofInches(1).minus(planned.right());
        Joint joint = planned.with(new Joint.More(left, right));
        double marks = 3 / 4.0 + (joint.lower().wall().laidFirst() ? 1 : 3);
        double end = Math.sqrt(marks / 256.0 + 2 / 256.0);
        double inside =
            (1 - outside(0.5, end))
                * (1 - outside(joint.middle().inches(), Math.sqrt(marks / 2) / 16))
                * (1 - outside(1, end));
        assertEquals(1 - inside, chances.outside(joint), 1e-6, joint.lower().wall().name());
      }
    }
  }

  private static double outside(double gap, double deviation) {
    return LIBRARY.cumulativeProbability((0.5 - 1 / 32.0 - gap) / deviation)
        + LIBRARY.cumulativeProbability((gap - 1.75 - 1 / 32.0) / deviation);
  }
}
