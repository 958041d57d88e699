package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.plan.ShortYards;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** The check of a plan finds faults planted in pairs of short logs. */
class PairCheckTest {
  private static final Job JOB = ShortYards.of(4, 5, 9, 12).job(true);
  private static final Choice CHOICE =
      new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(20_000));

  private static Stack stack(List<Course> courses) {
    return Stack.of(JOB.rules(), JOB.building(), courses);
  }

  private static void assertFault(String wanted, List<String> faults) {
    assertTrue(faults.stream().anyMatch(fault -> fault.contains(wanted)), faults.toString());
  }

  @Test
  void aSoundPlanHasNoFault() {
    assertTrue(CHOICE.placedPairs().size() >= 2);
    assertEquals(List.of(), Verifier.verify(JOB, CHOICE, stack(CHOICE.courses())).faults());
  }

  @Test
  void aPairWhereNothingIsAskedForOrCutIsFound() {
    Job unasked = ShortYards.of(4, 5, 9, 12).job(false);
    assertFault(
        "lies where no opening cuts through",
        Verifier.verify(unasked, CHOICE, stack(CHOICE.courses())).faults());
  }

  /** Changes every pair. */
  private static List<String> faults(UnaryOperator<FilledPlace> change) {
    List<Course> courses = new ArrayList<>();
    for (Course course : CHOICE.courses()) {
      List<FilledPlace> places =
          course.places().stream()
              .map(place -> place.isShared() ? change.apply(place) : place)
              .toList();
      courses.add(Course.of(course.round(), places, JOB.rules()));
    }
    Checks checks = new Checks();
    new PairCheck(JOB, stack(courses), checks).pairs();
    return checks.verdict().faults();
  }

  /** Cuts a log otherwise, its left end staying where it was. */
  private static PlacedLog cut(PlacedLog log, Length cutOffButt, Length trimmed) {
    return log.with(new Piece(log.piece().log(), cutOffButt, trimmed));
  }

  @Test
  void aLogWithoutWoodToSquareIsFound() {
    assertFault(
        "is too short",
        faults(
            pair -> {
              PlacedLog right = pair.logs().get(1);
              return pair.with(cut(right, Length.ZERO, right.piece().trimmed()), right);
            }));
  }

  @Test
  void aPieceShorterThanItsSideIsFound() {
    Length less = Length.ofInches(90);
    assertFault(
        "is too short past its notch",
        faults(
            pair -> {
              Piece piece = pair.first().piece();
              Length trimmed = piece.trimmed().minus(less);
              return pair.with(cut(pair.first(), piece.cutOffButt(), trimmed), pair.first());
            }));
  }

  /** A right log that is shorter and not moved to the corner leaves the corner without a log. */
  @Test
  void aLogThatDoesNotReachItsCornerIsFound() {
    Length inch = Length.ofInches(1);
    assertFault(
        "does not reach to its corner",
        faults(
            pair -> {
              PlacedLog right = pair.logs().get(1);
              PlacedLog moved =
                  new PlacedLog(
                      right.piece(),
                      right.wall(),
                      right.round(),
                      right.buttAtStart(),
                      right.fromLeft().minus(inch));
              return pair.with(moved, right);
            }));
    assertFault(
        "does not reach to its corner",
        faults(
            pair -> {
              PlacedLog left = pair.first();
              PlacedLog moved =
                  new PlacedLog(left.piece(), left.wall(), left.round(), left.buttAtStart(), inch);
              return pair.with(moved, left);
            }));
  }
}
