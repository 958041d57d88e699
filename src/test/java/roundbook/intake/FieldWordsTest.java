package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.problem.words.Sentences;

/** Every field and every reason why a column is not read has its word in each language. */
class FieldWordsTest {
  @ParameterizedTest
  @EnumSource
  void everyFieldHasAWord(Field field) {
    assertFalse(field.phrase().in(Sentences.english()).isEmpty());
    assertFalse(field.phrase().in(Sentences.of("de")).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "READ")
  void everyReasonHasAWord(Unread why) {
    assertFalse(why.phrase().in(Sentences.english()).isEmpty());
    assertFalse(why.phrase().in(Sentences.of("de")).isEmpty());
  }
}
