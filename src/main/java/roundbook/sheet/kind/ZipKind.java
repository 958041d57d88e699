package roundbook.sheet.kind;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;

/** Says in words what a zipped file is that is no workbook of the XML kind. */
public final class ZipKind {
  private static final int TYPE_LENGTH = 200;
  private static final long MOST_LISTED = 5_000_000;
  private static final String TYPES = "[Content_Types].xml";

  private ZipKind() {}

  /** Returns the key of what an office package holds when it is no workbook. */
  public static String of(OPCPackage packed) throws InvalidFormatException {
    for (PackagePart part : packed.getParts()) {
      String type = part.getContentType();
      if (type.contains("sheet.binary")) {
        return "what.xlsb";
      }
      if (type.contains("wordprocessingml")) {
        return "what.docx";
      }
      if (type.contains("presentationml")) {
        return "what.pptx";
      }
    }
    return "what.zip";
  }

  /**
   * Refuses a zip file that is no office package, and one whose lists of parts and of what belongs
   * to what are so long that the library, which holds them as trees, would be busy for minutes.
   */
  public static void check(String file, Path path) throws IOException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      String other = of(zip);
      if (!other.isEmpty()) {
        throw Guard.other(file, other);
      }
      long left = MOST_LISTED;
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry.getName().endsWith(".rels") || entry.getName().equalsIgnoreCase(TYPES)) {
          left -= length(zip, entry, left);
        }
      }
      if (left < 0) {
        throw Guard.over("lists", file, MOST_LISTED);
      }
    }
  }

  /** Returns how long a part is unpacked, or a little more than the most that is looked at. */
  private static long length(ZipFile zip, ZipEntry entry, long most) throws IOException {
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] piece = new byte[8192];
      long sum = 0;
      for (int read = in.read(piece); read > 0 && sum <= most; read = in.read(piece)) {
        sum += read;
      }
      return sum;
    }
  }

  /** Returns the key of what a zip file is that is no office package; empty when it may be one. */
  private static String of(ZipFile zip) throws IOException {
    ZipEntry type = zip.getEntry("mimetype");
    if (type != null) {
      try (InputStream in = zip.getInputStream(type)) {
        return openDocument(new String(in.readNBytes(TYPE_LENGTH), StandardCharsets.US_ASCII));
      }
    }
    if (zip.stream().anyMatch(entry -> entry.getName().endsWith(".iwa"))) {
      return "what.numbers";
    }
    return zip.getEntry(TYPES) == null ? "what.zip" : "";
  }

  private static String openDocument(String type) {
    return type.contains("spreadsheet") ? "what.ods" : "what.open-document";
  }
}
