package roundbook.buying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import roundbook.job.BuildRules;
import roundbook.job.Price;
import roundbook.job.Setting;

/**
 * What an order costs by the prices that the builder gave.
 *
 * @param order the order
 * @param lines every line that a price is for, with the first price that names it
 * @param delivery what the loads cost to bring; empty where no price or no load is known
 */
public record Cost(Order order, List<LineCost> lines, Optional<Delivery> delivery) {
  private static final int CENTS = 2;
  private static final int SHARES = 6;

  /** Copies the list. */
  public Cost {
    lines = List.copyOf(lines);
  }

  /**
   * What one line of the order costs.
   *
   * @param line the line
   * @param price the number of the price in the builder's list, from 0
   * @param of the price
   * @param quantity how much all logs of the line are, in the basis of the price
   */
  public record LineCost(Line line, int price, Price of, BigDecimal quantity) {
    /** Returns the cost, to the cent. */
    public BigDecimal cost() {
      return quantity.multiply(of.price()).setScale(CENTS, RoundingMode.HALF_UP);
    }

    /** Returns the share of the logs that are spares, to six decimals. */
    public BigDecimal spareShare() {
      return share(line.count().spares(), line.count().all());
    }

    /** Returns the share of the wood that is sawn off logs for the walls in length, likewise. */
    public BigDecimal wasteShare() {
      double delivered = line.lengths().delivered().inches();
      double off = delivered - line.lengths().trimmed().inches();
      return share(line.count().logs() * off, line.count().all() * delivered);
    }

    /** Returns the part of the cost that is for spares. */
    public BigDecimal spares() {
      return cost().multiply(spareShare()).setScale(CENTS, RoundingMode.HALF_UP);
    }

    /** Returns the part of the cost of logs for the walls that is sawn off them in length. */
    public BigDecimal waste() {
      return cost().multiply(wasteShare()).setScale(CENTS, RoundingMode.HALF_UP);
    }

    private static BigDecimal share(double some, double all) {
      return BigDecimal.valueOf(some / all).setScale(SHARES, RoundingMode.HALF_UP);
    }
  }

  /**
   * What bringing the loads costs.
   *
   * @param loads how many
   * @param each money for one
   */
  public record Delivery(int loads, BigDecimal each) {
    /** Returns the cost. */
    public BigDecimal cost() {
      return each.multiply(BigDecimal.valueOf(loads)).setScale(CENTS, RoundingMode.HALF_UP);
    }
  }

  /**
   * Returns the cost of an order.
   *
   * @param order the order
   * @param rules the job's rules
   * @param prices the builder's prices; the first that is for a line counts
   * @param loads how many loads are driven; empty where that is not known
   */
  public static Cost of(Order order, BuildRules rules, List<Price> prices, OptionalInt loads) {
    List<LineCost> lines = new ArrayList<>();
    for (Line line : order.lines()) {
      offers(line, rules, prices).stream().findFirst().ifPresent(lines::add);
    }
    Optional<Delivery> delivery =
        prices.stream()
            .map(Price::delivery)
            .flatMap(Optional::stream)
            .findFirst()
            .filter(each -> loads.isPresent())
            .map(each -> new Delivery(loads.getAsInt(), each));
    return new Cost(order, lines, delivery);
  }

  /** Returns what a line would cost by every price that is for it, in the builder's order. */
  public static List<LineCost> offers(Line line, BuildRules rules, List<Price> prices) {
    double scaledMost = rules.length(Setting.SCALE_LENGTH_MOST).inches() / 12;
    Quantities one = Quantities.of(line, scaledMost);
    BigDecimal count = BigDecimal.valueOf(line.count().all());
    List<LineCost> offers = new ArrayList<>();
    for (int at = 0; at < prices.size(); at++) {
      Price price = prices.get(at);
      if (price.covers(line.number())) {
        offers.add(new LineCost(line, at, price, one.in(price.basis()).multiply(count)));
      }
    }
    return offers;
  }

  /** Returns what a line costs; empty where no price is for it. */
  public Optional<LineCost> of(Line line) {
    return lines.stream().filter(each -> each.line().equals(line)).findFirst();
  }

  /** Returns the cost of the logs. */
  public BigDecimal logs() {
    return sum(LineCost::cost);
  }

  /** Returns the cost of the logs that are for no wall. */
  public BigDecimal others() {
    return sum(each -> each.line().isOfWalls() ? BigDecimal.ZERO : each.cost());
  }

  /** Returns the cost of the logs and of bringing them. */
  public BigDecimal total() {
    return logs().add(delivery.map(Delivery::cost).orElse(BigDecimal.ZERO));
  }

  /** Returns the part of the cost that is for spares. */
  public BigDecimal spares() {
    return sum(LineCost::spares);
  }

  /** Returns the part of the cost that is sawn off in length. */
  public BigDecimal waste() {
    return sum(LineCost::waste);
  }

  private BigDecimal sum(Function<LineCost, BigDecimal> part) {
    return lines.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
