package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/**
 * The number of rounds for a height, without a search: the plans are laid by hand.
 *
 * <p>Of logs of 12 in with a gap of 1 in every round is 13 in high, and n rounds come to 13 n + 2
 * 1/4 in: the first centre line of E and W lies at 2 3/4 + 6 1/2 = 9 1/4 in, and half a log is 6 in
 * more.
 */
class ByHeightByHandTest {
  private final List<Integer> planned = new ArrayList<>();

  @ParameterizedTest(name = "{0} in from a guess of {1}: {2}, planned {3}")
  @CsvSource({
    "67.25, 5, 5, '[5]'",
    "67.25, 3, 5, '[3, 5]'",
    "67.25, 8, 5, '[8, 5]'",
    "71.58, 5, 5, '[5]'",
    "71.59, 5, 5, '[5, 6]'",
    "62.92, 5, 5, '[5]'",
    "62.91, 5, 5, '[5, 4]'",
    "73.74, 5, 5, '[5, 6]'",
    "73.76, 5, 6, '[5, 6]'",
    "60.74, 5, 4, '[5, 4]'",
    "60.76, 5, 5, '[5, 4]'",
    "4, 1, 1, '[1]'",
    "4, 3, 1, '[3, 1]'"
  })
  void theNearestHeightIsTaken(String height, int guess, int rounds, String plans) {
    Choice choice = new ByHeight(job(20), Jobs.inches(height), this::plan).from(guess);
    assertEquals(rounds, choice.courses().size());
    assertEquals(plans, planned.toString());
    assertEquals(Optional.empty(), choice.shortage());
  }

  /** On a tie the fewer rounds stand, whichever were planned first. */
  @ParameterizedTest(name = "from a guess of {0}")
  @CsvSource({"5", "6"})
  void onATieTheFewerRoundsStand(int guess) {
    Choice choice = new ByHeight(job(20), Jobs.inches("73.75"), this::plan).from(guess);
    assertEquals(5, choice.courses().size());
    assertEquals(2, planned.size());
  }

  /** Where logs run out, what is missing is counted by the height of what stands. */
  @ParameterizedTest(name = "{0} in from a guess of {1}, logs for {2} rounds: {3} wanted")
  @CsvSource({
    "132.25, 10, 7, 10",
    "132.25, 9, 7, 10",
    "132.25, 7, 7, 10",
    "99.74, 7, 7, 7",
    "99.76, 7, 7, 8",
    "93.25, 9, 7, 7"
  })
  void whatIsMissingIsCountedFromTheHeight(String height, int guess, int logs, int wanted) {
    Job job = job(logs);
    IntFunction<Choice> most = rounds -> shortOf(job, Math.min(rounds, logs), rounds);
    Choice choice = new ByHeight(job, Jobs.inches(height), most).from(guess);
    assertEquals(logs, choice.courses().size());
    assertEquals(wanted > logs, choice.shortage().isPresent());
    choice.shortage().ifPresent(shortage -> assertEquals(wanted, shortage.wanted()));
  }

  @Test
  void nothingStandsWhereNothingCanBePlanned() {
    Job job = job(0);
    Choice none = shortOf(job, 0, 5);
    assertEquals(none, new ByHeight(job, Length.ofInches(60), rounds -> none).from(5));
  }

  private Choice plan(int rounds) {
    planned.add(rounds);
    return laid(job(20), rounds);
  }

  /** Returns a choice of fewer rounds than were wanted, or of all of them. */
  private static Choice shortOf(Job job, int built, int wanted) {
    Optional<Shortage> shortage =
        built == wanted ? Optional.empty() : Optional.of(new Shortage(wanted, built, List.of()));
    return laid(job, built).with(shortage);
  }

  private static Choice laid(Job job, int rounds) {
    Map<Place, Held> places = new HashMap<>();
    int log = 0;
    for (int round = 1; round <= rounds; round++) {
      for (Wall wall : job.building().walls()) {
        String tag = job.logs().get(log++).tag();
        places.put(new Place(round, wall.name()), new Held(tag, Length.ofInches(2)));
      }
    }
    return Placement.choice(job, places, rounds).with(Optional.empty());
  }

  /** Returns a job with logs for so many rounds. */
  private static Job job(int rounds) {
    List<Log> logs = new ArrayList<>();
    for (int i = 1; i <= 4 * rounds; i++) {
      logs.add(Jobs.log("L" + i, Length.ofInches(250), "12", "12", "12"));
    }
    Job sample = Jobs.random(1, 1).withLogs(logs);
    return sample.with(
        sample.rules().with(Setting.WALL_HEIGHT, Length.ofInches(100), Origin.OPTION));
  }
}
