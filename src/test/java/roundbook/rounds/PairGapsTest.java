package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** What gaps are off is summed up again from the joints, and kept up to date log by log. */
class PairGapsTest {
  private static final Job JOB = TwoRounds.job(8, TwoRounds::tapered);
  private static final List<List<Length>> JAMBS =
      List.of(List.of(Length.ofInches(103), Length.ofInches(139)), List.of(), List.of(), List.of());

  /** Stations are both inside faces, the middle and the sides of openings; under 1/2 in 20 fold. */
  @Test
  void theCostIsThatOfEveryGapAtEveryStation() {
    List<Course> courses = TwoRounds.choice(JOB).courses();
    assertEquals(expected(JOB, courses), new PairGaps(JOB, courses, JAMBS).cost(), 1e-6);
    Length more = Length.ofInchFraction(5, 4);
    Job tight = JOB.with(JOB.rules().with(Setting.GAP_LEAST, more, Origin.OPTION));
    double lacking = new PairGaps(tight, courses, JAMBS).cost();
    assertEquals(expected(tight, courses), lacking, 1e-6, "the least is the gap wanted at most");
    Length most = Length.ofInchFraction(15, 16);
    Job near = JOB.with(JOB.rules().with(Setting.GAP_LEAST, most, Origin.OPTION));
    assertEquals(expected(near, courses), new PairGaps(near, courses, JAMBS).cost(), 1e-6);
    assertTrue(expected(near, courses) > expected(loose(), courses), "some gaps lack something");
    assertEquals(expected(loose(), courses), new PairGaps(loose(), courses, JAMBS).cost(), 1e-6);
  }

  private static Job loose() {
    return JOB.with(JOB.rules().with(Setting.GAP_LEAST, Length.ZERO, Origin.OPTION));
  }

  private static double expected(Job job, List<Course> courses) {
    Stack stack = Stack.of(job.rules(), job.building(), courses);
    double least = Math.min(1, job.rules().length(Setting.GAP_LEAST).inches());
    double sum = 0;
    for (Joint joint : stack.joints()) {
      boolean north = joint.lower().wall().name().equals("N");
      List<Length> gaps = new ArrayList<>(List.of(joint.left(), joint.middle(), joint.right()));
      if (north) {
        JAMBS.get(0).forEach(at -> gaps.add(joint.gapAt(at)));
      }
      for (Length gap : gaps) {
        double lack = Math.max(0, least - gap.inches());
        sum += Math.pow(gap.inches() - 1, 2) + 20 * lack * lack;
      }
    }
    return sum;
  }

  /** A log put into a round changes its size and the gaps over and under it, and no others. */
  @Test
  void whatIsPutInIsReckonedAsIfItHadAlwaysBeenThere() {
    List<Course> courses = fourRounds();
    Wall north = JOB.building().walls().get(0);
    Piece thick =
        new Piece(
            Jobs.log("L9", TwoRounds.LONG, "16", "15", "14"),
            Length.ofInches(2),
            Length.ofInches(246));
    for (int round = 1; round <= 4; round++) {
      PairGaps gaps = new PairGaps(JOB, courses, JAMBS);
      double before = gaps.cost();
      FilledPlace old = courses.get(round - 1).places().get(0);
      FilledPlace put = old.with(thick);
      gaps.put(put);
      assertEquals(put, gaps.course(round).places().get(0));
      List<Course> now = new ArrayList<>(courses);
      now.set(round - 1, gaps.course(round));
      assertEquals(expected(JOB, now), gaps.cost(), 1e-5, "round " + round);
      assertTrue(gaps.cost() > before);
      gaps.put(old);
      assertEquals(before, gaps.cost(), 1e-6);
    }
  }

  private static List<Course> fourRounds() {
    List<Course> courses = new ArrayList<>(TwoRounds.choice(JOB).courses());
    for (int round = 3; round <= 4; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (FilledPlace log : courses.get(round - 3).places()) {
        logs.add(FilledPlace.of(log.first().piece(), log.wall(), round, log.buttAtStart()));
      }
      courses.add(Course.of(round, logs, JOB.rules()));
    }
    return courses;
  }

  /**
   * A pair pays five thousandths for each inch that falls off, and 4 for a flagged end. For logs of
   * 13 in U = 4, and half an inch of face over it wants the root of 36 + 81 = 10.817 in.
   */
  @Test
  void aPairPaysForItsOffcutsAndFlaggedEnds() {
    Job job = TwoRounds.job(8, log -> Jobs.log(log.tag(), log.length(), "13", "13", "13"));
    List<Course> courses = TwoRounds.choice(job).courses();
    PairGaps gaps = new PairGaps(job, courses, List.of(List.of(), List.of(), List.of(), List.of()));
    assertEquals(0, gaps.cost(), 1e-6);
    gaps.put(pair(job, 2, "13", "13"));
    assertEquals(0.01, gaps.cost(), 1e-6);
    gaps.put(pair(job, 12, "13", "13"));
    assertEquals(0.06, gaps.cost(), 1e-6);
    gaps.put(courses.get(0).places().get(0));
    assertEquals(0, gaps.cost(), 1e-6);
    for (String thin : List.of("10.81", "10.82")) {
      FilledPlace left = pair(job, 2, thin, "13");
      FilledPlace right = pair(job, 2, "13", thin);
      boolean isFlagged = thin.equals("10.81");
      assertEquals(isFlagged, PairGaps.hasFlaggedEnd(job, courses.get(0), left), "left " + thin);
      assertEquals(isFlagged, PairGaps.hasFlaggedEnd(job, courses.get(0), right), "right " + thin);
    }
    assertFalse(PairGaps.hasFlaggedEnd(job, courses.get(0), courses.get(0).places().get(0)));
    PairGaps one = new PairGaps(job, courses, List.of(List.of(), List.of(), List.of(), List.of()));
    one.put(pair(job, 2, "13", "10.5"));
    assertTrue(one.cost() > 4 && one.cost() < 7, "a flagged end: " + one.cost());
  }

  /** Returns a pair on N in round 1 whose left log is squared by so many inches at its corner. */
  private static FilledPlace pair(Job job, int squared, String left, String right) {
    Wall north = job.building().walls().get(0);
    Log one = Jobs.log("L11", Length.ofInches(103 + 2 + squared), left, left, left);
    Log other = Jobs.log("L12", Length.ofInches(111), right, right, right);
    Piece first = new Piece(one, Length.ofInches(2), Length.ofInches(103));
    Piece second = new Piece(other, Length.ofInches(2), Length.ofInches(107));
    return FilledPlace.of(
        job,
        new PlacedLog(first, north, 1, true, Length.ZERO),
        new PlacedLog(second, north, 1, true, Length.ofInches(246 - 107)));
  }
}
