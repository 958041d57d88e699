package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The prices of a bound, and what the sides cost at them. */
final class BoundPrices {
  /** Logs that can be told apart on one way. */
  private static final int TRACKED = 64;

  /** The price of each log. */
  final double[] log;

  /** Whether each log lies somewhere in every choice, so that its price may be below zero. */
  final boolean[] needed;

  /** The price of the sum of middle diameters that makes a size, by course and size. */
  final double[][] sum;

  final BoundSizes sizes;
  final List<BoundSide> sides = new ArrayList<>();
  private final Model model;

  /** How many of each kind of sides are laid by themselves. */
  private final Map<BoundSide, Integer> single = new LinkedHashMap<>();

  private final List<Pair> pairs = new ArrayList<>();
  private final List<Laid> laid = new ArrayList<>();
  private double[] keptLog;
  private double[][] keptSum;

  /** Two sides that are laid together; the same twice where they are alike. */
  private record Pair(BoundSide one, BoundSide other, PairPaths paths) {}

  /** The cheapest way found for so many sides. */
  record Laid(BoundSide side, WallPaths.Stop[] path, int count) {}

  /**
   * @param model the task
   * @param known the score of a choice that is known, in unit²
   */
  BoundPrices(Model model, double known) {
    this.model = model;
    sizes = new BoundSizes(model, known);
    log = new double[model.logs];
    needed = new boolean[model.logs];
    sum = new double[model.slots.courses()][];
    Arrays.setAll(sum, c -> new double[sizes.count(c)]);
    Map<List<Object>, int[]> kinds = new LinkedHashMap<>();
    Map<List<Object>, Integer> counts = new LinkedHashMap<>();
    for (int b = 0; b < model.task.buildings(); b++) {
      for (int side = 0; side < model.task.sides(b) && model.task.rounds(b) > 0; side++) {
        int[] slots = slots(b, side);
        kinds.putIfAbsent(kind(b, slots), slots);
        counts.merge(kind(b, slots), 1, Integer::sum);
      }
    }
    kinds.forEach(
        (kind, slots) -> {
          WallPaths paths = new WallPaths(model, sizes, slots);
          sides.add(new BoundSide(paths, model.slots.courseOf[slots[0]], counts.get(kind)));
        });
    sides.forEach(side -> single.put(side, side.count));
    need();
    keep();
  }

  private void need() {
    for (BoundSide side : sides) {
      Arrays.stream(side.paths.alive)
          .flatMap(Arrays::stream)
          .flatMapToInt(Arrays::stream)
          .forEach(v -> needed[side.paths.logs[v]] = true);
    }
    if (IntStream.range(0, model.logs).filter(i -> needed[i]).count() > model.slots.count) {
      Arrays.fill(needed, false);
    }
  }

  private int[] slots(int building, int side) {
    int[] slots = new int[model.task.rounds(building)];
    Arrays.setAll(
        slots, r -> model.slots.courseSlot[model.slots.buildingCourse[building] + r] + side);
    return slots;
  }

  /** Returns what sides have in common that are laid alike. */
  private List<Object> kind(int building, int[] slots) {
    List<Object> kind = new ArrayList<>(List.of(building, model.slotFirst[slots[0]]));
    for (int slot : slots) {
      kind.add(List.of(model.slotClass[slot], model.kinds.ofSlot[slot], model.slotPin[slot]));
    }
    return kind;
  }

  /** Returns how many joints one round of prices reckons with. */
  double work() {
    return single.keySet().stream().mapToDouble(side -> side.paths.work()).sum()
        + pairs.stream().mapToDouble(pair -> pair.paths.work()).sum();
  }

  /** Returns how many sides a course has. */
  int sidesOf(int course) {
    return model.slots.courseSlot[course + 1] - model.slots.courseSlot[course];
  }

  /** Returns the middle diameter of a cut, in units. */
  double mid(BoundSide side, int variant) {
    return (double) model.fineMids[side.paths.variants[variant]] / model.task.scale.unit();
  }

  private WallPaths.StateCost cost(BoundSide side) {
    return (r, k, variant) ->
        model.area(model.costs[side.paths.variants[variant]])
            + log[side.paths.logs[variant]]
            + side.size[r][k]
            + paid(side, r, k, variant);
  }

  /** Returns what is paid for a middle diameter that is off its share of the sum of a size. */
  private double paid(BoundSide side, int r, int k, int variant) {
    int course = side.first + r;
    double price = sum[course][k];
    if (price == 0) {
      return 0;
    }
    double limit = price > 0 ? sizes.most(course, k) : sizes.least(course, k);
    return price * (mid(side, variant) - limit / sidesOf(course));
  }

  /** Returns what all sides cost at least at these prices, less what is paid for the logs. */
  double value() {
    double value = -Arrays.stream(log).sum();
    int[] tracked = dearest();
    laid.clear();
    for (Pair pair : pairs) {
      value += pair.paths.find(cost(pair.one), cost(pair.other), tracked);
      if (value == Ways.NEVER) {
        return value;
      }
      WallPaths.Stop[][] both = pair.paths.cheapest();
      laid.add(new Laid(pair.one, both[0], 1));
      laid.add(new Laid(pair.other, both[1], 1));
    }
    for (Map.Entry<BoundSide, Integer> each : single.entrySet()) {
      BoundSide side = each.getKey();
      value += each.getValue() * side.paths.find(cost(side), tracked);
      if (value == Ways.NEVER) {
        return value;
      }
      laid.add(new Laid(side, side.paths.cheapest(), each.getValue()));
    }
    return value;
  }

  /** Returns the cheapest ways that were found last. */
  List<Laid> laid() {
    return laid;
  }

  /** Returns the logs that no way may have twice: as many as can be told apart, the dearest. */
  private int[] dearest() {
    return IntStream.range(0, model.logs)
        .boxed()
        .sorted((one, other) -> Double.compare(log[other], log[one]))
        .limit(TRACKED)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * Takes out what no choice has in it that is better than a known one.
   *
   * @param gap what the known choice costs more than the sides at these prices
   */
  void prune(double gap) {
    for (BoundSide side : single.keySet()) {
      side.paths.prune(cost(side), gap + 1e-9);
    }
    for (Pair pair : pairs) {
      pair.paths.prune(cost(pair.one), cost(pair.other), gap + 1e-9);
    }
  }

  /**
   * Lays like sides of a building in twos from here on.
   *
   * @param gap what the known choice costs more than the sides, when they were pruned last
   * @param most how many steps that may take in one round of prices
   * @return whether it does
   */
  boolean pair(double gap, double most) {
    List<BoundSide> open = new ArrayList<>();
    sides.forEach(side -> open.addAll(java.util.Collections.nCopies(side.count, side)));
    Map<BoundSide, Integer> left = new LinkedHashMap<>();
    double work = 0;
    while (!open.isEmpty()) {
      BoundSide one = open.remove(0);
      int mate =
          IntStream.range(0, open.size())
              .filter(i -> one.pairs(open.get(i), model))
              .findFirst()
              .orElse(-1);
      if (mate < 0) {
        left.merge(one, 1, Integer::sum);
      } else {
        BoundSide other = open.remove(mate);
        double share = 2.0 / sidesOf(one.first);
        PairPaths paths = new PairPaths(model, one.paths, other.paths, gap + 1e-9, share);
        work += paths.work();
        pairs.add(new Pair(one, other, paths));
      }
    }
    if (work > most) {
      pairs.clear();
      return false;
    }
    single.clear();
    single.putAll(left);
    return !pairs.isEmpty();
  }

  /** Notes the prices. */
  final void keep() {
    keptLog = log.clone();
    keptSum = Arrays.stream(sum).map(double[]::clone).toArray(double[][]::new);
    sides.forEach(BoundSide::keep);
  }

  /** Takes the prices that were noted. */
  void restore() {
    System.arraycopy(keptLog, 0, log, 0, log.length);
    for (int c = 0; c < sum.length; c++) {
      System.arraycopy(keptSum[c], 0, sum[c], 0, sum[c].length);
    }
    sides.forEach(BoundSide::restore);
  }
}
