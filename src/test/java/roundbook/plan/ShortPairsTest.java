package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.exchange.Substitute;
import roundbook.job.Job;
import roundbook.plan.PiecePlan.Half;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;
import roundbook.rounds.BalancedChooser;
import roundbook.stack.Joint;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Short logs beside an opening take the places of long ones in the choice itself. */
class ShortPairsTest {
  private static final Effort EFFORT = Effort.usual(1).withMoves(60_000);

  private static Plan plan(Job job) {
    return new Planner(new BalancedChooser()).plan(job, EFFORT);
  }

  private static List<Half> halves(Plan plan) {
    return plan.pieces().stream().flatMap(piece -> piece.halves().stream()).toList();
  }

  /** Eight rounds want 16 long logs; 12 are there, and the door cuts through five of the wall. */
  @Test
  void aYardShortOfLongLogsIsWholeWithShortOnes() {
    ShortYards yard = ShortYards.of(8, 12, 18, 14);
    Plan without = plan(yard.job(false));
    assertTrue(without.choice().shortage().isPresent());
    assertEquals(6, without.rounds());
    Plan with = plan(yard.job(true));
    assertTrue(with.choice().shortage().isEmpty());
    assertEquals(8, with.rounds());
    assertTrue(halves(with).size() >= 8, halves(with).size() + " short logs");
    assertTrue(with.order().stream().noneMatch(line -> line.purpose() == OrderLine.Purpose.NEEDED));
  }

  /**
   * Cylinders of 13 in spoil no gap, and the door reaches past three rounds: so what can stand
   * follows from the lengths alone, and trying every set of places with pairs tells it. Which of
   * the logs, all alike, lie where hangs on the seed; with some seeds one of the yards here (two
   * long logs, eight for the cross walls, none small) loses a round that pairs could save.
   */
  @Test
  void asManyRoundsStandAsTryingAllShows() {
    for (int longLogs = 1; longLogs <= 4; longLogs++) {
      for (int cross : new int[] {2, 5, 8}) {
        for (int small : new int[] {0, 3, 6}) {
          List<Integer> lengths = new ArrayList<>(Collections.nCopies(longLogs, 252));
          lengths.addAll(Collections.nCopies(cross, 180));
          lengths.addAll(Collections.nCopies(small, 112));
          Job job = ShortYards.cylinders(3, lengths);
          int rounds =
              new BalancedChooser().choose(job, Effort.usual(2).withMoves(3_000)).courses().size();
          assertEquals(most(lengths), rounds, longLogs + " " + cross + " " + small);
        }
      }
    }
  }

  private static int most(List<Integer> lengths) {
    List<Integer> falling = lengths.stream().sorted(Comparator.reverseOrder()).toList();
    for (int rounds = 3; rounds > 0; rounds--) {
      for (int pairs = 0; pairs <= rounds; pairs++) {
        List<Integer> wanted = new ArrayList<>(Collections.nCopies(2 * rounds - pairs, 250));
        wanted.addAll(Collections.nCopies(2 * rounds, 178));
        wanted.addAll(Collections.nCopies(pairs, 111));
        wanted.addAll(Collections.nCopies(pairs, 107));
        boolean holds = wanted.size() <= falling.size();
        for (int i = 0; holds && i < wanted.size(); i++) {
          holds = falling.get(i) >= wanted.get(i);
        }
        if (holds) {
          return rounds;
        }
      }
    }
    return 0;
  }

  @Test
  void noLogLiesTwice() {
    Plan plan = plan(ShortYards.of(8, 12, 18, 14).job(true));
    Set<String> seen = new HashSet<>();
    plan.pieces().stream()
        .flatMap(piece -> piece.logs().stream())
        .forEach(log -> assertTrue(seen.add(log.piece().log().tag())));
    assertEquals(seen.size(), plan.uses().stream().filter(use -> use.use() == Use.PLACED).count());
    plan.choice().unused().forEach(log -> assertTrue(seen.add(log.tag())));
    assertEquals(plan.job().logs().size(), seen.size());
  }

  /** The lengths of the pieces by hand: 100 + 3 in at the left, 240 − 136 + 3 in at the right. */
  @Test
  void piecesAreAsLongAsTheirSidesAndLogsLongEnoughToSquare() {
    for (Half half : halves(plan(ShortYards.of(8, 12, 18, 14).job(true)))) {
      var piece = half.placed().piece();
      assertEquals(half.left() ? 103 : 107, piece.trimmed().inches());
      assertTrue(piece.cutOffButt().inches() >= 2);
      assertTrue(piece.fallsOff().inches() >= 2);
      double neck = 6 + 3;
      double shoulder = half.shoulder().inches();
      assertEquals(half.buttOut() ? neck : piece.trimmed().inches() - neck, shoulder);
    }
  }

  /** Gaps come from the logs that lie there: re-reckoned by hand at both faces of every joint. */
  @Test
  void gapsAtCornersAreThoseOfTheShortLogs() {
    Plan plan = plan(ShortYards.of(8, 12, 18, 14).job(true));
    int seen = 0;
    for (Joint joint : plan.stack().joints()) {
      for (boolean left : new boolean[] {true, false}) {
        double lower = atFace(joint.lower(), left);
        double upper = atFace(joint.upper(), left);
        double gap = joint.spacing().inches() - (lower + upper) / 2;
        assertEquals(gap, (left ? joint.left() : joint.right()).inches(), 1e-6);
        seen += joint.lower().logs().size() - 1;
      }
    }
    assertTrue(seen > 0);
  }

  /** The diameter 9 in from the end at a corner, of the log that lies there. */
  private static double atFace(roundbook.stack.FilledPlace placed, boolean left) {
    var logs = placed.logs();
    var log = left ? logs.get(0) : logs.get(logs.size() - 1);
    boolean buttHere = left != log.buttAtStart();
    double length = log.piece().trimmed().inches();
    double fromButt = log.piece().cutOffButt().inches() + (buttHere ? 9 : length - 9);
    var tally = log.piece().log();
    double half = tally.length().inches() / 2;
    double end = fromButt < half ? tally.butt().inches() : tally.tip().inches();
    double share = Math.abs(fromButt - half) / half;
    return tally.mid().inches() + (end - tally.mid().inches()) * share;
  }

  @Test
  void logsThatAreFreedAreSparesOrLieElsewhere() {
    Plan plan = plan(ShortYards.of(8, 17, 18, 14).job(true));
    int pairs = halves(plan).size() / 2;
    assertTrue(pairs > 0);
    long spare = plan.choice().unused().stream().filter(log -> log.length().inches() > 250).count();
    long crossing =
        plan.pieces().stream()
            .filter(piece -> List.of("E", "W").contains(piece.placed().wall().name()))
            .filter(piece -> piece.placed().first().piece().log().length().inches() > 250)
            .count();
    assertEquals(17 - (16 - pairs) - crossing, spare);
    assertEquals(16 - pairs, plan.supply().get(0).needed());
    assertEquals(spare, plan.supply().get(0).spare());
    assertTrue(plan.exchanges().spares().size() >= spare);
  }

  /** Short logs that are left over are spares for one of two, and what they would do is exact. */
  @Test
  void eachOfTwoShortLogsHasASpareOfItsOwn() {
    Plan plan = plan(ShortYards.of(8, 17, 18, 20).job(true));
    int seen = 0;
    for (Half half : halves(plan)) {
      Substitute best =
          plan.exchanges().substitutes().stream()
              .filter(each -> each.instead().equals(Optional.of(half.placed())))
              .findFirst()
              .orElseThrow();
      assertTrue(plan.choice().unused().contains(best.in().log()));
      assertEquals(half.left() ? 103 : 107, best.in().trimmed().inches());
      assertEquals(half.placed().piece().log().tag(), best.out());
      assertTrue(best.placed().logs().contains(half.placed()));
      assertTrue(
          plan.exchanges().spares().stream()
              .anyMatch(
                  spare -> spare.log().equals(best.in().log()) && spare.bestFor().contains(best)));
      seen++;
    }
    assertTrue(seen > 0);
  }

  @Test
  void theLogOverTheDoorIsWhole() {
    Plan plan = plan(ShortYards.of(8, 12, 18, 14).job(true));
    var header = plan.takeoff().openings().get(0).header().orElseThrow();
    assertEquals(1, header.logs().size());
  }

  @Test
  void nothingIsPairedUnlessAskedFor() {
    Plan plan = plan(ShortYards.of(8, 17, 18, 14).job(false));
    assertTrue(halves(plan).isEmpty());
    assertFalse(
        plan.uses().stream()
            .map(LogUse::note)
            .anyMatch(note -> note.in(Sentences.english()).contains("opening")));
  }

  @Test
  void theSameJobGivesTheSamePlan() {
    Job job = ShortYards.of(8, 12, 18, 14).job(true);
    assertEquals(plan(job).choice().courses(), plan(job).choice().courses());
  }

  /** Where only a long log lies beside the door, it is said before it is cut. */
  @Test
  void aLongLogThatIsCutShortIsSaid() {
    Plan plan = plan(ShortYards.of(8, 17, 18, 0).job(true));
    assertFalse(halves(plan).isEmpty());
    List<String> said =
        plan.problems().stream()
            .filter(each -> each.code() == ProblemCode.LONG_LOG_CUT)
            .map(Sentences.english()::message)
            .toList();
    assertEquals(halves(plan).size(), said.size());
    LengthFormat formats = LengthFormat.forJob(LengthUnit.INCH, Length.ofInchFraction(1, 16));
    for (Half half : halves(plan)) {
      String message =
          "opening Door, wall S: log %s of %s is cut to %s beside it in round %d, for no shorter"
              + " one does as well";
      var log = half.placed().piece().log();
      String cut = half.left() ? "8' 7\"" : "8' 11\"";
      String length = formats.feetInches(log.length());
      assertTrue(said.contains(message.formatted(log.tag(), length, cut, half.placed().round())));
    }
  }

  /** Where long logs suffice, short logs must keep every gap within its limits. */
  @Test
  void noPairSpoilsAGap() {
    Plan plan = plan(ShortYards.of(8, 17, 18, 14).job(true));
    for (Joint joint : plan.stack().joints()) {
      if (joint.lower().logs().size() + joint.upper().logs().size() > 2) {
        assertEquals(Joint.Flag.NONE, joint.flag(plan.job().rules()));
      }
    }
  }
}
