package roundbook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Types into the named cells of a workbook, as a crew or another program does. */
final class TypedBook {
  private TypedBook() {}

  /** Changes an open workbook. */
  interface Hand {
    /** Does what the spreadsheet's user does. */
    void on(XSSFWorkbook book);
  }

  /**
   * Types numbers and texts into cells by their names; an empty text clears a cell, one that begins
   * with = is a formula, and DATE is a date.
   */
  static void type(Path file, Map<String, ?> values) throws IOException {
    change(
        file,
        book ->
            values.forEach(
                (name, value) -> {
                  Cell cell = cell(book, name);
                  cell.setBlank();
                  if (value instanceof Number number) {
                    cell.setCellValue(number.doubleValue());
                  } else if (value.equals("DATE")) {
                    cell.setCellValue(java.time.LocalDate.of(2026, 6, 24));
                    CellStyle style = book.createCellStyle();
                    style.setDataFormat((short) 14);
                    cell.setCellStyle(style);
                  } else if (value.toString().startsWith("=")) {
                    cell.setCellFormula(value.toString().substring(1));
                    book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
                  } else if (!value.toString().isEmpty()) {
                    cell.setCellValue(value.toString());
                  }
                }));
  }

  /**
   * Returns what named cells show after numbers were typed, in inches, by the ends of their names;
   * the file stays as it is.
   */
  static Map<String, Double> after(Path file, Map<String, ?> typed, List<String> ends, String name)
      throws IOException {
    Map<String, Double> shown = new TreeMap<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      typed.forEach((cell, value) -> cell(book, cell).setCellValue((Double) value));
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      for (String end : ends) {
        CellValue value = evaluator.evaluate(cell(book, name + end));
        shown.put(end, inches(value));
      }
    }
    return shown;
  }

  private static double inches(CellValue value) {
    return value.getCellType() == CellType.NUMERIC
        ? value.getNumberValue()
        : new LengthReader(LengthUnit.INCH, false)
            .read(value.getStringValue())
            .orElseThrow()
            .length()
            .inches();
  }

  /** Opens a workbook, changes it and saves it under its own name. */
  static void change(Path file, Hand hand) throws IOException {
    Path saved = file.resolveSibling(file.getFileName() + ".saved");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(saved)) {
      hand.on(book);
      book.write(out);
    }
    Files.move(saved, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
  }

  /** Returns the cell of a name. */
  static Cell cell(XSSFWorkbook book, String name) {
    Name defined = book.getName(name);
    if (defined == null) {
      throw new IllegalArgumentException("no cell is named " + name);
    }
    String area = defined.getRefersToFormula().replaceFirst(":.*", "");
    int mark = area.lastIndexOf('!');
    String sheet = area.substring(0, mark).replaceAll("^'|'$", "").replace("''", "'");
    CellReference at = new CellReference(area.substring(mark + 1));
    Row row = book.getSheet(sheet).getRow(at.getRow());
    Row there = row == null ? book.getSheet(sheet).createRow(at.getRow()) : row;
    return there.getCell(at.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }
}
