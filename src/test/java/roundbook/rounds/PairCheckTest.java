package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Pair;
import roundbook.job.Pair.Half;
import roundbook.job.Piece;
import roundbook.plan.ShortYards;
import roundbook.stack.Course;
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
    assertEquals(List.of(), Verifier.faults(JOB, CHOICE, stack(CHOICE.courses())));
  }

  @Test
  void aPairWhereNothingIsAskedForOrCutIsFound() {
    Job unasked = ShortYards.of(4, 5, 9, 12).job(false);
    assertFault(
        "lies where no opening cuts through",
        Verifier.faults(unasked, CHOICE, stack(CHOICE.courses())));
  }

  /** Changes every pair, its place keeping the diameters that it had. */
  private static List<String> faults(UnaryOperator<Pair> change) {
    List<Course> courses = new ArrayList<>();
    for (Course course : CHOICE.courses()) {
      List<PlacedLog> logs = course.logs().stream().map(log -> changed(log, change)).toList();
      courses.add(Course.of(course.round(), logs, JOB.rules()));
    }
    return new PairCheck(JOB, stack(courses)).faults();
  }

  private static PlacedLog changed(PlacedLog placed, UnaryOperator<Pair> change) {
    Log log = placed.piece().log();
    if (log.pair().isEmpty()) {
      return placed;
    }
    Log other =
        new Log(
            log.tag(),
            log.length(),
            log.profile(),
            log.sources(),
            log.traits(),
            log.place(),
            log.origin(),
            log.extra(),
            Optional.of(change.apply(log.pair().get())));
    Piece piece = new Piece(other, placed.piece().cutOffButt(), placed.piece().trimmed());
    return new PlacedLog(piece, placed.wall(), placed.round(), placed.buttAtStart());
  }

  private static Half with(Half half, Length cutOffButt, Length trimmed) {
    return half.hewn(new Piece(half.piece().log(), cutOffButt, trimmed));
  }

  @Test
  void aLogTheOtherWayRoundIsFound() {
    assertFault(
        "has another diameter in its place",
        faults(
            pair ->
                new Pair(
                    new Half(pair.left().piece(), true, !pair.left().buttOut()), pair.right())));
  }

  @Test
  void aLogWithoutWoodToSquareIsFound() {
    assertFault(
        "is too short",
        faults(
            pair ->
                new Pair(
                    pair.left(), with(pair.right(), Length.ZERO, pair.right().piece().trimmed()))));
  }

  @Test
  void aPieceShorterThanItsSideIsFound() {
    Length less = Length.ofInches(90);
    assertFault(
        "is too short past its notch",
        faults(
            pair ->
                new Pair(
                    with(
                        pair.left(),
                        pair.left().piece().cutOffButt(),
                        pair.left().piece().trimmed().minus(less)),
                    pair.right())));
  }
}
