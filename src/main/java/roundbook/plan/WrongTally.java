package roundbook.plan;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * What diameters that are off do to the gaps of a plan, before one log is cut.
 *
 * <p>A gap is a rise less half of two diameters. Where every diameter is off by chance, normally
 * spread with a standard deviation σ, a gap is off by {@code s = σ / √2}, and of the plan's gaps G
 * as many are outside their limits as {@code Σ Φ((least − G) / s) + Φ((G − most) / s)}. Gaps of one
 * joint share their logs; that moves no mean. What a changed size of a round does besides is left
 * out (our own reckoning).
 *
 * @param spread σ, how far a diameter is off
 * @param gaps how many gaps the plan has: three in every joint
 * @param outside how many of them are expected outside the limits
 */
public record WrongTally(Length spread, int gaps, double outside) {
  /** Beyond so many standard deviations nothing is left that a sum of gaps would show. */
  private static final double FAR = 7;

  /** Returns what three kinds of tally do: measured as hewn, measured in the yard, guessed. */
  public static List<WrongTally> usual(Stack stack) {
    return spreads(stack.rules()).map(spread -> of(stack, spread)).toList();
  }

  /** Returns how far diameters are off that were measured as hewn. */
  public static Length asHewn(BuildRules rules) {
    return spreads(rules).findFirst().orElseThrow();
  }

  private static Stream<Length> spreads(BuildRules rules) {
    return rules.metric()
        ? Stream.of(3L, 6L, 13L).map(Length::ofMillimetres)
        : Stream.of(8L, 4L, 2L).map(part -> Length.ofInchFraction(1, part));
  }

  /** Returns what a spread of the diameters does to the gaps of a stack. */
  public static WrongTally of(Stack stack, Length spread) {
    List<Length> gaps =
        stack.joints().stream()
            .flatMap((Joint joint) -> Stream.of(joint.left(), joint.middle(), joint.right()))
            .toList();
    return of(gaps, spread, stack.rules());
  }

  /** Returns what a spread of the diameters does to gaps, by the limits of the rules. */
  static WrongTally of(List<Length> gaps, Length spread, BuildRules rules) {
    double least = rules.length(Setting.GAP_LEAST).inches();
    double most = rules.length(Setting.GAP_MOST).inches();
    double off = spread.inches() / StrictMath.sqrt(2);
    double outside =
        gaps.stream()
            .mapToDouble(Length::inches)
            .map(gap -> below((least - gap) / off) + below((gap - most) / off))
            .sum();
    return new WrongTally(spread, gaps.size(), outside);
  }

  /**
   * Returns Φ(z), the share of a normal spread below z, by the series {@code ½ + φ(z) (z + z³/3 +
   * z⁵/(3·5) + …)} (G. Marsaglia, Evaluating the normal distribution, Journal of Statistical
   * Software 11, 2004; from memory).
   */
  static double below(double z) {
    if (StrictMath.abs(z) > FAR) {
      return z < 0 ? 0 : 1;
    }
    double term = z;
    double sum = z;
    for (int odd = 3; StrictMath.abs(term) > 1e-17; odd += 2) {
      term *= z * z / odd;
      sum += term;
    }
    return 0.5 + sum * StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * StrictMath.PI);
  }
}
