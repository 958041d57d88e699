package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.buying.LogLengths;
import roundbook.job.BuildRules;
import roundbook.job.Log;
import roundbook.job.OtherLog;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.Species;

/**
 * Which logs without a place in the walls serve for plates, joists and the like, and how many of
 * these are to be ordered.
 *
 * <p>The longest and thickest are looked for first. Of the logs that serve, one that no wall needs
 * goes before a spare, then the one that leaves least over, then the straightest. What is too long
 * comes off at the tip, and both ends are squared; the diameters asked for hold on what is left.
 *
 * @param taken the logs found
 * @param lacking what none was found for
 */
public record OtherLogs(List<Found> taken, List<Lack> lacking) {
  /** How finely the balance point is summed up. */
  private static final int SLICES = 200;

  /** Copies the lists. */
  public OtherLogs {
    taken = List.copyOf(taken);
    lacking = List.copyOf(lacking);
  }

  /**
   * A log that was found.
   *
   * @param other what it is for
   * @param number which of these, counted from 1
   * @param log the log
   * @param spare whether it was a spare of the walls
   * @param pounds the most that it may weigh as it lies in the yard
   */
  public record Found(OtherLog other, int number, Log log, boolean spare, double pounds) {
    /** Returns what is cut off, the squaring among it. */
    public Length over() {
      return log.length().minus(other.length());
    }

    /** Returns the balance point of the whole round log from its butt. */
    public Length balance() {
      double sum = 0;
      double moment = 0;
      for (int slice = 0; slice < SLICES; slice++) {
        Length at = log.length().timesRatio(2L * slice + 1, 2L * SLICES);
        double thick = log.profile().at(at).inches();
        sum += thick * thick;
        moment += thick * thick * at.inches();
      }
      return Length.of(moment / sum, LengthUnit.INCH);
    }
  }

  /**
   * Logs of one kind to order.
   *
   * @param other what they are for
   * @param count how many
   * @param lengths how long they are ordered
   */
  public record Lack(OtherLog other, int count, LogLengths lengths) {}

  /** Returns what a plan's logs without a place serve for. */
  public static OtherLogs of(Plan plan) {
    List<LogUse> free =
        new ArrayList<>(plan.uses().stream().filter(use -> isFree(plan, use)).toList());
    List<Found> taken = new ArrayList<>();
    List<Lack> lacking = new ArrayList<>();
    BuildRules rules = plan.job().rules();
    for (OtherLog other : plan.job().others().stream().sorted(HARDEST).toList()) {
      LogLengths lengths = LogLengths.of(rules, other.length(), false);
      int number = 0;
      Optional<LogUse> best = best(free, other, lengths.least());
      while (number < other.count() && best.isPresent()) {
        number++;
        free.remove(best.get());
        taken.add(found(plan, other, number, best.get()));
        best = best(free, other, lengths.least());
      }
      if (number < other.count()) {
        lacking.add(new Lack(other, other.count() - number, lengths));
      }
    }
    return new OtherLogs(taken, lacking);
  }

  private static final Comparator<OtherLog> HARDEST =
      Comparator.comparing(OtherLog::length).thenComparing(OtherLog::mid).reversed();

  /** Returns what is to be ordered where no log is owned yet. */
  public static List<Lack> toOrder(BuildRules rules, List<OtherLog> others) {
    return others.stream()
        .sorted(HARDEST)
        .map(each -> new Lack(each, each.count(), LogLengths.of(rules, each.length(), false)))
        .toList();
  }

  private static boolean isFree(Plan plan, LogUse use) {
    Log log = use.log();
    boolean kept = log.traits().keep() != Log.Keep.ANY && log.traits().keep() != Log.Keep.PLATE;
    boolean lost = plan.job().built().lost().contains(log.tag());
    boolean without = use.use() == Use.SPARE || use.use() == Use.LEFT_OUT;
    return without && !kept && !lost && !log.traits().skip();
  }

  private static Optional<LogUse> best(List<LogUse> free, OtherLog other, Length least) {
    return free.stream()
        .filter(use -> serves(use.log(), other, least))
        .min(
            Comparator.<LogUse, Boolean>comparing(use -> use.use() == Use.SPARE)
                .thenComparing(use -> use.log().length())
                .thenComparing(use -> use.log().traits().sweep()));
  }

  private static boolean serves(Log log, OtherLog other, Length least) {
    boolean straight =
        other.sweep().filter(most -> log.traits().sweep().isMoreThan(most)).isEmpty();
    return straight
        && !log.length().isLessThan(least)
        && !log.profile().at(least.dividedBy(2)).isLessThan(other.mid())
        && !log.profile().at(least).isLessThan(other.tip());
  }

  private static Found found(Plan plan, OtherLog other, int number, LogUse use) {
    Log log = plan.job().tallied(use.log());
    Species species = Species.find(log.traits().species()).species();
    double pounds = LogCost.quantities(plan.job(), log).cubicFeet() * species.greenSpread().most();
    return new Found(other, number, log, use.use() == Use.SPARE, pounds);
  }
}
