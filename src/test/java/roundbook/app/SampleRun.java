package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** One run of a sample, its tables and its workbook read by libraries of their own. */
final class SampleRun {
  private static final Map<String, SampleRun> DONE = new HashMap<>();

  private final Map<String, List<CSVRecord>> tables = new HashMap<>();
  private final Map<String, List<List<Object>>> sheets = new HashMap<>();

  private final Path folder;

  private SampleRun(Path folder) {
    this.folder = folder;
  }

  /** Plans a sample, as hard as users do, unless a test of this process has done so. */
  static synchronized SampleRun of(String sample) throws IOException {
    SampleRun run = DONE.get(sample);
    if (run == null) {
      run = planned(sample, Files.createTempDirectory(Path.of("target"), "sample"));
      DONE.put(sample, run);
    }
    return run;
  }

  private static SampleRun planned(String sample, Path folder) throws IOException {
    List<String> walls = sample.endsWith(".csv") ? List.of("--walls", "20x14") : List.of();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream quiet = new PrintStream(new ByteArrayOutputStream(), true);
    List<String> args = new ArrayList<>(List.of("plan", "samples/" + sample, "-q"));
    args.addAll(List.of("--no-pictures", "-o", folder.toString()));
    args.addAll(List.of("--tables", folder.resolve("tables").toString()));
    args.addAll(walls);
    assertEquals(
        0,
        Main.run(args.toArray(String[]::new), quiet, new PrintStream(err, true)),
        err.toString());
    SampleRun run = new SampleRun(folder);
    run.readTables(folder.resolve("tables"));
    run.readSheets(folder);
    return run;
  }

  private void readTables(Path folder) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        try (Reader reader = Files.newBufferedReader(file)) {
          String name = file.getFileName().toString().replace(".csv", "");
          tables.put(name, format.parse(reader).getRecords());
        }
      }
    }
  }

  private void readSheets(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Path book = files.filter(file -> file.toString().endsWith(".xlsx")).findFirst().orElseThrow();
      try (InputStream in = Files.newInputStream(book);
          ReadableWorkbook workbook = new ReadableWorkbook(in)) {
        for (var sheet : workbook.getSheets().toList()) {
          sheets.put(sheet.getName(), sheet.read().stream().map(SampleRun::cells).toList());
        }
      }
    }
  }

  /** Returns a row's texts and numbers, without its empty cells. */
  private static List<Object> cells(Row row) {
    return row.stream()
        .filter(cell -> cell != null && !cell.getText().isBlank())
        .map(SampleRun::value)
        .toList();
  }

  private static Object value(Cell cell) {
    return cell.getType() == CellType.NUMBER ? cell.asNumber().doubleValue() : cell.getText();
  }

  /** Returns a table as it was written, line by line. */
  List<String> lines(String table) throws IOException {
    return Files.readAllLines(folder.resolve("tables").resolve(table + ".csv"));
  }

  /** Returns the rows of a table. */
  List<CSVRecord> table(String name) {
    return tables.get(name);
  }

  /** Returns the rows of a sheet that begin with a text, or with a number; none without it. */
  List<List<Object>> rows(String sheet, Object first) {
    return sheets.getOrDefault(sheet, List.of()).stream()
        .filter(row -> !row.isEmpty() && row.get(0).equals(first))
        .toList();
  }

  /** Returns the first row of a sheet whose first cell holds a text. */
  List<Object> rowWith(String sheet, String part) {
    return sheets.get(sheet).stream()
        .filter(row -> !row.isEmpty() && row.get(0).toString().contains(part))
        .findFirst()
        .orElseThrow();
  }
}
