package roundbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.wood.BackerStock;
import roundbook.wood.ChinkJoint;
import roundbook.wood.RoundProfile;

/** Measures the joints of a stack, less the openings in its walls. */
final class Chinker {
  private static final double MM = 25.4;

  private final Stack stack;
  private final Starter starter;
  private final List<Opening> openings;
  private final double depth;
  private final BackerStock stock;

  Chinker(Stack stack, Starter starter, List<Opening> openings) {
    this.stack = stack;
    this.starter = starter;
    this.openings = openings.stream().sorted(Comparator.comparing(Opening::left)).toList();
    BuildRules rules = stack.rules();
    this.depth = rules.length(Setting.CHINKING_DEPTH).inches();
    double squeeze = rules.number(Setting.BACKER_SQUEEZE).doubleValue() / 100;
    BackerStock usual = rules.metric() ? BackerStock.millimetres() : BackerStock.inches();
    this.stock = new BackerStock(usual.sizes(), squeeze);
  }

  Chinking chinking() {
    double waste = stack.rules().number(Setting.WASTE_PERCENT).doubleValue() / 100;
    return new Chinking(joints().map(this::fill).toList(), waste);
  }

  /** Returns every joint, wall by wall from the lowest up; the lowest of all may be a starter's. */
  private Stream<Joint> joints() {
    Stream<Wall> walls =
        stack.courses().isEmpty() ? Stream.of() : stack.building().walls().stream();
    return walls.flatMap(
        wall -> Stream.concat(starter.joint(stack, wall).stream(), stack.joints(wall).stream()));
  }

  private Chinking.Fill fill(Joint joint) {
    List<ChinkJoint> parts = parts(joint);
    double run = sum(parts, ChinkJoint::length);
    double volume = sum(parts, ChinkJoint::volume);
    double strip = Math.min(depth, joint.lower().wall().thickness().inches() / 2);
    double widest = parts.stream().mapToDouble(each -> each.widestAtDepth(strip)).max().orElse(0);
    return new Chinking.Fill(
        joint,
        run,
        parts.stream().mapToDouble(ChinkJoint::leastFaceHeight).min().orElse(0),
        parts.stream().mapToDouble(each -> each.widestAtDepth(0)).max().orElse(0),
        run == 0 ? 0 : volume / run,
        sum(parts, ChinkJoint::stripArea),
        volume,
        2 * sum(parts, each -> each.stripVolume(strip)),
        widest,
        backer(widest));
  }

  private OptionalDouble backer(double inches) {
    return stock.sizeFor(stack.rules().metric() ? inches * MM : inches);
  }

  /** What is not chinked of a joint, from the left trimmed end of its wall. */
  private record Taken(Length left, Length width) {}

  /** Returns the stretches of a joint that no opening and no partition takes, from the left. */
  private List<ChinkJoint> parts(Joint joint) {
    List<ChinkJoint> parts = new ArrayList<>();
    Length from = joint.leftFace();
    for (Taken taken : taken(joint)) {
      add(parts, joint, from, taken.left().least(joint.rightFace()));
      from = from.most(taken.left().plus(taken.width()));
    }
    add(parts, joint, from, joint.rightFace());
    return parts;
  }

  private List<Taken> taken(Joint joint) {
    Length overhang = stack.rules().overhang();
    Stream<Taken> open =
        openings.stream()
            .filter(opening -> takes(opening, joint))
            .map(opening -> new Taken(opening.left().plus(overhang), opening.width()));
    Stream<Taken> crossed =
        stack.building().saddles(joint.lower().wall()).stream()
            .map(each -> new Taken(each.from().plus(overhang), each.partition().thickness()));
    return Stream.concat(open, crossed).sorted(Comparator.comparing(Taken::left)).toList();
  }

  private static void add(List<ChinkJoint> parts, Joint joint, Length from, Length to) {
    if (!to.isMoreThan(from)) {
      return;
    }
    double left = from.inches();
    double right = to.inches();
    RoundProfile lower = WallProfiles.left(joint.lower()).between(left, right);
    RoundProfile upper = WallProfiles.left(joint.upper()).between(left, right);
    double thickness = joint.lower().wall().thickness().inches();
    parts.add(new ChinkJoint(lower, upper, joint.spacing().inches(), thickness));
  }

  /** An opening takes a joint when the middle of the gap over it lies between sill and head. */
  private boolean takes(Opening opening, Joint joint) {
    if (!opening.wall().equalsIgnoreCase(joint.lower().wall().name())) {
      return false;
    }
    Length at = opening.left().plus(stack.rules().overhang()).plus(opening.width().dividedBy(2));
    Length centre = stack.centre(joint.upper()).minus(joint.spacing());
    Length crown = centre.plus(joint.lower().fromLeft(at).dividedBy(2));
    Length middle = crown.plus(joint.gapAt(at).dividedBy(2));
    return middle.isMoreThan(opening.sill()) && middle.isLessThan(opening.head());
  }

  private static double sum(List<ChinkJoint> parts, ToDoubleFunction<ChinkJoint> part) {
    return parts.stream().mapToDouble(part).sum();
  }
}
