package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import roundbook.csv.CsvReader;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.WorkbookReader;
import roundbook.table.Table;

/** Opens files and tells by their content what reads them. */
final class Sources {
  private static final long BYTES_MOST = 300L * 1024 * 1024;

  private Sources() {}

  /** Reads a file's tables; the problem's code is {@code unreadable} when it cannot be opened. */
  static Read<List<Table>> read(Path file) {
    String name = file.getFileName().toString();
    byte[] bytes;
    try {
      if (Files.isDirectory(file)) {
        return unreadable(name, "it is a folder");
      }
      if (Files.size(file) > BYTES_MOST) {
        return unreadable(name, "it is larger than 300 MB");
      }
      bytes = Files.readAllBytes(file);
    } catch (NoSuchFileException missing) {
      return unreadable(name, "there is no such file");
    } catch (IOException | SecurityException denied) {
      return unreadable(name, "it cannot be opened");
    }
    return bytes.length == 0 || !WorkbookReader.looksBinary(bytes)
        ? text(name, bytes)
        : WorkbookReader.read(name, bytes);
  }

  private static Read<List<Table>> text(String name, byte[] bytes) {
    Read<Table> read = CsvReader.read(name, bytes);
    List<Problem> problems = new ArrayList<>(read.problems());
    String ending = name.toLowerCase(Locale.ROOT).replaceAll(".*\\.", "");
    if (List.of("xlsx", "xls", "xlsm", "ods").contains(ending) && read.value().isPresent()) {
      problems.add(
          Problem.of(
              ProblemCode.WRONG_EXTENSION,
              CellRef.ofFile(name),
              "",
              "the file is named as a workbook but holds text; it was read as text"));
    }
    return new Read<>(read.value().map(List::of), problems);
  }

  private static Read<List<Table>> unreadable(String name, String why) {
    return Read.failed(
        List.of(
            Problem.of(
                ProblemCode.UNREADABLE,
                CellRef.ofFile(name),
                "",
                "the file cannot be read: " + why)));
  }
}
