package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Makes a workbook from a text, a line a row, cells parted by {@code |}.
 *
 * <p>A number is a number, {@code '7} is text, with blanks for {@code _}, {@code @format@7} a
 * number with that format, {@code =1+1} a formula without a stored value, {@code =1+1 -> 2} one
 * with it, {@code #N/A} an error, {@code TRUE} a boolean. {@code sheet NAME} begins a sheet, {@code
 * sheet NAME hidden} a hidden one; {@code row 9} goes to a row; {@code hidden:} and {@code struck:}
 * before a row say how it is; {@code merge A1:B1} merges cells.
 */
final class BookText {
  private final Workbook book;
  private final Map<String, CellStyle> styles = new HashMap<>();
  private Sheet sheet;
  private int next;

  private BookText(Workbook book) {
    this.book = book;
  }

  /** Writes the workbook, of the old binary kind where the file's name ends in xls. */
  static void write(List<String> lines, Path file) throws IOException {
    boolean old = file.toString().endsWith(".xls");
    try (Workbook book = old ? new HSSFWorkbook() : new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      BookText text = new BookText(book);
      lines.forEach(text::line);
      book.write(out);
    }
  }

  private void line(String line) {
    if (line.startsWith("sheet ")) {
      boolean hidden = line.endsWith(" hidden");
      sheet = book.createSheet(hidden ? line.substring(6, line.length() - 7) : line.substring(6));
      book.setSheetVisibility(
          book.getSheetIndex(sheet), hidden ? SheetVisibility.HIDDEN : SheetVisibility.VISIBLE);
      next = 0;
    } else if (line.startsWith("row ")) {
      next = Integer.parseInt(line.substring(4)) - 1;
    } else if (line.startsWith("merge ")) {
      sheet.addMergedRegion(CellRangeAddress.valueOf(line.substring(6)));
    } else {
      row(line);
    }
  }

  private void row(String line) {
    Row row = sheet.createRow(next++);
    boolean hidden = line.startsWith("hidden:");
    boolean struck = line.startsWith("struck:");
    row.setZeroHeight(hidden);
    String[] cells = (hidden || struck ? line.substring(7) : line).split("\\|", -1);
    for (int i = 0; i < cells.length; i++) {
      String text = cells[i].strip();
      if (!text.isEmpty()) {
        fill(row.createCell(i), text, struck);
      }
    }
  }

  private void fill(Cell cell, String text, boolean struck) {
    String format = "";
    String value = text;
    if (text.startsWith("@")) {
      format = text.substring(1, text.indexOf('@', 1));
      value = text.substring(text.indexOf('@', 1) + 1);
    }
    if (struck || !format.isEmpty()) {
      cell.setCellStyle(style(format, struck));
    }
    if (value.startsWith("=")) {
      formula(cell, value);
    } else if (value.equals("#N/A")) {
      cell.setCellErrorValue(FormulaError.NA.getCode());
    } else if (value.equals("TRUE")) {
      cell.setCellValue(true);
    } else if (value.matches("-?\\d+(?:\\.\\d+)?")) {
      cell.setCellValue(Double.parseDouble(value));
    } else {
      cell.setCellValue(value.startsWith("'") ? value.substring(1).replace('_', ' ') : value);
    }
  }

  private void formula(Cell cell, String value) {
    String[] parts = value.substring(1).split(" -> ");
    cell.setCellFormula(parts[0]);
    if (parts.length > 1) {
      cell.setCellValue(Double.parseDouble(parts[1]));
    }
  }

  private CellStyle style(String format, boolean struck) {
    return styles.computeIfAbsent(
        format + struck,
        key -> {
          CellStyle style = book.createCellStyle();
          if (!format.isEmpty()) {
            style.setDataFormat(book.createDataFormat().getFormat(format));
          }
          Font font = book.createFont();
          font.setStrikeout(struck);
          style.setFont(font);
          return style;
        });
  }
}
