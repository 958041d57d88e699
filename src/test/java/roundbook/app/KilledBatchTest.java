package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.sheet.BookReader;

/**
 * A batch of jobs of mixed quality, killed half-way and run again: exactly the right set of whole
 * workbooks, and a report that says what became of each file.
 */
class KilledBatchTest {
  private static final int FILES = Integer.getInteger("batch", 12);
  private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1");

  @TempDir Path jobs;
  @TempDir Path logs;

  @Test
  void endsWithTheRightSetOfWholeWorkbooks() throws IOException, InterruptedException {
    Map<String, Integer> expected = new TreeMap<>();
    for (int i = 0; i < FILES; i++) {
      String name = "job %03d".formatted(i);
      expected.put(write(name, i), i % 4 == 3 ? 5 : i % 4 == 2 ? 3 : 0);
    }
    Path report = logs.resolve("report.csv");
    String[] plan = {
      "plan",
      jobs.toString(),
      "--walls",
      "18x18",
      "--rounds",
      "2",
      "--no-pictures",
      "--resume",
      "-j",
      "2",
      "--report",
      report.toString()
    };
    Process half = OwnProcess.start(logs.resolve("said.log"), QUICK, plan);
    while (half.isAlive() && books().size() < FILES / 6) {
      Thread.sleep(20);
    }
    half.destroyForcibly().waitFor();
    int before = books().size();
    assertTrue(before < FILES / 2, "killed before its end");
    OwnProcess again = OwnProcess.run(logs, QUICK, plan);
    assertEquals(5, again.exit(), again.said());
    assertEquals(sound(expected), new TreeSet<>(books()));
    for (String book : books()) {
      BookReader.verify(jobs.resolve(book));
    }
    List<String> rows = Files.readAllLines(report);
    assertEquals(FILES + 1, rows.size());
    int row = 1;
    for (Map.Entry<String, Integer> each : expected.entrySet()) {
      String start = jobs.resolve(each.getKey()) + "," + each.getValue() + ",";
      assertTrue(rows.get(row).startsWith(start), rows.get(row));
      row++;
    }
    assertEquals(before, rows.stream().filter(each -> each.endsWith("planned before")).count());
  }

  private static TreeSet<String> sound(Map<String, Integer> expected) {
    TreeSet<String> books = new TreeSet<>();
    expected.forEach(
        (file, exit) -> {
          if (exit == 0) {
            books.add(file.replaceFirst("\\.[a-z]+$", "") + " - rounds rev1.xlsx");
          }
        });
    return books;
  }

  private List<String> books() throws IOException {
    try (Stream<Path> files = Files.list(jobs)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(" - rounds rev1.xlsx"))
          .toList();
    }
  }

  /** Two sound tallies, one with nothing usable and one damaged workbook of every four files. */
  private String write(String name, int i) throws IOException {
    if (i % 4 == 3) {
      byte[] sample = Files.readAllBytes(Path.of("samples", "hill-cabin.xlsx"));
      Files.write(jobs.resolve(name + ".xlsx"), java.util.Arrays.copyOf(sample, sample.length / 2));
      return name + ".xlsx";
    }
    StringBuilder tally = new StringBuilder("Log,Length (ft),Butt (in),Mid (in),Tip (in)\n");
    for (int log = 0; log < 14; log++) {
      double mid = 11 + (log * 7 + i) % 9 / 4.0;
      String length = i % 4 == 2 ? "long" : "22";
      tally.append(log).append(',').append(length).append(',').append(mid + 1).append(',');
      tally.append(mid).append(',').append(mid - 1).append('\n');
    }
    Files.writeString(jobs.resolve(name + ".csv"), tally);
    return name + ".csv";
  }
}
