package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.DiameterProfile;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.plan.Jobs;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;

/** Choosing anew keeps what was planned, and kept logs where they are wanted. */
class KeepingChooserTest {
  private static final Effort EFFORT = new Effort(20_000, 1, () -> false, done -> {});

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {81, 82, 83})
  void aHeaderLogFollowsItsDoor(long seed) {
    Job high = withDoor(keep(Jobs.random(seed, 48), Log.Keep.HEADER, 6), 82);
    Choice searched = new BalancedChooser().choose(high, EFFORT);
    Choice first = keeping(searched).choose(high, EFFORT).choice();
    assertEquals("L6", header(high, first));
    Job low = withDoor(high, 55);
    assertNotEquals("L6", header(low, first), "the lower door lies under another log");
    KeepingChooser.Kept kept = keeping(first).choose(low, EFFORT);
    assertEquals("L6", header(low, kept.choice()));
    long same =
        places(kept.choice()).entrySet().stream()
            .filter(places(first).entrySet()::contains)
            .count();
    assertTrue(2 * same > places(first).size(), "most logs stay: " + same);
  }

  @Test
  void aSillLogThatCameLaterLiesInTheFirstRound() {
    Job job = Jobs.random(84, 40);
    Choice first = new BalancedChooser().choose(job.withLogs(job.logs().subList(0, 36)), EFFORT);
    Job more = keep(job, Log.Keep.SILL, 38);
    Map<Place, Held> now = places(keeping(first).choose(more, EFFORT).choice());
    Place place =
        now.keySet().stream()
            .filter(at -> now.get(at).words().equals("L38"))
            .findFirst()
            .orElseThrow();
    assertEquals(1, place.round());
  }

  /**
   * A lost log is replaced by one that is 3/8 in thicker and holds its marks, not by one that fits
   * and has an end graded stop, though the gaps alone would take that.
   */
  @Test
  void aHoleIsFilledByALogThatHoldsItsMarks() {
    Job job = Jobs.random(85, 32);
    Choice first = new BalancedChooser().choose(job, EFFORT);
    FilledPlace lost = first.courses().get(3).places().get(0);
    Piece piece = lost.first().piece();
    Log thin = spare("L98", piece, Length.ZERO, Length.ofInches(9));
    Length off = Length.ofInchFraction(3, 8);
    Log other = spare("L99", piece, off, piece.log().tip().plus(off));
    List<Log> logs = new ArrayList<>(job.logs());
    logs.replaceAll(log -> log.tag().equals(piece.log().tag()) ? log.skipped() : log);
    logs.addAll(List.of(thin, other));
    Choice again = keeping(first).choose(job.withLogs(logs), EFFORT).choice();
    assertEquals("L99", again.courses().get(3).places().get(0).tags());
  }

  private static Log spare(String tag, Piece like, Length off, Length tip) {
    return Jobs.log(
        tag,
        like.log().length(),
        DiameterProfile.of(
            like.log().length(), like.log().butt().plus(off), like.log().mid().plus(off), tip));
  }

  private static KeepingChooser keeping(Choice first) {
    return new KeepingChooser(places(first), OptionalInt.of(first.courses().size()));
  }

  private static Map<Place, Held> places(Choice choice) {
    Map<Place, Held> places = new TreeMap<>();
    for (Course course : choice.courses()) {
      for (FilledPlace log : course.places()) {
        places.put(new Place(course.round(), log.wall().name()), log.held());
      }
    }
    return places;
  }

  private static String header(Job job, Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses());
    return OpeningCut.headers(job, stack).get(0).tags();
  }

  private static Job withDoor(Job job, long head) {
    return Doors.with(job, Doors.door("N", 90, head, false));
  }

  private static Job keep(Job job, Log.Keep keep, int number) {
    List<Log> logs = new ArrayList<>(job.logs());
    logs.set(number - 1, Kept.log(logs.get(number - 1), keep));
    return job.withLogs(logs);
  }
}
