package roundbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every problem code is documented, with its severity, and none that is not ours. */
class ProblemCodeTest {
  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z-]+)` \\| (error|warning|info) \\|.+");

  @ParameterizedTest
  @EnumSource(ProblemCode.class)
  void standsInTheDocumentation(ProblemCode code) throws IOException {
    String start = "| `" + code.id() + "` | " + code.severity().word() + " | ";
    assertTrue(rows().stream().anyMatch(row -> row.startsWith(start)), start);
  }

  @Test
  void nothingElseStandsThere() throws IOException {
    List<String> known = Arrays.stream(ProblemCode.values()).map(ProblemCode::id).toList();
    List<String> told =
        rows().stream().map(row -> ROW.matcher(row).replaceFirst("$1")).sorted().toList();
    assertEquals(known.stream().sorted().toList(), told);
  }

  private static List<String> rows() throws IOException {
    return Files.readAllLines(Path.of("DEVELOPERS.md")).stream()
        .filter(row -> ROW.matcher(row).matches())
        .toList();
  }
}
