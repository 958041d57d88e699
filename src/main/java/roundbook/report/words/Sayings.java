package roundbook.report.words;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells in the workbook's language what the reading and the planning say in English, and back.
 *
 * <p>Problems, remedies and the meanings of settings are made in English, for the terminal and the
 * plain tables. Each stands in the bundle under {@code said.} with holes for what was filled in. A
 * text is told again by the pattern that it fits; what was filled in is told again too, where it is
 * a saying of its own. A text that fits none stays as it is.
 */
final class Sayings {
  private static final String KEYS = "said.";
  private static final int HOLES = 10;
  private static final Pattern HOLE = Pattern.compile("\\{(\\d)}");

  private final Words words;
  private final Pattern measure;
  private final List<Saying> sayings;

  private Sayings(Words from, Words words) {
    String mark = Pattern.quote(String.valueOf(from.decimalMark()));
    this.words = words;
    this.measure = Pattern.compile("(\\d)" + mark + "(\\d+ (?:mm|cm|m|in|ft|%)\\b)");
    this.sayings = from.language().equals(words.language()) ? List.of() : all(from);
  }

  /** Tells in the language of these words what is said in English. */
  static Sayings fromEnglish(Words words) {
    return new Sayings(words.language().equals("en") ? words : Words.of("en"), words);
  }

  /** Tells in English what is said in the language of these words. */
  static Sayings toEnglish(Words words) {
    return new Sayings(words, words.language().equals("en") ? words : Words.of("en"));
  }

  /** Returns a text in the workbook's language, or as it is when no saying fits. */
  String told(String text) {
    for (Saying saying : sayings) {
      Matcher fits = saying.form().matcher(text);
      if (fits.matches()) {
        return words.text(saying.key(), filled(saying, fits));
      }
    }
    return sayings.isEmpty() ? text : measure.matcher(text).replaceAll("$1" + comma() + "$2");
  }

  private Object[] filled(Saying saying, Matcher fits) {
    Object[] values = new Object[HOLES];
    for (int group = 1; group <= fits.groupCount(); group++) {
      values[saying.holes().get(group - 1)] = told(fits.group(group));
    }
    return values;
  }

  private char comma() {
    return words.decimalMark();
  }

  /** Returns a language's sayings, those with the most words of their own first. */
  private static List<Saying> all(Words from) {
    return from.keys(KEYS).stream()
        .map(key -> Saying.of(key, from.pattern(key)))
        .sorted(Comparator.comparing(Saying::own).reversed().thenComparing(Saying::key))
        .toList();
  }

  /**
   * One saying.
   *
   * @param key its key in the bundle
   * @param form what a text of it looks like, with a group for each hole in turn
   * @param holes the numbers of the holes in turn
   * @param own how many letters are its own
   */
  private record Saying(String key, Pattern form, List<Integer> holes, int own) {
    static Saying of(String key, String pattern) {
      String[] own = HOLE.split(pattern, -1);
      List<Integer> holes =
          HOLE.matcher(pattern).results().map(hole -> Integer.valueOf(hole.group(1))).toList();
      String form = String.join("(.*?)", List.of(own).stream().map(Pattern::quote).toList());
      return new Saying(
          key, Pattern.compile(form, Pattern.DOTALL), holes, String.join("", own).length());
    }
  }
}
