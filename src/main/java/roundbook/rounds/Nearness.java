package roundbook.rounds;

import java.util.Optional;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * How near the best a choice is, by a score that no choice of its logs for its rounds is under.
 *
 * <p>Gaps, faults and waste add up to that score. So where faults and waste weigh no more than in
 * this choice, the squares of what gaps are off add up to the rest of it at least, whatever the
 * choice.
 *
 * @param percent by how many hundredths of its score another choice could be better at most,
 *     rounded up: 0 where that none is better is proven, 100 where nothing is known
 * @param gapOff what its gaps are off, as the root of the mean square, at both inside faces and the
 *     middle of every joint; zero where there is no joint
 * @param better what another choice could be better by at most, as if it were gaps alone: likewise
 *     the root of the mean square
 * @param ended whether the reckoning ended by itself, so that more time would tell no more
 */
public record Nearness(int percent, Length gapOff, Length better, boolean ended) {
  /** By what share of its score another choice may be better for none to count as better. */
  private static final double PROVEN = 1e-4;

  /**
   * Returns how near the best a choice is.
   *
   * @param least a score that no choice is under, in square inches
   * @param ended whether the reckoning ended by itself
   */
  static Nearness of(Choice choice, double least, boolean ended) {
    Choice.Score score = choice.score();
    double share = 1 - least / score.total();
    boolean proven = share < PROVEN || score.total() == 0;
    return new Nearness(
        proven ? 0 : (int) Math.ceil(100 * share),
        off(choice, score.evenness()),
        off(choice, score.total() - least),
        ended);
  }

  private static Length off(Choice choice, double squares) {
    int joints = choice.courses().stream().skip(1).mapToInt(each -> each.places().size()).sum();
    double mean = joints == 0 ? 0 : Math.max(0, squares) / (3 * joints);
    return Length.of(StrictMath.sqrt(mean), LengthUnit.INCH);
  }

  /** Returns the hundredths that another choice could be better by; empty if nothing is known. */
  public Optional<Integer> known() {
    return Optional.of(percent).filter(each -> each < 100);
  }

  /** Returns what gaps are off at least in any choice whose faults and waste weigh no more. */
  public Length leastGapOff() {
    double squares = Math.max(0, squared(gapOff) - squared(better));
    return Length.of(StrictMath.sqrt(squares), LengthUnit.INCH);
  }

  /**
   * Returns whether what another choice could be better by is less than what diameters that are off
   * add to the squares of gaps: half their own square, for a gap takes half of each of two.
   *
   * @param diameters what diameters are off by chance, as a standard deviation
   */
  public boolean isLittle(Length diameters) {
    return !better.isZero() && squared(better) < squared(diameters) / 2;
  }

  private static double squared(Length length) {
    return length.inches() * length.inches();
  }
}
