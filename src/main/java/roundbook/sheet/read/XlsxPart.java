package roundbook.sheet.read;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.opc.PackagePart;
import roundbook.xml.Limited;
import roundbook.xml.SafeXml;

/**
 * One XML part of a workbook, read as a stream of elements.
 *
 * <p>Elements are known by their local names, so that the strict kind of workbook, whose namespaces
 * differ, is read like the usual one. A part that unpacks to more than its limit is refused.
 */
final class XlsxPart implements AutoCloseable {
  private final InputStream in;
  private final XMLStreamReader xml;

  private XlsxPart(InputStream in) throws IOException, XMLStreamException {
    this.in = in;
    this.xml = SafeXml.open(in);
  }

  static XlsxPart open(PackagePart part, long limit) throws IOException, XMLStreamException {
    InputStream limited = new Limited(part.getInputStream(), limit);
    try {
      return new XlsxPart(limited);
    } catch (IOException | XMLStreamException | RuntimeException broken) {
      limited.close();
      throw broken;
    }
  }

  /** Goes to the next start of an element; null at the end. */
  String nextStart() throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        return xml.getLocalName();
      }
    }
    return null;
  }

  /** Goes to the next start or end of an element or text; returns the event. */
  int next() throws XMLStreamException {
    return xml.hasNext() ? xml.next() : XMLStreamConstants.END_DOCUMENT;
  }

  /** Returns the text up to the end of the element. */
  String elementText() throws XMLStreamException {
    return xml.getElementText();
  }

  String name() {
    return xml.getLocalName();
  }

  String text() {
    return xml.getText();
  }

  /** Returns the whole text of an element without elements in it; stands at its end afterwards. */
  String textOfElement() throws XMLStreamException {
    return xml.getElementText();
  }

  /** Returns an attribute by its local name; null when there is none. */
  String attribute(String name) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(name)) {
        return xml.getAttributeValue(i);
      }
    }
    return null;
  }

  boolean flag(String name) {
    String value = attribute(name);
    return "1".equals(value) || "true".equals(value);
  }

  /** Returns an attribute that counts something; the other value where it is missing or broken. */
  int count(String name, int other) {
    String value = attribute(name);
    try {
      return value == null ? other : Integer.parseInt(value.strip());
    } catch (NumberFormatException broken) {
      return other;
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
