package roundbook.plan;

import java.util.List;
import java.util.Optional;
import roundbook.buying.Loads;
import roundbook.job.BuildRules;
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
 * @param logs how many logs, those of another job left out
 * @param usual what they weigh by the means of their species, in pounds
 * @param most what they may weigh if all were sapwood, in pounds
 * @param loads the loads; empty where no trailer is named, or it does not take every log
 */
public record Haul(int logs, double usual, double most, Optional<Loads> loads) {
  /** Returns what it takes to haul the logs of a plan. */
  public static Haul of(Plan plan) {
    List<Log> logs =
        plan.uses().stream()
            .filter(use -> use.use() != Use.TAKEN)
            .map(LogUse::log)
            .map(plan.job()::tallied)
            .toList();
    List<Loads.Item> items =
        logs.stream()
            .map(log -> new Loads.Item(log.origin().row(), log.length(), most(plan, log)))
            .toList();
    return new Haul(
        logs.size(),
        logs.stream().mapToDouble(log -> LogCost.quantities(plan.job(), log).pounds()).sum(),
        items.stream().mapToDouble(Loads.Item::pounds).sum(),
        Optional.of(Loads.of(plan.job().rules(), items))
            .filter(read -> read.problems().isEmpty())
            .flatMap(read -> read.value().orElseThrow()));
  }

  private static double most(Plan plan, Log log) {
    Species species = Species.find(log.traits().species()).species();
    double cubicFeet = LogCost.quantities(plan.job(), log).cubicFeet();
    return cubicFeet * species.greenSpread().most();
  }

  /** Returns whether a trailer is named that does not take every log. */
  public boolean isRefused(BuildRules rules) {
    return rules.optionalNumber(Setting.LOAD_MOST).isPresent() && loads.isEmpty();
  }
}
