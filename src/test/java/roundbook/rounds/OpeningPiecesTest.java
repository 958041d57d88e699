package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Pin;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Pairs of short logs by hand: two rounds of cylinders of 13 in, and a door in S through both.
 *
 * <p>It stands 100 in from the left, 36 in wide, so beside it lie 103 and 107 in, of logs of 107
 * and 111 in at the least.
 */
class OpeningPiecesTest {
  private static final Place SOUTH_1 = new Place(1, "S");
  private static final Place SOUTH_2 = new Place(2, "S");
  private static final Effort EFFORT = Effort.usual(1).withMoves(12_000);
  private static final Job FOUR =
      job(small(9, 107), small(10, 111), small(11, 107), small(12, 111));

  private static final ShortPairs FORESEEING = new ShortPairs(PairedJob.of(FOUR), EFFORT);

  @Test
  void theDoorCutsThroughTwoPlaces() {
    Choice choice = TwoRounds.choice(FOUR);
    Map<Place, OpeningPlace> spots = OpeningPlace.of(FOUR, TwoRounds.stack(FOUR, choice));
    assertEquals(List.of(SOUTH_1, SOUTH_2), List.copyOf(spots.keySet()));
    for (OpeningPlace spot : spots.values()) {
      assertEquals(Length.ofInches(103), spot.left());
      assertEquals(Length.ofInches(107), spot.right());
    }
    Job unasked = doors(FOUR, false);
    assertEquals(Map.of(), OpeningPlace.of(unasked, TwoRounds.stack(unasked, choice)));
  }

  @Test
  void everyPlaceIsFilledWithLogsLongEnoughForTheirSide() {
    List<FilledPlace> pairs = pairs(FOUR);
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs));
    for (FilledPlace pair : pairs) {
      assertEquals(Length.ofInches(107), pair.logs().get(0).piece().log().length());
      assertEquals(Length.ofInches(111), pair.logs().get(1).piece().log().length());
    }
    assertEquals(Set.of("L9", "L10", "L11", "L12"), tags(pairs));
  }

  @Test
  void logsForOnePairFillOnePlace() {
    assertEquals(1, pairs(job(small(9, 111), small(10, 111))).size());
    assertEquals(List.of(), pairs(job(small(9, 107), small(10, 107))), "none for the right");
    assertEquals(List.of(), pairs(job(small(9, 111))));
  }

  /** A log for either side must make room where only it will do for the other. */
  @Test
  void logsAreMatchedToSides() {
    Job job = job(small(9, 111), small(10, 107), small(11, 107), small(12, 111));
    assertEquals(Set.of("L9", "L10", "L11", "L12"), tags(pairs(job)));
    assertEquals(Set.of("L9", "L10"), tags(pairs(job(small(9, 111), small(10, 107)))));
  }

  @Test
  void somePlacesGetNone() {
    assertEquals(List.of(SOUTH_2), planned(pinned(FOUR, 1, "s", "L3")), "pinned");
    assertEquals(List.of(SOUTH_1, SOUTH_2), planned(pinned(FOUR, 1, "S", "")));
    assertEquals(List.of(SOUTH_1, SOUTH_2), planned(pinned(FOUR, 1, "N", "L1")));
    Job held = FOUR.withBuilt(held(SOUTH_1, new Held("L3", Length.ofInches(2))));
    assertEquals(List.of(SOUTH_2), planned(held));
    assertEquals(List.of(SOUTH_2), kept(Optional.empty()), "only what had one");
    Optional<Shortage> lacking = Optional.of(new Shortage(2, 2, List.of()));
    assertEquals(List.of(SOUTH_1, SOUTH_2), kept(lacking), "any while rounds are missing");
  }

  private static List<Place> planned(Job job) {
    return places(
        new ShortPairs(PairedJob.of(job), EFFORT)
            .choose(asked -> laid(job, asked.pairs()))
            .placedPairs());
  }

  /** Returns where pairs lie after a plan that had one in the second round alone. */
  private static List<Place> kept(Optional<Shortage> shortage) {
    return places(
        new ShortPairs(PairedJob.of(FOUR), EFFORT)
            .keep(List.of(), Set.of(SOUTH_2), asked -> laid(FOUR, asked.pairs()).with(shortage))
            .placedPairs());
  }

  @Test
  void someLogsMayNotLieThere() {
    Log good = small(9, 111);
    Log other = small(10, 111);
    assertEquals(1, pairs(job(good, other)).size());
    for (Log.Keep keep : List.of(Log.Keep.HEADER, Log.Keep.SPARE, Log.Keep.SILL)) {
      assertEquals(List.of(), pairs(job(good, Kept.log(other, keep))), keep.name());
    }
    assertEquals(List.of(), pairs(job(good, other.skipped())));
    assertEquals(List.of(), pairs(pinned(job(good, other), 3, "N", "L10")));
    assertEquals(List.of(), pairs(job(good, wishing(other, "N", 0))));
    assertEquals(1, pairs(job(good, wishing(other, "s", 0))).size());
    assertEquals(List.of(SOUTH_2), places(pairs(job(good, wishing(other, "", 2)))));
    assertEquals(List.of(), pairs(job(good, wishing(other, "", 3))));
    assertEquals(List.of(), pairs(job(good, small(10, 250))), "long enough for the wall");
    assertEquals(1, forced(job(good, small(10, 249))).size());
    Job settled =
        job(good, other).withBuilt(held(new Place(2, "N"), new Held("L10", Length.ofInches(2))));
    assertEquals(List.of(), pairs(settled), "it lies elsewhere");
  }

  /**
   * A log of 178 in may lie beside the door, but frees a long one as well where it lies alone, on a
   * short wall: there none is cut up for it.
   */
  @Test
  void noLogThatAWallNeedsIsTaken() {
    Job job = job(small(9, 111), small(10, 178));
    assertEquals(1, forced(job).size());
    assertEquals(List.of(), pairs(job));
    List<Log> seven = job.logs().stream().filter(log -> !log.tag().equals("L8")).toList();
    assertEquals(List.of(), pairs(job.withLogs(seven)));
    List<Log> six = seven.stream().filter(log -> !log.tag().equals("L7")).toList();
    assertEquals(Optional.empty(), searched(job.withLogs(six), List.of()), "a place is empty");
  }

  /** Seven logs for eight places: a pair makes the eighth whole. */
  @Test
  void aPairLiesWhereALogIsMissing() {
    Job job = job(thick(9, 111, "9"), thick(10, 111, "9"));
    assertEquals(List.of(), pairs(job), "they leave gaps that are too wide");
    Job seven = job.withLogs(job.logs().stream().filter(log -> !log.tag().equals("L8")).toList());
    assertEquals(1, pairs(seven).size());
  }

  /** A round that is missing is foreseen with cylinders of the last size: the door reaches it. */
  @Test
  void placesOfMissingRoundsAreForeseen() {
    Choice all = TwoRounds.choice(FOUR);
    List<Course> one = FORESEEING.foreseen(all.courses().subList(0, 1), 2);
    assertEquals(Set.of(SOUTH_1, SOUTH_2), OpeningPlace.of(FOUR, stack(FOUR, one)).keySet());
    List<Course> none = FORESEEING.foreseen(List.of(), 2);
    assertEquals(Set.of(SOUTH_1, SOUTH_2), OpeningPlace.of(FOUR, stack(FOUR, none)).keySet());
    assertEquals(Length.ofInches(13), none.get(1).notch().size());
  }

  private static Stack stack(Job job, List<Course> courses) {
    return Stack.of(job.rules(), job.building(), courses, job.built());
  }

  /** What lay there before stays where it may, and its logs lie nowhere else. */
  @Test
  void pairsOfAnEarlierPlanStay() {
    Job job = job(small(9, 107), small(10, 111), small(11, 107), small(12, 111), small(13, 111));
    List<FilledPlace> had =
        pairs(job).stream().filter(pair -> pair.place().equals(SOUTH_2)).toList();
    List<List<FilledPlace>> planned = new ArrayList<>();
    Choice kept =
        new ShortPairs(PairedJob.of(job), EFFORT)
            .keep(
                had,
                Set.of(SOUTH_1, SOUTH_2),
                asked -> {
                  planned.add(asked.pairs());
                  return laid(job, asked.pairs());
                });
    assertEquals(had, planned.get(0));
    assertEquals(had, planned.get(1).subList(0, 1), "the kept one first");
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(kept.placedPairs()));
    assertEquals(4, tags(kept.placedPairs()).size());
  }

  /** Taken away is what no opening cuts, and put anew what its door has left: by hand, twice. */
  @Test
  void aPlanIsMadeAgainUntilItsPairsStay() {
    List<List<FilledPlace>> planned = new ArrayList<>();
    Function<PairedJob, Choice> plan =
        job -> {
          List<FilledPlace> pairs = job.pairs();
          planned.add(pairs);
          return laid(FOUR, pairs);
        };
    Choice choice = new ShortPairs(PairedJob.of(FOUR), EFFORT).choose(plan);
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(choice.placedPairs()));
    assertEquals(List.of(0, 2), planned.stream().map(List::size).toList());
    assertEquals(
        Set.of("L3", "L7"),
        new TreeSet<>(choice.unused().stream().map(Log::tag).toList()),
        "the long logs are free");
    planned.clear();
    assertEquals(
        List.of(),
        new ShortPairs(PairedJob.of(doors(FOUR, false)), EFFORT).choose(plan).placedPairs());
    assertEquals(1, planned.size());
  }

  /** On the way to a plan the same places are asked about often: their pairs are found once. */
  @Test
  void pairsOfTheSamePlacesAreSearchedForOnce() {
    ShortPairs pairs = new ShortPairs(PairedJob.of(FOUR), EFFORT);
    List<FilledPlace> first = pairs.choose(job -> laid(FOUR, job.pairs())).pairs();
    List<FilledPlace> again = pairs.choose(job -> laid(FOUR, job.pairs())).pairs();
    assertEquals(2, first.size());
    assertSame(first.get(0), again.get(0));
    assertSame(first.get(1), again.get(1));
  }

  /** Of 12 in they leave gaps of 1 1/2 in: they are no choice where 1 3/8 in is the most. */
  @Test
  void pairsThatSpoilAGapAreNoChoice() {
    Job job = job(thick(9, 107, "12"), thick(10, 111, "12"));
    assertEquals(1, planned(mostGap(job, 12)).size());
    assertEquals(List.of(), planned(mostGap(job, 11)));
  }

  /**
   * A log of 11 in that the plan lays over or under the first pair leaves 1 3/4 in there, so the
   * pair is taken out, and the other place tried.
   */
  @Test
  void aPairThatThePlanSpoilsIsTakenOut() {
    Job job = mostGap(job(small(9, 107), small(10, 111), small(11, 260), thick(12, 260, "11")), 12);
    List<List<Place>> planned = new ArrayList<>();
    Choice choice =
        new ShortPairs(PairedJob.of(job), EFFORT)
            .choose(
                asked -> {
                  planned.add(places(asked.pairs()));
                  return planned.size() == 2
                      ? laid(job, asked.pairs(), Map.of(other(planned.get(1)), "L12"))
                      : laid(job, asked.pairs());
                });
    List<Place> second = List.of(other(planned.get(1)));
    assertEquals(second, places(choice.placedPairs()));
    assertEquals(List.of(List.of(), planned.get(1), second), planned);
  }

  private static Place other(List<Place> pair) {
    return pair.equals(List.of(SOUTH_1)) ? SOUTH_2 : SOUTH_1;
  }

  /** Of 11 in, they come 1/8 in over 1 1/2 in in the first round and 3/8 in in the second. */
  @Test
  void howNearTheBestPairComesIsTold() {
    Job job = mostGap(job(thick(9, 107, "11"), thick(10, 111, "11")), 12);
    Choice whole = TwoRounds.choice(job);
    List<PairMiss> near = PairMiss.nearest(job, whole, TwoRounds.stack(job, whole));
    assertEquals(List.of(SOUTH_1, SOUTH_2), near.stream().map(m -> m.pair().place()).toList());
    assertMisses(near.get(0), true, 1);
    assertMisses(near.get(1), false, 3);
    assertEquals(near.get(0), Collections.min(near));
    Job wide = mostGap(job, 32);
    assertTrue(
        PairMiss.nearest(wide, whole, TwoRounds.stack(wide, whole)).stream()
            .allMatch(PairMiss::keepsAll));
    Job thin = mostGap(job(thick(9, 107, "10.5"), thick(10, 111, "10.5")), 32);
    assertTrue(
        PairMiss.nearest(thin, TwoRounds.choice(thin), TwoRounds.stack(thin, whole)).stream()
            .allMatch(miss -> miss.gap().isEmpty() && miss.flagged()));
    Job none = job(small(9, 107), small(10, 107));
    Choice plain = TwoRounds.choice(none);
    assertEquals(List.of(), PairMiss.nearest(none, plain, TwoRounds.stack(none, plain)));
  }

  private static void assertMisses(PairMiss miss, boolean over, int eighths) {
    PairMiss.Gap gap = miss.gap().orElseThrow();
    assertEquals(over, gap.over());
    assertEquals(Length.ofInchFraction(eighths, 8), gap.beyond().by());
    assertEquals(false, gap.beyond().under());
  }

  private static Job mostGap(Job job, int eighths) {
    Length most = Length.ofInchFraction(eighths, 8);
    return job.with(job.rules().with(Setting.GAP_MOST, most, Origin.OPTION));
  }

  /** Returns the two rounds by hand, with pairs in place of the logs that lay there. */
  private static Choice laid(Job job, List<FilledPlace> pairs) {
    return laid(job, pairs, Map.of());
  }

  private static Choice laid(Job job, List<FilledPlace> pairs, Map<Place, String> others) {
    Map<Place, Held> places = new HashMap<>();
    for (int i = 0; i < 8; i++) {
      String wall = job.building().walls().get(i % 4).name();
      places.put(new Place(i / 4 + 1, wall), new Held(job.logs().get(i).tag(), Length.ofInches(2)));
    }
    others.forEach((place, tag) -> places.put(place, new Held(tag, Length.ofInches(2))));
    pairs.forEach(pair -> places.put(pair.place(), pair.held()));
    return Placement.choice(job, places, 2).with(Optional.empty());
  }

  private static List<FilledPlace> pairs(Job job) {
    Stream<FilledPlace> held =
        job.built().held().entrySet().stream()
            .flatMap(each -> FilledPlace.of(job, each.getKey(), each.getValue()).stream());
    return searched(job, held.toList()).orElseThrow();
  }

  /** Returns the pairs where a whole log costs so much that two lie wherever they may. */
  private static List<FilledPlace> forced(Job job) {
    return searched(job, List.of(), OpeningPieces.FORCED).orElseThrow();
  }

  private static Optional<List<FilledPlace>> searched(Job job, List<FilledPlace> settled) {
    return searched(job, settled, OpeningPieces.ASKED);
  }

  private static Optional<List<FilledPlace>> searched(
      Job job, List<FilledPlace> settled, double whole) {
    List<OpeningPlace> open =
        Stream.of(1, 2)
            .map(
                round ->
                    new OpeningPlace(
                        job.building().wall("S").orElseThrow(),
                        round,
                        Length.ofInches(103),
                        Length.ofInches(107)))
            .toList();
    return new OpeningPieces(job, 2, open, settled, job.logs()).chosen(whole, EFFORT);
  }

  private static List<Place> places(List<FilledPlace> pairs) {
    return pairs.stream().map(FilledPlace::place).toList();
  }

  private static Set<String> tags(List<FilledPlace> pairs) {
    Set<String> tags = new TreeSet<>();
    pairs.stream()
        .flatMap(pair -> pair.held().tags().stream())
        .forEach(tag -> assertTrue(tags.add(tag), tag + " lies twice"));
    return tags;
  }

  private static AsBuilt held(Place place, Held held) {
    return AsBuilt.NOTHING.withPlaces(Map.of(place, held), Map.of());
  }

  private static Log wishing(Log log, String wall, int round) {
    return log.placed(new Log.Wish(wall, round == 0 ? OptionalInt.empty() : OptionalInt.of(round)));
  }

  private static Job pinned(Job job, int round, String wall, String log) {
    CellRef origin = new CellRef("made-up.xlsx", "Pins", 2, 0);
    Pin pin = new Pin(OptionalInt.of(round), wall, log, "", "", origin);
    return new Job(job.rules(), job.building(), job.logs(), job.openings(), List.of(pin))
        .withBuilt(job.built());
  }

  private static Log small(int number, int length) {
    return thick(number, length, "13");
  }

  private static Log thick(int number, int length, String thick) {
    return Jobs.log("L" + number, Length.ofInches(length), thick, thick, thick);
  }

  private static Job job(Log... small) {
    Job eight = TwoRounds.job(8, log -> Jobs.log(log.tag(), log.length(), "13", "13", "13"));
    return doors(
        eight.withLogs(Stream.concat(eight.logs().stream(), Stream.of(small)).toList()), true);
  }

  private static Job doors(Job job, boolean asked) {
    return Doors.with(job, Doors.door("S", 100, 82, asked));
  }
}
