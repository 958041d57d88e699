package roundbook.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import roundbook.buying.Quantities;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Price;
import roundbook.job.Setting;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.LogScale;
import roundbook.units.Length;
import roundbook.wood.LogRule;
import roundbook.wood.RoundProfile;
import roundbook.wood.Species;

/**
 * How much the logs of a tally are by one way of selling, by what becomes of them.
 *
 * <p>Logs are scaled as the table of scales has them; cubic volume and weight are by Huber's rule
 * of that table.
 *
 * @param price the way of selling
 * @param byUse how much the logs of each use are, in the basis of the price
 * @param waste how much of the logs in the walls is cut off in length, by their lengths alone
 */
public record LogCost(Price price, Map<Use, BigDecimal> byUse, BigDecimal waste) {
  private static final int DECIMALS = 4;

  /** Copies the map. */
  public LogCost {
    byUse = Map.copyOf(byUse);
  }

  /** Returns how much the logs of a plan are by each of the builder's prices, in their order. */
  public static List<LogCost> of(Plan plan) {
    return plan.job().prices().stream().map(price -> of(plan, price)).toList();
  }

  private static LogCost of(Plan plan, Price price) {
    Map<Use, BigDecimal> byUse = new EnumMap<>(Use.class);
    for (Use use : Use.values()) {
      byUse.put(use, BigDecimal.ZERO);
    }
    BigDecimal waste = BigDecimal.ZERO;
    for (LogUse each : plan.uses()) {
      BigDecimal one = quantities(plan.job(), each.log()).in(price.basis());
      byUse.merge(each.use(), one, BigDecimal::add);
      waste = waste.add(each.placed().map(placed -> cutOff(placed, one)).orElse(BigDecimal.ZERO));
    }
    return new LogCost(price, byUse, waste);
  }

  private static BigDecimal cutOff(PlacedLog placed, BigDecimal one) {
    Piece piece = placed.piece();
    BigDecimal whole = BigDecimal.valueOf(piece.log().length().nanometres());
    BigDecimal off = whole.subtract(BigDecimal.valueOf(piece.trimmed().nanometres()));
    return one.multiply(off).divide(whole, DECIMALS, RoundingMode.HALF_UP);
  }

  /** Returns the outside of a plan's walls in square inches, openings not taken off. */
  public static double wallArea(Plan plan) {
    return plan.takeoff().top().stream()
        .flatMap(top -> top.walls().stream())
        .mapToDouble(each -> each.wall().outside().inches() * each.middle().inches())
        .sum();
  }

  /** Returns how much one log of a tally is, in every way that logs are sold by. */
  static Quantities quantities(Job job, Log log) {
    double mostFeet = job.rules().length(Setting.SCALE_LENGTH_MOST).inches() / 12;
    RoundProfile profile = RoundProfile.inchesOf(new Piece(log, Length.ZERO, log.length()));
    double cubicFeet = LogScale.of(job, log, LogRule.HUBER);
    double pounds = Species.find(log.traits().species()).species().greenPounds();
    return new Quantities(profile, cubicFeet, cubicFeet * pounds, mostFeet);
  }

  /** Returns how much all logs are that the builder has of his own. */
  public BigDecimal all() {
    return byUse.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
