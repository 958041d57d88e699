package roundbook.sheet.kind;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import roundbook.xml.SafeXml;

/**
 * Reads a workbook that was just written from its first byte to its last.
 *
 * <p>Every part, pictures too, must give the check sum that was written behind it, every part that
 * is XML must be well formed, and the list at the end, by which others open the file, must name
 * each of them. What the cells say is not looked at: that is held by tests.
 */
public final class Intact {
  private static final String SHEETS = "xl/worksheets/sheet";

  private Intact() {}

  /**
   * Reads a workbook.
   *
   * @throws IOException if it is not whole, not well formed, or has no sheet
   */
  public static void check(Path written) throws IOException {
    int parts = 0;
    boolean sheets = false;
    try (InputStream file = new BufferedInputStream(Files.newInputStream(written));
        ZipInputStream zip = new ZipInputStream(file)) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        parts++;
        sheets |= part.getName().startsWith(SHEETS);
        check(part.getName(), zip);
      }
    }
    if (!sheets || parts != listed(written)) {
      throw new IOException("the workbook written is not whole: " + parts + " parts");
    }
  }

  private static void check(String name, ZipInputStream zip) throws IOException {
    if (name.endsWith(".xml") || name.endsWith(".rels") || name.endsWith(".vml")) {
      try {
        XMLStreamReader xml = SafeXml.open(zip);
        while (xml.hasNext()) {
          xml.next();
        }
      } catch (XMLStreamException broken) {
        throw new IOException("the workbook written does not open: " + name, broken);
      }
    }
    // Reads what is left of the part, and compares its sum.
    zip.closeEntry();
  }

  private static int listed(Path written) throws IOException {
    try (ZipFile zip = new ZipFile(written.toFile())) {
      return zip.size();
    }
  }
}
