package roundbook.markup;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;

/** One cell of an OpenDocument spreadsheet, whose attributes were read and whose text was not. */
final class OpenCell {
  private final XMLStreamReader xml;
  private final String element;
  private final String type;
  private final String value;
  private final String style;
  private final boolean error;
  private final boolean formula;
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder note = new StringBuilder();

  OpenCell(XMLStreamReader xml) {
    this.xml = xml;
    this.element = xml.getLocalName();
    String own = null;
    String calculated = null;
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      boolean office = "office".equals(xml.getAttributePrefix(i));
      if (xml.getAttributeLocalName(i).equals("value-type")) {
        own = office ? xml.getAttributeValue(i) : own;
        calculated = office ? calculated : xml.getAttributeValue(i);
      }
    }
    this.type = own == null ? String.valueOf(calculated) : own;
    this.error = "error".equals(calculated);
    this.style = OpenDocument.attribute(xml, "style-name");
    this.formula = OpenDocument.attribute(xml, "formula") != null;
    String[] names = {"value", "date-value", "time-value", "boolean-value", "string-value"};
    String found = null;
    for (String name : names) {
      String here = OpenDocument.attribute(xml, name);
      found = found == null ? here : found;
    }
    this.value = found;
  }

  /** Returns what was written beside the cell, once it is read. */
  String note() {
    return Cell.strip(note.toString());
  }

  String style() {
    return style;
  }

  /** Reads the text up to the cell's end, and returns the cell. */
  Cell read(int column, NumberStyle look) throws XMLStreamException {
    readText();
    String shown = Cell.strip(text.toString());
    if (error) {
      return Values.none(column, CellKind.ERROR, shown);
    }
    if (value == null && formula && shown.isEmpty()) {
      return Values.none(column, CellKind.UNCOMPUTED, "");
    }
    return switch (type) {
      case "float", "currency", "percentage" -> Values.number(column, "" + value, shown, look);
      case "date", "time" -> Values.date(column, "" + value, shown);
      case "boolean" -> Values.truth(column, "true".equals(value));
      default -> Cell.text(column, shown.isEmpty() && value != null ? value : shown);
    };
  }

  private void readText() throws XMLStreamException {
    int noted = 0;
    boolean inside = true;
    while (inside && xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        noted += xml.getLocalName().equals("annotation") ? 1 : 0;
        if (noted == 0) {
          begin(xml.getLocalName());
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        noted -= xml.getLocalName().equals("annotation") ? 1 : 0;
        inside = !xml.getLocalName().equals(element);
      } else if (xml.isCharacters() && !xml.isWhiteSpace()) {
        (noted == 0 ? text : note).append(xml.getText());
      }
    }
  }

  private void begin(String name) {
    switch (name) {
      case "p" -> text.append(text.length() == 0 ? "" : "\n");
      case "s" -> text.append(" ".repeat(OpenDocument.count(OpenDocument.attribute(xml, "c"), 1)));
      case "tab" -> text.append('\t');
      case "line-break" -> text.append('\n');
      default -> {}
    }
  }
}
