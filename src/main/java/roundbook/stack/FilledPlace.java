package roundbook.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * What fills one place of a wall: a log from corner to corner, or two short ones, one each side of
 * an opening.
 *
 * <p>Its diameters are those of its logs; between two, where the opening is, those of a straight
 * line from the end of the one to the end of the other. So every place has diameters at both
 * corners and at the middle of the wall, from which its round's size is taken.
 *
 * @param wall its wall
 * @param round its round, counted from 1
 * @param buttAtStart whether the butts of its round lie at their walls' start corners: right, seen
 *     from outside
 * @param logs the one log, or the left one and the right one seen from outside
 */
public record FilledPlace(Wall wall, int round, boolean buttAtStart, List<PlacedLog> logs) {
  /** Copies the list and checks that there is one log or two. */
  public FilledPlace {
    logs = List.copyOf(logs);
    if (logs.isEmpty() || logs.size() > 2) {
      throw new IllegalArgumentException("a place is filled by one log or two");
    }
  }

  /** Returns a place filled by one log. */
  public static FilledPlace of(Piece piece, Wall wall, int round, boolean buttAtStart) {
    return new FilledPlace(
        wall,
        round,
        buttAtStart,
        List.of(new PlacedLog(piece, wall, round, buttAtStart, Length.ZERO)));
  }

  /** Returns a place of a job that two short logs fill, the left one and the right one. */
  public static FilledPlace of(Job job, PlacedLog left, PlacedLog right) {
    boolean start = job.isButtAtStart(left.wall(), left.round());
    return new FilledPlace(left.wall(), left.round(), start, List.of(left, right));
  }

  /** Returns a place of a job filled by the logs that are held there; empty where one is gone. */
  public static Optional<FilledPlace> of(Job job, Place place, Held held) {
    Optional<Wall> wall = job.building().wall(place.wall());
    boolean gone = held.tags().stream().anyMatch(tag -> job.log(tag).isEmpty());
    return wall.filter(each -> !gone).map(each -> of(job, place.round(), each, held));
  }

  private static FilledPlace of(Job job, int round, Wall wall, Held held) {
    Length trimmed = job.building().trimmed(wall, job.rules().overhang());
    boolean start = job.isButtAtStart(wall, round);
    List<PlacedLog> logs = new ArrayList<>();
    for (HeldLog each : held.logs()) {
      Length length = each.beside().map(HeldLog.Beside::trimmed).orElse(trimmed);
      Piece piece = new Piece(job.log(each.tag()).orElseThrow(), each.cutOffButt(), length);
      boolean left = logs.isEmpty();
      boolean butt = each.beside().map(beside -> beside.buttOut() != left).orElse(start);
      Length from = left ? Length.ZERO : trimmed.minus(length);
      logs.add(new PlacedLog(piece, wall, round, butt, from));
    }
    return new FilledPlace(wall, round, start, logs);
  }

  /** Returns this place filled by one other log. */
  public FilledPlace with(Piece piece) {
    return of(piece, wall, round, buttAtStart);
  }

  /** Returns this place with another log for one of its own, each side of an opening. */
  public FilledPlace with(PlacedLog other, PlacedLog instead) {
    List<PlacedLog> changed = logs.stream().map(log -> log.equals(instead) ? other : log).toList();
    return new FilledPlace(wall, round, buttAtStart, changed);
  }

  /** Returns whether two short logs lie there. */
  public boolean isShared() {
    return logs.size() > 1;
  }

  /** Returns the log that fills the place alone, or the left one of two. */
  public PlacedLog first() {
    return logs.get(0);
  }

  private PlacedLog last() {
    return logs.get(logs.size() - 1);
  }

  /** Returns how the place is known in what is built and measured. */
  public Place place() {
    return new Place(round, wall.name());
  }

  /** Returns how a log of it is known there: by the whole place, or by its side of the opening. */
  public Place placeOf(PlacedLog log) {
    return isShared() ? place().side(log.isLeft()) : place();
  }

  /** Returns whether the middles of all logs there were measured as hewn, there or in the yard. */
  public boolean isMeasured(AsBuilt built) {
    return logs.stream().allMatch(log -> built.knowsMiddle(placeOf(log), log.piece().log().tag()));
  }

  /** Returns which logs lie there and how each is cut. */
  public Held held() {
    return new Held(logs.stream().map(this::held).toList());
  }

  private HeldLog held(PlacedLog log) {
    Piece piece = log.piece();
    return isShared()
        ? HeldLog.beside(piece.log().tag(), piece.cutOffButt(), piece.trimmed(), log.buttOut())
        : new HeldLog(piece.log().tag(), piece.cutOffButt());
  }

  /** Returns the tag of its log, or both joined, as they are printed. */
  public String tags() {
    return held().words();
  }

  /** Returns the trimmed length of the wall's logs. */
  public Length trimmed() {
    return last().to();
  }

  /** Returns what is cut off its logs beyond what is squared off each of their ends. */
  public Length offcut(Length allowance) {
    return logs.stream()
        .map(PlacedLog::piece)
        .map(each -> each.log().length().minus(each.trimmed()).minus(allowance.times(2)))
        .reduce(Length.ZERO, Length::plus);
  }

  /** Returns the diameter at a distance from the wall's left trimmed end, seen from outside. */
  public Length fromLeft(Length distance) {
    Length from = first().to();
    Length to = last().fromLeft();
    if (!isShared() || !distance.isMoreThan(from)) {
      return first().at(distance);
    }
    if (!distance.isLessThan(to)) {
      return last().at(distance);
    }
    Length one = first().at(from);
    Length rise = last().at(to).minus(one);
    return one.plus(
        rise.timesRatio(distance.minus(from).nanometres(), to.minus(from).nanometres()));
  }

  /** Returns the diameter at a distance from the end at which its round's butts lie. */
  public Length at(Length fromButt) {
    return fromLeft(buttAtStart ? trimmed().minus(fromButt) : fromButt);
  }

  /** Returns the diameter at the trimmed end at which its round's butts lie. */
  public Length butt() {
    return at(Length.ZERO);
  }

  /** Returns the diameter at the middle of the wall, from which the round's size is taken. */
  public Length mid() {
    return at(trimmed().dividedBy(2));
  }

  /** Returns the diameter at the trimmed end at which its round's tips lie. */
  public Length tip() {
    return at(trimmed());
  }

  /** Returns where its taper changes, from the wall's left trimmed end, seen from outside. */
  public List<Length> kinks() {
    Stream<Length> inner = isShared() ? Stream.of(first().to(), last().fromLeft()) : Stream.empty();
    return Stream.concat(logs.stream().flatMap(log -> log.kinks().stream()), inner).toList();
  }

  /** Returns the name of the corner at which its round's butts lie. */
  public String buttCorner(Building building) {
    return buttAtStart ? building.startCorner(wall) : building.endCorner(wall);
  }

  /** Returns the wall crossing at the end of the butts. */
  public Wall crossingAtButt(Building building) {
    return buttAtStart ? building.before(wall) : building.after(wall);
  }

  /** Returns the wall crossing at the end of the tips. */
  public Wall crossingAtTip(Building building) {
    return buttAtStart ? building.after(wall) : building.before(wall);
  }

  /** Returns the distance from the trimmed butt end to the near shoulder, {@code T_x + o}. */
  public Length nearShoulder(Building building, Length overhang) {
    return crossingAtButt(building).thickness().plus(overhang);
  }

  /** Returns the distance from the trimmed butt end to the far shoulder, {@code Λ − (T_x + o)}. */
  public Length farShoulder(Building building, Length overhang) {
    return trimmed().minus(crossingAtTip(building).thickness()).minus(overhang);
  }
}
