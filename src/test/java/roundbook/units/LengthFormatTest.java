package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0       | 0      | 0' 0\"     | 0",
        "0.0625  | 1/16   | 0' 0 1/16\"  | 0.0625",
        "3.5     | 3 1/2  | 0' 3 1/2\" | 3.5",
        "3.03125 | 3 1/16 | 0' 3 1/16\" | 3.03125",
        "12      | 12     | 1' 0\"     | 12",
        "294     | 294    | 24' 6\"    | 294",
        "148.5   | 148 1/2| 12' 4 1/2\"| 148.5",
        "-1.5    | -1 1/2 | -0' 1 1/2\" | -1.5",
        "-200    | -200   | -16' 8\"   | -200",
        "0.3333333333 | 5/16 | 0' 0 5/16\" | 0.333333"
      })
  void inchJobsPrintFractionsAndFeetInches(
      BigDecimal inches, String mark, String feetInches, String decimal) {
    LengthFormat format = LengthFormat.forJob(LengthUnit.INCH, Length.ofInchFraction(1, 16));
    Length length = Length.of(inches, LengthUnit.INCH);
    assertEquals(mark, format.mark(length));
    assertEquals(feetInches, format.feetInches(length));
    assertEquals(decimal, format.decimal(length));
  }

  @ParameterizedTest
  @CsvSource({
    "MILLIMETRE, 1, 88.9, 89, 89 mm, 88.9",
    "MILLIMETRE, 5, 7452.5, 7455, 7455 mm, 7452.5",
    "CENTIMETRE, 1, 88.9, 8.9, 8.9 cm, 8.89",
    "CENTIMETRE, 1, 7450, 745, 745 cm, 745",
    "CENTIMETRE, 10, 7454, 745, 745 cm, 745.4",
    "METRE, 1, 7450, 7.45, 7.45 m, 7.45"
  })
  void metricJobsPrintStepsOfTheirOwnUnit(
      LengthUnit unit, long step, BigDecimal mm, String mark, String along, String decimal) {
    LengthFormat format = LengthFormat.forJob(unit, Length.ofMillimetres(step));
    Length length = Length.of(mm, LengthUnit.MILLIMETRE);
    assertEquals(mark, format.mark(length));
    assertEquals(along, format.feetInches(length));
    assertEquals(decimal, format.decimal(length));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 3.55, 3.6", "0.25, 3.6, 3 1/2", "0, 3.515625, 3 33/64", "0, 3.1, 3.1"})
  void aStepThatIsNoFractionPrintsDecimals(BigDecimal step, BigDecimal inches, String mark) {
    LengthFormat format = LengthFormat.forJob(LengthUnit.INCH, Length.of(step, LengthUnit.INCH));
    assertEquals(mark, format.mark(Length.of(inches, LengthUnit.INCH)));
  }

  @Test
  void aDecimalCommaStandsInMetricNumbersOnly() {
    LengthFormat metric = LengthFormat.forJob(LengthUnit.CENTIMETRE, Length.ofMillimetres(1));
    Length length = Length.ofMillimetres(374);
    assertEquals("37.4", metric.mark(length));
    assertEquals("37,4", metric.withDecimalMark(',').mark(length));
    assertEquals("37,4 cm", metric.withDecimalMark(',').feetInches(length));
    assertEquals("cm", metric.symbol());
    assertEquals("37.4", metric.withDecimalMark(',').decimal(length), "plain tables keep points");
  }
}
