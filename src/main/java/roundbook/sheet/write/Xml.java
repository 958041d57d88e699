package roundbook.sheet.write;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes the elements of one XML part, one after the other.
 *
 * <p>Parts are made in memory by this alone: so simple a writer is ready at once, where the Java
 * runtime's own and the workbook library's trees of objects take a run much of its time to start.
 */
final class Xml {
  private final StringBuilder written = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();
  private boolean inTag;

  /** Begins a part of a file. */
  static Xml part() {
    Xml xml = new Xml();
    xml.written.append("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
    return xml;
  }

  /** Begins an element; what is in it follows, and {@link #close}. */
  Xml open(String name) {
    inside().append('<').append(name);
    open.push(name);
    inTag = true;
    return this;
  }

  /** Gives the element just begun an attribute; a number as few digits as tell it. */
  Xml with(String attribute, Object value) {
    String text = value instanceof Double number ? CellNumber.text(number) : value.toString();
    written.append(' ').append(attribute).append("=\"");
    escape(CellText.legal(text), true, written);
    written.append('"');
    return this;
  }

  /** Ends the element that was begun last. */
  Xml close() {
    String name = open.pop();
    if (inTag) {
      written.append("/>");
      inTag = false;
    } else {
      written.append("</").append(name).append('>');
    }
    return this;
  }

  /** Writes an empty element with an attribute {@code val}. */
  Xml val(String name, Object value) {
    return open(name).with("val", value).close();
  }

  /** Writes an element of text. */
  Xml text(String name, String text) {
    escape(CellText.legal(text), false, open(name).inside());
    return close();
  }

  /** Returns what is written so far, to be gone on with inside of the element begun last. */
  StringBuilder inside() {
    if (inTag) {
      written.append('>');
      inTag = false;
    }
    return written;
  }

  /** Returns the bytes of the part. */
  byte[] bytes() {
    return toString().getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public String toString() {
    return written.toString();
  }

  /** Adds a legal text to what is written, as an attribute's value or between tags. */
  static void escape(String text, boolean attribute, StringBuilder to) {
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      if (letter == '<') {
        to.append("&lt;");
      } else if (letter == '>') {
        to.append("&gt;");
      } else if (letter == '&') {
        to.append("&amp;");
      } else if (attribute && (letter == '"' || letter < ' ')) {
        to.append("&#").append((int) letter).append(';');
      } else {
        to.append(letter);
      }
    }
  }
}
