package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.rounds.Shortage.Missing;
import roundbook.units.Length;

/** How many rounds are wanted and what is missing for them, by hand; walls of 240 and 168 in. */
class WantedTest {
  private static final Length LONG = Length.ofInches(250);
  private static final Length CROSS = Length.ofInches(178);

  @Test
  void roundsToldAreWanted() {
    assertEquals(7, wanted(told(job(10, 10, "12"), 7)).rounds());
    Job both = with(told(job(10, 10, "12"), 7), Setting.WALL_HEIGHT, Length.ofInches(26));
    assertEquals(7, wanted(both).rounds());
    assertEquals(Optional.empty(), Wanted.height(both));
  }

  /** A course of 12 in logs is 13 in high. */
  @ParameterizedTest(name = "{0} in: {1}")
  @CsvSource({"26, 2", "32.4, 2", "32.6, 3", "1, 1"})
  void aHeightIsDividedByTheCourse(String height, int rounds) {
    Job job = with(job(10, 10, "12"), Setting.WALL_HEIGHT, Jobs.inches(height));
    assertEquals(rounds, wanted(job).rounds());
    assertEquals(Optional.of(Jobs.inches(height)), Wanted.height(job));
    assertEquals(0, wanted(job.withLogs(List.of())).rounds(), "no log tells of a course");
  }

  @Test
  void elseAsManyAsTheUsableLogsFill() {
    Job job = job(5, 6, "12");
    assertEquals(2, wanted(job).rounds());
    List<Log> logs = new ArrayList<>(job.logs());
    logs.set(0, Kept.log(logs.get(0), Log.Keep.SPARE));
    logs.set(1, logs.get(1).skipped());
    logs.set(2, Jobs.log("L3", LONG, "5", "5", "5"));
    assertEquals(2, wanted(job.withLogs(logs)).rounds(), "eight are left");
    logs.set(3, logs.get(3).skipped());
    assertEquals(1, wanted(job.withLogs(logs)).rounds(), "seven are left");
  }

  /** 9 courses of 13 in are 9 ft 9 in, one more is over 10 ft. */
  @Test
  void noMoreThanAStoreyWhereNobodySaysHowHigh() {
    assertEquals(9, wanted(job(80, 80, "12")).rounds());
    assertEquals(40, wanted(told(job(80, 80, "12"), 40)).rounds(), "told is told");
  }

  @Test
  void nothingIsMissingWhereAllStands() {
    assertEquals(Optional.empty(), wanted(told(job(4, 4, "12"), 2)).shortage(2, 2));
    assertEquals(Optional.empty(), wanted(told(job(4, 4, "12"), 2)).shortage(2, 3));
    assertEquals(Optional.empty(), wanted(job(4, 4, "12")).shortage(9, 2), "none was told");
    Job high = with(job(4, 4, "12"), Setting.WALL_HEIGHT, Length.ofInches(60));
    assertEquals(5, wanted(high).shortage(5, 2).orElseThrow().wanted());
  }

  /** Without a word of rounds one is wanted at least. */
  @Test
  void oneRoundIsMissingWhereNoneCanBeBuilt() {
    Shortage shortage = wanted(job(1, 1, "12")).shortage(0, 0).orElseThrow();
    assertEquals(1, shortage.wanted());
    assertEquals(0, shortage.built());
    assertEquals(2, shortage.count());
  }

  /**
   * Three rounds want six logs of each kind; the third and seventh of the nine on hand, by quarters
   * of an inch, bound the bands.
   */
  @Test
  void whatIsMissingIsTheLongestFirst() {
    Job job = told(job(4, 5, "11.3", "12", "12.6", "13.1"), 3);
    List<Missing> missing = wanted(job).shortage(3, 2).orElseThrow().missing();
    Length from = Length.ofInchFraction(45, 4);
    Length to = Length.ofInchFraction(25, 2);
    assertEquals(
        List.of(new Missing(2, LONG, "N S", from, to), new Missing(1, CROSS, "W", from, to)),
        missing);
  }

  /** Long logs left over serve the short walls. */
  @Test
  void longLogsFillShortWallsToo() {
    Job job = told(job(9, 2, "12"), 3);
    List<Missing> missing = wanted(job).shortage(3, 2).orElseThrow().missing();
    assertEquals(1, missing.size());
    assertEquals(1, missing.get(0).count());
    assertEquals(CROSS, missing.get(0).least());
  }

  @Test
  void aYardOfNothingTellsNoDiameters() {
    Job job = told(job(0, 0, "12"), 1);
    List<Missing> missing = wanted(job).shortage(1, 0).orElseThrow().missing();
    assertEquals(
        List.of(
            new Missing(2, LONG, "N S", Length.ZERO, Length.ZERO),
            new Missing(2, CROSS, "E W", Length.ZERO, Length.ZERO)),
        missing);
    assertEquals(Length.ZERO, missing.get(0).middle());
  }

  @Test
  void aLineCanBeCountedAndBandedAnew() {
    Missing line = new Missing(3, LONG, "N S", Length.ofInches(11), Length.ofInches(13));
    assertEquals(Length.ofInches(12), line.middle());
    assertEquals(1, line.withCount(1).count());
    assertEquals("N S", line.withCount(1).walls());
    Missing band = line.withBand(Length.ofInches(9), Length.ofInches(10));
    assertEquals(Length.ofInchFraction(19, 2), band.middle());
    assertEquals(3, band.count());
    assertTrue(new Shortage(2, 1, List.of(line, band)).proof().isEmpty());
    assertEquals(6, new Shortage(2, 1, List.of(line, band)).count());
  }

  private static Job told(Job job, int rounds) {
    return with(job, Setting.ROUNDS, BigDecimal.valueOf(rounds));
  }

  private static Job with(Job job, Setting setting, Object value) {
    return job.with(job.rules().with(setting, value, Origin.OPTION));
  }

  /** Returns a job of so many logs for N and S, and for E and W, of these diameters in turn. */
  private static Job job(int longLogs, int crossLogs, String... mids) {
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < longLogs + crossLogs; i++) {
      String mid = mids[i % mids.length];
      logs.add(Jobs.log("L" + (i + 1), i < longLogs ? LONG : CROSS, mid, mid, mid));
    }
    return Jobs.random(1, 1).withLogs(logs);
  }

  private static Wanted wanted(Job job) {
    return new Wanted(PairedJob.of(job));
  }
}
