package roundbook.markup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A kind of markup that holds tables. */
public enum Markup {
  /** OpenDocument in a zip file (.ods). */
  PACKED,
  /** OpenDocument as one XML file (.fods). */
  FLAT,
  /** The spreadsheet XML of 2003. */
  XML_2003,
  /** A web page. */
  PAGE;

  private static final int HEAD = 8192;
  private static final String SPREADSHEET = "application/vnd.oasis.opendocument.spreadsheet";

  /** Tells what an XML file is by its beginning; empty when it is none of these. */
  public static Optional<Markup> ofXml(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.ISO_8859_1).replace("\0", "");
      if (head.contains("urn:schemas-microsoft-com:office:spreadsheet")) {
        return Optional.of(XML_2003);
      }
      boolean flat = head.contains("office:document") && head.contains(SPREADSHEET);
      return flat ? Optional.of(FLAT) : Optional.empty();
    }
  }

  /** Returns whether a zip file is an OpenDocument spreadsheet, and no other. */
  public static boolean isPacked(Path path) {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      ZipEntry type = zip.getEntry("mimetype");
      if (type == null) {
        return false;
      }
      try (InputStream in = zip.getInputStream(type)) {
        String text = new String(in.readNBytes(HEAD), StandardCharsets.US_ASCII);
        return text.strip().startsWith(SPREADSHEET);
      }
    } catch (IOException broken) {
      return false;
    }
  }
}
