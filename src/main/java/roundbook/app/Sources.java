package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import roundbook.csv.CsvReader;
import roundbook.harvester.HarvesterReader;
import roundbook.markup.Markup;
import roundbook.markup.MarkupReader;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.kind.FileKind;
import roundbook.sheet.read.BookReader;
import roundbook.table.Table;

/** Opens files and tells by their content what reads them; long ones are read ahead. */
final class Sources {
  private static final long BYTES_MOST = 2L * 1024 * 1024 * 1024;
  private static final Set<String> WORKBOOK_ENDINGS = Set.of("xlsx", "xls", "xlsm", "xlsb", "ods");

  private Sources() {}

  /** Reads a file's tables; the problem's code is {@code unreadable} when it cannot be opened. */
  static Read<List<Table>> read(Path file) {
    String name = file.getFileName().toString();
    try {
      if (Files.notExists(file)) {
        return unreadable(name, "none");
      }
      if (Files.isDirectory(file)) {
        return unreadable(name, "folder");
      }
      if (!Files.isRegularFile(file)) {
        return unreadable(name, "device");
      }
      if (Files.size(file) > BYTES_MOST) {
        return unreadable(name, "larger");
      }
      Read<List<Table>> read = read(name, file, FileKind.of(file));
      return new Read<>(
          read.value().map(tables -> tables.stream().map(ReadAhead::of).toList()), read.problems());
    } catch (IOException | SecurityException denied) {
      return unreadable(name, "closed");
    }
  }

  /** Reads a job's file and further tallies; nothing where one of them cannot be read. */
  static Read<List<Table>> all(Path file, List<Path> tallies) {
    List<Path> files = new ArrayList<>(List.of(file));
    files.addAll(tallies);
    List<Table> tables = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    boolean opened = true;
    for (Path each : files) {
      Read<List<Table>> read = read(each);
      problems.addAll(read.problems());
      read.value().ifPresent(tables::addAll);
      opened &= read.value().isPresent();
    }
    return opened ? Read.of(tables, problems) : Read.failed(problems);
  }

  private static Read<List<Table>> read(String name, Path file, FileKind kind) throws IOException {
    return switch (kind) {
      case EMPTY, TEXT -> text(name, file);
      case ZIP ->
          Markup.isPacked(file)
              ? MarkupReader.read(name, file, Markup.PACKED)
              : BookReader.read(name, file);
      case OLE2 -> BookReader.read(name, file);
      case HTML -> page(name, file);
      case XML -> {
        Optional<Markup> markup = Markup.ofXml(file);
        yield markup.isPresent()
            ? MarkupReader.read(name, file, markup.get())
            : HarvesterReader.read(name, file);
      }
      default -> Read.failed(List.of(BookReader.refusal(name, kind)));
    };
  }

  /** A page that is named as a workbook is what some programs write for one. */
  private static Read<List<Table>> page(String name, Path file) {
    Read<List<Table>> read = MarkupReader.read(name, file, Markup.PAGE);
    List<Problem> problems = new ArrayList<>(read.problems());
    if (read.value().isPresent()) {
      problems.add(Problem.of(ProblemCode.WRONG_EXTENSION, "page", CellRef.ofFile(name)));
    }
    return new Read<>(read.value(), problems);
  }

  private static Read<List<Table>> text(String name, Path file) {
    Read<Table> read = CsvReader.read(name, file);
    List<Problem> problems = new ArrayList<>(read.problems());
    String ending = name.toLowerCase(Locale.ROOT).replaceAll(".*\\.", "");
    if (WORKBOOK_ENDINGS.contains(ending) && read.value().isPresent()) {
      problems.add(Problem.of(ProblemCode.WRONG_EXTENSION, CellRef.ofFile(name)));
    }
    return new Read<>(read.value().map(List::of), problems);
  }

  private static Read<List<Table>> unreadable(String name, String why) {
    return Read.failed(List.of(Problem.of(ProblemCode.UNREADABLE, why, CellRef.ofFile(name))));
  }
}
