package roundbook.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.stack.Course;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * A wall as it really rises: logs differ from the tally, cuts and readings err.
 *
 * <p>Logs as hewn differ from the tally by sd 1/4 in, each of the four marks at each end of a log
 * is cut with an error of sd 1/16 in, diameters and corners are read with an error of sd 1/32 in
 * and to the sixteenth. Everything is in inches; the errors come from a seed.
 */
final class SimulatedWall {
  private static final double LOG = 1 / 4.0;
  private static final double CUT = 1 / 16.0;
  private static final double READ = 1 / 32.0;

  private final Random random;
  private final double bias;
  private final Map<String, Double> hewn = new HashMap<>();
  private final Map<String, Double> tops = new HashMap<>();
  private final List<Map<String, double[]>> laid = new ArrayList<>();
  private final List<Double> worstCorner = new ArrayList<>();
  private final List<Double> gaps = new ArrayList<>();

  /** What a crew works by: the rounds, with their heights. */
  record Page(Job job, List<Course> courses, Stack stack) {
    static Page of(Plan plan) {
      return new Page(plan.job(), plan.choice().courses(), plan.stack());
    }

    private List<PlacedLog> round(int number) {
      return courses.get(number - 1).logs();
    }
  }

  SimulatedWall(long seed, double bias) {
    this.random = new Random(seed);
    this.bias = bias;
  }

  /** Returns by how much a log as hewn differs from the tally, always the same. */
  private double shift(String tag) {
    return hewn.computeIfAbsent(tag, each -> bias + LOG * random.nextGaussian());
  }

  /** Returns what the crew types of a round's logs after hewing; {@code read} is the tally's. */
  Map<String, Object> measures(Plan read, Plan tally, int round) {
    return measures(Page.of(read), tally.job(), round);
  }

  /** Returns what the crew types of a round's logs after hewing, by the tally's own job. */
  Map<String, Object> measures(Page read, Job tally, int round) {
    Map<String, Object> typed = new TreeMap<>();
    for (PlacedLog piece : read.round(round)) {
      double mid = talliedMid(tally, piece) + shift(tag(piece)) + READ * random.nextGaussian();
      typed.put("Measured_" + round + "_" + piece.wall().name(), sixteenth(mid));
    }
    return typed;
  }

  /** Returns the middle of a placed log by the tally's own diameters. */
  private static double talliedMid(Job tally, PlacedLog piece) {
    var log = tally.log(tag(piece)).orElseThrow();
    var own = piece.piece();
    return new Piece(log, own.cutOffButt(), own.trimmed()).mid().inches();
  }

  /** Cuts and lays a round by its page; the lower marks at the corners are those of the plan. */
  void lay(Plan page, Plan tally, int round) {
    lay(Page.of(page), tally.job(), round);
  }

  /** Cuts and lays a round by its page; {@code tally} is the job as it was tallied. */
  void lay(Page page, Job tally, int round) {
    Building building = page.job().building();
    var notch = page.courses().get(round - 1).notch();
    Map<String, double[]> row = new HashMap<>();
    for (boolean first : new boolean[] {true, false}) {
      Map<String, Double> higher = new HashMap<>(tops);
      for (PlacedLog piece : page.round(round)) {
        Wall wall = piece.wall();
        if (wall.laidFirst() != first) {
          continue;
        }
        double[] centres = new double[2];
        String[] corners = {building.endCorner(wall), building.startCorner(wall)};
        for (int end = 0; end < 2; end++) {
          double change = first ? page.stack().corners().change(round, corners[end]).inches() : 0;
          double lower = notch.lower().inches() + change + CUT * random.nextGaussian();
          centres[end] = tops.getOrDefault(corners[end], 0.0) + lower;
          higher.put(
              corners[end], centres[end] + notch.upper().inches() + CUT * random.nextGaussian());
        }
        row.put(wall.name(), new double[] {centres[0], centres[1]});
        gaps(tally, piece, centres);
        profiles.put(round + wall.name(), diameters(tally, piece));
      }
      tops.putAll(higher);
    }
    laid.add(row);
    double mean = tops.values().stream().mapToDouble(each -> each).average().orElse(0);
    worstCorner.add(tops.values().stream().mapToDouble(t -> Math.abs(t - mean)).max().orElse(0));
  }

  private final Map<String, double[]> profiles = new HashMap<>();

  /** Returns the true diameters at the left inside face, the middle and the right inside face. */
  private double[] diameters(Job tally, PlacedLog piece) {
    var log = tally.log(tag(piece)).orElseThrow();
    var own = piece.piece();
    var true1 = new Piece(log, own.cutOffButt(), own.trimmed());
    double shift = shift(tag(piece));
    double near =
        true1.at(piece.nearShoulder(tally.building(), tally.rules().overhang())).inches() + shift;
    double far =
        true1.at(piece.farShoulder(tally.building(), tally.rules().overhang())).inches() + shift;
    double mid = true1.mid().inches() + shift;
    boolean buttRight = piece.buttAtStart();
    return new double[] {buttRight ? far : near, mid, buttRight ? near : far};
  }

  private void gaps(Job tally, PlacedLog piece, double[] centres) {
    int round = piece.round();
    double[] under = profiles.get(round - 1 + piece.wall().name());
    if (under == null) {
      return;
    }
    double[] below = laid.get(round - 2).get(piece.wall().name());
    double[] own = diameters(tally, piece);
    double[] rise = {centres[0] - below[0], 0, centres[1] - below[1]};
    rise[1] = (rise[0] + rise[2]) / 2;
    for (int at = 0; at < 3; at++) {
      gaps.add(rise[at] - (own[at] + under[at]) / 2);
    }
  }

  /** Returns what the crew reads at the corners after a round. */
  Map<String, Object> readings(int round) {
    Map<String, Object> typed = new TreeMap<>();
    new TreeMap<>(tops)
        .forEach(
            (corner, top) ->
                typed.put(
                    "Reading_" + round + "_" + corner,
                    sixteenth(top + READ * random.nextGaussian())));
    return typed;
  }

  /** Returns how far the worst corner is from the mean of all after each round. */
  List<Double> worstCorners() {
    return worstCorner;
  }

  /** Returns every gap at both inside faces and the middle. */
  List<Double> gaps() {
    return gaps;
  }

  private static String tag(PlacedLog piece) {
    return piece.piece().log().tag();
  }

  private static double sixteenth(double inches) {
    return Math.rint(inches * 16) / 16;
  }
}
