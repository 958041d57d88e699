package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole twelve-round builds through real workbooks, against builds that follow the first plan. */
class ReplanBuildBenchmark {
  private static final int ROUNDS = 12;
  private static final int BUILDS = 4;

  @TempDir private Path folder;

  @Test
  void twelveRoundsEndLevelWithEvenGaps() throws Exception {
    List<Double> tops = new ArrayList<>();
    List<Double> rising = new ArrayList<>();
    List<Double> blind = new ArrayList<>();
    double inside = 0;
    for (long seed = 1; seed <= BUILDS; seed++) {
      Path own = Files.createDirectories(folder.resolve("build" + seed));
      SimulatedBuild build = new SimulatedBuild(own, seed, ROUNDS, seed % 2 == 0 ? 0.375 : 0).run();
      System.out.println("seed " + seed + ": " + build.report());
      tops.add(build.wall().worstCorners().get(ROUNDS - 1));
      rising.add(Collections.max(build.wall().worstCorners()));
      blind.add(build.blind().worstCorners().get(ROUNDS - 1));
      inside += SimulatedBuild.inside(build.wall().gaps()) / BUILDS;
    }
    tops.sort(null);
    blind.sort(null);
    System.out.println("worst corner at the top, built " + tops + ", blind " + blind);
    System.out.println("worst corner after any round " + rising);
    System.out.printf("gaps inside the limits: %.1f %%%n", 100 * inside);
    assertTrue(inside >= 0.98, "gaps inside the limits: " + inside);
    assertTrue(Collections.max(tops) <= 0.25, "all end within a quarter inch: " + tops);
    assertTrue(Collections.max(rising) <= 0.25, "all stay within a quarter inch: " + rising);
    assertTrue(blind.get(1) > 0.375, "the blind ones drift: " + blind);
  }
}
