package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.balance.Effort;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Choice;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** How many of many twelve-round builds end level, stay level and keep their gaps. */
class RiseBenchmark {
  private static final int ROUNDS = 12;
  private static final int BUILDS = Integer.getInteger("builds", 60);

  @TempDir private Path folder;

  /** What is counted over builds of one kind. */
  private static final class Tally {
    private final List<Double> tops = new ArrayList<>();
    private final List<Double> worst = new ArrayList<>();
    private final List<Double> each = new ArrayList<>();
    private final List<Double> gaps = new ArrayList<>();

    void add(SimulatedWall wall) {
      List<Double> corners = wall.worstCorners();
      tops.add(corners.get(ROUNDS - 1));
      worst.add(corners.stream().mapToDouble(x -> x).max().orElse(0));
      each.addAll(corners);
      gaps.add(SimulatedBuild.inside(wall.gaps()));
    }

    static double within(List<Double> values) {
      return values.stream().filter(value -> value <= 0.25).count() / (double) values.size();
    }

    private static double at(List<Double> values, double share) {
      List<Double> sorted = values.stream().sorted().toList();
      return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    double inside() {
      return gaps.stream().mapToDouble(x -> x).average().orElse(0);
    }

    @Override
    public String toString() {
      return "within 1/4 in: top %.0f %%, after any one round %.0f %%, after every round %.0f %%; "
              .formatted(100 * within(tops), 100 * within(each), 100 * within(worst))
          + "worst corner at the top: median %.2f, 95 %% %.2f, most %.2f in; "
              .formatted(at(tops, 0.5), at(tops, 0.95), at(tops, 1))
          + "gaps inside: mean %.1f %%, least build %.1f %%"
              .formatted(100 * inside(), 100 * at(gaps, 0));
    }
  }

  @Test
  void mostBuildsEndWithinAQuarterInch() throws Exception {
    Tally rise = new Tally();
    Tally blind = new Tally();
    for (double bias : new double[] {0, 0.375}) {
      Tally risen = new Tally();
      Tally drifted = new Tally();
      long from = bias > 0 ? 1 + BUILDS : 1;
      for (long seed = from; seed < from + BUILDS / 2; seed++) {
        Job job = job(seed);
        Choice first = new BalancedChooser().choose(job, Effort.usual(seed).withMoves(600_000));
        SimulatedWall wall = new SimulatedRise(job, first, new SimulatedWall(seed, bias)).run();
        SimulatedWall other = blind(job, first, new SimulatedWall(seed, bias));
        List.of(rise, risen).forEach(tally -> tally.add(wall));
        List.of(blind, drifted).forEach(tally -> tally.add(other));
      }
      System.out.println("tally out by " + bias + " in: risen: " + risen);
      System.out.println("tally out by " + bias + " in: blind: " + drifted);
    }
    System.out.println("all, risen: " + rise);
    assertTrue(Tally.within(rise.tops) > 0.8, "ends within a quarter inch: " + rise);
    assertTrue(Tally.within(blind.tops) < 0.2, "the blind ones drift: " + blind);
    assertTrue(rise.inside() > 0.94, "gaps inside the limits: " + rise);
  }

  private static SimulatedWall blind(Job job, Choice first, SimulatedWall wall) {
    Stack stack = Stack.of(job.rules(), job.building(), first.courses());
    SimulatedWall.Page page = new SimulatedWall.Page(job, first.courses(), stack);
    for (int round = 1; round <= ROUNDS; round++) {
      wall.lay(page, job, round);
    }
    return wall;
  }

  private Job job(long seed) throws Exception {
    Path own = Files.createDirectories(folder.resolve("build" + seed));
    new CrewFolder(own).tally(seed, ROUNDS, 6);
    Asked asked =
        new Asked(
            Map.of("Rounds", "" + ROUNDS),
            Optional.of("20x14"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Job job =
        Sources.read(own.resolve("hut.csv"))
            .value()
            .map(tables -> JobReader.read(tables, asked))
            .flatMap(read -> read.value().flatMap(JobReader.Findings::job))
            .orElseThrow();
    return with(with(job, Setting.SIZE_STEP, "size"), Setting.LEVEL_TOLERANCE, "tolerance");
  }

  /** Lets a setting be tried out in sixteenths: {@code -Dsize=2}. */
  private static Job with(Job job, Setting setting, String property) {
    Integer sixteenths = Integer.getInteger(property);
    return sixteenths == null
        ? job
        : job.with(job.rules().with(setting, Length.ofInchFraction(sixteenths, 16), Origin.OPTION));
  }
}
