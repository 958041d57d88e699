package roundbook.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.notch.NeckFit;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.rounds.Places;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
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
    this.ends = new EndFit(job.rules(), job.building(), choice.courses().size());
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

  List<FilledPlace> placed() {
    return courses().stream().flatMap(course -> course.places().stream()).toList();
  }

  /** Returns the rounds that are not cut. */
  List<Course> uncut() {
    return courses().subList(Math.min(job.built().rounds(), courses().size()), courses().size());
  }

  /** Returns the places of the rounds that are not cut. */
  List<FilledPlace> uncutPlaces() {
    return uncut().stream().flatMap(course -> course.places().stream()).toList();
  }

  /** Returns whether a placed log may change with another: it is neither cut nor measured. */
  boolean free(FilledPlace place) {
    return job.built().placeOf(place.first().piece().log().tag()).isEmpty();
  }

  /** Returns the logs without a place. */
  List<Log> unused() {
    return choice.unused();
  }

  /** Returns the unused logs that may stand in a place, nearest in middle diameter first. */
  List<Log> nearest(FilledPlace place) {
    Length mid = place.isShared() ? place.mid() : place.first().piece().log().mid();
    return nearest(mid, log -> !pieces(log, place).isEmpty());
  }

  private List<Log> nearest(Length mid, Predicate<Log> serves) {
    return unused().stream()
        .filter(serves)
        .sorted(Comparator.comparing(log -> log.mid().minus(mid).absolute()))
        .limit(NEAREST)
        .toList();
  }

  /** Returns the free logs of other rounds nearest to a placed one in middle diameter. */
  List<FilledPlace> nearestPlaced(FilledPlace place) {
    Length mid = place.mid();
    return placed().stream()
        .filter(other -> other.round() != place.round() && free(other))
        .sorted(Comparator.comparing(other -> other.mid().minus(mid).absolute()))
        .limit(NEAREST)
        .toList();
  }

  /** Returns the ways to cut a log so that it fills a place alone; none where it may not. */
  List<FilledPlace> pieces(Log log, FilledPlace place) {
    return open.pieces(numbers.get(log.tag()), place.wall(), place.round()).stream()
        .map(place::with)
        .toList();
  }

  /**
   * Returns the ways to cut what fills a place for another; none where it may not stand there, or
   * where two short logs fill it.
   */
  List<FilledPlace> pieces(FilledPlace from, FilledPlace place) {
    return from.isShared() ? List.of() : pieces(from.first().piece().log(), place);
  }

  /** Returns whether a log may lie in a place, whole or as one of its two short logs. */
  boolean serves(Log log, FilledPlace place) {
    return !pieces(log, place).isEmpty()
        || place.isShared()
            && place.logs().stream().anyMatch(old -> !shortLogs(log, old).isEmpty());
  }

  /** Returns the unused logs that may replace one of two short logs, nearest in size first. */
  List<Log> nearest(PlacedLog old) {
    return nearest(old.piece().log().mid(), log -> !shortLogs(log, old).isEmpty());
  }

  /** Returns the ways in which a log too short for every wall may replace one of two short logs. */
  List<PlacedLog> shortLogs(Log log, PlacedLog old) {
    boolean bound =
        log.traits().keep() != Log.Keep.ANY
            || job.pins().stream().anyMatch(pin -> pin.log().equals(log.tag()))
            || !log.place().wall().isEmpty()
                && !log.place().wall().equalsIgnoreCase(old.wall().name());
    return bound || fit.isWallLog(log) ? List.of() : fit.insteadOf(old, log);
  }

  /** Returns by how much the score would grow with a place filled so. */
  double change(FilledPlace place) {
    int round = place.round();
    int side = score.side(place.wall());
    double before = score.around(round);
    ScoredPlace stood = score.put(round, side, score.station(place));
    double after = score.around(round);
    score.put(round, side, stood);
    return after - before;
  }

  /** Returns the length of a longer wall that the log of a place could fill, if any. */
  Optional<Length> longer(FilledPlace place) {
    return score.longer(place);
  }

  /** Returns by how much the score would grow with a place filled so, but for what falls off. */
  double worse(FilledPlace place, FilledPlace than) {
    return change(place) - score.station(place).waste() + score.station(than).waste();
  }

  /** Returns by how much the score would grow with two places filled so. */
  double change(FilledPlace one, FilledPlace other) {
    int[] touched = {one.round(), other.round()};
    double before = score.around(touched);
    int side = score.side(one.wall());
    int otherSide = score.side(other.wall());
    ScoredPlace stood = score.put(one.round(), side, score.station(one));
    ScoredPlace otherStood = score.put(other.round(), otherSide, score.station(other));
    double after = score.around(touched);
    score.put(one.round(), side, stood);
    score.put(other.round(), otherSide, otherStood);
    return after - before;
  }

  /** Returns whether no end of a round is refused with a place filled so. */
  boolean tipsHold(FilledPlace place) {
    if (!ends.refuses()) {
      return true;
    }
    Course course = with(place);
    return course.places().stream().allMatch(each -> ends.holds(each, course.notch()));
  }

  /** Returns all that a place filled so would do, from the exact heights and gaps. */
  Effect effect(FilledPlace place) {
    List<Course> other = new ArrayList<>(courses());
    Course course = with(place);
    other.set(place.round() - 1, course);
    Stack tried = Stack.of(job.rules(), job.building(), other, job.built());
    List<Joint> own = tried.joints(place.wall(), place.round());
    Length gap = job.rules().gap();
    return new Effect(
        change(place),
        planned.computeIfAbsent(place.round(), round -> flags(stack, round)),
        flags(tried, place.round()),
        own.stream().map(Joint::least).reduce(Length::least).orElse(gap),
        own.stream().map(Joint::most).reduce(Length::most).orElse(gap),
        !ends.isFlagged(course, place));
  }

  private Course with(FilledPlace other) {
    List<FilledPlace> places =
        courses().get(other.round() - 1).places().stream()
            .map(place -> place.wall().equals(other.wall()) ? other : place)
            .toList();
    return Course.of(other.round(), places, job);
  }

  private int flags(Stack tried, int round) {
    Course course = tried.courses().get(round - 1);
    long joints =
        job.building().walls().stream()
            .flatMap(wall -> tried.joints(wall, round).stream())
            .filter(joint -> joint.flag(job.rules()) != Joint.Flag.NONE)
            .count();
    long thin =
        course.places().stream()
            .flatMap(each -> Stream.of(ends.butt(course, each), ends.tip(course, each)))
            .filter(NeckFit::isFlagged)
            .count();
    Length spread = course.spread().roundedTo(job.rules().printStep());
    boolean wide = spread.isMoreThan(job.rules().length(Setting.SPREAD_MOST));
    return Math.toIntExact(joints + thin + (wide ? 1 : 0));
  }
}
