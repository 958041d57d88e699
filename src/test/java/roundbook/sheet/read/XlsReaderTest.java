package roundbook.sheet.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.FormulaError;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.problem.Read;
import roundbook.table.Row;
import roundbook.table.Table;

/** Old binary workbooks, written by a library and read back cell by cell. */
class XlsReaderTest {
  @TempDir private Path folder;
  private HSSFWorkbook book;
  private HSSFRow row;

  @BeforeEach
  void begin() {
    book = new HSSFWorkbook();
    row = book.createSheet("Yard").createRow(2);
  }

  @Test
  void readsEveryKindOfCell() throws IOException {
    row.createCell(0).setCellValue("Log ");
    row.createCell(1).setCellValue(12.5);
    row.createCell(2).setCellValue(true);
    row.createCell(3).setCellErrorValue(FormulaError.NA);
    row.createCell(4).setCellFormula("B3*2");
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    row.createCell(5);
    styled(6, "0.0\" cm\"").setCellValue(32);
    styled(7, "000").setCellValue(7);
    styled(8, "yyyy\\-mm\\-dd").setCellValue(38263);
    assertEquals(
        "3: 1 TEXT Log, 2 NUMBER 12.5, 3 BOOLEAN TRUE, 4 ERROR #N/A, 5 NUMBER 25,"
            + " 7 NUMBER 32 cm, 8 NUMBER 007, 9 DATE 2004-10-03",
        shown(read().get(0).rows().get(0)));
  }

  private org.apache.poi.hssf.usermodel.HSSFCell styled(int column, String format) {
    HSSFCellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    var cell = row.createCell(column);
    cell.setCellStyle(style);
    return cell;
  }

  @Test
  void sheetsAndRowsMayBeHiddenAndStruck() throws IOException {
    row.createCell(0).setCellValue("A1");
    row.setZeroHeight(true);
    HSSFFont font = book.createFont();
    font.setStrikeout(true);
    HSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    var struck = book.getSheetAt(0).createRow(4).createCell(0);
    struck.setCellValue("A2");
    struck.setCellStyle(style);
    book.createSheet("Old").createRow(0).createCell(0).setCellValue(1);
    book.setSheetHidden(1, true);
    book.createSheet("Empty");
    List<Table> tables = read();
    assertEquals(
        "Yard false, Old true, Empty false",
        tables.stream()
            .map(table -> table.sheet() + " " + table.hidden())
            .collect(Collectors.joining(", ")));
    assertEquals(
        "3 true false, 5 false true",
        tables.get(0).rows().stream()
            .map(each -> each.number() + " " + each.hidden() + " " + each.struck())
            .collect(Collectors.joining(", ")));
    assertEquals(List.of(), tables.get(2).rows());
  }

  /** A workbook of the old kind has no names here, and is read by its sheets all the same. */
  @Test
  void namesAreNotRead() throws IOException {
    row.createCell(0).setCellValue("A1");
    var name = book.createName();
    name.setNameName("Mids");
    name.setRefersToFormula("Yard!$A$3");
    var named = BookReader.readNamed("yard.xls", write()).value().orElseThrow();
    assertEquals(false, named.has("Mids"));
    assertEquals(1, named.tables().size());
  }

  private List<Table> read() throws IOException {
    Read<List<Table>> read = BookReader.read("yard.xls", write());
    return read.value().orElseThrow(() -> new AssertionError(read.problems()));
  }

  private Path write() throws IOException {
    Path file = folder.resolve("yard.xls");
    try (HSSFWorkbook closed = book;
        OutputStream out = Files.newOutputStream(file)) {
      closed.write(out);
    }
    return file;
  }

  private static String shown(Row row) {
    return row.cells().stream()
        .map(
            cell ->
                (cell.column() + " " + cell.kind() + " " + cell.text() + " " + cell.unit()).strip())
        .collect(Collectors.joining(", ", row.number() + ": ", ""));
  }
}
