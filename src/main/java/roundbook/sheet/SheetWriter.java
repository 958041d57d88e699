package roundbook.sheet;

import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/** Writes the cells of one sheet: values, looks, sizes, merges and links. */
final class SheetWriter {
  private static final Cell EDGE = Cell.blank(Role.PLAIN);

  private final Sheet from;
  private final XSSFSheet to;
  private final Writing writing;

  SheetWriter(Sheet from, XSSFSheet to, Writing writing) {
    this.from = from;
    this.to = to;
    this.writing = writing;
  }

  void write() {
    to.setDefaultRowHeightInPoints((float) Figure.Size.USUAL_HEIGHT);
    from.widths().forEach((column, width) -> to.setColumnWidth(column - 1, columnUnits(width)));
    allRows().forEach(this::row);
    from.merges().forEach(area -> to.addMergedRegionUnsafe(range(area)));
    seen();
  }

  static CellRangeAddress range(Area area) {
    return new CellRangeAddress(
        area.top() - 1, area.bottom() - 1, area.left() - 1, area.right() - 1);
  }

  /**
   * Returns a width in 256ths of a character, at most the 255 characters that a column can have.
   */
  private static int columnUnits(double characters) {
    return (int) Math.round(Math.min(characters, 255) * 256);
  }

  /** Returns the rows with their cells, among them empty ones that only carry a box's outline. */
  private SortedMap<Integer, SortedMap<Integer, Cell>> allRows() {
    SortedMap<Integer, SortedMap<Integer, Cell>> all = new TreeMap<>();
    from.rows().forEach((row, cells) -> all.put(row, new TreeMap<>(cells)));
    from.heights().keySet().forEach(row -> all.computeIfAbsent(row, key -> new TreeMap<>()));
    for (Area box : from.boxes()) {
      for (int row = box.top(); row <= box.bottom(); row++) {
        for (int column = box.left(); column <= box.right(); column++) {
          if (sides(box, row, column) != 0) {
            all.computeIfAbsent(row, key -> new TreeMap<>()).putIfAbsent(column, EDGE);
          }
        }
      }
    }
    return all;
  }

  private static int sides(Area box, int row, int column) {
    return box.contains(row, column)
        ? (row == box.top() ? 1 : 0)
            | (column == box.right() ? 2 : 0)
            | (row == box.bottom() ? 4 : 0)
            | (column == box.left() ? 8 : 0)
        : 0;
  }

  private void row(int number, SortedMap<Integer, Cell> cells) {
    XSSFRow row = to.createRow(number - 1);
    Double height = from.heights().get(number);
    if (height != null) {
      row.setHeightInPoints(height.floatValue());
    }
    cells.forEach((column, cell) -> cell(row.createCell(column - 1), cell));
  }

  private void cell(XSSFCell written, Cell cell) {
    written.setCellStyle(writing.styles().of(cell, heavySides(written)));
    value(written, cell.value());
    if (!cell.name().isEmpty()) {
      Area at = Area.cell(written.getRowIndex() + 1, written.getColumnIndex() + 1);
      writing.name(cell.name(), at.on(from.name()));
    }
    if (!cell.link().isEmpty()) {
      link(written, cell.link());
    }
  }

  private int heavySides(XSSFCell cell) {
    int sides = 0;
    for (Area box : from.boxes()) {
      sides |= sides(box, cell.getRowIndex() + 1, cell.getColumnIndex() + 1);
    }
    return sides;
  }

  private void value(XSSFCell written, Cell.Value value) {
    if (value instanceof Cell.Text text) {
      written.setCellValue(CellText.stored(fitted(written, text.text())));
    } else if (value instanceof Cell.Number number) {
      written.setCellValue(number.number());
    } else if (value instanceof Cell.Truth truth) {
      written.setCellValue(truth.truth());
    } else if (value instanceof Cell.Formula formula) {
      formula(written, formula);
    }
  }

  /** Writes formula and value as they are; the library would parse each formula first. */
  private void formula(XSSFCell written, Cell.Formula formula) {
    CTCell raw = written.getCTCell();
    raw.addNewF().setStringValue(formula.expression());
    if (formula.result() instanceof Cell.Number number) {
      raw.setT(STCellType.N);
      raw.setV(String.valueOf(number.number()));
    } else if (formula.result() instanceof Cell.Truth truth) {
      raw.setT(STCellType.B);
      raw.setV(truth.truth() ? "1" : "0");
    } else if (formula.result() instanceof Cell.Text text) {
      raw.setT(STCellType.STR);
      raw.setV(CellText.stored(fitted(written, text.text())));
    }
  }

  private String fitted(XSSFCell written, String text) {
    if (CellText.isTooLong(text)) {
      CellRef where =
          new CellRef("", from.name(), written.getRowIndex() + 1, written.getColumnIndex() + 1);
      String message = text.length() + " characters are more than a cell holds; the rest is cut";
      writing.problem(Problem.of(ProblemCode.TEXT_CUT, where, text.substring(0, 40), message));
    }
    return CellText.cut(text);
  }

  private void link(XSSFCell written, String sheet) {
    XSSFHyperlink link =
        writing.workbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(Area.cell(1, 1).on(sheet).replace("$", ""));
    written.setHyperlink(link);
  }

  private void seen() {
    Sheet.View view = from.view();
    to.setDisplayGridlines(false);
    to.setZoom(view.zoom());
    if (view.frozenRows() + view.frozenColumns() > 0) {
      to.createFreezePane(view.frozenColumns(), view.frozenRows());
    }
    if (view.locked()) {
      to.enableLocking();
      to.lockFormatColumns(false);
      to.lockFormatRows(false);
    }
  }
}
