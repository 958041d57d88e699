package roundbook.sheet.write;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Sheet;

/** Writes one sheet: its rows, sizes, merges, links and how it is seen. */
final class SheetWriter {
  /** The width of a column that is not shown, in characters. */
  private static final double HIDDEN_WIDTH = 8;

  /** A column is as wide as whole 256ths of a character, at most 255 of these. */
  private static final double STEPS = 256;

  private static final double WIDEST = 255;

  private final Sheet from;
  private final String part;
  private final Writing writing;
  private final Xml xml = Xml.part();

  SheetWriter(Sheet from, String part, Writing writing) {
    this.from = from;
    this.part = part;
    this.writing = writing;
  }

  /** Returns the sheet's part, which must be written in the order of its schema. */
  Xml written(boolean active) {
    PageWriter page = new PageWriter(from, writing);
    xml.open("worksheet").with("xmlns", BookWriter.SPREADSHEET);
    xml.with("xmlns:r", DrawingPart.RELATIONS);
    page.fit(xml);
    xml.open("dimension").with("ref", used().map(Area::toString).orElse("A1")).close();
    seen(active);
    xml.open("sheetFormatPr").with("defaultRowHeight", Figure.Size.USUAL_HEIGHT);
    xml.with("customHeight", true).close();
    columns();
    new RowWriter(from, writing, xml.inside()).write();
    locked();
    merges();
    new RuleWriter(xml, writing.styles()).write(from);
    links();
    page.write(xml);
    if (!from.figures().isEmpty()) {
      xml.open("drawing").with("r:id", writing.drawings().write(from.figures(), part)).close();
    }
    return xml.close();
  }

  /** Returns how far the cells reach. */
  private Optional<Area> used() {
    Area used = null;
    for (Map.Entry<Integer, SortedMap<Integer, Cell>> row : from.rows().entrySet()) {
      if (!row.getValue().isEmpty()) {
        int number = row.getKey();
        Area cells = new Area(number, row.getValue().firstKey(), number, row.getValue().lastKey());
        used = used == null ? cells : used.to(cells);
      }
    }
    return Optional.ofNullable(used);
  }

  private void seen(boolean active) {
    Sheet.View view = from.view();
    xml.open("sheetViews").open("sheetView").with("workbookViewId", 0);
    xml.with("tabSelected", active).with("showGridLines", false).with("zoomScale", view.zoom());
    if (view.frozenRows() + view.frozenColumns() > 0) {
      frozen(view.frozenRows(), view.frozenColumns());
    }
    xml.close().close();
  }

  private void frozen(int rows, int columns) {
    xml.open("pane");
    if (columns > 0) {
      xml.with("xSplit", columns);
    }
    if (rows > 0) {
      xml.with("ySplit", rows);
    }
    String pane = rows == 0 ? "topRight" : columns == 0 ? "bottomLeft" : "bottomRight";
    xml.with("topLeftCell", Area.cell(rows + 1, columns + 1)).with("activePane", pane);
    xml.with("state", "frozen").close().open("selection").with("pane", pane).close();
  }

  /** Writes how wide columns are; one without any width holds what only the program reads. */
  private void columns() {
    if (from.widths().isEmpty()) {
      return;
    }
    xml.open("cols");
    from.widths()
        .forEach(
            (column, width) -> {
              xml.open("col").with("min", column).with("max", column);
              if (width == 0) {
                xml.with("hidden", true).with("width", HIDDEN_WIDTH).close();
              } else {
                double steps = Math.rint(Math.min(width, WIDEST) * STEPS);
                xml.with("width", steps / STEPS).with("customWidth", true).close();
              }
            });
    xml.close();
  }

  private void locked() {
    if (from.view().locked()) {
      xml.open("sheetProtection").with("sheet", true).with("formatColumns", false);
      xml.with("formatRows", false).close();
    }
  }

  private void merges() {
    if (!from.merges().isEmpty()) {
      xml.open("mergeCells").with("count", from.merges().size());
      from.merges().forEach(area -> xml.open("mergeCell").with("ref", area).close());
      xml.close();
    }
  }

  private void links() {
    boolean any = false;
    for (Map.Entry<Integer, SortedMap<Integer, Cell>> row : from.rows().entrySet()) {
      for (Map.Entry<Integer, Cell> cell : row.getValue().entrySet()) {
        String link = cell.getValue().link();
        if (!link.isEmpty()) {
          if (!any) {
            xml.open("hyperlinks");
            any = true;
          }
          xml.open("hyperlink").with("location", Area.cell(1, 1).on(link).replace("$", ""));
          xml.with("ref", Area.cell(row.getKey(), cell.getKey())).close();
        }
      }
    }
    if (any) {
      xml.close();
    }
  }
}
