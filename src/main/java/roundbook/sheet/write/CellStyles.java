package roundbook.sheet.write;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.sheet.style.Look;
import roundbook.sheet.style.StyleTemplate;

/**
 * The styles of one workbook, each made once when a cell or a rule first needs it.
 *
 * <p>A style is kept as the XML that tells it; what looks the same is written once.
 */
final class CellStyles {
  /** The first number that a format of a workbook's own may have. */
  private static final int FIRST_FORMAT = 164;

  /** The usual font's size, on which the widths of columns rest: 7/96 in a character. */
  private static final double USUAL_POINTS = 10;

  /** Names of ECMA-376 part 1, 18.18, in the order of the workbook library's constants. */
  private static final List<String> LINES =
      List.of(
          ("none thin medium dashed dotted thick double hair mediumDashed dashDot mediumDashDot"
                  + " dashDotDot mediumDashDotDot slantDashDot")
              .split(" "));

  private static final List<String> PATTERNS =
      List.of(
          ("none solid mediumGray darkGray lightGray darkHorizontal darkVertical darkDown darkUp"
               + " darkGrid darkTrellis lightHorizontal lightVertical lightDown lightUp lightGrid"
               + " lightTrellis gray125 gray0625")
              .split(" "));

  private static final List<String> ACROSS =
      List.of("general left center right fill justify centerContinuous distributed".split(" "));

  private final StyleTemplate template;
  private final Map<Key, Integer> numbers = new HashMap<>();
  private final Map<String, Integer> formats = new LinkedHashMap<>();
  private final Same fonts = new Same();
  private final Same fills = new Same();
  private final Same borders = new Same();
  private final Same cells = new Same();
  private final Same changing = new Same();

  /** Pieces of XML, each once, numbered in the order in which they came. */
  private static final class Same {
    private final Map<String, Integer> pieces = new LinkedHashMap<>();

    int number(Xml piece) {
      String text = piece.toString();
      Integer known = pieces.putIfAbsent(text, pieces.size());
      return known == null ? pieces.size() - 1 : known;
    }

    void write(Xml xml, String name) {
      StringBuilder inside = xml.open(name).with("count", pieces.size()).inside();
      pieces.keySet().forEach(inside::append);
      xml.close();
    }
  }

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

  CellStyles(StyleTemplate template) {
    this.template = template;
    fonts.number(usual(template.look(Role.BODY).font().name()));
    fills.number(fill("none", "", ""));
    fills.number(fill("darkGray", "", ""));
    borders.number(new Xml().open("border").close());
    cells.number(style(0, 0, 0, 0).close());
  }

  /** Returns the number of a cell's style. */
  int of(Cell cell, int heavy) {
    Key key = Key.of(cell, heavy);
    Integer known = numbers.get(key);
    if (known == null) {
      known = cells.number(make(key));
      numbers.put(key, known);
    }
    return known;
  }

  /** Returns the number of the looks that cells of a role take on while a formula is true. */
  int changing(Role role) {
    Look look = template.look(role);
    Xml xml = new Xml().open("dxf").open("font");
    xml.val("b", look.font().bold()).val("i", look.font().italic());
    colour(xml, "color", look.font().colour());
    xml.close();
    Look.Ground ground = look.ground();
    if (ground.pattern() != FillPatternType.NO_FILL) {
      boolean solid = ground.pattern() == FillPatternType.SOLID_FOREGROUND;
      String pattern = PATTERNS.get(ground.pattern().getCode());
      // In a changing look a solid fill's colour is the one behind the pattern.
      Xml fill = solid ? fill(pattern, "", ground.colour()) : fill(pattern, ground);
      xml.inside().append(fill);
    }
    if (!look.edges().equals(Look.Edges.NONE)) {
      xml.inside().append(thin(look.edges()));
    }
    return changing.number(xml.close());
  }

  /** Returns the number of looks that only change a number's format. */
  int changing(String format) {
    Xml xml = new Xml().open("dxf");
    return changing.number(format(xml, format(format), format).close());
  }

  private Xml make(Key key) {
    Look look = template.look(key.role);
    Look.Ground ground = look.ground();
    boolean bare = ground.pattern() == FillPatternType.NO_FILL;
    String code = key.format == Cell.Format.OF_ROLE ? look.format() : template.format(key.format);
    Xml xml =
        style(
            format(code),
            fonts.number(font(look.font())),
            bare ? 0 : fills.number(fill(PATTERNS.get(ground.pattern().getCode()), ground)),
            borders.number(border(look.edges().with(BorderStyle.MEDIUM, key.heavy))));
    for (String applied : List.of("Font", "Fill", "Border", "Alignment", "NumberFormat")) {
      xml.with("apply" + applied, true);
    }
    if (key.quoted) {
      xml.with("quotePrefix", true);
    }
    place(xml, look.place(), key.align);
    return xml.open("protection").with("locked", !look.unlocked()).close().close();
  }

  private static Xml style(int format, int font, int fill, int border) {
    Xml xml = new Xml().open("xf").with("numFmtId", format).with("fontId", font);
    return xml.with("fillId", fill).with("borderId", border).with("xfId", 0);
  }

  private static void place(Xml xml, Look.ContentAlignment place, Cell.Align align) {
    HorizontalAlignment across =
        switch (align) {
          case OF_ROLE -> place.across();
          case LEFT -> HorizontalAlignment.LEFT;
          case CENTRE -> HorizontalAlignment.CENTER;
          case RIGHT -> HorizontalAlignment.RIGHT;
        };
    xml.open("alignment").with("horizontal", ACROSS.get(across.getCode()));
    xml.with("vertical", place.up().name().toLowerCase(Locale.ROOT));
    xml.with("wrapText", place.wrap()).with("indent", place.indent()).close();
  }

  private static Xml usual(String name) {
    Xml xml = new Xml().open("font").val("sz", USUAL_POINTS);
    xml.open("color").with("indexed", 8).close();
    return xml.val("name", name).val("family", 2).val("scheme", "minor").close();
  }

  private static Xml font(Look.Font look) {
    Xml xml = new Xml().open("font").val("name", look.name()).val("sz", look.size());
    if (look.bold()) {
      xml.val("b", true);
    }
    if (look.italic()) {
      xml.val("i", true);
    }
    colour(xml, "color", look.colour());
    return xml.close();
  }

  private static Xml fill(String pattern, Look.Ground ground) {
    return fill(pattern, ground.colour(), ground.behind());
  }

  private static Xml fill(String pattern, String colour, String behind) {
    Xml xml = new Xml().open("fill").open("patternFill").with("patternType", pattern);
    colour(xml, "fgColor", colour);
    colour(xml, "bgColor", behind);
    return xml.close().close();
  }

  /** Writes a colour, opaque; none where the spreadsheet's own is meant. */
  private static void colour(Xml xml, String name, String colour) {
    if (!colour.isEmpty()) {
      xml.open(name).with("rgb", "FF" + colour).close();
    }
  }

  private static Xml border(Look.Edges edges) {
    Xml xml = new Xml().open("border");
    edge(xml, "left", edges.left());
    edge(xml, "right", edges.right());
    edge(xml, "top", edges.top());
    edge(xml, "bottom", edges.bottom());
    return xml.close();
  }

  private static void edge(Xml xml, String side, BorderStyle style) {
    if (style != BorderStyle.NONE) {
      xml.open(side).with("style", LINES.get(style.getCode())).close();
    }
  }

  /** Writes the edges of a changing look, in which spreadsheets allow only thin lines. */
  private static Xml thin(Look.Edges edges) {
    return border(
        new Look.Edges(
            thin(edges.top()), thin(edges.right()), thin(edges.bottom()), thin(edges.left())));
  }

  private static BorderStyle thin(BorderStyle style) {
    return style == BorderStyle.NONE ? style : BorderStyle.THIN;
  }

  /** Returns the number of a format, which is the spreadsheet's own or the workbook's. */
  private int format(String code) {
    int usual = BuiltinFormats.getBuiltinFormat(code);
    return usual >= 0 ? usual : formats.computeIfAbsent(code, key -> FIRST_FORMAT + formats.size());
  }

  private static Xml format(Xml xml, int number, String code) {
    return xml.open("numFmt").with("numFmtId", number).with("formatCode", code).close();
  }

  /**
   * Returns the part of all styles.
   *
   * <p>The first style is named as the usual one, the built-in style 0 of ECMA-376 part 1, 18.8.7,
   * which some readers miss.
   */
  Xml part() {
    Xml xml = Xml.part().open("styleSheet").with("xmlns", BookWriter.SPREADSHEET);
    if (!formats.isEmpty()) {
      xml.open("numFmts").with("count", formats.size());
      formats.forEach((code, number) -> format(xml, number, code));
      xml.close();
    }
    fonts.write(xml, "fonts");
    fills.write(xml, "fills");
    borders.write(xml, "borders");
    xml.open("cellStyleXfs").with("count", 1).open("xf").with("numFmtId", 0).with("fontId", 0);
    xml.with("fillId", 0).with("borderId", 0).close().close();
    cells.write(xml, "cellXfs");
    xml.open("cellStyles").with("count", 1).open("cellStyle").with("name", "Normal");
    xml.with("xfId", 0).with("builtinId", 0).close().close();
    changing.write(xml, "dxfs");
    return xml.close();
  }
}
