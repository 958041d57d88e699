package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.balance.Aims;
import roundbook.balance.BalanceResult;
import roundbook.balance.BalanceTask;
import roundbook.balance.BalanceTask.RingPlace;
import roundbook.balance.Cut;
import roundbook.balance.Score;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** A job's places and logs in the words of the balance engine: nanometres, and score in inches². */
final class BalanceJob {
  private static final long INCH = LengthUnit.INCH.nanometres();
  private static final long TICK = 2_540;

  /** What a log with an end graded stop costs, in square inches, where it is not refused. */
  static final double STOP = 0.5;

  private final Job job;
  private final Places places;
  private final List<Wall> kinds;
  private final WoodPrice wood;
  private final EndFit ends;
  private final BalanceTask task;
  private final boolean weighs;

  BalanceJob(Places places) {
    this(places, false);
  }

  /**
   * Creates the task of a job's places.
   *
   * @param places the places
   * @param weighs whether a log whose end is graded stop costs {@link #STOP}, where the rules do
   *     not refuse it
   */
  BalanceJob(Places places, boolean weighs) {
    this.weighs = weighs;
    this.job = places.job();
    this.wood = new WoodPrice(job, places.rounds());
    this.ends = new EndFit(job.rules(), job.building());
    this.places = places;
    this.kinds = kinds(places.walls());
    this.task = build();
  }

  BalanceTask task() {
    return task;
  }

  /** Returns what a result lays in a place. */
  FilledPlace filled(BalanceResult result, RingPlace place) {
    int at = place.round() * places.walls().size() + place.side();
    return places.pair(at).orElseGet(() -> filled(result, place, at));
  }

  private FilledPlace filled(BalanceResult result, RingPlace place, int at) {
    Piece piece = places.pieces(result.log(place), at).get(result.cut(place));
    int round = places.round(at);
    return FilledPlace.of(piece, places.wall(at), round, job.isButtAtStart(places.wall(at), round));
  }

  /** Returns the engine's score in our words. */
  static Choice.Score score(Score score) {
    return new Choice.Score(
        score.total(),
        score.evenness(),
        score.leastGap(),
        score.spread(),
        score.inversion(),
        score.waste());
  }

  /** Returns the rounds that a result lays. */
  List<Course> courses(BalanceResult result) {
    return IntStream.rangeClosed(1, places.rounds())
        .mapToObj(round -> Course.of(round, filled(result, round), job))
        .toList();
  }

  private List<FilledPlace> filled(BalanceResult result, int round) {
    return IntStream.range(0, places.walls().size())
        .mapToObj(side -> filled(result, new RingPlace(0, round - 1, side)))
        .toList();
  }

  /** Returns whether no end is graded stop, where the rules refuse that. */
  boolean keepsTips(BalanceResult result) {
    return !refuses() || stops(courses(result)) == 0;
  }

  /** Returns how many logs that may still be exchanged have an end graded stop. */
  long stops(List<Course> courses) {
    return courses.stream()
        .skip(job.built().rounds())
        .flatMap(course -> course.places().stream().filter(place -> isStop(course, place)))
        .count();
  }

  private boolean isStop(Course course, FilledPlace place) {
    return !isSettled(place) && !ends.holds(place, course.notch());
  }

  /** Returns the score of rounds with what their stops weigh. */
  double weighed(double score, List<Course> courses) {
    return score + STOP * stops(courses);
  }

  private BalanceTask build() {
    BuildRules rules = job.rules();
    Length least = rules.length(Setting.GAP_LEAST).least(rules.gap());
    Aims aims =
        new Aims(
            rules.gap().nanometres(),
            least.nanometres(),
            rules.length(Setting.SPREAD_MOST).nanometres(),
            rules.sizeStep().nanometres(),
            weights(rules));
    BalanceTask.Builder builder = BalanceTask.builder(INCH, TICK, aims);
    Fit fit = new Fit(job);
    kinds.forEach(kind -> builder.lengthClass(fit.trimmed(kind).nanometres()));
    builder.building(places.rounds());
    for (Wall wall : places.walls()) {
      builder.side(kindOf(wall), wall.laidFirst());
    }
    for (int log = 0; log < job.logs().size(); log++) {
      builder.log(cuts(log));
    }
    places.paired().pairs().forEach(pair -> builder.log(cuts(pair)));
    restrict(builder);
    for (int round = 0; round < places.rounds(); round++) {
      Optional<CutSize> held = job.heldSize(round + 1);
      if (held.isPresent()) {
        builder.size(0, round, held.get().size().nanometres());
      }
    }
    return builder.build();
  }

  private Aims.Weights weights(BuildRules rules) {
    Aims.Weights usual = Aims.Weights.USUAL;
    boolean worst = rules.text(Setting.BALANCE_FOR).equals("worst");
    Aims.Weights weights =
        new Aims.Weights(usual.least(), usual.spread(), usual.inversion(), worst);
    return weighs && !refuses() ? weights.refusing(STOP) : weights;
  }

  private List<List<Cut>> cuts(int log) {
    List<List<Cut>> perKind = new ArrayList<>();
    for (Wall kind : kinds) {
      perKind.add(
          places.serving(log, kind).stream()
              .map(piece -> cut(FilledPlace.of(piece, kind, 1, true)))
              .toList());
    }
    return perKind;
  }

  /** Returns the one way to cut both short logs of a place. */
  private List<List<Cut>> cuts(FilledPlace pair) {
    return kinds.stream()
        .map(kind -> pair.wall().isLike(kind) ? List.of(cut(pair)) : List.<Cut>of())
        .toList();
  }

  private Cut cut(FilledPlace filled) {
    Length offcut = filled.offcut(job.rules().length(Setting.SQUARING_ALLOWANCE));
    Length overhang = job.rules().overhang();
    Length near = filled.at(filled.nearShoulder(job.building(), overhang));
    Length far = filled.at(filled.farShoulder(job.building(), overhang));
    Cut cut =
        Cut.of(near.nanometres(), filled.mid().nanometres(), far.nanometres())
            .wasting(offcut.nanometres(), wood.of(filled));
    boolean bound = refuses() || weighs;
    return bound && !isSettled(filled) ? cut.upTo(largestSize(filled).nanometres()) : cut;
  }

  /** Lets each place take only the logs that wishes, pins, keeping and what is built let in. */
  private void restrict(BalanceTask.Builder builder) {
    for (int at = 0; at < places.count(); at++) {
      int place = at;
      Wall wall = places.wall(at);
      RingPlace here = new RingPlace(0, places.round(at) - 1, at % places.walls().size());
      Optional<Integer> pair = places.number(at);
      if (pair.isPresent()) {
        builder.pin(here, pair.get());
        continue;
      }
      List<Integer> allowed = logs(log -> !places.pieces(log, place).isEmpty());
      if (job.built().held(places.round(at), wall.name()).isPresent() && allowed.size() == 1) {
        builder.pin(here, allowed.get(0));
        continue;
      }
      List<Integer> serving =
          logs(log -> !isSettled(job.logs().get(log)) && !places.serving(log, wall).isEmpty());
      if (!allowed.equals(serving)) {
        builder.only(here, allowed);
      }
    }
  }

  /** Returns whether a log is cut or measured in its place. */
  private boolean isSettled(Log log) {
    return job.built().placeOf(log.tag()).isPresent();
  }

  private boolean isSettled(FilledPlace filled) {
    return filled.logs().stream().allMatch(each -> isSettled(each.piece().log()));
  }

  private List<Integer> logs(java.util.function.IntPredicate which) {
    return IntStream.range(0, job.logs().size()).filter(which).boxed().toList();
  }

  private boolean refuses() {
    return new EndFit(job.rules(), job.building()).refuses();
  }

  /** Returns the largest size, by sixteenths or millimetres, that both ends of a place hold. */
  private Length largestSize(FilledPlace filled) {
    Length step = job.rules().metric() ? Length.ofMillimetres(1) : Length.ofInchFraction(1, 16);
    long low = 1;
    long high = 2_000;
    while (low < high) {
      long middle = (low + high + 1) / 2;
      if (holds(filled, step.times(middle))) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return step.times(low);
  }

  private boolean holds(FilledPlace filled, Length size) {
    return ends.holds(filled, Notch.of(size, job.rules()));
  }

  private int kindOf(Wall wall) {
    return IntStream.range(0, kinds.size())
        .filter(kind -> wall.isLike(kinds.get(kind)))
        .findFirst()
        .orElseThrow();
  }

  private static List<Wall> kinds(List<Wall> walls) {
    List<Wall> kinds = new ArrayList<>();
    for (Wall wall : walls) {
      if (kinds.stream().noneMatch(wall::isLike)) {
        kinds.add(wall);
      }
    }
    return kinds;
  }
}
