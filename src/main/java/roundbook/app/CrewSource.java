package roundbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import roundbook.intake.Asked;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.BookReader;
import roundbook.site.CrewReader;
import roundbook.site.SiteReport;
import roundbook.table.NamedBook;

/** Opens crew workbooks. */
final class CrewSource {
  private CrewSource() {}

  /** Reads a crew workbook back, with every problem that is in it. */
  static Read<SiteReport> read(Path file, Asked asked) {
    String name = file.getFileName().toString();
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      String message = "the file cannot be read: there is no such file, or it cannot be opened";
      return Read.failed(
          List.of(Problem.of(ProblemCode.UNREADABLE, CellRef.ofFile(name), "", message)));
    }
    Read<NamedBook> book = BookReader.readNamed(name, file);
    Optional<Read<SiteReport>> report = book.value().map(each -> CrewReader.read(each, asked));
    return report.orElseGet(() -> Read.failed(book.problems()));
  }

  /** Returns the exit of a workbook that could not be used. */
  static Exit exit(List<Problem> problems) {
    boolean closed =
        problems.stream().anyMatch(problem -> problem.code() == ProblemCode.UNREADABLE);
    return closed ? Exit.NO_ACCESS : Exit.BAD_INPUT;
  }
}
