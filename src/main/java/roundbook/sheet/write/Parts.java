package roundbook.sheet.write;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.io.output.CloseShieldOutputStream;

/**
 * The parts of a workbook's file, and what each refers to, packed as ECMA-376 part 2 asks.
 *
 * <p>All entries bear the same time, in every time zone. Pictures, packed as they are, are not
 * packed again.
 */
final class Parts {
  /** The first month of a zip file's calendar; its first day would bring in the time zone. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  static final String PICTURE = ".png";

  /** How many bytes go to the file at once; the zip stream itself gives them by 512. */
  private static final int PIECE = 1 << 16;

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final Map<String, List<String>> relations = new LinkedHashMap<>();
  private final Map<String, Part> kinds = new LinkedHashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** Adds a part with a name of its own. */
  String add(Part kind, String name, byte[] content) {
    kinds.put(name, kind);
    parts.put(name, content);
    return name;
  }

  /** Adds one of several parts, which are numbered from 1: {@code xl/charts/chart1.xml}. */
  String add(Part kind, String name, String ending, byte[] content) {
    return add(kind, name + counts.merge(name, 1, Integer::sum) + ending, content);
  }

  /** Lets a part, or the whole file where its name is empty, refer to a part; returns by what. */
  String relate(String from, String to) {
    List<String> known = relations.computeIfAbsent(from, key -> new ArrayList<>());
    if (!known.contains(to)) {
      known.add(to);
    }
    return "rId" + (known.indexOf(to) + 1);
  }

  /** Writes the file and leaves the stream open. */
  void write(OutputStream out) throws IOException {
    OutputStream pieces = new BufferedOutputStream(CloseShieldOutputStream.wrap(out), PIECE);
    try (ZipOutputStream zip = new ZipOutputStream(pieces)) {
      put(zip, "[Content_Types].xml", types());
      for (String part : relations.keySet()) {
        put(zip, relationsOf(part), relations(part));
      }
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        put(zip, part.getKey(), part.getValue());
      }
    }
    out.flush();
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    zip.setLevel(name.endsWith(PICTURE) ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private byte[] types() {
    Xml xml = Xml.part().open("Types").with("xmlns", PACKAGE + "content-types");
    usual(xml, "png", Part.PICTURE.content());
    usual(xml, "rels", "application/vnd.openxmlformats-package.relationships+xml");
    usual(xml, "xml", "application/xml");
    kinds.forEach(
        (name, kind) -> {
          if (kind != Part.PICTURE) {
            xml.open("Override").with("ContentType", kind.content()).with("PartName", "/" + name);
            xml.close();
          }
        });
    return xml.close().bytes();
  }

  private static void usual(Xml xml, String ending, String content) {
    xml.open("Default").with("ContentType", content).with("Extension", ending).close();
  }

  private static String relationsOf(String part) {
    int folder = part.lastIndexOf('/') + 1;
    return part.substring(0, folder) + "_rels/" + part.substring(folder) + ".rels";
  }

  private byte[] relations(String from) {
    Xml xml = Xml.part().open("Relationships").with("xmlns", PACKAGE + "relationships");
    for (String to : relations.get(from)) {
      xml.open("Relationship").with("Id", relate(from, to)).with("Target", seen(to, from));
      xml.with("Type", kinds.get(to).relation()).close();
    }
    return xml.close().bytes();
  }

  /** Returns a part's name as seen from another; all but the first few lie in one folder's. */
  private static String seen(String part, String from) {
    String folder = from.substring(0, from.lastIndexOf('/') + 1);
    return part.startsWith(folder)
        ? part.substring(folder.length())
        : "../" + part.substring(part.indexOf('/') + 1);
  }
}
