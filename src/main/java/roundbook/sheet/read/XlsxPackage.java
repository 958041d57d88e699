package roundbook.sheet.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import roundbook.problem.ProblemCode;
import roundbook.sheet.kind.Guard;
import roundbook.sheet.kind.ZipKind;
import roundbook.xml.Limited;

/**
 * The parts of a workbook of the zipped XML kind: what each is, and what it refers to (ECMA-376
 * part 2). Names of parts are the same in upper and lower case.
 *
 * <p>A part may unpack to its limit, and to no more than a hundred times what it is packed, which
 * only blanks and the like exceed.
 */
final class XlsxPackage implements AutoCloseable {
  private static final String TYPES = "[Content_Types].xml";
  private static final long LISTS_LIMIT = 5_000_000;
  private static final int MOST_PARTS = 1000;
  private static final long MOST_RATIO = 100;
  private static final long ANY_RATIO = 100_000;

  private final ZipFile zip;
  private final Map<String, ZipEntry> entries = new TreeMap<>();
  private final Map<String, String> types = new HashMap<>();

  /** What a part refers to: the kind of reference, and the name of the part. */
  record Relation(String type, String part) {}

  private XlsxPackage(String file, ZipFile zip) throws IOException, XMLStreamException {
    this.zip = zip;
    ZipKind.check(file, zip);
    if (zip.size() > MOST_PARTS) {
      throw Guard.stop(ProblemCode.TOO_LARGE, "parts", file);
    }
    zip.stream().forEach(entry -> entries.putIfAbsent(plain(entry.getName()), entry));
    readTypes();
  }

  static XlsxPackage open(String file, Path path) throws IOException, XMLStreamException {
    ZipFile zip = new ZipFile(path.toFile());
    try {
      return new XlsxPackage(file, zip);
    } catch (IOException | XMLStreamException | RuntimeException broken) {
      zip.close();
      throw broken;
    }
  }

  private static String plain(String name) {
    String slashed = name.replace('\\', '/').toLowerCase(Locale.ROOT);
    return slashed.startsWith("/") ? slashed.substring(1) : slashed;
  }

  private void readTypes() throws IOException, XMLStreamException {
    try (XlsxPart xml = open(plain(TYPES), LISTS_LIMIT)) {
      for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
        if (name.equals("Override")) {
          types.put(plain(xml.wanted("PartName")), xml.wanted("ContentType"));
        } else if (name.equals("Default")) {
          types.put("." + plain(xml.wanted("Extension")), xml.wanted("ContentType"));
        }
      }
    }
  }

  /** Returns what a part is; empty where there is no such part or nothing says what it is. */
  String type(String part) {
    if (!entries.containsKey(part)) {
      return "";
    }
    String ending = part.substring(Math.max(0, part.lastIndexOf('.')));
    return types.getOrDefault(part, types.getOrDefault(ending, ""));
  }

  /** Returns what all parts are. */
  Collection<String> types() {
    return entries.keySet().stream().map(this::type).toList();
  }

  /** Returns the parts that are of one of these types. */
  List<String> parts(Collection<String> wanted) {
    return entries.keySet().stream().filter(part -> wanted.contains(type(part))).toList();
  }

  /** Returns how long a part is unpacked, as far as the file says; below 0 where it does not. */
  long size(String part) {
    return entries.get(part).getSize();
  }

  InputStream bytes(String part) throws IOException {
    return zip.getInputStream(entries.get(part));
  }

  XlsxPart open(String part, long limit) throws IOException, XMLStreamException {
    long packed = MOST_RATIO * entries.get(part).getCompressedSize();
    return XlsxPart.open(new Limited(bytes(part), Math.min(limit, Math.max(ANY_RATIO, packed))));
  }

  /** Returns what a part refers to within the file, by the ids of the references. */
  Map<String, Relation> relations(String part) throws IOException, XMLStreamException {
    String folder = part.substring(0, part.lastIndexOf('/') + 1);
    String list = folder + "_rels/" + part.substring(folder.length()) + ".rels";
    Map<String, Relation> relations = new LinkedHashMap<>();
    if (entries.containsKey(list)) {
      try (XlsxPart xml = open(list, LISTS_LIMIT)) {
        for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
          if (name.equals("Relationship") && !"External".equals(xml.attribute("TargetMode"))) {
            String target = named(folder, xml.wanted("Target"));
            relations.put(xml.wanted("Id"), new Relation(xml.wanted("Type"), target));
          }
        }
      }
    }
    return relations;
  }

  /** Returns the name of a part that is told as seen from a folder. */
  private static String named(String folder, String target) {
    String slashed = target.replace('\\', '/');
    List<String> steps = new ArrayList<>();
    for (String step : (slashed.startsWith("/") ? slashed : folder + slashed).split("/")) {
      if (step.equals("..") && !steps.isEmpty()) {
        steps.remove(steps.size() - 1);
      } else if (!step.isEmpty() && !step.equals(".")) {
        steps.add(step);
      }
    }
    return plain(String.join("/", steps));
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
