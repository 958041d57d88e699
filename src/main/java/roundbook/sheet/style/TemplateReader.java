package roundbook.sheet.style;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.page.Cell;
import roundbook.page.PageSetup.Margins;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.style.Look.ContentAlignment;

/** Takes the looks of named cells out of a template workbook. */
final class TemplateReader {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  TemplateReader(String file) {
    this.file = file;
  }

  /** Opens the workbook and reads it; whatever a broken file throws becomes one problem. */
  Read<StyleTemplate> read(byte[] bytes) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      return Read.of(template(workbook), problems);
    } catch (IOException | RuntimeException broken) {
      return Read.failed(List.of(unreadable(broken)));
    }
  }

  private Problem unreadable(Exception broken) {
    String why = String.valueOf(broken.getMessage()).lines().findFirst().orElse("");
    return Problem.of(ProblemCode.NOT_A_WORKBOOK, "template", CellRef.ofFile(file))
        .with("why", why);
  }

  private StyleTemplate template(XSSFWorkbook workbook) {
    Map<Role, Look> looks = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      Look standard = StyleTemplate.standard().look(role);
      Optional<XSSFCell> cell = cell(workbook, StyleTemplate.STYLE + role.name());
      looks.put(role, cell.map(found -> look(found.getCellStyle())).orElse(standard));
    }
    return new StyleTemplate(looks, formats(workbook), margins(workbook));
  }

  private Map<Cell.Format, String> formats(XSSFWorkbook workbook) {
    Map<Cell.Format, String> formats = new EnumMap<>(Cell.Format.class);
    for (Cell.Format format : Cell.Format.values()) {
      Optional<XSSFCell> cell = cell(workbook, StyleTemplate.FORMAT + format.name());
      String code = cell.map(found -> found.getCellStyle().getDataFormatString()).orElse(null);
      formats.put(format, code == null ? format.code() : code);
    }
    return formats;
  }

  private Map<PageKind, Margins> margins(XSSFWorkbook workbook) {
    Map<PageKind, Margins> margins = new EnumMap<>(PageKind.class);
    for (PageKind kind : PageKind.values()) {
      Optional<XSSFCell> cell = cell(workbook, StyleTemplate.PAGE + kind.name());
      Margins standard = StyleTemplate.standard().margins(kind);
      margins.put(kind, cell.map(found -> margins(found.getSheet())).orElse(standard));
    }
    return margins;
  }

  private static Margins margins(XSSFSheet sheet) {
    return new Margins(
        sheet.getMargin(PageMargin.LEFT),
        sheet.getMargin(PageMargin.RIGHT),
        sheet.getMargin(PageMargin.TOP),
        sheet.getMargin(PageMargin.BOTTOM),
        sheet.getMargin(PageMargin.HEADER),
        sheet.getMargin(PageMargin.FOOTER));
  }

  private Optional<XSSFCell> cell(XSSFWorkbook workbook, String name) {
    Name defined = workbook.getName(name);
    Optional<XSSFCell> cell =
        defined == null || defined.isDeleted() ? Optional.empty() : cellOf(workbook, defined);
    if (cell.isEmpty()) {
      CellRef where = CellRef.ofFile(file);
      problems.add(Problem.of(ProblemCode.STYLE_MISSING, where).with("name", name).found(name));
    }
    return cell;
  }

  private static Optional<XSSFCell> cellOf(XSSFWorkbook workbook, Name name) {
    CellReference at =
        new AreaReference(name.getRefersToFormula(), workbook.getSpreadsheetVersion())
            .getFirstCell();
    XSSFSheet sheet = workbook.getSheet(at.getSheetName());
    XSSFRow row = sheet == null ? null : sheet.getRow(at.getRow());
    return Optional.ofNullable(row == null ? null : row.getCell(at.getCol()));
  }

  private static Look look(XSSFCellStyle style) {
    ContentAlignment place =
        new ContentAlignment(
            style.getAlignment(),
            style.getVerticalAlignment(),
            style.getWrapText(),
            style.getIndention());
    return new Look(
        font(style.getFont()),
        ground(style),
        edges(style),
        place,
        String.valueOf(style.getDataFormatString()),
        !style.getLocked());
  }

  private static Look.Font font(XSSFFont font) {
    return new Look.Font(
        font.getFontName(),
        font.getFontHeight() / 20.0,
        font.getBold(),
        font.getItalic(),
        hex(font.getXSSFColor()));
  }

  private static Look.Ground ground(XSSFCellStyle style) {
    if (style.getFillPattern() == FillPatternType.NO_FILL) {
      return Look.Ground.NONE;
    }
    return new Look.Ground(
        style.getFillPattern(),
        hex(style.getFillForegroundXSSFColor()),
        style.getFillPattern() == FillPatternType.SOLID_FOREGROUND
            ? ""
            : hex(style.getFillBackgroundXSSFColor()));
  }

  private static Look.Edges edges(XSSFCellStyle style) {
    return new Look.Edges(
        style.getBorderTop(),
        style.getBorderRight(),
        style.getBorderBottom(),
        style.getBorderLeft());
  }

  /** Returns six digits; a theme's colour is resolved with its tint, an automatic one is empty. */
  private static String hex(XSSFColor colour) {
    byte[] rgb = colour == null || colour.isAuto() ? null : colour.getRGBWithTint();
    if (rgb == null || rgb.length < 3) {
      return "";
    }
    int first = rgb.length - 3;
    return String.format(Locale.ROOT, "%02X%02X%02X", rgb[first], rgb[first + 1], rgb[first + 2]);
  }
}
