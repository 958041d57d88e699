package roundbook.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import roundbook.buying.Line;
import roundbook.buying.Order;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.rounds.Shortage;
import roundbook.rounds.Shortage.Missing;

/** The order of a yard whose logs make not one round. */
public final class LackOrder {
  private LackOrder() {}

  /**
   * Returns what is to be ordered, spares beside it; empty where nothing is missing or nothing can
   * be ordered.
   *
   * <p>It is what the plan found missing, where planning again with those logs brought rounds; else
   * whole walls are ordered.
   */
  public static Optional<Order> of(Job job, Plan plan) {
    return plan.choice().shortage().flatMap(shortage -> of(job, shortage));
  }

  private static Optional<Order> of(Job job, Shortage shortage) {
    if (shortage.isProved()) {
      List<Order.Lack> lacks =
          shortage.missing().stream().map(missing -> lack(job, missing)).toList();
      return Optional.of(Order.ofLacks(job.rules(), job.building(), shortage.wanted(), lacks));
    }
    BigDecimal wanted = BigDecimal.valueOf(shortage.wanted());
    BuildRules rules = job.rules().with(Setting.ROUNDS, wanted, Origin.OPTION);
    return Order.of(rules, job.building()).value();
  }

  private static Order.Lack lack(Job job, Missing missing) {
    List<String> names = List.of(missing.walls().split(" "));
    return new Order.Lack(
        job.building().walls().stream().filter(wall -> names.contains(wall.name())).toList(),
        missing.count(),
        new Line.Band(missing.midFrom(), missing.midTo()));
  }
}
