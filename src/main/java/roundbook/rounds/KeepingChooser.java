package roundbook.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import roundbook.balance.BalanceResult;
import roundbook.balance.BalanceTask;
import roundbook.balance.BalanceTask.RingPlace;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.balance.Mender;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.rounds.StepPlans.Settled;
import roundbook.rounds.StepPlans.Step;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Chooses anew where something changed on site, and leaves every other log where it was.
 *
 * <p>Logs that are gone leave holes; the holes are filled from the logs left, moving others only
 * where a hole could not be filled otherwise. Then changes are made one by one, each of which must
 * pay what the job asks for a log that is moved. Places are reserved for logs kept for sills,
 * plates and headers as in a first plan, for openings lie under other logs when the heights change.
 *
 * @param before the log and the cut that each place had
 * @param wanted how many rounds are wanted; empty: as the job says now
 */
public record KeepingChooser(Map<AsBuilt.Place, Held> before, OptionalInt wanted) {
  private static final int NONE = -1;

  /** Copies the map. */
  public KeepingChooser {
    before = Map.copyOf(before);
  }

  /**
   * A choice that keeps what can be kept.
   *
   * @param choice the choice
   * @param moves the changes that pay, in the order they were made
   */
  public record Kept(Choice choice, List<Move> moves) {
    /** Copies the list. */
    public Kept {
      moves = List.copyOf(moves);
    }
  }

  /**
   * A change that pays.
   *
   * @param place a place that got another log or another cut
   * @param other the place that it changed logs with; the same when it was a spare or its own log
   * @param gain by how much the score fell, in square inches
   */
  public record Move(AsBuilt.Place place, AsBuilt.Place other, double gain) {}

  /** Chooses logs for a job of which a part is built. */
  public Kept choose(Job job, Effort effort) {
    return choose(PairedJob.of(job), effort);
  }

  /** Chooses logs for a job of which a part is built and where some short logs are settled. */
  public Kept choose(PairedJob given, Effort effort) {
    Job job = given.job();
    int goal = wanted.orElseGet(() -> new Wanted(given).rounds());
    Set<AsBuilt.Place> had = new TreeSet<>(before.keySet());
    had.removeIf(place -> !before.get(place).isShared());
    StepPlans<Kept> plans =
        new StepPlans<>(Kept::choice, (step, look) -> choose(step, look, effort), effort);
    ShortPairs shared = new ShortPairs(given, effort);
    Settled<Kept> settled =
        plans.settled(
            job,
            plan ->
                shared.keep(
                    pairs(job),
                    had,
                    paired ->
                        new KeptLogs(paired.job())
                            .choose(over -> plan.apply(new Step(paired, goal, over)))));
    return new Kept(settled.choice(), settled.made().moves());
  }

  /** Returns the pairs of short logs that can stay: both are there, long enough, nowhere else. */
  private List<FilledPlace> pairs(Job job) {
    Map<AsBuilt.Place, Held> all = new TreeMap<>(before);
    all.putAll(job.built().held());
    List<FilledPlace> pairs = new ArrayList<>();
    all.forEach(
        (place, held) -> {
          if (held.isShared() && held.tags().stream().allMatch(at(job, place))) {
            FilledPlace.of(job, place, held).ifPresent(pairs::add);
          }
        });
    return pairs;
  }

  private static Predicate<String> at(Job job, AsBuilt.Place place) {
    return tag ->
        job.built()
            .placeOf(tag)
            .map(place::equals)
            .orElseGet(() -> job.log(tag).filter(log -> !log.traits().skip()).isPresent());
  }

  /** Chooses for as many rounds as can be filled, some of whose places are reserved. */
  private Kept choose(Step step, Effort look, Effort effort) {
    PairedJob job = step.job();
    Places places = new Places(job, step.rounds());
    while (places.rounds() > 0 && isShort(fill(places))) {
      places = places.withRounds(places.rounds() - 1);
    }
    if (places.rounds() == 0) {
      return new Kept(new BalancedChooser().choose(job, effort), List.of());
    }
    Places reserved = new KeptLogs(job.job()).reserved(places, step.headers());
    return keeping(reserved, step.rounds(), look)
        .or(() -> keeping(reserved, step.rounds(), effort))
        .orElseGet(() -> new Kept(new BalancedChooser().choose(job, effort), List.of()));
  }

  /** Returns a choice that keeps what can be kept; empty where a tip is refused then. */
  private Optional<Kept> keeping(Places places, int goal, Effort effort) {
    Job job = places.job();
    int[] logs = fill(places);
    BalanceJob balance = new BalanceJob(places, true);
    Start start = start(places, balance, logs, effort);
    double price = job.rules().number(Setting.CHANGE_PAYS).doubleValue();
    Mender.Mended mended = Mender.mend(balance.task(), start.logs(), start.cuts(), price);
    if (!balance.keepsTips(mended.result())) {
      return Optional.empty();
    }
    Choice choice = BalancedChooser.choice(places, balance, mended.result(), goal);
    return Optional.of(new Kept(choice, moves(job, mended.steps())));
  }

  private static boolean isShort(int[] logs) {
    return Arrays.stream(logs).anyMatch(log -> log == NONE);
  }

  /** Returns the logs kept in their places and others in the holes; −1 where there is none. */
  private int[] fill(Places places) {
    return places.match(kept(places));
  }

  private int[] kept(Places places) {
    return IntStream.range(0, places.count()).map(at -> kept(places, at)).toArray();
  }

  /** Returns the number of what stays in a place; −1 where nothing does. */
  private int kept(Places places, int at) {
    List<Log> logs = places.job().logs();
    Optional<Held> stood = stood(places, at);
    return places
        .number(at)
        .orElseGet(
            () ->
                IntStream.range(0, stood.isPresent() ? logs.size() : 0)
                    .filter(log -> stood.get().isOnly(logs.get(log).tag()))
                    .filter(log -> cut(places, log, at) != NONE)
                    .findFirst()
                    .orElse(NONE));
  }

  /** Returns what stands in a place, or stood there by the plan. */
  private Optional<Held> stood(Places places, int at) {
    int round = places.round(at);
    String wall = places.wall(at).name();
    return places
        .job()
        .built()
        .held(round, wall)
        .or(() -> Optional.ofNullable(before.get(new AsBuilt.Place(round, wall))));
  }

  /** Returns the number of the cut that what stays in a place has; −1 when it cannot be cut so. */
  private int cut(Places places, int log, int at) {
    if (places.number(at).isPresent()) {
      return 0;
    }
    List<Piece> pieces = places.pieces(log, at);
    Length cut = stood(places, at).orElseThrow().logs().get(0).cutOffButt();
    return IntStream.range(0, pieces.size())
        .filter(number -> pieces.get(number).cutOffButt().equals(cut))
        .findFirst()
        .orElse(NONE);
  }

  /** A whole choice to begin with, in the engine's numbers. */
  private record Start(Map<RingPlace, Integer> logs, Map<RingPlace, Integer> cuts) {}

  private Start start(Places places, BalanceJob balance, int[] logs, Effort effort) {
    int[] kept = kept(places);
    BalanceTask.Builder builder = balance.task().toBuilder();
    boolean holes = false;
    for (int at = 0; at < logs.length; at++) {
      if (logs[at] == kept[at]) {
        builder.pin(place(places, at), logs[at]);
      }
      holes |= logs[at] != kept[at];
    }
    Optional<BalanceResult> filled =
        holes ? Optional.of(Balancer.search().solve(builder.build(), effort)) : Optional.empty();
    Map<RingPlace, Integer> start = new HashMap<>();
    Map<RingPlace, Integer> cuts = new HashMap<>();
    for (int at = 0; at < logs.length; at++) {
      RingPlace place = place(places, at);
      boolean keeps = logs[at] == kept[at];
      start.put(place, keeps ? logs[at] : filled.orElseThrow().log(place));
      cuts.put(place, keeps ? cut(places, logs[at], at) : filled.orElseThrow().cut(place));
    }
    return new Start(start, cuts);
  }

  private static RingPlace place(Places places, int at) {
    return new RingPlace(0, places.round(at) - 1, at % places.walls().size());
  }

  private static List<Move> moves(Job job, List<Mender.Step> steps) {
    List<Move> moves = new ArrayList<>();
    for (Mender.Step step : steps) {
      moves.add(new Move(named(job, step.place()), named(job, step.other()), step.gain()));
    }
    return moves;
  }

  private static AsBuilt.Place named(Job job, RingPlace place) {
    String wall = job.building().walls().get(place.side()).name();
    return new AsBuilt.Place(place.round() + 1, wall);
  }
}
