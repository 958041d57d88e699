package roundbook.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder;
import org.apache.xmlbeans.SchemaTypeLoader;
import org.apache.xmlbeans.XmlBeans;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;

/**
 * Prints where the parts of workbooks break the schema of their standard.
 *
 * <p>It runs in a process of its own, before whose class path the whole schema stands; the library
 * carries only the part of it that it needs itself.
 */
final class SchemaFaults {
  /** Parts of the packaging standard, which has schemas of its own. */
  private static final List<String> OF_THE_PACKAGE =
      List.of("[Content_Types].xml", "docProps/core.xml");

  private static final SchemaTypeLoader SCHEMA =
      XmlBeans.typeLoaderUnion(TypeSystemHolder.typeSystem, XmlBeans.getBuiltinTypeSystem());

  private SchemaFaults() {}

  /** Prints a line a fault, and at last how many parts were held to the schema. */
  public static void main(String[] books) throws IOException {
    int parts = 0;
    for (String book : books) {
      try (ZipFile zip = new ZipFile(book)) {
        for (ZipEntry entry : Collections.list(zip.entries())) {
          String name = entry.getName();
          if (name.matches(".*\\.(xml|rels|vml)") && !OF_THE_PACKAGE.contains(name)) {
            parts++;
            for (String fault : faults(zip, entry)) {
              System.out.println(book + " " + name + ": " + fault);
            }
          }
        }
      }
    }
    System.out.println(parts + " parts");
  }

  private static List<String> faults(ZipFile zip, ZipEntry entry) throws IOException {
    List<XmlError> errors = new ArrayList<>();
    try (InputStream in = zip.getInputStream(entry)) {
      XmlObject part = SCHEMA.parse(in, null, new XmlOptions());
      part.validate(new XmlOptions().setErrorListener(errors));
    } catch (XmlException broken) {
      return List.of(broken.getMessage());
    }
    return errors.stream().map(XmlError::getMessage).filter(each -> !isKeepingSpace(each)).toList();
  }

  /**
   * Returns whether a fault is that a text keeps its spaces. The schema forgets that attribute,
   * which the standard's own examples have.
   */
  private static boolean isKeepingSpace(String fault) {
    return fault.contains("space@http://www.w3.org/XML/1998/namespace in element t@");
  }
}
