package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tallies as yards send them: exactly the logs and problems that a careful clerk would note. */
class TallyFixturesTest {
  @TempDir private Path folder;

  static List<TallyFixture> fixtures() {
    return TallyFixture.all();
  }

  @ParameterizedTest
  @MethodSource("fixtures")
  void givesTheLogsAndProblemsExpected(TallyFixture fixture) throws IOException {
    assertFalse(fixture.files().isEmpty(), "the fixture names no file");
    for (String file : fixture.files()) {
      assertEquals(
          String.join("\n", fixture.expected()),
          String.join("\n", fixture.read(file, folder)),
          file);
    }
  }
}
