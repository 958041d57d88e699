package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.DiameterProfile;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.problem.CellRef;
import roundbook.units.Length;

class RoundProfileTest {
  /**
   * A log all of whose excess is cut off the butt ends where its tip does, and the sum of cut and
   * length may be larger than the log by a rounding.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 254, 762_001, 1_016_003, 25_400_001})
  void aPieceThatReachesToTheTipHasTheLogsStations(long excess) {
    for (long sixteenth = 1; sixteenth <= 4000; sixteenth++) {
      Length cut = Length.ofNanometres(excess);
      Length trimmed = Length.ofInchFraction(sixteenth, 16);
      Length whole = trimmed.plus(cut);
      Length twelve = Length.ofInches(12);
      DiameterProfile profile =
          DiameterProfile.of(whole, Length.ofInches(14), twelve, Length.ofInches(11));
      Log log =
          new Log(
              "L1",
              whole,
              profile,
              Log.Sources.MEASURED,
              Log.Traits.NONE,
              Log.Wish.ANYWHERE,
              CellRef.ofFile("made-up.csv"),
              Map.of());
      RoundProfile read = RoundProfile.inchesOf(new Piece(log, cut, trimmed));
      assertEquals(trimmed.inches(), read.length(), 1e-9);
      assertEquals(11, read.at(read.end()), 1e-9);
    }
  }
}
