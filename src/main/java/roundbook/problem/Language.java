package roundbook.problem;

/** What a language must give so that a value can be told in it. */
public interface Language {
  /**
   * Returns the text of a key with its holes, such as {@code {tag}}, as they are.
   *
   * @throws java.util.MissingResourceException if there is none: a fault of the program
   */
  String pattern(String key);

  /** Returns the mark before the decimals of a number. */
  char decimalMark();
}
