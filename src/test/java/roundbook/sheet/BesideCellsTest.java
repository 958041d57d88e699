package roundbook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.sheet.read.BookReader;
import roundbook.table.Row;
import roundbook.table.Table;

/** Comments on cells and cells merged downwards, in workbooks of both kinds. */
class BesideCellsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"tally.xlsx", "tally.xls"})
  void areReadWithTheirRows(String name) throws IOException {
    Path file = folder.resolve(name);
    try (Workbook book = name.endsWith("x") ? new XSSFWorkbook() : new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("Tally");
      String[][] rows = {{"Log", "Length"}, {"A1", "16"}, {"A2", ""}, {"A3", ""}, {"A4", "18"}};
      for (int i = 0; i < rows.length; i++) {
        sheet.createRow(i).createCell(0).setCellValue(rows[i][0]);
        sheet.getRow(i).createCell(1).setCellValue(rows[i][1]);
      }
      sheet.addMergedRegion(new CellRangeAddress(1, 3, 1, 1));
      comment(book, sheet, "rotten at the butt");
      book.write(out);
    }
    Table table = BookReader.read(name, file).value().orElseThrow().get(0);
    assertEquals(
        List.of("Log Length", "A1 16", "A2 16 rotten at the butt", "A3 16", "A4 18"),
        table.rows().stream().map(BesideCellsTest::shown).toList());
  }

  private static void comment(Workbook book, Sheet sheet, String text) {
    CreationHelper helper = book.getCreationHelper();
    ClientAnchor anchor = helper.createClientAnchor();
    Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(helper.createRichTextString(text));
    sheet.getRow(2).getCell(0).setCellComment(comment);
  }

  private static String shown(Row row) {
    String note =
        Optional.of(row.note()).filter(each -> !each.isEmpty()).map(" "::concat).orElse("");
    return row.cell(1).text() + " " + row.cell(2).text() + note;
  }
}
