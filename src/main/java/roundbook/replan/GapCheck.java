package roundbook.replan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.GapSpot;
import roundbook.job.GapSpot.Station;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.stack.Joint;
import roundbook.units.Length;

/**
 * Gaps that were measured on the wall, against what the plan says of them with all that was typed.
 *
 * <p>The walls do what the plan said where the mean difference is within an eighth of an inch (3
 * mm) and the spread within a quarter (6 mm). Else three causes are tried, and the one named that
 * explains most of the sum of squared differences, if it is half of it or more:
 *
 * <ul>
 *   <li>logs larger or smaller than typed: every gap differs by the same;
 *   <li>marks off: the two ends of a joint differ by as much, one more and one less;
 *   <li>settling: gaps are smaller, and the more the more rounds lie on them.
 * </ul>
 *
 * @param lines each gap, wall by wall
 */
public record GapCheck(List<Line> lines) {
  private static final double MEAN_MOST = 1 / 8.0;
  private static final double SPREAD_MOST = 1 / 4.0;
  private static final int LEAST = 3;

  /** Copies the list. */
  public GapCheck {
    lines = List.copyOf(lines);
  }

  /**
   * One gap.
   *
   * @param spot where
   * @param predicted the gap by the plan
   * @param measured the gap on the wall
   * @param load how many rounds lie on the joint
   */
  public record Line(GapSpot spot, Length predicted, Length measured, int load) {
    /** Returns what was measured less what was predicted. */
    public Length difference() {
      return measured.minus(predicted);
    }

    private double inches() {
      return difference().inches();
    }
  }

  /** What may make all gaps differ from the plan. */
  public enum Cause {
    /** Logs are larger than was typed. */
    LARGER,
    /** Logs are smaller than was typed. */
    SMALLER,
    /** Marks are off. */
    MARKS,
    /** The walls have settled. */
    SETTLING
  }

  /**
   * A cause with its size.
   *
   * @param cause the cause
   * @param by how much: of the logs' diameters, from end to end of a joint, or for each round above
   * @param share how much of the squared differences it explains, from 0 to 1
   */
  public record Finding(Cause cause, Length by, double share) {}

  /** Returns the check of a plan with the gaps that were measured. */
  static GapCheck of(Plan plan) {
    List<Line> lines = new ArrayList<>();
    AsBuilt built = plan.job().built();
    built
        .gaps()
        .forEach(
            (spot, gap) -> {
              Wall wall = plan.job().building().wall(spot.wall()).orElseThrow();
              List<Joint> joints = plan.stack().joints(wall);
              if (spot.below() <= joints.size()) {
                Length predicted = gap(joints.get(spot.below() - 1), spot.at());
                int load = Math.max(1, built.rounds() - spot.below());
                lines.add(new Line(spot, predicted, gap, load));
              }
            });
    return new GapCheck(lines);
  }

  private static Length gap(Joint joint, Station at) {
    return switch (at) {
      case LEFT -> joint.left();
      case MIDDLE -> joint.middle();
      case RIGHT -> joint.right();
    };
  }

  /** Returns the mean difference; zero without a gap. */
  public Length mean() {
    return lines.stream()
        .map(Line::difference)
        .reduce(Length::plus)
        .map(sum -> sum.dividedBy(lines.size()))
        .orElse(Length.ZERO);
  }

  /** Returns the standard deviation of the differences; zero of fewer than two gaps. */
  public Length spread() {
    double mean = mean().inches();
    double squares = sum(line -> square(line.inches() - mean));
    return inches(lines.size() < 2 ? 0 : StrictMath.sqrt(squares / (lines.size() - 1)));
  }

  /** Returns whether the walls do what the plan said. */
  public boolean asPlanned() {
    return Math.abs(mean().inches()) <= MEAN_MOST && spread().inches() <= SPREAD_MOST;
  }

  /**
   * Returns the cause that fits best where the walls do not do what the plan said; empty where they
   * do, where fewer than three gaps were measured, or where no cause explains half.
   */
  public Optional<Finding> finding() {
    if (asPlanned() || lines.size() < LEAST) {
      return Optional.empty();
    }
    return Stream.of(logs(), marks(), settling())
        .filter(finding -> finding.share() >= 0.5)
        .max(Comparator.comparing(Finding::share));
  }

  private Finding logs() {
    double mean = mean().inches();
    Cause cause = mean < 0 ? Cause.LARGER : Cause.SMALLER;
    return new Finding(cause, inches(Math.abs(mean)), share(lines.size() * square(mean)));
  }

  private Finding marks() {
    Map<String, Line> left = new TreeMap<>();
    lines.stream()
        .filter(line -> line.spot().at() == Station.LEFT)
        .forEach(line -> left.put(joint(line), line));
    double explained = 0;
    double apart = 0;
    int pairs = 0;
    for (Line line : lines) {
      Line other = left.get(joint(line));
      if (line.spot().at() == Station.RIGHT && other != null) {
        double half = (line.inches() - other.inches()) / 2;
        explained += 2 * square(half);
        apart += square(2 * half);
        pairs++;
      }
    }
    double root = pairs == 0 ? 0 : StrictMath.sqrt(apart / pairs);
    return new Finding(Cause.MARKS, inches(root), share(explained));
  }

  private Finding settling() {
    double product = sum(line -> -line.inches() * line.load());
    double loads = sum(line -> square(line.load()));
    double each = Math.max(0, product / loads);
    return new Finding(Cause.SETTLING, inches(each), share(square(each) * loads));
  }

  private static String joint(Line line) {
    return line.spot().below() + " " + line.spot().wall();
  }

  private double share(double explained) {
    double all = sum(line -> square(line.inches()));
    return all == 0 ? 0 : explained / all;
  }

  private double sum(ToDoubleFunction<Line> of) {
    return lines.stream().mapToDouble(of).sum();
  }

  private static double square(double value) {
    return value * value;
  }

  private static Length inches(double value) {
    return Length.ofNanometres(StrictMath.round(value * Length.ofInches(1).nanometres()));
  }
}
