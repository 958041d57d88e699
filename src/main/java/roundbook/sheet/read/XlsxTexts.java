package roundbook.sheet.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;

/** Reads texts with runs of letters in them: the shared texts and those inside cells. */
final class XlsxTexts {
  private XlsxTexts() {}

  static List<String> read(XlsxBook book) throws IOException, XMLStreamException {
    List<String> texts = new ArrayList<>();
    try (XlsxPart xml = book.part("sharedStrings+xml")) {
      for (String name = start(xml); name != null; name = xml.nextStart()) {
        if (name.equals("si")) {
          texts.add(text(xml, "si"));
        }
      }
    }
    return texts;
  }

  private static String start(XlsxPart xml) throws XMLStreamException {
    return xml == null ? null : xml.nextStart();
  }

  /** Reads to the end of an element and joins its runs; readings for pronunciation are left out. */
  static String text(XlsxPart xml, String element) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    boolean inText = false;
    int sounded = 0;
    for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        inText = xml.name().equals("t");
        sounded += xml.name().equals("rPh") ? 1 : 0;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.name().equals(element)) {
          break;
        }
        inText = false;
        sounded -= xml.name().equals("rPh") ? 1 : 0;
      } else if (isText(event) && inText && sounded == 0) {
        text.append(xml.text());
      }
    }
    return text.toString();
  }

  static boolean isText(int event) {
    return event == XMLStreamConstants.CHARACTERS
        || event == XMLStreamConstants.CDATA
        || event == XMLStreamConstants.SPACE;
  }
}
