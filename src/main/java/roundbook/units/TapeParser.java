package roundbook.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import roundbook.units.Doubt.DoubtKind;

/**
 * Reads one measure from plain text: feet and inches, fractions, decimals, metres and centimetres.
 *
 * <p>A measure is a number, with a fraction after it or not, with a unit or not; after feet may
 * come inches, after metres centimetres, after centimetres millimetres, and after an inch mark a
 * fraction.
 */
final class TapeParser {
  private static final int QUOTIENT_DECIMALS = 15;
  private static final BigDecimal MOST = BigDecimal.valueOf(10_000_000);

  private final String text;
  private final boolean decimalComma;
  private final LengthUnit defaultUnit;
  private int at;
  private Optional<Doubt> doubt = Optional.empty();

  TapeParser(String text, LengthReader reader) {
    this.text = text;
    this.decimalComma = reader.decimalComma();
    this.defaultUnit = reader.defaultUnit();
  }

  /** A number with the unit after it; no unit is null. */
  private record Part(BigDecimal count, LengthUnit unit, boolean whole) {}

  Optional<LengthReader.Reading> parse() {
    boolean negative = skip('-');
    if (!negative) {
      skip('+');
    }
    Part first = part();
    if (first == null) {
      return Optional.empty();
    }
    LengthUnit unit = first.unit() == null ? defaultUnit : first.unit();
    Length total = Length.of(first.count(), unit);
    if (!atEnd()) {
      Length more = first.unit() == null ? null : rest(first);
      if (more == null || !atEnd()) {
        return Optional.empty();
      }
      total = total.plus(more);
    }
    Length signed = negative ? total.negated() : total;
    return Optional.of(new LengthReader.Reading(signed, Optional.ofNullable(first.unit()), doubt));
  }

  /** Reads what may follow a part: the next smaller unit, or a fraction after an inch mark. */
  private Length rest(Part first) {
    LengthUnit smaller =
        switch (first.unit()) {
          case FOOT, INCH -> LengthUnit.INCH;
          case METRE -> LengthUnit.CENTIMETRE;
          default -> LengthUnit.MILLIMETRE;
        };
    if (!first.whole() || first.unit() == LengthUnit.MILLIMETRE) {
      return null;
    }
    joiner();
    Part second = part();
    boolean fits = second != null && (second.unit() == null || second.unit() == smaller);
    if (!fits || first.unit() == LengthUnit.INCH && second.count().compareTo(BigDecimal.ONE) >= 0) {
      return null;
    }
    Length more = Length.of(second.count(), smaller);
    if (!more.isLessThan(Length.of(1, first.unit()))) {
      doubt = Optional.of(new Doubt(DoubtKind.LARGE_PART, first.unit().symbol(), ""));
    }
    boolean fraction = !atEnd() && second.unit() == LengthUnit.INCH && second.whole();
    return fraction ? inchFraction(more) : more;
  }

  /** Reads the fraction of {@code 12' 4"1/2}. */
  private Length inchFraction(Length inches) {
    joiner();
    Part part = part();
    boolean fits = part != null && part.count().compareTo(BigDecimal.ONE) < 0;
    return fits ? inches.plus(Length.of(part.count(), LengthUnit.INCH)) : null;
  }

  private Part part() {
    String digits = digits();
    Optional<Numeral> number = Numeral.of(digits, decimalComma);
    if (number.isEmpty()) {
      return null;
    }
    note(number.get().doubt());
    BigDecimal count = number.get().value();
    if (count.compareTo(MOST) > 0) {
      return null;
    }
    boolean whole = digits.chars().allMatch(Character::isDigit);
    if (whole && skip('/')) {
      return over(count, BigDecimal.ZERO);
    }
    int back = at;
    joiner();
    String more = whole ? digits() : "";
    if (!more.isEmpty() && more.chars().allMatch(Character::isDigit) && skip('/')) {
      return over(new BigDecimal(more), count);
    }
    at = back;
    return thousands(digits, count, whole);
  }

  /** Reads {@code 4 900 mm}, where a blank groups the thousands of millimetres. */
  private Part thousands(String digits, BigDecimal count, boolean whole) {
    int back = at;
    String more = whole && digits.length() <= 3 ? digits() : "";
    if (more.matches("\\d{3}")) {
      LengthUnit unit = unit();
      if (unit == LengthUnit.MILLIMETRE || unit == null && defaultUnit == LengthUnit.MILLIMETRE) {
        return new Part(new BigDecimal(digits + more), unit, true);
      }
    }
    at = back;
    return new Part(count, unit(), whole);
  }

  private Part over(BigDecimal numerator, BigDecimal whole) {
    String digits = digits();
    boolean plain = !digits.isEmpty() && digits.chars().allMatch(Character::isDigit);
    BigDecimal denominator = plain ? new BigDecimal(digits) : BigDecimal.ZERO;
    if (denominator.signum() == 0) {
      return null;
    }
    if (whole.signum() > 0 && numerator.compareTo(denominator) >= 0) {
      note(Optional.of(Doubt.of(DoubtKind.LARGE_FRACTION)));
    }
    BigDecimal quotient = numerator.divide(denominator, QUOTIENT_DECIMALS, RoundingMode.HALF_UP);
    return new Part(whole.add(quotient), unit(), false);
  }

  private String digits() {
    skipBlank();
    int from = at;
    while (at < text.length() && (isDigit(at) || isMark(at) || isExponent(at, from))) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean isMark(int index) {
    char letter = text.charAt(index);
    return letter == '.' || letter == ',';
  }

  private boolean isExponent(int index, int from) {
    char letter = text.charAt(index);
    boolean sign =
        (letter == '+' || letter == '-') && index > from && text.charAt(index - 1) == 'e';
    int next = index + 1;
    boolean more =
        next < text.length()
            && (isDigit(next)
                || text.charAt(next) == '+'
                || text.charAt(next) == '-' && next + 1 < text.length() && isDigit(next + 1));
    return more && (sign || letter == 'e' && index > from);
  }

  private boolean isDigit(int index) {
    return text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private LengthUnit unit() {
    int back = at;
    skipBlank();
    int from = at;
    if (at < text.length() && (text.charAt(at) == '\'' || text.charAt(at) == '"')) {
      at++;
    } else {
      while (at < text.length() && Character.isLetter(text.charAt(at))) {
        at++;
      }
    }
    Optional<LengthUnit> unit = UnitWords.find(text.substring(from, at));
    if (unit.isEmpty()) {
      at = back;
    } else if (at < text.length() && text.charAt(at) == '.') {
      at++;
    }
    return unit.orElse(null);
  }

  /** Passes over what may stand between two parts: a blank, a hyphen, a comma, a word for and. */
  private void joiner() {
    skipBlank();
    for (String word : new String[] {"-", "&", "+", ",", "and ", "und ", "et ", "och ", "y "}) {
      if (text.startsWith(word, at)) {
        at += word.length();
        break;
      }
    }
    skipBlank();
  }

  private boolean skip(char letter) {
    skipBlank();
    boolean there = at < text.length() && text.charAt(at) == letter;
    at += there ? 1 : 0;
    return there;
  }

  private void skipBlank() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private boolean atEnd() {
    skipBlank();
    return at >= text.length();
  }

  private void note(Optional<Doubt> other) {
    doubt = doubt.isEmpty() ? other : doubt;
  }
}
