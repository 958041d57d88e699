package roundbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    return read(file, Optional.empty(), List.of(), asked);
  }

  /**
   * Reads a crew workbook back, with another copy of its revision and further tallies.
   *
   * @param with a copy that somebody else typed into
   */
  static Read<SiteReport> read(Path file, Optional<Path> with, List<Path> logs, Asked asked) {
    Read<NamedBook> book = open(file);
    Read<NamedBook> copy = with.map(CrewSource::open).orElse(book);
    if (book.value().isEmpty() || copy.value().isEmpty()) {
      return Read.failed(book.value().isEmpty() ? book.problems() : copy.problems());
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
    Read<SiteReport> report =
        CrewReader.read(book.value().get(), with.flatMap(x -> copy.value()), tallies, asked);
    problems.addAll(report.problems());
    return new Read<>(report.value(), problems);
  }

  private static Read<NamedBook> open(Path file) {
    String name = file.getFileName().toString();
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      return Read.failed(
          List.of(Problem.of(ProblemCode.UNREADABLE, "no-file", CellRef.ofFile(name))));
    }
    Read<NamedBook> book =
        Markup.isPacked(file)
            ? MarkupReader.readNamed(name, file)
            : BookReader.readNamed(name, file);
    return book.value().isPresent()
        ? book
        : Read.failed(book.problems().stream().map(CrewSource::meant).toList());
  }

  /** Whatever else it is, what is wanted here is a crew workbook. */
  private static Problem meant(Problem problem) {
    boolean other = problem.code() == ProblemCode.NOT_A_WORKBOOK;
    return other ? problem.remedy(ProblemCode.NOT_A_CREW_WORKBOOK.remedy()) : problem;
  }
}
