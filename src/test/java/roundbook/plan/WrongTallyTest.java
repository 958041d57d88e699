package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** What diameters that are off do to the gaps. */
class WrongTallyTest {
  private static final BuildRules RULES = PlanFixtures.inches().job(1).rules();

  /** The 84 gaps of a plan of the sample cabin; limits 1/2 and 1 3/4 in. */
  private static List<Length> cabin() throws IOException {
    String name = "gaps-of-a-cabin.csv";
    try (InputStream in = WrongTallyTest.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .skip(1)
          .flatMap(line -> Stream.of(line.split(",")))
          .map(gap -> Length.of(new BigDecimal(gap), LengthUnit.INCH))
          .toList();
    }
  }

  /** Counted and summed by a script of our own; that the gaps are these is checked first. */
  @Test
  void theSamplesGaps() throws IOException {
    List<Double> gaps = cabin().stream().map(Length::inches).toList();
    assertEquals(84, gaps.size());
    double squares = gaps.stream().mapToDouble(gap -> (gap - 1) * (gap - 1)).sum();
    assertEquals(0.1018, Math.sqrt(squares / gaps.size()), 0.00005);
    assertEquals(0.6615, gaps.stream().min(Double::compare).orElseThrow(), 0.00005);
    assertEquals(1.1664, gaps.stream().max(Double::compare).orElseThrow(), 0.00005);
  }

  /** The same script's sums, by the error function of its own language's library. */
  @ParameterizedTest
  @CsvSource({"1, 0.00", "2, 0.04", "4, 0.91", "6, 4.26", "8, 9.73"})
  void moreGapsAreOutTheWorseTheTally(int sixteenths, double outside) throws IOException {
    WrongTally tally = WrongTally.of(cabin(), Length.ofInchFraction(sixteenths, 16), RULES);
    assertEquals(outside, tally.outside(), 0.005);
    assertEquals(84, tally.gaps());
  }

  /** Against the normal distribution of Apache Commons Math. */
  @Test
  void theNormalShareIsTheLibrarys() {
    NormalDistribution normal = new NormalDistribution();
    for (double z = -9; z <= 9; z += 0.0625) {
      assertEquals(normal.cumulativeProbability(z), WrongTally.below(z), 2e-12, "z " + z);
    }
  }

  /** Logs drawn anew 4,000 times, each diameter off by chance: as many gaps are out as expected. */
  @Test
  void gapsOfLogsDrawnAtRandom() throws IOException {
    List<Length> gaps = cabin();
    SplittableRandom random = new SplittableRandom(19);
    int out = 0;
    int draws = 4000;
    for (int draw = 0; draw < draws; draw++) {
      for (Length gap : gaps) {
        double now = gap.inches() - (random.nextGaussian() + random.nextGaussian()) * 0.5 / 2;
        out += now < 0.5 || now > 1.75 ? 1 : 0;
      }
    }
    double expected = WrongTally.of(gaps, Length.ofInchFraction(1, 2), RULES).outside();
    assertEquals((double) out / draws, expected, 0.25, "seed 19");
    assertTrue(out > 0);
  }
}
