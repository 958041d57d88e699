package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.plan.Plan;
import roundbook.stack.Course;

/**
 * A whole build through real workbooks: plan, hew, type, re-plan, cut, read, type, to the top.
 *
 * <p>Each revision holds a round that is cut and read and the next one measured. Beside it the same
 * logs and the same sizes of error are built blindly by the first revision's pages.
 */
final class SimulatedBuild {
  private final CrewFolder site;
  private final int rounds;
  private final SimulatedWall wall;
  private final SimulatedWall blind;
  private final List<Course> cut = new ArrayList<>();

  SimulatedBuild(Path folder, long seed, int rounds, double bias) throws Exception {
    this(
        new CrewFolder(folder).tally(seed, rounds, 6).plan("--rounds", "" + rounds),
        seed,
        rounds,
        bias);
  }

  /** A build of what was planned in a folder. */
  SimulatedBuild(CrewFolder site, long seed, int rounds, double bias) {
    this.rounds = rounds;
    this.site = site;
    this.wall = new SimulatedWall(seed, bias);
    this.blind = new SimulatedWall(seed, bias);
  }

  /** Builds to the top, and checks after every round that what is cut stays as it was cut. */
  SimulatedBuild run() throws Exception {
    Plan first = site.planOf(1);
    for (int round = 1; round <= rounds; round++) {
      blind.lay(first, first, round);
    }
    Map<String, Object> typed = new TreeMap<>(wall.measures(first, first, 1));
    for (int revision = 1; revision <= rounds; revision++) {
      TypedBook.type(site.book(revision), typed);
      assertEquals(0, site.replan(revision), site.said());
      Plan page = site.planOf(revision + 1);
      unchanged(page);
      typed.clear();
      typed.put("Cut_" + revision, "x");
      typed.putAll(corners(first, page, revision));
      cut.add(page.choice().courses().get(revision - 1));
      if (revision < rounds) {
        typed.putAll(wall.measures(page, first, revision + 1));
      }
    }
    TypedBook.type(site.book(rounds + 1), typed);
    assertEquals(0, site.replan(rounds + 1), site.said());
    unchanged(site.planOf(rounds + 2));
    return this;
  }

  /**
   * Lays a round by its page, reads its corners twice, and pares what the page says.
   *
   * <p>The lower marks of the second-laid logs and what is to be pared are the page's own: its
   * formulas are worked out after the readings were typed, and nothing is planned anew.
   */
  private Map<String, Object> corners(Plan first, Plan page, int round) throws Exception {
    Path book = site.book(round + 1);
    SimulatedWall.Page printed = SimulatedWall.Page.of(page);
    wall.layFirst(printed, first.job(), round);
    Map<String, Object> typed = new TreeMap<>(wall.firstReadings(round));
    List<String> corners = page.job().building().corners();
    double chart = page.choice().courses().get(round - 1).notch().lower().inches();
    Map<String, Double> changes = new TreeMap<>();
    TypedBook.after(book, typed, corners, "Lower_second_" + round + "_")
        .forEach((corner, lower) -> changes.put(corner, lower - chart));
    wall.laySecond(printed, first.job(), round, changes);
    typed.putAll(wall.readings(round));
    Map<String, Double> pared = TypedBook.after(book, typed, corners, "Pare_" + round + "_");
    pared.values().removeIf(amount -> amount == 0);
    typed.putAll(wall.pare(round, pared));
    return typed;
  }

  private void unchanged(Plan page) {
    for (Course before : cut) {
      Course now = page.choice().courses().get(before.round() - 1);
      assertEquals(before.notch(), now.notch(), "marks of round " + before.round());
      assertEquals(before.logs(), now.logs(), "logs of round " + before.round());
    }
  }

  /** Returns the wall that was built round by round. */
  SimulatedWall wall() {
    return wall;
  }

  /** Returns the wall built by the first revision alone. */
  SimulatedWall blind() {
    return blind;
  }

  /** Returns the last revision's crew workbook and all others. */
  CrewFolder site() {
    return site;
  }

  /** Returns the share of gaps within the job's usual limits, 1/2 to 1 3/4 in. */
  static double inside(List<Double> gaps) {
    return gaps.stream().filter(gap -> gap >= 0.5 && gap <= 1.75).count() / (double) gaps.size();
  }

  /** Returns one line with the numbers of both walls. */
  String report() {
    return "built: %s; blind: %s".formatted(numbers(wall), numbers(blind));
  }

  private static String numbers(SimulatedWall wall) {
    List<Double> corners = wall.worstCorners();
    return "worst corner at the top %.3f, over all rounds %.3f, gaps %.2f to %.2f, %.1f %% inside"
        .formatted(
            corners.get(corners.size() - 1),
            corners.stream().mapToDouble(each -> each).max().orElse(0),
            wall.gaps().stream().mapToDouble(each -> each).min().orElse(0),
            wall.gaps().stream().mapToDouble(each -> each).max().orElse(0),
            100 * inside(wall.gaps()));
  }
}
