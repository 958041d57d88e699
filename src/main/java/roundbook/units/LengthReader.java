package roundbook.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.units.Doubt.DoubtKind;

/**
 * Reads lengths in every form that a tape, a tally or a harvester writes.
 *
 * <p>Feet and inches ({@code 12' 4 1/2"}, {@code 12 ft 4 in}, {@code 12'-4"}), inches with
 * fractions ({@code 14 3/4}, {@code 14-3/4"}, {@code 14"3/4}, {@code 14¾}), decimals of any unit
 * with a point or comma ({@code 4.9m}, {@code 372 mm}, {@code 31,4 cm}), metres and centimetres
 * ({@code 4 m 90 cm}, {@code 4m90}). A number without a unit takes the default unit. Units may be
 * words of English, German, French, Swedish, Finnish or Spanish.
 *
 * @param defaultUnit the unit of a bare number
 * @param decimalComma whether a comma is always the decimal mark
 */
public record LengthReader(LengthUnit defaultUnit, boolean decimalComma) {
  private static final Pattern UNCERTAIN =
      Pattern.compile(
          "^(?:[~≈±]|ca\\.?(?![a-z])|c\\.|circa|approx\\.?|about|abt\\.?|etwa|env\\.?|noin)\\s*(.+)$"
              + "|^(.+?)\\s*(?:\\(?\\?+\\)?|\\+/-|±|\\(?(?:est|approx)\\.?\\)?)$");
  private static final Pattern RANGE =
      Pattern.compile(
          ".*\\d[\"']?\\s*(?:-|\\.\\.+|to|bis|till|à|a|do|x|\\*)\\s*\\d+(?:[.,]\\d+)?.*(?<!\\d/\\d)");

  /** An apostrophe between thousands, for there are not a hundred inches to a foot. */
  private static final Pattern GROUPED = Pattern.compile("(?<=^\\d{1,3})'(?=\\d{3}(?!\\d))");

  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,4}[-/. ]{1,2}(?:\\d{1,2}[-/.]\\d{2,4}|[a-zäéû]{3,9}\\.?(?:[-/. ]\\d{2,4})?)"
              + "|[a-zäéû]{3,9}\\.?[-/. ]\\d{1,4}");
  private static final Pattern NOTHING =
      Pattern.compile("|-+|\\?+|\\.+|_+|/|x|n\\.?/?a\\.?|none|nil|null|tbd|k\\.?a\\.?|s\\.?d\\.?");

  /**
   * A length as it was read.
   *
   * @param length the length
   * @param unit the unit that the text itself states; empty for a bare number
   * @param doubt what makes it doubtful; empty when nothing does
   */
  public record Reading(Length length, Optional<LengthUnit> unit, Optional<Doubt> doubt) {}

  /** Reads a text; empty when it has none of the forms. */
  public Optional<Reading> read(String text) {
    String plain = TapeText.plain(text);
    Optional<Reading> certain = measure(plain);
    if (certain.isPresent()) {
      return certain;
    }
    Matcher matcher = UNCERTAIN.matcher(plain);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String core = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
    Optional<Doubt> doubt = Optional.of(Doubt.of(DoubtKind.UNCERTAIN));
    return measure(core).map(each -> new Reading(each.length(), each.unit(), doubt));
  }

  /** Returns the same reader with point and comma the other way round. */
  public LengthReader otherMark() {
    return new LengthReader(defaultUnit, !decimalComma);
  }

  /** Returns the unit of a word or mark such as {@code feet}, {@code po} or {@code "}. */
  public static Optional<LengthUnit> unitOf(String word) {
    return UnitWords.find(word);
  }

  /** Returns whether a text says that there is no value, such as {@code n/a} or a dash. */
  public static boolean isNothing(String text) {
    return NOTHING.matcher(TapeText.plain(text)).matches();
  }

  /** Returns whether a text is a range of two numbers, which is no measure. */
  public boolean isRange(String text) {
    String plain = TapeText.plain(text);
    return measure(plain).isEmpty() && RANGE.matcher(plain).matches();
  }

  /** Returns whether a text looks like a date, which a spreadsheet makes of a fraction. */
  public static boolean isDateLike(String text) {
    return DATE.matcher(TapeText.plain(text)).matches();
  }

  /** Reads a number without any unit, such as a count; empty when it is none. */
  public Optional<BigDecimal> number(String text) {
    return Numeral.of(TapeText.plain(text), decimalComma).map(Numeral::value);
  }

  private Optional<Reading> measure(String plain) {
    return new TapeParser(GROUPED.matcher(plain).replaceAll(""), this).parse();
  }
}
