package roundbook.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.usermodel.XSSFCell;
import roundbook.table.Cell;
import roundbook.table.Cell.Kind;
import roundbook.table.Row;

/** Turns the cells of a workbook into typed cells, formulas into their stored values. */
final class CellReader {
  private static final Pattern UNIT_IN_FORMAT =
      Pattern.compile("\"?\\s*(\"|in|inch|ft|feet|'|mm|cm|m)\\.?\"?\\s*$");
  private static final int COLUMNS_MOST = 400;

  private final DataFormatter formatter = new DataFormatter(Locale.ROOT);

  CellReader() {
    formatter.setUseCachedValuesForFormulaCells(true);
  }

  Row row(org.apache.poi.ss.usermodel.Row row) {
    List<Cell> cells = new ArrayList<>();
    boolean struck = false;
    for (org.apache.poi.ss.usermodel.Cell cell : row) {
      if (cell.getColumnIndex() < COLUMNS_MOST) {
        cells.add(cell(cell));
        struck |= isStruck(cell);
      }
    }
    return new Row(row.getRowNum() + 1, cells, row.getZeroHeight(), struck);
  }

  private static boolean isStruck(org.apache.poi.ss.usermodel.Cell cell) {
    int font = cell.getCellStyle().getFontIndex();
    return cell.getCellType() != CellType.BLANK
        && cell.getSheet().getWorkbook().getFontAt(font).getStrikeout();
  }

  private Cell cell(org.apache.poi.ss.usermodel.Cell cell) {
    int column = cell.getColumnIndex() + 1;
    boolean formula = cell.getCellType() == CellType.FORMULA;
    if (formula && cell instanceof XSSFCell own && !own.getCTCell().isSetV()) {
      return new Cell(column, Kind.UNCOMPUTED, "=" + cell.getCellFormula(), null, "");
    }
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    return switch (type) {
      case NUMERIC -> number(cell, column);
      case STRING -> Cell.text(column, cell.getStringCellValue());
      case BOOLEAN ->
          new Cell(column, Kind.BOOLEAN, String.valueOf(cell.getBooleanCellValue()), null, "");
      case ERROR ->
          new Cell(
              column,
              Kind.ERROR,
              FormulaError.forInt(cell.getErrorCellValue()).getString(),
              null,
              "");
      default -> Cell.blank(column);
    };
  }

  private Cell number(org.apache.poi.ss.usermodel.Cell cell, int column) {
    double value = cell.getNumericCellValue();
    String format = cell.getCellStyle().getDataFormatString();
    BigDecimal exact = new BigDecimal(NumberToTextConverter.toText(value));
    if (DateUtil.isCellDateFormatted(cell)) {
      return new Cell(column, Kind.DATE, formatter.formatCellValue(cell), exact, "");
    }
    return new Cell(column, Kind.NUMBER, shown(cell, value, format), exact, unit(format));
  }

  /** Returns an id as it is shown, with its leading zeros, and any other number whole. */
  private String shown(org.apache.poi.ss.usermodel.Cell cell, double value, String format) {
    boolean padded = format != null && format.matches("0{2,}");
    return padded ? formatter.formatCellValue(cell) : NumberToTextConverter.toText(value);
  }

  private static String unit(String format) {
    if (format == null || format.equals("General") || format.equals("@")) {
      return "";
    }
    String first = format.split(";")[0].replaceAll("[\\\\]", "");
    Matcher matcher = UNIT_IN_FORMAT.matcher(first);
    if (!first.contains("\"") && !format.contains("\\") || !matcher.find()) {
      return "";
    }
    return switch (matcher.group(1)) {
      case "\"", "inch" -> "in";
      case "'", "feet" -> "ft";
      default -> matcher.group(1);
    };
  }
}
