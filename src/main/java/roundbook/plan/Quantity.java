package roundbook.plan;

import java.util.List;

/**
 * One line of what is bought, built in, or left over.
 *
 * <p>What it is called and how it was reckoned stand in the bundle under its item, with the values
 * filled in, so that each language says it in its own words.
 *
 * @param section the part of the list, such as {@code chinking} or {@code offcuts}
 * @param item what it is, such as {@code joint_run}
 * @param amount how much
 * @param unit its unit: ft, ft2, ft3, gal, lb, bd ft, count or m, m2, m3, L, kg
 * @param values what is filled into its words
 */
public record Quantity(
    String section, String item, double amount, String unit, List<String> values) {
  /** Copies the list. */
  public Quantity {
    values = List.copyOf(values);
  }
}
