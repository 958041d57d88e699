package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/** Fills in what ditto marks stand for: the cell of the row above. */
final class Dittos {
  private static final int MOST_LETTERS = 7;

  private final Block block;

  Dittos(Block block) {
    this.block = block;
  }

  /**
   * Returns a row with its ditto marks filled in, each said; the row itself where it has none.
   *
   * @param above the log above; null where there is none
   */
  Row filled(Row row, Row above) {
    List<Cell> cells = null;
    for (int i = 0; i < row.cells().size(); i++) {
      Cell cell = row.cells().get(i);
      if (isDitto(cell) && above != null && !above.cell(cell.column()).isBlank()) {
        cells = cells == null ? new ArrayList<>(row.cells()) : cells;
        Cell over = above.cell(cell.column());
        cells.set(i, over);
        Problem problem =
            Problem.of(ProblemCode.DOUBTFUL_VALUE, "ditto", block.table().at(row, cell.column()))
                .found(cell.text())
                .with("text", over.text());
        block.say(problem.remedy());
      }
    }
    return cells == null
        ? row
        : new Row(row.number(), cells, row.hidden(), row.struck(), row.note());
  }

  private boolean isDitto(Cell cell) {
    return cell.kind() == CellKind.TEXT
        && cell.text().length() <= MOST_LETTERS
        && !Character.isDigit(cell.text().charAt(0))
        && block.isRead(cell.column())
        && block.words().isDitto(cell.text());
  }
}
