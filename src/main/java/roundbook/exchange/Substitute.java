package roundbook.exchange;

import java.util.Optional;
import roundbook.job.Piece;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;

/**
 * A spare for what fills a place, or for one of two short logs beside an opening.
 *
 * @param placed what fills the place
 * @param instead the short log that it would replace, the other staying; empty: all that lies there
 * @param in the spare, as it would be cut
 * @param effect what it would do there
 */
public record Substitute(FilledPlace placed, Optional<PlacedLog> instead, Piece in, Effect effect) {
  /** Returns the tag of the log that it would replace, or both where it replaces two. */
  public String out() {
    return instead.map(log -> log.piece().log().tag()).orElseGet(placed::tags);
  }
}
