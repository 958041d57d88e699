package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lengths against decimals of any size, which round by themselves. */
class LengthTest {
  private static final Length SHORT = Length.ofInches(3);
  private static final Length LONG = Length.ofInches(4);

  /** The international inch of 1959 is 25.4 mm exactly. */
  @Test
  void anInchIsTwentyFiveAndFourTenthsOfAMillimetre() {
    assertEquals("25.4mm", Length.ofInches(1).toString());
    assertEquals(Length.of(new BigDecimal("304.8"), LengthUnit.MILLIMETRE), foot());
    assertEquals(Length.ofInches(12), foot());
    assertEquals(Length.ofMillimetres(1000), Length.of(1, LengthUnit.METRE));
    assertThrows(ArithmeticException.class, () -> Length.ofInchFraction(1, 3));
    assertThrows(NumberFormatException.class, () -> Length.parse("3in"));
  }

  @Test
  void comparesByLength() {
    assertTrue(SHORT.isLessThan(LONG));
    assertFalse(LONG.isLessThan(SHORT));
    assertFalse(SHORT.isLessThan(Length.ofInches(3)));
    assertTrue(LONG.isMoreThan(SHORT));
    assertFalse(SHORT.isMoreThan(LONG));
    assertFalse(SHORT.isMoreThan(Length.ofInches(3)));
    assertSame(SHORT, SHORT.least(LONG));
    assertSame(SHORT, LONG.least(SHORT));
    assertSame(LONG, SHORT.most(LONG));
    assertSame(LONG, LONG.most(SHORT));
    assertTrue(Length.ofNanometres(0).isZero());
    assertFalse(Length.ofNanometres(1).isZero());
    assertTrue(Length.ofNanometres(-1).isNegative());
    assertFalse(Length.ZERO.isNegative());
    assertEquals(LONG, LONG.negated().absolute());
    assertEquals(LONG, LONG.absolute());
  }

  @Test
  void isEqualWhereTheNanometresAre() {
    assertEquals(LONG, Length.ofInches(4));
    assertEquals(LONG.hashCode(), Length.ofInches(4).hashCode());
    assertNotEquals(LONG, SHORT);
    assertNotEquals(LONG.hashCode(), SHORT.hashCode());
    assertFalse(LONG.equals((Object) "101.6mm"));
  }

  /** Small products are taken in longs, large ones aren't; both must round like decimals. */
  @Test
  void aRatioIsRoundedAsDecimalsAre() {
    long seed = 20260301;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 20_000; i++) {
      long nanometres = random.nextLong() >> random.nextInt(1, 60);
      long numerator = random.nextInt(1, 1_000_000) >> random.nextInt(20);
      long denominator = 1 + random.nextLong(1_000_000) * (random.nextBoolean() ? 1 : 1_000_000);
      BigInteger exact = floor(nanometres, numerator, denominator);
      if (exact.bitLength() < 63) {
        assertEquals(
            exact.longValueExact(),
            Length.ofNanometres(nanometres).timesRatio(numerator, denominator).nanometres(),
            "seed " + seed + ": " + nanometres + " x " + numerator + "/" + denominator);
      }
    }
  }

  /** Returns the product to the nearest whole number, ties up. */
  private static BigInteger floor(long nanometres, long numerator, long denominator) {
    BigDecimal product = BigDecimal.valueOf(nanometres).multiply(BigDecimal.valueOf(numerator));
    BigDecimal twice = product.multiply(BigDecimal.valueOf(2)).add(BigDecimal.valueOf(denominator));
    return twice
        .divide(
            BigDecimal.valueOf(denominator).multiply(BigDecimal.valueOf(2)), 0, RoundingMode.FLOOR)
        .toBigInteger();
  }

  /** The quick ways with doubles and longs must not differ from decimals in a single nanometre. */
  @Test
  void roundsAsDecimalsDo() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 20_000; i++) {
      double count = (random.nextInt(2_000_000) - 1_000_000) / Math.pow(10, random.nextInt(8));
      for (LengthUnit unit : LengthUnit.values()) {
        BigDecimal exact = new BigDecimal(Double.toString(count));
        BigDecimal scaled = exact.multiply(BigDecimal.valueOf(unit.nanometres()));
        long wanted = scaled.setScale(0, RoundingMode.HALF_UP).longValueExact();
        assertEquals(wanted, Length.of(count, unit).nanometres(), count + " " + unit);
      }
      long sum = random.nextLong(-1L << 42, 1L << 42);
      long step = random.nextLong(1, 30_000_000);
      int parts = 1 + random.nextInt(5);
      Length mean = Length.ofNanometres(sum).meanRoundedTo(parts, Length.ofNanometres(step));
      assertEquals(steps(sum, step * parts) * step, mean.nanometres(), sum + " / " + step);
    }
  }

  /** Rounds a quotient to six decimals, then to the nearest whole number, ties up. */
  private static long steps(long sum, long divisor) {
    MathContext digits = new MathContext(60, RoundingMode.FLOOR);
    BigDecimal half = new BigDecimal("0.0000005");
    BigDecimal quotient = BigDecimal.valueOf(sum).divide(BigDecimal.valueOf(divisor), digits);
    BigDecimal six = quotient.add(half).setScale(6, RoundingMode.FLOOR);
    return six.add(new BigDecimal("0.5")).setScale(0, RoundingMode.FLOOR).longValueExact();
  }

  @Test
  void tiesGoUpBelowNothingToo() {
    Length half = Length.ofInchFraction(1, 2);
    assertEquals(Length.ofInchFraction(29, 2), Length.ofInchFraction(57, 4).roundedTo(half));
    assertEquals(Length.ofInchFraction(-28, 2), Length.ofInchFraction(-57, 4).roundedTo(half));
    assertEquals(Length.ofNanometres(4), Length.ofNanometres(7).meanRoundedTo(2, Length.ZERO));
    assertEquals(Length.ofNanometres(-3), Length.ofNanometres(-7).dividedBy(2));
  }

  @Test
  void aLengthTooLargeIsRefused() {
    Length most = Length.ofNanometres(Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> most.plus(Length.ofNanometres(1)));
    assertThrows(ArithmeticException.class, () -> most.times(2));
    assertThrows(ArithmeticException.class, () -> most.timesRatio(3, 2));
    assertThrows(ArithmeticException.class, () -> most.negated().minus(LONG));
  }

  private static Length foot() {
    return Length.of(1, LengthUnit.FOOT);
  }
}
