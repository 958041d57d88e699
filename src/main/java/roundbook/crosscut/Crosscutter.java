package roundbook.crosscut;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.balance.Effort;
import roundbook.bucking.BuckingResult;
import roundbook.bucking.BuckingTask;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.Counts;
import roundbook.bucking.JointSearch;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Stems;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.rounds.Fit;
import roundbook.stack.EndFit;
import roundbook.units.Length;

/** Cuts the stems of a job, and long logs where rounds would be missing, with its plan in view. */
public final class Crosscutter {
  private static final int MOST_LOGS = 400;
  private static final int MOST_ROUNDS = 60;
  private static final int TRIES = 3;

  private final Job job;
  private final Material material;
  private final Tasks tasks;
  private final Effort effort;

  private Crosscutter(Job job, Effort effort) {
    this.job = job;
    this.material = new Material(job);
    this.tasks = new Tasks(job, material);
    this.effort = effort;
  }

  /** Pieces for every place, and how they were asked for. */
  private record Found(BuckingTask task, BuckingResult result) {}

  /**
   * Returns the job with the pieces of its stems as logs; the same job where nothing is to be cut.
   *
   * @param job the job; stems of which a piece is a log already are left as they are
   * @param effort how hard to look
   */
  public static CutJob cut(Job job, Effort effort) {
    Crosscutter cutter = new Crosscutter(job, effort);
    boolean stems = cutter.material.sources().stream().anyMatch(each -> each.log().isEmpty());
    boolean longLogs = job.logs().size() <= MOST_LOGS && cutter.material.hasLongLogs();
    return stems || longLogs && cutter.lacksRounds() ? cutter.cut() : new CutJob(job, Map.of());
  }

  /**
   * Returns a job of which a part is built with the stems cut anew that no cut was made in, when
   * others are cut or new ones came; the same job where there is nothing of that.
   *
   * @param job the job; of its stems pieces are logs
   * @param rounds how many rounds are wanted
   */
  public static CutJob anew(Job job, int rounds, Effort effort) {
    Stems stems = job.stems();
    Set<String> begun =
        job.logs().stream()
            .map(Log::tag)
            .filter(tag -> stems.cuts().containsKey(tag))
            .filter(tag -> stems.cuts().get(tag).isCut() || job.built().placeOf(tag).isPresent())
            .map(tag -> stems.cuts().get(tag).stem())
            .collect(Collectors.toSet());
    boolean more = stems.all().stream().anyMatch(each -> stems.pieces(each, job.logs()).isEmpty());
    boolean whole = stems.all().stream().anyMatch(each -> !begun.contains(each.tag()));
    if (!whole || begun.isEmpty() && !more) {
      return new CutJob(job, Map.of());
    }
    List<Log> logs =
        job.logs().stream()
            .filter(log -> stems.of(log).filter(stem -> !begun.contains(stem.tag())).isEmpty())
            .toList();
    BigDecimal wanted = BigDecimal.valueOf(rounds);
    Job open = job.withLogs(logs).with(job.rules().with(Setting.ROUNDS, wanted, Origin.OPTION));
    CutJob cut = cut(open, effort);
    return new CutJob(cut.job().with(job.rules()), cut.places());
  }

  /** Returns whether more of the rounds wanted stand when long logs are cut. */
  private boolean lacksRounds() {
    int wanted = wanted();
    Length least = job.rules().thickness();
    return Counts.rounds(tasks.task(wanted, least, true))
        > Counts.rounds(tasks.task(wanted, least, false));
  }

  private CutJob cut() {
    int wanted = wanted();
    Optional<Found> found = Optional.empty();
    for (int tries = 0; tries < TRIES; tries++) {
      found = found(wanted);
      int nearest = found.map(each -> nearest(each.result())).orElse(wanted);
      if (nearest == wanted || found.get().task().rounds() < wanted) {
        break;
      }
      wanted = nearest;
    }
    CutLogs logs = new CutLogs(job, material);
    if (found.isEmpty()) {
      return new CutJob(logs.with(tasks.task(0, least(), true).boles(), List.of()), Map.of());
    }
    List<Cut> cuts = found.get().result().cuts();
    Job cut = logs.with(found.get().task().boles(), cuts);
    return new CutJob(cut, places(cut, cuts, logs.tagged()));
  }

  /** Returns what each place was cut for; a whole log is cut the way nearest to that. */
  private Map<Place, Held> places(Job cut, List<Cut> cuts, Map<Cut, String> tags) {
    Map<Place, Held> places = new HashMap<>();
    List<Wall> walls = job.building().walls();
    Fit fit = new Fit(cut);
    for (int i = 0; i < cuts.size(); i++) {
      Wall wall = walls.get(i % walls.size());
      Place place = new Place(i / walls.size() + 1, wall.name());
      Optional<Log> log = Optional.ofNullable(tags.get(cuts.get(i))).flatMap(cut::log);
      Length from =
          log.filter(each -> cut.stems().of(each).isEmpty()).isPresent()
              ? material.grid().length(cuts.get(i).from())
              : Length.ZERO;
      Length off = job.rules().length(Setting.SQUARING_ALLOWANCE).plus(from);
      log.flatMap(
              each ->
                  fit.pieces(each, wall).stream()
                      .map(Piece::cutOffButt)
                      .min(Comparator.comparing(butt -> butt.minus(off).absolute())))
          .ifPresent(butt -> places.put(place, new Held(log.get().tag(), butt)));
    }
    return places;
  }

  private Length least() {
    return job.rules().optionalLength(Setting.TIP_LEAST).orElse(job.rules().thickness());
  }

  /** Returns pieces for as many rounds as the stems hold; empty where they hold none. */
  private Optional<Found> found(int wanted) {
    BuckingTask most = tasks.task(wanted, least(), true);
    int rounds = Counts.rounds(most);
    if (rounds == 0) {
      return Optional.empty();
    }
    Optional<Found> any = solved(tasks.task(rounds, least(), true));
    return any.flatMap(each -> thick(each)).or(() -> any);
  }

  private Optional<Found> solved(BuckingTask task) {
    return JointSearch.solve(task, material.grid().slide(), effort)
        .map(result -> new Found(task, result));
  }

  /**
   * Returns pieces whose ends are not flagged in the least round, or else none to stop at; empty
   * where that is told, costs a round, or leaves more gaps outside their limits.
   */
  private Optional<Found> thick(Found any) {
    boolean stems = material.sources().stream().anyMatch(source -> source.log().isEmpty());
    if (!stems || job.rules().optionalLength(Setting.TIP_LEAST).isPresent()) {
      return Optional.empty();
    }
    for (Length least : thickEnough(any.result())) {
      BuckingTask task = tasks.task(any.task().rounds(), least, true);
      Optional<Found> thick =
          Counts.rounds(task) == task.rounds() ? solved(task) : Optional.empty();
      if (thick.filter(each -> outside(each) <= outside(any)).isPresent()) {
        return thick;
      }
    }
    return Optional.empty();
  }

  private long outside(Found found) {
    Length least = job.rules().length(Setting.GAP_LEAST);
    Length most = job.rules().length(Setting.GAP_MOST);
    return found.result().gapsOutside(material.grid().ticks(least), material.grid().ticks(most));
  }

  private List<Length> thickEnough(BuckingResult result) {
    long size = result.sizes().stream().mapToLong(Long::longValue).min().orElse(0);
    Length round = material.grid().diameter(size);
    return List.of(
        EndFit.least(job, round, fit -> !fit.isFlagged()),
        EndFit.least(job, round, fit -> fit.grade() != NeckFit.Grade.STOP));
  }

  /** Returns the rounds wanted: as told, by height a guess, else as many as the wood could fill. */
  private int wanted() {
    if (job.rules().rounds().isPresent()) {
      return job.rules().rounds().getAsInt();
    }
    Optional<Length> height = job.rules().optionalLength(Setting.WALL_HEIGHT);
    if (height.isPresent()) {
      return rounds(height.get(), usualSize());
    }
    BuckingTask any = tasks.task(0, least(), true);
    long usable = any.boles().stream().mapToLong(bole -> bole.usable() + any.kerf()).sum();
    long round = any.sides().stream().mapToLong(side -> side.raw() + any.kerf()).sum();
    return (int) Math.min(MOST_ROUNDS, usable / round);
  }

  private int rounds(Length height, Length size) {
    double course = size.plus(job.rules().gap()).inches();
    return (int) Math.min(MOST_ROUNDS, Math.max(1, Math.round(height.inches() / course)));
  }

  private Length usualSize() {
    List<Length> mids =
        material.sources().stream()
            .map(source -> source.stem().profile().at(source.stem().length().dividedBy(2)))
            .sorted()
            .toList();
    return mids.isEmpty() ? job.rules().thickness().times(2) : mids.get(mids.size() / 2);
  }

  /** Returns the rounds whose height comes nearest the one wanted, by the sizes found. */
  private int nearest(BuckingResult result) {
    Optional<Length> height = job.rules().optionalLength(Setting.WALL_HEIGHT);
    if (job.rules().rounds().isPresent() || height.isEmpty()) {
      return result.sizes().size();
    }
    double mean = result.sizes().stream().mapToLong(Long::longValue).average().orElse(0);
    return rounds(height.get(), material.grid().diameter(Math.round(mean)));
  }
}
