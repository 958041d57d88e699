package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Sheet;

/** Finds the cells of a sheet that show fractions, as few areas as are easily found. */
final class Fractions {
  private Fractions() {}

  static List<Area> of(Sheet sheet) {
    List<Area> areas = new ArrayList<>();
    for (int row : sheet.rows().keySet()) {
      for (int column : sheet.rows().get(row).keySet()) {
        if (isFirst(sheet, row, column)) {
          areas.add(down(sheet, row, column));
        }
      }
    }
    return areas;
  }

  private static boolean isFirst(Sheet sheet, int row, int column) {
    return isFraction(sheet, row, column) && !isFraction(sheet, row - 1, column);
  }

  private static Area down(Sheet sheet, int row, int column) {
    int last = row;
    while (isFraction(sheet, last + 1, column)) {
      last++;
    }
    return new Area(row, column, last, column);
  }

  private static boolean isFraction(Sheet sheet, int row, int column) {
    Optional<Cell> cell = sheet.cell(row, column);
    return cell.isPresent() && cell.get().format() == Cell.Format.FRACTION;
  }
}
