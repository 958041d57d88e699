package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.units.Doubt.DoubtKind;

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
        "13.050705333535419 | 156.608464",
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
        "1e1 | 120",
        "1E+1 | 120",
        "12'4\"1/2 | 148.5",
        "12 ' 4 \" | 148",
        "3 feet and 4 inches | 40",
        "12 pi 4 po | 148",
        "12 Fuß 4 Zoll | 148",
        "12 fot 4 tum | 148",
        "12 jalkaa 4 tuumaa | 148",
        "12 pies y 4 pulgadas | 148",
        "12 pieds et 4 pouces | 148",
        "4m90 | 192.913386",
        "4,90 m | 192.913386",
        "4 m 90 cm | 192.913386",
        "4 900 mm | 192.913386",
        "4\u202F900 mm | 192.913386",
        "4.900,0 mm | 192.913386",
        "4,900.0 mm | 192.913386",
        "1,234.5 | 14814",
        "１２ | 144",
        "12.5 | 150",
        "13.050705333535419 | 156.608464",
        "12. | 144",
        "+12 | 144",
        "-12 | -144"
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
        "12,5 | 12.5",
        "12¹⁄₂ | 12.5",
        "12 ⅜″ | 12.375",
        "12 - 3/4 | 12.75",
        "12‑3/4 | 12.75",
        "12 & 3/4 | 12.75",
        "12 1 / 2 in | 12.5",
        "12 Zoll 1/2 | 12.5",
        "12 in. 1/2 | 12.5",
        "31 cm 4 mm | 12.362205",
        "12 1/2'' | 12.5",
        "1/3 | 0.333333"
      })
  void readsDiameters(String text, BigDecimal inches) {
    assertEquals(inches.doubleValue(), INCHES.read(text).orElseThrow().length().inches(), 5e-7);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12-14",
        "abc",
        "",
        "10-Mar",
        "3/0",
        "--",
        "12'4'5",
        "1.2.3",
        "12 in 3 ft",
        "12 5",
        "12 1/2 1/4",
        "12 in ob",
        "12.5' 4\"",
        "1O",
        "12 1/0",
        "'",
        "\"",
        "1e99",
        "999999999999",
        "12 to 14",
        "3/4/2004",
        "e5",
        "12e",
        "1..2",
        "1,2,3",
        "=12",
        "½½"
      })
  void refusesWhatIsNoLength(String text) {
    assertTrue(INCHES.read(text).isEmpty(), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 5/4",
        "~12",
        "12?",
        "ca. 12",
        "12 (?)",
        "about 12",
        "≈12",
        "12 est.",
        "±12",
        "1,250",
        "12' 14\""
      })
  void saysWhatIsDoubtful(String text) {
    assertTrue(INCHES.read(text).orElseThrow().doubt().isPresent(), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"4,90 | 4900", "4.900,5 | 4900500", "37,2 cm | 372", "1,250 | 1250", "4,9 m | 4900"})
  void aDecimalCommaIsNeverAGroup(String text, BigDecimal millimetres) {
    LengthReader metres = new LengthReader(LengthUnit.METRE, true);
    assertEquals(
        Length.of(millimetres, LengthUnit.MILLIMETRE), metres.read(text).orElseThrow().length());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1'0\" | 12",
        "0' 11\" | 11",
        "2e+1 | 20",
        "2e-1 | 0.2",
        "25.e1 | 250",
        "999 999 mm | 39370.03937",
        "1 234 567 mm |",
        "4 90 mm |",
        "12\" 3/3 |",
        "12' 11\" 1/2 | 155.5",
        "12' 3\" 4 |",
        "10000000 | 10000000",
        "10000001 |",
        "12\u2010 1/2 | 12.5",
        "12\u2015 1/2 | 12.5",
        "\u2080\u2089 | 9",
        "\u06F1\u06F2 | 12",
        "\u215E | 0.875",
        "\u2150 | 0.142857",
        "\u2189 | 0",
        "\u00BE | 0.75",
        "1,234,567 | 1234567",
        "1.234.567,5 | 1234567.5",
        "12 , 1/2 | 12.5",
        "12 and 1/2 | 12.5"
      })
  void readsTheEdgesOfEveryForm(String text, BigDecimal inches) {
    double found = INCHES.read(text).map(each -> each.length().inches()).orElse(Double.NaN);
    assertEquals(inches == null ? Double.NaN : inches.doubleValue(), found, 5e-5, text);
  }

  @Test
  void tellsADoubtOnlyWhereThereIsOne() {
    assertTrue(INCHES.read("12' 11\"").orElseThrow().doubt().isEmpty());
    assertEquals(
        Optional.of(new Doubt(DoubtKind.LARGE_PART, "ft", "")),
        INCHES.read("12' 12\"").orElseThrow().doubt());
    assertTrue(INCHES.read("12 3/4").orElseThrow().doubt().isEmpty());
    assertEquals(
        Optional.of(Doubt.of(DoubtKind.LARGE_FRACTION)),
        INCHES.read("12 4/4").orElseThrow().doubt());
    assertTrue(INCHES.read("5/4").orElseThrow().doubt().isEmpty());
    assertTrue(INCHES.read("1,234,500").orElseThrow().doubt().isEmpty());
    assertTrue(INCHES.read("1,250.5").orElseThrow().doubt().isEmpty());
    assertEquals(
        Optional.of(new Doubt(DoubtKind.THOUSANDS, "1,250", "1250")),
        INCHES.read("1,250").orElseThrow().doubt());
    assertEquals(new BigDecimal("12.5"), INCHES.number("12.5").orElseThrow());
    assertTrue(INCHES.number("12 ft").isEmpty());
    assertEquals(
        Length.of(12, LengthUnit.FOOT),
        new LengthReader(LengthUnit.FOOT, false).read("12").orElseThrow().length());
  }

  @ParameterizedTest
  @CsvSource({
    "12-14, true, false, false",
    "12 to 14, true, false, false",
    "16-6, true, false, false",
    "12..14, true, false, false",
    "14-3/4, false, false, false",
    "10-Mar, false, true, false",
    "3/4/2004, false, true, false",
    "4. März, false, true, false",
    "2004-10-03, true, true, false",
    "n/a, false, false, true",
    "--, false, false, true",
    "?, false, false, true",
    "12, false, false, false"
  })
  void saysWhyATextIsNoLength(String text, boolean range, boolean date, boolean nothing) {
    assertEquals(range, INCHES.isRange(text));
    assertEquals(date, LengthReader.isDateLike(text));
    assertEquals(nothing, LengthReader.isNothing(text));
  }

  @Test
  void neverThrowsWhateverStandsInTheCell() {
    long seed = 20260102;
    SplittableRandom random = new SplittableRandom(seed);
    String letters = "0123456789  .,'\"/-~?eftinmc½¾\u2060\u2044\u2033éß²₂()+";
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(12); length >= 0; length--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      String seen = text.toString();
      assertDoesNotThrow(() -> INCHES.read(seen), () -> "seed " + seed + ": " + seen);
      INCHES.isRange(seen);
      INCHES.number(seen);
    }
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
      assertReadBack(length, LengthUnit.CENTIMETRE, Length.ofMillimetres(1));
      assertReadBack(length, LengthUnit.METRE, Length.ofMillimetres(5));
      assertReadBack(length, LengthUnit.INCH, Length.ofInchFraction(1, 64));
      assertReadBack(length.negated(), LengthUnit.INCH, Length.ofInchFraction(1, 8));
      assertReadBack(length, LengthUnit.INCH, Length.ofNanometres(2_540_000));
      assertEquals(length, Length.parse(length.toString()), seen);
    }
  }

  private static void assertReadBack(Length length, LengthUnit unit, Length step) {
    LengthFormat format = LengthFormat.forJob(unit, step);
    Length shown = length.roundedTo(step);
    LengthReader reader = new LengthReader(unit, false);
    for (String text : new String[] {format.mark(length), format.feetInches(length)}) {
      assertEquals(shown, reader.read(text).orElseThrow(() -> new AssertionError(text)).length());
    }
    Length decimal = reader.read(format.decimal(shown)).orElseThrow().length();
    assertTrue(decimal.minus(shown).absolute().isLessThan(Length.ofNanometres(13)));
  }
}
