package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

class SettingsReaderTest {
  /** A frosty day and a number as a script exports it were once refused. */
  @ParameterizedTest
  @CsvSource({
    "Air_temperature, -10, -10",
    "Air_temperature, −10.5, -10.5",
    "Air_temperature, 70, 70",
    "Moisture_now, 19.000000000000004, 19.000000000000004",
    "Waste_percent, 12.5 %, 12.5",
  })
  void readsNumbers(String label, String text, String number) {
    Read<BuildRules> read = read(label, text);
    assertEquals(List.of(), read.problems());
    Setting setting = Setting.ofLabel(label).orElseThrow();
    assertEquals(number, read.value().orElseThrow().number(setting).toPlainString());
  }

  @ParameterizedTest
  @CsvSource({
    "Waste_percent, -5",
    "Air_temperature, --5",
    "Air_temperature, -",
    "Seed, -1",
    "Butt_share, 150",
    "Air_humidity, 101",
    "Wall_height, 8",
    "Wall_height, 2.4",
    "Bed_length, 20",
    "Tree_height, 80",
  })
  void refuses(String label, String text) {
    assertEquals(1, read(label, text).problems().size());
  }

  private static Read<BuildRules> read(String label, String text) {
    Row row = new Row(1, List.of(Cell.text(1, label), Cell.text(2, text)), false, false);
    return JobReader.rules(Table.of("job.xlsx", "Job", Set.of(), List.of(row)), Asked.NOTHING);
  }
}
