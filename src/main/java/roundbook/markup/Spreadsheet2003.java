package roundbook.markup;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/** Reads the spreadsheet XML of 2003: {@code Workbook/Worksheet/Table/Row/Cell/Data}. */
final class Spreadsheet2003 {
  private static final int MOST_ROWS = 1_048_576;

  private final Map<String, NumberStyle> looks = new HashMap<>();
  private final Set<String> struck = new HashSet<>();
  private final SheetTaker taker;
  private XMLStreamReader xml;
  private RowMaker maker = new RowMaker();
  private int row;
  private boolean wanted;

  Spreadsheet2003(SheetTaker taker) {
    this.taker = taker;
  }

  /** Reads the whole file. */
  void read(XMLStreamReader stream) throws XMLStreamException {
    xml = stream;
    String style = "";
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD) {
        throw new XMLStreamException("a document type is not read, for safety");
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "Style" -> style = String.valueOf(attribute("ID"));
          case "NumberFormat" -> looks.put(style, NumberStyle.ofCode("" + attribute("Format")));
          case "Font" -> {
            if ("1".equals(attribute("StrikeThrough"))) {
              struck.add(style);
            }
          }
          case "Worksheet" -> sheet();
          default -> {}
        }
      }
    }
  }

  private String attribute(String name) {
    return OpenDocument.attribute(xml, name);
  }

  private void sheet() throws XMLStreamException {
    wanted = taker.begin(String.valueOf(attribute("Name")));
    maker = new RowMaker();
    row = 0;
    boolean hidden = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("Worksheet")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (xml.getLocalName().equals("Row")) {
          row();
        } else if (xml.getLocalName().equals("Visible")) {
          hidden = xml.getElementText().contains("Hidden");
        }
      }
    }
    taker.end(hidden);
  }

  private void row() throws XMLStreamException {
    int next = OpenDocument.count(attribute("Index"), row + 1);
    for (row++; row < Math.min(next, MOST_ROWS) && maker.reachesDown(); row++) {
      maker.begin();
      give(maker.end(row, false));
    }
    row = Math.min(next, MOST_ROWS);
    boolean hidden = "1".equals(attribute("Hidden"));
    maker.begin();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("Row")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("Cell")) {
        cell();
      }
    }
    give(maker.end(row, hidden));
  }

  private void give(Row made) {
    if (!made.isBlank()) {
      wanted = wanted && taker.row(made);
    }
  }

  private void cell() throws XMLStreamException {
    maker.skipCovered();
    maker.goTo(OpenDocument.count(attribute("Index"), maker.column()));
    int down =
        attribute("MergeDown") == null ? 1 : 1 + OpenDocument.count(attribute("MergeDown"), 0);
    int across =
        attribute("MergeAcross") == null ? 0 : OpenDocument.count(attribute("MergeAcross"), 0);
    String style = String.valueOf(attribute("StyleID"));
    boolean formula = attribute("Formula") != null;
    int column = maker.column();
    Cell cell = formula ? Values.none(column, CellKind.UNCOMPUTED, "") : Cell.blank(column);
    boolean comment = false;
    while (xml.hasNext()) {
      int event = xml.next();
      String name = xml.isStartElement() || xml.isEndElement() ? xml.getLocalName() : "";
      if (event == XMLStreamConstants.END_ELEMENT && name.equals("Cell")) {
        break;
      }
      comment = name.equals("Comment") ? event == XMLStreamConstants.START_ELEMENT : comment;
      if (event == XMLStreamConstants.START_ELEMENT && name.equals("Data") && !comment) {
        cell = data(column, looks.getOrDefault(style, NumberStyle.PLAIN));
      }
    }
    maker.add(cell, down, struck.contains(style));
    maker.goTo(maker.column() + across);
  }

  private Cell data(int column, NumberStyle look) throws XMLStreamException {
    String type = String.valueOf(attribute("Type"));
    String text = text();
    return switch (type) {
      case "Number" -> Values.number(column, text, "", look);
      case "DateTime" -> Values.date(column, text, "");
      case "Boolean" -> Values.truth(column, text.equals("1"));
      case "Error" -> Values.none(column, CellKind.ERROR, text);
      default -> Cell.text(column, text);
    };
  }

  /** Returns the text of a cell, which may be cut into pieces of one look each. */
  private String text() throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("Data")) {
        break;
      }
      if (xml.isCharacters()) {
        text.append(xml.getText());
      }
    }
    return Cell.strip(text.toString());
  }
}
