package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/** A tallied log, the piece of it that is laid, openings, and what yards sell logs by. */
class LogTest {
  private static final Log LOG =
      new Log(
          "A1",
          Length.ofInches(240),
          DiameterProfile.of(
              Length.ofInches(240), Length.ofInches(14), Length.ofInches(12), Length.ofInches(11)),
          Log.Sources.MEASURED,
          Log.Traits.NONE,
          Log.Wish.ANYWHERE,
          CellRef.ofFile("tally.csv"),
          Map.of("Bin", "3"));

  /** By hand: 12 in off the butt and 48 off the tip leave 180 in from 13.8 to 11.4 in. */
  @Test
  void aPieceHasTheDiametersOfItsOwnEnds() {
    Piece piece = new Piece(LOG, Length.ofInches(12), Length.ofInches(180));
    assertEquals(13.8, piece.butt().inches(), 1e-7);
    assertEquals(12 + 18 / 60.0, piece.mid().inches(), 1e-7);
    assertEquals(11.4, piece.tip().inches(), 1e-7);
    assertEquals(Length.ofInches(48), piece.fallsOff());
    assertEquals(LOG.mid(), piece.at(Length.ofInches(108)));
  }

  @Test
  void aChangeOfOneThingLeavesTheRest() {
    Log.Wish wish = new Log.Wish("N", OptionalInt.of(2));
    assertEquals(wish, LOG.placed(wish).place());
    assertEquals("B2", LOG.tagged("B2").tag());
    assertTrue(LOG.skipped().traits().skip());
    assertEquals(11.5, LOG.thinnedBy(Length.ofInchFraction(1, 2)).mid().inches());
    assertEquals(LOG, LOG.thinnedBy(Length.ZERO));
    assertEquals(LOG, LOG.tagged("B2").tagged("A1"));
    assertNotEquals(LOG, LOG.tagged("B2"));
    assertNotEquals(LOG, LOG.skipped());
    assertEquals(LOG.extra(), LOG.placed(wish).extra());
  }

  @Test
  void otherColumnsKeepTheirOrderAndCannotBeChanged() {
    Map<String, String> extra = new LinkedHashMap<>();
    for (String heading : List.of("Yard", "Bin", "Age", "Notes")) {
      extra.put(heading, "x");
    }
    Log log =
        new Log(
            "A1",
            LOG.length(),
            LOG.profile(),
            LOG.sources(),
            LOG.traits(),
            LOG.place(),
            LOG.origin(),
            extra);
    assertEquals(List.of("Yard", "Bin", "Age", "Notes"), List.copyOf(log.extra().keySet()));
    assertThrows(UnsupportedOperationException.class, () -> log.extra().put("More", ""));
  }

  /** Left, right, sill and head of the second opening; the first is 60 to 96 in and 30 to 70. */
  @ParameterizedTest(name = "{0} to {1} by {2} to {3}")
  @CsvSource({
    "70, 80, 40, 50, true",
    "50, 61, 0, 31, true",
    "96, 120, 30, 70, false",
    "30, 60, 30, 70, false",
    "60, 96, 70, 90, false",
    "60, 96, 0, 30, false",
    "95, 120, 69, 90, true",
  })
  void openingsThatShareRoomOverlap(long left, long right, long sill, long head, boolean shared) {
    Opening first = opening("S", 60, 96, 30, 70);
    Opening other = opening("S", left, right, sill, head);
    assertEquals(shared, first.overlaps(other));
    assertEquals(shared, other.overlaps(first));
    assertFalse(first.overlaps(opening("N", left, right, sill, head)));
  }

  private static Opening opening(String wall, long left, long right, long sill, long head) {
    return new Opening(
        "Window",
        wall,
        Length.ofInches(left),
        Length.ofInches(right - left),
        Length.ofInches(sill),
        Length.ofInches(head),
        false,
        "",
        CellRef.ofFile("job.xlsx"));
  }

  @ParameterizedTest
  @EnumSource(Price.Basis.class)
  void aBasisIsFoundByItsWords(Price.Basis basis) {
    assertEquals(Optional.of(basis), Price.Basis.of(basis.words()));
    assertEquals(Optional.of(basis), Price.Basis.of(" PER " + basis.words().toUpperCase()));
    assertEquals(Optional.empty(), Price.Basis.of("a " + basis.words() + " or so"));
  }

  @ParameterizedTest
  @CsvSource({
    "board foot International 1/4-inch, INTERNATIONAL_QUARTER",
    "board feet Doyle, DOYLE",
    "m³, CUBIC_METRE",
    "ft³, CUBIC_FOOT"
  })
  void aBasisHasOtherSpellings(String words, Price.Basis basis) {
    assertEquals(Optional.of(basis), Price.Basis.of(words));
  }
}
