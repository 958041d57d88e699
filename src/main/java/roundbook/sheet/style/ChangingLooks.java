package roundbook.sheet.style;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorder;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorderPr;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFont;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTNumFmt;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPatternFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STBorderStyle;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;
import roundbook.page.Role;

/**
 * The looks that cells take on while a formula is true, one for each role.
 *
 * <p>The library makes a new one for every rule; a workbook of many rounds would carry hundreds.
 */
public final class ChangingLooks {
  private final XSSFWorkbook workbook;
  private final StyleTemplate template;
  private final Map<Role, Integer> numbers = new EnumMap<>(Role.class);
  private final Map<String, Integer> formats = new HashMap<>();

  public ChangingLooks(XSSFWorkbook workbook, StyleTemplate template) {
    this.workbook = workbook;
    this.template = template;
  }

  /** Returns the number of the looks of a role, made when first needed. */
  public int of(Role role) {
    return numbers.computeIfAbsent(role, key -> put(make(template.look(key))));
  }

  /** Returns the number of looks that only change a number's format. */
  public int of(String format) {
    return formats.computeIfAbsent(format, key -> put(make(key)));
  }

  private int put(CTDxf dxf) {
    return workbook.getStylesSource().putDxf(dxf) - 1;
  }

  private CTDxf make(String format) {
    CTDxf dxf = CTDxf.Factory.newInstance();
    CTNumFmt number = dxf.addNewNumFmt();
    number.setNumFmtId(workbook.createDataFormat().getFormat(format));
    number.setFormatCode(format);
    return dxf;
  }

  private static CTDxf make(Look look) {
    CTDxf dxf = CTDxf.Factory.newInstance();
    font(dxf.addNewFont(), look.font());
    if (look.ground().pattern() != FillPatternType.NO_FILL) {
      fill(dxf.addNewFill().addNewPatternFill(), look.ground());
    }
    if (!look.edges().equals(Look.Edges.NONE)) {
      border(dxf.addNewBorder(), look.edges());
    }
    return dxf;
  }

  private static void font(CTFont font, Look.Font look) {
    font.addNewB().setVal(look.bold());
    font.addNewI().setVal(look.italic());
    if (!look.colour().isEmpty()) {
      font.addNewColor().setRgb(CellStyles.argb(look.colour()));
    }
  }

  /** Writes a fill; in a changing look a solid fill's colour is the one behind the pattern. */
  private static void fill(CTPatternFill fill, Look.Ground ground) {
    boolean solid = ground.pattern() == FillPatternType.SOLID_FOREGROUND;
    fill.setPatternType(STPatternType.Enum.forInt(ground.pattern().getCode() + 1));
    String behind = solid ? ground.colour() : ground.behind();
    if (!solid && !ground.colour().isEmpty()) {
      fill.addNewFgColor().setRgb(CellStyles.argb(ground.colour()));
    }
    if (!behind.isEmpty()) {
      fill.addNewBgColor().setRgb(CellStyles.argb(behind));
    }
  }

  private static void border(CTBorder border, Look.Edges edges) {
    edge(border.addNewLeft(), edges.left());
    edge(border.addNewRight(), edges.right());
    edge(border.addNewTop(), edges.top());
    edge(border.addNewBottom(), edges.bottom());
  }

  /** Writes an edge; spreadsheets allow only thin lines in a changing look. */
  private static void edge(CTBorderPr edge, BorderStyle style) {
    edge.setStyle(style == BorderStyle.NONE ? STBorderStyle.NONE : STBorderStyle.THIN);
  }
}
