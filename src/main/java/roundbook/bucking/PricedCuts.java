package roundbook.bucking;

import java.util.ArrayList;
import java.util.List;
import roundbook.bucking.Bole.Stretch;

/**
 * The best pieces of one stem when each length has a price: the dynamic programme of bucking.
 *
 * <p>{@code V(x) = max(V(x − 1), max over lengths of V(x − length − kerf) + price)} with {@code
 * V(0) = 0}, on a stretch that a kerf is added to, for the last piece needs none after it.
 *
 * <p>Source: N. Pnevmaticos and S. H. Mann, Dynamic programming in tree bucking, Forest Products
 * Journal 22 (1972).
 */
public final class PricedCuts {
  private PricedCuts() {}

  /**
   * A length that is asked for.
   *
   * @param raw steps from saw cut to saw cut
   * @param price what a piece of it is worth
   */
  public record Priced(int raw, double price) {}

  /**
   * A piece along the stretch.
   *
   * @param from steps from the stem's butt
   * @param raw its length
   */
  public record Laid(int from, int raw) {}

  /**
   * Returns the pieces worth most in all, from the butt up, as near to the butt as they can lie.
   *
   * @param free the stretch to cut
   * @param kerf steps that a saw cut takes
   * @param lengths the lengths asked for; of two that are worth the same the first is taken
   */
  public static List<Laid> best(Stretch free, int kerf, List<Priced> lengths) {
    int reach = free.length() + kerf;
    double[] value = new double[Math.max(reach, 0) + 1];
    int[] last = new int[value.length];
    for (int x = 1; x < value.length; x++) {
      value[x] = value[x - 1];
      last[x] = -1;
      for (int i = 0; i < lengths.size(); i++) {
        int before = x - lengths.get(i).raw() - kerf;
        if (before >= 0 && value[before] + lengths.get(i).price() > value[x]) {
          value[x] = value[before] + lengths.get(i).price();
          last[x] = i;
        }
      }
    }
    return traced(free, kerf, lengths, last);
  }

  private static List<Laid> traced(Stretch free, int kerf, List<Priced> lengths, int[] last) {
    List<Laid> pieces = new ArrayList<>();
    int x = last.length - 1;
    while (x > 0) {
      if (last[x] < 0) {
        x--;
      } else {
        int raw = lengths.get(last[x]).raw();
        x -= raw + kerf;
        pieces.add(0, new Laid(free.from() + x, raw));
      }
    }
    return pieces;
  }
}
