package roundbook.sheet.write;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.xssf.usermodel.XSSFRelation;

/** The pictures of one workbook, equal ones being stored once. */
final class PictureParts {
  private final OPCPackage file;
  private final Map<Integer, List<Stored>> byHash = new HashMap<>();
  private int count;

  private record Stored(byte[] png, PackagePart part) {}

  PictureParts(OPCPackage file) {
    this.file = file;
  }

  /** Returns the part that holds a picture, written when it is new. */
  PackagePart of(byte[] png) throws IOException {
    List<Stored> alike = byHash.computeIfAbsent(Arrays.hashCode(png), key -> new ArrayList<>());
    for (Stored stored : alike) {
      if (Arrays.equals(stored.png, png)) {
        return stored.part;
      }
    }
    Stored stored = new Stored(png, store(png));
    alike.add(stored);
    return stored.part;
  }

  private PackagePart store(byte[] png) throws IOException {
    count++;
    PackagePart part =
        file.createPart(
            DrawingWriter.name("/xl/media/image" + count + ".png"),
            XSSFRelation.IMAGE_PNG.getContentType());
    try (OutputStream out = part.getOutputStream()) {
      out.write(png);
    }
    return part;
  }
}
