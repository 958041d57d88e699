package roundbook.balance;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Solves small tasks to the proven optimum by CP-SAT of Google OR-Tools, a general solver.
 *
 * <p>It shares the integers of {@link Model} with the search, but none of its arithmetic: gaps,
 * sizes, spreads and steps are constraints, and squares are products.
 */
final class ExactSolver {
  private final Model model;
  private final Aims aims;
  private final CpModel cp = new CpModel();
  private final List<List<BoolVar>> laid = new ArrayList<>();
  private final List<List<Integer>> variants = new ArrayList<>();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final LinearExpr[] sizes;
  private final State known;
  private final long thickest;

  private ExactSolver(State known) {
    this.known = known;
    model = known.model;
    aims = model.task.aims();
    sizes = new LinearExpr[model.slots.courses()];
    thickest = Arrays.stream(model.diameters).max().orElseThrow();
  }

  /** What is proven: the least score there is, or a bound under it. */
  record Proof(double best, double bound, boolean optimal) {}

  /**
   * Proves that nothing is better than a known choice, or finds what is; in a time that is cut
   * short if need be.
   */
  static Proof prove(BalanceResult known, double seconds) {
    return new ExactSolver(known.state()).solve(seconds);
  }

  private Proof solve(double seconds) {
    lay();
    for (int c = 0; c < sizes.length; c++) {
      course(c);
    }
    for (int c = 0; c < sizes.length; c++) {
      if (model.slots.hasAbove(c)) {
        joints(c);
      }
    }
    columns();
    cp.minimize(cost);
    cp.addLessOrEqual(cost, known.total);
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(2).setRandomSeed(1);
    CpSolverStatus status = solver.solve(cp);
    return new Proof(
        model.area((long) solver.objectiveValue()),
        model.area((long) solver.bestObjectiveBound()),
        status == CpSolverStatus.OPTIMAL);
  }

  /** Of two like columns, whose logs may all change places, has the first the lower log below. */
  private void columns() {
    Columns columns = new Columns(model);
    for (int s = 0; s < model.slots.count; s++) {
      if (columns.mate[s] > s && columns.below[s] < 0) {
        cp.addLessOrEqual(
            of(s, v -> model.variantLog[v]), of(columns.mate[s], v -> model.variantLog[v]));
      }
    }
  }

  private void lay() {
    List<List<BoolVar>> uses = new ArrayList<>();
    for (int log = 0; log < model.logs; log++) {
      uses.add(new ArrayList<>());
    }
    for (int slot = 0; slot < model.slots.count; slot++) {
      laid.add(new ArrayList<>());
      variants.add(new ArrayList<>());
      for (int log = 0; log < model.logs; log++) {
        for (int i = 0; model.fits(log, slot) && i < model.variants(log, slot); i++) {
          BoolVar use = cp.newBoolVar("");
          laid.get(slot).add(use);
          variants.get(slot).add(model.firstVariant(log, slot) + i);
          uses.get(log).add(use);
          cost.addTerm(use, model.costs[model.firstVariant(log, slot) + i]);
        }
      }
      cp.addExactlyOne(laid.get(slot).toArray(new BoolVar[0]));
    }
    uses.forEach(use -> cp.addAtMostOne(use.toArray(new BoolVar[0])));
  }

  /** Returns a number that hangs on the variant in a slot, as an expression. */
  private LinearExpr of(int slot, java.util.function.IntToLongFunction number) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int i = 0; i < laid.get(slot).size(); i++) {
      sum.addTerm(laid.get(slot).get(i), number.applyAsLong(variants.get(slot).get(i)));
    }
    return sum.build();
  }

  private void course(int c) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    IntVar least = cp.newIntVar(0, thickest, "");
    IntVar most = cp.newIntVar(0, thickest, "");
    for (int s = model.slots.courseSlot[c]; s < model.slots.courseSlot[c + 1]; s++) {
      LinearExpr mid = of(s, v -> model.fineMids[v]);
      sum.add(mid);
      cp.addLessOrEqual(least, mid);
      cp.addGreaterOrEqual(most, mid);
    }
    LinearExpr spread = LinearExpr.newBuilder().addTerm(most, 1).addTerm(least, -1).build();
    long toGrains = 4L * model.fold;
    penalty(
        LinearExpr.affine(spread, toGrains, -toGrains * aims.mostSpread()),
        aims.weights().spread());
    sizes[c] = size(sum.build(), model.slots.courseSlot[c + 1] - model.slots.courseSlot[c]);
  }

  /** Returns a round's size in M-th parts of a tick: the mean, or the nearest step, ties up. */
  private LinearExpr size(LinearExpr sum, int count) {
    if (model.exact) {
      return LinearExpr.term(sum, model.fold / count);
    }
    IntVar steps = cp.newIntVar(0, thickest / aims.sizeStep(), "");
    long whole = aims.sizeStep() * count;
    LinearExprBuilder over = LinearExpr.newBuilder().addTerm(sum, 2).addTerm(steps, -2 * whole);
    cp.addLinearConstraint(over, -whole, whole - 1);
    return LinearExpr.term(steps, aims.sizeStep());
  }

  private void joints(int c) {
    LinearExprBuilder rise = LinearExpr.newBuilder().addTerm(sizes[c + 1], 4).addTerm(sizes[c], -4);
    penalty(rise.build(), aims.weights().inversion());
    int count = model.slots.courseSlot[c + 1] - model.slots.courseSlot[c];
    for (int s = model.slots.courseSlot[c]; s < model.slots.courseSlot[c + 1]; s++) {
      for (int k = 0; k < 3; k++) {
        station(s, s + count, k, model.slots.round(c) % 2 == 1);
      }
    }
  }

  private void station(int low, int high, int k, boolean turned) {
    int c = model.slots.courseOf[low];
    int down = turned ? 2 - k : k;
    LinearExprBuilder error = LinearExpr.newBuilder();
    error.addTerm(sizes[c], model.slotFirst[low] ? 3 : 1);
    error.addTerm(sizes[c + 1], model.slotFirst[low] ? 1 : 3);
    error.addTerm(of(low, v -> model.diameters[3 * v + down]), -1);
    error.addTerm(of(high, v -> model.diameters[3 * v + 2 - down]), -1);
    IntVar off = cp.newIntVar(-widest(1), widest(1), "");
    cp.addEquality(off, error);
    square(off, 1);
    long least = model.grain(aims.leastGap()) - model.grain(aims.gap());
    penalty(LinearExpr.affine(off, -1, least), aims.weights().least());
  }

  /** Adds the weighted square of what lies above zero. */
  private void penalty(LinearExpr excess, int weight) {
    IntVar over = cp.newIntVar(0, widest(weight), "");
    cp.addMaxEquality(over, new LinearExpr[] {excess, LinearExpr.constant(0)});
    square(over, weight);
  }

  private void square(IntVar number, int weight) {
    IntVar squared = cp.newIntVar(0, widest(weight) * widest(weight), "");
    cp.addMultiplicationEquality(squared, number, number);
    cost.addTerm(squared, weight);
  }

  /** Returns the largest fault of a weight that leaves a choice no worse than the known one. */
  private long widest(int weight) {
    return (long) Math.sqrt((double) known.total / weight);
  }
}
