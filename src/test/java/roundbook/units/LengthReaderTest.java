package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every spelling of a length is read exactly, and what is printed is read back. */
class LengthReaderTest {
  private static final LengthReader FEET = new LengthReader(LengthUnit.FOOT, false);
  private static final LengthReader INCHES = new LengthReader(LengthUnit.INCH, false);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "12' | 144",
        "12'4\" | 148",
        "12'-4\" | 148",
        "12 ft 4 in | 148",
        "12ft | 144",
        "12'-4 1/2\" | 148.5",
        "12\u2032 4\u2033 | 148",
        "148\" | 148",
        "12 feet 4 inches | 148",
        "12.5 | 150",
        "16 1/2 | 198",
        "12'4 | 148",
        "12' 4½\" | 148.5",
        "12 ft. 4 in. | 148",
        "12'0\" | 144",
        "148 in | 148",
        "4.9m | 192.913386",
        "490 cm | 192.913386",
        "4 m 90 | 192.913386",
        "12’ 4” | 148",
        "12' 4'' | 148",
        ".5 | 6",
        "1e1 | 120"
      })
  void readsLengths(String text, BigDecimal inches) {
    assertEquals(inches.doubleValue(), FEET.read(text).orElseThrow().length().inches(), 5e-7);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "14 3/4 | 14.75",
        "14-3/4 | 14.75",
        "14¾ | 14.75",
        "14\"3/4 | 14.75",
        "14.75\" | 14.75",
        "14 3/4\" | 14.75",
        "14\u2060 ¾″ | 14.75",
        "14 6/8 | 14.75",
        "13 1\u20448″ | 13.125",
        "13\"1/8 | 13.125",
        "12 1/2 in. | 12.5",
        "3/4 | 0.75",
        "⅞ | 0.875",
        "372mm | 14.645669",
        "31.4cm | 12.362205",
        "31,4 cm | 12.362205",
        "12 5/4 | 13.25",
        "~12 | 12",
        "12? | 12",
        "12,5 | 12.5"
      })
  void readsDiameters(String text, BigDecimal inches) {
    assertEquals(inches.doubleValue(), INCHES.read(text).orElseThrow().length().inches(), 5e-7);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"12-14", "abc", "", "10-Mar", "3/0", "--", "12'4'5", "1.2.3", "12 in 3 ft"})
  void refusesWhatIsNoLength(String text) {
    assertTrue(INCHES.read(text).isEmpty(), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"12 5/4", "~12", "12?", "ca. 12"})
  void saysWhatIsDoubtful(String text) {
    assertTrue(!INCHES.read(text).orElseThrow().doubt().isEmpty(), text);
  }

  @Test
  void readsBackEveryPrintedForm() {
    long seed = 20260101;
    SplittableRandom random = new SplittableRandom(seed);
    LengthFormat inch = LengthFormat.forJob(LengthUnit.INCH, Length.ofInchFraction(1, 16));
    LengthFormat metric = LengthFormat.forJob(LengthUnit.MILLIMETRE, Length.ofMillimetres(1));
    LengthReader millimetres = new LengthReader(LengthUnit.MILLIMETRE, false);
    for (int i = 0; i < 20_000; i++) {
      Length length = Length.ofNanometres(random.nextLong(20_000_000_000L));
      Length sixteenths = length.roundedTo(Length.ofInchFraction(1, 16));
      Length whole = length.roundedTo(Length.ofMillimetres(1));
      String seen = "seed " + seed + ", " + length;
      assertEquals(sixteenths, INCHES.read(inch.mark(length)).orElseThrow().length(), seen);
      assertEquals(sixteenths, INCHES.read(inch.feetInches(length)).orElseThrow().length(), seen);
      assertEquals(whole, millimetres.read(metric.mark(length)).orElseThrow().length(), seen);
      assertEquals(whole, INCHES.read(metric.feetInches(length)).orElseThrow().length(), seen);
      assertEquals(length, Length.parse(length.toString()), seen);
    }
  }
}
