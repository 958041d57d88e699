package roundbook.harvester;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import roundbook.xml.SafeXml;

/**
 * Reads the trees of a StanForD 2010 harvested production message, one at a time.
 *
 * <p>Elements are known by their local names, whatever the namespace's prefix or version. Document
 * types and outside entities are refused.
 */
final class StemReader {
  private final XMLStreamReader xml;
  private final Map<String, String> species = new HashMap<>();
  private final Map<String, String> products = new HashMap<>();
  private String lengthUnit = "";
  private String diameterUnit = "";
  private String root = "";
  private int bundled;

  StemReader(InputStream in) throws IOException, XMLStreamException {
    xml = SafeXml.open(in);
  }

  /** Says that a file declares a document type, through which it could reach other files. */
  static final class DocumentType extends XMLStreamException {
    private static final long serialVersionUID = 1L;
  }

  /** Reads up to the root element and returns its name. */
  String root() throws XMLStreamException {
    while (root.isEmpty() && xml.hasNext()) {
      if (next() == XMLStreamConstants.START_ELEMENT) {
        root = xml.getLocalName();
        lengthUnit = attribute("lengthUnit");
        diameterUnit = attribute("diameterUnit");
      }
    }
    return root;
  }

  String lengthUnit() {
    return lengthUnit;
  }

  String diameterUnit() {
    return diameterUnit;
  }

  /** Returns how many logs of trees processed in bundles were passed over. */
  int bundled() {
    return bundled;
  }

  String species(String key) {
    return species.getOrDefault(key, "");
  }

  String product(String key) {
    return products.getOrDefault(key, key);
  }

  /** Gives each tree to the taker until it wants no more; returns whether it had them all. */
  boolean eachStem(Predicate<Stem> taker) throws XMLStreamException {
    while (xml.hasNext()) {
      if (next() == XMLStreamConstants.START_ELEMENT) {
        String name = xml.getLocalName();
        if (name.equals("SpeciesGroupDefinition")) {
          define(species, name, "SpeciesGroupKey", "SpeciesGroupName");
        } else if (name.equals("ProductDefinition")) {
          define(products, name, "ProductKey", "ProductName");
        } else if (name.equals("Stem") && !taker.test(stem())) {
          return false;
        }
      }
    }
    return true;
  }

  private void define(Map<String, String> names, String element, String key, String name)
      throws XMLStreamException {
    String foundKey = "";
    String foundName = "";
    while (!ends(element)) {
      if (starts(key) && foundKey.isEmpty()) {
        foundKey = text();
      } else if (starts(name) && foundName.isEmpty()) {
        foundName = text();
      }
    }
    names.put(foundKey, foundName);
  }

  private Stem stem() throws XMLStreamException {
    Stem stem = new Stem(xml.getLocation().getLineNumber());
    while (!ends("Stem")) {
      if (starts("StemKey")) {
        stem.key = text();
      } else if (starts("SpeciesGroupKey")) {
        stem.speciesKey = text();
      } else if (starts("StemDiameters")) {
        profile(stem);
      } else if (starts("MultiTreeProcessedStem")) {
        bundle();
      } else if (starts("Log")) {
        stem.logs.add(log());
      }
    }
    return stem;
  }

  /** Trees processed in bundles have no diameters of their own. */
  private void bundle() throws XMLStreamException {
    while (!ends("MultiTreeProcessedStem")) {
      bundled += starts("Log") ? 1 : 0;
    }
  }

  private void profile(Stem stem) throws XMLStreamException {
    stem.overBark =
        !attribute("diameterCategory").toLowerCase(java.util.Locale.ROOT).contains("under");
    while (!ends("StemDiameters")) {
      if (starts("DiameterValue")) {
        double position = number(attribute("diameterPosition"));
        double diameter = number(text());
        if (!Double.isNaN(position) && !Double.isNaN(diameter)) {
          stem.profile.put(position, diameter);
        }
      }
    }
  }

  private CutLog log() throws XMLStreamException {
    CutLog log = new CutLog(xml.getLocation().getLineNumber());
    while (!ends("Log")) {
      if (starts("LogKey")) {
        log.key = text();
      } else if (starts("ProductKey")) {
        log.product = text();
      } else if (starts("StartPos")) {
        log.start = number(text());
      } else if (starts("LogMeasurement")) {
        measurement(log);
      }
    }
    return log;
  }

  /** Reads the machine's measurement; a manual control beside it is passed over. */
  private void measurement(CutLog log) throws XMLStreamException {
    String category = attribute("logMeasurementCategory");
    boolean wanted = category.isEmpty() || category.equalsIgnoreCase("Machine");
    while (!ends("LogMeasurement")) {
      if (starts("LogLength")) {
        double length = number(text());
        log.length = wanted ? length : log.length;
      } else if (starts("LogDiameter")) {
        String place = attribute("logDiameterCategory");
        double diameter = number(text());
        if (wanted && diameter > 0) {
          log.put(place, diameter);
        }
      }
    }
  }

  /** Goes on to the next event; returns whether it ends an element or the file. */
  private boolean ends(String element) throws XMLStreamException {
    if (!xml.hasNext()) {
      return true;
    }
    return next() == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element);
  }

  private boolean starts(String element) {
    return xml.isStartElement() && xml.getLocalName().equals(element);
  }

  private int next() throws XMLStreamException {
    int event = xml.next();
    if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
      throw new DocumentType();
    }
    return event;
  }

  private String attribute(String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value.strip();
  }

  /** Returns the text of an element without elements in it; stands at its end afterwards. */
  private String text() throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    int depth = 1;
    while (depth > 0 && xml.hasNext()) {
      int event = next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (xml.isCharacters()) {
        text.append(xml.getText());
      }
    }
    return text.toString().strip();
  }

  private static double number(String text) {
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) && number >= 0 ? number : Double.NaN;
    } catch (NumberFormatException broken) {
      return Double.NaN;
    }
  }
}
