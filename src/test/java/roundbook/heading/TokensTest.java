package roundbook.heading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TokensTest {
  /** Each word with the brackets it stands in; a line of its own counts down. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Length (ft) [in] | length:0 ft:1 in:2",
        "Length\\nft | length:0 ft:-1",
        "Length\\n(ft)\\nall | length:0 ft:1 all:-2",
        "a {b} c) d | a:0 b:1 c:0 d:0",
        "Log_Tag | log:0 tag:0",
        "TipDia | tip:0 dia:0",
        "D.B.H. | dbh:0",
        "d. b. (cm) | db:0 cm:1",
        "butt1 2 | butt1:0 2:0",
        "1.3 m | 1.3:0 m:0",
        "8 1/2 | 8:0 1/2:0",
        "Tip \u201D | tip:0 \":0",
        "Tip '' | tip:0 \":0",
        "L\u2032 | l:0 ':0",
        "owner's mark | owner:0 mark:0",
        "% @ # | %:0 @:0 #:0",
        "\u2300 mid | dia:0 mid:0",
      })
  void cutsWordsAndMarks(String text, String tokens) {
    assertEquals(
        tokens,
        Tokens.of(text.replace("\\n", "\n")).stream()
            .map(token -> token.word() + ":" + token.group())
            .collect(Collectors.joining(" ")));
  }

  @Test
  void aRowsWordsStandOnceEach() {
    assertEquals(
        Set.of("butt", "dia", "tip"), Tokens.words(List.of("Butt dia", "Tip dia", "", "()")));
  }
}
