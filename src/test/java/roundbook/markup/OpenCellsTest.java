package roundbook.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.table.Cell;
import roundbook.table.NamedBook;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Cells as OpenDocument 1.3, part 3, writes them (9.1.4 table-cell, 19.385 value-type, 16.29 number
 * styles), and as the XML spreadsheets of 2003 do, the latter's names from memory.
 */
class OpenCellsTest {
  private static final String SPACES =
      "xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0'"
          + " xmlns:table='urn:oasis:names:tc:opendocument:xmlns:table:1.0'"
          + " xmlns:text='urn:oasis:names:tc:opendocument:xmlns:text:1.0'"
          + " xmlns:style='urn:oasis:names:tc:opendocument:xmlns:style:1.0'"
          + " xmlns:calcext='urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0'"
          + " xmlns:number='urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0'";

  @TempDir private Path folder;

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "office:value-type='float' office:value='12.50'><text:p>12.5</text:p> | NUMBER 12.5",
        "office:value-type='float' office:value='1E2'/ | NUMBER 100",
        "office:value-type='percentage' office:value='0.5'><text:p>50 %</text:p> | NUMBER 0.5",
        "office:value-type='currency' office:value='3'><text:p>3 $</text:p> | NUMBER 3",
        "office:value-type='float' office:value='wide'><text:p>wide</text:p> | TEXT wide",
        "office:value-type='float' office:value='1E300'><text:p>much</text:p> | TEXT much",
        "office:value-type='string'><text:p>a</text:p><text:p>b</text:p> | TEXT a_b",
        "office:value-type='string'><text:p>a<text:s text:c='3'/>b<text:tab/>c</text:p> | TEXT a  "
            + " b\tc",
        "office:value-type='string'><text:p>a<text:line-break/>b</text:p> | TEXT a_b",
        "office:value-type='string' office:string-value='told'/ | TEXT told",
        "office:value-type='string'><text:p><text:span>sp</text:span>an</text:p> | TEXT span",
        "office:value-type='boolean' office:boolean-value='true'><text:p>TRUE</text:p> | BOOLEAN"
            + " TRUE",
        "office:value-type='boolean' office:boolean-value='false'/ | BOOLEAN FALSE",
        "office:value-type='date' office:date-value='2004-10-03'><text:p>3 Oct</text:p> | DATE 3"
            + " Oct",
        "office:value-type='date' office:date-value='2004-10-03T08:00:00'/ "
            + "| DATE 2004-10-03T08:00:00",
        "office:value-type='time' office:time-value='PT08H'><text:p>08:00</text:p> | DATE 08:00",
        "office:value-type='string' calcext:value-type='error'><text:p>#N/A</text:p> | ERROR #N/A",
        "table:formula='of:=[.B1]'/ | UNCOMPUTED",
        "table:formula='of:=[.B1]' office:value-type='float' office:value='7'/ | NUMBER 7",
        "table:style-name='in' office:value-type='float' office:value='12'/ | NUMBER 12 in",
        "table:style-name='pad' office:value-type='float' office:value='7'><text:p>007</text:p> "
            + "| NUMBER 007",
        "table:style-name='none' office:value-type='float' office:value='7'/ | NUMBER 7",
        "/ |",
        "><text:p></text:p> |",
      })
  void readsACell(String cell, String read) throws IOException {
    String whole =
        cell.endsWith("/")
            ? "<table:table-cell " + cell + ">"
            : "<table:table-cell " + cell + "</table:table-cell>";
    Table table = open("<table:table-row>" + whole + "</table:table-row>");
    assertEquals(read == null ? "" : "A1 " + read, shown(table).replace("\n", "_"));
  }

  /** Repeated rows and cells, and what is merged over others, are where a person sees them. */
  @ParameterizedTest(name = "[{index}] {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "<r><c rep2>1</c><c>2</c></r> | A1 1, B1 1, C1 2",
        "<r><e rep3/><c>2</c></r> | D1 2",
        "<r rows2><c>1</c></r><r><c>2</c></r> | A1 1, A2 1, A3 2",
        "<r rows1000000><e/></r><r><c>2</c></r> | A1000001 2",
        "<r><c down2>1</c><c>2</c></r><r><v/><c>3</c></r> | A1 1, B1 2, A2 1, B2 3",
        "<r><c down3>1</c></r><r><v/></r><r><v/><c>4</c></r> | A1 1, A3 1, B3 4",
        "<r rep99999999><c>1</c></r> | A1 1",
      })
  void rowsAndCellsStandWhereTheyAreSeen(String rows, String read) throws IOException {
    String xml =
        rows.replaceAll("rep(\\d+)", "table:number-columns-repeated='$1'")
            .replaceAll("rows(\\d+)", "table:number-rows-repeated='$1'")
            .replaceAll("down(\\d)", "table:number-rows-spanned='$1'")
            .replaceAll("<(/?)r([ >])", "<$1table:table-row$2")
            .replace("<v/>", "<table:covered-table-cell/>")
            .replaceAll("<e([ /])", "<table:table-cell$1")
            .replaceAll(
                "<c([^>]*)>([^<]*)</c>",
                "<table:table-cell$1 office:value-type='float' office:value='$2'/>");
    assertEquals(read, shown(open(xml)).replace("NUMBER ", ""));
  }

  @Test
  void aColumnsStyleCountsWhereACellHasNone() throws IOException {
    String cell = "<table:table-cell office:value-type='float' office:value='12'/>";
    String columns =
        "<table:table-column table:default-cell-style-name='in'/>"
            + "<table:table-column table:number-columns-repeated='2'/>";
    Table table =
        open(
            columns
                + "<table:table-row>"
                + cell
                + cell
                + "</table:table-row>"
                + "<table:table-row table:default-cell-style-name='pad'>"
                + cell
                + "</table:table-row>");
    assertEquals("A1 NUMBER 12 in, B1 NUMBER 12, A2 NUMBER 12", shown(table));
  }

  private Table open(String rows) throws IOException {
    String text =
        "<office:document "
            + SPACES
            + "><office:automatic-styles>"
            + "<number:number-style style:name='N1'><number:number number:min-integer-digits='1'/>"
            + "<number:text> in</number:text></number:number-style>"
            + "<number:number-style style:name='N2'><number:number number:min-integer-digits='3'/>"
            + "</number:number-style>"
            + "<style:style style:name='in' style:family='table-cell' style:data-style-name='N1'/>"
            + "<style:style style:name='pad' style:family='table-cell' style:data-style-name='N2'/>"
            + "</office:automatic-styles><office:body><office:spreadsheet>"
            + "<table:table table:name='Yard'>"
            + rows
            + "</table:table>"
            + "</office:spreadsheet></office:body></office:document>";
    return read(text, Markup.FLAT);
  }

  private Table read(String text, Markup kind) throws IOException {
    Path file = Files.writeString(folder.resolve("yard"), text);
    List<Table> tables = MarkupReader.read("yard", file, kind).value().orElseThrow();
    return tables.get(0);
  }

  private static String shown(Table table) {
    return table.rows().stream().map(OpenCellsTest::shown).collect(Collectors.joining(", "));
  }

  private static String shown(Row row) {
    return row.filled().stream()
        .map(cell -> CellRef.columnName(cell.column()) + row.number() + " " + shown(cell))
        .collect(Collectors.joining(", "));
  }

  private static String shown(Cell cell) {
    return (cell.kind() + " " + cell.text() + " " + cell.unit()).strip();
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "<Cell><Data ss:Type='Number'>12.50</Data></Cell> | A1 NUMBER 12.5",
        "<Cell><Data ss:Type='String'>a&#10;b</Data></Cell> | A1 TEXT a_b",
        "<Cell><Data ss:Type='Boolean'>1</Data></Cell> | A1 BOOLEAN TRUE",
        "<Cell><Data ss:Type='Boolean'>0</Data></Cell> | A1 BOOLEAN FALSE",
        "<Cell><Data ss:Type='Error'>#N/A</Data></Cell> | A1 ERROR #N/A",
        "<Cell><Data ss:Type='DateTime'>2004-10-03T00:00:00.000</Data></Cell> "
            + "| A1 DATE 2004-10-03T00:00:00.000",
        "<Cell ss:Formula='=RC[1]'/> | A1 UNCOMPUTED",
        "<Cell ss:Formula='=RC[1]'><Data ss:Type='Number'>7</Data></Cell> | A1 NUMBER 7",
        "<Cell ss:Index='4'><Data ss:Type='Number'>7</Data></Cell> | D1 NUMBER 7",
        "<Cell ss:MergeAcross='2'><Data ss:Type='Number'>7</Data></Cell>"
            + "<Cell><Data ss:Type='Number'>8</Data></Cell> | A1 NUMBER 7, D1 NUMBER 8",
        "<Cell ss:StyleID='s1'><Data ss:Type='Number'>12</Data></Cell> | A1 NUMBER 12 in",
        "<Cell/> |",
      })
  void readsACellOf2003(String cells, String read) throws IOException {
    String text =
        "<Workbook xmlns='urn:schemas-microsoft-com:office:spreadsheet'"
            + " xmlns:ss='urn:schemas-microsoft-com:office:spreadsheet'><Styles>"
            + "<Style ss:ID='s1'><NumberFormat ss:Format='0&quot; in&quot;'/></Style></Styles>"
            + "<Worksheet ss:Name='Yard'><Table><Row>"
            + cells
            + "</Row></Table></Worksheet>"
            + "</Workbook>";
    assertEquals(read == null ? "" : read, shown(read(text, Markup.XML_2003)).replace("\n", "_"));
  }

  /** Named ranges (9.4.12): areas of one sheet, quoted where the name needs it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "$Yard.$B$3; Yard 3 2 3 2",
        "$Yard.$B$3:.$D$9; Yard 3 2 9 4",
        "$Yard.$B$3:$Yard.$D$9; Yard 3 2 9 4",
        "$'The yard''s'.$AA$10; The yard's 10 27 10 27",
        "Yard; none",
        "; none",
      })
  void namesAreAreas(String area, String read) throws IOException {
    Path file = folder.resolve("yard.ods");
    String content =
        "<office:document-content "
            + SPACES
            + "><office:body><office:spreadsheet>"
            + "<table:table table:name='Yard'><table:shapes><table:table-row>"
            + "<table:table-cell office:value-type='float' office:value='9'/></table:table-row>"
            + "</table:shapes><table:table-row><table:table-cell office:value-type='float'"
            + " office:value='1'/></table:table-row></table:table><table:named-expressions>"
            + "<table:named-range table:name='Mids' table:cell-range-address=\""
            + (area == null ? "" : area)
            + "\"/></table:named-expressions></office:spreadsheet></office:body>"
            + "</office:document-content>";
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(content.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    NamedBook book = MarkupReader.readNamed("yard.ods", file).value().orElseThrow();
    assertEquals("A1 NUMBER 1", shown(book.tables().get(0)), "shapes hold no rows");
    assertEquals(
        read,
        book.range("mids")
            .map(
                range ->
                    range.sheet()
                        + " "
                        + range.top()
                        + " "
                        + range.left()
                        + " "
                        + range.bottom()
                        + " "
                        + range.right())
            .orElse("none"));
  }

  /** A document type may name files and grow without end, so none is read. */
  @ParameterizedTest
  @EnumSource(names = {"FLAT", "XML_2003"})
  void aDocumentTypeIsRefused(Markup kind) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("yard"), "<!DOCTYPE x [<!ENTITY a 'b'>]><Workbook>&a;</Workbook>");
    Problem problem = MarkupReader.read("yard", file, kind).problems().get(0);
    assertEquals("unreadable.cut-short", problem.said().key());
  }

  /** Entities of the HTML standard (13.5), by name and by number; others stay as they are. */
  @ParameterizedTest
  @CsvSource({
    "&amp;, &", "&frac12;, \u00BD", "&Prime;, \u2033", "&#189;, \u00BD", "&#xBD;, \u00BD",
    "&nonsense;, &nonsense;", "&#1114112;, &#1114112;", "&, &", "a&b, a&b", "&eacute;, \u00E9",
    "&ouml;, \u00F6", "&nbsp;x, x", "&lt;b&gt;, <b>",
  })
  void entitiesOfAPageAreRead(String written, String read) throws IOException {
    String page = "<table><tr><td>" + written + "<td>1</tr></table>";
    assertEquals("A1 TEXT " + read + ", B1 TEXT 1", shown(read(page, Markup.PAGE)));
  }

  /** Pages as people and programs write them, with tags left out. */
  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "<table><tr><td>1<td>2<tr><td>3</table> | A1 1, B1 2, A2 3",
        "<table><td>1<td>2</table> | A1 1, B1 2",
        "<table><tr><td>1</td></tr> | A1 1",
        "<TABLE><TR><TD>1</TD></TR></TABLE> | A1 1",
        "<table><tr><td colspan=2>1<td>2</tr></table> | A1 1, C1 2",
        "<table><tr><td rowspan=2>1<td>2<tr><td>3</table> | A1 1, B1 2, A2 1, B2 3",
        "<table><tr><td>a<br>b</td></tr></table> | A1 a_b",
        "<p>1</p><table><tr><td>2</table> | A1 2",
        "<table><tr><td><!-- <td>9 -->1</table> | A1 1",
        "<table><tr></tr><tr><td>1</table> | A2 1",
      })
  void pagesAreReadAsTheyShow(String page, String read) throws IOException {
    assertEquals(read, shown(read(page, Markup.PAGE)).replace("TEXT ", "").replace("\n", "_"));
  }

  @Test
  void aPageWithoutATableIsNone() throws IOException {
    Path file = Files.writeString(folder.resolve("yard"), "<html><p>Nothing</html>");
    assertEquals(
        "not-a-workbook.page",
        MarkupReader.read("yard", file, Markup.PAGE).problems().get(0).said().key());
  }
}
