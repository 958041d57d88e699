package roundbook.markup;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The styles of an OpenDocument spreadsheet, as far as they tell what a cell holds. */
final class OpenStyles {
  private final Map<String, NumberStyle> numbers = new HashMap<>();
  private final Map<String, String> data = new HashMap<>();
  private final Map<String, String> parents = new HashMap<>();
  private final Set<String> struck = new HashSet<>();
  private final Set<String> hidden = new HashSet<>();

  /** Takes an element that begins; reads on to the end of a style of numbers. */
  void take(XMLStreamReader xml) throws XMLStreamException {
    String name = xml.getLocalName();
    if (name.equals("style")) {
      style(xml);
    } else if (name.endsWith("-style") && OpenDocument.attribute(xml, "name") != null) {
      numbers.put(OpenDocument.attribute(xml, "name"), number(xml, name));
    }
  }

  private void style(XMLStreamReader xml) throws XMLStreamException {
    String own = String.valueOf(OpenDocument.attribute(xml, "name"));
    put(data, own, OpenDocument.attribute(xml, "data-style-name"));
    put(parents, own, OpenDocument.attribute(xml, "parent-style-name"));
    while (xml.hasNext() && !ends(xml, xml.next(), "style")) {
      if (xml.isStartElement()) {
        String line = OpenDocument.attribute(xml, "text-line-through-style");
        if (line != null && !line.equals("none")) {
          struck.add(own);
        }
        boolean table = xml.getLocalName().equals("table-properties");
        if (table && "false".equals(OpenDocument.attribute(xml, "display"))) {
          hidden.add(own);
        }
      }
    }
  }

  private static void put(Map<String, String> map, String key, String value) {
    if (value != null) {
      map.put(key, value);
    }
  }

  private static NumberStyle number(XMLStreamReader xml, String element) throws XMLStreamException {
    StringBuilder letters = new StringBuilder();
    int digits = 1;
    boolean decimals = false;
    boolean inText = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (ends(xml, event, element)) {
        break;
      }
      if (xml.isStartElement()) {
        inText = xml.getLocalName().equals("text");
        String least = OpenDocument.attribute(xml, "min-integer-digits");
        digits = least == null ? digits : OpenDocument.count(least, 1);
        String places = OpenDocument.attribute(xml, "decimal-places");
        decimals |= places != null && !places.equals("0");
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        inText = false;
      } else if (inText && xml.isCharacters()) {
        letters.append(xml.getText());
      }
    }
    return NumberStyle.of(letters.toString(), decimals ? 1 : digits);
  }

  private static boolean ends(XMLStreamReader xml, int event, String element) {
    return event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element);
  }

  /** Returns how the numbers of a cell's style look. */
  NumberStyle look(String style) {
    String at = style;
    for (int depth = 0; at != null && depth < 20; depth++) {
      if (data.containsKey(at)) {
        return numbers.getOrDefault(data.get(at), NumberStyle.PLAIN);
      }
      at = parents.get(at);
    }
    return NumberStyle.PLAIN;
  }

  boolean isStruck(String style) {
    return struck.contains(style);
  }

  boolean isHidden(String style) {
    return hidden.contains(style);
  }
}
