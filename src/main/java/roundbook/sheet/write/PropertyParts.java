package roundbook.sheet.write;

import java.util.Map;
import roundbook.page.Book;

/** Writes what a file says about itself; nothing of it is taken from the machine. */
final class PropertyParts {
  private static final String PROGRAM = "roundbook";
  private static final String BEGINNING_OF_TIME = "1970-01-01T00:00:00Z";
  private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/";

  /** The set of properties that are a program's own, ECMA-376 part 1, 22.3. */
  private static final String OWN = "{D5CDD505-2E9C-101B-9397-08002B2CF9AE}";

  private final Parts parts;

  PropertyParts(Parts parts) {
    this.parts = parts;
  }

  void add(Book.Properties properties) {
    add(Part.APPLICATION, "docProps/app.xml", application());
    if (!properties.custom().isEmpty()) {
      add(Part.CUSTOM, "docProps/custom.xml", custom(properties.custom()));
    }
    add(Part.CORE, "docProps/core.xml", core(properties));
  }

  private void add(Part kind, String name, Xml xml) {
    parts.relate("", parts.add(kind, name, xml.bytes()));
  }

  private static Xml application() {
    Xml xml = Xml.part().open("Properties").with("xmlns", OFFICE + "extended-properties");
    return xml.text("Application", PROGRAM).close();
  }

  private static Xml custom(Map<String, String> custom) {
    Xml xml = Xml.part().open("Properties").with("xmlns", OFFICE + "custom-properties");
    xml.with("xmlns:vt", OFFICE + "docPropsVTypes");
    int number = 2;
    for (Map.Entry<String, String> property : custom.entrySet()) {
      xml.open("property").with("pid", number++).with("fmtid", OWN);
      xml.with("name", property.getKey()).text("vt:lpwstr", property.getValue()).close();
    }
    return xml.close();
  }

  private static Xml core(Book.Properties properties) {
    Xml xml = Xml.part().open("cp:coreProperties");
    xml.with("xmlns:cp", Parts.PACKAGE + "metadata/core-properties");
    xml.with("xmlns:dc", "http://purl.org/dc/elements/1.1/");
    xml.with("xmlns:dcterms", "http://purl.org/dc/terms/");
    xml.with("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance");
    time(xml, "dcterms:created");
    xml.text("dc:creator", PROGRAM);
    said(xml, "dc:description", properties.description());
    said(xml, "cp:keywords", properties.keywords());
    time(xml, "dcterms:modified");
    said(xml, "dc:subject", properties.subject());
    said(xml, "dc:title", properties.title());
    return xml.close();
  }

  private static void time(Xml xml, String name) {
    xml.open(name).with("xsi:type", "dcterms:W3CDTF");
    xml.inside().append(BEGINNING_OF_TIME);
    xml.close();
  }

  private static void said(Xml xml, String name, String text) {
    if (!text.isEmpty()) {
      xml.text(name, text);
    }
  }
}
