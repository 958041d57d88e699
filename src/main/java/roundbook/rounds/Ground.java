package roundbook.rounds;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Setting;

/**
 * Scores an arrangement of logs, in square inches, lower is better.
 *
 * <p>The score is the sum over joints and their three stations (butt end, middle and tip end of the
 * trimmed logs) of {@code (gap − g)²}, plus {@code 20 (least − gap)²} where a gap falls short of
 * the least, {@code 20 (spread − most)²} where the middle diameters of a round differ by more than
 * the rules allow, {@code 10 (D₊ − D)²} where a round is larger than the one below it, and 0.001 an
 * inch of offcut.
 */
final class Ground {
  private final Places places;
  private final Piece[] laid;
  private final double[][] stations;
  private final double[] sizes;
  private final int walls;
  private final double gap;
  private final double least;
  private final double spreadMost;
  private final double step;

  Ground(Job job, Places places, Piece[] laid) {
    BuildRules rules = job.rules();
    this.places = places;
    this.laid = laid.clone();
    this.walls = places.walls().size();
    this.stations = new double[laid.length][];
    this.sizes = new double[places.rounds()];
    this.gap = rules.gap().inches();
    this.least = rules.length(Setting.GAP_LEAST).inches();
    this.spreadMost = rules.length(Setting.SPREAD_MOST).inches();
    this.step = rules.sizeStep().inches();
    for (int place = 0; place < laid.length; place++) {
      put(place, laid[place]);
    }
  }

  Piece at(int place) {
    return laid[place];
  }

  List<Piece> laid() {
    return List.of(laid);
  }

  /** Lays a piece in a place. */
  void put(int place, Piece piece) {
    laid[place] = piece;
    stations[place] =
        piece == null
            ? null
            : new double[] {piece.butt().inches(), piece.mid().inches(), piece.tip().inches()};
    int round = place / walls;
    double sum = 0;
    for (int i = round * walls; i < (round + 1) * walls; i++) {
      sum += stations[i] == null ? 0 : stations[i][1];
    }
    double mean = sum / walls;
    sizes[round] = step == 0 ? mean : Math.floor(Math.rint(mean / step * 1e6) / 1e6 + 0.5) * step;
  }

  /** Returns the whole score by its parts. */
  Choice.Score score() {
    double[] parts = new double[5];
    for (int round = 0; round < sizes.length; round++) {
      addRound(round, parts);
      addJoints(round, parts);
    }
    double total = parts[0] + parts[1] + parts[2] + parts[3] + parts[4];
    return new Choice.Score(total, parts[0], parts[1], parts[2], parts[3], parts[4]);
  }

  /** Returns the part of the score that changes with the logs of two rounds. */
  double around(int one, int other) {
    double[] parts = new double[5];
    for (int round = 0; round < sizes.length; round++) {
      if (near(round, one) || near(round, other)) {
        addRound(round, parts);
        addJoints(round, parts);
      }
    }
    return parts[0] + parts[1] + parts[2] + parts[3] + parts[4];
  }

  private static boolean near(int round, int changed) {
    return round == changed || round == changed - 1;
  }

  private void addRound(int round, double[] parts) {
    double low = Double.MAX_VALUE;
    double high = 0;
    for (int i = round * walls; i < (round + 1) * walls; i++) {
      low = Math.min(low, stations[i][1]);
      high = Math.max(high, stations[i][1]);
      parts[4] += laid[i].log().length().minus(laid[i].trimmed()).inches() * 0.001;
    }
    parts[2] += 20 * squareAbove(high - low - spreadMost);
    if (round > 0) {
      parts[3] += 10 * squareAbove(sizes[round] - sizes[round - 1]);
    }
  }

  private void addJoints(int round, double[] parts) {
    if (round + 1 == sizes.length) {
      return;
    }
    double below = sizes[round];
    double above = sizes[round + 1];
    for (int i = 0; i < walls; i++) {
      double own = places.walls().get(i).laidFirst() ? 3 * below + above : below + 3 * above;
      double[] lower = stations[round * walls + i];
      double[] upper = stations[(round + 1) * walls + i];
      for (int station = 0; station < 3; station++) {
        double here = own / 4 + gap - (lower[station] + upper[2 - station]) / 2;
        parts[0] += (here - gap) * (here - gap);
        parts[1] += 20 * squareAbove(least - here);
      }
    }
  }

  private static double squareAbove(double excess) {
    return excess > 0 ? excess * excess : 0;
  }
}
