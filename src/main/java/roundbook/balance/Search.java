package roundbook.balance;

/** Anneals from a dealt start. */
final class Search implements Balancer {
  private static final long USUAL = 8_000_000;

  @Override
  public BalanceResult solve(BalanceTask task, Effort effort) {
    Model model = new Model(Shortage.fillable(task));
    State state = new State(model);
    state.set(SortAndDeal.deal(model));
    Anneal anneal = new Anneal(state, new Dice(effort.seed()));
    long moves = effort.moves() == 0 ? USUAL : effort.moves();
    anneal.run(3, 0.02, moves, effort.stop());
    state.set(anneal.best());
    return new BalanceResult(state, task);
  }
}
