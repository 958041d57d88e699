package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.units.Length;

/** Lengths such as 16-6: feet and inches where they can only be that, else asked about. */
class HyphenFeetTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Length (ft-in), 18-0, 216",
    "Length (ft-in), 18-0 16 14-10, 216 192 178",
    "Length (ft & in), 16-06, 198",
    "Length (ft), 18-0 16-6 14-11, 216 198 179",
    "Length, 18-0 16-6 8-10, 216 198 106",
  })
  void readsFeetAndInches(String heading, String lengths, String inches) {
    List<String> read =
        tally(heading, lengths).logs().stream()
            .map(Log::length)
            .map(Length::inches)
            .map(each -> String.valueOf(each.intValue()))
            .toList();
    assertEquals(List.of(inches.split(" ")), read);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Length (ft), 18-0, 1",
    "Length (ft), 18-0 16-6, 2",
    "Length (ft), 18-0 16 14, 1",
    "Length (ft), 8-10 10-11 9-11, 3",
    "Length (ft-in), 18-13, 1",
    "Length (ft), 18-0 16-6 14-12, 3",
  })
  void asksWhereItMayBeARange(String heading, String lengths, int asked) {
    List<Problem> problems = tally(heading, lengths).read().problems();
    assertEquals(
        asked,
        problems.stream().filter(each -> each.said().key().equals("bad-number.range")).count(),
        problems.toString());
  }

  private static Tally tally(String heading, String lengths) {
    List<String> lines = new ArrayList<>(List.of("Log|" + heading + "|Butt (in)|Tip (in)"));
    for (String length : lengths.split(" ")) {
      lines.add("L" + lines.size() + "|" + length + "|14|12");
    }
    return Tally.of(lines.toArray(String[]::new));
  }
}
