package roundbook.picture.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AlphabetTest {
  private static final Alphabet ALPHABET = Alphabet.standard();

  /** The printable characters of ISO/IEC 8859-1, but for blanks and the soft hyphen. */
  static IntStream latin() {
    return IntStream.concat(IntStream.rangeClosed(0x21, 0x7e), IntStream.rangeClosed(0xa1, 0xff))
        .filter(character -> character != 0xad);
  }

  @ParameterizedTest
  @MethodSource("latin")
  void everyLatinLetterHasAForm(int character) {
    assertTrue(ALPHABET.knows(character), () -> Character.toString(character));
    assertFalse(ALPHABET.glyph(character).strokes().isEmpty());
  }

  @Test
  void everySignOfTheDrawingsHasAForm() {
    "●○▲▼△▽◆◇■□→←↑↓↻↺✓…–—−′″“”‘’½¼¾×Øžřőąłğ"
        .codePoints()
        .forEach(sign -> assertTrue(ALPHABET.knows(sign), () -> Character.toString(sign)));
  }

  @Test
  void noTwoLettersLookAlike() {
    Map<List<Glyph.Stroke>, Integer> seen = new HashMap<>();
    latin()
        .filter(character -> character != 0xd0)
        .forEach(
            character -> {
              Integer twin = seen.put(ALPHABET.glyph(character).strokes(), character);
              assertEquals(null, twin, () -> Character.toString(character));
            });
  }

  @ParameterizedTest
  @CsvSource({"é, e", "Å, A", "ç, c", "ñ, n", "Ü, U", "ž, z"})
  void marksAreAddedToTheLetter(String accented, String plain) {
    Glyph letter = ALPHABET.glyph(plain.codePointAt(0));
    Glyph both = ALPHABET.glyph(accented.codePointAt(0));
    assertEquals(letter.width(), both.width());
    assertEquals(letter.strokes(), both.strokes().subList(0, letter.strokes().size()));
    assertTrue(both.strokes().size() > letter.strokes().size());
  }

  @Test
  void theDotGoesWhereAMarkComes() {
    assertNotEquals(ALPHABET.glyph('i').strokes().get(1), ALPHABET.glyph('í').strokes().get(1));
    assertEquals(2, ALPHABET.glyph('í').strokes().size());
  }

  @Test
  void whatHasNoFormShowsAsABox() {
    assertFalse(ALPHABET.knows('中'));
    assertEquals(ALPHABET.glyph('☐'), ALPHABET.glyph('中'));
  }
}
