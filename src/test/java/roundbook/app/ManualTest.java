package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import roundbook.problem.ProblemCode;

/** The manual page and the shell's completion know every command and every option. */
class ManualTest {
  @TempDir Path folder;

  @Test
  void namesEveryCommandAndOption() throws IOException {
    Manual.main(new String[] {folder.toString()});
    String page = Files.readString(folder.resolve("roundbook.1"));
    String completion = Files.readString(folder.resolve("roundbook-completion"));
    for (String name : names()) {
      assertTrue(page.contains(name.replace("-", "\\-")), name);
      assertTrue(completion.contains(name), name);
    }
  }

  @Test
  void everyLineIsTextOrAKnownMacro() throws IOException {
    Manual.main(new String[] {folder.toString()});
    List<String> macros = List.of(".TH ", ".SH ", ".TP", ".B ");
    List<String> strange =
        Files.readAllLines(folder.resolve("roundbook.1")).stream()
            .filter(line -> line.startsWith(".") || line.startsWith("'"))
            .filter(line -> macros.stream().noneMatch(line::startsWith))
            .toList();
    assertEquals(List.of(), strange);
  }

  @Test
  void tellsWhatEveryCodeMeansAndNoOther() throws IOException {
    Set<String> codes =
        Arrays.stream(ProblemCode.values()).map(ProblemCode::id).collect(Collectors.toSet());
    assertEquals(codes, Manual.meanings().stringPropertyNames());
    Manual.main(new String[] {folder.toString()});
    String page = Files.readString(folder.resolve("roundbook.1"));
    assertTrue(
        page.contains(
            ".B date\\-in\\-number (error)\nA number stands as a date, which a spreadsheet makes of"
                + " a fraction.\n"));
  }

  private static List<String> names() {
    CommandLine line = Main.line(System.out, System.err);
    return line.getSubcommands().entrySet().stream()
        .flatMap(
            each ->
                Stream.concat(
                    Stream.of(each.getKey()),
                    each.getValue().getCommandSpec().options().stream()
                        .map(CommandLine.Model.OptionSpec::longestName)))
        .distinct()
        .toList();
  }
}
