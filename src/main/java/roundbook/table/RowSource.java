package roundbook.table;

import java.util.Optional;
import roundbook.problem.Problem;

/** Reads the rows of a table from its file, one at a time. */
@FunctionalInterface
public interface RowSource {
  /**
   * Gives each row that is not blank to the taker, from the top.
   *
   * @param taker takes the rows; its own exceptions pass through
   * @return what kept the file from being read to its end; empty when nothing did
   */
  Optional<Problem> forEach(RowTaker taker);
}
