package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.plan.Plan;

/**
 * The samples of five and nine walls and of six with a wing: planned, and built with readings at
 * corners and where walls end in others.
 */
class PartedBuildTest {
  private static final String PARTED = "parted-house-tally.csv";
  private static final String PENS = "two-pens-tally.csv";
  private static final String ELL = "ell-house-tally.csv";

  private static final int BUILDS = 4;
  private static final SimulatedRise.Care CARE = new SimulatedRise.Care(true, true, true, 0);

  @TempDir private Path folder;

  private static List<String> walls(String sample) {
    return switch (sample) {
      case PARTED -> List.of("--walls", "28x18", "--partition", "11-6");
      case ELL -> List.of("--walls", "28x20", "--wing", "S:14,14x12", "--set", "Reentrant=hook");
      default -> List.of("--pens", "16,10,16x18", "--partition", "N2:6-6");
    };
  }

  private CrewFolder planned(String sample, int rounds) throws Exception {
    return new CrewFolder(folder).sample(sample).planHouse(walls(sample), "--rounds", "" + rounds);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({PARTED + ", 6, 5, 6", PENS + ", 5, 9, 10", ELL + ", 6, 6, 7"})
  void samplesFillTheirRounds(String sample, int rounds, int walls, int corners) throws Exception {
    Plan plan = planned(sample, rounds).planOf(1);
    assertEquals(rounds, plan.rounds());
    assertEquals(corners, plan.job().building().corners().size());
    plan.stack().courses().forEach(course -> assertEquals(walls, course.places().size()));
  }

  /** Boxes of thirteen walls in one row left no column for the words beside them: a fault. */
  @Test
  void threePensWithAPartitionMakeABook() throws Exception {
    List<String> walls = List.of("--pens", "12,8,12,8,12x14", "--partition", "N3:5-6");
    CrewFolder site = new CrewFolder(folder).sample(PENS).planHouse(walls, "--rounds", "2");
    assertEquals(13, site.planOf(1).job().building().walls().size());
    try (var book = new XSSFWorkbook(site.book(1).toFile())) {
      assertTrue(book.getName("Change_P1") != null);
    }
  }

  /** Names of eight walls beside a mark hid the mark in its box of the notch chart. */
  @Test
  void marksOfManyWallsFitTheirBoxes() throws Exception {
    CrewFolder site = planned(PENS, 2);
    int found = 0;
    try (var book = new XSSFWorkbook(site.book(1).toFile())) {
      for (Row row : book.getSheet("Notch chart")) {
        for (Cell cell : row) {
          boolean text = cell.getCellType() == CellType.FORMULA;
          text = text && cell.getCachedFormulaResultType() == CellType.STRING;
          String shown = text ? cell.getStringCellValue() : "";
          if (shown.contains("on P1")) {
            assertTrue(shown.length() <= 26, shown);
            assertTrue(shown.contains("others"), shown);
            found++;
          }
        }
      }
    }
    assertTrue(found > 0);
  }

  /**
   * Planned anew after every round, without workbooks, four builds of each: at most one may end a
   * hair over a quarter inch, for marks and readings err by that much at times.
   */
  @Tag("long")
  @ParameterizedTest(name = "{0}")
  @CsvSource({PARTED + ", 6", PENS + ", 5", ELL + ", 6"})
  void cornersAndPartitionEndsRiseLevel(String sample, int rounds) throws Exception {
    Plan plan = planned(sample, rounds).planOf(1);
    List<Double> tops = new ArrayList<>();
    double inside = 0;
    for (long seed = 1; seed <= BUILDS; seed++) {
      SimulatedWall wall = new SimulatedWall(seed, 0);
      new SimulatedRise(plan.job(), plan.choice(), wall, CARE, false).run();
      tops.add(wall.worstCorners().get(rounds - 1));
      inside += SimulatedBuild.inside(wall.gaps()) / BUILDS;
    }
    assertTrue(tops.stream().filter(top -> top > 0.25).count() <= 1, tops.toString());
    assertTrue(Collections.max(tops) < 0.26, tops.toString());
    // Of the plans at hand 91, 95 and over 96 %: a size that flips in one round costs a point or
    // two.
    assertTrue(inside > 0.9, "gaps inside: " + inside);
  }

  /** Two new plans made from what is typed into real workbooks, their own formulas worked out. */
  @Tag("long")
  @ParameterizedTest(name = "{0}")
  @CsvSource({PARTED, PENS, ELL})
  void workbooksBringCornersAndPartitionEndsLevel(String sample) throws Exception {
    SimulatedBuild build = new SimulatedBuild(planned(sample, 3), 2, 3, 0.25).run();
    List<Double> worst = build.wall().worstCorners();
    assertTrue(Collections.max(worst) <= 0.25, build.report());
    double blind = SimulatedBuild.inside(build.blind().gaps());
    assertTrue(SimulatedBuild.inside(build.wall().gaps()) > blind, build.report());
  }
}
