package roundbook.wood;

import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * The open joint between two neighbouring logs of one wall.
 *
 * <p>Both profiles are laid along the same line, from one shoulder to the other, whichever way each
 * log's butt points. Where a log is thinner than the wall it has no face there, and the joint's
 * height at the face is counted to its centre line.
 *
 * @param lower natural diameters of the lower log over the joint
 * @param upper natural diameters of the upper log over the same distances
 * @param spacing C, from centre line to centre line
 * @param thickness T, of the wall
 */
public record ChinkJoint(RoundProfile lower, RoundProfile upper, double spacing, double thickness) {
  private static final double SAME_PLACE = 1e-6;

  /** Checks that both logs cover the same distances. */
  public ChinkJoint {
    double off =
        Math.max(Math.abs(lower.start() - upper.start()), Math.abs(lower.end() - upper.end()));
    if (off > SAME_PLACE * Math.max(1, lower.length()) || !(thickness > 0)) {
      throw new IllegalArgumentException("the two logs of a joint must cover the same stretch");
    }
  }

  /** Returns the length of the chinking on one face, shoulder to shoulder. */
  public double length() {
    return lower.length();
  }

  /** Returns the gap between the crowns at a distance, {@code C − (d₁ + d₂) / 2}. */
  public double crownGap(double distance) {
    return heightAcross(distance, 0);
  }

  /** Returns the height of the joint at its faces, {@code C − h(d₁) − h(d₂)}. */
  public double faceHeight(double distance) {
    return heightAcross(distance, thickness / 2);
  }

  /**
   * Returns the height of the joint at a depth p from a face, {@code C − √(d₁²/4 − v²) − √(d₂²/4 −
   * v²)} with {@code v = T/2 − p}.
   */
  public double heightAtDepth(double distance, double depth) {
    return heightAcross(distance, Math.abs(thickness / 2 - depth));
  }

  private double heightAcross(double distance, double across) {
    double below = Taper.reach(lower.at(distance) / 2, across);
    return spacing - below - Taper.reach(upper.at(distance) / 2, across);
  }

  /**
   * Returns the greatest height of the joint at a depth from a face anywhere along it; backer is
   * chosen by it.
   */
  public double widestAtDepth(double depth) {
    TreeSet<Double> kinks = kinks(2 * Math.abs(thickness / 2 - depth));
    return kinks.stream().mapToDouble(x -> heightAtDepth(x, depth)).max().orElseThrow();
  }

  /** Returns the least height of the joint at its faces anywhere along it. */
  public double leastFaceHeight() {
    return kinks(thickness).stream().mapToDouble(this::faceHeight).min().orElseThrow();
  }

  /**
   * Returns the section of the joint, face to face: {@code C T − S(d₁) − S(d₂)}, S the half section
   * of a sawn log.
   */
  public double section(double distance) {
    double wood = SawnLog.section(lower.at(distance), thickness);
    return spacing * thickness - (wood + SawnLog.section(upper.at(distance), thickness)) / 2;
  }

  /** Returns the volume of the joint from face to face, exactly, in closed form. */
  public double volume() {
    return spacing * thickness * length() - sum(thickness / 2, t -> t.halfVolume(thickness / 2));
  }

  /** Returns the area of chinking to be seen on one face, exactly, in closed form. */
  public double stripArea() {
    return spacing * length() - sum(thickness / 2, t -> t.faceArea(thickness / 2));
  }

  /**
   * Returns the volume of a strip of chinking p deep along one face, exactly, in closed form.
   *
   * @param depth p, at most half the thickness of the wall
   */
  public double stripVolume(double depth) {
    double v = thickness / 2 - requireDepth(depth);
    double outer = sum(thickness / 2, t -> t.halfVolume(thickness / 2));
    double inner = v == 0 ? 0 : sum(v, t -> t.halfVolume(v));
    return spacing * depth * length() - (outer - inner) / 2;
  }

  private double requireDepth(double depth) {
    if (!(depth >= 0 && depth <= thickness / 2)) {
      throw new IllegalArgumentException("depth beyond the middle of the wall: " + depth);
    }
    return depth;
  }

  private double sum(double e, ToDoubleFunction<Taper> part) {
    double below = lower.tapers(e).stream().mapToDouble(part).sum();
    return below + upper.tapers(e).stream().mapToDouble(part).sum();
  }

  private TreeSet<Double> kinks(double diameter) {
    TreeSet<Double> kinks = new TreeSet<>();
    lower.addKinks(diameter, kinks);
    upper.addKinks(diameter, kinks);
    return kinks;
  }
}
