package roundbook.intake;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.units.LengthUnit;

/**
 * A column's heading as it was understood.
 *
 * @param column the column counted from 1
 * @param text the heading as it stands
 * @param field what it means; empty for a column that is only carried through
 * @param unit the unit it states; empty when it states none
 */
record Heading(int column, String text, Optional<Field> field, Optional<LengthUnit> unit) {
  private static final Pattern UNIT =
      Pattern.compile(
          "[\\s_(\\[/,.]*(?<![\\p{L}])(ft|feet|foot|in|inch|inches|mm|cm|m|metres|meters)"
              + "[.)\\]\\s]*(?:unless marked\\)?)?$");

  /** Understands a heading by its words, its unit taken off. */
  static Heading of(int column, String text) {
    String plain = plain(text);
    Optional<LengthUnit> unit = markUnit(text);
    if (unit.isPresent()) {
      plain = plain(text.replaceAll("[\"'′″]+\\s*$", ""));
    }
    Optional<Field> whole = Field.of(words(plain));
    Matcher matcher = UNIT.matcher(plain);
    if (unit.isEmpty() && matcher.find() && matcher.start() > 0) {
      unit = unitOf(matcher.group(1));
      plain = plain.substring(0, matcher.start());
    }
    Optional<Field> field = Field.of(words(plain)).or(() -> whole);
    return new Heading(column, text, field.or(() -> loose(words(plain(text)))), unit);
  }

  private static Optional<Field> loose(String words) {
    String core =
        words
            .replaceAll(
                "\\b(?:diameter|diam|dia|d|ø|durchmesser|diamètre|läpimitta|diámetro)\\b", "")
            .replaceAll("ø|\\b(?:ob|ub|over bark|under bark|in|mm|cm|ft|m)\\b", "")
            .replaceAll("\\s+", " ")
            .strip();
    return Field.of(core);
  }

  private static Optional<LengthUnit> markUnit(String text) {
    String stripped = text.strip();
    if (stripped.endsWith("'") || stripped.endsWith("′")) {
      return Optional.of(LengthUnit.FOOT);
    }
    boolean inch = stripped.endsWith("\"") || stripped.endsWith("″");
    return inch && stripped.length() > 1 ? Optional.of(LengthUnit.INCH) : Optional.empty();
  }

  private static Optional<LengthUnit> unitOf(String word) {
    return switch (word) {
      case "feet", "foot" -> Optional.of(LengthUnit.FOOT);
      case "inch", "inches" -> Optional.of(LengthUnit.INCH);
      case "metres", "meters" -> Optional.of(LengthUnit.METRE);
      default -> LengthUnit.ofSymbol(word);
    };
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_]+", " ")
        .strip();
  }

  private static String words(String plain) {
    String words = plain.replaceAll("[.,:;()\\[\\]/*-]+", " ").replaceAll("\\s+", " ").strip();
    return words.isEmpty() ? plain.strip() : words;
  }
}
