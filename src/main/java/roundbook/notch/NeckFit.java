package roundbook.notch;

import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * What a corner loses where the round profile of a log's end runs out under its marks.
 *
 * <p>A face sawn at thickness T on a log of diameter d reaches {@code h(d) = √(d² − T²) / 2} above
 * and below the centre line, so a mark at height z shows on it only if {@code d ≥ √(T² + 4 z²)}.
 *
 * @param notch the notch of the round
 * @param corner the thicknesses and lengths at the corner, and what may be lacking there
 * @param neck the natural diameters along the neck
 */
public record NeckFit(Notch notch, Corner corner, Neck neck) {
  private static final double TINY = 1e-6;

  /** The least drop over which a bearing is reckoned, for a slope that rounds to none. */
  public static final Length LEAST_DROP = Length.ofNanometres(2_540);

  /**
   * What a corner asks of a log's end.
   *
   * @param thickness T of the log's own wall
   * @param crossing T_x of the crossing wall
   * @param overhang o, past the crossing wall
   * @param limits what may be lacking
   * @param marks which marks are cut there
   */
  public record Corner(
      Length thickness, Length crossing, Length overhang, Limits limits, Marks marks) {
    /** A corner where both marks are cut. */
    public Corner(Length thickness, Length crossing, Length overhang, Limits limits) {
      this(thickness, crossing, overhang, limits, Marks.BOTH);
    }
  }

  /** Which marks are cut at an end: only a bearing that exists can lack something. */
  public enum Marks {
    /** The upper and the lower one. */
    BOTH,
    /** The upper one: underneath the log is sawn flat all along and bears on its whole bed. */
    UPPER,
    /** The lower one: nothing crosses above. */
    LOWER
  }

  /**
   * From where on an end is flagged; common practice, no published source.
   *
   * @param overUpper the least face wanted above the upper mark
   * @param look the share of the bearing that may be gone before the end is to be looked at
   * @param stop the share that may be gone before the log may not lie there
   */
  public record Limits(Length overUpper, double look, double stop) {}

  /**
   * The natural diameters along a neck.
   *
   * @param shoulder d_s, at the shoulder
   * @param line d_c, at the corner line, the outer face of the crossing wall
   * @param end at the trimmed end
   */
  public record Neck(Length shoulder, Length line, Length end) {
    /** Returns the neck of a log as thick all along. */
    public static Neck even(Length diameter) {
      return new Neck(diameter, diameter, diameter);
    }

    /** Returns the neck that is straight from the trimmed end to the shoulder. */
    public static Neck straight(Length end, Length shoulder, Length crossing, Length overhang) {
      long neck = crossing.plus(overhang).nanometres();
      Length more = shoulder.minus(end).timesRatio(overhang.nanometres(), neck);
      return new Neck(shoulder, end.plus(more), end);
    }

    /** Returns the least diameter along the bearing, by which it is measured. */
    public Length bearing() {
      return shoulder.least(line);
    }
  }

  /** How much an end lacks. */
  public enum Grade {
    /** A little or nothing: it is laid as it is. */
    NORMAL,
    /** So much that another log is better. */
    LOOK,
    /** So much that the log may not be cut to these marks. */
    STOP
  }

  /** Returns how much the end lacks. */
  public Grade grade() {
    double gone = 1 - bearingShare();
    double over = woodAboveUpperInches();
    Limits limits = corner.limits();
    if (hasNoFace() || isUpperOff() || gone > limits.stop() + TINY) {
      return Grade.STOP;
    }
    boolean upper = corner.marks() != Marks.LOWER;
    boolean thin = upper && over < limits.overUpper().inches() - TINY;
    return thin || gone > limits.look() + TINY ? Grade.LOOK : Grade.NORMAL;
  }

  /** Returns whether the end is to be looked at, or worse. */
  public boolean isFlagged() {
    return grade() != Grade.NORMAL;
  }

  /** Returns whether the log is no thicker than the wall somewhere along the bearing. */
  public boolean hasNoFace() {
    return neck.bearing().compareTo(corner.thickness()) <= 0;
  }

  /** Returns whether the upper mark is off the inside face at the shoulder. */
  public boolean isUpperOff() {
    return corner.marks() != Marks.LOWER && woodAboveUpperInches() < -TINY;
  }

  /** Returns whether the tail past the corner has wane; it carries nothing. */
  public boolean hasWaneyTail() {
    Length along = corner.crossing().plus(corner.overhang());
    Length drop = isFlat() ? Length.ZERO : notch.slope().dropOver(along);
    return neck.end().isLessThan(leastFor(notch.lower().plus(drop)));
  }

  /** Returns h at the shoulder, the reach of the sawn face; zero when there is no face. */
  double reachInches() {
    return reach(neck.shoulder());
  }

  private boolean isFlat() {
    return corner.marks() == Marks.UPPER;
  }

  /**
   * Returns the face above the upper mark on the inside, {@code h(d_s) − U}, in inches; above the
   * centre line where no upper mark is cut.
   */
  public double woodAboveUpperInches() {
    boolean none = corner.marks() == Marks.LOWER;
    return reachInches() - (none ? 0 : notch.upper().inches());
  }

  /** Returns that face as it is told, rounded down to the step of printed marks. */
  public Length woodAboveUpper() {
    Length exact = Length.of(woodAboveUpperInches() + TINY, LengthUnit.INCH);
    return exact.minus(notch.printStep().dividedBy(2)).roundedTo(notch.printStep());
  }

  /**
   * Returns the share of the bearing that is left as it is told, in whole percent, rounded down.
   */
  public int bearingPercent() {
    return (int) StrictMath.floor(bearingShare() * 100 + TINY);
  }

  /**
   * Returns the share of the bearing under the neck that is left: {@code ∫ min(T, 2 √(d² / 4 − z²))
   * dz} from the lower mark at the shoulder to that at the corner line, of {@code T} times the
   * same, with d the least diameter along it. A log that is sawn flat all along keeps all of it.
   */
  public double bearingShare() {
    if (isFlat()) {
      return 1;
    }
    double thickness = corner.thickness().inches();
    double top = notch.lower().inches();
    double bottom = bottomInches();
    double whole = wholeInches();
    double lost = thickness * (bottom - whole) - (chords(bottom) - chords(whole));
    return 1 - lost / (thickness * (bottom - top));
  }

  /** Returns how far below the centre line the bearing is whole, in inches. */
  public double wholeInches() {
    double reach = StrictMath.max(notch.lower().inches(), reach(neck.bearing()));
    return StrictMath.min(bottomInches(), reach);
  }

  private double bottomInches() {
    return notch.lower().plus(LEAST_DROP.most(notch.drop(corner.crossing()))).inches();
  }

  /** Returns the area of the log's round section between its centre and a height, in inches². */
  private double chords(double height) {
    double radius = neck.bearing().inches() / 2;
    double z = StrictMath.min(height, radius);
    double half = StrictMath.sqrt(radius * radius - z * z);
    return z * half + radius * radius * StrictMath.asin(z / radius);
  }

  private double reach(Length diameter) {
    double d = diameter.inches();
    double t = corner.thickness().inches();
    return d <= t ? 0 : StrictMath.sqrt(d * d - t * t) / 2;
  }

  /** Returns the least diameter for the face wanted above the upper mark. */
  public Length leastForShoulder() {
    return leastFor(notch.upper().plus(corner.limits().overUpper()));
  }

  /** Returns the least diameter for a full top bearing, {@code z = U}. */
  public Length leastForTop() {
    return leastFor(notch.upper());
  }

  /** Returns the least diameter for a full bottom bearing, {@code z = L + s T_x}. */
  public Length leastForBottom() {
    return leastFor(notch.lowerCorner(corner.crossing()));
  }

  private Length leastFor(Length height) {
    double t = corner.thickness().inches();
    double z = height.inches();
    return Length.of(StrictMath.sqrt(t * t + 4 * z * z), LengthUnit.INCH);
  }
}
