package roundbook.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import roundbook.units.Doubt.DoubtKind;

/**
 * A number as written, its grouping and decimal marks told apart.
 *
 * @param value the number
 * @param doubt what is doubtful about its marks; empty when nothing is
 */
record Numeral(BigDecimal value, Optional<Doubt> doubt) {
  private static final Pattern SIMPLE = Pattern.compile("\\d{1,12}(?:\\.\\d{0,40})?|\\.\\d{1,40}");
  private static final Pattern SCIENTIFIC =
      Pattern.compile("(?:\\d{1,12}(?:\\.\\d{0,40})?|\\.\\d{1,40})(?:e\\+?-?\\d{1,2})?");
  private static final Pattern COMMA_GROUPS =
      Pattern.compile("[1-9]\\d{0,2}(?:,\\d{3})+(\\.\\d+)?");
  private static final Pattern POINT_GROUPS =
      Pattern.compile("[1-9]\\d{0,2}(?:\\.\\d{3})+(,\\d+)?");

  /** Reads a number; empty when the text is none. */
  static Optional<Numeral> of(String text, boolean decimalComma) {
    if (text.indexOf(',') < 0) {
      boolean grouped = decimalComma && POINT_GROUPS.matcher(text).matches();
      return grouped ? grouped(text, '.') : plain(text, null);
    }
    if (!decimalComma && COMMA_GROUPS.matcher(text).matches()) {
      return grouped(text, ',');
    }
    if (POINT_GROUPS.matcher(text).matches() && text.indexOf('.') >= 0) {
      return plain(text.replace(".", "").replace(',', '.'), null);
    }
    boolean both = text.indexOf('.') >= 0;
    return both && COMMA_GROUPS.matcher(text).matches()
        ? plain(text.replace(",", ""), null)
        : plain(both ? "" : text.replace(',', '.'), null);
  }

  /** Reads groups of thousands; a lone group may as well be decimals, which is worth a doubt. */
  private static Optional<Numeral> grouped(String text, char mark) {
    boolean lone = text.indexOf(mark) == text.lastIndexOf(mark);
    boolean told = text.indexOf(mark == ',' ? '.' : ',') >= 0;
    String whole = text.replace(String.valueOf(mark), "").replace(',', '.');
    Doubt doubt = lone && !told ? new Doubt(DoubtKind.THOUSANDS, text, whole) : null;
    return plain(whole, doubt);
  }

  private static Optional<Numeral> plain(String text, Doubt doubt) {
    if (!SIMPLE.matcher(text).matches() && !SCIENTIFIC.matcher(text).matches()) {
      return Optional.empty();
    }
    String digits = text.replace("e+", "e");
    int end = digits.indexOf('e') < 0 ? digits.length() : digits.indexOf('e');
    String whole = digits.charAt(end - 1) == '.' ? digits.substring(0, end - 1) : digits;
    String exponent = whole.length() < end ? digits.substring(end) : "";
    return Optional.of(new Numeral(new BigDecimal(whole + exponent), Optional.ofNullable(doubt)));
  }
}
