package roundbook.job;

import java.util.OptionalInt;
import roundbook.problem.CellRef;

/**
 * A place that the builder has settled.
 *
 * @param round the round counted from 1; empty when only the wall is settled
 * @param wall the wall's name; empty when only the round is settled
 * @param log the log's tag; empty when only the direction of the butt is settled
 * @param buttAt the corner for its butt; empty when left to the plan
 * @param why the builder's reason, or empty
 * @param origin the row it was read from
 */
public record Pin(
    OptionalInt round, String wall, String log, String buttAt, String why, CellRef origin) {}
