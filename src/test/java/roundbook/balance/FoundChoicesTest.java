package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The best choices that were found stand in the resources, and have the scores told of them. */
class FoundChoicesTest {
  private static final double TICKS = 0.001;

  @TestFactory
  List<DynamicTest> theBestChoicesFoundHaveTheirScores() {
    return YardFile.found().stream()
        .map(words -> DynamicTest.dynamicTest(words[0] + " " + words[1], () -> check(words)))
        .toList();
  }

  private static void check(String... words) {
    YardFile yard = YardFile.read(words[0]);
    boolean exact = words[1].equals("exact");
    List<Integer> logs = Arrays.stream(words).skip(3).map(Integer::valueOf).toList();
    assertEquals(yard.task(exact, false).places(), logs.size());
    assertEquals(logs.size(), new HashSet<>(logs).size(), "each log once");
    for (int place = 0; place < logs.size(); place++) {
      double[] building = yard.buildings().get(place * yard.buildings().size() / logs.size());
      double needed = building[3 + place % 4] + 4;
      assertTrue(yard.logs().get(logs.get(place) - 1)[2] >= needed, "long enough: " + place);
    }
    double score = Double.parseDouble(words[2]);
    assertEquals(score, new PlainScore(yard, exact, logs).total(), TICKS * score);
    YardFile.Best best = YardFile.best(words[0]);
    assertEquals(score, exact ? best.exact() : best.rounded(), 1e-9, "the best known");
  }

  /** One round of four and one more, worked out by hand. */
  @Test
  void aScoreWorkedOutByHand() {
    // Logs without taper: mids 12 below, 11 above; A walls: 3/4 in of (12 - 11) too wide less half,
    // that is (36 + 11) / 4 + 1 - 11.5 = 1.25; B walls (12 + 33) / 4 + 1 - 11.5 = 0.75.
    double[] thick = {0, 0, 104, 12, 12, 12};
    double[] thin = {0, 0, 104, 11, 11, 11};
    YardFile yard =
        new YardFile(
            "by hand",
            List.of(new double[] {0, 1, 2, 100, 100, 100, 100}),
            List.of(thick, thick, thick, thick, thin, thin, thin, thin));
    List<Integer> logs = List.of(1, 2, 3, 4, 5, 6, 7, 8);
    assertEquals(12 * 0.0625, new PlainScore(yard, false, logs).total(), 1e-12);
    List<Integer> upside = List.of(5, 6, 7, 8, 1, 2, 3, 4);
    assertEquals(12 * 0.0625 + 10, new PlainScore(yard, true, upside).total(), 1e-12);
  }
}
