package roundbook.rounds;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundbook.balance.Bound;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.stack.FilledPlace;

/** How much better than a choice of logs another could be at most. */
public final class LeastScore {
  private static final BigDecimal LITTLE = new BigDecimal("0.001");

  private final Job job;
  private final Choice choice;
  private final PairedJob paired;
  private final Effort effort;

  private LeastScore(Job job, Choice choice, Effort effort) {
    this.job = job;
    this.choice = choice;
    this.effort = effort;
    paired = PairedJob.of(job, choice.placedPairs());
  }

  /**
   * Returns a choice with how near the best it is of its logs for as many rounds: a better one
   * where one is come upon, which keeps all that the job asks for as well as the other did.
   *
   * <p>Stems stay cut as they are, and pairs of short logs beside openings where they lie. Places
   * that are kept for headers are open to all logs here, so the score holds for more choices than
   * the search may take; so are those of sills and plates where the choice has others in them. A
   * choice that is come upon may so have a header where no opening is, or a size at which no
   * opening cuts through a pair: then its logs are laid as in a re-plan, and the outcome is taken
   * if it is better still.
   *
   * @param job the job, of which nothing is built
   * @param choice its choice
   * @param effort what may stop it, with what was found, and whether it may use more threads
   */
  public static Choice reckoned(Job job, Choice choice, Effort effort) {
    return new LeastScore(job, choice, effort).reckoned();
  }

  /**
   * Returns a choice as it is, with how near the best it is: what is built lies where it lies, all
   * else anywhere that it may.
   *
   * @param job the job
   * @param choice its choice
   * @param effort what may stop it, with what was found, and whether it may use more threads
   */
  public static Choice told(Job job, Choice choice, Effort effort) {
    LeastScore least = new LeastScore(job, choice, effort);
    return least.told(choice, least.bound(new BalanceJob(least.places())));
  }

  private Choice told(Choice told, Bound bound) {
    return told.with(Nearness.of(told, bound.score(), !effort.stop().getAsBoolean()));
  }

  private Bound bound(BalanceJob balance) {
    return Bound.of(balance.task(), choice.score().total(), effort);
  }

  private Choice reckoned() {
    Places places = places();
    BalanceJob balance = new BalanceJob(places);
    Bound bound = bound(balance);
    return bound
        .better()
        .map(result -> BalancedChooser.choice(places, balance, result, places.rounds()))
        .map(other -> other.ofPairs(job, choice.pairs()))
        .flatMap(
            other ->
                Stream.of(other, mended(other)).filter(each -> keeps(balance, each)).findFirst())
        .map(other -> told(other.with(choice.shortage()), bound))
        .orElseGet(() -> told(choice, bound));
  }

  /** Returns the places of as many rounds, some reserved if the choice has them so. */
  private Places places() {
    Places all = new Places(paired, choice.courses().size());
    Places reserved = new KeptLogs(paired.job()).reserved(all, Optional.empty());
    return IntStream.range(0, all.count()).allMatch(at -> stands(reserved, at)) ? reserved : all;
  }

  private boolean stands(Places places, int at) {
    FilledPlace filled =
        choice.courses().get(places.round(at) - 1).on(places.wall(at)).orElseThrow();
    return places.pair(at).isPresent()
        || places.pieces(paired.job().logs().indexOf(filled.first().piece().log()), at).stream()
            .anyMatch(filled.first().piece()::equals);
  }

  /** Returns a choice with other logs where they must lie as openings are cut by its heights. */
  private Choice mended(Choice other) {
    Map<AsBuilt.Place, AsBuilt.Held> laid =
        other.courses().stream()
            .flatMap(course -> course.places().stream())
            .collect(Collectors.toMap(FilledPlace::place, FilledPlace::held));
    Job mending = job.with(job.rules().with(Setting.CHANGE_PAYS, LITTLE, Origin.OPTION));
    return new KeepingChooser(laid, OptionalInt.of(other.courses().size()))
        .choose(mending, effort)
        .choice();
  }

  /** Returns whether a choice keeps what is no part of the score as well as the first one does. */
  private boolean keeps(BalanceJob balance, Choice other) {
    KeptLogs kept = new KeptLogs(job);
    ShortPairs pairs = new ShortPairs(paired, effort);
    return !job.rules().text(Setting.BALANCE_FOR).equals("worst")
        && balance.weighed(other.score().total(), other.courses())
            < balance.weighed(choice.score().total(), choice.courses())
        && kept.overOpenings(other) >= kept.overOpenings(choice)
        && other.placedPairs().equals(choice.placedPairs())
        && (pairs.suits(other) || !pairs.suits(choice))
        && Wanted.height(job)
            .map(height -> new ByHeight(job, height, rounds -> choice))
            .map(by -> by.isAsNear(other, choice))
            .orElse(true);
  }
}
