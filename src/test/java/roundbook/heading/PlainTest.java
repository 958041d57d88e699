package roundbook.heading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words without accents, held to the decomposition of the Unicode standard, form NFKD. */
class PlainTest {
  private static final String UNDECOMPOSED = "\u00DF\u00F8\u00E6\u0142\u0111\u0131\u0153";

  /** Every letter and mark of the first 2,816 and of the signs, alone and inside a word. */
  @Test
  void agreesWithUnicode() {
    for (int code = 1; code < 0x2800; code++) {
      if (Character.isDefined(code) && UNDECOMPOSED.indexOf(Character.toLowerCase(code)) < 0) {
        String text = "a" + Character.toString(code) + "b";
        assertEquals(unicode(text), Plain.of(text), Integer.toHexString(code));
      }
    }
  }

  private static String unicode(String text) {
    return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "");
  }

  @ParameterizedTest
  @CsvSource({
    "Fu\u00DF, fuss",
    "S\u00D8ndre, sondre",
    "GR\u00C5N, gran",
    "\u0141adunek, ladunek",
    "\u0441\u0440\u0435\u0434\u043D\u0438\u0439, \u0441\u0440\u0435\u0434\u043D\u0438\u0438"
  })
  void lettersWithoutDecompositionHaveAPlainOne(String text, String plain) {
    assertEquals(plain, Plain.of(text));
  }

  /** Java's tables of Unicode take longer to load than all languages together. */
  @ParameterizedTest
  @CsvSource({
    "common", "en", "de", "fr", "sv", "fi", "es", "no", "da", "nl", "it", "pt", "pl", "cs", "et",
    "lv", "ru"
  })
  void everyLetterOfTheProgramsLanguagesStandsInItsTable(String language) throws IOException {
    try (InputStream in = Plain.class.getResourceAsStream(language + ".txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .filter(line -> !line.startsWith("#"))
          .forEach(line -> assertEquals(true, Plain.isTabled(line.toLowerCase(Locale.ROOT)), line));
    }
  }
}
