package roundbook.exchange;

import java.util.Optional;
import roundbook.job.Log;
import roundbook.job.Pair.Half;
import roundbook.job.Piece;
import roundbook.stack.PlacedLog;

/**
 * A spare for a placed log, or for one of two short logs beside an opening.
 *
 * @param placed what lies in the place
 * @param piece what would lie there, cut for the place
 * @param half the spare beside an opening, where only one of two short logs is replaced
 * @param effect what it would do there
 */
public record Substitute(PlacedLog placed, Piece piece, Optional<Half> half, Effect effect) {
  /** Returns the log that it would replace. */
  public Log out() {
    Log whole = placed.piece().log();
    return half.map(own -> whole.members().get(own.left() ? 0 : 1)).orElse(whole);
  }

  /** Returns the spare, as it would be cut. */
  public Piece in() {
    return half.map(Half::piece).orElse(piece);
  }
}
