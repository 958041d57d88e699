package roundbook.harvester;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Read;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Profiles of stems in StanForD 2010 files, cut into those of logs, by hand: the stem is measured
 * every metre over bark, 400 mm at the butt and 20 less a metre, and each log begins where the one
 * before it ended.
 */
class BarkAndProfileTest {
  private static final String OVER =
      IntStream.rangeClosed(0, 7)
          .mapToObj(
              at ->
                  "<DiameterValue diameterPosition='"
                      + at * 100
                      + "'>"
                      + (400 - 20 * at)
                      + "</DiameterValue>")
          .collect(
              Collectors.joining(
                  "", "<StemDiameters diameterCategory='Over bark'>", "</StemDiameters>"));

  @TempDir private Path folder;

  private static String diameters(String... pairs) {
    StringBuilder text = new StringBuilder();
    for (String pair : pairs) {
      String[] halves = pair.split("=");
      text.append("<LogDiameter logDiameterCategory='").append(halves[0]).append("'>");
      text.append(halves[1]).append("</LogDiameter>");
    }
    return text.toString();
  }

  private static String log(int key, int centimetres, String diameters) {
    return "<Log><LogKey>"
        + key
        + "</LogKey><LogMeasurement logMeasurementCategory='Machine'>"
        + "<LogLength>"
        + centimetres
        + "</LogLength>"
        + diameters
        + "</LogMeasurement></Log>";
  }

  /** Over bark: the stations as they are. The second log begins at 300 cm, at 340 mm. */
  @Test
  void aLogsProfileIsItsPartOfTheStems() throws IOException {
    String first = log(1, 300, diameters("Butt ob=400", "Mid ob=370", "Top ob=340"));
    String second = log(2, 300, diameters("Butt ob=340", "Mid ob=310", "Top ob=280"));
    Table table = read(OVER + first + second);
    assertEquals("0mm=400mm 1000mm=380mm 2000mm=360mm 3000mm=340mm", profile(table, 1));
    assertEquals("0mm=340mm 1000mm=320mm 2000mm=300mm 3000mm=280mm", profile(table, 2));
    assertEquals(
        "over over", table.rows().get(1).cell(7).text() + " " + table.rows().get(2).cell(7).text());
  }

  /**
   * Under bark: the bark is 20 mm at the butt, 10 at the middle and 6 at the top, straight between.
   * At 1 and 2 m of 4: 15 and 10 mm; at 3 m: 8.
   */
  @Test
  void barkIsTakenOffAlongTheLog() throws IOException {
    String log =
        log(
            1,
            400,
            diameters(
                "Butt ob=400",
                "Butt ub=380",
                "Mid ob=360",
                "Mid ub=350",
                "Top ob=320",
                "Top ub=314"));
    Table table = read(OVER + log);
    assertEquals(
        "0mm=380mm 1000mm=365mm 2000mm=350mm 3000mm=332mm 4000mm=314mm", profile(table, 1));
    assertEquals("under", table.rows().get(1).cell(7).text());
  }

  /** The butt's bark is that of the middle where it was not measured; without a middle's, none. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Butt ub=380,Mid ob=360,Mid ub=350,Top ob=320,Top ub=310 "
            + "| 0mm=390mm 1000mm=370mm 2000mm=350mm 3000mm=330mm 4000mm=310mm",
        "Butt ub=380,Mid ub=350,Top ob=320,Top ub=310 |",
        "Butt ub=380,Mid ob=360,Mid ub=350,Top ub=310 |",
      })
  void barkThatIsNotKnownIsNotGuessed(String diameters, String profile) throws IOException {
    Table table = read(OVER + log(1, 400, diameters(diameters.split(","))));
    assertEquals(profile == null ? "" : profile, profile(table, 1));
  }

  /** Two stations are no profile, nor is one of a stem measured under bark for a log over it. */
  @Test
  void tooFewStationsAreNoProfile() throws IOException {
    String under = OVER.replace("Over bark", "Under bark");
    String over = diameters("Butt ob=400", "Mid ob=390", "Top ob=380");
    assertEquals("", profile(read(OVER + log(1, 150, over)), 1));
    assertEquals("", profile(read(under + log(1, 400, over)), 1));
    assertEquals("", profile(read(log(1, 400, over)), 1));
  }

  private static String profile(Table table, int log) {
    Row row = table.rows().get(log);
    return row.cell(9).text();
  }

  private Table read(String stem) throws IOException {
    String text =
        "<HarvestedProduction xmlns='urn:skogforsk:stanford2010' lengthUnit='cm' diameterUnit='mm'>"
            + "<Machine><Stem><StemKey>1</StemKey><SingleTreeProcessedStem>"
            + stem
            + "</SingleTreeProcessedStem></Stem></Machine></HarvestedProduction>";
    Path file = Files.writeString(folder.resolve("stems.hpr"), text);
    Read<List<Table>> read = HarvesterReader.read("stems.hpr", file);
    return read.value().orElseThrow(() -> new AssertionError(read.problems())).get(0);
  }
}
