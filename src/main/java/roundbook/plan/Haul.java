package roundbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.buying.Loads;
import roundbook.buying.Loads.Load;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.wood.Species;

/**
 * What it takes to haul the logs of a tally, as they were measured and green.
 *
 * <p>Volume is by the middle, as the table of scales has it by Huber's rule. Loads are packed by
 * the most that each log may weigh.
 *
 * @param logs the logs, those of another job left out
 * @param usual what they weigh by the means of their species, in pounds
 * @param most what they may weigh if all were sapwood, in pounds
 * @param loads the loads, whose lines are the logs counted from 1; empty where no trailer is named,
 *     or it takes none of them
 * @param left those that are too heavy or too long for the trailer that is named
 */
public record Haul(
    List<Log> logs, double usual, double most, Optional<Loads> loads, List<Log> left) {
  /** Copies the lists. */
  public Haul {
    logs = List.copyOf(logs);
    left = List.copyOf(left);
  }

  /** Returns what it takes to haul the logs of a plan. */
  public static Haul of(Plan plan) {
    List<Log> logs =
        plan.uses().stream()
            .filter(use -> use.use() != Use.TAKEN)
            .map(LogUse::log)
            .map(plan.job()::tallied)
            .toList();
    List<Loads.Item> items =
        IntStream.rangeClosed(1, logs.size())
            .mapToObj(number -> item(plan, number, logs.get(number - 1)))
            .toList();
    Optional<Loads> loads = Loads.of(plan.job().rules(), items).value().flatMap(packed -> packed);
    boolean named = plan.job().rules().optionalNumber(Setting.LOAD_MOST).isPresent();
    return new Haul(
        logs,
        logs.stream().mapToDouble(log -> LogCost.quantities(plan.job(), log).pounds()).sum(),
        items.stream().mapToDouble(Loads.Item::pounds).sum(),
        loads,
        IntStream.rangeClosed(1, logs.size())
            .filter(number -> named && loads.filter(all -> all.carries(number)).isEmpty())
            .mapToObj(number -> logs.get(number - 1))
            .toList());
  }

  private static Loads.Item item(Plan plan, int number, Log log) {
    Species species = Species.find(log.traits().species()).species();
    double cubicFeet = LogCost.quantities(plan.job(), log).cubicFeet();
    return new Loads.Item(number, log.length(), cubicFeet * species.greenSpread().most());
  }

  /** Returns the logs of a load, the longest first. */
  public List<Log> logs(Load load) {
    return load.items().stream().map(item -> logs.get(item.line() - 1)).toList();
  }
}
