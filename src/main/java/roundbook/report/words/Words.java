package roundbook.report.words;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import roundbook.problem.words.LanguageFile;

/**
 * The words of the crew workbook in one language, by key.
 *
 * <p>All words stand in the bundle {@code words.properties} beside this class and in one file a
 * further language. {@code {0}}, {@code {1}} in a text stand for the values given; nothing else in
 * it is special, so that apostrophes of feet can be written as they are.
 */
public final class Words {
  private static final String BUNDLE = "roundbook.report.words.words";

  /** How long a hole is: a digit in braces. */
  private static final int HOLE = 3;

  private final String language;
  private final ResourceBundle bundle;

  private Words(String language, ResourceBundle bundle) {
    this.language = language;
    this.bundle = bundle;
  }

  /** Returns the words of a language such as {@code en}; English where there are none of it. */
  public static Words of(String language) {
    Locale locale = Locale.forLanguageTag(language.isBlank() ? "en" : language);
    return new Words(locale.getLanguage(), LanguageFile.of(BUNDLE, language));
  }

  /** Returns the language that was asked for, such as {@code en}. */
  public String language() {
    return language;
  }

  /**
   * Returns the text of a key with values filled in.
   *
   * @throws java.util.MissingResourceException if there is none: a fault of the program
   */
  public String text(String key, Object... values) {
    String pattern = pattern(key);
    StringBuilder text = new StringBuilder(pattern.length() + 16);
    int done = 0;
    for (int at = pattern.indexOf('{'); at >= 0; at = pattern.indexOf('{', at + 1)) {
      if (isHole(pattern, at)) {
        text.append(pattern, done, at).append(values[pattern.charAt(at + 1) - '0']);
        done = at + HOLE;
      }
    }
    return text.append(pattern, done, pattern.length()).toString();
  }

  private static boolean isHole(String pattern, int at) {
    return at + HOLE <= pattern.length()
        && pattern.charAt(at + 1) >= '0'
        && pattern.charAt(at + 1) <= '9'
        && pattern.charAt(at + 2) == '}';
  }

  /**
   * Returns the text of a key with its holes, such as {@code {0}}, as they are.
   *
   * @throws java.util.MissingResourceException if there is none: a fault of the program
   */
  public String pattern(String key) {
    return bundle.getString(key);
  }

  /** Returns a plain number with this language's mark before its decimals. */
  public String number(String plain) {
    return plain.replace('.', decimalMark());
  }

  /** Returns the mark before the decimals of a number. */
  public char decimalMark() {
    return text("number.decimal_mark").charAt(0);
  }

  /** Returns whether there is a text of a key. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }

  /**
   * Returns the texts {@code key.1}, {@code key.2} and so on, as many as there are, each with the
   * same values filled in.
   */
  public List<String> lines(String key, Object... values) {
    return java.util.stream.IntStream.iterate(1, n -> has(key + "." + n), n -> n + 1)
        .mapToObj(n -> text(key + "." + n, values))
        .toList();
  }
}
