package roundbook.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Pin;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.CellRef;
import roundbook.rounds.Choice;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** Which other logs are tried in a place where two short logs lie beside a window. */
class TrialsTest {
  private static final Plan PLAN = PlanFixtures.inches().withShortLogs().plan(6);

  /** A third log too short for every wall, and as long as the longer of the two that lie. */
  private static Log shortLog(Log.Keep keep) {
    Log longer =
        shared(PLAN.choice()).logs().stream()
            .map(each -> each.piece().log())
            .max(Comparator.comparing(Log::length))
            .orElseThrow();
    return Kept.log(longer.tagged("L99"), keep);
  }

  private static FilledPlace shared(Choice choice) {
    return choice.courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(FilledPlace::isShared)
        .findFirst()
        .orElseThrow();
  }

  private static Trials trials(Log spare, List<Pin> pins) {
    Job job = PLAN.job();
    List<Log> logs = new ArrayList<>(job.logs());
    logs.add(spare);
    List<Log> unused = new ArrayList<>(PLAN.choice().unused());
    unused.add(spare);
    Choice choice =
        new Choice(
            PLAN.choice().courses(),
            unused,
            PLAN.choice().score(),
            PLAN.choice().shortage(),
            PLAN.choice().problems());
    Job more = new Job(job.rules(), job.building(), logs, job.openings(), pins);
    return new Trials(more, choice, PLAN.stack());
  }

  @Test
  void aShortLogMayReplaceOneOfTwo() {
    Log spare = shortLog(Log.Keep.ANY);
    Trials trials = trials(spare, List.of());
    FilledPlace place = shared(PLAN.choice());
    assertTrue(trials.serves(spare, place));
    List<PlacedLog> ways =
        place.logs().stream().flatMap(old -> trials.shortLogs(spare, old).stream()).toList();
    assertFalse(ways.isEmpty());
    for (PlacedLog way : ways) {
      assertEquals(place.wall(), way.wall());
      assertEquals("L99", way.piece().log().tag());
      boolean sameLength =
          place.logs().stream()
              .anyMatch(old -> old.piece().trimmed().equals(way.piece().trimmed()));
      assertTrue(sameLength, "it is cut as long as the one whose room it takes");
    }
    assertTrue(place.logs().stream().anyMatch(old -> trials.nearest(old).contains(spare)));
  }

  /** A log that is kept, pinned or wished elsewhere is bound; a log for whole walls stays one. */
  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ANY")
  void aLogThatIsKeptMayNot(Log.Keep keep) {
    Log spare = shortLog(keep);
    assertNone(trials(spare, List.of()), spare);
  }

  @Test
  void aLogThatIsBoundOrTooLongMayNot() {
    Log free = shortLog(Log.Keep.ANY);
    CellRef row = new CellRef("job.xlsx", "Pins", 2, 0);
    Pin pin = new Pin(OptionalInt.empty(), "N", "L99", "", "", row);
    assertNone(trials(free, List.of(pin)), free);
    Log wished = free.placed(new Log.Wish("N", OptionalInt.empty()));
    assertNone(trials(wished, List.of()), wished);
    Log here = free.placed(new Log.Wish("e", OptionalInt.empty()));
    assertTrue(trials(here, List.of()).serves(here, shared(PLAN.choice())));
    Log stub = free.cutTo(Length.ofInches(30));
    assertNone(trials(stub, List.of()), stub);
  }

  private static void assertNone(Trials trials, Log log) {
    for (PlacedLog old : shared(PLAN.choice()).logs()) {
      assertEquals(List.of(), trials.shortLogs(log, old));
    }
    assertFalse(trials.serves(log, shared(PLAN.choice())));
  }

  /** Two logs together change places with no other; of the others the nearest are tried first. */
  @Test
  void placesAreTriedByTheirMiddles() {
    Trials trials = trials(shortLog(Log.Keep.ANY), List.of());
    FilledPlace two = shared(PLAN.choice());
    FilledPlace other =
        trials.placed().stream()
            .filter(each -> !each.isShared() && each.round() != two.round())
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(), trials.pieces(two, other));
    List<FilledPlace> nearest = trials.nearestPlaced(other);
    assertTrue(nearest.size() <= 16);
    assertTrue(nearest.stream().noneMatch(each -> each.round() == other.round()));
    List<Length> off =
        nearest.stream().map(each -> each.mid().minus(other.mid()).absolute()).toList();
    assertEquals(off.stream().sorted().toList(), off);
  }

  /** To leave places as they are costs nothing. */
  @Test
  void noChangeCostsNothing() {
    Trials trials = trials(shortLog(Log.Keep.ANY), List.of());
    List<FilledPlace> whole =
        trials.placed().stream().filter(each -> !each.isShared()).limit(8).toList();
    for (FilledPlace place : whole) {
      assertEquals(0, trials.change(place), 1e-9);
      assertEquals(0, trials.worse(place, place), 1e-9);
      for (FilledPlace other : whole) {
        if (other.round() != place.round() || !other.wall().equals(place.wall())) {
          assertEquals(0, trials.change(place, other), 1e-9);
        }
      }
    }
  }
}
