package roundbook.heading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands the words that stand in a tally's cells: totals, yes and no, what spoils a log. */
public final class CellWords {
  private static final int MOST_LETTERS = 60;
  private static final int REMEMBERED = 10_000;
  private static final Pattern AFTER = Pattern.compile("\\s*[:=].*$");
  private static final Pattern WORDS = Pattern.compile("[^\\p{L}\\p{M}\u03A3\u2211]+");
  private static final Pattern COUNTED = Pattern.compile("\\d+\\s+(\\p{L}+)\\.?");

  private final Vocabulary vocabulary;
  private final Map<String, Boolean> summaries = new HashMap<>();
  private Pattern unfit;

  /** Begins with the words of some languages. */
  public CellWords(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  private static Pattern pattern(Vocabulary vocabulary) {
    String words =
        String.join("|", vocabulary.cells(Term.UNFIT).stream().map(Pattern::quote).toList());
    return Pattern.compile("(?<![\\p{L}-])(?:" + words + ")(?!\\p{L})");
  }

  /** Returns whether a text names a figure over rows, such as a total or an average. */
  public boolean isSummary(String text) {
    if (text.isEmpty() || text.length() > MOST_LETTERS || text.indexOf('\n') >= 0) {
      return false;
    }
    Boolean known = summaries.get(text);
    if (known == null) {
      known = sums(text);
      if (summaries.size() > REMEMBERED) {
        summaries.clear();
      }
      summaries.put(text, known);
    }
    return known;
  }

  private boolean sums(String text) {
    String plain = Plain.of(AFTER.matcher(text).replaceAll(""));
    Matcher counted = COUNTED.matcher(plain);
    if (counted.matches()) {
      return vocabulary.isCell(counted.group(1), Term.COUNT_OF);
    }
    if (plain.chars().anyMatch(Character::isDigit)) {
      return false;
    }
    boolean sum = false;
    for (String word : WORDS.split(plain)) {
      boolean own = vocabulary.isCell(word, Term.SUM);
      if (!own && !word.isEmpty() && !vocabulary.knows(word)) {
        return false;
      }
      sum |= own;
    }
    return sum;
  }

  /** Returns whether a text means yes, or no; empty where it means neither. */
  public Optional<Boolean> answer(String text) {
    String plain = Plain.of(text.strip());
    if (vocabulary.isCell(plain, Term.YES)) {
      return Optional.of(true);
    }
    return plain.isEmpty() || vocabulary.isCell(plain, Term.NO)
        ? Optional.of(false)
        : Optional.empty();
  }

  /** Finds words in a text that say that a log cannot be built with; empty where there are none. */
  public Optional<String> unfit(String text) {
    String plain = Plain.of(text).replaceAll("\\s+", " ");
    if (unfit == null) {
      unfit = pattern(vocabulary);
    }
    Matcher matcher = unfit.matcher(plain);
    while (matcher.find()) {
      List<String> before = List.of(WORDS.split(plain.substring(0, matcher.start())));
      String last = before.isEmpty() ? "" : before.get(before.size() - 1);
      if (!vocabulary.isCell(last, Term.NOT)) {
        return Optional.of(matcher.group());
      }
    }
    return Optional.empty();
  }

  /** Returns whether a text stands for what the row above has. */
  public boolean isDitto(String text) {
    return text.length() < 8 && vocabulary.isCell(Plain.of(text), Term.DITTO);
  }
}
