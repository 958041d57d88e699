package roundbook.units;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths in every form that a tape, a tally or a harvester writes.
 *
 * <p>Feet and inches ({@code 12' 4 1/2"}, {@code 12 ft 4 in}, {@code 12'-4"}), inches with
 * fractions ({@code 14 3/4}, {@code 14-3/4"}, {@code 14"3/4}, {@code 14¾}), decimals of any unit
 * with a point or comma ({@code 4.9m}, {@code 372 mm}, {@code 31,4 cm}), metres and centimetres
 * ({@code 4 m 90 cm}). A number without a unit takes the default unit.
 *
 * @param defaultUnit the unit of a bare number
 * @param decimalComma whether a comma is always the decimal mark
 */
public record LengthReader(LengthUnit defaultUnit, boolean decimalComma) {
  private static final String NUMBER = "\\d+(?:\\.\\d*)?(?:e[+]?\\d{1,2})?|\\.\\d+";
  private static final String FRACTION = "(\\d+)\\s*/\\s*(\\d+)";
  private static final String UNIT =
      "(\"|in|inch|inches|zoll|'|ft|feet|foot|fuss|mm|cm|m|metre|meter|metres|meters)";
  private static final Pattern PLAIN = Pattern.compile("(" + NUMBER + ")\\s*" + UNIT + "?");
  private static final Pattern MIXED =
      Pattern.compile("(?:(\\d+)\\s*(?:-|\\s|\"|in)\\s*)?" + FRACTION + "\\s*" + UNIT + "?");
  private static final Pattern FEET =
      Pattern.compile("(" + NUMBER + ")\\s*(?:'|ft|feet|foot)\\s*-?\\s*(\\S.*)");
  private static final Pattern METRES =
      Pattern.compile("(\\d+)\\s*m\\s*(\\d{1,2}(?:\\.\\d+)?)\\s*(?:cm)?");
  private static final Pattern RANGE =
      Pattern.compile("\\d+(?:\\.\\d+)?\\s*(?:-|to|bis)\\s*\\d+(?:\\.\\d+)?.*");

  /**
   * A length as it was read.
   *
   * @param length the length
   * @param unit the unit that the text itself states; empty for a bare number
   * @param doubt what makes it doubtful, in words; empty when nothing does
   */
  public record Reading(Length length, Optional<LengthUnit> unit, String doubt) {}

  /** Reads a text; empty when it has none of the forms. */
  public Optional<Reading> read(String text) {
    String plain = normal(text);
    boolean doubtful = plain.startsWith("~") || plain.startsWith("ca") || plain.endsWith("?");
    String core = plain.replaceAll("^(?:~|ca\\.?)\\s*|\\s*\\?+$", "");
    Optional<Reading> reading = measure(core.replaceAll("(?<=[a-z\"'])\\.$", ""));
    return doubtful
        ? reading.map(each -> new Reading(each.length(), each.unit(), "marked as uncertain"))
        : reading;
  }

  /** Returns whether a text is a range of two numbers, which is no measure. */
  public boolean isRange(String text) {
    return RANGE.matcher(normal(text)).matches();
  }

  /** Reads a number without any unit, such as a count; empty when it is none. */
  public Optional<BigDecimal> number(String text) {
    String plain = normal(text);
    return Pattern.matches(NUMBER, plain) ? Optional.of(decimal(plain)) : Optional.empty();
  }

  private Optional<Reading> measure(String text) {
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      Optional<LengthUnit> unit = unit(plain.group(2));
      Length length = Length.of(decimal(plain.group(1)), unit.orElse(defaultUnit));
      return Optional.of(new Reading(length, unit, ""));
    }
    Matcher mixed = MIXED.matcher(text);
    if (mixed.matches()) {
      return mixed(mixed, text);
    }
    Matcher metres = METRES.matcher(text);
    if (metres.matches()) {
      Length whole = Length.of(decimal(metres.group(1)), LengthUnit.METRE);
      Length rest = Length.of(decimal(metres.group(2)), LengthUnit.CENTIMETRE);
      return Optional.of(new Reading(whole.plus(rest), Optional.of(LengthUnit.METRE), ""));
    }
    Matcher feet = FEET.matcher(text);
    return feet.matches() ? feetAndInches(feet) : Optional.empty();
  }

  private Optional<Reading> mixed(Matcher mixed, String text) {
    long numerator = Long.parseLong(mixed.group(2));
    long denominator = Long.parseLong(mixed.group(3));
    if (denominator == 0) {
      return Optional.empty();
    }
    boolean inchesInside = text.matches("\\d+\\s*(?:\"|in).*/.*");
    Optional<LengthUnit> unit = inchesInside ? Optional.of(LengthUnit.INCH) : unit(mixed.group(4));
    LengthUnit taken = unit.orElse(defaultUnit);
    long whole = mixed.group(1) == null ? 0 : Long.parseLong(mixed.group(1));
    Length length =
        Length.of(whole, taken).plus(Length.of(1, taken).timesRatio(numerator, denominator));
    boolean improper = mixed.group(1) != null && numerator >= denominator;
    return Optional.of(new Reading(length, unit, improper ? "the fraction is over one" : ""));
  }

  private Optional<Reading> feetAndInches(Matcher feet) {
    Length whole = Length.of(decimal(feet.group(1)), LengthUnit.FOOT);
    return new LengthReader(LengthUnit.INCH, decimalComma)
        .measure(feet.group(2))
        .filter(rest -> rest.unit().isEmpty() || rest.unit().get() == LengthUnit.INCH)
        .map(
            rest -> {
              boolean over = !rest.length().isLessThan(Length.of(1, LengthUnit.FOOT));
              String doubt = over ? "twelve inches or more beside feet" : rest.doubt();
              return new Reading(whole.plus(rest.length()), Optional.of(LengthUnit.FOOT), doubt);
            });
  }

  private static BigDecimal decimal(String digits) {
    return new BigDecimal(digits.endsWith(".") ? digits + "0" : digits);
  }

  private static Optional<LengthUnit> unit(String word) {
    if (word == null) {
      return Optional.empty();
    }
    return Optional.of(
        switch (word) {
          case "\"", "in", "inch", "inches", "zoll" -> LengthUnit.INCH;
          case "'", "ft", "feet", "foot", "fuss" -> LengthUnit.FOOT;
          case "mm" -> LengthUnit.MILLIMETRE;
          case "cm" -> LengthUnit.CENTIMETRE;
          default -> LengthUnit.METRE;
        });
  }

  /** Turns every spelling of marks, fractions and blanks into one, and the comma into a point. */
  private String normal(String text) {
    String plain =
        Normalizer.normalize(spaced(text), Normalizer.Form.NFKC)
            .replace('\u2044', '/')
            .replace('\u2215', '/')
            .replaceAll("[\\u2032\\u2018\\u2019\\u00B4`\\u02B9]", "'")
            .replaceAll("[\\u2033\\u201C\\u201D\\u02BA]", "\"")
            .replace("''", "\"")
            .replaceAll("[\\u2010-\\u2015\\u2212]", "-")
            .replaceAll("[\\u200B-\\u200D\\u2060\\uFEFF]", "")
            .replaceAll("\\s+", " ")
            .strip()
            .toLowerCase(Locale.ROOT)
            .replace("ß", "ss");
    return point(plain.replaceAll("(?<=(?:ft|in|cm|mm))\\.(?=\\s|$)", ""));
  }

  /** Puts a blank before a one-letter fraction, so that its whole number stays apart. */
  private static String spaced(String text) {
    StringBuilder spaced = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      boolean fraction = letter >= '\u00BC' && letter <= '\u00BE';
      fraction = fraction || letter >= '\u2150' && letter <= '\u215E' || letter == '\u2189';
      spaced.append(fraction ? " " : "").append(letter);
    }
    return spaced.toString();
  }

  private String point(String text) {
    if (text.indexOf(',') < 0) {
      return text;
    }
    if (text.indexOf('.') >= 0 && text.lastIndexOf('.') < text.lastIndexOf(',')) {
      return text.replace(".", "").replace(',', '.');
    }
    boolean grouped = !decimalComma && text.matches("\\d{1,3}(?:,\\d{3})+(?!\\d).*");
    return grouped ? text.replace(",", "") : text.replace(',', '.');
  }
}
