package roundbook.heading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.units.LengthReader;

/** The words of each language, held against its file read in the plainest way. */
class VocabularyTest {
  @ParameterizedTest
  @CsvSource({
    "zopf = tip, true",
    "kopf = tip diameter, true",
    "'kopf = tip, diameter', true",
    "kopf = TIP, true",
    "a=b = tip, true",
    "count = count-of, true",
    "# a remark = nonsense, true",
    "'', true",
    "'   ', true",
    "zopf = nonsense, false",
    "zopf = tip nonsense, false",
    "zopf =, false",
    "= tip, false",
    "'   = tip', false",
    "zopf, false",
  })
  void aLineIsAWordAndMeaningsOrARemark(String line, boolean usable) {
    assertEquals(usable, Vocabulary.isUsable(line), line);
  }

  @Test
  void wrongLinesAddNothing() {
    assertSame(Vocabulary.standard(), Vocabulary.with(List.of()));
    assertSame(Vocabulary.standard(), Vocabulary.with(List.of("zopf", "zopf = nonsense")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "common", "en", "de", "fr", "sv", "fi", "es", "no", "da", "nl", "it", "pt", "pl", "cs",
        "et", "lv", "ru"
      })
  void everyWordMeansWhatItsFileSays(String language) throws IOException {
    List<String> lines = lines(language);
    assertTrue(lines.stream().allMatch(Vocabulary::isUsable), language);
    Vocabulary vocabulary = Vocabulary.with(lines);
    Map<String, Set<Term>> told = new HashMap<>();
    lines.forEach(line -> tell(told, line));
    assertTrue(told.size() > 10, language + " has words");
    told.forEach(
        (word, terms) -> {
          Wording read = Wording.ofRow(List.of(word), vocabulary).get(0);
          assertEquals(List.of(), read.strangers(), word);
          terms.forEach(term -> assertTrue(read.has(term), word + " means " + term + ": " + read));
        });
  }

  /** Notes the heading words that stand alone and are no unit besides. */
  private static void tell(Map<String, Set<Term>> told, String line) {
    String word = line.substring(0, line.lastIndexOf('=')).strip();
    Set<Term> terms = EnumSet.noneOf(Term.class);
    Arrays.stream(line.substring(line.lastIndexOf('=') + 1).strip().split("[, ]+"))
        .map(name -> Term.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_')))
        .forEach(terms::add);
    boolean cell = terms.stream().anyMatch(Term::inCells);
    boolean one = word.chars().allMatch(Character::isLetter) && !word.matches("\\p{Ll}+\\p{Lu}.*");
    if (!cell && one && LengthReader.unitOf(word).isEmpty()) {
      told.computeIfAbsent(word, each -> EnumSet.noneOf(Term.class)).addAll(terms);
    }
  }

  private static List<String> lines(String language) throws IOException {
    try (InputStream in = Vocabulary.class.getResourceAsStream(language + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .toList();
    }
  }
}
