package roundbook.notch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;
import roundbook.units.Slope;

/** The corner from an offcut: values reckoned apart, by hand and by a script of our own. */
class TrialCornerTest {
  private static final Length SIX = Length.ofInches(6);

  /** Size 13, gap 1, slope 1:3, logs 6 in thick, 3 in past the corner. */
  private static final TrialCorner CORNER = corner(SIX, SIX);

  private static TrialCorner corner(Length thickness, Length crossing) {
    Length sixteenth = Length.ofInchFraction(1, 16);
    Notch notch =
        new Notch(
            Length.ofInches(13), Length.ofInches(1), new Slope(BigDecimal.valueOf(3)), sixteenth);
    return new TrialCorner(notch, thickness, crossing, Length.ofInches(3), Length.ofInches(13));
  }

  @Test
  void centreLinesAndNecksRiseByANeck() {
    assertEquals(
        List.of(3.0, 10.0, 17.0, 24.0),
        IntStream.range(0, 4).mapToObj(i -> CORNER.centre(i).inches()).toList());
    assertEquals(
        List.of(7.0, 14.0, 21.0, 28.0),
        IntStream.range(0, 4).mapToObj(i -> CORNER.neckTop(i).inches()).toList());
  }

  @Test
  void theGapIsWhatTheOffcutLeaves() {
    assertEquals(1.75, CORNER.gap(Length.ofInchFraction(49, 4)).inches());
    assertEquals(1.0, CORNER.gap(Length.ofInches(13)).inches());
  }

  @Test
  void blocksAndFalls() {
    assertEquals(22, CORNER.block(false).inches());
    assertEquals(88, CORNER.offcut().inches());
    assertEquals(2, CORNER.topFall(true).inches());
    assertEquals(9, CORNER.neck(true).inches());
    assertEquals(3, CORNER.lowerFall(true).inches());
  }

  /** Walls of 6 and 9 in: a block's neck is as long as the other wall is thick, and 3 in. */
  @Test
  void wallsOfTwoThicknesses() {
    TrialCorner corner = corner(SIX, Length.ofInches(9));
    assertEquals(12 + 13, corner.block(false).inches());
    assertEquals(9 + 13, corner.block(true).inches());
    assertEquals(2 * 25 + 2 * 22, corner.offcut().inches());
    assertEquals(2, corner.topFall(false).inches());
    assertEquals(3, corner.topFall(true).inches());
    assertEquals(4, corner.lowerFall(false).inches());
    assertEquals(3, corner.lowerFall(true).inches());
  }

  /** Marks a sixteenth off: two marks a contact, squares added. */
  @ParameterizedTest
  @CsvSource({"1, 0.088", "3, 0.153", "15, 0.342"})
  void marksThatAreOffAddUp(int contacts, double out) {
    assertEquals(out, TrialCorner.heightOut(1.0 / 16, contacts), 0.0005);
  }
}
