package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.rounds.Shortage.Missing;
import roundbook.units.Length;

/** Logs that a yard could send, and the diameters wanted of them, by hand. */
class OrderedLogsTest {
  private static final Length LONG = Length.ofInches(250);
  private static final Length CROSS = Length.ofInches(178);
  private static final Effort FEW = new Effort(40_000, 1, () -> false, done -> {});

  /** Halves of 250 in taper by 1, 2, 3 and 4 in, so the upper median over 125 in is 1 1/2 in. */
  @Test
  void anOrderedLogTapersAsLogsHereCommonlyDo() {
    Job job = tapering(Jobs.random(1, 1));
    Log log = new OrderedLogs(job).log(3, Length.ofInches(125), Length.ofInches(12));
    assertEquals("(ordered 3)", log.tag());
    assertEquals(Length.ofInches(125), log.length());
    assertEquals(List.of(13.5, 12.0, 11.0), diameters(log));
  }

  /** Where thin tips are refused slim logs are asked for: the second of four. */
  @Test
  void whereThinTipsAreRefusedItTapersLess() {
    Job job = refusing(tapering(Jobs.random(1, 1)));
    Log log = new OrderedLogs(job).log(1, Length.ofInches(125), Length.ofInches(12));
    assertEquals(List.of(13.0, 12.0, 11.25), diameters(log));
  }

  /** A log too short for any wall tells nothing; then 1 in 400 is common. */
  @Test
  void withoutALogOfItsOwnAYardTapersOneInFourHundred() {
    Job job = Jobs.random(1, 1);
    Log small = Jobs.log("L1", Length.ofInches(100), "20", "12", "4");
    Log log = new OrderedLogs(job.withLogs(List.of(small))).log(1, LONG, Length.ofInches(12));
    assertEquals(List.of(12.625, 12.0, 11.375), diameters(log));
  }

  @Test
  void allLogsOfAnOrderComeAfterTheJobsOwn() {
    Job job = tapering(Jobs.random(1, 1));
    Length twelve = Length.ofInches(12);
    Length ten = Length.ofInches(10);
    List<Missing> order =
        List.of(
            new Missing(2, LONG, "N S", ten, twelve), new Missing(1, CROSS, "E", twelve, twelve));
    Job with = new OrderedLogs(job).with(order, Missing::midFrom);
    List<Log> more = with.logs().subList(4, 7);
    assertEquals(job.logs(), with.logs().subList(0, 4));
    assertEquals(
        List.of("(ordered 1)", "(ordered 2)", "(ordered 3)"), more.stream().map(Log::tag).toList());
    assertEquals(List.of(LONG, LONG, CROSS), more.stream().map(Log::length).toList());
    assertEquals(List.of(ten, ten, twelve), more.stream().map(Log::mid).toList());
  }

  /** From an inch under the thinnest to an inch over the thickest, by half inches. */
  @Test
  void diametersToChooseFromReachPastTheLogsThereAre() {
    Job job = Jobs.random(1, 1);
    Job two = job.withLogs(List.of(log(1, LONG, "11.2"), log(2, CROSS, "12.3")));
    assertEquals(
        List.of(10.0, 10.5, 11.0, 11.5, 12.0, 12.5, 13.0), inches(new OrderedLogs(two).mids()));
    assertEquals(
        List.of(11.0, 11.5, 12.0, 12.5, 13.0),
        inches(new OrderedLogs(job.withLogs(List.of())).mids()),
        "twice the thickness of 6 in where there is no log");
    Job metric = Jobs.random(1, 1, true).withLogs(List.of());
    assertEquals(
        Stream.of(280, 290, 300, 310, 320).map(Length::ofMillimetres).toList(),
        new OrderedLogs(metric).mids());
  }

  /** One round of 14 in logs and one of 12 in, each without one log of 178 in. */
  @Test
  void diametersFurtherApartThanARoundMaySpreadAreTwoLines() {
    List<Log> logs =
        List.of(
            log(1, LONG, "14"),
            log(2, LONG, "14"),
            log(3, CROSS, "14"),
            log(4, LONG, "12"),
            log(5, LONG, "12"),
            log(6, CROSS, "12"));
    Job job = Jobs.random(1, 1).withLogs(logs);
    Missing counted = new Missing(2, CROSS, "E W", Length.ZERO, Length.ZERO);
    List<Missing> sized = new OrderSizes(PairedJob.of(job), 2).sized(List.of(counted), FEW);
    assertEquals(List.of(1, 1), sized.stream().map(Missing::count).toList());
    for (Missing line : sized) {
      assertEquals(CROSS, line.least());
      assertEquals("E W", line.walls());
      assertEquals(Jobs.inches("1/2"), line.midTo().minus(line.midFrom()));
    }
    Length apart = sized.get(0).middle().minus(sized.get(1).middle());
    assertTrue(apart.isMoreThan(Length.ofInches(1)), "one for each round: " + apart);
  }

  /** Any other diameter than 12 in would leave gaps of another height than an inch. */
  @Test
  void missingLogsGetTheDiametersThatMakeTheGapsEven() {
    List<Log> logs =
        List.of(
            log(1, LONG, "12"),
            log(2, LONG, "12"),
            log(3, LONG, "12"),
            log(4, CROSS, "12"),
            log(5, CROSS, "12"),
            log(6, CROSS, "12"));
    Job job = Jobs.random(1, 1).withLogs(logs);
    List<Missing> counted =
        List.of(
            new Missing(1, LONG, "S", Length.ZERO, Length.ZERO),
            new Missing(1, CROSS, "W", Length.ZERO, Length.ZERO));
    Length from = Jobs.inches("11.75");
    Length to = Jobs.inches("12.25");
    assertEquals(
        List.of(new Missing(1, LONG, "S", from, to), new Missing(1, CROSS, "W", from, to)),
        new OrderSizes(PairedJob.of(job), 2).sized(counted, FEW));
  }

  private static Job tapering(Job job) {
    return job.withLogs(
        List.of(
            Jobs.log("L1", LONG, "13", "12", "11.5"),
            Jobs.log("L2", LONG, "16", "12", "10.5"),
            Jobs.log("L3", LONG, "14", "12", "10"),
            Jobs.log("L4", LONG, "15", "12", "9.5")));
  }

  private static Job refusing(Job job) {
    return job.with(job.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION));
  }

  private static Log log(int number, Length length, String thick) {
    return Jobs.log("L" + number, length, thick, thick, thick);
  }

  private static List<Double> diameters(Log log) {
    return inches(List.of(log.butt(), log.mid(), log.tip()));
  }

  private static List<Double> inches(List<Length> lengths) {
    return lengths.stream().map(Length::inches).toList();
  }
}
