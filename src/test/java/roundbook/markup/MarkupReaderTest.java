package roundbook.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/** Sheets in markup, cell by cell, after the names of their published formats. */
class MarkupReaderTest {
  private static final String OPEN =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
        xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
        xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
        xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"
        xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"
        office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
       <office:automatic-styles>
        <number:number-style style:name="N1"><number:number number:min-integer-digits="1"/>
         <number:text> in</number:text></number:number-style>
        <number:number-style style:name="N2"><number:number number:min-integer-digits="3"/>
        </number:number-style>
        <style:style style:name="ce1" style:family="table-cell" style:data-style-name="N1"/>
        <style:style style:name="ce2" style:family="table-cell" style:data-style-name="N2"/>
        <style:style style:name="ta2" style:family="table">
         <style:table-properties table:display="false"/></style:style>
       </office:automatic-styles>
       <office:body><office:spreadsheet>
        <table:table table:name="Yard">
         <table:table-column table:number-columns-repeated="3"/>
         <table:table-row><table:table-cell office:value-type="string"><text:p>Log</text:p></table:table-cell>
          <table:table-cell office:value-type="string"><text:p>Length</text:p><office:annotation><text:p>no</text:p></office:annotation></table:table-cell>
          <table:table-cell office:value-type="string"><text:p>Mid<text:s/>dia</text:p></table:table-cell></table:table-row>
         <table:table-row table:number-rows-repeated="2"><table:table-cell/></table:table-row>
         <table:table-row><table:table-cell table:style-name="ce2" office:value-type="float" office:value="7"><text:p>007</text:p></table:table-cell>
          <table:table-cell table:number-rows-spanned="2" office:value-type="float" office:value="16.5"><text:p>17</text:p></table:table-cell>
          <table:table-cell table:style-name="ce1" office:value-type="float" office:value="12.25"><text:p>12 in</text:p></table:table-cell></table:table-row>
         <table:table-row table:visibility="collapse"><table:table-cell office:value-type="string"><text:p>8</text:p></table:table-cell>
          <table:covered-table-cell/>
          <table:table-cell office:value-type="date" office:date-value="2004-10-03"><text:p>3 Oct</text:p></table:table-cell></table:table-row>
         <table:table-row table:number-rows-repeated="1048570"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
        </table:table>
        <table:table table:name="Old" table:style-name="ta2"><table:table-row><table:table-cell office:value-type="string"><text:p>x</text:p></table:table-cell></table:table-row></table:table>
       </office:spreadsheet></office:body>
      </office:document>
      """;

  private static final String XML_2003 =
      """
      <?xml version="1.0"?>
      <Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet"
        xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet"
        xmlns:x="urn:schemas-microsoft-com:office:excel">
       <Styles><Style ss:ID="s1"><NumberFormat ss:Format="0.00&quot; in&quot;"/></Style></Styles>
       <Worksheet ss:Name="Yard"><Table>
        <Row><Cell><Data ss:Type="String">Log</Data></Cell><Cell ss:Index="3"><Data ss:Type="String">Mid</Data></Cell></Row>
        <Row ss:Index="4" ss:Hidden="1"><Cell ss:MergeDown="1"><Data ss:Type="String">A1</Data></Cell>
         <Cell ss:Index="3" ss:StyleID="s1"><Data ss:Type="Number">12.5</Data><Comment><Data>no</Data></Comment></Cell></Row>
        <Row><Cell ss:Index="2"><Data ss:Type="DateTime">2004-10-03T00:00:00.000</Data></Cell></Row>
       </Table></Worksheet>
       <Worksheet ss:Name="Old"><Table><Row><Cell><Data ss:Type="Number">1</Data></Cell></Row></Table>
        <x:WorksheetOptions><x:Visible>SheetHidden</x:Visible></x:WorksheetOptions></Worksheet>
      </Workbook>
      """;

  private static final String PAGE =
      """
      <!DOCTYPE html><html><script>if (1 < 2) "<td>";</script><table border=1>
      <tr><th>Log<th>Length&nbsp;(ft)<th colspan="2">Butt, tip</tr>
      <tr><td rowspan=2>A&amp;1<td>16 &frac12;<td><b>12</b>&Prime;<td>10</tr>
      <tr><td>18<td>13<td>11</tr></table><p>more</p><table></table></html>
      """;

  @TempDir private Path folder;

  @Test
  void readsOpenDocumentFlat() throws IOException {
    assertEquals(List.of("Yard", "Old hidden"), names(read(OPEN, Markup.FLAT)));
    assertEquals(
        "1: TEXT Log | TEXT Length | TEXT Mid dia\n"
            + "4: NUMBER 007 | NUMBER 16.5 | NUMBER 12.25 in\n"
            + "5 hidden: TEXT 8 | NUMBER 16.5 | DATE 3 Oct",
        rows(read(OPEN, Markup.FLAT).get(0)));
  }

  @Test
  void readsOpenDocumentPacked() throws IOException {
    Path file = folder.resolve("yard.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      put(zip, "content.xml", OPEN);
    }
    assertTrue(Markup.isPacked(file));
    Read<List<Table>> read = MarkupReader.read("yard.ods", file, Markup.PACKED);
    assertEquals(rows(read(OPEN, Markup.FLAT).get(0)), rows(read.value().orElseThrow().get(0)));
  }

  @Test
  void saysThatAPackedFileIsLocked() throws IOException {
    Path file = folder.resolve("yard.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      put(zip, "META-INF/manifest.xml", "<manifest:encryption-data/>");
      put(zip, "content.xml", "noise");
    }
    Read<List<Table>> read = MarkupReader.read("yard.ods", file, Markup.PACKED);
    assertEquals(ProblemCode.ENCRYPTED, read.problems().get(0).code());
  }

  @Test
  void readsSpreadsheetXml() throws IOException {
    List<Table> tables = read(XML_2003, Markup.XML_2003);
    assertEquals(List.of("Yard", "Old hidden"), names(tables));
    assertEquals(
        "1: TEXT Log |  | TEXT Mid\n"
            + "4 hidden: TEXT A1 |  | NUMBER 12.5 in\n"
            + "5: TEXT A1 | DATE 2004-10-03T00:00:00.000",
        rows(tables.get(0)));
  }

  @Test
  void readsTheTablesOfAPage() throws IOException {
    assertEquals(
        "1: TEXT Log | TEXT Length (ft) | TEXT Butt, tip\n"
            + "2: TEXT A&1 | TEXT 16 \u00BD | TEXT 12\u2033 | TEXT 10\n"
            + "3: TEXT A&1 | TEXT 18 | TEXT 13 | TEXT 11",
        rows(read(PAGE, Markup.PAGE).get(0)));
  }

  @Test
  void tellsXmlByItsBeginning() throws IOException {
    assertEquals(Markup.FLAT, Markup.ofXml(file(OPEN)).orElseThrow());
    assertEquals(Markup.XML_2003, Markup.ofXml(file(XML_2003)).orElseThrow());
    assertTrue(Markup.ofXml(file("<HarvestedProduction/>")).isEmpty());
  }

  @Test
  void givesEveryRowOfALongSheet() throws IOException {
    String row =
        "<table:table-row><table:table-cell"
            + " office:value-type=\"string\"><text:p>x</text:p></table:table-cell></table:table-row>";
    String many =
        OPEN.replace(
            "<table:table-row table:visibility",
            row.repeat(3000) + "<table:table-row table:visibility");
    Table table = read(many, Markup.FLAT).get(0);
    int[] count = {0};
    table.forEach(each -> count[0]++);
    assertEquals(Table.HELD_ROWS, table.rows().size());
    assertEquals(3003, count[0]);
  }

  @Test
  void saysThatAFileIsCutShort() throws IOException {
    Read<List<Table>> read = MarkupReader.read("yard", file(OPEN.substring(0, 2500)), Markup.FLAT);
    assertEquals(ProblemCode.UNREADABLE, read.problems().get(0).code());
  }

  private List<Table> read(String text, Markup kind) throws IOException {
    return MarkupReader.read("yard", file(text), kind).value().orElseThrow();
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("yard"), text);
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static List<String> names(List<Table> tables) {
    return tables.stream().map(table -> table.sheet() + (table.hidden() ? " hidden" : "")).toList();
  }

  private static String rows(Table table) {
    StringBuilder text = new StringBuilder();
    for (Row row : table.rows()) {
      text.append(text.length() == 0 ? "" : "\n").append(row.number());
      text.append(row.hidden() ? " hidden: " : ": ");
      int last = row.cells().get(row.cells().size() - 1).column();
      for (int i = 1; i <= last; i++) {
        Cell cell = row.cell(i);
        String kind = cell.isBlank() ? "" : cell.kind() + " ";
        text.append(i == 1 ? "" : " | ").append(kind).append(cell.text());
        text.append(cell.unit().isEmpty() ? "" : " " + cell.unit());
      }
    }
    return text.toString();
  }
}
