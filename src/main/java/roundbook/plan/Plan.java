package roundbook.plan;

import java.util.List;
import java.util.Optional;
import roundbook.exchange.Exchanges;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.Value;
import roundbook.rounds.Choice;
import roundbook.rounds.PairMiss;
import roundbook.rounds.Verifier.Verdict;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.Takeoff;

/**
 * Everything that the crew and the yard need to know of a job.
 *
 * @param job what was asked
 * @param choice which log goes where
 * @param stack heights and gaps of the chosen logs
 * @param pieces every placed log with what is to be done with it, by round, then wall
 * @param takeoff openings, chinking, wood, settling, bed and top
 * @param uses what becomes of each log of the tally, in tally order
 * @param supply logs on hand against logs needed, by length class, the longest first
 * @param quantities everything else to buy, and what is left over
 * @param order what the yard should send
 * @param exchanges spares, substitutes, and why each round has its logs
 * @param problems every doubt of the plan, in order of rounds
 * @param verdict what of the plan was checked from first principles, without a fault
 * @param nearPairs for places beside openings that one log has though short ones are asked for, how
 *     near the best two of the logs left over come
 */
public record Plan(
    Job job,
    Choice choice,
    Stack stack,
    List<PiecePlan> pieces,
    Takeoff takeoff,
    List<LogUse> uses,
    List<ClassSupply> supply,
    List<Quantity> quantities,
    List<OrderLine> order,
    Exchanges exchanges,
    List<Problem> problems,
    Verdict verdict,
    List<PairMiss> nearPairs) {
  /** Copies the lists. */
  public Plan {
    pieces = List.copyOf(pieces);
    uses = List.copyOf(uses);
    supply = List.copyOf(supply);
    quantities = List.copyOf(quantities);
    order = List.copyOf(order);
    problems = List.copyOf(problems);
    nearPairs = List.copyOf(nearPairs);
  }

  /** Returns how many rounds stand. */
  public int rounds() {
    return choice.courses().size();
  }

  /** Returns the pieces of a round in the walls' clockwise order. */
  public List<PiecePlan> round(int round) {
    return pieces.stream().filter(piece -> piece.placed().round() == round).toList();
  }

  /** What becomes of a log. */
  public enum Use {
    /** It has a place in a wall. */
    PLACED("placed"),
    /** It could stand in for another. */
    SPARE("spare"),
    /** It serves no wall of this job. */
    LEFT_OUT("left out"),
    /** Another job that shares the yard has it in a wall. */
    TAKEN("taken");

    private final String words;

    Use(String words) {
      this.words = words;
    }

    /** Returns the words used in sheets and tables. */
    public String words() {
      return words;
    }
  }

  /**
   * What becomes of one log of the tally.
   *
   * @param log the log
   * @param use what becomes of it
   * @param placed its place, when it has one
   * @param note why it is left out, which job has taken it, or {@link Value#NONE}
   */
  public record LogUse(Log log, Use use, Optional<PlacedLog> placed, Value note) {}

  /** Counts the logs of a use. */
  public long count(Use use) {
    return uses.stream().filter(each -> each.use() == use).count();
  }
}
