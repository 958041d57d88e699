package roundbook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.DiameterProfile.Station;
import roundbook.units.Length;

/**
 * Two short logs that fill one place of a wall together, one each side of an opening.
 *
 * <p>They lie in the wall as one log would: its diameters are those of the left log, of the right
 * log, and between them, where the opening is, those of a straight line from the one end to the
 * other. So the place has diameters at both corners, which are the short logs' own, and one at the
 * middle of the wall, from which the round's size is taken like that of any log.
 *
 * @param left the log at the left, seen from outside
 * @param right the log at the right
 */
public record Pair(Half left, Half right) {
  /**
   * One of the two.
   *
   * @param piece the log, cut to its length
   * @param left whether it lies left of the opening, seen from outside
   * @param buttOut whether its butt lies at the corner, not at the opening
   */
  public record Half(Piece piece, boolean left, boolean buttOut) {
    /** Returns whether its butt is the end nearer to the wall's start corner, at the right. */
    public boolean buttAtStart() {
      return buttOut != left;
    }

    /** Returns the same with the piece as it was hewn. */
    public Half hewn(Piece other) {
      return new Half(other, left, buttOut);
    }

    /** Returns its diameters by their distance from the end of it that is at the left. */
    private List<Station> fromLeft() {
      List<Station> stations = new ArrayList<>();
      stations.add(new Station(Length.ZERO, piece.at(buttAtStart() ? length() : Length.ZERO)));
      for (Station each : piece.log().profile().stations()) {
        Length along = each.fromButt().minus(piece.cutOffButt());
        Length at = buttAtStart() ? length().minus(along) : along;
        if (at.isMoreThan(Length.ZERO) && at.isLessThan(length())) {
          stations.add(new Station(at, each.diameter()));
        }
      }
      stations.add(new Station(length(), piece.at(buttAtStart() ? Length.ZERO : length())));
      return stations;
    }

    private Length length() {
      return piece.trimmed();
    }
  }

  /**
   * The place that a pair fills.
   *
   * @param round its round
   * @param wall its wall
   * @param trimmed the trimmed length of the wall's logs
   * @param buttAtStart whether the butts of its round lie at their walls' start corners
   * @param allowance what is squared off each end of a log
   */
  public record Where(int round, Wall wall, Length trimmed, boolean buttAtStart, Length allowance) {
    /** Returns a place of a job. */
    public static Where of(BuildRules rules, Building building, int round, Wall wall) {
      return new Where(
          round,
          wall,
          building.trimmed(wall, rules.overhang()),
          rules.clockwise(round),
          rules.length(Setting.SQUARING_ALLOWANCE));
    }
  }

  /** Returns both, the left one first. */
  public List<Half> halves() {
    return List.of(left, right);
  }

  /** Returns the tag of two logs that lie in one place. */
  static String tag(String left, String right) {
    return left + " + " + right;
  }

  /**
   * Returns the log that the two are in their place. It is as long as both and the opening, squared
   * at its two ends, so that what falls off it is what falls off them.
   */
  public Log log(Where where) {
    Log one = left.piece.log();
    Log other = right.piece.log();
    Length across = where.trimmed.minus(left.length()).minus(right.length());
    return new Log(
        tag(one.tag(), other.tag()),
        one.length().plus(other.length()).plus(across).minus(where.allowance.times(2)),
        profile(where),
        sources(one.sources(), other.sources()),
        new Log.Traits(
            one.traits().species(),
            one.traits().bark(),
            one.traits().sweep().most(other.traits().sweep()),
            Log.Keep.ANY,
            false,
            ""),
        new Log.Wish(where.wall.name(), java.util.OptionalInt.of(where.round)),
        one.origin(),
        Map.of(),
        Optional.of(this));
  }

  private DiameterProfile profile(Where where) {
    Length start = where.trimmed.minus(right.length());
    Stream<Station> moved =
        right.fromLeft().stream()
            .map(each -> new Station(each.fromButt().plus(start), each.diameter()));
    return new DiameterProfile(
        Stream.concat(left.fromLeft().stream(), moved)
            .map(each -> new Station(fromButt(each, where), each.diameter()))
            .toList());
  }

  private static Length fromButt(Station fromLeft, Where where) {
    Length at = fromLeft.fromButt();
    return where.allowance.plus(where.buttAtStart ? where.trimmed.minus(at) : at);
  }

  private static Log.Sources sources(Log.Sources one, Log.Sources other) {
    boolean ends = one.butt() == Log.Source.ESTIMATED || one.tip() == Log.Source.ESTIMATED;
    ends |= other.butt() == Log.Source.ESTIMATED || other.tip() == Log.Source.ESTIMATED;
    boolean mid = one.mid() == Log.Source.ESTIMATED || other.mid() == Log.Source.ESTIMATED;
    return new Log.Sources(source(ends), source(mid), source(ends));
  }

  private static Log.Source source(boolean estimated) {
    return estimated ? Log.Source.ESTIMATED : Log.Source.MEASURED;
  }
}
