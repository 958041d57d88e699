package roundbook.sheet.write;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Sheet;

/** Writes one sheet: its rows, sizes, merges, links and how it is seen. */
final class SheetWriter {
  private final Sheet from;
  private final XSSFSheet to;
  private final Writing writing;

  SheetWriter(Sheet from, XSSFSheet to, Writing writing) {
    this.from = from;
    this.to = to;
    this.writing = writing;
  }

  void write() {
    String entry = to.getPackagePart().getPartName().getName().substring(1);
    writing.rows(entry, new RowWriter(from, writing).rows());
    to.setDefaultRowHeightInPoints((float) Figure.Size.USUAL_HEIGHT);
    from.widths().forEach(this::column);
    from.merges().forEach(area -> to.addMergedRegionUnsafe(range(area)));
    used();
    links();
    seen();
  }

  /** A column without any width holds what only the program reads. */
  private void column(int column, double width) {
    if (width == 0) {
      to.setColumnHidden(column - 1, true);
    } else {
      to.setColumnWidth(column - 1, columnUnits(width));
    }
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

  /** Says how far the cells reach. */
  private void used() {
    from.rows().entrySet().stream()
        .filter(row -> !row.getValue().isEmpty())
        .map(row -> ends(row.getKey(), row.getValue().firstKey(), row.getValue().lastKey()))
        .reduce(Area::to)
        .ifPresent(area -> to.getCTWorksheet().getDimension().setRef(area.toString()));
  }

  private static Area ends(int row, int first, int last) {
    return new Area(row, first, row, last);
  }

  private void links() {
    from.rows()
        .forEach(
            (row, cells) ->
                cells.forEach(
                    (column, cell) -> {
                      if (!cell.link().isEmpty()) {
                        link(Area.cell(row, column), cell);
                      }
                    }));
  }

  private void link(Area at, Cell cell) {
    XSSFHyperlink link =
        writing.workbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(Area.cell(1, 1).on(cell.link()).replace("$", ""));
    link.setCellReference(at.toString());
    to.addHyperlink(link);
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
