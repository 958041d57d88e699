package roundbook.heading;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Writes words without accents and in small letters, so that spellings compare.
 *
 * <p>The letters of the program's own languages stand in a table: Java's own decomposition of
 * Unicode is a fifth of a second's work to load, and only other letters need it.
 */
final class Plain {
  private static final String MARKED = "àáâãäåāąçćčďèéêëēęěìíîïīķļñńňòóôõöőřśšťùúûüūůýźžżйё";
  private static final String BARE = "aaaaaaaacccdeeeeeeeiiiiiklnnnoooooorsstuuuuuuyzzzие";
  private static final String LETTERS = "ßøæłđıœ\u2116";
  private static final String[] PLAIN = {"ss", "o", "ae", "l", "d", "i", "oe", "No"};

  private Plain() {}

  static String of(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    if (isAscii(small)) {
      return small;
    }
    StringBuilder plain = new StringBuilder(small.length());
    for (int i = 0; i < small.length(); i++) {
      char letter = small.charAt(i);
      int marked = MARKED.indexOf(letter);
      int other = LETTERS.indexOf(letter);
      plain.append(
          marked >= 0
              ? BARE.substring(marked, marked + 1)
              : other >= 0 ? PLAIN[other] : String.valueOf(letter));
    }
    return isTabled(small) ? plain.toString() : Unicode.bare(plain);
  }

  /** Returns whether the tables here know every small letter and mark of a text. */
  static boolean isTabled(String small) {
    for (int i = 0; i < small.length(); i++) {
      char letter = small.charAt(i);
      if (MARKED.indexOf(letter) < 0 && LETTERS.indexOf(letter) < 0 && !isWhole(letter)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 128) {
        return false;
      }
    }
    return true;
  }

  /** Returns whether a letter or mark is its own decomposition: Latin, Cyrillic, Greek, signs. */
  private static boolean isWhole(char letter) {
    return letter < 128
        || letter >= '\u0430' && letter <= '\u044F' && letter != '\u0439'
        || letter >= '\u03B1' && letter <= '\u03C9'
        || letter >= '\u2600' && letter <= '\u27BF'
        || letter == '\u2211'
        || letter == '\u3003';
  }

  /** Every other letter. */
  private static final class Unicode {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

    static String bare(CharSequence text) {
      return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    }
  }
}
