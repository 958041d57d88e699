package roundbook.picture.face;

import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * What decides how a log's two faces look: logs with equal cases share a drawing.
 *
 * @param notch the notch of the round
 * @param thickness T of the log's own wall
 * @param butt what crosses at the butt end
 * @param tip what crosses at the tip end
 * @param buttAtStart whether its butt lies left, seen from inside
 * @param special how it differs from the common log
 * @param share which logs of a round that are cut alike share a drawing
 */
public record FaceCase(
    Notch notch,
    Length thickness,
    End butt,
    End tip,
    boolean buttAtStart,
    Special special,
    Share share) {
  /** Which logs of a round share a drawing, where they look alike. */
  public enum Share {
    /** All of them. */
    ALL,
    /** Those laid first, for the lower marks of both kinds differ from corner to corner. */
    FIRST_LAID,
    /** Those laid second. */
    SECOND_LAID
  }

  /** How a log differs from the common one with full notches at both ends. */
  public enum Special {
    /** Not at all. */
    NONE,
    /** Sawn flat underneath at the lower mark, all along; no lower notch. */
    BED_WHOLE,
    /** Sawn flat underneath between the shoulders, with lower notches past them. */
    BED_BETWEEN,
    /** Nothing of this plan crosses above it. */
    TOP_FREE
  }

  /**
   * What crosses at one end.
   *
   * @param crossing T_x of the crossing wall
   * @param overhang o, from the crossing wall's outer face to the trimmed end
   * @param level whether the top is level across there, as where a log ends in mid-wall
   * @param drains whether the underside rises to the end, so that the joint is deeper at the
   *     shoulder
   */
  record End(Length crossing, Length overhang, boolean level, boolean drains) {
    /** Returns the distance of the shoulder from the trimmed end. */
    Length shoulder() {
      return crossing.plus(overhang);
    }
  }

  /** Returns the case of a placed log. */
  public static FaceCase of(Stack stack, FilledPlace log) {
    Course course = stack.courses().get(log.round() - 1);
    return new FaceCase(
        course.notch(),
        log.wall().thickness(),
        end(stack, log, log.buttAtStart()),
        end(stack, log, !log.buttAtStart()),
        log.buttAtStart(),
        special(stack, log),
        share(stack, log));
  }

  private static End end(Stack stack, FilledPlace log, boolean start) {
    Building building = stack.building();
    Wall crossing = start ? building.before(log.wall()) : building.after(log.wall());
    return new End(
        crossing.thickness(),
        stack.rules().overhang(),
        building.saddle(log.wall(), start).isPresent(),
        building.drains(log.wall(), start, stack.rules()));
  }

  private static Share share(Stack stack, FilledPlace log) {
    boolean apart = Stream.of(true, false).allMatch(first -> isPutRight(stack, log.round(), first));
    return apart ? log.wall().laidFirst() ? Share.FIRST_LAID : Share.SECOND_LAID : Share.ALL;
  }

  private static boolean isPutRight(Stack stack, int round, boolean firstLaid) {
    return stack.building().corners().stream()
        .anyMatch(corner -> !stack.corners().change(round, firstLaid, corner).isZero());
  }

  /** Returns how a placed log differs from the common one. */
  public static Special special(Stack stack, FilledPlace log) {
    boolean first = log.wall().laidFirst();
    if (log.round() == 1 && first && !bed(stack.rules(), "starter")) {
      return Special.BED_WHOLE;
    }
    if (log.round() == 1 && !first && stack.rules().stepsFoundation()) {
      return Special.BED_BETWEEN;
    }
    return log.round() == stack.courses().size() && !first ? Special.TOP_FREE : Special.NONE;
  }

  /** Returns the upper mark on the outside face at an end. */
  Length upperOutside(End end) {
    return end.level() ? notch.upper() : notch.upperOutside(thickness);
  }

  /** Returns the lower mark at the shoulder of an end. */
  Length lowerShoulder(End end) {
    return end.drains() ? notch.lowerCorner(end.crossing()) : notch.lower();
  }

  /** Returns the lower mark at the corner line of an end. */
  Length lowerCorner(End end) {
    return end.drains() ? notch.lower() : notch.lowerCorner(end.crossing());
  }

  /** Returns whether the rules ask for a kind of first bed. */
  private static boolean bed(BuildRules rules, String kind) {
    return rules.text(Setting.FIRST_BED).equals(kind);
  }
}
