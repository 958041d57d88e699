package roundbook.report.list;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.units.Length;

/**
 * Lengths written so that nothing of them is lost, for a later revision to read.
 *
 * @param rules the job's rules, for its unit
 */
record ExactText(BuildRules rules) {
  private static final int DECIMALS = 9;

  /** Returns a length as a number of the job's unit. */
  String length(Length length) {
    BigDecimal number = length.decimal(rules.unit(), DECIMALS);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** Returns all stations of a profile as {@code distance=diameter}. */
  String stations(DiameterProfile profile) {
    return profile.stations().stream()
        .map(station -> length(station.fromButt()) + "=" + length(station.diameter()))
        .collect(Collectors.joining("; "));
  }
}
