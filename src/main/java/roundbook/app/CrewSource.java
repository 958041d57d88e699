package roundbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import roundbook.intake.Asked;
import roundbook.markup.Markup;
import roundbook.markup.MarkupReader;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.read.BookReader;
import roundbook.site.CrewReader;
import roundbook.site.SiteReport;
import roundbook.table.NamedBook;
import roundbook.table.Table;

/** Opens crew workbooks. */
final class CrewSource {
  private CrewSource() {}

  /** Reads a crew workbook back, with every problem that is in it. */
  static Read<SiteReport> read(Path file, Asked asked) {
    return read(file, List.of(), asked);
  }

  /** Reads a crew workbook back and further tallies with it. */
  static Read<SiteReport> read(Path file, List<Path> logs, Asked asked) {
    String name = file.getFileName().toString();
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      return Read.failed(
          List.of(Problem.of(ProblemCode.UNREADABLE, "no-file", CellRef.ofFile(name))));
    }
    Read<NamedBook> book =
        Markup.isPacked(file)
            ? MarkupReader.readNamed(name, file)
            : BookReader.readNamed(name, file);
    if (book.value().isEmpty()) {
      return Read.failed(book.problems().stream().map(CrewSource::meant).toList());
    }
    List<Table> tallies = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path each : logs) {
      Read<List<Table>> tally = Sources.read(each);
      if (tally.value().isEmpty()) {
        return Read.failed(tally.problems());
      }
      tallies.addAll(tally.value().get());
      problems.addAll(tally.problems());
    }
    Read<SiteReport> report = CrewReader.read(book.value().get(), tallies, asked);
    problems.addAll(report.problems());
    return new Read<>(report.value(), problems);
  }

  /** Whatever else it is, what is wanted here is a crew workbook. */
  private static Problem meant(Problem problem) {
    boolean other = problem.code() == ProblemCode.NOT_A_WORKBOOK;
    return other ? problem.remedy(ProblemCode.NOT_A_CREW_WORKBOOK.remedy()) : problem;
  }
}
