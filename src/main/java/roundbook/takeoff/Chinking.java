package roundbook.takeoff;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import roundbook.job.Wall;

/**
 * The filling of all joints between the logs.
 *
 * <p>Caution: the quantities are of the joints as planned. Logs differ from their three diameters;
 * the waste factor is for that.
 *
 * @param joints every joint, wall by wall, from the lowest up
 * @param waste what is bought over the volume reckoned, as a share
 */
public record Chinking(List<JointFill> joints, double waste) {
  /** Copies the list. */
  public Chinking {
    joints = List.copyOf(joints);
  }

  /** Returns the joints of a wall. */
  public Chinking of(Wall wall) {
    List<JointFill> own =
        joints.stream().filter(fill -> fill.joint().lower().wall().equals(wall)).toList();
    return new Chinking(own, waste);
  }

  /** Returns the length of chinking on one face, inches. */
  public double run() {
    return sum(JointFill::run);
  }

  /** Returns the area of chinking to be seen on one face, square inches. */
  public double faceArea() {
    return sum(JointFill::faceArea);
  }

  /** Returns the volume of the joints from face to face, cubic inches. */
  public double gapVolume() {
    return sum(JointFill::gapVolume);
  }

  /** Returns the volume of the chinking on both faces, cubic inches, without waste. */
  public double stripVolume() {
    return sum(JointFill::stripVolume);
  }

  /** Returns the volume of chinking to buy, cubic inches. */
  public double toBuy() {
    return stripVolume() * (1 + waste);
  }

  /** Returns the volume between the strips, cubic inches. */
  public double cavity() {
    return gapVolume() - stripVolume();
  }

  /**
   * Returns the length of backer by stock size, both faces, inches; joints too wide for every stock
   * size come under infinity.
   */
  public Map<Double, Double> backer() {
    Map<Double, Double> lengths = new TreeMap<>();
    for (JointFill fill : joints) {
      OptionalDouble size = fill.backer();
      lengths.merge(size.orElse(Double.POSITIVE_INFINITY), 2 * fill.run(), Double::sum);
    }
    return lengths;
  }

  private double sum(ToDoubleFunction<JointFill> part) {
    return joints.stream().mapToDouble(part).sum();
  }
}
