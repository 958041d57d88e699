package roundbook.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.page.CellNames;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.site.SiteReport.Carried;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Range;
import roundbook.table.Row;

/** Reads what was found when the tally was read, from the list of problems. */
final class ProblemRows {
  private final NamedBook book;

  ProblemRows(NamedBook book) {
    this.book = book;
  }

  /** Returns the problems in the order of the list; none where there is no list. */
  List<Carried> all() {
    List<Carried> found = new ArrayList<>();
    Optional<Range> codes = book.range(CellNames.problem("codes"));
    codes
        .flatMap(range -> book.sheet(range.sheet()))
        .ifPresent(
            table ->
                table.forEach(
                    row -> {
                      Range range = codes.get();
                      if (row.number() >= range.top() && row.number() <= range.bottom()) {
                        problem(row).ifPresent(found::add);
                      }
                    }));
    return found;
  }

  private Optional<Carried> problem(Row row) {
    return ProblemCode.of(text(row, "codes"))
        .map(
            code ->
                Problem.of(
                        code,
                        CellRef.parse(text(row, "places")),
                        text(row, "founds"),
                        text(row, "messages"))
                    .about(text(row, "logs"))
                    .remedy(Phrase.told(text(row, "remedies"))))
        .map(problem -> new Carried(text(row, "severities"), problem));
  }

  private String text(Row row, String column) {
    return book.range(CellNames.problem(column))
        .map(range -> row.cell(range.left()).text())
        .orElse("");
  }
}
