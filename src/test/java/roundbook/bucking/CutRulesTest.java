package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import roundbook.balance.Aims;
import roundbook.balance.BalanceResult;
import roundbook.balance.BalanceTask;
import roundbook.balance.BalanceTask.RingPlace;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Side;
import roundbook.bucking.PricedCuts.Priced;

/**
 * Cross-cuts chosen with the plan against fixed rules, on ten draws of the measured stems, and what
 * is left of them when stems are known by a tape alone.
 */
@Tag("long")
class CutRulesTest {
  private static final int INCH = MeasuredStems.INCH;
  private static final int STEPS = MeasuredStems.STEPS;
  private static final int DRAWS = 10;
  private static final int DRAWN = 26;
  private static final int FLARE = 24 * STEPS;

  /** How a free stretch of a stem is cut while so many of each length are wanted. */
  private interface Rule {
    List<Cut> cut(int bole, Stretch free, Map<Integer, Integer> wanted);
  }

  private static BuckingTask task(List<double[][]> stems) {
    BuckingTask most = MeasuredStems.task(MeasuredStems.boles(stems), 0.001);
    return most.withRounds(Counts.rounds(most));
  }

  private static List<double[][]> draw(int seed) throws IOException {
    return MeasuredStems.drawn(MeasuredStems.stations(), seed).subList(0, DRAWN);
  }

  @Test
  void flagsNoMoreJointsThanAnyRule() throws IOException {
    for (int seed = 1; seed <= DRAWS; seed++) {
      BuckingTask task = task(draw(seed));
      BuckingResult chosen = JointSearch.solve(task, STEPS, Effort.usual(seed)).orElseThrow();
      long own = flagged(chosen);
      for (Rule rule : List.<Rule>of(fromButt(0), fromButt(FLARE), volume(0), volume(FLARE))) {
        Optional<BuckingResult> ruled = dealt(task, cuts(task, rule));
        if (ruled.isPresent()) {
          long other = flagged(ruled.get());
          assertTrue(own <= other, "draw " + seed + ": " + own + " against " + other);
        }
      }
    }
  }

  /** Diameters at 0, 1, 2, 4 ft and every 4 ft, off by 0.1 in and read to a quarter inch. */
  @Test
  void fromATapeAMedianOfOneGapAtTheMostIsOutWhenDealtAnew() throws IOException {
    List<Long> out = new ArrayList<>();
    for (int seed = 1; seed <= DRAWS; seed++) {
      List<double[][]> stems = draw(seed);
      Random random = new Random(seed);
      BuckingTask told = task(stems.stream().map(stem -> taped(stem, random)).toList());
      List<Cut> cuts = JointSearch.solve(told, STEPS, Effort.usual(seed)).orElseThrow().cuts();
      BuckingTask real = task(stems).withRounds(told.rounds());
      out.add(dealt(real, cuts).orElseThrow().gapsOutside(INCH / 2, INCH * 7 / 4));
    }
    out.sort(Long::compare);
    assertTrue(out.get(DRAWS / 2) <= 1, out.toString());
  }

  private static double[][] taped(double[][] stem, Random random) {
    List<double[]> stations = new ArrayList<>();
    double length = stem[stem.length - 1][0];
    for (int feet = 0; feet * 12 <= length; feet += feet < 2 ? 1 : feet < 4 ? 2 : 4) {
      double read = MeasuredStems.at(stem, feet * 12) + 0.1 * random.nextGaussian();
      stations.add(new double[] {feet * 12, Math.round(read * 4) / 4.0});
    }
    return stations.toArray(double[][]::new);
  }

  private static long flagged(BuckingResult result) {
    long flagged = 0;
    for (int joint = 0; joint < result.gaps().length; joint += 3) {
      boolean out = false;
      for (int station = joint; station < joint + 3; station++) {
        double gap = result.gaps()[station];
        out |= gap < 0.5 * INCH || gap > 1.75 * INCH;
      }
      flagged += out ? 1 : 0;
    }
    return flagged;
  }

  private static List<Cut> cuts(BuckingTask task, Rule rule) {
    Map<Integer, Integer> wanted = new HashMap<>();
    task.sides().forEach(side -> wanted.merge(side.raw(), task.rounds(), Integer::sum));
    List<Cut> cuts = new ArrayList<>();
    for (int bole = 0; bole < task.boles().size(); bole++) {
      for (Stretch free : task.boles().get(bole).free()) {
        List<Cut> own = rule.cut(bole, free, wanted);
        own.forEach(cut -> wanted.merge(cut.raw(), -1, Integer::sum));
        cuts.addAll(own);
      }
    }
    return cuts;
  }

  /** From the butt, the longest first for as long as it is wanted. */
  private static Rule fromButt(int off) {
    return (bole, free, wanted) -> {
      Map<Integer, Integer> left = new HashMap<>(wanted);
      List<Cut> cuts = new ArrayList<>();
      int from = Math.max(free.from(), off);
      while (true) {
        int at = from;
        Optional<Integer> raw =
            left.keySet().stream()
                .filter(each -> left.get(each) > 0 && at + each <= free.to())
                .max(Integer::compare);
        if (raw.isEmpty()) {
          return cuts;
        }
        cuts.add(new Cut(bole, from, raw.get()));
        left.merge(raw.get(), -1, Integer::sum);
        from += raw.get();
      }
    };
  }

  /** What uses most of the length, by the dynamic programme. */
  private static Rule volume(int off) {
    return (bole, free, wanted) -> {
      int from = Math.max(free.from(), off);
      if (from >= free.to()) {
        return List.of();
      }
      List<Priced> lengths =
          wanted.keySet().stream()
              .filter(raw -> wanted.get(raw) > 0)
              .map(raw -> new Priced(raw, raw))
              .toList();
      return PricedCuts.best(new Stretch(from, free.to()), 0, lengths).stream()
          .map(laid -> new Cut(bole, laid.from(), laid.raw()))
          .toList();
    };
  }

  /** Deals pieces that are cut already to the places, by the engine for logs. */
  private static Optional<BuckingResult> dealt(BuckingTask task, List<Cut> cuts) {
    BalanceTask.Builder builder = BalanceTask.builder(INCH, 1, Aims.usual(INCH));
    int[] lengths = task.lengths();
    for (int length : lengths) {
      builder.lengthClass(length);
    }
    builder.building(task.rounds());
    for (Side side : task.sides()) {
      builder.side(side.raw() == lengths[0] ? 0 : 1, side.first());
    }
    cuts.forEach(cut -> builder.log(ways(task, cut, lengths)));
    BalanceResult dealt =
        Balancer.search().solve(builder.build(), Effort.usual(1).withMoves(2_000_000));
    if (!dealt.isComplete()) {
      return Optional.empty();
    }
    List<Cut> placed = new ArrayList<>();
    for (int place = 0; place < task.places(); place++) {
      int side = place % task.sides().size();
      placed.add(cuts.get(dealt.log(new RingPlace(0, place / task.sides().size(), side))));
    }
    return Optional.of(BuckingResult.of(task, placed));
  }

  private static List<List<roundbook.balance.Cut>> ways(BuckingTask task, Cut cut, int[] lengths) {
    Bole bole = task.boles().get(cut.bole());
    int inset = task.sides().get(0).inset();
    roundbook.balance.Cut way =
        roundbook.balance.Cut.of(
            bole.atHalf(2 * (cut.from() + inset)),
            bole.atHalf(cut.from() + cut.to()),
            bole.atHalf(2 * (cut.to() - inset)));
    List<List<roundbook.balance.Cut>> ways = new ArrayList<>();
    for (int length : lengths) {
      ways.add(length == cut.raw() ? List.of(way) : List.of());
    }
    return ways;
  }
}
