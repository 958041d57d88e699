package roundbook.job;

import java.util.Optional;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/**
 * Logs of the same yard that lie elsewhere than in the walls: plates, ties, joists, purlins, a
 * ridge, posts, gable logs.
 *
 * <p>How thick they must be comes from whoever designs the roof or the floor; no size of them is
 * worked out here.
 *
 * @param name what they are
 * @param count how many
 * @param length how long each is when trimmed
 * @param mid the least middle diameter; zero where none was told
 * @param tip the least tip diameter; zero where none was told
 * @param sweep the most sweep; empty where none was told
 * @param remarks free text, or empty
 * @param origin where it was read
 */
public record OtherLog(
    String name,
    int count,
    Length length,
    Length mid,
    Length tip,
    Optional<Length> sweep,
    String remarks,
    CellRef origin) {}
