package roundbook.problem.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;
import roundbook.plan.EndPhrase;
import roundbook.problem.ProblemCode;
import roundbook.rounds.Fit;
import roundbook.sheet.kind.FileKind;

/** Every language has every sentence, with the same holes. */
class SentencesTest {
  private static final Pattern HOLE = Pattern.compile("\\{[^}]*}");
  private static final Pattern REMEDY = Pattern.compile("remedyOf\\(\\s*\"([^\"]+)\"\\s*\\)");
  private static final Pattern PHRASE = Pattern.compile("Phrase\\.of\\(\\s*\"([^\"]+)\"\\s*\\)");
  private static final Pattern VARIANT =
      Pattern.compile("ProblemCode\\.([A-Z_]+),\\s*\"([a-z][^\"]*)\"");
  private static final ResourceBundle ENGLISH = bundle("en");

  static List<String> languages() {
    return Setting.LANGUAGE.choices();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageHasTheSameKeysAndHoles(String language) {
    ResourceBundle other = bundle(language);
    assertEquals(new TreeSet<>(ENGLISH.keySet()), new TreeSet<>(other.keySet()));
    for (String key : ENGLISH.keySet()) {
      String text = other.getString(key);
      assertEquals(holes(ENGLISH.getString(key)), holes(text), key);
      assertEquals(ENGLISH.getString(key).isBlank(), text.isBlank(), key);
      assertTrue(HOLE.matcher(text).replaceAll("").indexOf('{') < 0, text);
    }
  }

  @ParameterizedTest
  @EnumSource(ProblemCode.class)
  void everyCodeHasASentenceAndARemedy(ProblemCode code) {
    assertTrue(ENGLISH.containsKey(code.remedy().key()), code.id());
    assertTrue(
        ENGLISH.keySet().stream()
            .anyMatch(key -> key.equals(code.id()) || key.startsWith(code.id() + ".")),
        code.id());
  }

  @ParameterizedTest
  @MethodSource("named")
  void everyWordThatASentenceMayNameIsThere(String key) {
    assertTrue(ENGLISH.containsKey(key), key);
  }

  static Stream<String> named() {
    return Stream.of(
            Stream.of(Setting.values()).map(setting -> setting.meaning().key()),
            Stream.of(Fit.Reason.values()).map(reason -> reason.phrase().key()),
            Stream.of(FileKind.values()).map(kind -> kind.phrase().key()),
            Stream.of(EndPhrase.NONE, EndPhrase.OFF, EndPhrase.BEARS),
            Stream.iterate(1, month -> month + 1).limit(12).map(month -> "month." + month))
        .flatMap(each -> each);
  }

  /** A key that is written out in the program, and missing, once ended a run with a fault. */
  @Test
  void everyKeyThatTheProgramWritesOutIsThere() throws IOException {
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        String program = Files.readString(file);
        keys(program, REMEDY, found -> "remedy." + found.group(1)).forEach(missing::add);
        keys(program, PHRASE, found -> found.group(1)).forEach(missing::add);
        keys(program, VARIANT, SentencesTest::variant).forEach(missing::add);
      }
    }
    missing.removeIf(ENGLISH::containsKey);
    assertEquals(Set.of(), missing);
  }

  private static Stream<String> keys(
      String program, Pattern call, Function<MatchResult, String> key) {
    return call.matcher(program).results().map(key);
  }

  private static String variant(MatchResult found) {
    return found.group(1).toLowerCase(Locale.ROOT).replace('_', '-') + "." + found.group(2);
  }

  /** Of a key that stands twice in a bundle only the last is ever told. */
  @ParameterizedTest
  @ValueSource(strings = {"sentences.properties", "sentences_de.properties"})
  void noKeyStandsTwice(String bundle) throws IOException {
    Path file = Path.of("src/main/resources/roundbook/problem/words", bundle);
    Set<String> seen = new TreeSet<>();
    List<String> twice =
        Files.readAllLines(file).stream()
            .filter(line -> !line.startsWith("#") && line.indexOf('=') > 0)
            .map(line -> line.substring(0, line.indexOf('=')))
            .filter(key -> !seen.add(key))
            .toList();
    assertEquals(List.of(), twice);
  }

  @Test
  void aLanguageThatThereIsNotIsToldInEnglish() {
    assertEquals(ENGLISH.getString("no-rows"), Sentences.of("zz").pattern("no-rows"));
    assertEquals(',', Sentences.of("de").decimalMark());
  }

  private static Set<String> holes(String text) {
    return HOLE.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  private static ResourceBundle bundle(String language) {
    return LanguageFile.of("roundbook.problem.words.sentences", language);
  }
}
