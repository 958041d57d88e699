package roundbook.app;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks that are odd in one way each: read, or refused in one clear line, by every command. */
@Tag("long")
class OddBooksTest {
  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> zipped() {
    HostileRun run = new HostileRun(folder);
    return OddBooks.all().stream()
        .map(
            odd ->
                DynamicTest.dynamicTest(
                    odd.name(), () -> run.all(odd.name(), odd.bytes(), odd.wanted())));
  }
}
