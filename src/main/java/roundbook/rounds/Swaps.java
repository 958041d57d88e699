package roundbook.rounds;

import java.util.List;
import java.util.SplittableRandom;
import roundbook.job.Job;
import roundbook.job.Piece;

/** Tries swaps of logs between places, with unused logs, and of where a log is cut. */
final class Swaps {
  private final Job job;
  private final Places places;
  private final Ground ground;
  private final int[] logOf;
  private final int[] unused;
  private final SplittableRandom random;
  private double score;
  private double bestScore;
  private List<Piece> best;

  Swaps(Job job, Places places, Ground ground, int[] logOf, SplittableRandom random) {
    this.job = job;
    this.places = places;
    this.ground = ground;
    this.logOf = logOf.clone();
    this.random = random;
    this.unused = unusedOf(job.logs().size(), logOf);
    this.score = ground.score().total();
    this.bestScore = score;
    this.best = ground.laid();
  }

  private static int[] unusedOf(int logs, int[] logOf) {
    boolean[] placed = new boolean[logs];
    for (int log : logOf) {
      placed[log] = true;
    }
    return java.util.stream.IntStream.range(0, logs).filter(log -> !placed[log]).toArray();
  }

  /** Returns the best arrangement met. */
  Ground best() {
    return new Ground(job, places, best.toArray(new Piece[0]));
  }

  /** Tries one move at a temperature. */
  void tryOne(double heat) {
    int place = random.nextInt(logOf.length);
    int other = random.nextInt(logOf.length + unused.length);
    if (other == place) {
      recut(place, heat);
    } else if (other < logOf.length) {
      swap(place, other, heat);
    } else {
      exchange(place, other - logOf.length, heat);
    }
  }

  private void recut(int place, double heat) {
    Piece before = ground.at(place);
    Piece after = any(places.pieces(logOf[place], place));
    double old = around(place, place);
    ground.put(place, after);
    if (!accept(around(place, place) - old, heat)) {
      ground.put(place, before);
    }
  }

  private void swap(int place, int other, double heat) {
    List<Piece> here = places.pieces(logOf[other], place);
    List<Piece> there = places.pieces(logOf[place], other);
    if (here.isEmpty() || there.isEmpty()) {
      return;
    }
    Piece before = ground.at(place);
    Piece otherBefore = ground.at(other);
    double old = around(place, other);
    ground.put(place, any(here));
    ground.put(other, any(there));
    if (accept(around(place, other) - old, heat)) {
      int log = logOf[place];
      logOf[place] = logOf[other];
      logOf[other] = log;
    } else {
      ground.put(place, before);
      ground.put(other, otherBefore);
    }
  }

  private void exchange(int place, int spare, double heat) {
    List<Piece> here = places.pieces(unused[spare], place);
    if (here.isEmpty()) {
      return;
    }
    Piece before = ground.at(place);
    double old = around(place, place);
    ground.put(place, any(here));
    if (accept(around(place, place) - old, heat)) {
      int log = logOf[place];
      logOf[place] = unused[spare];
      unused[spare] = log;
    } else {
      ground.put(place, before);
    }
  }

  private double around(int place, int other) {
    int walls = places.walls().size();
    return ground.around(place / walls, other / walls);
  }

  private boolean accept(double change, double heat) {
    if (change > 0 && random.nextDouble() >= StrictMath.exp(-change / heat)) {
      return false;
    }
    score += change;
    if (score < bestScore - 1e-9) {
      bestScore = score;
      best = ground.laid();
    }
    return true;
  }

  private Piece any(List<Piece> pieces) {
    return pieces.get(pieces.size() == 1 ? 0 : random.nextInt(pieces.size()));
  }
}
