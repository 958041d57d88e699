package roundbook.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Price;
import roundbook.problem.Problem;
import roundbook.problem.Read;

/**
 * All that is worked out before a log is owned.
 *
 * @param rules the job's rules
 * @param order what to ask a yard for
 * @param prices what yards ask, as the builder typed it
 * @param cost what it costs by those prices
 * @param loads how it is hauled; empty where no trailer is named
 * @param trees the trees that hold such logs; empty where no height is named
 */
public record Purchase(
    BuildRules rules,
    Order order,
    List<Price> prices,
    Cost cost,
    Optional<Loads> loads,
    Optional<Trees> trees) {
  /** Copies the list. */
  public Purchase {
    prices = List.copyOf(prices);
  }

  /** Works out the order of a whole job; the logs that it has already do not count. */
  public static Read<Purchase> of(Job job) {
    Read<Order> order = Order.of(job.rules(), job.building());
    if (order.value().isEmpty()) {
      return Read.failed(order.problems());
    }
    Order whole = order.value().get().with(job.rules(), job.others());
    Read<Purchase> purchase = of(job.rules(), whole, job.prices());
    List<Problem> problems = new ArrayList<>(order.problems());
    problems.addAll(purchase.problems());
    return Read.of(purchase.value().orElseThrow(), problems);
  }

  /** Works out the cost and the loads of an order; what fits on no load is said by its line. */
  public static Read<Purchase> of(BuildRules rules, Order order, List<Price> prices) {
    Read<Optional<Loads>> packed = Loads.of(rules, order.items());
    Optional<Loads> loads = packed.value().orElseThrow();
    OptionalInt count =
        loads.map(all -> OptionalInt.of(all.loads().size())).orElse(OptionalInt.empty());
    Cost cost = Cost.of(order, rules, prices, count);
    return Read.of(
        new Purchase(rules, order, prices, cost, loads, Trees.of(order, rules)), packed.problems());
  }

  /** Returns the lines of the order that ride on no load of the trailer that is named. */
  public List<Integer> unhauled() {
    return order.lines().stream()
        .map(Line::number)
        .filter(line -> loads.filter(all -> !all.carries(line)).isPresent())
        .toList();
  }

  /** Returns what the other prices, which do not count, would make of the lines they are for. */
  public List<Cost.LineCost> otherOffers() {
    List<Cost.LineCost> others = new ArrayList<>();
    for (Line line : order.lines()) {
      List<Cost.LineCost> offers = Cost.offers(line, rules, prices);
      others.addAll(offers.subList(Math.min(1, offers.size()), offers.size()));
    }
    return others;
  }
}
