package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Pin;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.problem.words.Sentences;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** Which log may stand where, as wishes, pins, keeps and what is built have it. */
class PlacesTest {
  private static final int NORTH_1 = 0;
  private static final int EAST_1 = 1;
  private static final int SOUTH_1 = 2;
  private static final int NORTH_2 = 4;
  private static final int EAST_2 = 5;
  private static final int SOUTH_2 = 6;

  @Test
  void longLogsServeAllWallsAndShortOnesTheShort() {
    Job job = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    Places places = new Places(job, 2);
    assertTrue(may(places, 0, NORTH_1) && may(places, 0, EAST_2));
    assertFalse(may(places, 9, NORTH_1));
    assertTrue(may(places, 9, EAST_1));
    assertTrue(places.fillable());
    assertEquals(8, places.count());
    assertEquals(2, places.round(EAST_2));
    assertEquals("E", places.wall(EAST_2).name());
    assertFalse(new Places(job, 3).fillable(), "ten logs are too few for three rounds");
    assertEquals(10, filled(new Places(job, 3)));
  }

  @Test
  void wishesBindALogToItsWallAndRound() {
    Places wall =
        new Places(job(new Log.Wish("e", OptionalInt.empty()), Log.Keep.ANY, List.of()), 2);
    assertTrue(may(wall, 0, EAST_1) && may(wall, 0, EAST_2));
    assertFalse(may(wall, 0, NORTH_1));
    Places round = new Places(job(new Log.Wish("", OptionalInt.of(2)), Log.Keep.ANY, List.of()), 2);
    assertTrue(may(round, 0, NORTH_2) && may(round, 0, EAST_2));
    assertFalse(may(round, 0, NORTH_1));
    assertTrue(may(wall, 1, NORTH_1), "other logs go where they like");
  }

  @Test
  void keepsBindALogToItsRounds() {
    Places sill = new Places(job(Log.Wish.ANYWHERE, Log.Keep.SILL, List.of()), 2);
    assertTrue(may(sill, 0, NORTH_1));
    assertFalse(may(sill, 0, NORTH_2));
    Places plate = new Places(job(Log.Wish.ANYWHERE, Log.Keep.PLATE, List.of()), 2);
    assertFalse(may(plate, 0, NORTH_1));
    assertTrue(may(plate, 0, NORTH_2));
    Places spare = new Places(job(Log.Wish.ANYWHERE, Log.Keep.SPARE, List.of()), 2);
    assertFalse(may(spare, 0, NORTH_1) || may(spare, 0, NORTH_2));
    Places header = new Places(job(Log.Wish.ANYWHERE, Log.Keep.HEADER, List.of()), 2);
    assertTrue(may(header, 0, NORTH_1), "openings are not known yet");
    Places over = header.withHeaders(Optional.of(Set.of(NORTH_2)));
    assertTrue(may(over, 0, NORTH_2));
    assertFalse(may(over, 0, NORTH_1));
    assertFalse(may(over.withReserved(Map.of(NORTH_2, Log.Keep.HEADER)), 1, NORTH_2));
    assertTrue(may(over.withReserved(Map.of(NORTH_2, Log.Keep.HEADER)), 0, NORTH_2));
    assertTrue(may(over.withReserved(Map.of(NORTH_2, Log.Keep.HEADER)), 1, NORTH_1));
  }

  @Test
  void aPinHoldsItsLogAndItsPlace() {
    Places exact = new Places(job(pin(2, "e", "L1")), 2);
    assertTrue(may(exact, 0, EAST_2));
    assertFalse(may(exact, 0, NORTH_1));
    assertFalse(may(exact, 0, EAST_1));
    assertFalse(may(exact, 1, EAST_2), "the place is taken");
    assertTrue(may(exact, 1, EAST_1));
    Places wall = new Places(job(pin(0, "E", "L1")), 2);
    assertTrue(may(wall, 0, EAST_1) && may(wall, 0, EAST_2));
    assertFalse(may(wall, 0, NORTH_1));
    assertTrue(may(wall, 1, EAST_1), "a wall has room for others");
    Places butt = new Places(job(pin(1, "N", "")), 2);
    assertTrue(may(butt, 0, NORTH_1) && may(butt, 1, NORTH_1));
  }

  @Test
  void pinsThatCannotBeKeptAreSaid() {
    Job job = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    assertEquals(
        "a pin asks for log L1, round 3, wall N, and the plan has 2 rounds",
        reason(pin(3, "N", "L1", ""), job));
    assertEquals("", reason(pin(2, "N", "L1", ""), job));
    assertEquals("", reason(pin(0, "N", "L1", "NW"), job));
    boolean start = job.rules().clockwise(1);
    String right = start ? "NW" : "NE";
    String wrong = start ? "NE" : "NW";
    assertEquals("", reason(pin(1, "N", "", right.toLowerCase()), job));
    assertEquals(
        "butts run round the building, so the butt lies at " + right,
        reason(pin(1, "N", "", wrong), job));
    assertEquals(
        "butts run round the building, so the butt lies at " + wrong,
        reason(pin(2, "N", "", right), job));
  }

  @Test
  void whatIsSettledStays() {
    Job job = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    Map<Place, Held> held =
        Map.of(
            new Place(1, "N"), new Held("L1", Length.ofInches(3)),
            new Place(1, "E"), new Held("L2", Length.ofInches(2)));
    AsBuilt built = AsBuilt.NOTHING.withPlaces(held, Map.of());
    Places places = new Places(job.withBuilt(built), 2);
    assertTrue(may(places, 0, NORTH_1));
    assertFalse(may(places, 0, NORTH_2));
    assertFalse(may(places, 2, NORTH_1));
    assertEquals(Length.ofInches(3), places.pieces(0, NORTH_1).get(0).cutOffButt());
    assertFalse(may(places, 0, 2), "nothing was measured");
    Optional<Length> none = Optional.empty();
    Measures hewn = new Measures(none, Optional.of(Length.ofInches(13)), none, none, none);
    Map<Place, Measures> typed = Map.of(new Place(1, "N"), hewn);
    AsBuilt measured = AsBuilt.NOTHING.withPlaces(held, typed);
    assertTrue(measured.isMovable(new Place(1, "N")));
    assertFalse(measured.isMovable(new Place(1, "E")));
    assertFalse(may(new Places(job.withBuilt(measured), 2), 0, EAST_1), "E is not measured");
  }

  /** Logs measured and not marked may change walls of their round, where nothing lies yet. */
  @Test
  void whatIsOnlyMeasuredMayChangeWalls() {
    Job job = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    Map<Place, Held> held =
        Map.of(
            new Place(1, "N"), new Held("L1", Length.ofInches(3)),
            new Place(1, "S"), new Held("L2", Length.ofInches(2)),
            new Place(2, "N"), new Held("L3", Length.ofInches(2)));
    Optional<Length> none = Optional.empty();
    Measures hewn = new Measures(none, Optional.of(Length.ofInches(13)), none, none, none);
    Map<Place, Measures> typed = new HashMap<>();
    held.keySet().forEach(place -> typed.put(place, hewn));
    Places all = new Places(job.withBuilt(measured(held, typed)), 2);
    assertTrue(may(all, 0, NORTH_1) && may(all, 0, SOUTH_1) && may(all, 1, NORTH_1));
    assertFalse(may(all, 0, NORTH_2), "another round");
    assertFalse(may(all, 0, EAST_1), "not like its own wall");
    assertFalse(may(all, 3, SOUTH_1), "a settled place is for settled logs");
    typed.remove(new Place(1, "S"));
    Places one = new Places(job.withBuilt(measured(held, typed)), 2);
    assertTrue(may(one, 0, NORTH_1) && may(one, 1, SOUTH_1));
    assertFalse(may(one, 0, SOUTH_1), "what lies there cannot make room");
    assertFalse(may(one, 1, NORTH_1), "it may not leave its place");
  }

  /** A pair has its place to itself, and that place no other log. */
  @Test
  void aPairFillsItsOwnPlaceAlone() {
    Job plain = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    Wall north = plain.building().walls().get(0);
    FilledPlace pair =
        FilledPlace.of(
            plain, beside(north, "L11", 103, Length.ZERO), beside(north, "L12", 107, in(139)));
    Places places = new Places(PairedJob.of(plain, List.of(pair)), 2);
    assertFalse(may(places, 0, NORTH_2));
    assertTrue(may(places, 0, SOUTH_2));
    assertEquals(Optional.of(pair), places.pair(NORTH_2));
    assertEquals(Optional.of(10), places.number(NORTH_2), "after the ten logs");
    assertEquals(Optional.empty(), places.pair(NORTH_1));
    assertEquals(10, places.match()[NORTH_2]);
    assertTrue(places.fillable());
  }

  /** The thickest logs are taken first, the longest places filled first. */
  @Test
  void placesAreMatchedFromTheLongestAndTheThickest() {
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      logs.add(Jobs.log("L" + (i + 1), Length.ofInches(260), "12", "1" + i, "12"));
    }
    Job sample = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    assertArrayEquals(new int[] {4, 2, 3, 1}, new Places(sample.withLogs(logs), 1).match());
    logs.remove(4);
    logs.remove(3);
    assertArrayEquals(new int[] {2, 0, 1, -1}, new Places(sample.withLogs(logs), 1).match());
  }

  /** L1, wished for N alone, must come in where L2 and L3 have taken N and S. */
  @Test
  void othersMakeRoomWhereNoLogIsFree() {
    List<Log> logs = new ArrayList<>();
    logs.add(Jobs.log("L1", Length.ofInches(260), "12", "12", "12").placed(wall("N")));
    logs.add(Jobs.log("L2", Length.ofInches(260), "12", "15", "12"));
    logs.add(Jobs.log("L3", Length.ofInches(260), "12", "14", "12").placed(wall("N")));
    logs.add(Jobs.log("L4", Length.ofInches(190), "12", "13", "12"));
    logs.add(Jobs.log("L5", Length.ofInches(190), "12", "13", "12").placed(wall("W")));
    logs.add(Jobs.log("L6", Length.ofInches(190), "12", "13", "12"));
    Job sample = job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of());
    int[] match = new Places(sample.withLogs(logs), 1).match();
    assertEquals(1, match[SOUTH_1], "L2 goes to S, the only one that may");
    assertEquals(2, match[NORTH_1]);
    int[] given = {-1, 5, 1, 3};
    assertArrayEquals(
        new int[] {2, 5, 1, 3}, new Places(sample.withLogs(logs), 1).match(given), "what is given");
    assertArrayEquals(new int[] {-1, 5, 1, 3}, given, "is left as it is");
    int[] turned = {1, 5, -1, 3};
    assertArrayEquals(
        new int[] {2, 5, 1, 3}, new Places(sample.withLogs(logs), 1).match(turned), "L2 moves");
  }

  @Test
  void reservedPlacesAreTold() {
    Places places = new Places(job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of()), 2);
    assertEquals(Map.of(), places.reserved());
    Map<Integer, Log.Keep> sill = Map.of(NORTH_1, Log.Keep.SILL);
    assertEquals(sill, places.withReserved(sill).reserved());
    assertEquals(sill, places.withReserved(sill).withHeaders(Optional.empty()).reserved());
    assertEquals(Map.of(), places.withReserved(sill).withRounds(1).reserved());
    assertEquals(1, places.withRounds(1).rounds());
  }

  private static Log.Wish wall(String name) {
    return new Log.Wish(name, OptionalInt.empty());
  }

  private static PlacedLog beside(Wall wall, String tag, int trimmed, Length from) {
    Log log = Jobs.log(tag, in(trimmed + 4), "12", "12", "12");
    return new PlacedLog(new Piece(log, in(2), in(trimmed)), wall, 2, false, from);
  }

  private static Length in(int inches) {
    return Length.ofInches(inches);
  }

  private static AsBuilt measured(Map<Place, Held> held, Map<Place, Measures> typed) {
    return AsBuilt.NOTHING.withPlaces(held, typed);
  }

  private static boolean may(Places places, int log, int place) {
    return !places.pieces(log, place).isEmpty();
  }

  private static long filled(Places places) {
    long filled = 0;
    for (int log : places.match()) {
      filled += log >= 0 ? 1 : 0;
    }
    return filled;
  }

  private static String reason(Pin pin, Job job) {
    return Places.reasonAgainst(pin, job, 2).map(why -> why.in(Sentences.english())).orElse("");
  }

  private static Pin pin(int round, String wall, String log, String butt) {
    OptionalInt in = round == 0 ? OptionalInt.empty() : OptionalInt.of(round);
    return new Pin(in, wall, log, butt, "", new CellRef("made-up.xlsx", "Pins", 2, 0));
  }

  private static Pin pin(int round, String wall, String log) {
    return pin(round, wall, log, "");
  }

  private static Job job(Pin pin) {
    return job(Log.Wish.ANYWHERE, Log.Keep.ANY, List.of(pin));
  }

  /**
   * Returns ten logs, six of them long enough for N and S; wish and keep are those of the first.
   */
  private static Job job(Log.Wish wish, Log.Keep keep, List<Pin> pins) {
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      Length length = Length.ofInches(i < 6 ? 260 : 190);
      Log log = Jobs.log("L" + (i + 1), length, "14", "13", "12");
      logs.add(i > 0 ? log : Kept.log(log, keep).placed(wish));
    }
    Job sample = Jobs.random(1, 1);
    return new Job(sample.rules(), sample.building(), logs, List.of(), pins);
  }
}
