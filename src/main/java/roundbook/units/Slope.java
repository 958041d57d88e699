package roundbook.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A slope as carpenters give it, one of rise in a run.
 *
 * @param run how far along for one of rise, above zero
 */
public record Slope(BigDecimal run) {
  private static final Pattern FORM =
      Pattern.compile("(?:1\\s*(?::|in|/)\\s*)?(\\d+(?:\\.\\d+)?)", Pattern.CASE_INSENSITIVE);

  /** Checks that the run is above zero. */
  public Slope {
    if (run.signum() <= 0) {
      throw new IllegalArgumentException("a slope's run is above zero, not " + run);
    }
  }

  /** Reads {@code 1:3}, {@code 1 in 3}, {@code 1/3} or the bare run {@code 3}; empty otherwise. */
  public static Optional<Slope> parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    BigDecimal run = new BigDecimal(matcher.group(1));
    return run.signum() > 0 ? Optional.of(new Slope(run)) : Optional.empty();
  }

  /** Returns how far the slope drops over a length, to the nearest nanometre. */
  public Length dropOver(Length along) {
    int scale = Math.max(0, run.scale());
    return along.timesRatio(
        BigDecimal.ONE.movePointRight(scale).longValueExact(),
        run.movePointRight(scale).longValueExact());
  }

  /** Returns rise over run as a binary number. */
  public double ratio() {
    return 1 / run.doubleValue();
  }

  /** Returns the form {@code 1:3}. */
  @Override
  public String toString() {
    return "1:" + run.stripTrailingZeros().toPlainString();
  }
}
