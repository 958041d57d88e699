package roundbook.plan;

import java.util.List;
import roundbook.problem.Phrase;
import roundbook.problem.Value;

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
    String section, String item, double amount, String unit, List<Value> values) {
  /** Copies the list. */
  public Quantity {
    values = List.copyOf(values);
  }

  /** Returns what it is with its values, as a list of differences carries them. */
  public Phrase phrase() {
    Phrase phrase = Phrase.of(item);
    for (int each = 0; each < values.size(); each++) {
      phrase = phrase.with(String.valueOf(each), values.get(each));
    }
    return phrase;
  }
}
