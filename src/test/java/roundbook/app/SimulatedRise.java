package roundbook.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.plan.Planner;
import roundbook.problem.Problem;
import roundbook.rounds.Choice;
import roundbook.rounds.KeepingChooser;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Hewn;
import roundbook.stack.Levelling;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * A whole build as in {@link SimulatedBuild}, planned anew after every round, but without
 * workbooks: many can be built in little time.
 */
final class SimulatedRise {
  private static final int TURNS = 3;

  private final Job tally;
  private final int rounds;
  private final SimulatedWall wall;
  private final Care care;
  private final boolean loses;
  private final Set<String> lost = new HashSet<>();
  private final Map<Corner, Length> firstReadings = new TreeMap<>();
  private final List<CutSize> cut = new ArrayList<>();
  private final Map<Corner, Length> readings = new TreeMap<>();
  private final Map<String, Length> mids = new HashMap<>();
  private final Map<String, Log> hewn = new HashMap<>();
  private final Set<String> flagged = new HashSet<>();
  private final Set<String> watched = new HashSet<>();
  private Choice choice;
  private int moves;

  /**
   * How a crew looks after its corners.
   *
   * @param twice whether it reads the first-laid tops too
   * @param topTwice whether it reads them in the last round
   * @param pares whether it pares tops that read too high
   * @param ahead of how many rounds it hews the logs before the first of them is cut, types them on
   *     the log list and lets them be chosen by that; 0: it types them on the round's page
   */
  record Care(boolean twice, boolean topTwice, boolean pares, int ahead) {}

  /** A build; where logs are lost, one is after every third round. */
  SimulatedRise(Job tally, Choice first, SimulatedWall wall, Care care, boolean loses) {
    this.care = care;
    this.loses = loses;
    this.tally = tally;
    this.rounds = first.courses().size();
    this.wall = wall;
    this.choice = first;
  }

  /** Builds to the top and returns the wall. */
  SimulatedWall run() {
    measure(1);
    for (int round = 1; round <= rounds; round++) {
      if (loses && round % 3 == 0 && round + 1 < rounds) {
        lost.add(course(round + 2).places().get(0).tags());
      }
      if (care.ahead() > 0) {
        chooseAhead(round);
      }
      Job now = job(round);
      choose(now);
      foretell(now, round);
      wall.layFirst(page(now), tally, round);
      if (care.twice() || care.topTwice() && round == rounds) {
        put(firstReadings, round, wall.firstReadings(round), "Reading_first_");
      }
      SimulatedWall.Page page = page(job(round));
      wall.laySecond(page, tally, round, seconds(page, round));
      cut.add(new CutSize(course(round).notch().size(), tally.rules().gap()));
      put(readings, round, wall.readings(round), "Reading_");
      if (care.pares()) {
        pare(page, round);
      }
      if (round < rounds) {
        measure(round + 1);
      }
    }
    return wall;
  }

  private void choose(Job now) {
    KeepingChooser.Kept kept =
        new KeepingChooser(places(), OptionalInt.of(rounds))
            .choose(now, new Effort(1, 1, () -> false, done -> {}));
    moves += kept.moves().size();
    choice = kept.choice();
  }

  /** Hews the next rounds' logs and chooses by them until those chosen are all hewn. */
  private void chooseAhead(int round) {
    int last = Math.min(rounds, round + care.ahead() - 1);
    boolean more = true;
    for (int turn = 0; more && turn < TURNS; turn++) {
      more = false;
      for (int each = round; each <= last; each++) {
        more |= measure(each);
      }
      if (more || turn == 0) {
        choose(job(round - 1));
      }
    }
    for (int each = round; each <= last; each++) {
      measure(each);
    }
  }

  private void known(Log log, Piece piece, Length mid) {
    mids.put(log.tag(), mid);
    hewn.put(
        log.tag(), new Hewn(Optional.empty(), Optional.of(mid), Optional.empty()).of(piece).log());
  }

  /** Returns how many changes were made. */
  int moves() {
    return moves;
  }

  /** Notes what the plan says of the gaps under a round's logs before they are cut. */
  private void foretell(Job now, int round) {
    Job job = now.withBuilt(now.built().moved(places()));
    Set<String> logs = new HashSet<>();
    course(round).places().forEach(place -> logs.add(place.tags()));
    for (Problem problem : Planner.of(job, choice).problems()) {
      if (logs.contains(problem.log())) {
        switch (problem.code()) {
          case GAP_SMALL, GAP_LARGE -> flagged.add(problem.log());
          case GAP_WATCH -> watched.add(problem.log());
          default -> {}
        }
      }
    }
  }

  /** Returns the logs whose gaps were said to be outside, and those that were to be watched. */
  List<Set<String>> foretold() {
    return List.of(flagged, watched);
  }

  private SimulatedWall.Page page(Job job) {
    AsBuilt built = job.built().moved(places());
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses(), built);
    return new SimulatedWall.Page(job, choice.courses(), stack);
  }

  private Course course(int round) {
    return choice.courses().get(round - 1);
  }

  /** Measures a round's logs that are not yet, and returns whether there was one. */
  private boolean measure(int round) {
    Map<String, Object> typed =
        wall.measures(new SimulatedWall.Page(tally, choice.courses(), null), tally, round);
    boolean any = false;
    for (FilledPlace placed : course(round).places()) {
      String tag = placed.tags();
      if (care.ahead() == 0 || !mids.containsKey(tag)) {
        Object inches = typed.get("Measured_" + round + "_" + placed.wall().name());
        Piece planned = placed.first().piece();
        Log log = tally.log(tag).orElseThrow();
        Piece piece = new Piece(log, planned.cutOffButt(), planned.trimmed());
        known(log, piece, Length.ofInchFraction(Math.round((Double) inches * 16), 16));
        any = true;
      }
    }
    return any;
  }

  private Map<String, Double> seconds(SimulatedWall.Page page, int round) {
    Map<String, Double> changes = new TreeMap<>();
    for (String corner : tally.building().corners()) {
      changes.put(corner, page.stack().corners().change(round, false, corner).inches());
    }
    return changes;
  }

  private void put(Map<Corner, Length> into, int round, Map<String, Object> read, String name) {
    for (String corner : tally.building().corners()) {
      Object inches = read.get(name + round + "_" + corner);
      if (inches != null) {
        Length height = Length.ofInchFraction(Math.round((Double) inches * 16), 16);
        into.put(new Corner(round, corner), height);
      }
    }
  }

  private void pare(SimulatedWall.Page page, int round) {
    Map<String, Length> read = new TreeMap<>();
    tally.building().corners().forEach(c -> read.put(c, readings.get(new Corner(round, c))));
    Levelling levelling =
        Levelling.of(page.stack().levelHeight(round), List.copyOf(read.values()), tally.rules());
    Map<String, Double> amounts = new TreeMap<>();
    read.forEach(
        (corner, height) -> {
          Length amount = levelling.pare(height, tally.rules());
          if (!amount.isZero()) {
            amounts.put(corner, amount.inches());
          }
        });
    put(readings, round, wall.pare(round, amounts), "Reading_");
  }

  /** Returns the job with all that is built, and the logs of one more round measured. */
  private Job job(int measured) {
    Map<Place, Held> held = new TreeMap<>();
    Map<Place, Measures> measures = new TreeMap<>();
    Map<String, Log> before = new TreeMap<>();
    places()
        .forEach(
            (place, here) -> {
              if (place.round() <= measured) {
                Optional<Length> none = Optional.empty();
                Optional<Length> mid = Optional.of(mids.get(here.words()));
                held.put(place, here);
                measures.put(place, new Measures(none, mid, none, none, none));
                before.put(here.words(), tally.log(here.words()).orElseThrow());
              }
            });
    AsBuilt built =
        AsBuilt.NOTHING
            .withCut(cut)
            .withPlaces(held, measures)
            .withReadings(readings, firstReadings)
            .withExpected(before);
    List<Log> logs =
        tally.logs().stream()
            .map(log -> lost.contains(log.tag()) ? log.skipped() : log)
            .map(log -> hewn.getOrDefault(log.tag(), log))
            .toList();
    return tally.withLogs(logs).withBuilt(built);
  }

  private Map<Place, Held> places() {
    Map<Place, Held> places = new TreeMap<>();
    for (Course course : choice.courses()) {
      for (FilledPlace log : course.places()) {
        places.put(log.place(), log.held());
      }
    }
    return places;
  }
}
