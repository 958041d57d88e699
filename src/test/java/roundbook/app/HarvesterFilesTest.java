package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Log;
import roundbook.job.Log.Source;
import roundbook.problem.Read;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Real harvester files: the butt, middle and top of each log are the machine's own figures.
 *
 * <p>The files are excerpts of open ones (src/test/resources/harvester/README.txt); their figures
 * are found here by plain text, not by the program's reader.
 */
class HarvesterFilesTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "harvester");
  private static final Pattern STEM =
      Pattern.compile("<Stem><StemKey>(.*?)</StemKey>(.*?)</Stem>", Pattern.DOTALL);
  private static final Pattern LOG = Pattern.compile("<Log><LogKey>(.*?)</LogKey>(.*?)</Log>");
  private static final Pattern MACHINE =
      Pattern.compile("<LogMeasurement logMeasurementCategory=\"Machine\">(.*?)</LogMeasurement>");

  @ParameterizedTest
  @CsvSource({"version-2.1.hpr, 20", "version-3.0.hpr, 15", "version-3.3.hpr, 10"})
  void takesTheMachinesOwnDiameters(String name, int fewest) throws IOException {
    Path file = FOLDER.resolve(name);
    Map<String, String> truth = truth(Files.readString(file));
    List<Table> tables = Sources.read(file).value().orElseThrow();
    Read<JobReader.Findings> read = JobReader.read(tables, Asked.NOTHING);
    List<Log> logs = read.value().orElseThrow().logs();
    assertTrue(logs.size() >= fewest, "only " + logs.size() + " logs of " + truth.size());
    for (Log log : logs) {
      String own = truth.get(log.tag());
      assertEquals(number(own, "<LogLength>"), log.length().in(LengthUnit.CENTIMETRE), 1e-6);
      boolean under = own.contains("\"Mid ub\"") && own.contains("\"Top ub\"");
      String bark = under ? " ub\">" : " ob\">";
      assertMachine(own, "Butt" + bark, log.butt(), log.sources().butt(), log);
      assertMachine(own, "Mid" + bark, log.mid(), log.sources().mid(), log);
      assertMachine(own, "Top" + bark, log.tip(), log.sources().tip(), log);
    }
  }

  private static void assertMachine(
      String own, String category, Length read, Source source, Log log) {
    if (own.contains("\"" + category)) {
      assertEquals(Source.MEASURED, source, log.tag());
      double wanted = number(own, "\"" + category);
      assertEquals(wanted, read.in(LengthUnit.MILLIMETRE), 1e-6, log.tag() + " " + category);
    }
  }

  private static double number(String own, String mark) {
    int from = own.indexOf(mark) + mark.length();
    return Double.parseDouble(own.substring(from, own.indexOf('<', from)));
  }

  private static Map<String, String> truth(String text) {
    Map<String, String> truth = new HashMap<>();
    Matcher stem = STEM.matcher(text);
    while (stem.find()) {
      Matcher log = LOG.matcher(stem.group(2));
      while (log.find()) {
        Matcher machine = MACHINE.matcher(log.group(2));
        if (machine.find()) {
          truth.put(stem.group(1) + "-" + log.group(1), machine.group(1));
        }
      }
    }
    return truth;
  }
}
