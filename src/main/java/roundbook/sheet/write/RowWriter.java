package roundbook.sheet.write;

import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/**
 * Writes the rows of one sheet as they stand in the file.
 *
 * <p>The library keeps every row and cell as a tree of XML objects, which took most of the time of
 * writing a workbook; rows are the one part that is simple and large, so they are written here.
 */
final class RowWriter {
  private static final Cell EDGE = Cell.blank(Role.PLAIN);

  private final Sheet from;
  private final Writing writing;
  private final StringBuilder xml = new StringBuilder();

  RowWriter(Sheet from, Writing writing) {
    this.from = from;
    this.writing = writing;
  }

  /** Returns the element with all rows, naming named cells on the way. */
  byte[] rows() {
    xml.append("<sheetData>");
    allRows().forEach(this::row);
    return xml.append("</sheetData>").toString().getBytes(StandardCharsets.UTF_8);
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

  /** Returns the sides of a cell that lie on a box's outline: 1 top, 2 right, 4 bottom, 8 left. */
  private static int sides(Area box, int row, int column) {
    return box.contains(row, column)
        ? (row == box.top() ? 1 : 0)
            | (column == box.right() ? 2 : 0)
            | (row == box.bottom() ? 4 : 0)
            | (column == box.left() ? 8 : 0)
        : 0;
  }

  private void row(int number, SortedMap<Integer, Cell> cells) {
    xml.append("<row r=\"").append(number).append('"');
    Double height = from.heights().get(number);
    if (height != null) {
      xml.append(" ht=\"").append(CellNumber.text(height)).append("\" customHeight=\"1\"");
    }
    xml.append('>');
    cells.forEach((column, cell) -> cell(number, column, cell));
    xml.append("</row>");
  }

  private void cell(int row, int column, Cell cell) {
    int style = writing.styles().of(cell, heavySides(row, column)).getIndex();
    xml.append("<c r=\"").append(CellRef.columnName(column)).append(row);
    xml.append("\" s=\"").append(style).append('"');
    value(cell.value(), row, column);
    if (!cell.name().isEmpty()) {
      writing.name(cell.name(), Area.cell(row, column).on(from.name()));
    }
  }

  private int heavySides(int row, int column) {
    int sides = 0;
    for (Area box : from.boxes()) {
      sides |= sides(box, row, column);
    }
    return sides;
  }

  private void value(Cell.Value value, int row, int column) {
    if (value instanceof Cell.Blank) {
      xml.append("/>");
    } else if (value instanceof Cell.Text text) {
      xml.append(" t=\"inlineStr\"><is><t xml:space=\"preserve\">");
      escaped(CellText.stored(fitted(text.text(), row, column)));
      xml.append("</t></is></c>");
    } else if (value instanceof Cell.Formula formula) {
      result(formula.result(), formula.expression(), row, column);
    } else {
      result(value, "", row, column);
    }
  }

  /** Writes a value that stands alone or is what a formula gives now. */
  private void result(Cell.Value value, String formula, int row, int column) {
    if (value instanceof Cell.Truth truth) {
      begin(" t=\"b\">", formula).append(truth.truth() ? '1' : '0');
    } else if (value instanceof Cell.Number number) {
      begin(">", formula).append(CellNumber.text(number.number()));
    } else if (value instanceof Cell.Text text) {
      begin(" t=\"str\">", formula);
      escaped(CellText.stored(fitted(text.text(), row, column)));
    }
    xml.append("</v></c>");
  }

  private StringBuilder begin(String kind, String formula) {
    xml.append(kind);
    if (!formula.isEmpty()) {
      xml.append("<f>");
      escaped(CellText.legal(formula));
      xml.append("</f>");
    }
    return xml.append("<v>");
  }

  private void escaped(String text) {
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      switch (letter) {
        case '<' -> xml.append("&lt;");
        case '>' -> xml.append("&gt;");
        case '&' -> xml.append("&amp;");
        default -> xml.append(letter);
      }
    }
  }

  private String fitted(String text, int row, int column) {
    if (CellText.isTooLong(text)) {
      CellRef where = new CellRef("", from.name(), row, column);
      writing.problem(
          Problem.of(ProblemCode.TEXT_CUT, where)
              .with("count", text.length())
              .found(text.substring(0, 40)));
    }
    return CellText.cut(text);
  }
}
