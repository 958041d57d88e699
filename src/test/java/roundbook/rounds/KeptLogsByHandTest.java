package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static roundbook.rounds.TwoRounds.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.plan.Jobs;
import roundbook.stack.Course;

/**
 * Places for kept logs, by hand. Places are counted N E S W from round 1 up: 0 to 3, then 4 to 7.
 *
 * <p>In two rounds of 13 in logs the second log on N lies at about 17 in, from 10 to 24 in high.
 */
class KeptLogsByHandTest {
  private static final Job PLAIN = TwoRounds.job(8, log -> log);

  @Test
  void sillsArePutIntoTheFirstRoundTheLongFirstLaidWallsFirst() {
    assertEquals(Map.of(), reserved(PLAIN, Optional.empty()));
    assertEquals(Set.of(0), reserved(kept(Log.Keep.SILL, 3), Optional.empty()).keySet());
    assertEquals(Set.of(0, 2), reserved(kept(Log.Keep.SILL, 3, 4), Optional.empty()).keySet());
    assertEquals(
        Map.of(0, Log.Keep.SILL, 2, Log.Keep.SILL, 1, Log.Keep.SILL),
        reserved(kept(Log.Keep.SILL, 1, 3, 4), Optional.empty()));
  }

  /** E and W are laid last and stand half a course higher; a third plate lies on N. */
  @Test
  void platesArePutIntoTheLastRoundOnTheWallsLaidLastFirst() {
    assertEquals(
        Map.of(5, Log.Keep.PLATE, 7, Log.Keep.PLATE),
        reserved(kept(Log.Keep.PLATE, 3, 4), Optional.empty()));
    assertEquals(
        Set.of(4, 5, 7), reserved(kept(Log.Keep.PLATE, 1, 3, 4), Optional.empty()).keySet());
  }

  @Test
  void headersArePutOverOpenings() {
    Job job = kept(Log.Keep.HEADER, 3);
    assertEquals(Map.of(), reserved(job, Optional.empty()));
    assertEquals(Map.of(5, Log.Keep.HEADER), reserved(job, Optional.of(Set.of(5))));
    assertEquals(Map.of(6, Log.Keep.HEADER), reserved(job, Optional.of(Set.of(5, 6))));
  }

  /** Eight logs for eight places: with no place over an opening the header log has none. */
  @Test
  void headersMayLieAnywhereWhereARoundWouldBeLost() {
    Job job = kept(Log.Keep.HEADER, 3);
    Places places = new KeptLogs(job).reserved(new Places(job, 2), Optional.of(Set.of()));
    assertEquals(true, places.fillable());
    assertEquals(Map.of(), places.reserved());
  }

  /** The plan is asked once where nothing is kept for a header, or no opening wants one. */
  @Test
  void withoutHeadersOrOpeningsOnePlanIsMade() {
    List<Optional<Set<Integer>>> asked = new ArrayList<>();
    Choice laid = choice(PLAIN);
    Function<Optional<Set<Integer>>, Choice> plan = told(asked, laid);
    assertSame(laid, new KeptLogs(kept(Log.Keep.HEADER, 3)).choose(plan));
    assertSame(laid, new KeptLogs(door(PLAIN, 9)).choose(plan));
    Choice none = new Choice(List.of(), List.of(), laid.score(), Optional.empty(), List.of());
    assertSame(none, new KeptLogs(door(kept(Log.Keep.HEADER, 3), 9)).choose(told(asked, none)));
    assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), asked);
  }

  /** A door up to 9 in lies under the second log on N: place 4. */
  @Test
  void thePlanIsMadeAgainWithThePlacesOverOpenings() {
    Job job = door(kept(Log.Keep.HEADER, 3), 9);
    List<Optional<Set<Integer>>> asked = new ArrayList<>();
    Choice first = choice(job);
    Choice second = choice(job);
    Choice made =
        new KeptLogs(job)
            .choose(
                headers -> {
                  asked.add(headers);
                  return asked.size() == 1 ? first : second;
                });
    assertSame(second, made);
    assertEquals(List.of(Optional.empty(), Optional.of(Set.of(4))), asked);
  }

  /**
   * A second door in the way of another wall's log makes the places move each time; the header log
   * lies over the first, which is all that it can do.
   */
  @Test
  void aHeaderLogOverItsOpeningIsEnough() {
    Job job = door(kept(Log.Keep.HEADER, 5), 9);
    List<Optional<Set<Integer>>> asked = new ArrayList<>();
    Choice first = choice(job);
    Job thin = TwoRounds.job(8, log -> Jobs.log(log.tag(), log.length(), "4", "4", "4"));
    Choice low = choice(thin);
    Choice made =
        new KeptLogs(job)
            .choose(
                headers -> {
                  asked.add(headers);
                  return asked.size() == 1 ? low : first;
                });
    assertSame(first, made);
    assertEquals(List.of(Optional.empty(), Optional.of(Set.of())), asked);
  }

  @Test
  void whatCostsARoundIsNotDone() {
    Job job = door(kept(Log.Keep.HEADER, 3), 9);
    Choice first = choice(job);
    List<Course> one = first.courses().subList(0, 1);
    Choice lower = new Choice(one, List.of(), first.score(), Optional.empty(), List.of());
    assertSame(first, new KeptLogs(job).choose(headers -> headers.isEmpty() ? first : lower));
  }

  /** Under logs of 4 in the door cuts all through: no place stays, and the free plan stands. */
  @Test
  void placesThatNeverStayAreGivenUp() {
    Job job = door(kept(Log.Keep.HEADER, 3), 9);
    Choice first = choice(job);
    Job thin = TwoRounds.job(8, log -> Jobs.log(log.tag(), log.length(), "4", "4", "4"));
    Choice low = choice(thin);
    List<Optional<Set<Integer>>> asked = new ArrayList<>();
    Choice made =
        new KeptLogs(job)
            .choose(
                headers -> {
                  asked.add(headers);
                  return headers.equals(Optional.of(Set.of(4))) ? low : first;
                });
    assertSame(first, made);
    assertEquals(
        List.of(
            Optional.empty(),
            Optional.of(Set.of(4)),
            Optional.of(Set.of()),
            Optional.of(Set.of(4))),
        asked);
  }

  private static Function<Optional<Set<Integer>>, Choice> told(
      List<Optional<Set<Integer>>> asked, Choice choice) {
    return headers -> {
      asked.add(headers);
      return choice;
    };
  }

  private static Map<Integer, Log.Keep> reserved(Job job, Optional<Set<Integer>> headers) {
    return new KeptLogs(job).reserved(new Places(job, 2), headers).reserved();
  }

  private static Job kept(Log.Keep keep, int... numbers) {
    List<Log> logs = new ArrayList<>(PLAIN.logs());
    for (int number : numbers) {
      logs.set(number - 1, Kept.log(logs.get(number - 1), keep));
    }
    return PLAIN.withLogs(logs);
  }

  private static Job door(Job job, int head) {
    return Doors.with(job, Doors.door("N", 90, head, false));
  }
}
