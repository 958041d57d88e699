package roundbook.table;

/**
 * Takes the rows of a table, one at a time.
 *
 * <p>It is no {@link java.util.function.Consumer}: that has a second method of the same name, which
 * would be compiled with all that a long tally's rows run through once more.
 */
@FunctionalInterface
public interface RowTaker {
  /** Takes the next row. */
  void take(Row row);
}
