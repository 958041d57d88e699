package roundbook.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;

/** Every language says everything that English says, and nothing else. */
class WordsTest {
  private static final Pattern HOLE = Pattern.compile("\\{\\d}");

  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageHasTheSameKeys(String language) throws IOException {
    Set<String> english = new TreeSet<>(bundle("").stringPropertyNames());
    Set<String> other = new TreeSet<>(bundle("_" + language).stringPropertyNames());
    assertEquals(List.of(), without(english, other), "keys missing in " + language);
    assertEquals(List.of(), without(other, english), "keys that English has not");
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageFillsTheSameHoles(String language) throws IOException {
    Properties english = bundle("");
    Properties other = bundle("_" + language);
    for (String key : other.stringPropertyNames()) {
      assertEquals(holes(english.getProperty(key, "")), holes(other.getProperty(key)), key);
      assertFalse(other.getProperty(key).isBlank(), key);
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyTabNameIsOneThatAWorkbookCanHave(String language) throws IOException {
    Properties words = bundle("_" + language);
    for (String key : words.stringPropertyNames()) {
      if (key.startsWith("tab.")) {
        String name = words.getProperty(key).replace("{0}", "12345678");
        assertTrue(name.matches("[^\\[\\]:*?/\\\\]{1,31}"), name);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aLanguageThatCanBeChosenIsFound(String language) {
    assertEquals(language, Words.of(language).language());
    assertFalse(Words.of("en").text("title.start").equals(Words.of(language).text("title.start")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "", "zz"})
  void englishIsNotTheMachinesLanguage(String language) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertEquals("Start", Words.of(language).text("tab.start"));
      assertEquals('.', Words.of(language).decimalMark());
    } finally {
      Locale.setDefault(before);
    }
  }

  static List<String> languages() {
    return Setting.LANGUAGE.choices().stream().filter(each -> !each.equals("en")).toList();
  }

  private static List<String> without(Set<String> all, Set<String> some) {
    return all.stream().filter(each -> !some.contains(each)).toList();
  }

  private static Set<String> holes(String text) {
    return new TreeSet<>(HOLE.matcher(text).results().map(MatchResult::group).toList());
  }

  private static Properties bundle(String suffix) throws IOException {
    Properties properties = new Properties();
    try (InputStream in = Words.class.getResourceAsStream("words" + suffix + ".properties");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      properties.load(reader);
    }
    return properties;
  }
}
