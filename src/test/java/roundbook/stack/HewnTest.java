package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/** Diameters as hewn in place of the tally's, worked out by hand. */
class HewnTest {
  /** A log of 20 ft, 16, 13 and 11 in thick; of it 18 ft from 1 ft from the butt. */
  private static final Piece PIECE =
      new Piece(
          Jobs.log("L1", Length.ofInches(240), "16", "13", "11"),
          Length.ofInches(12),
          Length.ofInches(216));

  @ParameterizedTest(name = "butt {0}, mid {1}, tip {2}")
  @CsvSource({
    ", , , 15.7, 14.35, 13, 12.1, 11.2",
    ", 12, , 14.7, 13.35, 12, 11.1, 10.2",
    "15, , , 15, 14, 13, 12.1, 11.2",
    ", , 12, 15.7, 14.35, 13, 12.5, 12",
    "15, 12.5, 11, 15, 13.75, 12.5, 11.75, 11",
    "15, 12.5, , 15, 13.75, 12.5, 11.6, 10.7"
  })
  void theProfileFollowsWhatWasMeasured(
      String butt,
      String mid,
      String tip,
      double d0,
      double d54,
      double d108,
      double d162,
      double d216) {
    Piece hewn = new Hewn(inches(butt), inches(mid), inches(tip)).of(PIECE);
    double[] wanted = {d0, d54, d108, d162, d216};
    for (int index = 0; index < wanted.length; index++) {
      Length at = hewn.at(Length.ofInches(54L * index));
      assertEquals(wanted[index], at.inches(), 1e-6, "at " + 54 * index + " in");
    }
  }

  @Test
  void theLogStaysWhatItIsButForItsDiameters() {
    Piece hewn =
        new Hewn(Optional.empty(), Optional.of(Length.ofInches(12)), Optional.empty()).of(PIECE);
    assertEquals(PIECE.fallsOff(), hewn.fallsOff());
    assertEquals(PIECE.log().tag(), hewn.log().tag());
    assertEquals(Log.Source.MEASURED, hewn.log().sources().mid());
    assertEquals(Length.ofInches(12), hewn.mid());
  }

  private static Optional<Length> inches(String text) {
    return Optional.ofNullable(text).map(Jobs::inches);
  }
}
