package roundbook.heading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words in the cells of a tally, as people write them: common practice. */
class CellWordsTest {
  private final CellWords words = new CellWords(Vocabulary.standard());

  @ParameterizedTest
  @CsvSource({
    "Total, true",
    "TOTAL:, true",
    "Total = 212 ft, true",
    "Grand total, true",
    "Total length, true",
    "Average, true",
    "Std dev, true",
    "'\u03A3', true",
    "'\u2211', true",
    "Summe, true",
    "Durchschnitt, true",
    "12 logs, true",
    "12 St\u00FCck, true",
    "12 logs., true",
    "12 dogs, false",
    "12 logs 3, false",
    "Total of flitches, false",
    "T12, false",
    "Spruce, false",
    "'', false",
    "length, false",
  })
  void tellsFiguresOverRows(String text, boolean summary) {
    assertEquals(summary, words.isSummary(text), text);
    assertEquals(summary, words.isSummary(text), "the second time: " + text);
  }

  @Test
  void aNoteIsNoTotal() {
    assertEquals(true, words.isSummary("total ".repeat(10).strip()));
    assertEquals(false, words.isSummary("total ".repeat(11).strip()));
    assertEquals(false, words.isSummary("total\nlength"));
  }

  /** What is remembered of many texts is forgotten in the end, and then told again the same. */
  @Test
  void tellsTheSameAfterManyOthers() {
    for (int i = 0; i < 10_100; i++) {
      assertEquals(false, words.isSummary("B" + i));
    }
    assertEquals(true, words.isSummary("total"));
  }

  @ParameterizedTest
  @CsvSource({
    "x, true", "X, true", "yes, true", "Y, true", "ja, true", "1, true", "\u2713, true",
    "TRUE, true", "no, false", "N, false", "nein, false", "0, false", "-, false", "'', false",
    "'  ', false", "maybe,", "2,", "yes no,",
  })
  void tellsYesFromNoFromNeither(String text, Boolean answer) {
    assertEquals(Optional.ofNullable(answer), words.answer(text), text);
  }

  @ParameterizedTest
  @CsvSource({
    "rotten at the butt, rotten",
    "ROTTEN, rotten",
    "heart rot, rot",
    "do  not   use, do not use",
    "morsch am Zopf, morsch",
    "'not rotten, broken', broken",
    "sold to a neighbour, sold",
    "not rotten,",
    "no rot,",
    "nicht faul,",
    "unbroken,",
    "semi-broken,",
    "rottenness,",
    "sound,",
    "'',",
  })
  void findsWhatSpoilsALog(String text, String word) {
    assertEquals(Optional.ofNullable(word), words.unfit(text), text);
  }

  @ParameterizedTest
  @CsvSource({
    "'\"', true",
    "'''''', true",
    "\u3003, true",
    "do., true",
    "Ditto, true",
    "same, true",
    "dgl., true",
    "12, false",
    "'', false",
    "ditto as the row above, false",
  })
  void tellsDittoMarks(String text, boolean ditto) {
    assertEquals(ditto, words.isDitto(text), text);
  }

  @Test
  void aUsersWordsCountInCellsToo() {
    CellWords own =
        new CellWords(Vocabulary.with(List.of("verkocht = unfit", "geen = not", "som = sum")));
    assertEquals(Optional.of("verkocht"), own.unfit("al verkocht"));
    assertEquals(Optional.empty(), own.unfit("geen verkocht"));
    assertEquals(true, own.isSummary("Som"));
  }
}
