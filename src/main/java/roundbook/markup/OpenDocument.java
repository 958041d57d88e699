package roundbook.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import roundbook.table.Cell;
import roundbook.table.NamedBook;
import roundbook.table.Row;

/** Reads the parts of an OpenDocument spreadsheet: its styles, its sheets and its names. */
final class OpenDocument {
  private static final int MOST_ROWS = 1_048_576;
  private static final Pattern AREA =
      Pattern.compile(
          "\\$?(?:'((?:[^']|'')+)'|([^'.$]+))\\.\\$?([A-Z]{1,3})\\$?(\\d+)"
              + "(?::\\.?(?:[^:]*\\.)?\\$?([A-Z]{1,3})\\$?(\\d+))?");

  private final OpenStyles styles = new OpenStyles();
  private final Map<String, NamedBook.Range> names = new TreeMap<>();
  private final SheetTaker taker;
  private XMLStreamReader xml;
  private List<String> columnStyles = new ArrayList<>();
  private RowMaker maker = new RowMaker();
  private int row;
  private boolean wanted;

  OpenDocument(SheetTaker taker) {
    this.taker = taker;
  }

  /** Reads one part; the styles before the content. */
  void read(XMLStreamReader part) throws XMLStreamException {
    xml = part;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD) {
        throw new XMLStreamException("a document type is not read, for safety");
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        start();
      }
    }
  }

  /** Returns the cells of every name that is an area of one sheet, by the name in small letters. */
  Map<String, NamedBook.Range> names() {
    return names;
  }

  private void start() throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "table" -> table();
      case "named-range" -> name();
      default -> styles.take(xml);
    }
  }

  private void name() {
    Matcher area = AREA.matcher(String.valueOf(attribute(xml, "cell-range-address")));
    String name = attribute(xml, "name");
    if (name != null && area.matches()) {
      String sheet = area.group(1) == null ? area.group(2) : area.group(1).replace("''", "'");
      int left = columnOf(area.group(3));
      int top = Integer.parseInt(area.group(4));
      boolean one = area.group(5) == null;
      names.put(
          name.toLowerCase(Locale.ROOT),
          new NamedBook.Range(
              sheet,
              top,
              left,
              one ? top : Integer.parseInt(area.group(6)),
              one ? left : columnOf(area.group(5))));
    }
  }

  private static int columnOf(String letters) {
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      column = column * 26 + letters.charAt(i) - 'A' + 1;
    }
    return column;
  }

  private void table() throws XMLStreamException {
    boolean hidden = styles.isHidden(attribute(xml, "style-name"));
    wanted = taker.begin(String.valueOf(attribute(xml, "name")));
    columnStyles = new ArrayList<>();
    maker = new RowMaker();
    row = 1;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("table")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "table-column" -> column();
          case "table-row" -> row();
          case "named-range" -> name();
          case "shapes", "forms" -> pass(xml.getLocalName());
          default -> {}
        }
      }
    }
    taker.end(hidden);
  }

  private void pass(String element) throws XMLStreamException {
    int depth = 1;
    while (depth > 0 && xml.hasNext()) {
      int event = xml.next();
      boolean same =
          (xml.isStartElement() || xml.isEndElement()) && xml.getLocalName().equals(element);
      depth += same ? (event == XMLStreamConstants.START_ELEMENT ? 1 : -1) : 0;
    }
  }

  private void column() {
    int count = Math.min(repeated("number-columns-repeated"), RowMaker.MOST_COLUMNS);
    String style = attribute(xml, "default-cell-style-name");
    for (int i = 0; i < count && columnStyles.size() < RowMaker.MOST_COLUMNS; i++) {
      columnStyles.add(style);
    }
  }

  private void row() throws XMLStreamException {
    int count = repeated("number-rows-repeated");
    String visibility = attribute(xml, "visibility");
    boolean hidden = visibility != null && !visibility.equals("visible");
    String style = attribute(xml, "default-cell-style-name");
    maker.begin();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("table-row")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().endsWith("table-cell")) {
        cell(style);
      }
    }
    for (int i = 0; i < count && row <= MOST_ROWS; i++) {
      Row made = maker.end(row, hidden);
      if (made.isBlank()) {
        row += count - i;
        return;
      }
      wanted = wanted && taker.row(made);
      row++;
    }
  }

  private void cell(String rowStyle) throws XMLStreamException {
    int count = repeated("number-columns-repeated");
    int down = repeated("number-rows-spanned");
    OpenCell cell = new OpenCell(xml);
    int column = maker.column();
    String style = cell.style();
    if (style == null) {
      style =
          rowStyle == null && column <= columnStyles.size()
              ? columnStyles.get(column - 1)
              : rowStyle;
    }
    Cell first = cell.read(column, styles.look(style));
    maker.note(cell.note());
    if (first.isBlank()) {
      maker.goTo(column + Math.min(count, RowMaker.MOST_COLUMNS));
      return;
    }
    boolean struck = styles.isStruck(style);
    for (int i = 0; i < count && maker.column() <= RowMaker.MOST_COLUMNS; i++) {
      Cell each =
          new Cell(maker.column(), first.kind(), first.text(), first.number(), first.unit());
      maker.add(each, down, struck);
    }
  }

  private int repeated(String attribute) {
    return count(attribute(xml, attribute), 1);
  }

  static int count(String text, int other) {
    try {
      return text == null ? other : Math.max(1, Integer.parseInt(text.strip()));
    } catch (NumberFormatException broken) {
      return other;
    }
  }

  /** Returns an attribute by its local name; null when there is none. */
  static String attribute(XMLStreamReader xml, String name) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(name)) {
        return xml.getAttributeValue(i);
      }
    }
    return null;
  }
}
