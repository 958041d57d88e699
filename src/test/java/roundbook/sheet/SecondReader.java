package roundbook.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.sheet.write.CellText;

/** Reads a written workbook with a reader that has nothing to do with the writer. */
public final class SecondReader {
  private SecondReader() {}

  /** Returns one line for each cell of a book that reads differently in a file. */
  public static List<String> differences(Book book, Path file) throws IOException {
    List<String> differences = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        ReadableWorkbook workbook = new ReadableWorkbook(in)) {
      for (roundbook.page.Sheet sheet : book.sheets()) {
        Map<String, String> found = cells(workbook.findSheet(sheet.name()).orElseThrow());
        Map<String, String> wanted = cells(sheet);
        wanted.forEach(
            (at, value) -> {
              if (!value.equals(found.getOrDefault(at, ""))) {
                differences.add(
                    sheet.name() + "!" + at + ": wrote " + value + ", read " + found.get(at));
              }
            });
        found.keySet().removeAll(wanted.keySet());
        found.forEach(
            (at, value) -> differences.add(sheet.name() + "!" + at + " is new: " + value));
      }
    }
    return differences;
  }

  private static Map<String, String> cells(roundbook.page.Sheet sheet) {
    Map<String, String> cells = new HashMap<>();
    sheet
        .rows()
        .forEach(
            (row, columns) ->
                columns.forEach(
                    (column, cell) -> {
                      if (!(cell.value() instanceof Cell.Blank)) {
                        cells.put(Area.cell(row, column).toString(), wanted(cell.value()));
                      }
                    }));
    return cells;
  }

  private static String wanted(Cell.Value value) {
    if (value instanceof Cell.Formula formula) {
      return "=" + formula.expression() + " -> " + wanted(formula.result());
    } else if (value instanceof Cell.Number number) {
      return "number " + number.number();
    } else if (value instanceof Cell.Truth truth) {
      return "truth " + truth.truth();
    }
    String text = ((Cell.Text) value).text();
    return "text " + CellText.legal(CellText.cut(text));
  }

  private static Map<String, String> cells(Sheet sheet) throws IOException {
    Map<String, String> cells = new HashMap<>();
    for (Row row : sheet.read()) {
      for (org.dhatim.fastexcel.reader.Cell cell : row) {
        if (cell != null && cell.getType() != CellType.EMPTY) {
          cells.put(cell.getAddress().toString(), found(cell));
        }
      }
    }
    return cells;
  }

  private static String found(org.dhatim.fastexcel.reader.Cell cell) {
    return switch (cell.getType()) {
      case FORMULA -> "=" + cell.getFormula() + " -> " + result(cell);
      case NUMBER -> "number " + cell.asNumber().doubleValue();
      case BOOLEAN -> "truth " + cell.asBoolean();
      default -> "text " + decoded(cell.getText());
    };
  }

  /** Returns a formula's stored value; the reader leaves its kind to us. */
  private static String result(org.dhatim.fastexcel.reader.Cell cell) {
    Object value = cell.getValue();
    if (value instanceof Boolean truth) {
      return "truth " + truth;
    } else if (value instanceof Number number) {
      return "number " + number.doubleValue();
    }
    return "text " + decoded(value == null ? "" : value.toString());
  }

  /** Undoes the file format's own escape of a text that looks like one. */
  private static String decoded(String text) {
    return text.replaceAll("_x005F_(?=x[0-9A-Fa-f]{4}_)", "_");
  }
}
