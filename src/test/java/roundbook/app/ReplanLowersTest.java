package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.sheet.LibraryFormulas;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Where a corner is put right, every page that tells LOWER tells that end's own. */
class ReplanLowersTest {
  @TempDir private static Path folder;
  private static CrewFolder site;
  private static Map<String, Object> typed;

  @BeforeAll
  static void readCorners() throws Exception {
    site = new CrewFolder(folder).tally(7, 4, 3).plan("--rounds", "4");
    Plan plan = site.planOf(1);
    typed = new TreeMap<>(Map.of("Cut_1", "x"));
    for (PiecePlan piece : plan.round(1)) {
      String wall = piece.placed().wall().name();
      typed.put("Measured_1_" + wall, piece.placed().first().piece().mid().inches());
    }
    double level = Math.rint(plan.stack().levelHeight(1).inches() * 16) / 16;
    double out = 0.125;
    for (String corner : List.of("NW", "NE", "SE", "SW")) {
      typed.put("Reading_1_" + corner, level - out);
      out += 0.125;
    }
    Files.copy(site.book(1), folder.resolve("untyped.xlsx"));
    TypedBook.type(site.book(1), typed);
    assertEquals(0, site.replan(1), site.said());
  }

  @Test
  void theRoundsPageHasNoOtherNumberInItsBoxes() throws Exception {
    List<String> page = ReplanSaysTest.lines(site, 2, "Round 02");
    Plan plan = site.planOf(2);
    String all = String.join("\n", page.subList(0, 6));
    for (String end : List.of("N\nNW", "N\nNE", "S\nSE", "S\nSW")) {
      String corner = end.substring(2);
      for (boolean line : new boolean[] {false, true}) {
        String mark = end + "|" + mark(lower(plan, corner, line)) + "|";
        assertTrue(all.contains(mark), mark + " not in " + all);
      }
    }
    Length chart = plan.choice().courses().get(1).notch().lower();
    assertTrue(all.contains("|E W|" + mark(chart) + "|"), all);
  }

  @Test
  void startAndTagsTellTheMarksOfBothEnds() throws Exception {
    String start = String.join("\n", ReplanSaysTest.lines(site, 2, "Start"));
    String tags = String.join("\n", ReplanSaysTest.lines(site, 2, "Tags"));
    Plan plan = site.planOf(2);
    int changed = 0;
    for (PiecePlan piece : plan.round(2)) {
      if (piece.placed().wall().laidFirst()) {
        String butt = corner(plan, piece.placed(), true);
        String tip = corner(plan, piece.placed(), false);
        for (boolean line : new boolean[] {false, true}) {
          String one = mark(lower(plan, butt, line));
          String other = mark(lower(plan, tip, line));
          changed += one.equals(other) ? 0 : 1;
          String between = one.equals(other) ? one : "● " + one + "\n○ " + other;
          assertTrue(start.contains("|" + between), between + " not in " + start);
          String beside = one.equals(other) ? one : "● " + one + " ○ " + other;
          assertTrue(tags.contains((line ? "corner line " : "shoulder ") + beside), tags);
        }
      }
    }
    assertTrue(changed > 0, "no log has different ends");
  }

  @Test
  void aPagePrintedBeforeSendsToTheCornersOnceTheyAreTyped() throws Exception {
    Path live = LibraryFormulas.recalculate(folder.resolve("untyped.xlsx"), typed);
    Files.copy(live, folder.resolve("hut - rounds rev8.xlsx"));
    List<String> page = ReplanSaysTest.lines(site, 8, "Round 02");
    String all = String.join("\n", page.subList(0, 5));
    assertTrue(all.contains("E W only · N S: ▼ below"), all);
    String drop = mark(drop(site.planOf(2)));
    assertTrue(all.contains("E W only · N S: ▼ below + " + drop), all);
    String tags = String.join("\n", ReplanSaysTest.lines(site, 8, "Tags"));
    assertTrue(tags.contains("▼ LOWER: see Round 02"), tags);
  }

  private static String corner(Plan plan, FilledPlace placed, boolean butt) {
    Building building = plan.job().building();
    return placed.buttAtStart() == butt
        ? building.startCorner(placed.wall())
        : building.endCorner(placed.wall());
  }

  private static Length lower(Plan plan, String corner, boolean line) {
    Length chart = plan.choice().courses().get(1).notch().lower();
    Length here = chart.plus(plan.stack().corners().change(2, true, corner));
    return line ? here.plus(drop(plan)) : here;
  }

  /** Two inches: walls six inches thick, the neck sloping one in three. */
  private static Length drop(Plan plan) {
    assertEquals(6, plan.job().rules().length(Setting.LOG_THICKNESS).inches());
    return Length.ofInches(2);
  }

  private static String mark(Length length) {
    return LengthFormat.forJob(roundbook.units.LengthUnit.INCH, Length.ofInchFraction(1, 16))
        .mark(length);
  }
}
