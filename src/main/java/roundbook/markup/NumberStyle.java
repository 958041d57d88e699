package roundbook.markup;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.units.LengthReader;

/**
 * How a style makes numbers look.
 *
 * @param unit the symbol of the unit of length that it shows, or empty
 * @param padded whether it makes tags of numbers, with zeros or letters before them
 */
record NumberStyle(String unit, boolean padded) {
  /** A number as it is. */
  static final NumberStyle PLAIN = new NumberStyle("", false);

  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

  /** Returns the look of a style with letters around its number. */
  static NumberStyle of(String letters, int leastDigits) {
    String word = letters.strip().replaceFirst("^\\((.*)\\)$", "$1");
    String unit = LengthReader.unitOf(word).map(each -> each.symbol()).orElse("");
    boolean padded = unit.isEmpty() && (leastDigits > 1 || !word.isEmpty());
    return new NumberStyle(unit, padded);
  }

  /** Returns the look of a number format's code. */
  static NumberStyle ofCode(String code) {
    String first = code.replaceFirst("(?<!\\\\);.*$", "");
    StringBuilder letters = new StringBuilder();
    Matcher quoted = QUOTED.matcher(first);
    while (quoted.find()) {
      letters.append(quoted.group(1));
    }
    String bare = QUOTED.matcher(first).replaceAll("");
    boolean zeros = bare.startsWith("00") && bare.indexOf('.') < 0;
    return of(letters.toString(), zeros ? 2 : 1);
  }
}
