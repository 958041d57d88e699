package roundbook.picture.words;

import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * How drawings print lengths and words, in the job's language.
 *
 * @param lengths prints marks and tape distances in the job's unit
 * @param texts the words by key; every key of a drawing begins with {@code picture.}
 */
public record Wording(LengthFormat lengths, Texts texts) {
  /** Finds the words of a key in the workbook's language. */
  @FunctionalInterface
  public interface Texts {
    /**
     * Returns a text.
     *
     * @param key the key
     * @param values what is filled in for {@code {0}}, {@code {1}} and so on
     */
    String text(String key, Object... values);
  }

  /** Returns a text of the drawings. */
  public String say(String key, Object... values) {
    return texts.text("picture." + key, values);
  }

  /** Returns the name of the job's unit, such as inches. */
  public String unit() {
    return say("unit." + lengths.symbol());
  }

  /** Returns a mark or gap without its unit. */
  public String mark(Length length) {
    return lengths.mark(length);
  }

  /** Returns a distance along the tape. */
  public String tape(Length length) {
    return lengths.feetInches(length);
  }
}
