package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.rounds.Shortage.Missing;
import roundbook.units.Length;

/** An order makes the job whole, and not one of its logs can be left out. */
class ReorderTest {
  private static final Effort EFFORT = new Effort(20_000, 1, () -> false, done -> {});

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43, 44})
  void theJobIsWholeWithTheOrderAndNotWithOneLogFewer(long seed) {
    Job job = rounds(Jobs.random(seed, 30), 9);
    Shortage shortage = shortage(job);
    assertEquals(9, shortage.wanted());
    assertEquals(6, shortage.missing().stream().mapToInt(Missing::count).sum());
    List<Log> sent = sent(shortage, seed);
    assertEquals(9, built(plus(job, sent)));
    for (Log log : sent) {
      List<Log> fewer = new ArrayList<>(sent);
      fewer.remove(log);
      assertTrue(built(plus(job, fewer)) < 9, () -> "needless: " + log);
    }
    assertEquals(9, shortage.proof().orElseThrow().rounds());
    assertTrue(shortage.proof().orElseThrow().oneFewer() < 9);
  }

  /** Long logs serve short walls too, so short ones are ordered where either would do. */
  @Test
  void noLongLogIsOrderedWhereAShortOneWillDo() {
    Job job = Jobs.random(45, 40);
    List<Log> longOnly = job.logs().stream().filter(log -> isLong(job, log)).toList();
    Shortage shortage = shortage(rounds(job.withLogs(longOnly), longOnly.size() / 3));
    Length least = new Fit(job).least(job.building().walls().get(1));
    shortage.missing().forEach(line -> assertEquals(least, line.least(), line::toString));
  }

  @Test
  void theBandsSuitTheLogsThereAre() {
    Job job = rounds(Jobs.random(46, 30), 9);
    Length thin = job.logs().stream().map(Log::mid).reduce(Length::least).orElseThrow();
    Length thick = job.logs().stream().map(Log::mid).reduce(Length::most).orElseThrow();
    Length inch = Length.ofInchFraction(5, 4);
    for (Missing line : shortage(job).missing()) {
      assertFalse(line.midFrom().isLessThan(thin.minus(inch)), line::toString);
      assertFalse(line.midTo().isMoreThan(thick.plus(inch)), line::toString);
      assertTrue(line.midFrom().isLessThan(line.midTo()), line::toString);
    }
  }

  /** Tips too thin for their round are no shortage that counting lengths would show. */
  @Test
  void whereThinTipsAreRefusedOnlyWhatIsNeededIsOrdered() {
    Job job = rounds(Jobs.random(47, 24), 5);
    List<Log> logs = new ArrayList<>(job.logs());
    for (int i = 0; i < 12; i++) {
      logs.set(i, thinTipped(logs.get(i)));
    }
    Job refusing =
        job.withLogs(logs).with(job.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION));
    Shortage shortage = shortage(refusing, EFFORT.withMoves(100_000));
    assertEquals(5, shortage.proof().orElseThrow().rounds(), shortage::toString);
    assertTrue(shortage.proof().orElseThrow().oneFewer() < 5, shortage::toString);
  }

  @Test
  void aYardWithoutOneUsableLogOrdersThemAll() {
    Job job = Jobs.random(48, 4);
    Job none = rounds(job.withLogs(job.logs().stream().map(ReorderTest::shortened).toList()), 3);
    Shortage shortage = shortage(none);
    assertEquals(0, shortage.built());
    assertEquals(12, shortage.missing().stream().mapToInt(Missing::count).sum());
    assertEquals(3, built(plus(none, sent(shortage, 1))));
  }

  private static Shortage shortage(Job job) {
    return shortage(job, EFFORT);
  }

  private static Shortage shortage(Job job, Effort effort) {
    BalancedChooser chooser = new BalancedChooser();
    Choice choice = chooser.choose(job, effort);
    return Reorder.proved(chooser, job, choice, effort).shortage().orElseThrow();
  }

  private static int built(Job job) {
    return new BalancedChooser().choose(job, EFFORT).courses().size();
  }

  /** Returns what a yard might send: a little longer, of any diameter in the band. */
  private static List<Log> sent(Shortage shortage, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Log> sent = new ArrayList<>();
    for (Missing line : shortage.missing()) {
      for (int i = 0; i < line.count(); i++) {
        Length length = line.least().plus(Length.ofInches(random.nextInt(6)));
        Length wide = line.midTo().minus(line.midFrom());
        Length mid = line.midFrom().plus(wide.timesRatio(random.nextInt(9), 8));
        Length half = Length.ofInchFraction(9, 8);
        DiameterProfile profile = DiameterProfile.of(length, mid.plus(half), mid, mid.minus(half));
        sent.add(Jobs.log("900" + sent.size(), length, profile));
      }
    }
    return sent;
  }

  private static Job plus(Job job, List<Log> more) {
    List<Log> logs = new ArrayList<>(job.logs());
    logs.addAll(more);
    return job.withLogs(logs);
  }

  private static Job rounds(Job job, int rounds) {
    return job.with(job.rules().with(Setting.ROUNDS, BigDecimal.valueOf(rounds), Origin.OPTION));
  }

  private static boolean isLong(Job job, Log log) {
    return new Fit(job).serves(log, job.building().walls().get(0));
  }

  private static Log thinTipped(Log log) {
    Length tip = Length.ofInchFraction(25, 4);
    return Jobs.log(log.tag(), log.length(), profile(log.length(), log.butt(), log.mid(), tip));
  }

  private static Log shortened(Log log) {
    Length length = log.length().dividedBy(3);
    return Jobs.log(log.tag(), length, profile(length, log.butt(), log.mid(), log.tip()));
  }

  private static DiameterProfile profile(Length length, Length butt, Length mid, Length tip) {
    return DiameterProfile.of(length, butt, mid, tip);
  }
}
