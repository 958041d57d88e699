package roundbook.sheet.kind;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Says in words what a zipped file is that is no workbook of the XML kind. */
public final class ZipKind {
  private static final int TYPE_LENGTH = 200;
  private static final String TYPES = "[Content_Types].xml";

  private ZipKind() {}

  /** Returns the key of what an office package with parts of these types is, if no workbook. */
  public static String of(Collection<String> types) {
    for (String type : types) {
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

  /** Refuses a zip file that is no office package. */
  public static void check(String file, ZipFile zip) throws IOException {
    String other = of(zip);
    if (!other.isEmpty()) {
      throw Guard.other(file, other);
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
