package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import roundbook.job.Log;
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
   * Returns the layers of a pile from the top down, each as full as the one over it or fuller by
   * one.
   *
   * @param high how many layers, at least one; fewer where there are fewer logs
   */
  public List<Layer> layers(int high) {
    List<Layer> layers = new ArrayList<>();
    int from = 1;
    for (int layer = high; layer >= 1; layer--) {
      int left = logs.size() - from + 1;
      int count = left / layer;
      if (count > 0) {
        layers.add(new Layer(from, from + count - 1));
      }
      from += count;
    }
    return layers;
  }

  /**
   * Returns how many logs are lifted once more, as is to be expected, where they are piled as they
   * come: a log with k under it is in the way of one of them in k of k + 1 orders.
   *
   * @param high how many layers
   */
  public double extraLifts(int high) {
    List<Layer> layers = layers(high);
    double lifts = 0;
    for (int at = 0; at < layers.size(); at++) {
      int under = layers.size() - 1 - at;
      Layer layer = layers.get(at);
      lifts += (layer.to() - layer.from() + 1) * (double) under / (under + 1);
    }
    return lifts;
  }

  /** Returns when a log is picked, counted from 1; empty where it is not laid any more. */
  public OptionalInt number(Log log) {
    for (int at = 0; at < logs.size(); at++) {
      if (logs.get(at).piece().log().tag().equals(log.tag())) {
        return OptionalInt.of(at + 1);
      }
    }
    return OptionalInt.empty();
  }

  /** Returns the layer, counted from the top, that a log picked so lies in. */
  public int layer(int high, int number) {
    List<Layer> layers = layers(high);
    int at = 0;
    while (layers.get(at).to() < number) {
      at++;
    }
    return at + 1;
  }
}
