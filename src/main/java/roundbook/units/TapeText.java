package roundbook.units;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Turns every way of typing marks, fractions, blanks and digits into one.
 *
 * <p>Vulgar fractions become {@code n/d} with a blank before them, typographic quotes and primes
 * become {@code '} and {@code "}, every dash a hyphen, every blank a space, and characters without
 * any width vanish.
 */
final class TapeText {
  private static final String SINGLE = "'\u2018\u2019\u201A\u201B\u2032\u00B4`\u02B9\u02BC\uFF07";
  private static final String DOUBLE = "\"\u201C\u201D\u201E\u201F\u2033\u02BA\u02DD\uFF02";
  private static final String SLASH = "/\u2044\u2215\uFF0F";
  private static final String POINT = ".\u00B7\uFF0E";
  private static final String RAISED =
      "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";

  private final StringBuilder plain = new StringBuilder();
  private boolean raised;

  private TapeText() {}

  static String plain(String text) {
    TapeText result = new TapeText();
    for (int i = 0; i < text.length(); i++) {
      result.add(text.charAt(i));
    }
    return result.plain.toString().strip().toLowerCase(Locale.ROOT);
  }

  private void add(char letter) {
    int height = RAISED.indexOf(letter);
    if (height >= 0) {
      separate(!raised);
      plain.append((char) ('0' + height));
      raised = true;
      return;
    }
    if (Character.getType(letter) == Character.FORMAT) {
      return;
    }
    raised = false;
    if (isVulgar(letter)) {
      separate(true);
      plain.append(
          Normalizer.normalize(String.valueOf(letter), Normalizer.Form.NFKC)
              .replace('\u2044', '/'));
    } else {
      addMark(letter);
    }
  }

  private void addMark(char letter) {
    if (SINGLE.indexOf(letter) >= 0) {
      addSingle();
    } else if (DOUBLE.indexOf(letter) >= 0) {
      plain.append('"');
    } else if (Character.isSpaceChar(letter) || Character.isWhitespace(letter)) {
      separate(plain.length() > 0 && !endsWith(' '));
    } else {
      plain.append(same(letter));
    }
  }

  /** Two single marks side by side stand for a double one. */
  private void addSingle() {
    if (endsWith('\'')) {
      plain.setCharAt(plain.length() - 1, '"');
    } else {
      plain.append('\'');
    }
  }

  private static char same(char letter) {
    if (SLASH.indexOf(letter) >= 0) {
      return '/';
    }
    if (POINT.indexOf(letter) >= 0) {
      return '.';
    }
    if (letter == '\u2212' || letter == '\uFF0D' || letter >= '\u2010' && letter <= '\u2015') {
      return '-';
    }
    if (letter >= '\u2080' && letter <= '\u2089') {
      return (char) ('0' + letter - '\u2080');
    }
    int digit = letter < 128 ? -1 : Character.digit(letter, 10);
    return digit < 0 ? letter : (char) ('0' + digit);
  }

  private void separate(boolean wanted) {
    if (wanted && plain.length() > 0) {
      plain.append(' ');
    }
  }

  private boolean endsWith(char letter) {
    return plain.length() > 0 && plain.charAt(plain.length() - 1) == letter;
  }

  private static boolean isVulgar(char letter) {
    return letter >= '\u00BC' && letter <= '\u00BE'
        || letter >= '\u2150' && letter <= '\u215F'
        || letter == '\u2189';
  }
}
