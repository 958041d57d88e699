package roundbook.exchange;

import roundbook.job.Piece;
import roundbook.stack.PlacedLog;

/**
 * A spare for a placed log.
 *
 * @param placed the log in its place
 * @param piece the spare, as it would be cut for the place
 * @param effect what it would do there
 */
public record Substitute(PlacedLog placed, Piece piece, Effect effect) {}
