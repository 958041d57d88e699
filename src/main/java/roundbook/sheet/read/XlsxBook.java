package roundbook.sheet.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import roundbook.page.Book;
import roundbook.problem.Phrase;
import roundbook.sheet.kind.Guard;
import roundbook.sheet.kind.ZipKind;
import roundbook.table.NamedBook;

/** An open workbook of the zipped XML kind: its sheets, shared texts and cell looks. */
final class XlsxBook implements AutoCloseable {
  private static final long SHEET_LIMIT = 1_000_000_000L;
  private static final long STRINGS_LIMIT = 100_000_000L;
  private static final long OTHER_LIMIT = 50_000_000L;
  private static final String SHEET_ML =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final Set<String> WORKBOOKS =
      Set.of(
          SHEET_ML + "sheet.main+xml",
          SHEET_ML + "template.main+xml",
          "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
          "application/vnd.ms-excel.template.macroEnabled.main+xml");
  private static final String CUSTOM =
      "application/vnd.openxmlformats-officedocument.custom-properties+xml";

  private final String file;
  private final OPCPackage packed;
  private final List<SheetPart> sheets = new ArrayList<>();
  private final List<String> strings;
  private final List<NumberLook> looks;
  private final Map<String, NamedBook.Range> names = new TreeMap<>();
  private final Set<String> lostNames = new TreeSet<>();
  private boolean system1904;

  /** A sheet as the workbook lists it. */
  record SheetPart(String name, boolean hidden, PackagePart part) {}

  private XlsxBook(String file, OPCPackage packed)
      throws IOException, XMLStreamException, InvalidFormatException {
    this.file = file;
    this.packed = packed;
    readSheets(workbook());
    strings = XlsxTexts.read(this);
    looks = XlsxLooks.read(this);
  }

  static XlsxBook open(String file, Path path)
      throws IOException, XMLStreamException, InvalidFormatException {
    ZipKind.check(file, path);
    OPCPackage packed = OPCPackage.open(path.toFile(), PackageAccess.READ);
    try {
      return new XlsxBook(file, packed);
    } catch (IOException | XMLStreamException | InvalidFormatException | RuntimeException broken) {
      packed.revert();
      throw broken;
    }
  }

  List<SheetPart> sheets() {
    return sheets;
  }

  /** Returns the cells of every defined name that is an area of one sheet. */
  Map<String, NamedBook.Range> names() {
    return names;
  }

  /** Returns the defined names whose cells were deleted. */
  Set<String> lostNames() {
    return lostNames;
  }

  /** Returns a shared text by its number. */
  String string(String number) {
    try {
      return strings.get(Integer.parseInt(number.strip()));
    } catch (NumberFormatException | IndexOutOfBoundsException lost) {
      throw Guard.damaged(file, Phrase.of("damage.text"));
    }
  }

  NumberLook look(int index) {
    return index >= 0 && index < looks.size() ? looks.get(index) : XlsxLooks.PLAIN;
  }

  boolean system1904() {
    return system1904;
  }

  String file() {
    return file;
  }

  XlsxPart read(SheetPart sheet) throws IOException, XMLStreamException {
    return XlsxPart.open(sheet.part(), SHEET_LIMIT);
  }

  /** Opens the part of a content type; null when there is none. */
  XlsxPart part(String type) throws IOException, XMLStreamException {
    List<PackagePart> parts = packed.getPartsByContentType(SHEET_ML + type);
    long limit = type.startsWith("shared") ? STRINGS_LIMIT : OTHER_LIMIT;
    return parts.isEmpty() ? null : XlsxPart.open(parts.get(0), limit);
  }

  /** Returns whether this program wrote the workbook for a crew: it is marked or laid out so. */
  boolean isCrew() throws IOException, XMLStreamException {
    boolean rounds = sheets.stream().anyMatch(sheet -> sheet.name().matches("Round \\d\\d+"));
    boolean chart = sheets.stream().anyMatch(sheet -> sheet.name().equals("Notch chart"));
    return property(Book.CREW_PROPERTY) != null || rounds && chart;
  }

  /** Returns the text of a property that a program gave the workbook; null when it has none. */
  String property(String wanted) throws IOException, XMLStreamException {
    for (PackagePart part : packed.getPartsByContentType(CUSTOM)) {
      try (XlsxPart custom = XlsxPart.open(part, OTHER_LIMIT)) {
        for (String name = custom.nextStart(); name != null; name = custom.nextStart()) {
          if (name.equals("property") && wanted.equals(custom.attribute("name"))) {
            return custom.nextStart() == null ? null : custom.textOfElement();
          }
        }
      }
    }
    return null;
  }

  private PackagePart workbook() throws InvalidFormatException {
    for (PackagePart part : packed.getParts()) {
      if (WORKBOOKS.contains(part.getContentType())) {
        return part;
      }
    }
    throw Guard.other(file, ZipKind.of(packed));
  }

  private void readSheets(PackagePart workbook)
      throws IOException, XMLStreamException, InvalidFormatException {
    try (XlsxPart xml = XlsxPart.open(workbook, OTHER_LIMIT)) {
      for (String name = xml.nextStart(); name != null; name = xml.nextStart()) {
        if (name.equals("workbookPr")) {
          system1904 = xml.flag("date1904");
        } else if (name.equals("sheet")) {
          addSheet(workbook, xml);
        } else if (name.equals("definedName") && xml.attribute("localSheetId") == null) {
          String own = xml.attribute("name").toLowerCase(Locale.ROOT);
          String area = xml.elementText();
          DefinedArea.of(area).ifPresent(range -> names.put(own, range));
          if (area.contains("#REF!")) {
            lostNames.add(own);
          }
        }
      }
    }
  }

  /** Adds a sheet that holds cells; chart sheets hold none, and a lost part may have held logs. */
  private void addSheet(PackagePart workbook, XlsxPart xml) throws InvalidFormatException {
    String state = xml.attribute("state");
    boolean hidden = "hidden".equals(state) || "veryHidden".equals(state);
    String id = xml.attribute("id");
    PackageRelationship relation = id == null ? null : workbook.getRelationship(id);
    PackagePart part =
        relation == null
            ? null
            : packed.getPart(PackagingURIHelper.createPartName(relation.getTargetURI()));
    if (part == null) {
      throw Guard.damaged(file, Phrase.of("damage.sheet").with("sheet", xml.attribute("name")));
    }
    if (part.getContentType().endsWith("worksheet+xml")) {
      sheets.add(new SheetPart(xml.attribute("name"), hidden, part));
    }
  }

  @Override
  public void close() {
    packed.revert();
  }
}
