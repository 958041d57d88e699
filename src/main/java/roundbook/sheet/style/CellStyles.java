package roundbook.sheet.style;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTStylesheet;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.sheet.style.Look.ContentAlignment;

/** The styles of one workbook, each made once when a cell first needs it. */
public final class CellStyles {
  private final XSSFWorkbook workbook;
  private final StyleTemplate template;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<Look.Font, XSSFFont> fonts = new HashMap<>();

  /**
   * What makes a style different from another.
   *
   * @param heavy the sides with a heavy border besides the role's own (1 top, 2 right, 4, 8)
   * @param quoted whether the text would be taken for a formula if it were typed again
   */
  record Key(Role role, Cell.Format format, Cell.Align align, int heavy, boolean quoted) {
    private static final String LIKE_A_FORMULA = "=+-@'";

    static Key of(Cell cell, int heavy) {
      boolean quoted =
          cell.value() instanceof Cell.Text text
              && !text.text().isEmpty()
              && LIKE_A_FORMULA.indexOf(text.text().charAt(0)) >= 0;
      return new Key(cell.role(), cell.format(), cell.align(), heavy, quoted);
    }

    /** Compares as any record does, without what a record must first link to do so. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Key key
          && role == key.role
          && format == key.format
          && align == key.align
          && heavy == key.heavy
          && quoted == key.quoted;
    }

    @Override
    public int hashCode() {
      int look = (role.hashCode() * 31 + format.hashCode()) * 31 + align.hashCode();
      return (look * 16 + heavy) * 2 + (quoted ? 1 : 0);
    }
  }

  /** The usual font's size, on which the widths of columns rest: 7/96 in a character. */
  private static final double USUAL_POINTS = 10;

  public CellStyles(XSSFWorkbook workbook, StyleTemplate template) {
    this.workbook = workbook;
    this.template = template;
    Look.Font usual = template.look(Role.BODY).font();
    workbook.getFontAt(0).setFontName(usual.name());
    workbook.getFontAt(0).setFontHeight(USUAL_POINTS);
    nameTheUsual(workbook.getStylesSource().getCTStylesheet());
  }

  /**
   * Names the first style as the usual one, which some readers miss.
   *
   * <p>It is the built-in style 0 of ECMA-376 part 1, 18.8.7; the library's small schema has no
   * type for it.
   */
  private static void nameTheUsual(CTStylesheet sheet) {
    try (XmlCursor cursor = sheet.newCursor()) {
      String space = cursor.getName().getNamespaceURI();
      cursor.toEndToken();
      cursor.beginElement("cellStyles", space);
      cursor.insertAttributeWithValue("count", "1");
      cursor.beginElement("cellStyle", space);
      cursor.insertAttributeWithValue("name", "Normal");
      cursor.insertAttributeWithValue("xfId", "0");
      cursor.insertAttributeWithValue("builtinId", "0");
    }
  }

  /** Returns the style of a cell. */
  public XSSFCellStyle of(Cell cell, int heavy) {
    return styles.computeIfAbsent(Key.of(cell, heavy), this::make);
  }

  private XSSFCellStyle make(Key key) {
    Look look = template.look(key.role);
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(fonts.computeIfAbsent(look.font(), this::font));
    paint(style, look.ground());
    border(style, look.edges().with(BorderStyle.MEDIUM, key.heavy));
    place(style, look.place(), key.align);
    format(style, code(key, look));
    style.setLocked(!look.unlocked());
    style.setQuotePrefixed(key.quoted);
    return style;
  }

  /** Sets a format unless it is the usual one, which would show true and false as numbers. */
  private void format(XSSFCellStyle style, String code) {
    if (!code.equals("General")) {
      style.setDataFormat(workbook.createDataFormat().getFormat(code));
    }
  }

  private String code(Key key, Look look) {
    return key.format == Cell.Format.OF_ROLE ? look.format() : template.format(key.format);
  }

  private XSSFFont font(Look.Font look) {
    XSSFFont font = workbook.createFont();
    font.setFontName(look.name());
    font.setFontHeight(look.size());
    font.setBold(look.bold());
    font.setItalic(look.italic());
    if (!look.colour().isEmpty()) {
      font.setColor(colour(look.colour()));
    }
    return font;
  }

  private static void paint(XSSFCellStyle style, Look.Ground ground) {
    if (ground.pattern() == FillPatternType.NO_FILL) {
      return;
    }
    style.setFillPattern(ground.pattern());
    if (!ground.colour().isEmpty()) {
      style.setFillForegroundColor(colour(ground.colour()));
    }
    if (!ground.behind().isEmpty()) {
      style.setFillBackgroundColor(colour(ground.behind()));
    }
  }

  private static void border(XSSFCellStyle style, Look.Edges edges) {
    style.setBorderTop(edges.top());
    style.setBorderRight(edges.right());
    style.setBorderBottom(edges.bottom());
    style.setBorderLeft(edges.left());
  }

  private static void place(XSSFCellStyle style, ContentAlignment place, Cell.Align align) {
    style.setAlignment(across(place.across(), align));
    style.setVerticalAlignment(place.up());
    style.setWrapText(place.wrap());
    style.setIndention((short) place.indent());
  }

  private static HorizontalAlignment across(HorizontalAlignment ofRole, Cell.Align align) {
    return switch (align) {
      case OF_ROLE -> ofRole;
      case LEFT -> HorizontalAlignment.LEFT;
      case CENTRE -> HorizontalAlignment.CENTER;
      case RIGHT -> HorizontalAlignment.RIGHT;
    };
  }

  private static XSSFColor colour(String hex) {
    return new XSSFColor(argb(hex), null);
  }

  /** Returns a colour's four bytes as a workbook has them: opaque, red, green, blue. */
  static byte[] argb(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new byte[] {-1, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
  }
}
