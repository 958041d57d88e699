package roundbook.sheet.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellNumberTest {
  private static final long SEED = 20_260_101;

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "3, 3",
    "-12, -12",
    "3.5, 3.5",
    "2.5625, 2.5625",
    "0.1, 0.1",
    "0.30000000000000004, 0.30000000000000004",
    "1e-7, 1E-7",
    "2e23, 2E+23",
    "1e15, 1E+15",
    "123456789.123, 123456789.123"
  })
  void numbersAreWrittenShort(double number, String text) {
    assertEquals(text, CellNumber.text(number));
  }

  @Test
  void everyNumberReadsBackAsItself() {
    Random random = new Random(SEED);
    for (int count = 0; count < 20_000; count++) {
      double number = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(number)) {
        String text = CellNumber.text(number);
        assertEquals(number, Double.parseDouble(text), "seed " + SEED + ", number " + count);
      }
    }
  }

  /** Few decimals are told by whole numbers; the digits must be those that fifteen would give. */
  @Test
  void fewDecimalsAreWrittenAsFifteenDigitsAre() {
    Random random = new Random(SEED);
    for (int count = 0; count < 20_000; count++) {
      double part = random.nextBoolean() ? Math.pow(10, random.nextInt(8)) : 1 << random.nextInt(9);
      double number = (random.nextInt(2_000_001) - 1_000_000) / part;
      BigDecimal fifteen = new BigDecimal(number).round(new MathContext(15));
      if (fifteen.signum() != 0 && fifteen.doubleValue() == number && number != Math.rint(number)) {
        String wanted = fifteen.stripTrailingZeros().toString();
        assertEquals(wanted, CellNumber.text(number), "seed " + SEED + ", number " + count);
      }
    }
  }
}
