package roundbook.takeoff;

import java.util.List;
import java.util.Optional;
import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.stack.Stack;

/**
 * Everything that the walls come to besides the notches.
 *
 * @param settling how far the walls come down
 * @param openings every opening inside its wall, with what it cuts
 * @param chinking the filling of the joints
 * @param wood every placed log's wood and weight, by round, then wall; of a pair of short logs both
 * @param scale the mill's scale of the tally
 * @param starter the half logs under the second-laid walls, where they are asked for
 * @param bed what the first logs lie on; empty when nothing stands
 * @param top how the walls end; empty when nothing stands
 */
public record Takeoff(
    Settling settling,
    List<OpeningCut> openings,
    Chinking chinking,
    List<PieceWood> wood,
    LogScale scale,
    Starter starter,
    Optional<Bed> bed,
    Optional<Top> top) {
  /** Copies the list. */
  public Takeoff {
    openings = List.copyOf(openings);
    wood = List.copyOf(wood);
  }

  /** Returns the takeoff of chosen logs. */
  public static Takeoff of(Job job, Stack stack) {
    Settling settling = Settling.of(job, stack);
    boolean stands = !stack.courses().isEmpty();
    List<OpeningCut> openings = stands ? new OpeningCutter(job, stack, settling).cuts() : List.of();
    Starter starter = Starter.of(job, stack);
    List<Opening> rough = openings.stream().map(OpeningCut::opening).toList();
    WoodMeasure wood = new WoodMeasure(stack, openings, settling.moisture().service());
    return new Takeoff(
        settling,
        openings,
        new Chinker(stack, starter, rough).chinking(),
        wood.pieces(),
        LogScale.of(job),
        starter,
        stands ? Optional.of(Bed.of(stack, starter)) : Optional.empty(),
        stands ? Optional.of(Top.of(stack)) : Optional.empty());
  }
}
