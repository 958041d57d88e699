package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.problem.words.Sentences;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.WoodPrice;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * A log long enough for a longer wall goes to a shorter one only where no shorter log does nearly
 * as well, and the plan says what that one would cost: two rounds of cylinders by hand.
 *
 * <p>Walls are 20 by 14 ft, so logs of 250 in fill the long ones and of 178 in the short ones.
 */
class LongLogsTest {
  private static final Effort FEW = Effort.usual(1).withMoves(20_000);

  private static Log cylinder(int number, int length, String thick) {
    return Jobs.log("L" + number, Length.ofInches(length), thick, thick, thick);
  }

  /** Five long logs for four places, and four short ones of which the last is thicker. */
  private static Job job(String last) {
    List<Log> logs = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      logs.add(cylinder(i, i <= 5 ? 250 : 178, "13"));
    }
    logs.add(cylinder(9, 178, last));
    var rules = Jobs.rules(false).with(Setting.ROUNDS, BigDecimal.valueOf(2), Origin.WORKBOOK);
    var building = Jobs.building(Length.ofInches(240), Length.ofInches(168), rules.thickness());
    return new Job(rules, building, logs, List.of(), List.of());
  }

  private static String spare(Plan plan) {
    List<LogUse> spares = plan.uses().stream().filter(use -> use.use() == Use.SPARE).toList();
    assertEquals(1, spares.size());
    return spares.get(0).log().tag();
  }

  /**
   * Three eighths more make three gaps 3/16 in less: 0.105 in². The long log's 72 in count a
   * thousandth an inch as offcut, and four fifths of two for the wall that could have it: 0.187
   * in². Six eighths make 0.42 in².
   */
  @ParameterizedTest
  @CsvSource({"13 3/8, false", "13 3/4, true"})
  void itIsTakenWhereItSavesMoreThanItIsWorth(String last, boolean taken) {
    Plan plan = new Planner(new BalancedChooser()).plan(job(last), FEW);
    assertEquals(taken, spare(plan).equals("L9"));
    List<String> said =
        plan.uses().stream()
            .map(use -> use.note().in(Sentences.english()))
            .filter(note -> note.contains("long enough"))
            .toList();
    assertEquals(
        taken
            ? List.of(
                "long enough for a longer wall; the shorter log L9 would leave the gaps 0.42 in²"
                    + " worse")
            : List.of(),
        said);
  }

  @Test
  void aLongLogIsPricedWhereThereAreShorterOnes() {
    Job job = job("13");
    WoodPrice price = new WoodPrice(job, 2);
    double more = 72 * 0.002 * 4 / 5;
    assertEquals(0.072 + more, price.of(place(job, 1, "E")), 1e-9);
    assertEquals(0, price.of(place(job, 1, "N")), 1e-9);
    assertEquals(0, price.of(place(job, 6, "E")), 1e-9);
    Job allLong = job.withLogs(job.logs().subList(0, 5));
    assertEquals(0.072, new WoodPrice(allLong, 2).of(place(job, 1, "E")), 1e-9);
    assertFalse(new WoodPrice(allLong, 2).longer(place(job, 1, "E")).isPresent());
  }

  private static FilledPlace place(Job job, int log, String wall) {
    var on = job.building().wall(wall).orElseThrow();
    Length trimmed = job.building().trimmed(on, job.rules().overhang());
    Length two = Length.ofInches(2);
    return FilledPlace.of(
        new roundbook.job.Piece(job.logs().get(log - 1), two, trimmed), on, 1, true);
  }
}
