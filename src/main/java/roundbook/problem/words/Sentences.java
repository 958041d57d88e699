package roundbook.problem.words;

import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import roundbook.problem.Language;
import roundbook.problem.Problem;

/**
 * Tells problems in one language.
 *
 * <p>Every sentence and remedy stands in {@code sentences.properties} beside this class and in one
 * file a further language, under the problem's code, or code and variant; holes such as {@code
 * {tag}} stand for the values of their names. A file is read when the first problem is told.
 */
public final class Sentences implements Language {
  private static final String BUNDLE = "roundbook.problem.words.sentences";

  private final ResourceBundle bundle;

  private Sentences(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** Returns the sentences of a language such as {@code de}; English where there are none of it. */
  public static Sentences of(String language) {
    return new Sentences(LanguageFile.of(BUNDLE, language));
  }

  /** Returns the sentences of the terminal and the plain tables. */
  public static Sentences english() {
    return of("en");
  }

  /** Tells what is wrong, in one sentence without a closing stop. */
  public String message(Problem problem) {
    return problem.said().in(this);
  }

  /** Tells what the person can do; empty where there is nothing. */
  public String remedy(Problem problem) {
    return problem.remedies().stream()
        .map(remedy -> remedy.in(this))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** Tells what stood in the cell or was found. */
  public String found(Problem problem) {
    return problem.found().in(this);
  }

  /** Returns the one line shown on a terminal. */
  public String line(Problem problem) {
    String remedy = remedy(problem);
    return lineOnly(problem) + "." + (remedy.isEmpty() ? "" : " " + remedy);
  }

  /** Tells what is wrong and what the person can do, without its place. */
  public String told(Problem problem) {
    String remedy = remedy(problem);
    return message(problem) + (remedy.isEmpty() ? "" : ". " + remedy);
  }

  /** Returns that line without what the person can do. */
  public String lineOnly(Problem problem) {
    String place = problem.where().toString();
    return (place.isEmpty() ? "" : place + ": ")
        + problem.severity().word()
        + " "
        + problem.code().id()
        + ": "
        + message(problem);
  }

  /** Returns whether a problem that was read from a workbook can be told. */
  public boolean tells(Problem carried) {
    try {
      return !message(carried).isEmpty() && remedy(carried) != null && found(carried) != null;
    } catch (MissingResourceException | IllegalStateException other) {
      return false;
    }
  }

  @Override
  public String pattern(String key) {
    return bundle.getString(key);
  }

  @Override
  public char decimalMark() {
    return pattern("decimal-mark").charAt(0);
  }
}
