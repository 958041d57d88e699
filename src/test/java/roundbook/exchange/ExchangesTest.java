package roundbook.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** What other logs would do, against whole plans made with them. */
class ExchangesTest {
  private static final Effort EFFORT = new Effort(20_000, 1, () -> false, done -> {});
  private static final Length LONG = Length.ofInches(250);

  /** A thin log between thick ones: two gaps over the most, and a spare as thick as the rest. */
  @Test
  void aSpareThatClearsBothFlagsIsFound() {
    Job job = thinInTheMiddle();
    Choice choice = dealt(job, 3);
    Exchanges exchanges = of(job, choice);
    Substitute found = substitute(exchanges, "5");
    assertEquals("13", found.in().log().tag());
    assertEquals(2, found.effect().flagsBefore());
    assertEquals(0, found.effect().flagsAfter());
    assertEquals(Length.ofInches(1), found.effect().least());
    assertTrue(found.effect().change() < -1, "the score falls");
    assertEquals(0, substitute(exchanges, "6").effect().cleared(), "no other log is at fault");
  }

  @Test
  void aSpareTooShortForTheLongWallsStandsInOnlyForTheOthers() {
    Job job = thinInTheMiddle();
    List<Log> logs = new ArrayList<>(job.logs());
    logs.set(12, Jobs.log("13", Length.ofInches(200), "13", "13", "13"));
    Job shorter = job.withLogs(logs);
    Exchanges exchanges = of(shorter, dealt(shorter, 3));
    Spare spare = exchanges.spares().get(0);
    assertEquals(6, spare.places().size());
    assertTrue(spare.places().stream().noneMatch(place -> place.wall().laidFirst()));
    assertEquals(6, exchanges.substitutes().size());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {61, 62, 63})
  void theScoreIsTheOneTheSearchMadeSmall(long seed) {
    for (Length step : List.of(Length.ofInchFraction(1, 2), Length.ZERO)) {
      Job random = Jobs.random(seed, 44);
      Job job = random.with(random.rules().with(Setting.SIZE_STEP, step, Origin.OPTION));
      Choice choice = new BalancedChooser().choose(job, EFFORT);
      double score = of(job, choice).score();
      assertEquals(choice.score().total(), score, 0.01 * score);
    }
  }

  /** No spare, cut in any way, has fewer flags than the substitute that is named. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {64, 65})
  void noOtherSpareIsBetterThanTheOneNamed(long seed) {
    Job job = eightRounds(Jobs.random(seed, 38));
    Choice choice = new BalancedChooser().choose(job, EFFORT);
    Exchanges exchanges = of(job, choice);
    assertFalse(exchanges.substitutes().isEmpty());
    Trials trials = new Trials(job, choice, stack(job, choice));
    for (Substitute best : exchanges.substitutes()) {
      for (Log spare : choice.unused()) {
        Optional<Effect> effect =
            trials.pieces(spare, best.placed()).stream()
                .map(piece -> trials.effect(piece))
                .min((one, other) -> Double.compare(one.change(), other.change()));
        effect.ifPresent(
            other -> assertTrue(other.flagsAfter() >= best.effect().flagsAfter(), spare.tag()));
      }
    }
  }

  /** The change of the score is that of the whole plan with the other log in the place. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {66, 67})
  void theEffectIsThatOfTheWholePlanMadeAnew(long seed) {
    Job job = eightRounds(Jobs.random(seed, 38));
    Choice choice = new BalancedChooser().choose(job, EFFORT);
    Exchanges exchanges = of(job, choice);
    for (Substitute each : exchanges.substitutes()) {
      List<Course> courses = with(job, choice.courses(), each.placed(), each.in());
      double score = new Score(job, courses).total();
      assertEquals(exchanges.score() + each.effect().change(), score, 1e-9);
      Stack anew = Stack.of(job.rules(), job.building(), courses);
      Length least =
          anew.joints(each.placed().wall()).stream()
              .filter(joint -> touches(joint, each.placed().round()))
              .map(Joint::least)
              .reduce(Length::least)
              .orElseThrow();
      assertEquals(least, each.effect().least());
    }
  }

  /** The next best choice costs no more than any exchange that is tried here by hand. */
  @Test
  void theNextBestChoiceIsTheCheapestExchange() {
    Job job = eightRounds(Jobs.random(68, 36));
    Choice choice = new BalancedChooser().choose(job, EFFORT);
    Exchanges exchanges = of(job, choice);
    Fit fit = new Fit(job);
    for (Reason reason : exchanges.reasons()) {
      double least = reason.next().orElseThrow().cost();
      for (FilledPlace out : choice.courses().get(reason.round() - 1).places()) {
        for (Log spare : choice.unused()) {
          for (Piece piece : fit.pieces(spare, out.wall())) {
            List<Course> courses = with(job, choice.courses(), out, piece);
            double change = new Score(job, courses).total() - exchanges.score();
            boolean dearer = change >= least - 1e-9 || change < 0.0005;
            assertTrue(dearer, spare.tag() + " for " + out.tags());
          }
        }
      }
    }
  }

  /** A log kept for a sill lies there whatever another would save: neither is offered. */
  @Test
  void noLogIsOfferedForAnotherThatTheTallyKeepsThere() {
    Job job = thinInTheMiddle();
    List<Log> logs =
        job.logs().stream()
            .map(log -> List.of("1", "13").contains(log.tag()) ? Kept.log(log, Log.Keep.SILL) : log)
            .toList();
    Job kept = job.withLogs(logs);
    for (Reason reason : of(kept, dealt(kept, 3)).reasons()) {
      Optional<Reason.Exchange> next = reason.next();
      assertFalse(next.filter(each -> each.in().equals("13")).isPresent(), reason::toString);
      assertFalse(next.filter(each -> each.in().equals("1")).isPresent(), reason::toString);
      assertFalse(next.filter(each -> each.out().tags().equals("1")).isPresent());
    }
  }

  @Test
  void aReasonTellsWhatTheNumbersAre() {
    Job job = thinInTheMiddle();
    Reason second = of(job, dealt(job, 3)).reasons().get(1);
    assertEquals(Length.ofInchFraction(21, 2), second.thin());
    assertEquals(Length.ofInches(13), second.thick());
    assertEquals(Length.ofInchFraction(5, 2), second.spread());
    assertEquals(0, second.thickerAbove());
    assertEquals(2, second.longOnShort(), "every log is long enough for the long walls");
    assertEquals(Optional.empty(), second.next(), "what costs nothing is no reason");
  }

  /** Nothing is offered for what is cut; a measured log may have a spare but moves no more. */
  @Test
  void whatIsCutIsNotExchangedAndWhatIsMeasuredOnlyForASpare() {
    Job job = eightRounds(Jobs.random(69, 38));
    Choice choice = new BalancedChooser().choose(job, EFFORT);
    Job built = job.withBuilt(twoCutAndThirdMeasured(job, choice));
    Exchanges exchanges = of(built, choice);
    assertTrue(exchanges.substitutes().stream().allMatch(each -> each.placed().round() > 2));
    assertTrue(exchanges.substitutes().stream().anyMatch(each -> each.placed().round() == 3));
    for (Spare spare : exchanges.spares()) {
      assertTrue(spare.places().stream().allMatch(place -> place.round() > 2));
    }
    assertEquals(
        List.of(3, 4, 5, 6, 7, 8), exchanges.reasons().stream().map(Reason::round).toList());
    for (Reason reason : exchanges.reasons()) {
      Optional<FilledPlace> from = reason.next().flatMap(Reason.Exchange::from);
      assertTrue(from.isEmpty() || reason.round() > 3, "a measured log stays");
      assertTrue(from.isEmpty() || from.get().round() > 3, "and so does one that is cut");
    }
  }

  private static AsBuilt twoCutAndThirdMeasured(Job job, Choice choice) {
    List<AsBuilt.CutSize> cut = new ArrayList<>();
    Map<AsBuilt.Place, AsBuilt.Held> held = new TreeMap<>();
    Map<AsBuilt.Place, Measures> measures = new TreeMap<>();
    for (Course course : choice.courses().subList(0, 3)) {
      if (course.round() <= 2) {
        cut.add(new AsBuilt.CutSize(course.notch().size(), job.rules().gap()));
      }
      for (FilledPlace log : course.places()) {
        AsBuilt.Place place = new AsBuilt.Place(course.round(), log.wall().name());
        held.put(place, log.held());
        Optional<Length> none = Optional.empty();
        Optional<Length> mid = Optional.of(log.mid());
        measures.put(place, new Measures(none, mid, none, none, none));
      }
    }
    return AsBuilt.NOTHING.withCut(cut).withPlaces(held, measures);
  }

  @Test
  void nothingPlannedHasNothingToExchange() {
    Job job = thinInTheMiddle();
    Choice none = dealt(job, 0);
    Exchanges exchanges = of(job, none);
    assertTrue(exchanges.substitutes().isEmpty());
    assertTrue(exchanges.spares().isEmpty());
    assertTrue(exchanges.reasons().isEmpty());
  }

  /** Twelve logs of 13 inches and a spare alike, without taper; the fifth has a waist of 10 1/2. */
  private static Job thinInTheMiddle() {
    List<Log> logs = new ArrayList<>();
    for (int i = 1; i <= 13; i++) {
      logs.add(Jobs.log("" + i, LONG, "13", i == 5 ? "10.5" : "13", "13"));
    }
    Job job = Jobs.random(1, 4).withLogs(logs);
    return job.with(job.rules().with(Setting.SPREAD_MOST, Length.ofInches(3), Origin.OPTION));
  }

  private static Choice dealt(Job job, int rounds) {
    Fit fit = new Fit(job);
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= rounds; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (int wall = 0; wall < 4; wall++) {
        Log log = job.logs().get((round - 1) * 4 + wall);
        Piece piece = fit.pieces(log, job.building().walls().get(wall)).get(0);
        boolean start = job.rules().clockwise(round);
        logs.add(FilledPlace.of(piece, job.building().walls().get(wall), round, start));
      }
      courses.add(Course.of(round, logs, job.rules()));
    }
    List<Log> unused = job.logs().subList(rounds * 4, job.logs().size());
    Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
    return new Choice(courses, unused, none, Optional.empty(), List.of());
  }

  private static List<Course> with(Job job, List<Course> courses, FilledPlace out, Piece piece) {
    List<Course> other = new ArrayList<>(courses);
    List<FilledPlace> logs = new ArrayList<>(courses.get(out.round() - 1).places());
    FilledPlace in = out.with(piece);
    logs.set(logs.indexOf(out), in);
    other.set(out.round() - 1, Course.of(out.round(), logs, job.rules()));
    return other;
  }

  private static boolean touches(Joint joint, int round) {
    return joint.lower().round() == round || joint.upper().round() == round;
  }

  private static Job eightRounds(Job job) {
    java.math.BigDecimal eight = java.math.BigDecimal.valueOf(8);
    return job.with(job.rules().with(Setting.ROUNDS, eight, Origin.OPTION));
  }

  private static Substitute substitute(Exchanges exchanges, String tag) {
    return exchanges.substitutes().stream()
        .filter(each -> each.placed().tags().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  private static Exchanges of(Job job, Choice choice) {
    return Exchanges.of(job, choice, stack(job, choice));
  }

  private static Stack stack(Job job, Choice choice) {
    return Stack.of(job.rules(), job.building(), choice.courses());
  }
}
