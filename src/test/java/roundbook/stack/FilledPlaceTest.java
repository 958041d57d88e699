package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/**
 * What fills a place, worked by hand: on N of 246 in, L1 of 103 in at the left, butt at its corner,
 * and L2 of 107 in at the right, tip at its corner; the opening between them is 36 in wide.
 *
 * <p>Two inches are off each butt. L1 tapers 1 in in 107 in, L2 2 in in 111 in.
 */
class FilledPlaceTest {
  private static final Log L1 = Jobs.log("L1", in(107), "13", "12.5", "12");
  private static final Log L2 = Jobs.log("L2", in(111), "14", "13", "12");
  private static final Job JOB = Jobs.random(1, 1).withLogs(List.of(L1, L2));
  private static final Wall NORTH = JOB.building().walls().get(0);
  private static final PlacedLog LEFT =
      new PlacedLog(new Piece(L1, in(2), in(103)), NORTH, 2, false, Length.ZERO);
  private static final PlacedLog RIGHT =
      new PlacedLog(new Piece(L2, in(2), in(107)), NORTH, 2, false, in(139));
  private static final FilledPlace PAIR = FilledPlace.of(JOB, LEFT, RIGHT);

  private static Length in(int inches) {
    return Length.ofInches(inches);
  }

  private static double at(int inches) {
    return PAIR.fromLeft(in(inches)).inches();
  }

  @Test
  void diametersAreThoseOfTheLogThatLiesThere() {
    assertEquals(246, PAIR.trimmed().inches());
    assertEquals(13 - 2 / 107.0, at(0), 1e-6);
    assertEquals(13 - 105 / 107.0, at(103), 1e-6);
    assertEquals(14 - 2 * 2 / 111.0, at(139), 1e-6);
    assertEquals(14 - 2 * 109 / 111.0, at(246), 1e-6);
  }

  /** The middle of the wall lies 20 in from L1 and 16 in from L2. */
  @Test
  void acrossTheOpeningTheyRunStraight() {
    double one = 13 - 105 / 107.0;
    double other = 14 - 4 / 111.0;
    assertEquals(one + (other - one) * 20 / 36, PAIR.mid().inches(), 1e-6);
    assertEquals(PAIR.mid(), PAIR.fromLeft(in(123)));
  }

  /** Butts of round 2 lie left on N or right, as the rules have it; so do its two ends. */
  @Test
  void itsEndsAreThoseOfItsRound() {
    boolean start = JOB.rules().clockwise(2);
    assertEquals(PAIR.fromLeft(in(start ? 246 : 0)), PAIR.butt());
    assertEquals(PAIR.fromLeft(in(start ? 0 : 246)), PAIR.tip());
  }

  /** L1 was measured in the middle at 53 1/2 in, L2 at 55 1/2; both two inches nearer when cut. */
  @Test
  void itsTaperChangesAtEveryStationAndAtTheOpening() {
    List<Double> kinks = PAIR.kinks().stream().map(Length::inches).toList();
    assertEquals(List.of(51.5, 192.5, 103.0, 139.0), kinks);
  }

  @Test
  void itIsToldByTagsAndFoundAgain() {
    assertEquals("L1 + L2", PAIR.tags());
    assertEquals(Optional.of(PAIR), FilledPlace.of(JOB, PAIR.place(), PAIR.held()));
    FilledPlace one = FilledPlace.of(new Piece(L1, in(2), in(246)), NORTH, 2, PAIR.buttAtStart());
    assertEquals(Optional.of(one), FilledPlace.of(JOB, one.place(), one.held()));
    Job gone = JOB.withLogs(List.of(L1));
    assertEquals(Optional.empty(), FilledPlace.of(gone, PAIR.place(), PAIR.held()));
    assertEquals(PAIR.place().side(true), PAIR.placeOf(LEFT));
    assertEquals(PAIR.place().side(false), PAIR.placeOf(RIGHT));
    assertEquals(one.place(), one.placeOf(one.first()));
  }

  /** Two short logs are measured each on its side of the opening. */
  @Test
  void twoLogsAreMeasuredWhereBothAre() {
    Measures middle =
        new Measures(
            Optional.empty(),
            Optional.of(in(13)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    AsBuilt.Place left = PAIR.placeOf(LEFT);
    AsBuilt.Place right = PAIR.placeOf(RIGHT);
    AsBuilt nothing = AsBuilt.NOTHING;
    assertFalse(PAIR.isMeasured(nothing));
    assertFalse(PAIR.isMeasured(nothing.withPlaces(Map.of(), Map.of(left, middle))));
    Map<AsBuilt.Place, Measures> both = Map.of(left, middle, right, middle);
    assertTrue(PAIR.isMeasured(nothing.withPlaces(Map.of(), both)));
  }

  @Test
  void eachLogKnowsWhichEndIsOut() {
    assertTrue(LEFT.buttOut());
    assertFalse(RIGHT.buttOut());
    PlacedLog turned = new PlacedLog(RIGHT.piece(), NORTH, 2, true, RIGHT.fromLeft());
    assertTrue(turned.buttOut());
    assertEquals(List.of(LEFT, turned), PAIR.with(turned, RIGHT).logs());
  }

  /** Of 107 and 111 in, 103 and 107 are used and four inches squared off each. */
  @Test
  void offcutsAreWhatIsLeftAfterSquaring() {
    assertEquals(0, PAIR.offcut(in(2)).inches());
    assertEquals(4, PAIR.offcut(in(1)).inches());
  }

  @Test
  void onlyOneLogOrTwoFillAPlace() {
    for (List<PlacedLog> logs : List.of(List.<PlacedLog>of(), List.of(LEFT, RIGHT, RIGHT))) {
      assertThrows(IllegalArgumentException.class, () -> new FilledPlace(NORTH, 2, false, logs));
    }
  }
}
