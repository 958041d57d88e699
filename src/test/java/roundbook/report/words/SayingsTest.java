package roundbook.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/** What is made in English is told again in the language of the workbook. */
class SayingsTest {
  private static final Words GERMAN = Words.of("de");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "log 7 is left out: too short for every wall|Stamm 7 entfällt: zu kurz für jede Wand",
        "9 rounds wanted, the logs allow 7; missing: 3 logs of 20' 10\" or longer, middle 12 to 13"
            + " in, for N S; 1 log of 14' or longer, middle 11 to 12 in, for E W (planned again"
            + " with them: 9 rounds; with any one fewer: 8)|9 Kränze gewünscht, die Stämme reichen"
            + " für 7; es fehlen: 3 Stämme von 20' 10\" oder länger, Mitte 12 bis 13 in, für N S;"
            + " 1 Stamm von 14' oder länger, Mitte 11 bis 12 in, für E W (damit neu geplant: 9"
            + " Kränze; mit irgendeinem weniger: 8)",
        "round 4 wall W, log 9: tip end shoulder thin + tail waney; butt end no sawn face|Kranz 4"
            + " Wand W, Stamm 9: Zopfende Schulter dünn + Vorstoß waldkantig; Stockende keine"
            + " Sägefläche",
        "round 3: middle diameters differ by 27.5 mm"
            + "|Kranz 3: Mittendurchmesser weichen um 27,5 mm ab",
        "Fill the cell. Log 14.1 left out.|Die Zelle ausfüllen. Stamm 14.1 entfällt.",
        "words that no bundle holds|words that no bundle holds"
      })
  void aSentenceIsToldWithWhatWasFilledIn(String english, String german) {
    assertEquals(german, GERMAN.told(english));
    assertEquals(english, Words.of("en").told(english));
  }

  /** Missing ones show here as they are added, so that no page mixes two languages. */
  @ParameterizedTest
  @MethodSource("fixedTexts")
  void everyFixedTextOfTheProgramIsASaying(String english) {
    assertNotEquals(english, GERMAN.told(english));
  }

  static Stream<String> fixedTexts() {
    return Stream.of(Stream.of("marked skip"))
        .flatMap(each -> each)
        .filter(text -> !text.isEmpty())
        .distinct();
  }

  /** What a workbook tells in another language is told again in English as it was said. */
  @Test
  void everySayingComesBackAsItWas() {
    Words english = Words.of("en");
    Words german = Words.of("de");
    Object[] values = {"17", "7.5 in", "Logs", "12.25 mm", "N", "8", "9", "10", "11", "12"};
    for (String key : english.keys("said.")) {
      String said = english.text(key, values);
      Problem told =
          Problem.of(ProblemCode.NO_ROWS, CellRef.ofFile("a.csv"), "", german.told(said));
      assertEquals(
          said,
          roundbook.problem.words.Sentences.english().message(german.inEnglish(told, "")),
          key);
    }
  }

  /** The groups of a form are taken in turn, so English fills its holes in turn. */
  @Test
  void englishFillsItsHolesInTurn() {
    Words english = Words.of("en");
    for (String key : english.keys("said.")) {
      List<String> holes =
          Pattern.compile("\\{\\d}")
              .matcher(english.pattern(key))
              .results()
              .map(MatchResult::group)
              .toList();
      List<String> inTurn =
          Stream.iterate(0, n -> n + 1).limit(holes.size()).map(n -> "{" + n + "}").toList();
      assertEquals(inTurn, holes, key);
    }
  }
}
