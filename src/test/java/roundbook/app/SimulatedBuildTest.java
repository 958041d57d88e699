package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short build through real workbooks; the benchmark builds twelve rounds several times. */
@Tag("long")
class SimulatedBuildTest {
  @TempDir private Path folder;

  @Test
  void fourRoundsAreBuiltLevelWhileTheTallyIsOut() throws Exception {
    SimulatedBuild build = new SimulatedBuild(folder, 2, 4, 0.375).run();
    var corners = build.wall().worstCorners();
    assertTrue(Collections.max(corners) <= 0.25, "level after every round: " + build.report());
    assertTrue(SimulatedBuild.inside(build.wall().gaps()) > 0.95, build.report());
    assertTrue(
        SimulatedBuild.inside(build.wall().gaps()) > SimulatedBuild.inside(build.blind().gaps()),
        build.report());
    assertTrue(build.site().said().contains("tally-bias"), build.site().said());
  }
}
