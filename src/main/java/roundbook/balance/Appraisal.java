package roundbook.balance;

/** Adds up the score of a state part by part, from the gaps and not from what the state kept. */
final class Appraisal {
  private final State state;
  private final Model model;
  private final Prices prices;
  private long evenness;
  private long leastGap;
  private long spread;
  private long inversion;
  private long waste;
  private long worst;
  private int stations;
  private int tight;
  private int inversions;
  private int refused;
  private long offcut;

  private Appraisal(State state) {
    this.state = state;
    model = state.model;
    prices = new Prices(model);
  }

  /** Returns the score of a state. */
  static Score of(State state) {
    Appraisal appraisal = new Appraisal(state);
    for (int s = 0; s < state.variant.length; s++) {
      appraisal.slot(s);
    }
    for (int c = 0; c < state.size.length; c++) {
      appraisal.course(c);
    }
    return appraisal.score();
  }

  private void slot(int s) {
    int variant = state.variant[s];
    waste += model.costs[variant];
    offcut += cut(s).offcut();
    int course = model.slots.courseOf[s];
    refused += state.size[course] > model.largest[variant] ? 1 : 0;
    if (model.slots.hasAbove(course)) {
      boolean low = false;
      for (int k = 0; k < 3; k++) {
        low |= station(state.error(s, k));
      }
      tight += low ? 1 : 0;
    }
  }

  private boolean station(long error) {
    evenness += error * error;
    leastGap += prices.leastGap(error);
    worst = Math.max(worst, Math.abs(error));
    stations++;
    return prices.leastGap(error) > 0;
  }

  private void course(int c) {
    spread += prices.spread(state.spread(c));
    if (model.slots.hasAbove(c)) {
      inversion += prices.inversion(state.size[c], state.size[c + 1]);
      inversions += state.size[c + 1] > state.size[c] ? 1 : 0;
    }
  }

  private Cut cut(int slot) {
    int log = state.logAt(slot);
    int number = state.variant[slot] - model.firstVariant(log, slot);
    return model.task.cuts(log, model.slotClass[slot]).get(number);
  }

  private Score score() {
    double rms = stations == 0 ? 0 : StrictMath.sqrt(model.area(evenness) / stations);
    return new Score(
        model.area(evenness),
        model.area(leastGap),
        model.area(spread),
        model.area(inversion),
        model.area(waste),
        new Score.Faults(rms, worst / model.grains, tight, inversions, refused, offcut));
  }
}
