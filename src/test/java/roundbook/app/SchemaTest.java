package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is written keeps to the schema of ECMA-376, Office Open XML File Formats, part 4
 * (transitional), as the library's makers compiled it; a spreadsheet program calls a workbook
 * damaged that does not.
 */
@Tag("long")
class SchemaTest {
  private static final Path WHOLE = Path.of("target", "schema", "poi-ooxml-full.jar");

  @TempDir Path folder;

  @Test
  void templatesAndSamplesKeepToTheStandard() throws IOException {
    assertSound("templates/job.xlsx", "templates/crew-style.xlsx");
    assertSound("samples/hill-cabin.xlsx", "samples/metric-hut.xlsx");
  }

  @Test
  void crewWorkbooksKeepToTheStandard() throws IOException {
    String inches = folder.resolve("inches.xlsx").toString();
    String metric = folder.resolve("metric.xlsx").toString();
    run("plan", "samples/hill-cabin.xlsx", "-o", inches);
    run("plan", "samples/metric-hut.xlsx", "-o", metric, "--language", "de");
    String next = folder.resolve("next.xlsx").toString();
    run("replan", inches, "-o", next);
    assertSound(inches, metric, next);
  }

  private static void run(String... args) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    assertEquals(0, Quick.run(args, nowhere, nowhere), String.join(" ", args));
  }

  private static void assertSound(String... books) throws IOException {
    List<String> said = faults(books);
    String end = said.get(said.size() - 1);
    assertTrue(end.matches("[1-9]\\d* parts"), () -> String.join("\n", said));
    assertEquals(List.of(end), said);
  }

  private static List<String> faults(String... books) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-cp", WHOLE + File.pathSeparator + System.getProperty("java.class.path")));
    command.add("roundbook.sheet.SchemaFaults");
    command.addAll(List.of(books));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
      return said.lines().toList();
    }
  }
}
