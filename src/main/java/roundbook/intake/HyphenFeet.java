package roundbook.intake;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.table.Row;

/**
 * Feet and inches with nothing but a hyphen between: {@code 16-6} for 16 ft 6 in (common practice).
 *
 * <p>Two numbers with a hyphen may as well be a range. They are feet and inches where the heading
 * says so, or where every length of the column is written so, but for whole feet, and most of them
 * fall, as no range does.
 */
final class HyphenFeet {
  private static final Pattern FORM =
      Pattern.compile("\\s*(\\d{1,2})\\s*[-\u2010-\u2015\u2212]\\s*(0?\\d|1[01])\\s*");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,2}");
  private static final Pattern POINT = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})");
  private static final int INCHES = 12;
  private static final int FEWEST = 3;

  private HyphenFeet() {}

  /** Returns the text with its marks, {@code 16' 6"}; empty where it has another form. */
  static String marked(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Integer.parseInt(matcher.group(1)) + "' " + Integer.parseInt(matcher.group(2)) + "\""
        : "";
  }

  /**
   * Returns a text such as {@code 16.06} with its marks; empty where it has another form, and of
   * {@code 16.1}, which is one inch, or ten inches that lost a zero.
   */
  static String pointed(String text) {
    Matcher matcher = POINT.matcher(text);
    boolean clear = matcher.matches() && !matcher.group(2).equals("1");
    return clear && Integer.parseInt(matcher.group(2)) < INCHES
        ? matcher.group(1) + "' " + Integer.parseInt(matcher.group(2)) + "\""
        : "";
  }

  /** Returns whether a text may be decimal feet as well as feet and inches. */
  static boolean isPointed(String text) {
    return POINT.matcher(text).matches();
  }

  /** Returns whether a heading of lengths says feet and inches. */
  static boolean isStated(Heading lengths) {
    return lengths.wording().isFeetAndInches();
  }

  /** Returns whether the rows of a column can only be meant so. */
  static boolean isMeant(Heading lengths, List<Row> rows) {
    int filled = 0;
    int falling = 0;
    for (Row row : rows) {
      String text = row.cell(lengths.column()).text();
      Matcher matcher = FORM.matcher(text);
      if (matcher.matches()) {
        boolean falls = Integer.parseInt(matcher.group(1)) > Integer.parseInt(matcher.group(2));
        falling += falls ? 1 : 0;
      } else if (!text.isEmpty() && !WHOLE.matcher(text).matches()) {
        return false;
      }
      filled += matcher.matches() ? 1 : 0;
    }
    return filled >= FEWEST && falling * 2 > filled;
  }
}
