package roundbook.sheet.read;

import java.io.IOException;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import roundbook.problem.Phrase;
import roundbook.sheet.kind.Guard;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/** Reads the rows of one sheet of a zipped workbook, from the top, without holding them. */
final class XlsxRows implements AutoCloseable {
  private static final int MOST_ROWS = 1_048_576;
  private static final int MOST_COLUMNS = 16_384;

  private final XlsxBook book;
  private final XlsxPart xml;
  private final XlsxBeside beside;
  private final SeenCells seen = new SeenCells();
  private int row;
  private int column;
  private boolean struck;

  XlsxRows(XlsxBook book, XlsxBook.SheetPart sheet)
      throws IOException, XMLStreamException, InvalidFormatException {
    this.book = book;
    this.beside = XlsxBeside.of(book, sheet);
    this.xml = book.read(sheet);
  }

  /** Returns the next row that is not blank; null at the end. */
  Row next() throws XMLStreamException {
    for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
      if (name.equals("row")) {
        row = Math.min(xml.count("r", row + 1), MOST_ROWS);
        boolean hidden = xml.flag("hidden");
        List<Cell> cells = cells();
        if (!cells.isEmpty()) {
          return new Row(row, beside.filled(row, cells), hidden, struck, beside.note(row));
        }
      }
    }
    return null;
  }

  private List<Cell> cells() throws XMLStreamException {
    List<Cell> cells = new ArrayList<>();
    column = 0;
    struck = false;
    for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
      if (event == XMLStreamConstants.END_ELEMENT && xml.name().equals("row")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT && xml.name().equals("c")) {
        Cell cell = cell();
        if (!cell.isBlank()) {
          cells.add(cell);
        }
      }
    }
    return cells;
  }

  private Cell cell() throws XMLStreamException {
    column = columnOf(xml.attribute("r"));
    NumberLook look = book.look(xml.count("s", 0));
    String type = xml.attribute("t");
    String value = null;
    String inline = null;
    boolean formula = false;
    boolean inValue = false;
    for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        formula |= xml.name().equals("f");
        inValue = value == null && xml.name().equals("v");
        // A formula that comes to an empty text has been reckoned all the same.
        value = inValue && "str".equals(type) ? "" : value;
        inline = xml.name().equals("is") ? XlsxTexts.text(xml, "is") : inline;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.name().equals("c")) {
          break;
        }
        inValue = false;
      } else if (inValue && XlsxTexts.isText(event)) {
        value = value == null ? xml.text() : value + xml.text();
      }
    }
    Cell cell = inline == null ? valued(type, value, formula, look) : Cell.text(column, inline);
    struck |= look.struck() && !cell.isBlank();
    return cell;
  }

  private Cell valued(String type, String value, boolean formula, NumberLook look) {
    if (value == null || value.isEmpty() && !"str".equals(type)) {
      return formula ? new Cell(column, CellKind.UNCOMPUTED, "", null, "") : Cell.blank(column);
    }
    SeenCells.Stored stored = new SeenCells.Stored(column, type, look, value);
    Cell known = seen.find(stored);
    return known == null ? seen.keep(stored, made(type, value, look)) : known;
  }

  private Cell made(String type, String value, NumberLook look) {
    return switch (type == null ? "n" : type) {
      case "s" -> Cell.text(column, book.string(value));
      case "str", "inlineStr" -> Cell.text(column, value);
      case "b" ->
          new Cell(column, CellKind.BOOLEAN, value.equals("1") ? "TRUE" : "FALSE", null, "");
      case "e" -> new Cell(column, CellKind.ERROR, value, null, "");
      case "d" -> date(value);
      default -> number(value, look);
    };
  }

  private Cell number(String value, NumberLook look) {
    try {
      double number = Double.parseDouble(value.strip());
      return Double.isFinite(number)
          ? look.cell(column, number, book.system1904())
          : new Cell(column, CellKind.ERROR, value, null, "");
    } catch (NumberFormatException broken) {
      return Cell.text(column, value);
    }
  }

  /** A date written as text, as the strict kind of workbook does. */
  private Cell date(String value) {
    try {
      String whole = value.length() <= 10 ? value + "T00:00:00" : value.replace("Z", "");
      double serial = org.apache.poi.ss.usermodel.DateUtil.getExcelDate(LocalDateTime.parse(whole));
      return new Cell(column, CellKind.DATE, value, java.math.BigDecimal.valueOf(serial), "");
    } catch (DateTimeParseException broken) {
      return Cell.text(column, value);
    }
  }

  /** Returns the column of a cell's address, such as 4 of {@code D9}; the next one without any. */
  private int columnOf(String address) {
    int number = column + 1;
    boolean digits = true;
    if (address != null && !address.isEmpty()) {
      number = 0;
      int at = 0;
      for (; at < address.length() && isLetter(address.charAt(at)); at++) {
        number = Math.min(MOST_COLUMNS, number) * 26 + (address.charAt(at) & 31);
      }
      digits = at < address.length() && Character.isDigit(address.charAt(at));
    }
    if (number == 0 || number > MOST_COLUMNS || !digits) {
      throw Guard.damaged(book.file(), Phrase.of("damage.address").with("row", row));
    }
    return number;
  }

  private static boolean isLetter(char each) {
    return each >= 'A' && each <= 'Z' || each >= 'a' && each <= 'z';
  }

  @Override
  public void close() throws IOException {
    xml.close();
  }
}
