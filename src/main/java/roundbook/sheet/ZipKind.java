package roundbook.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;

/** Says in words what a zipped file is that is no workbook of the XML kind. */
final class ZipKind {
  private static final int TYPE_LENGTH = 200;

  private ZipKind() {}

  /** Says what an office package holds when it is no workbook. */
  static String of(OPCPackage packed) throws InvalidFormatException {
    for (PackagePart part : packed.getParts()) {
      String type = part.getContentType();
      if (type.contains("sheet.binary")) {
        return "a binary workbook (.xlsb)";
      }
      if (type.contains("wordprocessingml")) {
        return "a text document (.docx)";
      }
      if (type.contains("presentationml")) {
        return "a presentation (.pptx)";
      }
    }
    return "a zip file without a workbook in it";
  }

  /** Says what a zip file is that is no office package; empty when it may be one. */
  static String of(Path path) throws IOException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      ZipEntry type = zip.getEntry("mimetype");
      if (type != null) {
        try (InputStream in = zip.getInputStream(type)) {
          return openDocument(new String(in.readNBytes(TYPE_LENGTH), StandardCharsets.US_ASCII));
        }
      }
      return zip.getEntry("[Content_Types].xml") == null
          ? "a zip file without a workbook in it"
          : "";
    }
  }

  private static String openDocument(String type) {
    return type.contains("spreadsheet")
        ? "an OpenDocument spreadsheet (.ods)"
        : "an OpenDocument file, but no spreadsheet that can be read";
  }
}
