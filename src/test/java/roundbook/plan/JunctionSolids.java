package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Euclidean3D;
import org.apache.commons.math3.geometry.euclidean.threed.Plane;
import org.apache.commons.math3.geometry.euclidean.threed.PolyhedronsSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.partitioning.Hyperplane;
import org.apache.commons.math3.geometry.partitioning.Region;
import org.apache.commons.math3.geometry.partitioning.RegionFactory;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * The two logs of a junction in mid-wall as solids, cut by what is printed for them and by nothing
 * else. In inches: x runs along the log that goes through from the left edge of its saddle, y in
 * from its outer face, z up.
 *
 * @param stack the logs and their heights
 * @param junction where they cross
 */
record JunctionSolids(Stack stack, Junction junction) {
  private static final double TOLERANCE = 1e-9;
  private static final int SIDES = 24;

  /** How much of a log is made on each side of its neck. */
  private static final double PIECE = 20;

  private static final RegionFactory<Euclidean3D> FACTORY = new RegionFactory<>();

  /** Returns the log that goes through: both bodies and the neck between the saddle lines. */
  List<PolyhedronsSet> through() {
    double thick = thick();
    double width = width();
    double z = centre(junction.through());
    double radius = radius(junction.through());
    List<Hyperplane<Euclidean3D>> cuts = new ArrayList<>();
    junction
        .upper()
        .ifPresent(
            upper -> {
              double outside = junction.upperOutside().orElseThrow().inches();
              double fall = (upper.inches() - outside) / thick;
              cuts.add(plane(0, 0, z + outside, 0, -fall, 1));
            });
    junction.lower().ifPresent(lower -> cuts.add(plane(0, 0, z - lower.inches(), 0, 0, -1)));
    return List.of(
        log(false, -PIECE, 0, thick / 2, z, radius, thick, List.of()),
        log(false, 0, width, thick / 2, z, radius, thick, cuts),
        log(false, width, width + PIECE, thick / 2, z, radius, thick, List.of()));
  }

  /** Returns the log that ends there: its body and its neck from the shoulder to its end. */
  List<PolyhedronsSet> ending(double overhang) {
    double thick = thick();
    double z = centre(junction.wall());
    double radius = radius(junction.wall());
    if (junction.through().wall().isPartition()) {
      return crossing(z, radius);
    }
    boolean inward = isTee();
    double shoulder = inward ? 0 : thick;
    double end = inward ? thick + overhang : -overhang;
    double back = inward ? -PIECE : thick + PIECE;
    double upper = notchUpper();
    double near = lower(true);
    double rise = (lower(false) - near) / thick * (inward ? 1 : -1);
    List<Hyperplane<Euclidean3D>> cuts =
        List.of(plane(0, shoulder, z + upper, 0, 0, 1), plane(0, shoulder, z - near, 0, -rise, -1));
    double middle = width() / 2;
    return List.of(
        log(
            true,
            Math.min(shoulder, back),
            Math.max(shoulder, back),
            middle,
            z,
            radius,
            width(),
            List.of()),
        log(
            true,
            Math.min(shoulder, end),
            Math.max(shoulder, end),
            middle,
            z,
            radius,
            width(),
            cuts));
  }

  /**
   * Returns a partition's log that another one crosses: level above and below between the lines.
   */
  private List<PolyhedronsSet> crossing(double z, double radius) {
    double thick = thick();
    double middle = width() / 2;
    List<Hyperplane<Euclidean3D>> cuts = new ArrayList<>();
    cuts.add(plane(0, 0, z + notchUpper(), 0, 0, 1));
    cuts.add(plane(0, 0, z - lower(true), 0, 0, -1));
    return List.of(
        log(true, -PIECE, 0, middle, z, radius, width(), List.of()),
        log(true, 0, thick, middle, z, radius, width(), cuts),
        log(true, thick, thick + PIECE, middle, z, radius, width(), List.of()));
  }

  /** Returns the lower mark of the log that ends there, at its shoulder or at the far face. */
  private double lower(boolean shoulder) {
    var notch = stack.courses().get(junction.through().round() - 1).notch();
    boolean drains = isTee() && stack.rules().drains();
    return (shoulder == drains
            ? notch.lowerCorner(junction.through().wall().thickness())
            : notch.lower())
        .inches();
  }

  private double notchUpper() {
    return stack.courses().get(junction.through().round() - 1).notch().upper().inches();
  }

  boolean isTee() {
    return junction.kind() == Junction.Kind.TEE;
  }

  double thick() {
    return junction.through().wall().thickness().inches();
  }

  double width() {
    return junction.wall().wall().thickness().inches();
  }

  private double centre(PlacedLog log) {
    return stack.centre(log.round(), log.wall()).inches();
  }

  private static double radius(PlacedLog log) {
    return log.piece().tip().inches() / 2;
  }

  /** Returns the volume that two logs share. */
  static double shared(List<PolyhedronsSet> one, List<PolyhedronsSet> other) {
    double sum = 0;
    for (PolyhedronsSet each : one) {
      for (PolyhedronsSet another : other) {
        Region<Euclidean3D> both = FACTORY.intersection(each.copySelf(), another.copySelf());
        sum += both.isEmpty() ? 0 : both.getSize();
      }
    }
    return sum;
  }

  /** Returns the same log moved. */
  static List<PolyhedronsSet> moved(List<PolyhedronsSet> log, double y, double z) {
    return log.stream().map(each -> each.translate(new Vector3D(0, y, z))).toList();
  }

  /** Returns a round log sawn to its thickness, along x or y between two numbers, and cut. */
  private static PolyhedronsSet log(
      boolean alongY,
      double from,
      double to,
      double middle,
      double z,
      double radius,
      double thick,
      List<Hyperplane<Euclidean3D>> cuts) {
    List<Hyperplane<Euclidean3D>> planes = new ArrayList<>(cuts);
    for (int side = 0; side < SIDES; side++) {
      double turn = 2 * Math.PI * (side + 0.5) / SIDES;
      double out = StrictMath.cos(turn);
      double up = StrictMath.sin(turn);
      planes.add(across(alongY, middle + out * radius, z + up * radius, out, up));
    }
    planes.add(across(alongY, middle + thick / 2, z, 1, 0));
    planes.add(across(alongY, middle - thick / 2, z, -1, 0));
    planes.add(along(alongY, to, 1));
    planes.add(along(alongY, from, -1));
    // Halves are cut off one by one, for a plane that cuts nothing off is no fault here.
    Region<Euclidean3D> left = half(planes.get(0));
    for (Hyperplane<Euclidean3D> plane : planes.subList(1, planes.size())) {
      left = FACTORY.intersection(left, half(plane));
    }
    return (PolyhedronsSet) left;
  }

  private static Region<Euclidean3D> half(Hyperplane<Euclidean3D> plane) {
    return FACTORY.buildConvex(List.of(plane).toArray(JunctionSolids::planes));
  }

  @SuppressWarnings("unchecked")
  private static Hyperplane<Euclidean3D>[] planes(int count) {
    return (Hyperplane<Euclidean3D>[]) new Hyperplane<?>[count];
  }

  private static Plane across(boolean alongY, double at, double z, double out, double up) {
    return alongY ? plane(at, 0, z, out, 0, up) : plane(0, at, z, 0, out, up);
  }

  private static Plane along(boolean alongY, double at, double out) {
    return alongY ? plane(0, at, 0, 0, out, 0) : plane(at, 0, 0, out, 0, 0);
  }

  /** Returns a plane through a point, its normal out of the wood. */
  private static Plane plane(double x, double y, double z, double outX, double outY, double outZ) {
    return new Plane(new Vector3D(x, y, z), new Vector3D(outX, outY, outZ), TOLERANCE);
  }
}
