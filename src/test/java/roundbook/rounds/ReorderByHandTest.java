package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.rounds.Shortage.Missing;
import roundbook.rounds.Shortage.Proof;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Orders of cylinders of 12 in, whose gaps are all 1 in, planned with by sorting and dealing. */
class ReorderByHandTest {
  private static final Effort FEW = new Effort(20_000, 1, () -> false, done -> {});
  private static final Length LONG = Length.ofInches(250);
  private static final Length CROSS = Length.ofInches(178);
  private static final DiameterProfile THIN_BEYOND_ITS_MIDDLE =
      new DiameterProfile(
          List.of(station(0, 12), station(125, 12), station(150, 6.5), station(250, 6.5)));
  private static final DiameterProfile THIN_AND_SHORT =
      new DiameterProfile(
          List.of(station(0, 12), station(89, 12), station(110, 6.5), station(178, 6.5)));
  private static final Length INCH = Length.ofInches(1);
  private static final Chooser DEAL = new BalancedChooser(Balancer.sortAndDeal());

  @Test
  void theOrderIsWhatTheMatchingLeavesEmptyAndIsProved() {
    Job job = job(3, logs(5, 5, "12", "12"));
    Choice choice = DEAL.choose(job, FEW);
    assertEquals(2, choice.courses().size());
    Shortage shortage = Reorder.proved(DEAL, job, choice, FEW).shortage().orElseThrow();
    assertEquals(3, shortage.wanted());
    assertEquals(2, shortage.built());
    Length from = Jobs.inches("11.75");
    Length to = Jobs.inches("12.25");
    assertEquals(
        List.of(new Missing(1, LONG, "S", from, to), new Missing(1, CROSS, "W", from, to)),
        shortage.missing());
    assertEquals(Optional.of(new Proof(3, 2, INCH, INCH)), shortage.proof());
  }

  @Test
  void aJobThatIsWholeOrdersNothing() {
    Job job = job(1, logs(2, 2, "12", "12"));
    Choice choice = DEAL.choose(job, FEW);
    assertEquals(choice, Reorder.proved(DEAL, job, choice, FEW));
  }

  /** The search that sizes an order is given work by its places where nothing was asked. */
  @Test
  void theUsualEffortGrowsWithThePlaces() {
    assertEquals(Set.of(200_000L), moves(2, 0));
    assertEquals(Set.of(20_000L), moves(2, 20_000));
  }

  private static Set<Long> moves(int rounds, long asked) {
    Set<Long> seen = new TreeSet<>();
    Chooser counting =
        (job, effort) -> {
          seen.add(effort.moves());
          return DEAL.choose(job, FEW);
        };
    Job job = job(rounds, logs(2, 2, "12", "12"));
    Reorder.proved(counting, job, DEAL.choose(job, FEW), FEW.withMoves(asked));
    return seen;
  }

  /** Ends of a band that lose a round are none: both lines are narrowed to their middles. */
  @Test
  void bandsWhoseEndsDoNotServeAreNarrowed() {
    Job job = job(2, logs(2, 2, "12", "12"));
    Length middle = Length.ofInches(12);
    for (String refused : List.of("11.75", "12.25")) {
      Chooser picky =
          (asked, effort) ->
              asked.job().logs().stream().anyMatch(log -> log.mid().equals(Jobs.inches(refused)))
                  ? DEAL.choose(job, FEW)
                  : DEAL.choose(asked, FEW);
      Choice choice = DEAL.choose(job, FEW);
      Shortage shortage = Reorder.proved(picky, job, choice, FEW).shortage().orElseThrow();
      assertEquals(
          List.of(
              new Missing(2, LONG, "N S", middle, middle),
              new Missing(2, CROSS, "E W", middle, middle)),
          shortage.missing());
      assertEquals(2, shortage.proof().orElseThrow().rounds());
    }
  }

  /** Of eight logs one on N and one on E have tips too thin for any round: two are ordered. */
  @Test
  void whereThinTipsAreRefusedTheOrderIsLessenedLogByLog() {
    List<Log> logs = new ArrayList<>(logs(4, 4, "12", "12"));
    logs.set(0, Jobs.log("L1", LONG, THIN_BEYOND_ITS_MIDDLE));
    logs.set(4, Jobs.log("L5", CROSS, "12", "12", "6.5"));
    Job plain = job(2, logs);
    Job job = plain.with(plain.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION));
    Choice choice = new BalancedChooser().choose(job, FEW);
    assertEquals(1, choice.courses().size());
    assertEquals(List.of(), choice.shortage().orElseThrow().missing());
    Choice proved = Reorder.proved(new BalancedChooser(), job, choice, FEW);
    Shortage shortage = proved.shortage().orElseThrow();
    assertEquals(2, shortage.count(), shortage::toString);
    assertEquals(1, shortage.missing().stream().filter(one -> one.least().equals(LONG)).count());
    Proof proof = shortage.proof().orElseThrow();
    assertEquals(2, proof.rounds());
    assertEquals(1, proof.oneFewer());
  }

  /** Seven logs of eight are there, but only two may lie: an order of one would bring nothing. */
  @Test
  void whereMostEndsAreRefusedTheCountIsThatOfTheProof() {
    List<Log> logs = new ArrayList<>();
    logs.add(Jobs.log("L8", LONG, "12", "12", "12"));
    logs.add(Jobs.log("L9", CROSS, "12", "12", "12"));
    for (int i = 2; i <= 6; i++) {
      Length length = i <= 4 ? LONG : CROSS;
      logs.add(Jobs.log("L" + i, length, i <= 4 ? THIN_BEYOND_ITS_MIDDLE : THIN_AND_SHORT));
    }
    Job plain = job(2, logs);
    Job job = plain.with(plain.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION));
    Choice choice = new BalancedChooser().choose(job, FEW);
    assertEquals(0, choice.courses().size());
    Choice proved = Reorder.proved(new BalancedChooser(), job, choice, FEW);
    Shortage shortage = proved.shortage().orElseThrow();
    assertEquals(6, shortage.count(), shortage::toString);
    assertEquals(2, shortage.proof().orElseThrow().rounds());
    assertEquals(1, shortage.proof().orElseThrow().oneFewer());
  }

  /** A chooser that plans nothing proves nothing, and what is not proved is not ordered. */
  @Test
  void anOrderThatBringsNothingIsNotGiven() {
    Job job = job(2, logs(2, 2, "12", "12"));
    Choice choice = DEAL.choose(job, FEW);
    Choice none = new Choice(List.of(), job.logs(), choice.score(), choice.shortage(), List.of());
    Shortage shortage =
        Reorder.proved((asked, effort) -> none, job, choice, FEW).shortage().orElseThrow();
    assertEquals(new Shortage(2, 1, List.of()), shortage);
  }

  /** Of a yard that keeps its one round whatever is sent, nothing is ordered either. */
  @Test
  void anOrderThatBringsNoRoundMoreIsNotGiven() {
    Job job = job(2, logs(2, 2, "12", "12"));
    Choice choice = DEAL.choose(job, FEW);
    assertEquals(4, choice.shortage().orElseThrow().count());
    Shortage shortage =
        Reorder.proved((asked, effort) -> choice, job, choice, FEW).shortage().orElseThrow();
    assertEquals(new Shortage(2, 1, List.of()), shortage);
  }

  private static DiameterProfile.Station station(double fromButt, double diameter) {
    return new DiameterProfile.Station(
        Length.of(fromButt, LengthUnit.INCH), Length.of(diameter, LengthUnit.INCH));
  }

  private static Job job(int rounds, List<Log> logs) {
    Job sample = Jobs.random(1, 1).withLogs(logs);
    return sample.with(
        sample.rules().with(Setting.ROUNDS, BigDecimal.valueOf(rounds), Origin.OPTION));
  }

  private static List<Log> logs(int longLogs, int crossLogs, String thick, String tip) {
    List<Log> logs = new ArrayList<>();
    for (int i = 1; i <= longLogs + crossLogs; i++) {
      logs.add(Jobs.log("L" + i, i <= longLogs ? LONG : CROSS, thick, thick, tip));
    }
    return logs;
  }
}
