package roundbook.heading;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of tallies by language.
 *
 * <p>A language is a list of lines, {@code word = meaning}: the meaning is one or more of the names
 * of {@link Term}, such as {@code tip} or {@code butt diameter}. Lines that begin with {@code #}
 * are remarks. What a user adds goes before every language of the program's own.
 */
public final class Vocabulary {
  /** Words that belong to no language. */
  private static final int COMMON = 0;

  private static final Pattern BETWEEN = Pattern.compile("[,\\s]+");

  private static final List<String> LANGUAGES =
      List.of(
          "common", "en", "de", "fr", "sv", "fi", "es", "no", "da", "nl", "it", "pt", "pl", "cs",
          "et", "lv", "ru");

  /** Languages that write two words as one. */
  private static final Set<String> COMPOUNDING = Set.of("de", "sv", "fi", "no", "da", "nl", "et");

  private final List<Map<String, Set<Term>>> headings = new ArrayList<>();
  private final Map<String, Set<Term>> cells = new HashMap<>();

  /** What lines say behind their words: a few dozen meanings in two thousand lines. */
  private final Map<String, List<Term>> meanings = new HashMap<>();

  private final int own;

  private Vocabulary(List<String> added) {
    for (String language : LANGUAGES) {
      headings.add(new HashMap<>());
      addAll(text(language));
    }
    own = added.isEmpty() ? -1 : headings.size();
    if (!added.isEmpty()) {
      headings.add(new HashMap<>());
      added.forEach(line -> add(own, line));
    }
  }

  private static final class Standard {
    static final Vocabulary ONLY = new Vocabulary(List.of());
  }

  /** Returns the program's own languages. */
  public static Vocabulary standard() {
    return Standard.ONLY;
  }

  /** Returns the program's own languages with the lines of a user's; wrong lines are left out. */
  public static Vocabulary with(List<String> lines) {
    List<String> used = lines.stream().filter(Vocabulary::isUsable).toList();
    return used.isEmpty() ? Standard.ONLY : new Vocabulary(used);
  }

  /** Returns whether a line of a language is a remark, or a word and meanings that there are. */
  public static boolean isUsable(String line) {
    int equals = line.lastIndexOf('=');
    boolean whole = equals > 0 && !line.substring(0, equals).isBlank();
    return isRemark(line) || whole && !terms(line).contains(null);
  }

  private static boolean isRemark(String line) {
    return line.isBlank() || line.startsWith("#");
  }

  private static List<Term> terms(String line) {
    List<Term> terms = new ArrayList<>();
    for (String name : BETWEEN.split(line.substring(line.lastIndexOf('=') + 1).strip())) {
      terms.add(Term.named(name.toLowerCase(java.util.Locale.ROOT)));
    }
    return terms;
  }

  private static String text(String language) {
    try (InputStream in = Vocabulary.class.getResourceAsStream(language + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Adds the lines of the last language; line ends are found by hand, for this runs at a start. */
  private void addAll(String text) {
    int from = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      add(headings.size() - 1, text.substring(from, end));
      from = end + 1;
    }
    add(headings.size() - 1, text.substring(from));
  }

  private void add(int language, String line) {
    if (isRemark(line)) {
      return;
    }
    int equals = line.lastIndexOf('=');
    String word = Plain.of(line.substring(0, equals).strip());
    List<Term> terms = meanings.computeIfAbsent(line.substring(equals), Vocabulary::terms);
    Map<String, Set<Term>> words = terms.get(0).inCells() ? cells : headings.get(language);
    Set<Term> known = words.get(word);
    if (known == null) {
      words.put(word, EnumSet.copyOf(terms));
    } else {
      known.addAll(terms);
    }
  }

  /**
   * Ranks the languages by how many words of a text they know, a user's own before all.
   *
   * @param words the words of a whole heading row, plain
   */
  Languages ranked(Set<String> words) {
    int[] known = new int[headings.size()];
    for (int i = 0; i < known.length; i++) {
      for (String word : words) {
        known[i] += tells(i, word) ? 1 : 0;
      }
    }
    List<Integer> order =
        java.util.stream.IntStream.range(0, known.length)
            .filter(each -> each != COMMON && each != own)
            .boxed()
            .sorted(Comparator.comparing((Integer each) -> -known[each]))
            .collect(Collectors.toCollection(ArrayList::new));
    if (own > 0) {
      order.add(0, own);
      known[own] = Integer.MAX_VALUE;
    }
    order.add(COMMON);
    return new Languages(order, known);
  }

  /** Returns whether a word is one of a language, whole or in two parts, and more than a filler. */
  private boolean tells(int language, String word) {
    Set<Term> terms = headings.get(language).get(word);
    if (terms != null) {
      return !terms.contains(Term.FILLER);
    }
    for (int cut = 2; cut <= word.length() - 2 && isCompounding(language); cut++) {
      if (headings.get(language).containsKey(word.substring(0, cut))
          && headings.get(language).containsKey(word.substring(cut))) {
        return true;
      }
    }
    return false;
  }

  /**
   * The languages in the order in which a text's words are looked up.
   *
   * @param order their numbers
   * @param known how many words of the text each knows
   */
  record Languages(List<Integer> order, int[] known) {}

  /** A word's meaning, and whether two languages that know as much disagree. */
  record Meaning(Set<Term> terms, boolean unsure) {}

  /** Returns what a word of a heading means; null when no language has it. */
  Meaning heading(String word, Languages languages) {
    Set<Term> found = null;
    int score = 0;
    boolean unsure = false;
    for (int each : languages.order()) {
      Set<Term> terms = headings.get(each).get(word);
      if (terms != null && found == null) {
        found = terms;
        score = languages.known()[each];
      } else if (terms != null && each != COMMON && languages.known()[each] == score) {
        unsure |= !terms.equals(found) && !terms.contains(Term.FILLER);
      }
    }
    return found == null ? null : new Meaning(found, unsure);
  }

  /** Returns whether a plain text is in a cell's words and means so. */
  boolean isCell(String plain, Term term) {
    return cells.getOrDefault(plain, Set.of()).contains(term);
  }

  private boolean isCompounding(int language) {
    return language == own || COMPOUNDING.contains(LANGUAGES.get(language));
  }

  /** Returns whether any language has a plain word in its headings. */
  boolean knows(String word) {
    return headings.stream().anyMatch(language -> language.containsKey(word));
  }

  /** Returns the words of cells that mean so, the longest first. */
  List<String> cells(Term term) {
    return cells.entrySet().stream()
        .filter(each -> each.getValue().contains(term))
        .map(Map.Entry::getKey)
        .sorted(Comparator.comparing((String word) -> -word.length()).thenComparing(word -> word))
        .toList();
  }

  /**
   * Returns what two parts of a compound mean together in the first language that has both; empty
   * where none has.
   *
   * @param wanted what the last part must be one of
   */
  Set<Term> compound(String first, String last, Set<Term> wanted, Languages languages) {
    Map<String, Set<Term>> common = headings.get(COMMON);
    List<Integer> order = new ArrayList<>(languages.order());
    order.sort(Comparator.comparing(each -> !isCompounding(each)));
    for (int each : order) {
      Map<String, Set<Term>> language = headings.get(each);
      Set<Term> before = language.get(first);
      Set<Term> after = language.getOrDefault(last, common.getOrDefault(last, Set.of()));
      if (before != null
          && !before.contains(Term.FILLER)
          && after.stream().anyMatch(wanted::contains)) {
        Set<Term> both = EnumSet.copyOf(before);
        both.addAll(after);
        return both;
      }
    }
    return Set.of();
  }
}
