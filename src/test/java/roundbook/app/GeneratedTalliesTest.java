package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Six hundred made tallies of all kinds that were ever misread, with known truth: no value, unit,
 * tag or log differs from it in silence, and nearly all that a clerk would read are read right.
 */
class GeneratedTalliesTest {
  private static final int TALLIES = 600;
  private static final char[] SEPARATORS = {',', ';', '\t', '|'};

  @TempDir private Path folder;

  @Test
  void readsNoFigureWrongInSilence() throws IOException {
    List<String> wrong = new ArrayList<>();
    TreeMap<String, int[]> kinds = new TreeMap<>();
    int right = 0;
    int all = 0;
    for (int i = 0; i < TALLIES; i++) {
      MadeTally tally = TallyKinds.make(i);
      char separator = SEPARATORS[i % SEPARATORS.length];
      TallyOracle oracle = new TallyOracle(tally, folder.resolve("tally" + i + ".csv"), separator);
      List<String> misread = oracle.misread();
      String name = i + " " + tally.kind() + " " + tally.rows().subList(0, 2);
      misread.forEach(each -> wrong.add(name + ": " + each));
      oracle.unplaced().forEach(each -> wrong.add(name + ": no cell: " + each));
      int wanted =
          (int) tally.truth().stream().filter(each -> each.use() != MadeTally.Use.ASK).count();
      right += oracle.right();
      all += wanted;
      int[] sum = kinds.computeIfAbsent(tally.kind(), each -> new int[2]);
      sum[0] += oracle.right();
      sum[1] += wanted;
    }
    assertEquals(List.of(), wrong);
    assertTrue(right >= 0.98 * all, right + " of " + all + " were read right: " + poor(kinds));
  }

  private static String poor(TreeMap<String, int[]> kinds) {
    StringBuilder poor = new StringBuilder();
    kinds.forEach(
        (kind, sum) -> {
          if (sum[0] < sum[1]) {
            poor.append('\n').append(kind).append(": ").append(sum[0]).append('/').append(sum[1]);
          }
        });
    return poor.toString();
  }
}
