package roundbook.takeoff;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import roundbook.job.Wall;
import roundbook.stack.Joint;

/**
 * The filling of all joints between the logs.
 *
 * <p>Caution: the quantities are of the joints as planned. Logs differ from their three diameters;
 * the waste factor is for that.
 *
 * @param joints every joint, wall by wall, from the lowest up; that over a starter has round 0
 *     below
 * @param waste what is bought over the volume reckoned, as a share
 */
public record Chinking(List<Fill> joints, double waste) {
  /** Copies the list. */
  public Chinking {
    joints = List.copyOf(joints);
  }

  /** Returns the joints of a wall. */
  public Chinking of(Wall wall) {
    List<Fill> own =
        joints.stream().filter(fill -> fill.joint().lower().wall().equals(wall)).toList();
    return new Chinking(own, waste);
  }

  /** Returns the length of chinking on one face, inches. */
  public double run() {
    return sum(Fill::run);
  }

  /** Returns the area of chinking to be seen on one face, square inches. */
  public double faceArea() {
    return sum(Fill::faceArea);
  }

  /** Returns the volume of the joints from face to face, cubic inches. */
  public double gapVolume() {
    return sum(Fill::gapVolume);
  }

  /** Returns the volume of the chinking on both faces, cubic inches, without waste. */
  public double stripVolume() {
    return sum(Fill::stripVolume);
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
    for (Fill fill : joints) {
      OptionalDouble size = fill.backer();
      lengths.merge(size.orElse(Double.POSITIVE_INFINITY), 2 * fill.run(), Double::sum);
    }
    return lengths;
  }

  private double sum(ToDoubleFunction<Fill> part) {
    return joints.stream().mapToDouble(part).sum();
  }

  /**
   * The filling of one joint, from shoulder to shoulder less the openings that cut it.
   *
   * @param joint the joint
   * @param run length on one face, inches
   * @param faceLeast least height at the faces, inches
   * @param faceMost greatest height at the faces, inches
   * @param section mean section from face to face, square inches
   * @param faceArea area to be seen on one face, square inches
   * @param gapVolume volume from face to face, cubic inches
   * @param stripVolume volume of the chinking on both faces, cubic inches
   * @param widest greatest height at the chinking's depth, inches
   * @param backer stock diameter of the backer, in the job's unit (mm or in); none is thick enough
   *     where it is empty
   */
  public record Fill(
      Joint joint,
      double run,
      double faceLeast,
      double faceMost,
      double section,
      double faceArea,
      double gapVolume,
      double stripVolume,
      double widest,
      OptionalDouble backer) {}
}
