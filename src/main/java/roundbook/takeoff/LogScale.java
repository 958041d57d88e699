package roundbook.takeoff;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.units.Length;
import roundbook.wood.LogRule;
import roundbook.wood.RoundProfile;

/**
 * The mill's scale of the tally, by each of the rules that yards sell by.
 *
 * <p>The rules differ by a third and more for the same logs, so a number without its rule says
 * nothing.
 *
 * @param logs the scale of every log of the tally
 */
public record LogScale(List<Scaled> logs) {
  /** Copies the list. */
  public LogScale {
    logs = List.copyOf(logs);
  }

  /**
   * The scale of one log, board feet or cubic feet as its rule counts; in a metric job volumes are
   * those of the log as measured.
   *
   * @param log the log, as tallied
   * @param byRule its scale by each rule
   */
  public record Scaled(Log log, Map<LogRule, Double> byRule) {}

  static LogScale of(Job job) {
    List<Scaled> logs = new ArrayList<>();
    for (Log log : job.logs()) {
      Map<LogRule, Double> byRule = new EnumMap<>(LogRule.class);
      for (LogRule rule : LogRule.values()) {
        byRule.put(rule, of(job, log, rule));
      }
      logs.add(new Scaled(log, byRule));
    }
    return new LogScale(logs);
  }

  /** Returns the scale of one log of a job by a rule, in the rule's unit. */
  public static double of(Job job, Log log, LogRule rule) {
    double mostFeet = job.rules().length(Setting.SCALE_LENGTH_MOST).inches() / 12;
    RoundProfile profile = RoundProfile.inchesOf(new Piece(log, Length.ZERO, log.length()));
    return job.rules().metric()
        ? rule.asMeasured(profile, mostFeet)
        : rule.scale(profile, mostFeet);
  }

  /** Returns the scale of the whole tally by a rule. */
  public double total(LogRule rule) {
    return logs.stream().mapToDouble(each -> each.byRule().get(rule)).sum();
  }

  /** Returns the scale of the logs with these tags by a rule. */
  public double total(LogRule rule, Set<String> tags) {
    return logs.stream()
        .filter(each -> tags.contains(each.log().tag()))
        .mapToDouble(each -> each.byRule().get(rule))
        .sum();
  }
}
