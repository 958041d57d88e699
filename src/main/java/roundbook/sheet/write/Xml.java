package roundbook.sheet.write;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes the elements of one XML part, one after the other.
 *
 * <p>The Java runtime's own writer is asked for by name, so that another one on the class path
 * cannot change the bytes.
 */
final class Xml {
  private final XMLStreamWriter writer;

  /** Writes elements; a parameter where the order of a schema matters. */
  @FunctionalInterface
  interface Content {
    void write() throws XMLStreamException;
  }

  /**
   * Begins to write.
   *
   * @param out where to, left open
   */
  Xml(OutputStream out) throws IOException {
    try {
      writer =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
    } catch (XMLStreamException broken) {
      throw new IOException(broken);
    }
  }

  /** Writes a whole part and flushes the stream. */
  void part(String root, String[] namespaces, Content content) throws IOException {
    try {
      writer.writeStartDocument("UTF-8", "1.0");
      element(root, namespaces, content);
      writer.writeEndDocument();
      writer.flush();
    } catch (XMLStreamException broken) {
      throw new IOException(broken);
    }
  }

  /** Writes an element with attributes, name and value in turn, and what is in it. */
  void element(String name, String[] attributes, Content content) throws XMLStreamException {
    writer.writeStartElement(name);
    attributes(attributes);
    content.write();
    writer.writeEndElement();
  }

  /** Writes an element without attributes and what is in it. */
  void element(String name, Content content) throws XMLStreamException {
    element(name, new String[0], content);
  }

  /** Writes an empty element with attributes, name and value in turn. */
  void empty(String name, String... attributes) throws XMLStreamException {
    writer.writeEmptyElement(name);
    attributes(attributes);
  }

  /** Writes an empty element whose only attribute is {@code val}. */
  void val(String name, String value) throws XMLStreamException {
    empty(name, "val", value);
  }

  /** Writes an element of text. */
  void text(String name, String text) throws XMLStreamException {
    writer.writeStartElement(name);
    writer.writeCharacters(CellText.legal(text));
    writer.writeEndElement();
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int index = 0; index < attributes.length; index += 2) {
      writer.writeAttribute(attributes[index], CellText.legal(attributes[index + 1]));
    }
  }
}
