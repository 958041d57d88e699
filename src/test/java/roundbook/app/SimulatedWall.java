package roundbook.app;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Saddle;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
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
  private final List<Map<String, Double>> after = new ArrayList<>();
  private int pared;
  private final Set<String> bad = new HashSet<>();
  private final List<Double> gaps = new ArrayList<>();

  /** What a crew works by: the rounds, with their heights. */
  record Page(Job job, List<Course> courses, Stack stack) {
    static Page of(Plan plan) {
      return new Page(plan.job(), plan.choice().courses(), plan.stack());
    }

    private List<FilledPlace> round(int number) {
      return courses.get(number - 1).places();
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
    for (FilledPlace piece : read.round(round)) {
      double mid = talliedMid(tally, piece) + shift(tag(piece)) + READ * random.nextGaussian();
      typed.put("Measured_" + round + "_" + piece.wall().name(), sixteenth(mid));
    }
    return typed;
  }

  /** Returns the middle of a placed log by the tally's own diameters. */
  private static double talliedMid(Job tally, FilledPlace piece) {
    var log = tally.log(tag(piece)).orElseThrow();
    var own = piece.first().piece();
    return new Piece(log, own.cutOffButt(), own.trimmed()).mid().inches();
  }

  /** Cuts and lays a round by its page; the lower marks at the corners are those of the plan. */
  void lay(Plan page, Plan tally, int round) {
    lay(Page.of(page), tally.job(), round);
  }

  /** Cuts and lays a round by its page; {@code tally} is the job as it was tallied. */
  void lay(Page page, Job tally, int round) {
    layFirst(page, tally, round);
    laySecond(page, tally, round, Map.of());
  }

  /** Cuts and lays a round's first-laid logs by its page. */
  void layFirst(Page page, Job tally, int round) {
    laid.add(new HashMap<>());
    Map<String, Double> changes = new HashMap<>();
    for (String corner : page.job().building().corners()) {
      changes.put(corner, page.stack().corners().change(round, true, corner).inches());
    }
    lay(page, tally, round, true, changes);
  }

  /** Cuts and lays a round's second-laid logs, whose lower marks differ by so much at corners. */
  void laySecond(Page page, Job tally, int round, Map<String, Double> changes) {
    lay(page, tally, round, false, changes);
    after.add(Map.copyOf(tops));
  }

  private void lay(Page page, Job tally, int round, boolean first, Map<String, Double> changes) {
    Building building = page.job().building();
    var notch = page.courses().get(round - 1).notch();
    boolean starter = page.job().rules().text(Setting.FIRST_BED).equals("starter");
    double bed = starter ? page.courses().get(0).notch().upper().inches() : 0;
    Map<String, Double> higher = new HashMap<>(tops);
    for (FilledPlace piece : page.round(round)) {
      Wall wall = piece.wall();
      if (wall.laidFirst() != first) {
        continue;
      }
      double[] centres = new double[2];
      String[] corners = {building.endCorner(wall), building.startCorner(wall)};
      for (int end = 0; end < 2; end++) {
        double lower = notch.lower().inches() + changes.getOrDefault(corners[end], 0.0);
        centres[end] = tops.getOrDefault(corners[end], bed) + lower + cut();
        higher.put(corners[end], centres[end] + notch.upper().inches() + cut());
      }
      for (Saddle saddle : building.saddles(wall)) {
        String corner = building.corner(saddle);
        double lower = notch.lower().inches() + changes.getOrDefault(corner, 0.0);
        double lies = tops.getOrDefault(corner, bed) + lower + cut();
        double straight = between(saddle, centres);
        double centre = tops.containsKey(corner) ? Math.max(lies, straight) : straight;
        higher.put(corner, centre + notch.upper().inches() + cut());
      }
      laid.get(round - 1).put(wall.name(), centres);
      gaps(tally, piece, centres);
      profiles.put(round + wall.name(), diameters(tally, piece));
    }
    tops.putAll(higher);
  }

  /** A log that goes through lies on its ends, and bends up where a partition is higher. */
  private static double between(Saddle saddle, double[] centres) {
    double middle = (saddle.from().inches() + saddle.to().inches()) / 2;
    return centres[0] + (centres[1] - centres[0]) * middle / saddle.through().outside().inches();
  }

  private double cut() {
    return CUT * random.nextGaussian();
  }

  private final Map<String, double[]> profiles = new HashMap<>();

  /** Returns the true diameters at the left inside face, the middle and the right inside face. */
  private double[] diameters(Job tally, FilledPlace piece) {
    var log = tally.log(tag(piece)).orElseThrow();
    var own = piece.first().piece();
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

  private void gaps(Job tally, FilledPlace piece, double[] centres) {
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
      double gap = rise[at] - (own[at] + under[at]) / 2;
      gaps.add(gap);
      if (gap < 0.5 || gap > 1.75) {
        bad.add(tag(piece));
      }
    }
  }

  /** Returns what the crew reads at the corners after a round. */
  Map<String, Object> readings(int round) {
    return read("Reading_" + round + "_");
  }

  /** Returns what the crew reads at the corners on top of a round's first-laid logs. */
  Map<String, Object> firstReadings(int round) {
    return read("Reading_first_" + round + "_");
  }

  private Map<String, Object> read(String name) {
    Map<String, Object> typed = new TreeMap<>();
    new TreeMap<>(tops)
        .forEach((corner, top) -> typed.put(name + corner, sixteenth(top + reading())));
    return typed;
  }

  private double reading() {
    return READ * random.nextGaussian();
  }

  /** Pares tops down by so much, and returns what the crew reads at those corners now. */
  Map<String, Object> pare(int round, Map<String, Double> amounts) {
    Map<String, Object> typed = new TreeMap<>();
    new TreeMap<>(amounts)
        .forEach(
            (corner, amount) -> {
              tops.merge(corner, cut() - amount, Double::sum);
              typed.put("Reading_" + round + "_" + corner, sixteenth(tops.get(corner) + reading()));
              pared++;
            });
    after.set(round - 1, Map.copyOf(tops));
    return typed;
  }

  /** Returns the logs under which a gap is outside the job's usual limits. */
  Set<String> bad() {
    return bad;
  }

  /** Returns how many tops were pared down. */
  int pared() {
    return pared;
  }

  /** Returns how far the worst corner is from the mean of all after each round. */
  List<Double> worstCorners() {
    return after.stream().map(SimulatedWall::worst).toList();
  }

  private static double worst(Map<String, Double> round) {
    double mean = round.values().stream().mapToDouble(each -> each).average().orElse(0);
    return round.values().stream().mapToDouble(top -> Math.abs(top - mean)).max().orElse(0);
  }

  /** Returns the highest corner less the lowest after each round. */
  List<Double> spreads() {
    return after.stream()
        .map(round -> Collections.max(round.values()) - Collections.min(round.values()))
        .toList();
  }

  /** Returns every gap at both inside faces and the middle. */
  List<Double> gaps() {
    return gaps;
  }

  private static String tag(FilledPlace piece) {
    return piece.tags();
  }

  private static double sixteenth(double inches) {
    return Math.rint(inches * 16) / 16;
  }
}
