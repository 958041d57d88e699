package roundbook.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * Everything that the walls come to besides the notches.
 *
 * @param settling how far the walls come down
 * @param openings every opening inside its wall, with what it cuts
 * @param shortStock short logs that can stand beside openings where that was asked for
 * @param beside wood of those short logs, left then right, in the order of {@code shortStock}
 * @param chinking the filling of the joints
 * @param wood every placed log's wood and weight, by round, then wall
 * @param scale the mill's scale of the tally
 * @param bed what the first logs lie on; empty when nothing stands
 * @param top how the walls end; empty when nothing stands
 */
public record Takeoff(
    Settling settling,
    List<OpeningCut> openings,
    List<ShortStock> shortStock,
    List<PieceWood> beside,
    Chinking chinking,
    List<PieceWood> wood,
    LogScale scale,
    Optional<Bed> bed,
    Optional<Top> top) {
  /** Copies the list. */
  public Takeoff {
    openings = List.copyOf(openings);
    shortStock = List.copyOf(shortStock);
    beside = List.copyOf(beside);
    wood = List.copyOf(wood);
  }

  /** Returns the wood that stands at last: short logs in place of the long ones they free. */
  public List<PieceWood> standing() {
    Stream<PieceWood> whole = wood.stream().filter(each -> !isFreed(each.log()));
    return Stream.concat(whole, beside.stream()).toList();
  }

  /** Returns whether short logs stand in the place of a log, so that it is free. */
  public boolean isFreed(PlacedLog log) {
    return beside(log).isPresent();
  }

  /** Returns the short logs that stand in the place of a log, if any do. */
  public Optional<ShortStock> beside(PlacedLog log) {
    return shortStock.stream().filter(stock -> stock.freed().equals(log)).findFirst();
  }

  /** Returns the takeoff of chosen logs. */
  public static Takeoff of(Job job, Stack stack) {
    Settling settling = Settling.of(job, stack);
    boolean stands = !stack.courses().isEmpty();
    List<OpeningCut> openings = stands ? new OpeningCutter(job, stack, settling).cuts() : List.of();
    List<ShortStock> stock = new ShortStockFinder(job, stack).find(openings);
    WoodMeasure wood = new WoodMeasure(stack, openings, settling.moisture().service());
    return new Takeoff(
        settling,
        openings,
        stock,
        wood.beside(stock),
        new Chinker(stack, openings.stream().map(OpeningCut::opening).toList()).chinking(),
        wood.pieces(),
        LogScale.of(job),
        stands ? Optional.of(Bed.of(stack)) : Optional.empty(),
        stands ? Optional.of(Top.of(stack)) : Optional.empty());
  }
}
