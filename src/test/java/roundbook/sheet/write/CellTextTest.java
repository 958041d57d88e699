package roundbook.sheet.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CellTextTest {
  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of("plain", "plain"),
        Arguments.of("tab\tand\nline", "tab\tand\nline"),
        Arguments.of("two\r\nlines\rmore", "two\nlines\nmore"),
        Arguments.of("bell\u0007", "bell\uFFFD"),
        Arguments.of("half \uD83D pair", "half \uFFFD pair"),
        Arguments.of("\uDE00 other half", "\uFFFD other half"),
        Arguments.of("whole \uD83D\uDE00 pair", "whole \uD83D\uDE00 pair"),
        Arguments.of("_x0041_", "_x005F_x0041_"),
        Arguments.of("_x004_ under_score", "_x004_ under_score"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void whatXmlCannotHoldIsReplaced(String text, String stored) {
    assertEquals(stored, CellText.stored(text));
  }

  @Test
  void aCutNeverSplitsACharacterInTwo() {
    String text = "x".repeat(CellText.MOST - 2) + "\uD83D\uDE00\uD83D\uDE00";
    assertEquals("x".repeat(CellText.MOST - 2) + "…", CellText.cut(text));
  }
}
