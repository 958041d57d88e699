package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import roundbook.rounds.Pairing.CutPlace;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Pairs of short logs by hand: two rounds of cylinders of 13 in, and a door in S through both.
 *
 * <p>It stands 100 in from the left, 36 in wide, so beside it lie 103 and 107 in, of logs of 107
 * and 111 in at the least.
 */
class PairingTest {
  private static final Place SOUTH_1 = new Place(1, "S");
  private static final Place SOUTH_2 = new Place(2, "S");
  private static final Pairing.Wish ANY = new Pairing.Wish(Set.of(), false);
  private static final Job FOUR =
      job(small(9, 107), small(10, 111), small(11, 107), small(12, 111));

  @Test
  void theDoorCutsThroughTwoPlaces() {
    Choice choice = TwoRounds.choice(FOUR);
    Map<Place, CutPlace> spots = Pairing.spots(FOUR, TwoRounds.stack(FOUR, choice));
    assertEquals(List.of(SOUTH_1, SOUTH_2), List.copyOf(spots.keySet()));
    for (CutPlace spot : spots.values()) {
      assertEquals(Length.ofInches(103), spot.left());
      assertEquals(Length.ofInches(107), spot.right());
    }
    Job unasked = doors(FOUR, false);
    assertEquals(Map.of(), Pairing.spots(unasked, TwoRounds.stack(unasked, choice)));
  }

  @Test
  void everyPlaceIsFilledWithLogsLongEnoughForTheirSide() {
    List<FilledPlace> pairs = pairs(FOUR, ANY);
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs));
    for (FilledPlace pair : pairs) {
      assertEquals(Length.ofInches(107), pair.logs().get(0).piece().log().length());
      assertEquals(Length.ofInches(111), pair.logs().get(1).piece().log().length());
    }
    assertEquals(Set.of("L9", "L10", "L11", "L12"), tags(pairs));
  }

  @Test
  void logsForOnePairFillTheLowestPlace() {
    assertEquals(List.of(SOUTH_1), places(pairs(job(small(9, 111), small(10, 111)), ANY)));
    assertEquals(List.of(), pairs(job(small(9, 107), small(10, 107)), ANY), "none for the right");
    assertEquals(List.of(), pairs(job(small(9, 111)), ANY));
  }

  /** A log for either side must make room where only it will do for the other. */
  @Test
  void logsAreMatchedToSides() {
    Job job = job(small(9, 111), small(10, 107), small(11, 107), small(12, 111));
    assertEquals(Set.of("L9", "L10", "L11", "L12"), tags(pairs(job, ANY)));
    assertEquals(Set.of("L9", "L10"), tags(pairs(job(small(9, 111), small(10, 107)), ANY)));
  }

  @Test
  void somePlacesGetNone() {
    assertEquals(List.of(SOUTH_2), places(pairs(FOUR, Set.of(SOUTH_1), ANY)));
    assertEquals(List.of(SOUTH_2), places(pairs(pinned(FOUR, 1, "s", "L3"), ANY)), "pinned");
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs(pinned(FOUR, 1, "S", ""), ANY)));
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs(pinned(FOUR, 1, "N", "L1"), ANY)));
    Job held = FOUR.withBuilt(held(SOUTH_1, new Held("L3", Length.ofInches(2))));
    assertEquals(List.of(SOUTH_2), places(pairs(held, ANY)));
    Pairing.Wish had = new Pairing.Wish(Set.of(SOUTH_2), true);
    assertEquals(List.of(SOUTH_2), places(pairs(FOUR, had)), "only what had one");
    Choice lacking = TwoRounds.choice(FOUR).with(Optional.of(new Shortage(2, 2, List.of())));
    List<FilledPlace> pairs = new Pairing(FOUR, lacking, Set.of(), had, 2).pairs();
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs), "any while rounds are missing");
  }

  @Test
  void someLogsMayNotLieThere() {
    Log good = small(9, 111);
    Log other = small(10, 111);
    assertEquals(1, pairs(job(good, other), ANY).size());
    for (Log.Keep keep : List.of(Log.Keep.HEADER, Log.Keep.SPARE, Log.Keep.SILL)) {
      assertEquals(List.of(), pairs(job(good, Kept.log(other, keep)), ANY), keep.name());
    }
    assertEquals(List.of(), pairs(job(good, other.skipped()), ANY));
    assertEquals(List.of(), pairs(pinned(job(good, other), 2, "N", "L10"), ANY));
    assertEquals(List.of(), pairs(job(good, wishing(other, "N", 0)), ANY));
    assertEquals(1, pairs(job(good, wishing(other, "s", 0)), ANY).size());
    assertEquals(List.of(SOUTH_2), places(pairs(job(good, wishing(other, "", 2)), ANY)));
    assertEquals(List.of(), pairs(job(good, wishing(other, "", 3)), ANY));
    assertEquals(List.of(), pairs(job(good, small(10, 250)), ANY), "long enough for the wall");
    assertEquals(1, pairs(job(good, small(10, 249)), ANY).size());
    Job settled =
        job(good, other).withBuilt(held(new Place(2, "N"), new Held("L10", Length.ofInches(2))));
    assertEquals(List.of(), pairs(settled, ANY), "it lies elsewhere");
  }

  /** A log of 178 in lies beside the door unless a wall of the missing round needs it. */
  @Test
  void noLogThatAMissingRoundNeedsIsTaken() {
    Job job = job(small(9, 111), small(10, 178));
    assertEquals(1, new Pairing(job, short1(job, 2), Set.of(), ANY, 2).pairs().size());
    List<Log> seven = job.logs().stream().filter(log -> !log.tag().equals("L8")).toList();
    Choice one = short1(job, 2);
    assertEquals(0, new Pairing(job.withLogs(seven), one, Set.of(), ANY, 2).pairs().size());
  }

  /** A round that is missing is foreseen with cylinders of the last size: the door reaches it. */
  @Test
  void placesOfMissingRoundsAreForeseen() {
    Job job = FOUR;
    Choice one = short1(job, 2);
    List<FilledPlace> pairs = new Pairing(job, one, Set.of(), ANY, 2).pairs();
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(pairs));
    Choice none =
        new Choice(
            List.of(),
            job.logs().subList(8, 12),
            one.score(),
            Optional.of(new Shortage(2, 0, List.of())),
            List.of());
    assertEquals(
        List.of(SOUTH_1, SOUTH_2), places(new Pairing(job, none, Set.of(), ANY, 2).pairs()));
  }

  private static Choice short1(Job job, int wanted) {
    Choice all = TwoRounds.choice(job);
    List<Course> one = all.courses().subList(0, 1);
    return new Choice(
        one, all.unused(), all.score(), Optional.of(new Shortage(wanted, 1, List.of())), List.of());
  }

  /** What lay there before stays where it may, and its logs lie nowhere else. */
  @Test
  void pairsOfAnEarlierPlanAreTakenUp() {
    Job job = job(small(9, 107), small(10, 111), small(11, 107), small(12, 111), small(13, 111));
    Choice plain = TwoRounds.choice(job);
    List<FilledPlace> pairs = new Pairing(job, plain, Set.of(SOUTH_1), ANY, 2).pairs();
    assertEquals(List.of(SOUTH_2), places(pairs));
    Choice with = laid(job, pairs);
    Pairing.Wish keeping = new Pairing.Wish(Set.of(SOUTH_1, SOUTH_2), true);
    List<FilledPlace> kept = new Pairing(job, with, Set.of(), keeping, 2).pairs();
    assertEquals(pairs, kept.subList(0, 1), "the kept one first");
    assertEquals(List.of(SOUTH_2, SOUTH_1), places(kept));
    assertEquals(4, tags(kept).size());
    List<FilledPlace> anew = new Pairing(job, with, Set.of(), ANY, 2).pairs();
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(anew));
    List<FilledPlace> refused = new Pairing(job, with, Set.of(SOUTH_2), keeping, 2).pairs();
    assertEquals(List.of(SOUTH_1), places(refused));
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
    Choice choice = new ShortPairs(PairedJob.of(FOUR)).choose(plan);
    assertEquals(List.of(SOUTH_1, SOUTH_2), places(choice.placedPairs()));
    assertEquals(List.of(0, 2), planned.stream().map(List::size).toList());
    assertEquals(
        Set.of("L3", "L7"),
        new TreeSet<>(choice.unused().stream().map(Log::tag).toList()),
        "the long logs are free");
    planned.clear();
    assertEquals(
        List.of(), new ShortPairs(PairedJob.of(doors(FOUR, false))).choose(plan).placedPairs());
    assertEquals(1, planned.size());
  }

  /**
   * Of 11 in, they leave gaps of 1 5/8 in in the first round and 1 7/8 in in the second. Where 1
   * 1/2 is the most they are taken out again, and out of the other place, which is tried then.
   */
  @Test
  void pairsThatSpoilAGapAreTakenOut() {
    assertTakenOut(mostGap(job(thick(9, 107, "11"), thick(10, 111, "11")), 12));
  }

  /** Of the same logs the plan says how near they come: 1/8 in over 1 1/2 in, or 3/8 in. */
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

  /** Of 10 1/2 in, their ends lose too much, however large gaps may be. */
  @Test
  void pairsWithFlaggedEndsAreTakenOut() {
    assertTakenOut(mostGap(job(thick(9, 107, "10.5"), thick(10, 111, "10.5")), 32));
  }

  /** Where 1 3/4 is the most, those of 11 in stay in the first round. */
  @Test
  void pairsThatSpoilNothingStay() {
    Job job = mostGap(job(thick(9, 107, "11"), thick(10, 111, "11")), 14);
    List<List<Place>> planned = new ArrayList<>();
    assertEquals(List.of(SOUTH_1), places(chosen(job, planned).placedPairs()));
    assertEquals(List.of(List.of(), List.of(SOUTH_1)), planned);
  }

  private static void assertTakenOut(Job job) {
    List<List<Place>> planned = new ArrayList<>();
    assertEquals(List.of(), chosen(job, planned).placedPairs());
    assertEquals(
        List.of(List.of(), List.of(SOUTH_1), List.of(), List.of(SOUTH_2), List.of()), planned);
  }

  private static Choice chosen(Job job, List<List<Place>> planned) {
    return new ShortPairs(PairedJob.of(job))
        .choose(
            asked -> {
              List<FilledPlace> pairs = asked.pairs();
              planned.add(places(pairs));
              return laid(job, pairs);
            });
  }

  private static Job mostGap(Job job, int eighths) {
    Length most = Length.ofInchFraction(eighths, 8);
    return job.with(job.rules().with(Setting.GAP_MOST, most, Origin.OPTION));
  }

  /** Returns the two rounds by hand, with pairs in place of the logs that lay there. */
  private static Choice laid(Job job, List<FilledPlace> pairs) {
    Map<Place, Held> places = new HashMap<>();
    for (int i = 0; i < 8; i++) {
      String wall = job.building().walls().get(i % 4).name();
      places.put(new Place(i / 4 + 1, wall), new Held(job.logs().get(i).tag(), Length.ofInches(2)));
    }
    pairs.forEach(pair -> places.put(pair.place(), pair.held()));
    return Placement.choice(job, places, 2).with(Optional.empty());
  }

  private static List<FilledPlace> pairs(Job job, Pairing.Wish wish) {
    return pairs(job, Set.of(), wish);
  }

  private static List<FilledPlace> pairs(Job job, Set<Place> refused, Pairing.Wish wish) {
    return new Pairing(job, TwoRounds.choice(job), refused, wish, 2).pairs();
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
