package roundbook.sheet.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.kind.Guard;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;

/** Reads workbooks of the old binary kind, which hold at most 65 536 rows a sheet. */
final class XlsReader {
  private static final long MOST_BYTES = 60_000_000;

  private final String file;
  private final Path path;

  XlsReader(String file, Path path) {
    this.file = file;
    this.path = path;
  }

  Read<List<Table>> read() throws IOException {
    if (Files.size(path) > MOST_BYTES) {
      throw Guard.over("old", file, MOST_BYTES);
    }
    try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
      refuseOthers(files.getRoot());
      try (HSSFWorkbook book = new HSSFWorkbook(files.getRoot(), false)) {
        return Read.of(tables(book), List.of());
      }
    } catch (OldExcelFormatException old) {
      throw Guard.other(file, "what.before-1997");
    }
  }

  private void refuseOthers(DirectoryNode root) {
    if (root.hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
      throw Guard.stop(ProblemCode.ENCRYPTED, "", file);
    }
    boolean workbook =
        root.hasEntryCaseInsensitive("Workbook") || root.hasEntryCaseInsensitive("Book");
    if (!workbook) {
      String what =
          root.hasEntryCaseInsensitive("WordDocument")
              ? "what.doc"
              : root.hasEntryCaseInsensitive("PowerPoint Document") ? "what.ppt" : "what.binary";
      throw Guard.other(file, what);
    }
  }

  private List<Table> tables(HSSFWorkbook book) {
    if (book.getNumberOfSheets() == 0) {
      throw Guard.stop(ProblemCode.EMPTY_FILE, "no-sheet", file);
    }
    List<Table> tables = new ArrayList<>();
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      HSSFSheet sheet = book.getSheetAt(i);
      boolean hidden = book.isSheetHidden(i) || book.isSheetVeryHidden(i);
      Set<Table.Mark> marks = hidden ? Set.of(Table.Mark.HIDDEN) : Set.of();
      tables.add(Table.of(file, book.getSheetName(i), marks, rows(book, sheet)));
    }
    return tables;
  }

  private static List<Row> rows(HSSFWorkbook book, HSSFSheet sheet) {
    List<Row> rows = new ArrayList<>();
    for (int i = sheet.getFirstRowNum(); i >= 0 && i <= sheet.getLastRowNum(); i++) {
      HSSFRow row = sheet.getRow(i);
      Row read = row == null ? null : row(book, row);
      if (read != null && !read.isBlank()) {
        rows.add(read);
      }
    }
    return rows;
  }

  private static Row row(HSSFWorkbook book, HSSFRow row) {
    List<Cell> cells = new ArrayList<>();
    boolean struck = false;
    StringBuilder note = new StringBuilder();
    for (org.apache.poi.ss.usermodel.Cell each : row) {
      HSSFCell cell = (HSSFCell) each;
      Cell read = cell(book, cell);
      if (!read.isBlank()) {
        cells.add(read);
        struck |= cell.getCellStyle().getFont(book).getStrikeout();
      }
      if (cell.getCellComment() != null) {
        note.append(note.length() == 0 ? "" : " ");
        note.append(Cell.strip(cell.getCellComment().getString().getString()));
      }
    }
    addMerged(book, row, cells);
    return new Row(row.getRowNum() + 1, cells, row.getZeroHeight(), struck, note.toString());
  }

  /** Adds the cells that are merged down to a row from above. */
  private static void addMerged(HSSFWorkbook book, HSSFRow row, List<Cell> cells) {
    for (CellRangeAddress range : row.getSheet().getMergedRegions()) {
      HSSFRow top = row.getSheet().getRow(range.getFirstRow());
      HSSFCell cell = top == null ? null : top.getCell(range.getFirstColumn());
      boolean below =
          range.getFirstRow() < row.getRowNum() && row.getRowNum() <= range.getLastRow();
      if (below && cell != null && !cells.isEmpty() && !cell(book, cell).isBlank()) {
        cells.add(cell(book, cell));
      }
    }
    cells.sort(Comparator.comparingInt(Cell::column));
  }

  private static Cell cell(HSSFWorkbook book, HSSFCell cell) {
    int column = cell.getColumnIndex() + 1;
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case STRING -> Cell.text(column, cell.getRichStringCellValue().getString());
      case NUMERIC -> number(book, cell, column);
      case BOOLEAN ->
          new Cell(
              column, CellKind.BOOLEAN, cell.getBooleanCellValue() ? "TRUE" : "FALSE", null, "");
      case ERROR ->
          new Cell(
              column,
              CellKind.ERROR,
              FormulaError.forInt(cell.getErrorCellValue()).getString(),
              null,
              "");
      default -> Cell.blank(column);
    };
  }

  private static Cell number(HSSFWorkbook book, HSSFCell cell, int column) {
    HSSFCellStyle style = cell.getCellStyle();
    NumberLook look = NumberLook.of(style.getDataFormat(), style.getDataFormatString(book), false);
    boolean system1904 = book.getInternalWorkbook().isUsing1904DateWindowing();
    return look.cell(column, cell.getNumericCellValue(), system1904);
  }
}
