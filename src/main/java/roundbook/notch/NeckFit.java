package roundbook.notch;

import java.util.ArrayList;
import java.util.List;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Whether the round profile of a log's end holds all its marks.
 *
 * <p>A face sawn at thickness T on a log of diameter d reaches {@code h = √(d² − T²) / 2} above and
 * below the centre line, so a mark at height z shows on it only if {@code d ≥ √(T² + 4 z²)}. The
 * diameter used is the smallest in the neck.
 *
 * @param notch the notch of the round
 * @param corner the thicknesses and lengths at the corner
 * @param diameter d, the smallest natural diameter in the neck
 */
public record NeckFit(Notch notch, Corner corner, Length diameter) {
  /**
   * What a corner asks of a log's end.
   *
   * @param thickness T of the log's own wall
   * @param crossing T_x of the crossing wall
   * @param overhang o, past the crossing wall
   * @param shoulderLeast m, wood wanted above the upper mark on the inside face
   */
  public record Corner(Length thickness, Length crossing, Length overhang, Length shoulderLeast) {}

  /** What is wrong with an end, in the words of the crew. */
  public enum Fault {
    /** The log is no thicker than the wall: no face at all. */
    NO_FACE,
    /** Too little wood above the upper mark. */
    SHOULDER_THIN,
    /** The bearing has wane: not all of it carries. */
    BEARING_WANEY,
    /** The tail past the corner has wane; it carries nothing. */
    TAIL_WANEY
  }

  /** Returns h, the reach of the sawn face from the centre line; zero when there is no face. */
  public double reachInches() {
    double d = diameter.inches();
    double t = corner.thickness().inches();
    return d <= t ? 0 : StrictMath.sqrt(d * d - t * t) / 2;
  }

  /** Returns the wood above the upper mark on the inside face, {@code h − U}, in inches. */
  public double woodAboveUpperInches() {
    return reachInches() - notch.upper().inches();
  }

  /** Returns the least diameter for the shoulder, {@code z = U + m}. */
  public Length leastForShoulder() {
    return leastFor(notch.upper().plus(corner.shoulderLeast()));
  }

  /** Returns the least diameter for a full top bearing, {@code z = U}. */
  public Length leastForTop() {
    return leastFor(notch.upper());
  }

  /** Returns the least diameter for a full bottom bearing, {@code z = L + s T_x}. */
  public Length leastForBottom() {
    return leastFor(notch.lowerCorner(corner.crossing()));
  }

  /** Returns the least diameter for full bearings, top and bottom. */
  public Length leastForBearing() {
    return leastForTop().most(leastForBottom());
  }

  /** Returns the least diameter for a tail without wane, {@code z = L + s (T_x + o)}. */
  public Length leastForTail() {
    Length along = corner.crossing().plus(corner.overhang());
    return leastFor(notch.lower().plus(notch.slope().dropOver(along)));
  }

  /** Returns every fault of the end, worst first; empty when all marks show. */
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    if (diameter.compareTo(corner.thickness()) <= 0) {
      faults.add(Fault.NO_FACE);
    }
    addIfThinner(faults, leastForShoulder(), Fault.SHOULDER_THIN);
    addIfThinner(faults, leastForBearing(), Fault.BEARING_WANEY);
    addIfThinner(faults, leastForTail(), Fault.TAIL_WANEY);
    return List.copyOf(faults);
  }

  /** Returns whether the end lacks more than its tail, which carries nothing. */
  public boolean weak() {
    return faults().stream().anyMatch(fault -> fault != Fault.TAIL_WANEY);
  }

  /**
   * Returns the bearing area left under the neck, in square inches: {@code ∫ min(T, 2 √(d² / 4 − (L
   * + s t)²)) dt} over the crossing wall's thickness, by Simpson's rule on 200 strips.
   */
  public double bearingSquareInches() {
    int strips = 200;
    double width = corner.crossing().inches() / strips;
    double sum = bearingWidth(0) + bearingWidth(corner.crossing().inches());
    for (int i = 1; i < strips; i++) {
      sum += bearingWidth(i * width) * (i % 2 == 0 ? 2 : 4);
    }
    return sum * width / 3;
  }

  private double bearingWidth(double along) {
    double depth = notch.lower().inches() + notch.slope().ratio() * along;
    double radius = diameter.inches() / 2;
    double half = radius * radius - depth * depth;
    return half <= 0 ? 0 : Math.min(corner.thickness().inches(), 2 * StrictMath.sqrt(half));
  }

  private Length leastFor(Length height) {
    double t = corner.thickness().inches();
    double z = height.inches();
    return Length.of(StrictMath.sqrt(t * t + 4 * z * z), LengthUnit.INCH);
  }

  private void addIfThinner(List<Fault> faults, Length least, Fault fault) {
    if (diameter.isLessThan(least)) {
      faults.add(fault);
    }
  }
}
