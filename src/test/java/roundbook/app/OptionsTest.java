package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command takes what means something to it, and names what it does not take. */
class OptionsTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @ParameterizedTest
  @CsvSource({
    "check x.csv -o y.xlsx, error: check takes no -o; it is an option of order and plan"
        + " and replan",
    "check x.csv --force, error: check takes no --force; it is an option of order and plan"
        + " and replan",
    "check x.csv --template=t.xlsx, error: check takes no --template",
    "check x.csv --no-pictures, error: check takes no --no-pictures",
    "check x.csv --resume, error: check takes no --resume; it is an option of plan",
    "replan x.xlsx --walls 20x14, error: replan takes no --walls; it is an option of order and"
        + " check and plan",
    "replan x.xlsx --units mm, error: replan takes no --units",
    "replan x.xlsx --yard y.csv, error: replan takes no --yard",
    "replan x.xlsx --recursive, error: replan takes no --recursive",
    "replan x.xlsx --resume, error: replan takes no --resume",
    "compare a.xlsx b.xlsx --strict, error: compare takes no --strict",
    "plan x.csv --nonsense, Unknown option: '--nonsense'",
    "plan x.csv --length-unit furlong, there is no unit furlong",
  })
  void whatACommandDoesNotTakeIsAUsageErrorThatNamesIt(String line, String said) {
    assertEquals(2, run(line.split(" ")));
    assertTrue(err().contains(said), err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"job workbook", "tallies.", "--walls", "--resume"})
  void replanSpeaksOfCrewWorkbooksAlone(String foreign) {
    assertEquals(0, run("replan", "--help"));
    String help = out.toString(StandardCharsets.UTF_8);
    assertTrue(help.contains("Crew workbooks"), help);
    assertFalse(help.toLowerCase(java.util.Locale.ROOT).contains(foreign), help);
  }

  private int run(String... args) {
    return Main.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void checkTakesWhatTellsHowToRead() {
    assertEquals(5, run("check", "none.csv", "--walls", "20x14", "--set", "Seed=2", "-q"), err());
  }
}
