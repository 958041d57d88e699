package roundbook.heading;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes words without accents and in small letters, so that spellings compare. */
final class Plain {
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final String LETTERS = "ßøæłđıœ";
  private static final String[] PLAIN = {"ss", "o", "ae", "l", "d", "i", "oe"};

  private Plain() {}

  static String of(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    for (int i = 0; i < LETTERS.length(); i++) {
      if (small.indexOf(LETTERS.charAt(i)) >= 0) {
        small = small.replace(LETTERS.substring(i, i + 1), PLAIN[i]);
      }
    }
    return isAscii(small)
        ? small
        : ACCENTS.matcher(Normalizer.normalize(small, Normalizer.Form.NFKD)).replaceAll("");
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 128) {
        return false;
      }
    }
    return true;
  }
}
