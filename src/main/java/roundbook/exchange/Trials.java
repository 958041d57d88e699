package roundbook.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Pair;
import roundbook.job.Pair.Half;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.rounds.Places;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Tries other logs in the places of a plan.
 *
 * <p>Only the spares and the placed logs nearest in middle diameter are tried in a place: others
 * would change the size of its round. Rounds that are cut are left alone. A log that is measured
 * and not cut may have a spare, for it can still be spoilt, but changes places with no other.
 */
final class Trials {
  private static final int NEAREST = 16;

  private final Job job;
  private final Choice choice;
  private final Stack stack;
  private final Places open;
  private final Score score;
  private final EndFit ends;
  private final Fit fit;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<Integer, Integer> planned = new HashMap<>();

  Trials(Job job, Choice choice, Stack stack) {
    this.job = job;
    this.choice = choice;
    this.stack = stack;
    this.open = new Places(job.withBuilt(job.built().onlyCut()), choice.courses().size());
    this.score = new Score(job, choice.courses());
    this.ends = new EndFit(job.rules(), job.building());
    this.fit = new Fit(job);
    for (int log = 0; log < job.logs().size(); log++) {
      numbers.put(job.logs().get(log).tag(), log);
    }
  }

  Job job() {
    return job;
  }

  Score score() {
    return score;
  }

  List<Course> courses() {
    return choice.courses();
  }

  List<PlacedLog> placed() {
    return courses().stream().flatMap(course -> course.logs().stream()).toList();
  }

  /** Returns the rounds that are not cut. */
  List<Course> uncut() {
    return courses().subList(Math.min(job.built().rounds(), courses().size()), courses().size());
  }

  /** Returns the placed logs that are not cut. */
  List<PlacedLog> uncutLogs() {
    return uncut().stream().flatMap(course -> course.logs().stream()).toList();
  }

  /** Returns whether a placed log may change with another: it is neither cut nor measured. */
  boolean free(PlacedLog placed) {
    return job.built().placeOf(placed.piece().log().tag()).isEmpty();
  }

  /** Returns the logs without a place. */
  List<Log> unused() {
    return choice.unused();
  }

  /** Returns the unused logs that may stand in a place, nearest in middle diameter first. */
  List<Log> nearest(PlacedLog place) {
    Length mid = place.piece().log().mid();
    return unused().stream()
        .filter(log -> !pieces(log, place).isEmpty())
        .sorted(Comparator.comparing(log -> log.mid().minus(mid).absolute()))
        .limit(NEAREST)
        .toList();
  }

  /** Returns the free logs of other rounds nearest to a placed one in middle diameter. */
  List<PlacedLog> nearestPlaced(PlacedLog place) {
    Length mid = place.piece().mid();
    return placed().stream()
        .filter(log -> log.round() != place.round() && free(log))
        .sorted(Comparator.comparing(log -> log.piece().mid().minus(mid).absolute()))
        .limit(NEAREST)
        .toList();
  }

  /**
   * Returns the ways to cut a log for the place of another; none where it may not stand. A pair of
   * short logs stands in its own place only.
   */
  List<Piece> pieces(Log log, PlacedLog place) {
    return log.pair().isPresent()
        ? List.of()
        : open.pieces(numbers.get(log.tag()), place.wall(), place.round());
  }

  /** Returns whether a log may lie in a place, whole or as one of its two short logs. */
  boolean serves(Log log, PlacedLog place) {
    return !pieces(log, place).isEmpty()
        || place.piece().log().pair().stream()
            .flatMap(pair -> pair.halves().stream())
            .anyMatch(half -> !halves(log, place, half).isEmpty());
  }

  /** Returns the unused logs that may replace one of two short logs, nearest in size first. */
  List<Log> nearest(PlacedLog place, Half old) {
    Length mid = old.piece().log().mid();
    return unused().stream()
        .filter(log -> !halves(log, place, old).isEmpty())
        .sorted(Comparator.comparing(log -> log.mid().minus(mid).absolute()))
        .limit(NEAREST)
        .toList();
  }

  /** Returns the ways in which a log too short for every wall may replace one of two short logs. */
  List<Half> halves(Log log, PlacedLog place, Half old) {
    boolean bound =
        log.traits().keep() != Log.Keep.ANY
            || job.pins().stream().anyMatch(pin -> pin.log().equals(log.tag()))
            || !log.place().wall().isEmpty()
                && !log.place().wall().equalsIgnoreCase(place.wall().name());
    return bound || fit.isWallLog(log)
        ? List.of()
        : fit.halves(log, place.wall(), old.piece().trimmed(), old.left());
  }

  /** Returns what lies in a place of two short logs when one of them is another. */
  Piece withHalf(PlacedLog place, Half half) {
    Pair was = place.piece().log().pair().orElseThrow();
    Pair pair = half.left() ? new Pair(half, was.right()) : new Pair(was.left(), half);
    Pair.Where where = Pair.Where.of(job.rules(), job.building(), place.round(), place.wall());
    return fit.pieces(pair.log(where), place.wall()).get(0);
  }

  /** Returns by how much the score would grow with a piece in a place. */
  double change(PlacedLog place, Piece piece) {
    int round = place.round();
    int side = score.side(place.wall());
    double before = score.around(round);
    Station stood = score.put(round, side, score.station(piece));
    double after = score.around(round);
    score.put(round, side, stood);
    return after - before;
  }

  /** Returns by how much the score would grow if two placed logs changed places, cut so. */
  double change(PlacedLog one, Piece forOne, PlacedLog other, Piece forOther) {
    int[] touched = {one.round(), other.round()};
    double before = score.around(touched);
    int side = score.side(one.wall());
    int otherSide = score.side(other.wall());
    Station stood = score.put(one.round(), side, score.station(forOne));
    Station otherStood = score.put(other.round(), otherSide, score.station(forOther));
    double after = score.around(touched);
    score.put(one.round(), side, stood);
    score.put(other.round(), otherSide, otherStood);
    return after - before;
  }

  /** Returns whether the tips of a round hold with a piece in a place, where that is a rule. */
  boolean tipsHold(PlacedLog place, Piece piece) {
    if (!ends.refuses()) {
      return true;
    }
    Course course = with(courses().get(place.round() - 1), place, piece);
    return course.logs().stream()
        .allMatch(log -> ends.tipBears(log.piece(), log.wall(), course.notch()));
  }

  /** Returns all that a piece would do in a place, from the exact heights and gaps. */
  Effect effect(PlacedLog place, Piece piece) {
    List<Course> other = new ArrayList<>(courses());
    other.set(place.round() - 1, with(other.get(place.round() - 1), place, piece));
    Stack tried = Stack.of(job.rules(), job.building(), other, job.built());
    List<Joint> own = tried.joints(place.wall(), place.round());
    Length gap = job.rules().gap();
    return new Effect(
        change(place, piece),
        planned.computeIfAbsent(place.round(), round -> flags(stack, round)),
        flags(tried, place.round()),
        own.stream().map(Joint::least).reduce(Length::least).orElse(gap),
        own.stream().map(Joint::most).reduce(Length::most).orElse(gap));
  }

  private Course with(Course course, PlacedLog place, Piece piece) {
    PlacedLog other = new PlacedLog(piece, place.wall(), place.round(), place.buttAtStart());
    List<PlacedLog> logs =
        course.logs().stream().map(log -> log.wall().equals(place.wall()) ? other : log).toList();
    return Course.of(course.round(), logs, job.rules());
  }

  private int flags(Stack tried, int round) {
    Course course = tried.courses().get(round - 1);
    long joints =
        job.building().walls().stream()
            .flatMap(wall -> tried.joints(wall, round).stream())
            .filter(joint -> joint.flag(job.rules()) != Joint.Flag.NONE)
            .count();
    long thin =
        course.logs().stream()
            .flatMap(log -> Stream.of(ends.butt(course, log), ends.tip(course, log)))
            .filter(fit -> fit.weak())
            .count();
    Length spread = course.spread().roundedTo(job.rules().printStep());
    boolean wide = spread.isMoreThan(job.rules().length(Setting.SPREAD_MOST));
    return Math.toIntExact(joints + thin + (wide ? 1 : 0));
  }
}
