package roundbook.report;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Tells in the workbook's language what the reading and the planning say in English.
 *
 * <p>Problems, remedies and the meanings of settings are made in English, for the terminal and the
 * plain tables. Each stands in the bundle under {@code said.} with holes for what was filled in. A
 * text is told again by the pattern that it fits; what was filled in is told again too, where it is
 * a saying of its own. A text that fits none stays as it is.
 */
final class Sayings {
  private static final String KEYS = "said.";
  private static final Pattern HOLE = Pattern.compile("\\{(\\d)}");
  private static final Pattern MEASURE = Pattern.compile("(\\d)\\.(\\d+ (?:mm|cm|m|in|ft|%)\\b)");

  private final Words words;
  private final List<Saying> sayings;

  /** Tells in the language of these words. */
  Sayings(Words words) {
    this.words = words;
    this.sayings = words.language().equals("en") ? List.of() : english();
  }

  /** Returns a text in the workbook's language, or as it is when no saying fits. */
  String told(String text) {
    for (Saying saying : sayings) {
      Matcher fits = saying.form().matcher(text);
      if (fits.matches()) {
        return words.text(saying.key(), filled(fits));
      }
    }
    return sayings.isEmpty() ? text : MEASURE.matcher(text).replaceAll("$1" + comma() + "$2");
  }

  private Object[] filled(Matcher fits) {
    return IntStream.rangeClosed(1, fits.groupCount()).mapToObj(n -> told(fits.group(n))).toArray();
  }

  private char comma() {
    return words.decimalMark();
  }

  /** Returns the English sayings, those with the most words of their own first. */
  private static List<Saying> english() {
    Words english = Words.of("en");
    return english.keys(KEYS).stream()
        .map(key -> Saying.of(key, english.pattern(key)))
        .sorted(Comparator.comparing(Saying::own).reversed().thenComparing(Saying::key))
        .toList();
  }

  /**
   * One saying.
   *
   * @param key its key in the bundle
   * @param form what an English text of it looks like, with a group for each hole in turn
   * @param own how many letters are its own
   */
  private record Saying(String key, Pattern form, int own) {
    static Saying of(String key, String english) {
      String[] own = HOLE.split(english, -1);
      String form = String.join("(.*?)", List.of(own).stream().map(Pattern::quote).toList());
      return new Saying(key, Pattern.compile(form, Pattern.DOTALL), String.join("", own).length());
    }
  }
}
