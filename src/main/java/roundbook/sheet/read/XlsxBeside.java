package roundbook.sheet.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import roundbook.table.Cell;
import roundbook.table.NamedBook;

/**
 * What stands beside the cells of a sheet: comments, and cells merged downwards, which hold for
 * every row that they cover.
 *
 * <p>A sheet's merged cells stand after all of its rows, so a part that names any is read twice; of
 * a part longer than any tally with merged cells they are left, and the cells below stay empty.
 */
final class XlsxBeside {
  private static final long LONGEST = 20_000_000;
  private static final String COMMENTS = "/comments";
  private static final String MERGED = "mergeCell";

  private final Map<Integer, String> notes = new HashMap<>();
  private final List<NamedBook.Range> merged = new ArrayList<>();
  private final Map<NamedBook.Range, Cell> tops = new HashMap<>();

  private XlsxBeside() {}

  static XlsxBeside of(XlsxBook book, XlsxBook.SheetPart sheet)
      throws IOException, XMLStreamException, InvalidFormatException {
    XlsxBeside beside = new XlsxBeside();
    long size = sheet.part().getSize();
    if (size >= 0 && size <= LONGEST && hasMerged(sheet.part())) {
      try (XlsxPart xml = book.read(sheet)) {
        beside.readMerged(xml);
      }
    }
    for (PackageRelationship relation : sheet.part().getRelationships()) {
      if (relation.getRelationshipType().endsWith(COMMENTS)) {
        PackagePart part =
            sheet
                .part()
                .getPackage()
                .getPart(PackagingURIHelper.createPartName(relation.getTargetURI()));
        if (part != null) {
          beside.readNotes(part);
        }
      }
    }
    return beside;
  }

  /**
   * Looks for the name alone, in a tenth of the time that the XML takes; UTF-16 is not looked at.
   */
  private static boolean hasMerged(PackagePart part) throws IOException {
    byte[] buffer = new byte[1 << 14];
    int found = 0;
    long all = 0;
    try (InputStream in = part.getInputStream()) {
      for (int count = in.read(buffer); count > 0 && all <= LONGEST; count = in.read(buffer)) {
        if (all == 0 && (buffer[0] == (byte) 0xFE || buffer[0] == (byte) 0xFF)) {
          return true;
        }
        all += count;
        for (int i = 0; i < count; i++) {
          byte next = buffer[i];
          found = next == MERGED.charAt(found) ? found + 1 : next == MERGED.charAt(0) ? 1 : 0;
          if (found == MERGED.length()) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private void readMerged(XlsxPart xml) throws XMLStreamException {
    for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
      if (name.equals(MERGED) && xml.attribute("ref") != null) {
        DefinedArea.of("x!" + xml.attribute("ref"))
            .filter(range -> range.bottom() > range.top())
            .ifPresent(merged::add);
      }
    }
  }

  /** Reads comments; a damaged part loses its own and keeps no tally from being read. */
  private void readNotes(PackagePart part) {
    try (XlsxPart xml = XlsxPart.open(part, LONGEST)) {
      readNotes(xml);
    } catch (IOException | XMLStreamException | RuntimeException broken) {
      notes.clear();
    }
  }

  private void readNotes(XlsxPart xml) throws XMLStreamException {
    for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
      if (name.equals("comment")) {
        String address = String.valueOf(xml.attribute("ref")).replaceAll("\\D", "");
        String text = Cell.strip(text(xml));
        if (!address.isEmpty() && address.length() < 8 && !text.isEmpty()) {
          notes.merge(Integer.parseInt(address), text, (one, other) -> one + " " + other);
        }
      }
    }
  }

  /** Returns the texts of a comment but for those written for speech. */
  private static String text(XlsxPart xml) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    boolean inside = false;
    for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        inside = xml.name().equals("t");
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.name().equals("comment")) {
          break;
        }
        inside = false;
      } else if (inside && XlsxTexts.isText(event)) {
        text.append(xml.text());
      }
    }
    return text.toString();
  }

  /** Returns what was written beside a row; empty where nothing was. */
  String note(int row) {
    return notes.getOrDefault(row, "");
  }

  /** Adds to the cells of a row those that are merged down to it from above. */
  List<Cell> filled(int row, List<Cell> cells) {
    if (merged.isEmpty()) {
      return cells;
    }
    List<Cell> all = new ArrayList<>(cells);
    for (NamedBook.Range range : merged) {
      if (range.top() == row) {
        cells.stream()
            .filter(cell -> cell.column() == range.left())
            .findFirst()
            .ifPresent(cell -> tops.put(range, cell));
      } else if (range.top() < row && row <= range.bottom() && tops.containsKey(range)) {
        all.add(tops.get(range));
      }
    }
    all.sort(Comparator.comparingInt(Cell::column));
    return all;
  }
}
