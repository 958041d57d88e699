package roundbook.exchange;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.balance.Aims;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.WoodPrice;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The score of chosen logs, by the formula that the search makes small, with any log exchanged.
 *
 * <p>It is computed here from diameters and sizes, without the search; square inches, lower is
 * better. Only the rounds that an exchange touches need be summed again.
 */
final class Score {
  private static final int MOST_KEPT = 10_000;
  private static final long INCH = LengthUnit.INCH.nanometres();

  private final Job job;
  private final List<Wall> walls;
  private final List<ScoredPlace[]> rounds = new ArrayList<>();
  private final Map<FilledPlace, ScoredPlace> stations = new IdentityHashMap<>();
  private final WoodPrice wood;
  private final Aims aims;
  private final Aims.Weights weights = Aims.Weights.USUAL;
  private final double gap;
  private final double leastGap;
  private final double spreadMost;

  Score(Job job, List<Course> courses) {
    BuildRules rules = job.rules();
    this.job = job;
    this.walls = job.building().walls();
    this.wood = new WoodPrice(job, courses.size());
    this.gap = rules.gap().inches();
    this.leastGap = Math.min(gap, rules.length(Setting.GAP_LEAST).inches());
    this.spreadMost = rules.length(Setting.SPREAD_MOST).inches();
    this.aims = Aims.usual(INCH).withSizeStep(rules.sizeStep().nanometres());
    for (Course course : courses) {
      rounds.add(course.places().stream().map(this::station).toArray(ScoredPlace[]::new));
    }
  }

  /** Returns the number of a wall. */
  int side(Wall wall) {
    return walls.indexOf(wall);
  }

  /** Puts a piece in a place and returns what stood there. */
  ScoredPlace put(int round, int side, ScoredPlace piece) {
    ScoredPlace before = rounds.get(round - 1)[side];
    rounds.get(round - 1)[side] = piece;
    return before;
  }

  /** Returns the numbers of a place, which is asked for in a row of ways to fill it. */
  ScoredPlace station(FilledPlace place) {
    if (stations.size() > MOST_KEPT) {
      stations.clear();
    }
    return stations.computeIfAbsent(place, key -> ScoredPlace.of(key, job, wood.of(key)));
  }

  /** Returns the length of a longer wall that the log of a place could fill, if any. */
  Optional<Length> longer(FilledPlace place) {
    return wood.longer(place);
  }

  /** Returns the whole score. */
  double total() {
    return around(IntStream.rangeClosed(1, rounds.size()).toArray());
  }

  /** Returns the part of the score that some rounds have a share in. */
  double around(int... touched) {
    double sum = 0;
    for (int round : touched) {
      sum += own(round);
    }
    for (int lower = 1; lower < rounds.size(); lower++) {
      if (holds(touched, lower) || holds(touched, lower + 1)) {
        sum += level(lower);
      }
    }
    return sum;
  }

  private static boolean holds(int[] rounds, int wanted) {
    for (int round : rounds) {
      if (round == wanted) {
        return true;
      }
    }
    return false;
  }

  /** Returns what a round costs by itself: its spread and its waste. */
  private double own(int round) {
    ScoredPlace[] logs = rounds.get(round - 1);
    double least = Double.MAX_VALUE;
    double most = 0;
    double waste = 0;
    for (ScoredPlace log : logs) {
      least = Math.min(least, log.mid());
      most = Math.max(most, log.mid());
      waste += log.waste();
    }
    return weights.spread() * square(most - least - spreadMost) + waste;
  }

  /** Returns what the joints between a round and the one above cost, and a size that grows. */
  private double level(int lower) {
    double below = size(lower);
    double above = size(lower + 1);
    double sum = weights.inversion() * square(above - below);
    for (int side = 0; side < walls.size(); side++) {
      boolean first = walls.get(side).laidFirst();
      double spacing = first ? (3 * below + above) / 4 : (below + 3 * above) / 4;
      for (int k = 0; k < 3; k++) {
        double low = rounds.get(lower - 1)[side].at(k);
        double error = spacing - (low + rounds.get(lower)[side].at(2 - k)) / 2;
        sum += error * error + weights.least() * square(leastGap - gap - error);
      }
    }
    return sum;
  }

  private double size(int round) {
    Optional<CutSize> cut = job.heldSize(round);
    if (cut.isPresent()) {
      return cut.get().size().inches();
    }
    long sum = 0;
    ScoredPlace[] logs = rounds.get(round - 1);
    for (ScoredPlace log : logs) {
      sum += log.exact();
    }
    return Length.ofNanometres(aims.size(sum, logs.length)).inches();
  }

  /** Returns the square of what is above zero. */
  private static double square(double excess) {
    return excess > 0 ? excess * excess : 0;
  }
}
