package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.sheet.kind.Intact;

/**
 * A batch of jobs of mixed quality, killed half-way and run again: exactly the right set of whole
 * workbooks, and a report that says what became of each file.
 */
@Tag("long")
class KilledBatchTest {
  private static final int FILES = Integer.getInteger("batch", 12);

  /** What a file holds, and how planning it ends. */
  private enum Kind {
    TALLY(0, false),
    JOB(0, true),
    UNREADABLE(3, false),
    CUT_OFF(5, true),
    MORE_TALLY(0, false),
    SHORT_OF_LOGS(4, false),
    BAD_JOB(3, true),
    STILL_MORE_TALLY(0, false);

    private final int exit;
    private final boolean book;

    Kind(int exit, boolean book) {
      this.exit = exit;
      this.book = book;
    }
  }

  private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1");

  @TempDir Path jobs;
  @TempDir Path logs;

  @Test
  void endsWithTheRightSetOfWholeWorkbooks() throws IOException, InterruptedException {
    Map<String, Integer> expected = new TreeMap<>();
    for (int i = 0; i < FILES; i++) {
      String name = "job %03d".formatted(i);
      expected.put(write(name, i), Kind.values()[i % Kind.values().length].exit);
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
      Intact.check(jobs.resolve(book));
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
          if (exit == 0 || exit == 4) {
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

  /** Writes a file whose kind, one of eight, goes by its number. */
  private String write(String name, int i) throws IOException {
    Kind kind = Kind.values()[i % Kind.values().length];
    String file = name + (kind.book ? ".xlsx" : ".csv");
    Path path = jobs.resolve(file);
    switch (kind) {
      case JOB -> TypedBook.change(sample(path), book -> thicken(book.getSheet("Logs"), i));
      case BAD_JOB -> TypedBook.change(sample(path), book -> spoil(book.getSheet("Job")));
      case CUT_OFF -> {
        byte[] whole = Files.readAllBytes(sample(path));
        Files.write(path, Arrays.copyOf(whole, whole.length / 2));
      }
      default -> Files.writeString(path, tally(kind, i));
    }
    return file;
  }

  private static Path sample(Path path) throws IOException {
    return Files.copy(Path.of("samples", "hill-cabin.xlsx"), path);
  }

  private static void thicken(Sheet logs, int i) {
    for (Row row : logs) {
      Cell cell = row.getCell(3);
      if (cell != null && cell.getCellType() == CellType.NUMERIC) {
        cell.setCellValue(cell.getNumericCellValue() + (row.getRowNum() + i) % 3 / 4.0);
      }
    }
  }

  private static void spoil(Sheet settings) {
    for (Row row : settings) {
      row.createCell(1).setCellValue("about so much");
    }
  }

  private static String tally(Kind kind, int i) {
    StringBuilder tally = new StringBuilder("Log,Length (ft),Butt (in),Mid (in),Tip (in)\n");
    for (int log = 0; log < (kind == Kind.SHORT_OF_LOGS ? 6 : 14); log++) {
      double mid = 11 + (log * 7 + i) % 9 / 4.0;
      String length = kind == Kind.UNREADABLE ? "long" : "22";
      tally.append(log).append(',').append(length).append(',').append(mid + 1).append(',');
      tally.append(mid).append(',').append(mid - 1).append('\n');
    }
    return tally.toString();
  }
}
