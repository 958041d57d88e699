package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import roundbook.stack.PlacedLog;

/**
 * The logs of a plan in the order in which they are laid: round by round, in each the walls laid
 * first before the others. Rounds that are cut are left out.
 *
 * <p>A pile from which they are picked without lifting one log twice is laid down the other way
 * round. How its layers are parted, so that none holds a log needed before one over it, follows
 * from the count alone.
 *
 * @param logs the logs, the first to be laid first
 */
public record PickOrder(List<PlacedLog> logs) {
  /** Copies the list. */
  public PickOrder {
    logs = List.copyOf(logs);
  }

  /** Returns the order of a plan. */
  public static PickOrder of(Plan plan) {
    return new PickOrder(
        plan.pieces().stream()
            .filter(piece -> !plan.job().built().isCut(piece.placed().place()))
            .sorted(
                Comparator.<PiecePlan>comparingInt(piece -> piece.placed().round())
                    .thenComparing(piece -> !piece.placed().wall().laidFirst()))
            .flatMap(piece -> piece.logs().stream())
            .toList());
  }

  /**
   * Some logs that are picked one after the other.
   *
   * @param from the first, counted from 1
   * @param to the last
   */
  public record Layer(int from, int to) {}

  /**
   * Returns the layers of a pile from the top down, each as full as the one under it or fuller by
   * one.
   *
   * @param high how many layers, at least one; fewer where there are fewer logs
   */
  public List<Layer> layers(int high) {
    List<Layer> layers = new ArrayList<>();
    int from = 1;
    for (int layer = high; layer >= 1; layer--) {
      int left = logs.size() - from + 1;
      int count = (left + layer - 1) / layer;
      if (count > 0) {
        layers.add(new Layer(from, from + count - 1));
      }
      from += count;
    }
    return layers;
  }
}
