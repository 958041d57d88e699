package roundbook.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.page.CellNames;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Range;
import roundbook.table.Row;

/** Reads what was found when the tally was read, from the list of problems. */
final class ProblemRows {
  private final NamedBook book;
  private final Sentences english = Sentences.english();

  ProblemRows(NamedBook book) {
    this.book = book;
  }

  /** Returns the problems in the order of the list; none where there is no list. */
  List<Problem> all() {
    List<Problem> found = new ArrayList<>();
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

  /** Returns a row's problem; as it was told where what is carried of it was typed over. */
  private Optional<Problem> problem(Row row) {
    CellRef where = CellRef.parse(text(row, "places"));
    Optional<Problem> carried = Problem.ofCarried(text(row, "carried"), where);
    return carried.filter(english::tells).or(() -> told(row, where));
  }

  private Optional<Problem> told(Row row, CellRef where) {
    return ProblemCode.of(text(row, "codes"))
        .map(
            code ->
                Problem.of(code, where, Phrase.told(text(row, "messages")))
                    .found(text(row, "founds"))
                    .about(text(row, "logs"))
                    .remedy(Phrase.told(text(row, "remedies"))));
  }

  private String text(Row row, String column) {
    return book.range(CellNames.problem(column))
        .map(range -> row.cell(range.left()).text())
        .orElse("");
  }
}
