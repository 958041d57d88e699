package roundbook;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** Reads every cell of a file with a library alone, for a benchmark to compare with. */
final class BarePass {
  private static long letters;

  private BarePass() {}

  /** Reads the file named, a workbook or a text, and prints how many letters its cells hold. */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    if (file.toString().endsWith(".xlsx")) {
      workbook(file);
    } else {
      text(file);
    }
    System.out.println(letters);
  }

  private static void text(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file);
        CSVParser parser =
            CSVParser.builder().setReader(reader).setFormat(CSVFormat.DEFAULT).get()) {
      for (CSVRecord row : parser) {
        row.forEach(cell -> letters += cell.length());
      }
    }
  }

  private static void workbook(Path file) throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(file.toFile());
        Stream<Row> rows = book.getFirstSheet().openStream()) {
      rows.forEach(row -> row.forEach(BarePass::count));
    }
  }

  private static void count(Cell cell) {
    if (cell != null && cell.getRawValue() != null) {
      letters += cell.getRawValue().length();
    }
  }
}
