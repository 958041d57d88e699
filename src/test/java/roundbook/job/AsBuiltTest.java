package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.job.AsBuilt.Ahead;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.AsBuilt.Place;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/**
 * What a crew has built: round 1 cut whole, round 2 cut but for its wall E, whose log is measured
 * and may change places with that of no other wall; of round 3 one log is measured.
 */
class AsBuiltTest {
  private static final Length NONE = Length.ZERO;
  private static final Measures MIDDLE =
      Measures.hewn(Optional.empty(), Optional.of(inches("12 1/4")), Optional.empty());
  private static final Place N1 = new Place(1, "N");
  private static final Place E2 = new Place(2, "E");
  private static final Place N2 = new Place(2, "N");
  private static final Place N3 = new Place(3, "N");
  private static final Place S3 = new Place(3, "S");

  private final AsBuilt built =
      AsBuilt.NOTHING
          .withCut(
              List.of(
                  new CutSize(inches("13"), inches("1")).corrected(inches("1/4")),
                  new CutSize(inches("12 1/2"), inches("1")).open(Set.of("E"))))
          .withPlaces(
              Map.of(
                  N1, new Held("A1", inches("6")),
                  N2, new Held(List.of(new HeldLog("B1", NONE), new HeldLog("B2", NONE))),
                  E2, new Held("C1", NONE),
                  N3, new Held("D1", NONE),
                  S3, new Held("D2", NONE)),
              Map.of(E2, MIDDLE, N3, MIDDLE, S3, MIDDLE))
          .withReadings(
              Map.of(new Corner(1, "NE"), inches("13")), Map.of(new Corner(2, "NE"), inches("19")))
          .withLost(Set.of("X"));

  private static Length inches(String text) {
    return Jobs.inches(text);
  }

  @Test
  void aRoundIsCutWhenEveryLogOfItIs() {
    assertEquals(1, built.rounds());
    assertEquals("true false false", built.isCut(1) + " " + built.isCut(2) + " " + built.isCut(3));
    assertTrue(built.isCut(N2));
    assertFalse(built.isCut(E2));
    assertFalse(built.isCut(N3));
    assertEquals(0, AsBuilt.NOTHING.rounds());
  }

  @Test
  void aRoundIsBegunByALogOrAReadingWithinIt() {
    assertTrue(built.isBegun(2));
    assertFalse(built.isBegun(3));
    AsBuilt read = built.withReadings(Map.of(), Map.of(new Corner(3, "SW"), inches("30")));
    assertTrue(read.isBegun(3));
    assertFalse(read.isBegun(4));
  }

  /** L = (D - g) / 4 and U = L + g, as cut: 3 and 4 in are of a round of 13 in with a gap of 1. */
  @ParameterizedTest
  @CsvSource({"3, 4, 13, 1", "2 7/8, 3 7/8, 12 1/2, 1", "3, 3, 12, 0", "0, 0, 0, 0"})
  void aSizeIsKnownByItsMarks(String lower, String upper, String size, String gap) {
    CutSize cut = CutSize.ofMarks(inches(lower), inches(upper));
    assertEquals(new CutSize(inches(size), inches(gap)), cut);
    assertEquals(inches(lower), cut.size().minus(cut.gap()).dividedBy(4));
  }

  @Test
  void findsWhatLiesWhere() {
    assertEquals(Optional.of(N1), built.placeOf("A1"));
    assertEquals(Optional.of(N2), built.placeOf("B2"));
    assertEquals(Optional.empty(), built.placeOf("Z"));
    assertEquals("B1 + B2", built.held(2, "N").orElseThrow().words());
    assertEquals(List.of("B1", "B2"), built.held(2, "N").orElseThrow().tags());
    assertEquals(Optional.empty(), built.held(9, "N"));
    assertEquals(inches("13"), built.reading(1, "NE").orElseThrow());
    assertEquals(Optional.empty(), built.reading(2, "NE"));
    assertEquals(inches("19"), built.firstReading(2, "NE").orElseThrow());
    assertEquals(MIDDLE, built.measures(2, "E"));
    assertEquals(Measures.NONE, built.measures(N1));
    assertEquals(Measures.NONE, built.measures(7, "W"));
  }

  /** What was put on the tally's diameters when a log was cut; none of a log that is not. */
  @Test
  void remembersTheCorrectionOfLogsThatAreCut() {
    assertEquals(Optional.of(inches("1/4")), built.correctionOf("A1"));
    assertEquals(Optional.of(NONE), built.correctionOf("B1"));
    assertEquals(Optional.empty(), built.correctionOf("C1"));
    assertEquals(Optional.empty(), built.correctionOf("D1"));
  }

  @Test
  void onlyMeasuredLogsOfARoundNotBegunMayMove() {
    assertTrue(built.isMovable(N3));
    assertFalse(built.isMovable(E2), "its round is begun");
    assertFalse(built.isMovable(N1), "it is cut");
    assertFalse(built.isMovable(new Place(3, "W")), "nothing lies there");
    Measures marked =
        new Measures(
            MIDDLE.butt(), MIDDLE.mid(), MIDDLE.tip(), Optional.of(inches("3")), Optional.empty());
    assertFalse(built.withPlaces(built.held(), Map.of(N3, marked)).isMovable(N3), "it is marked");
    assertFalse(built.withPlaces(built.held(), Map.of()).isMovable(N3), "it is not measured");
    Held both = new Held(List.of(new HeldLog("D1", NONE), new HeldLog("D3", NONE)));
    assertFalse(built.withPlaces(Map.of(N3, both), Map.of(N3, MIDDLE)).isMovable(N3), "two lie");
  }

  /** A log that moves takes what was measured on it along. */
  @Test
  void aMovedLogTakesItsMeasuresAlong() {
    Measures thick = Measures.hewn(Optional.empty(), Optional.of(inches("14")), Optional.empty());
    AsBuilt before = built.withPlaces(built.held(), Map.of(N3, MIDDLE, S3, thick));
    AsBuilt after = before.moved(Map.of(N3, new Held("D2", NONE), S3, new Held("D1", inches("2"))));
    assertEquals(Optional.of(S3), after.placeOf("D1"));
    assertEquals(Optional.of(N3), after.placeOf("D2"));
    assertEquals(thick, after.measures(N3));
    assertEquals(MIDDLE, after.measures(S3));
    assertEquals(before, before.moved(Map.of(N3, new Held("D1", inches("1")))), "it lies there");
    assertEquals(before, before.moved(Map.of(N3, new Held("new", NONE))), "it was not measured");
  }

  @Test
  void keepsOnlyWhatIsCut() {
    AsBuilt cut = built.onlyCut();
    assertEquals(Set.of(N1, N2), cut.held().keySet());
    assertEquals(built.cut(), cut.cut());
    assertEquals(cut, cut.onlyCut());
  }

  @Test
  void aMiddleIsKnownFromItsPlaceOrTheYard() {
    assertTrue(built.knowsMiddle(E2, "C1"));
    assertFalse(built.knowsMiddle(N1, "A1"));
    Log log = Jobs.log("A1", inches("216"), "14", "13", "12");
    assertTrue(built.withAhead(Map.of("A1", new Ahead(MIDDLE, log))).knowsMiddle(N1, "A1"));
    Ahead ends =
        new Ahead(Measures.hewn(Optional.of(NONE), Optional.empty(), Optional.empty()), log);
    assertFalse(built.withAhead(Map.of("A1", ends)).knowsMiddle(N1, "A1"));
  }

  @Test
  void tellsALogAsItWasExpected() {
    Log tallied = Jobs.log("A1", inches("216"), "14", "13", "12");
    Log hewn = Jobs.log("A1", inches("216"), "14", "13 1/2", "12");
    AsBuilt measured = built.withExpected(Map.of("A1", tallied));
    assertEquals(tallied, measured.beforeHewing(hewn));
    assertEquals(hewn, built.beforeHewing(hewn));
  }

  @Test
  void heldLogsAreToldApart() {
    Held one = new Held("A1", NONE);
    Held two =
        new Held(List.of(HeldLog.beside("A1", NONE, inches("60"), true), new HeldLog("A2", NONE)));
    assertTrue(one.isOnly("A1") && one.holds("A1") && !one.holds("A2") && !one.isShared());
    assertTrue(!two.isOnly("A1") && two.holds("A1") && two.holds("A2") && two.isShared());
    assertEquals(inches("60"), two.logs().get(0).beside().orElseThrow().trimmed());
  }

  /** By rounds, then by walls, then whole, left and right: whatever order they come in. */
  @Test
  void placesAndCornersHaveAnOrder() {
    List<Place> wanted = new ArrayList<>();
    for (int round = 1; round <= 3; round++) {
      for (String wall : List.of("E", "N", "N2")) {
        Place whole = new Place(round, wall);
        wanted.addAll(List.of(whole, whole.side(true), whole.side(false)));
      }
    }
    List<Place> mixed = new ArrayList<>(wanted);
    Collections.shuffle(mixed, new Random(3));
    Collections.sort(mixed);
    assertEquals(wanted, mixed);
    assertTrue(new Corner(1, "SW").compareTo(new Corner(2, "NE")) < 0);
    assertTrue(new Corner(2, "SW").compareTo(new Corner(2, "NE")) > 0);
    assertEquals(0, new Corner(2, "NE").compareTo(new Corner(2, "NE")));
  }

  @ParameterizedTest
  @CsvSource({"WHOLE, N", "LEFT, N left", "RIGHT, N right"})
  void aPartIsNamedByItsWall(PlacePart part, String name) {
    Place place = new Place(4, "N", part);
    assertEquals(name, place.named());
    assertEquals(new Place(4, "N"), place.whole());
    assertEquals(part != PlacePart.RIGHT, place.compareTo(new Place(4, "N", PlacePart.RIGHT)) < 0);
  }

  @ParameterizedTest
  @EnumSource
  void aGapIsNamedByItsWallAndStation(GapSpot.Station at) {
    assertEquals("N " + at.name().toLowerCase(), new GapSpot(3, "N", at).named());
  }

  /** A wall's joints from the foundation up, each from left to right. */
  @Test
  void gapsHaveAnOrder() {
    List<GapSpot> wanted = new ArrayList<>();
    for (String wall : List.of("E", "N")) {
      for (int below = 1; below <= 12; below++) {
        for (GapSpot.Station at : GapSpot.Station.values()) {
          wanted.add(new GapSpot(below, wall, at));
        }
      }
    }
    List<GapSpot> mixed = new ArrayList<>(wanted);
    Collections.shuffle(mixed, new Random(3));
    Collections.sort(mixed);
    assertEquals(wanted, mixed);
  }

  @ParameterizedTest
  @CsvSource({
    "0, true, false",
    "1, false, true",
    "2, false, true",
    "4, false, true",
    "8, false, false",
    "16, false, false",
    "31, false, true"
  })
  void measuresAreHewnWhereADiameterIs(int typed, boolean empty, boolean hewn) {
    List<Optional<Length>> five = new ArrayList<>();
    for (int bit = 0; bit < 5; bit++) {
      five.add((typed >> bit & 1) == 1 ? Optional.of(inches("12")) : Optional.empty());
    }
    Measures measures =
        new Measures(five.get(0), five.get(1), five.get(2), five.get(3), five.get(4));
    assertEquals(empty, measures.isEmpty());
    assertEquals(hewn, measures.hewn());
  }
}
