package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.Setting;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.Value;
import roundbook.problem.words.LanguageFile;
import roundbook.problem.words.Sentences;

/** What any fixture raises is told whole in every language, without a word of another one. */
class ToldProblemsTest {
  private static final Pattern WORD = Pattern.compile("[\\p{L}]{3,}");

  @TempDir private Path folder;

  @Test
  void everyProblemIsToldInEveryLanguageAndInNoOther() throws IOException {
    Set<Problem> raised = raised();
    assertTrue(raised.size() > 150, "only " + raised.size());
    List<String> wrong = new ArrayList<>();
    for (String language : Setting.LANGUAGE.choices()) {
      Sentences sentences = Sentences.of(language);
      Set<String> foreign = foreign(language);
      for (Problem problem : raised) {
        String told =
            sentences.message(problem)
                + ". "
                + sentences.remedy(problem)
                + " "
                + sentences.found(problem);
        Set<String> found = words(told);
        found.retainAll(foreign);
        found.removeAll(words(own(problem)));
        if (!found.isEmpty() || told.contains("{")) {
          wrong.add(language + ": " + told + " " + found);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyProblemIsCarriedAsItIs() throws IOException {
    for (Problem problem : raised()) {
      assertEquals(Optional.of(problem), Problem.ofCarried(problem.carried(), problem.where()));
    }
  }

  private Set<Problem> raised() throws IOException {
    Set<Problem> raised = new LinkedHashSet<>();
    for (TallyFixture fixture : TallyFixture.all()) {
      for (String file : fixture.files()) {
        raised.addAll(fixture.problems(file, folder, new ArrayList<>()));
      }
    }
    raised.addAll(PlanFixtures.inches().withOpenings().plan(8).problems());
    raised.addAll(PlanFixtures.metric().withOpenings().plan(8).problems());
    return raised;
  }

  /** Returns the words of all other languages that a language has not itself. */
  private static Set<String> foreign(String language) {
    Set<String> foreign = new TreeSet<>();
    Setting.LANGUAGE.choices().stream()
        .filter(other -> !other.equals(language))
        .forEach(other -> foreign.addAll(bundle(other)));
    foreign.removeAll(bundle(language));
    return foreign;
  }

  private static Set<String> bundle(String language) {
    ResourceBundle bundle = LanguageFile.of("roundbook.problem.words.sentences", language);
    return bundle.keySet().stream()
        .flatMap(key -> words(bundle.getString(key).replaceAll("\\{[^}]*}", " ")).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Returns the texts that a problem names as they stand in cells, and names of settings. */
  private static String own(Problem problem) {
    Stream<String> names = Stream.of(Setting.values()).map(Setting::label);
    Stream<String> choices = Stream.of(Setting.values()).flatMap(each -> each.choices().stream());
    Stream<Value> told =
        Stream.concat(Stream.of(problem.found(), problem.said()), problem.remedies().stream());
    return Stream.of(told.flatMap(ToldProblemsTest::texts), names, choices)
        .flatMap(each -> each)
        .collect(Collectors.joining(" "));
  }

  private static Stream<String> texts(Value value) {
    if (value instanceof Value.Text text) {
      return Stream.of(text.text());
    } else if (value instanceof Value.Series series) {
      return series.values().stream().flatMap(ToldProblemsTest::texts);
    }
    return value instanceof Phrase phrase
        ? phrase.values().stream().flatMap(ToldProblemsTest::texts)
        : Stream.empty();
  }

  private static Set<String> words(String text) {
    return WORD.matcher(text.replace('_', ' '))
        .results()
        .map(MatchResult::group)
        .map(word -> word.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
