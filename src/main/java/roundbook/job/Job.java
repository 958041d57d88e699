package roundbook.job;

import java.util.List;
import java.util.Optional;
import roundbook.job.AsBuilt.CutSize;
import roundbook.units.Length;

/**
 * Everything that a plan is made from.
 *
 * @param rules the settings
 * @param building the ring of walls
 * @param logs every usable log of the tally, in the order it was read
 * @param openings doors and windows
 * @param pins places that the builder has settled
 * @param built what the crew has built and measured so far
 * @param prices what yards ask for logs, the one that counts before the others
 * @param others logs for other places than the walls
 * @param stems the felled stems, and which logs are pieces of them
 */
public record Job(
    BuildRules rules,
    Building building,
    List<Log> logs,
    List<Opening> openings,
    List<Pin> pins,
    AsBuilt built,
    List<Price> prices,
    List<OtherLog> others,
    Stems stems) {
  /** Copies the lists. */
  public Job {
    logs = List.copyOf(logs);
    openings = List.copyOf(openings);
    pins = List.copyOf(pins);
    prices = List.copyOf(prices);
    others = List.copyOf(others);
  }

  /** Returns the same job under other rules. */
  public Job with(BuildRules other) {
    return new Job(other, building, logs, openings, pins, built, prices, others, stems);
  }

  /** Returns the same job with another record of what is built. */
  public Job withBuilt(AsBuilt other) {
    return new Job(rules, building, logs, openings, pins, other, prices, others, stems);
  }

  /** Returns the same job with other logs. */
  public Job withLogs(List<Log> other) {
    return new Job(rules, building, other, openings, pins, built, prices, others, stems);
  }

  /** A job of which nothing is built yet. */
  public Job(
      BuildRules rules, Building building, List<Log> logs, List<Opening> openings, List<Pin> pins) {
    this(rules, building, logs, openings, pins, AsBuilt.NOTHING, List.of(), List.of(), Stems.NONE);
  }

  /** Returns the same job with other prices. */
  public Job withPrices(List<Price> other) {
    return new Job(rules, building, logs, openings, pins, built, other, others, stems);
  }

  /** Returns the same job with logs for other places than the walls. */
  public Job withOthers(List<OtherLog> other) {
    return new Job(rules, building, logs, openings, pins, built, prices, other, stems);
  }

  /** Returns the same job with other stems. */
  public Job withStems(Stems other) {
    return new Job(rules, building, logs, openings, pins, built, prices, others, other);
  }

  /** Returns whether the job says how many rounds or how high a wall it wants. */
  public boolean asksHeight() {
    return rules.rounds().isPresent() || rules.optionalLength(Setting.WALL_HEIGHT).isPresent();
  }

  /**
   * Returns what the size of a round is held at: what it was cut to, or, of round 1, what a
   * foundation was built for ({@code D = 2 s − g}, s its step, where the second-laid logs lie on
   * it); empty where the size follows the logs.
   */
  public Optional<CutSize> heldSize(int round) {
    Optional<Length> step =
        round == 1 && rules.stepsFoundation()
            ? rules.optionalLength(Setting.FOUNDATION_STEP)
            : Optional.empty();
    return built
        .cutSize(round)
        .or(() -> step.map(s -> new CutSize(s.times(2).minus(rules.gap()), rules.gap())));
  }

  /** Returns the job with the correction of the tally put on the diameters of all logs. */
  public Job corrected() {
    Length correction =
        rules.optionalLength(Setting.TALLY_CORRECTION).orElse(Length.ZERO).negated();
    List<Log> other = logs.stream().map(log -> log.thinnedBy(correction)).toList();
    return correction.isZero() ? this : withLogs(other).withStems(stems.thinnedBy(correction));
  }

  /** Returns a log as it was tallied: not hewn, and without the correction it was planned with. */
  public Log tallied(Log log) {
    Length now = rules.optionalLength(Setting.TALLY_CORRECTION).orElse(Length.ZERO);
    Optional<Log> yard =
        Optional.ofNullable(built.ahead().get(log.tag())).map(AsBuilt.Ahead::tallied);
    if (yard.isPresent()) {
      return yard.get().thinnedBy(now);
    }
    boolean hewn = built.expected().containsKey(log.tag());
    Optional<Length> then = hewn ? built.correctionOf(log.tag()) : Optional.empty();
    return built.beforeHewing(log).thinnedBy(then.orElse(now));
  }

  /** Returns the job with the middles of pieces that were measured when they were cut. */
  public Job withMeasuredPieces() {
    return withLogs(stems.measured(logs)).withStems(stems.taken());
  }

  /** Returns a stem as it was measured, without the correction it was planned with. */
  public Stem tallied(Stem stem) {
    return stem.thinnedBy(rules.optionalLength(Setting.TALLY_CORRECTION).orElse(Length.ZERO));
  }

  /** Returns whether the butts of a round lie at the start corner of a wall. */
  public boolean isButtAtStart(Wall wall, int round) {
    return building.isButtAtStart(wall, round, rules);
  }

  /** Returns whether a wall's logs drain where they die in another, so that only pegs hold them. */
  public boolean isHeldByPegs(Wall wall) {
    return building.drains(wall, true, rules) || building.drains(wall, false, rules);
  }

  /** Returns the log of a tag; empty when there is none. */
  public Optional<Log> log(String tag) {
    return logs.stream().filter(log -> log.tag().equals(tag)).findFirst();
  }
}
