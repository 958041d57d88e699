package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.problem.Read;

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

  /** What is said of each, and how far it may go. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "Units, furlong, bad-setting.value",
    "Units, MM,",
    "Tip_rule, Refuse,",
    "Tip_rule, never, bad-setting.value",
    "Rounds, 12,",
    "Rounds, 0, bad-setting.value",
    "Rounds, 2.5, bad-setting.value",
    "Rounds, 1e9, bad-setting.value",
    "Seed, 1000000000, bad-setting.value",
    "Slope_run, 1:3,",
    "Slope_run, 3,",
    "Slope_run, 0, bad-setting.value",
    "Overhang, 48,",
    "Overhang, 48.1, bad-setting.value",
    "Overhang, 0,",
    "Overhang, 1.2 m,",
    "Log_thickness, 0, bad-setting.value",
    "Log_thickness, x, bad-setting.value",
    "Tally_correction, -1/4,",
    "Chinking_gap, -1, bad-setting.value",
    "Chinking_gap, 24.1, bad-setting.value",
    "Butt_share, 100,",
    "Job_name, any words at all,",
    "Overhnag, 3, bad-setting.unknown",
    "Round, 7, bad-setting.unknown",
    "Seeds, 7, bad-setting.unknown",
    "Weather, fair,",
    "Notes, 3,",
    "Sky_colour, blue, unknown-setting",
    "sky colour, blue,",
    "Column_mid, middle,",
    "Length_unit, ft,",
    "'', 3,",
    "Overhang, '',",
    "Overhang, =!, bad-setting.formula",
    "Overhang, =?, bad-setting.formula",
    "Overhang, =4,",
  })
  void saysWhatCannotBeUsed(String label, String text, String said) {
    Read<BuildRules> read = rules("Setting|Value|Unit", label + "|" + text);
    String key = read.problems().isEmpty() ? null : read.problems().get(0).said().key();
    assertEquals(said, key, read.problems().toString());
    read.problems().forEach(each -> assertEquals(2, each.where().row()));
  }

  /** A length may say its unit, in its cell or in the column of units; else the job's is taken. */
  @ParameterizedTest
  @CsvSource({
    "in, 4, '', 4",
    "in, 4, cm, 1.57",
    "in, 4 cm, '', 1.57",
    "mm, 100, '', 3.94",
    "mm, 4, in, 4",
    "cm, 10, '', 3.94",
    "in, =4, mm, 0.16",
  })
  void aLengthHasAUnit(String units, String value, String unit, String inches) {
    Read<BuildRules> read = rules("Units|" + units, "Overhang|" + value + "|" + unit);
    assertEquals(List.of(), read.problems());
    assertEquals(inches, Tally.inches(read.value().orElseThrow().overhang()));
  }

  /** Walls told in metres make a job in millimetres; a word for units wins. */
  @ParameterizedTest
  @CsvSource({"7.3mx5.5m, '', mm", "20x14, '', in", "7.3mx5.5m, in, in", "20x14, cm, cm"})
  void wallsInMetresMakeAMetricJob(String walls, String units, String unit) {
    Map<String, String> told = units.isEmpty() ? Map.of() : Map.of("units", units);
    Asked asked = Tally.asked(told, walls);
    BuildRules rules = JobReader.rules(Tally.of().table("Job"), asked).value().orElseThrow();
    assertEquals(unit, rules.unit().symbol());
    assertEquals(!unit.equals("in"), rules.metric());
    assertEquals(unit.equals("in") ? "6" : "5.91", Tally.inches(rules.thickness()));
  }

  /**
   * The first of two rows of one setting counts, and every setting that none names has its default.
   */
  @Test
  void theFirstRowCounts() {
    BuildRules rules = rules("Overhang|4", "Overhang|5").value().orElseThrow();
    assertEquals("4", Tally.inches(rules.overhang()));
    assertEquals(Origin.WORKBOOK, rules.value(Setting.OVERHANG).orElseThrow().origin());
    for (Setting setting : Setting.values()) {
      boolean has = !setting.standard(false).isEmpty() || setting == Setting.OVERHANG;
      assertEquals(has, rules.value(setting).isPresent(), setting.label());
    }
  }

  private static Read<BuildRules> rules(String... rows) {
    return JobReader.rules(Tally.of(rows).table("Job"), Asked.NOTHING);
  }

  private static Read<BuildRules> read(String label, String text) {
    return rules(label + "|" + text);
  }
}
