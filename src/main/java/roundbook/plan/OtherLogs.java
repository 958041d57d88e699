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
 * goes before a spare, then the one that leaves least over, then the straightest. Each is cut from
 * the butt and squared at both ends, and the diameters asked for hold on what is left; the rest of
 * a log serves for another where it can.
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
   * @param from how far from the log's butt the rest begins that it is cut of; zero for a whole log
   * @param over what is cut off that rest and serves for nothing, the squaring among it
   * @param spare whether it was a spare of the walls
   * @param pounds the most that the log, or the rest of it, may weigh as it lies in the yard
   */
  public record Found(
      OtherLog other, int number, Log log, Length from, Length over, boolean spare, double pounds) {
    /** Returns the same with no more cut off than up to where the next piece of the log begins. */
    private Found over(List<Found> all) {
      Length end =
          all.stream()
              .filter(each -> each.log.tag().equals(log.tag()) && each.from.isMoreThan(from))
              .map(Found::from)
              .reduce(Length::least)
              .orElse(log.length());
      Length off = end.minus(from).minus(other.length());
      return new Found(other, number, log, from, off, spare, pounds);
    }

    /** Returns the balance point of the round log, or of the rest of it, from its thick end. */
    public Length balance() {
      Slices slices = Slices.of(log, from);
      return Length.of(slices.moment() / slices.wood(), LengthUnit.INCH);
    }
  }

  /**
   * A round log summed up in slices from a place on, in units of its own.
   *
   * @param wood how much there is of it
   * @param moment the same times how far it is from that place, in inches
   */
  private record Slices(double wood, double moment) {
    static Slices of(Log log, Length from) {
      Length whole = log.length().minus(from);
      double wood = 0;
      double moment = 0;
      for (int slice = 0; slice < SLICES; slice++) {
        Length at = whole.timesRatio(2L * slice + 1, 2L * SLICES);
        double thick = log.profile().at(from.plus(at)).inches();
        wood += thick * thick * whole.inches();
        moment += thick * thick * whole.inches() * at.inches();
      }
      return new Slices(wood, moment);
    }
  }

  /** What is still there of a log without a place, from so far off its butt. */
  private record Rest(LogUse use, Length from) {
    Length length() {
      return use.log().length().minus(from);
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
    List<Rest> free = new ArrayList<>();
    for (LogUse use : plan.uses()) {
      if (isFree(plan, use)) {
        free.add(new Rest(use, Length.ZERO));
      }
    }
    List<Found> taken = new ArrayList<>();
    List<Lack> lacking = new ArrayList<>();
    BuildRules rules = plan.job().rules();
    for (OtherLog other : plan.job().others().stream().sorted(HARDEST).toList()) {
      LogLengths lengths = LogLengths.of(rules, other.length(), false);
      int number = 0;
      Optional<Rest> best = best(free, other, lengths.least());
      while (number < other.count() && best.isPresent()) {
        number++;
        Rest rest = best.get();
        taken.add(found(plan, other, number, rest));
        free.set(free.indexOf(rest), new Rest(rest.use(), rest.from().plus(lengths.least())));
        best = best(free, other, lengths.least());
      }
      if (number < other.count()) {
        lacking.add(new Lack(other, other.count() - number, lengths));
      }
    }
    return new OtherLogs(taken.stream().map(each -> each.over(taken)).toList(), lacking);
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

  private static Optional<Rest> best(List<Rest> free, OtherLog other, Length least) {
    return free.stream()
        .filter(rest -> serves(rest, other, least))
        .min(
            Comparator.<Rest, Boolean>comparing(rest -> rest.use().use() == Use.SPARE)
                .thenComparing(Rest::length)
                .thenComparing(rest -> rest.use().log().traits().sweep()));
  }

  private static boolean serves(Rest rest, OtherLog other, Length least) {
    Log log = rest.use().log();
    boolean straight =
        other.sweep().filter(most -> log.traits().sweep().isMoreThan(most)).isEmpty();
    return straight
        && !rest.length().isLessThan(least)
        && !log.profile().at(rest.from().plus(least.dividedBy(2))).isLessThan(other.mid())
        && !log.profile().at(rest.from().plus(least)).isLessThan(other.tip());
  }

  private static Found found(Plan plan, OtherLog other, int number, Rest rest) {
    Log log = plan.job().tallied(rest.use().log());
    Species species = Species.find(log.traits().species()).species();
    double pounds = LogCost.quantities(plan.job(), log).cubicFeet() * species.greenSpread().most();
    double share = Slices.of(log, rest.from()).wood() / Slices.of(log, Length.ZERO).wood();
    Length over = rest.length().minus(other.length());
    boolean spare = rest.use().use() == Use.SPARE;
    return new Found(other, number, log, rest.from(), over, spare, share * pounds);
  }
}
