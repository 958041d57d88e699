package roundbook.sheet.write;

import java.util.regex.Pattern;

/** Makes any text fit for a cell of a workbook. */
public final class CellText {
  /** How many characters a cell can hold. */
  static final int MOST = 32_767;

  private static final Pattern REFUSED =
      Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]");
  private static final Pattern LONE_SURROGATE =
      Pattern.compile(
          "[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]");
  private static final Pattern LIKE_AN_ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {}

  /** Returns whether a text is longer than a cell can hold. */
  static boolean isTooLong(String text) {
    return text.length() > MOST;
  }

  /** Returns a text cut to what a cell holds, an ellipsis being its last character then. */
  public static String cut(String text) {
    if (!isTooLong(text)) {
      return text;
    }
    int end = MOST - 1;
    boolean split = Character.isHighSurrogate(text.charAt(end - 1));
    return text.substring(0, split ? end - 1 : end) + "…";
  }

  /** Returns a legal text as a cell stores it, with what looks like an escape escaped. */
  static String stored(String text) {
    if (isPlain(text) && !text.contains("_x")) {
      return text;
    }
    return LIKE_AN_ESCAPE.matcher(legal(text)).replaceAll("_x005F_");
  }

  /** Returns a text with what XML cannot hold shown as a box, and line ends as line feeds. */
  public static String legal(String text) {
    if (isPlain(text)) {
      return text;
    }
    String lines = text.replace("\r\n", "\n").replace('\r', '\n');
    String known = REFUSED.matcher(lines).replaceAll("\uFFFD");
    return LONE_SURROGATE.matcher(known).replaceAll("\uFFFD");
  }

  /** Returns whether XML holds every letter as it is, as it does in nearly every text. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (letter < ' ' || letter >= 0xD800) {
        return false;
      }
    }
    return true;
  }
}
