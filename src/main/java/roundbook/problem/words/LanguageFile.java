package roundbook.problem.words;

import java.util.Locale;
import java.util.ResourceBundle;

/** Finds the texts of a language among the files of one name. */
public final class LanguageFile {
  private LanguageFile() {}

  /**
   * Returns the texts of a language such as {@code de}; English where there are none of it.
   *
   * @param name the files' name with its package, such as {@code roundbook.problem.words.sentences}
   */
  public static ResourceBundle of(String name, String language) {
    Locale locale = Locale.forLanguageTag(language.isBlank() ? "en" : language);
    ResourceBundle bundle = ResourceBundle.getBundle(name, locale);
    // Where there is none of a language, Java takes that of the machine before the English one.
    boolean own = bundle.getLocale().getLanguage().equals(locale.getLanguage());
    return own ? bundle : ResourceBundle.getBundle(name, Locale.ROOT);
  }
}
