package roundbook.sheet.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.ss.usermodel.BuiltinFormats;

/** Reads how the cells of a workbook look: number formats and struck-through fonts. */
final class XlsxLooks {
  /** The look of a cell without one. */
  static final NumberLook PLAIN = NumberLook.of(0, "General", false);

  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Boolean> struckFonts = new ArrayList<>();
  private final List<NumberLook> looks = new ArrayList<>();

  private XlsxLooks() {}

  static List<NumberLook> read(XlsxBook book) throws IOException, XMLStreamException {
    XlsxLooks result = new XlsxLooks();
    try (XlsxPart xml = book.part("styles+xml")) {
      for (String name = start(xml); name != null; name = xml.nextStart()) {
        switch (name) {
          case "numFmt" ->
              result.formats.put(xml.count("numFmtId", -1), xml.attribute("formatCode"));
          case "fonts" -> result.readFonts(xml);
          case "cellXfs" -> result.readLooks(xml);
          default -> {}
        }
      }
    }
    return result.looks;
  }

  private static String start(XlsxPart xml) throws XMLStreamException {
    return xml == null ? null : xml.nextStart();
  }

  private void readFonts(XlsxPart xml) throws XMLStreamException {
    int event = xml.next();
    while (event != XMLStreamConstants.END_DOCUMENT && !ends(xml, event, "fonts")) {
      if (event == XMLStreamConstants.START_ELEMENT && xml.name().equals("font")) {
        struckFonts.add(false);
      } else if (event == XMLStreamConstants.START_ELEMENT && xml.name().equals("strike")) {
        boolean off = "0".equals(xml.attribute("val")) || "false".equals(xml.attribute("val"));
        struckFonts.set(struckFonts.size() - 1, !off);
      }
      event = xml.next();
    }
  }

  private void readLooks(XlsxPart xml) throws XMLStreamException {
    int event = xml.next();
    while (event != XMLStreamConstants.END_DOCUMENT && !ends(xml, event, "cellXfs")) {
      if (event == XMLStreamConstants.START_ELEMENT && xml.name().equals("xf")) {
        int format = xml.count("numFmtId", 0);
        int font = xml.count("fontId", 0);
        boolean struck = font >= 0 && font < struckFonts.size() && struckFonts.get(font);
        looks.add(NumberLook.of(format, code(format), struck));
      }
      event = xml.next();
    }
  }

  private static boolean ends(XlsxPart xml, int event, String name) {
    return event == XMLStreamConstants.END_ELEMENT && xml.name().equals(name);
  }

  private String code(int format) {
    String own = formats.get(format);
    return own == null ? BuiltinFormats.getBuiltinFormat(format) : own;
  }
}
