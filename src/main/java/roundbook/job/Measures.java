package roundbook.job;

import java.util.Optional;
import roundbook.units.Length;

/**
 * What was measured on a log; each is empty where nothing was typed.
 *
 * @param butt diameter as hewn at the trimmed butt end
 * @param mid diameter as hewn at the middle of the trimmed log
 * @param tip diameter as hewn at the trimmed tip end
 * @param lowerCut lower mark at the shoulder as cut
 * @param upperCut upper mark on the inside face as cut
 */
public record Measures(
    Optional<Length> butt,
    Optional<Length> mid,
    Optional<Length> tip,
    Optional<Length> lowerCut,
    Optional<Length> upperCut) {
  /** Nothing measured. */
  public static final Measures NONE =
      new Measures(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Returns diameters as hewn, no marks. */
  public static Measures hewn(Optional<Length> butt, Optional<Length> mid, Optional<Length> tip) {
    return new Measures(butt, mid, tip, Optional.empty(), Optional.empty());
  }

  /** Returns whether any diameter was measured. */
  public boolean hewn() {
    return butt.isPresent() || mid.isPresent() || tip.isPresent();
  }

  /** Returns whether nothing at all was measured. */
  public boolean isEmpty() {
    return !hewn() && lowerCut.isEmpty() && upperCut.isEmpty();
  }
}
