package roundbook.harvester;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Logs of harvested production files. Names of elements, attributes and categories are those of the
 * StanForD 2010 standard; the trees are invented.
 */
class HarvesterReaderTest {
  private static final String UNITS = "lengthUnit=\"cm\" diameterUnit=\"mm\"";

  @TempDir Path folder;

  private Read<Table> read(String units, String machine) throws IOException {
    return file(
        "<?xml version=\"1.0\"?>\n<HarvestedProduction xmlns=\"urn:skogforsk:stanford2010\" "
            + units
            + ">\n<Machine>\n"
            + machine
            + "\n</Machine>\n</HarvestedProduction>\n");
  }

  private Read<Table> file(String text) throws IOException {
    Read<List<Table>> read =
        HarvesterReader.read("yard.hpr", Files.writeString(folder.resolve("yard.hpr"), text));
    return new Read<>(read.value().map(tables -> tables.get(0)), read.problems());
  }

  private List<Row> rows(String machine) throws IOException {
    List<Row> rows = read(UNITS, machine).value().orElseThrow().rows();
    return rows.subList(1, rows.size());
  }

  /** A tree that was measured and not cut is a felled stem, as long as it was measured. */
  @Test
  void aTreeWithoutLogsIsAStem() throws IOException {
    String profile = "";
    for (int place = 0; place <= 400; place += 100) {
      profile +=
          "<DiameterValue diameterPosition=\"%d\">%d</DiameterValue>"
              .formatted(place, 300 - place / 5);
    }
    String diameters =
        "<StemDiameters diameterCategory=\"Over bark\">" + profile + "</StemDiameters>\n";
    Table table = read(UNITS, stem(7, diameters)).value().orElseThrow();
    assertEquals("Stems", table.sheet());
    assertEquals(
        List.of("Stem", "Species", "Length (cm)", "Bark", "0 cm (mm)", "100 cm (mm)"),
        table.rows().get(0).filled().stream().limit(6).map(Cell::text).toList());
    Row row = table.rows().get(1);
    assertEquals(
        List.of("7", "400", "over", "300", "220"),
        List.of(1, 3, 4, 5, 9).stream().map(column -> row.cell(column).text()).toList());
  }

  private static String stem(int key, String logs) {
    return "<Stem><StemKey>%d</StemKey><SpeciesGroupKey>4</SpeciesGroupKey>".formatted(key)
        + "<SingleTreeProcessedStem>\n"
        + logs
        + "</SingleTreeProcessedStem></Stem>\n";
  }

  private static String log(int key, String measurement) {
    return "<Log><LogKey>%d</LogKey><ProductKey>12</ProductKey>".formatted(key)
        + "<LogMeasurement logMeasurementCategory=\"Machine\">"
        + measurement
        + "</LogMeasurement></Log>\n";
  }

  private static String length(double centimetres) {
    return "<LogLength>" + centimetres + "</LogLength>";
  }

  private static String diameter(String place, int millimetres) {
    return "<LogDiameter logDiameterCategory=\"%s\">%d</LogDiameter>".formatted(place, millimetres);
  }

  private static String text(Row row, int column) {
    return row.cell(column).text();
  }

  @Test
  void aLogIsARowWithItsTreesNameAndProduct() throws IOException {
    String names =
        "<SpeciesGroupDefinition><SpeciesGroupKey>4</SpeciesGroupKey>"
            + "<SpeciesGroupName>Spruce</SpeciesGroupName></SpeciesGroupDefinition>\n"
            + "<ProductDefinition><ProductKey>12</ProductKey><ClassifiedProductDefinition>"
            + "<ProductName>Wall log</ProductName></ClassifiedProductDefinition>"
            + "</ProductDefinition>\n";
    String measured = length(508) + diameter("Butt ub", 381) + diameter("Mid ub", 320);
    List<Row> rows =
        rows(names + stem(71, log(1, measured + diameter("Top ub", 300)) + log(2, length(457.2))));
    List<String> first = rows.get(0).cells().stream().map(Cell::text).toList();
    assertEquals(
        List.of("71-1", "Spruce", "508", "381", "320", "300", "under", "butt", "", "Wall log"),
        first);
    assertEquals("71-2", text(rows.get(1), 1));
    assertEquals("457.2", text(rows.get(1), 3));
    assertEquals("upper", text(rows.get(1), 8));
    assertTrue(rows.get(1).cell(5).isBlank());
    assertEquals(7, rows.get(0).number(), "the line that it begins on");
    assertEquals(8, rows.get(1).number());
  }

  @Test
  void unnamedSpeciesAndProductsKeepWhatIsKnown() throws IOException {
    Row row = rows(stem(1, log(1, length(400) + diameter("Mid ub", 300)))).get(0);
    assertEquals("", text(row, 2));
    assertEquals("12", text(row, 10));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({"cm, mm", "mm, mm", "m, cm", "in, in"})
  void theHeadingsHaveTheFilesOwnUnits(String along, String through) throws IOException {
    String units = "lengthUnit=\"%s\" diameterUnit=\"%s\"".formatted(along, through);
    Row headings = read(units, "").value().orElseThrow().rows().get(0);
    assertEquals("Length (" + along + ")", text(headings, 3));
    assertEquals("Butt (" + through + ")", text(headings, 4));
    assertEquals(0, headings.number());
  }

  @ParameterizedTest(name = "{index}: {0}")
  @CsvSource({"furlong, mm, lengthUnit", "cm, fathom, diameterUnit", "'', mm, lengthUnit"})
  void anUnknownUnitIsRefused(String along, String through, String named) throws IOException {
    String units = "lengthUnit=\"%s\" diameterUnit=\"%s\"".formatted(along, through);
    Problem problem = read(units, "").problems().get(0);
    assertEquals(ProblemCode.UNIT_UNKNOWN, problem.code());
    assertTrue(problem.toString().contains(named), problem.toString());
  }

  /** Under bark only where the middle and the top have it; a butt alone is no log's diameters. */
  @Test
  void diametersUnderBarkComeFirst() throws IOException {
    String over = diameter("Butt ob", 406) + diameter("Mid ob", 330) + diameter("Top ob", 306);
    String under = diameter("Mid ub", 320) + diameter("Top ub", 300);
    List<Row> rows =
        rows(
            stem(
                1,
                log(1, length(508) + over + under)
                    + log(2, length(508) + over + diameter("Mid ub", 320))
                    + log(3, length(508) + over)));
    assertEquals("under 320 300", text(rows.get(0), 7) + " " + diameters(rows.get(0)));
    assertEquals("over 406 330 306", text(rows.get(1), 7) + " " + diameters(rows.get(1)));
    assertEquals("over 406 330 306", text(rows.get(2), 7) + " " + diameters(rows.get(2)));
  }

  private static String diameters(Row row) {
    return (text(row, 4) + " " + text(row, 5) + " " + text(row, 6)).strip();
  }

  @Test
  void aManualControlBesideTheMachinesIsPassedOver() throws IOException {
    String logs =
        "<Log><LogKey>1</LogKey>"
            + "<LogMeasurement logMeasurementCategory=\"Operator\">"
            + length(999)
            + diameter("Mid ob", 999)
            + "</LogMeasurement><LogMeasurement logMeasurementCategory=\"Machine\">"
            + length(500)
            + diameter("Mid ob", 300)
            + "</LogMeasurement></Log>\n";
    Row row = rows(stem(1, logs)).get(0);
    assertEquals("500", text(row, 3));
    assertEquals("300", text(row, 5));
  }

  /** A tree measured all along gives each log its part, counted from the log's own butt. */
  @Test
  void theTreesDiametersBecomeTheLogsProfile() throws IOException {
    StringBuilder along = new StringBuilder("<StemDiameters diameterCategory=\"Under bark\">");
    for (int at = 0; at <= 800; at += 100) {
      along.append(
          "<DiameterValue diameterPosition=\"%d\">%d</DiameterValue>".formatted(at, 400 - at / 10));
    }
    along.append("</StemDiameters>");
    String measured = length(400) + diameter("Mid ub", 380) + diameter("Top ub", 360);
    List<Row> rows = rows(stem(1, along + log(1, measured) + log(2, measured)));
    assertEquals(
        "0mm=400mm 1000mm=390mm 2000mm=380mm 3000mm=370mm 4000mm=360mm",
        text(rows.get(0), 9).replace(" mm", "mm"));
    assertEquals(
        "0mm=360mm 1000mm=350mm 2000mm=340mm 3000mm=330mm 4000mm=320mm",
        text(rows.get(1), 9).replace(" mm", "mm"));
  }

  @Test
  void treesProcessedInBundlesAreCountedAndSaid() throws IOException {
    String bundle =
        "<Stem><StemKey>9</StemKey><MultiTreeProcessedStem><Log/><Log/></MultiTreeProcessedStem>"
            + "</Stem>";
    Read<Table> read = read(UNITS, bundle + stem(1, log(1, length(400))));
    assertEquals(2, read.value().orElseThrow().rows().size(), "the headings and one log");
    assertEquals(ProblemCode.NOTE_ROW, read.problems().get(0).code());
    assertTrue(read.problems().get(0).toString().contains("2"), read.problems().toString());
  }

  @Test
  void numbersThatAreNoneAreLeftOut() throws IOException {
    String odd =
        "<LogLength>-4</LogLength>"
            + diameter("Mid ob", 0)
            + "<LogDiameter logDiameterCategory=\"Top ob\">NaN</LogDiameter>";
    Row row = rows(stem(1, log(1, odd))).get(0);
    assertTrue(row.cell(3).isBlank() && row.cell(5).isBlank() && row.cell(6).isBlank());
  }

  @Test
  void otherXmlIsNoProduction() throws IOException {
    Problem problem = file("<?xml version=\"1.0\"?><ForestOrder/>").problems().get(0);
    assertEquals(ProblemCode.NOT_A_WORKBOOK, problem.code());
    assertTrue(problem.toString().contains("ForestOrder"), problem.toString());
  }

  @Test
  void aFileThatIsCutShortNamesItsLine() throws IOException {
    Read<Table> read = file("<?xml version=\"1.0\"?>\n<HarvestedProduction " + UNITS + ">\n<Machi");
    assertTrue(read.value().isEmpty());
    assertEquals(ProblemCode.UNREADABLE, read.problems().get(0).code());
    assertTrue(read.problems().get(0).toString().contains("3"), read.problems().toString());
  }

  @Test
  void aDocumentTypeIsRefused() throws IOException {
    Read<Table> read =
        file(
            "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY e \"x\">]><HarvestedProduction "
                + UNITS
                + "/>");
    assertTrue(read.value().isEmpty());
    assertEquals(ProblemCode.UNREADABLE, read.problems().get(0).code());
  }

  @Test
  void aLongFileIsReadAgainWhenAsked() throws IOException {
    StringBuilder stems = new StringBuilder();
    for (int stem = 0; stem < Table.HELD_ROWS + 100; stem++) {
      stems.append(stem(stem, log(1, length(400))));
    }
    Table table = read(UNITS, stems.toString()).value().orElseThrow();
    assertEquals(Table.HELD_ROWS, table.rows().size());
    int[] count = {0};
    assertTrue(table.forEach(row -> count[0]++).isEmpty());
    assertEquals(Table.HELD_ROWS + 101, count[0]);
    Files.writeString(folder.resolve("yard.hpr"), "<HarvestedProduction " + UNITS + "><Stem>");
    assertEquals(ProblemCode.UNREADABLE, table.forEach(row -> {}).orElseThrow().code());
  }
}
