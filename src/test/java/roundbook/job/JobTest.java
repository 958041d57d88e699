package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.AsBuilt.Ahead;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Stem.Stretch;
import roundbook.job.Stems.ByRule;
import roundbook.job.Stems.CrossCut;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.problem.words.Sentences;
import roundbook.units.Length;

/** A job and its stems, by numbers reckoned by hand. */
class JobTest {
  private static final Building CABIN = Jobs.building(inches("240"), inches("168"), inches("6"));
  private static final Log LOG = Jobs.log("A1", inches("216"), "14", "13", "12");
  private static final CellRef ROW = new CellRef("job.xlsx", "Pins", 2, 0);

  private final Job job = new Job(Jobs.rules(false), CABIN, List.of(LOG), List.of(), List.of());

  private static Length inches(String text) {
    return Jobs.inches(text);
  }

  private Job set(Setting setting, Object value) {
    return job.with(job.rules().with(setting, value, Origin.OPTION));
  }

  @Test
  void asksAHeightByRoundsOrByLength() {
    assertFalse(job.asksHeight());
    assertTrue(set(Setting.ROUNDS, new BigDecimal(8)).asksHeight());
    assertTrue(set(Setting.WALL_HEIGHT, inches("96")).asksHeight());
  }

  /** A round that is cut holds its size; else a step of 7 in holds round 1 at 2 x 7 - 1. */
  @Test
  void aFoundationsStepHoldsTheFirstRound() {
    assertEquals(Optional.empty(), job.heldSize(1));
    Job step = set(Setting.FOUNDATION_STEP, inches("7"));
    Job flat = step.with(step.rules().with(Setting.FIRST_BED, "flat", Origin.OPTION));
    Job level = step.with(step.rules().with(Setting.FIRST_BED, "level", Origin.OPTION));
    assertEquals(Optional.of(inches("13")), flat.heldSize(1).map(CutSize::size));
    assertEquals(Optional.empty(), flat.heldSize(2));
    assertEquals(Optional.empty(), level.heldSize(1));
    CutSize cut = new CutSize(inches("12"), inches("1"));
    assertEquals(
        Optional.of(cut), flat.withBuilt(AsBuilt.NOTHING.withCut(List.of(cut))).heldSize(1));
  }

  /** Logs that come out a quarter thicker than tallied: every diameter but that of the tally. */
  @ParameterizedTest
  @CsvSource({"1/4, 13 1/4", "0, 13"})
  void theCorrectionIsPutOnAndTakenOff(String correction, String mid) {
    Job corrected = set(Setting.TALLY_CORRECTION, inches(correction)).corrected();
    Log thick = corrected.log("A1").orElseThrow();
    assertEquals(inches(mid), thick.mid());
    assertEquals(LOG, corrected.tallied(thick));
    assertEquals(Optional.empty(), corrected.log("A2"));
  }

  @Test
  void aHewnLogIsToldAsItWasTallied() {
    Log expected = LOG.thinnedBy(inches("1/4").negated());
    Log hewn = Jobs.log("A1", inches("216"), "14", "12", "11");
    Place place = new Place(1, "N");
    AsBuilt cut =
        AsBuilt.NOTHING
            .withCut(List.of(new CutSize(inches("13"), inches("1")).corrected(inches("1/4"))))
            .withPlaces(Map.of(place, new Held("A1", Length.ZERO)), Map.of())
            .withExpected(Map.of("A1", expected));
    // It was planned with a quarter on; the half of today came after it was cut.
    Job later = set(Setting.TALLY_CORRECTION, inches("1/2")).withBuilt(cut);
    assertEquals(LOG, later.tallied(hewn));
    Ahead yard = new Ahead(Measures.NONE, LOG.thinnedBy(inches("1/2").negated()));
    assertEquals(LOG, later.withBuilt(cut.withAhead(Map.of("A1", yard))).tallied(hewn));
  }

  /** Butts run round the building: one at every corner, and the other way in the next round. */
  @Test
  void everyCornerHasOneButtInEveryRound() {
    for (int round = 1; round <= 4; round++) {
      Set<String> corners = new HashSet<>();
      for (Wall wall : CABIN.walls()) {
        boolean start = job.isButtAtStart(wall, round);
        corners.add(start ? CABIN.startCorner(wall) : CABIN.endCorner(wall));
        assertEquals(!start, job.isButtAtStart(wall, round + 1));
      }
      assertEquals(Set.of("NE", "NW", "SE", "SW"), corners);
    }
  }

  /** Of a round and a wall, one of the wall's corners has the butt; what is not told is free. */
  @Test
  void aPinAgainstTheButtsIsRefusedWithTheRightCorner() {
    Wall north = CABIN.wall("N").orElseThrow();
    for (int round = 1; round <= 2; round++) {
      String here =
          job.isButtAtStart(north, round) ? CABIN.startCorner(north) : CABIN.endCorner(north);
      String there = here.equals("NE") ? "NW" : "NE";
      assertEquals(Optional.empty(), pin(OptionalInt.of(round), "N", here.toLowerCase()));
      assertEquals(
          Optional.of("butts run round the building, so the butt lies at " + here),
          pin(OptionalInt.of(round), "N", there));
    }
    assertEquals(Optional.empty(), pin(OptionalInt.empty(), "N", "NE"));
    assertEquals(Optional.empty(), pin(OptionalInt.of(1), "N", ""));
    assertEquals(Optional.empty(), pin(OptionalInt.of(1), "", "NE"));
  }

  private Optional<String> pin(OptionalInt round, String wall, String butt) {
    return new Pin(round, wall, "", butt, "", ROW)
        .againstButt(CABIN, job.rules())
        .map(each -> each.in(Sentences.english()));
  }

  @ParameterizedTest
  @CsvSource({
    "3, N, A1, 'log A1, round 3, wall N'",
    "3, '', '', round 3",
    ", N, '', wall N",
    ", '', A1, log A1",
  })
  void aPinTellsWhatItSettles(Integer round, String wall, String log, String words) {
    OptionalInt number = round == null ? OptionalInt.empty() : OptionalInt.of(round);
    Pin pin = new Pin(number, wall, log, "", "", ROW);
    assertEquals(words, pin.phrase().in(Sentences.english()));
  }

  /** A stem of 40 ft from 18 to 10 in, a straight line: at 10 ft 16 in, at 25 ft 13 in. */
  @Test
  void aPieceOfAStemHasItsDiametersAndPartOfItsSweep() {
    Log.Traits bent = new Log.Traits("pine", Log.Bark.OFF, inches("4"), Log.Keep.ANY, false, "");
    Stem stem = stem("T1", bent);
    Log piece = stem.log("T1-2", inches("120"), inches("180"));
    assertEquals(inches("16"), piece.butt());
    assertEquals(inches("14 1/2"), piece.mid());
    assertEquals(inches("13"), piece.tip());
    assertEquals(inches("1 1/2"), piece.traits().sweep());
    assertEquals(
        inches("15"), stem.thinnedBy(inches("1")).log("x", inches("120"), inches("1")).butt());
    assertEquals("pine", piece.traits().species());
  }

  private static Stem stem(String tag, Log.Traits traits) {
    Length length = inches("480");
    return new Stem(
        tag,
        length,
        DiameterProfile.of(length, inches("18"), inches("14"), inches("10")),
        List.of(new Stretch(inches("300"), inches("310"))),
        traits,
        false,
        ROW);
  }

  @Test
  void aLogOfTheTallyMayBeAStem() {
    Stem stem = Stem.of(LOG);
    assertTrue(stem.isLog() && stem.bad().isEmpty());
    Log whole = stem.log("A1", Length.ZERO, LOG.length());
    assertEquals(LOG.profile(), whole.profile());
  }

  @Test
  void piecesAreFoundByTheirStemFromItsButtUp() {
    Stem one = stem("T1", Log.Traits.NONE);
    Stem two = stem("T2", Log.Traits.NONE);
    Map<String, CrossCut> cuts =
        Map.of(
            "T1-2", CrossCut.planned("T1", inches("200")),
            "T1-1", new CrossCut("T1", Length.ZERO, true, Optional.of(inches("16"))),
            "T2-1", CrossCut.planned("T2", inches("12")));
    Stems stems = new Stems(List.of(one, two), cuts, Optional.empty());
    List<Log> logs = new ArrayList<>(List.of(LOG));
    logs.add(one.log("T1-2", inches("200"), inches("120")));
    logs.add(one.log("T1-1", Length.ZERO, inches("120")));
    logs.add(two.log("T2-1", inches("12"), inches("120")));
    assertEquals(List.of("T1-1", "T1-2"), stems.pieces(one, logs).stream().map(Log::tag).toList());
    assertEquals(Optional.of(two), stems.of(logs.get(3)));
    assertEquals(Optional.empty(), stems.of(LOG));
    assertEquals(Optional.empty(), stems.stem("T9"));
    assertEquals(inches("200"), stems.from(logs.get(1)));
    assertEquals(3, stems.plus(List.of(stem("T3", Log.Traits.NONE))).all().size());
    assertEquals(Optional.of(new ByRule(7, 2)), stems.with(new ByRule(7, 2)).byRule());
    assertTrue(Stems.NONE.isEmpty());
    assertFalse(Stems.of(List.of(one)).isEmpty());
  }

  /** The middle of T1-1 is 17 in by the stem; measured at 16 it is an inch thinner all along. */
  @Test
  void aMeasuredPieceIsThinnerAllAlong() {
    Stem stem = stem("T1", Log.Traits.NONE);
    Log piece = stem.log("T1-1", Length.ZERO, inches("120"));
    Map<String, CrossCut> cuts =
        Map.of("T1-1", new CrossCut("T1", Length.ZERO, true, Optional.of(inches("16"))));
    Job measured =
        job.withLogs(List.of(LOG, piece))
            .withStems(new Stems(List.of(stem), cuts, Optional.empty()))
            .withMeasuredPieces();
    Log now = measured.log("T1-1").orElseThrow();
    assertEquals(
        List.of(inches("17"), inches("16"), inches("15")),
        List.of(now.butt(), now.mid(), now.tip()));
    assertEquals(LOG, measured.log("A1").orElseThrow());
    assertEquals(measured, measured.withMeasuredPieces(), "taken once");
  }

  /** Doors side by side: an edge that both share is no room that both have. */
  @ParameterizedTest
  @CsvSource({
    "N, 60, 36, 0, 84, true", "N, 95, 36, 0, 84, true", "N, 96, 36, 0, 84, false",
    "N, 24, 36, 0, 84, false", "N, 25, 36, 0, 84, true", "S, 60, 36, 0, 84, false",
    "N, 60, 36, 84, 90, false", "N, 60, 36, 83, 90, true", "N, 70, 2, 10, 20, true",
    "N, 50, 60, 0, 100, true",
  })
  void openingsThatShareRoomOverlap(
      String wall, long left, long width, long sill, long head, boolean overlaps) {
    Opening door = opening("N", 60, 36, 0, 84);
    Opening other = opening(wall, left, width, sill, head);
    assertEquals(overlaps, door.overlaps(other));
    assertEquals(overlaps, other.overlaps(door));
  }

  private static Opening opening(String wall, long left, long width, long sill, long head) {
    return new Opening(
        "Door",
        wall,
        Length.ofInches(left),
        Length.ofInches(width),
        Length.ofInches(sill),
        Length.ofInches(head),
        false,
        "",
        ROW);
  }
}
