package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Wall;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.ShortYards;
import roundbook.report.LivePlans;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.sheet.LibraryFormulas;
import roundbook.stack.Joint;
import roundbook.units.Length;

/**
 * Twelve builds through real workbooks: what the pages' formulas say after typing is what the next
 * plan has, cell by cell, up to the round in which a log was exchanged.
 */
@Tag("long")
class BuildsAgreeTest {
  private static final int ROUNDS = 4;
  private static final double CLOSE = 1e-5;

  @TempDir private Path folder;
  private int compared;

  /** Returns a copy that was reckoned anew after values were typed, as it was saved. */
  Path saved(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "1, biased",
    "2, biased",
    "3, biased",
    "4, biased",
    "5, stepped",
    "6, stepped",
    "7, metric",
    "8, metric",
    "9, short",
    "10, short",
    "11, loses",
    "12, loses"
  })
  void pagesAndNextPlanAgree(long seed, String kind) throws Exception {
    Assumptions.assumeTrue(isTried(seed), "one build of each kind is enough here");
    CrewFolder site = new CrewFolder(folder);
    planned(site, seed, kind);
    Random random = new Random(seed);
    for (int revision = 1; revision <= ROUNDS; revision++) {
      Plan page = site.planOf(revision);
      Map<String, Object> typed = typed(page, revision, kind, random);
      Path book = site.book(revision);
      Path back = saved(book, typed);
      Files.move(back, book, StandardCopyOption.REPLACE_EXISTING);
      assertEquals(0, site.replan(revision), site.said());
      try (XSSFWorkbook shown = new XSSFWorkbook(Files.newInputStream(book))) {
        String what = kind + " " + seed + ", revision " + revision;
        agree(shown, page, site.planOf(revision + 1), what);
      }
    }
    assertTrue(compared > 60 * ROUNDS, "compared " + compared);
    System.out.println(kind + " " + seed + ": " + compared + " cells agree");
  }

  /** Returns whether a build is made: all are, unless each takes a minute. */
  boolean isTried(long seed) {
    return true;
  }

  private void planned(CrewFolder site, long seed, String kind) throws Exception {
    List<String> args = new ArrayList<>(List.of("plan"));
    if (kind.equals("short")) {
      args.add(ShortYard.write(folder, true, ShortYards.of(5, 7, 12, 14)).toString());
      site.thorough();
    } else {
      site.tally(seed, ROUNDS, 6);
      args.add(folder.resolve("hut.csv").toString());
      boolean metric = kind.equals("metric");
      args.addAll(List.of("--walls", metric ? "6x4.2" : "20x14"));
      args.addAll(List.of("--rounds", "" + ROUNDS, "--units", metric ? "mm" : "in"));
      args.addAll(List.of("--set", "First_bed=" + (kind.equals("stepped") ? "flat" : "level")));
    }
    args.addAll(List.of("--set", "Change_pays=99", "--no-pictures"));
    assertEquals(0, site.run(args.toArray(String[]::new)), site.said());
  }

  /** Types a cut round with its corners, and the middles of the next. */
  private Map<String, Object> typed(Plan page, int round, String kind, Random random) {
    Map<String, Object> typed = new TreeMap<>();
    double bias = kind.equals("biased") ? 0.375 : 0;
    for (int each = round; each <= Math.min(round + 1, page.rounds()); each++) {
      for (PiecePlan piece : page.round(each)) {
        for (var log : piece.placed().logs()) {
          Place place = piece.placed().placeOf(log);
          if (each > 1 && each == round) {
            continue;
          }
          double inches = log.piece().mid().inches() + bias + 0.25 * random.nextGaussian();
          typed.put(TypedBox.MEASURED.named(each, place.named()), number(page, inches));
        }
      }
    }
    for (String corner : page.job().building().corners()) {
      double read = page.stack().levelHeight(round).inches() + 0.125 * random.nextGaussian();
      typed.put(TypedBox.READING.named(round, corner), number(page, read));
    }
    typed.put("Cut_" + round, "x");
    if (kind.equals("loses") && round % 3 == 0) {
      PiecePlan last = page.round(page.rounds()).get(2);
      int row = last.placed().first().piece().log().origin().row();
      typed.put("Lost_" + row, "x");
      typed.remove(TypedBox.MEASURED.named(page.rounds(), last.placed().wall().name()));
    }
    return typed;
  }

  /** Returns a length as a tape tells it, in the job's unit. */
  private static double number(Plan plan, double inches) {
    return plan.job().rules().metric() ? Math.rint(inches * 25.4) : Math.rint(inches * 16) / 16;
  }

  private void agree(XSSFWorkbook book, Plan page, Plan next, String what) {
    LiveContext live = LiveContext.of(LivePlans.context(page));
    LiveMap map = live.map();
    for (int round = 1; round <= page.rounds() && sameLogs(page, next, round); round++) {
      String where = what + ", round " + round;
      var notch = next.choice().courses().get(round - 1).notch();
      same(book, map.round(round, RoundColumn.SIZE), next, notch.size(), where + " size");
      same(book, map.round(round, RoundColumn.LOWER), next, notch.lower(), where + " lower");
      same(book, map.round(round, RoundColumn.UPPER), next, notch.upper(), where + " upper");
      Length level = next.stack().levelHeight(round);
      same(book, map.round(round, RoundColumn.LEVEL_HEIGHT), next, level, where + " height");
      for (String corner : next.job().building().corners()) {
        Length change = next.stack().corners().change(round, true, corner);
        String cell = map.corner(round, corner, CornerColumn.CHANGE);
        same(book, cell, next, change, where + " " + corner);
      }
      for (Wall wall : next.job().building().walls()) {
        gaps(book, map, next, round, wall, where);
      }
    }
  }

  private void gaps(XSSFWorkbook book, LiveMap map, Plan next, int round, Wall wall, String where) {
    if (round > 1) {
      Joint joint = next.stack().joints(wall).get(round - 2);
      String gap = where + " gap " + wall.name();
      same(book, map.piece(round, wall, PieceColumn.LEFT_GAP), next, joint.left(), gap);
      same(book, map.piece(round, wall, PieceColumn.MIDDLE_GAP), next, joint.middle(), gap);
      same(book, map.piece(round, wall, PieceColumn.RIGHT_GAP), next, joint.right(), gap);
    }
  }

  private static boolean sameLogs(Plan page, Plan next, int round) {
    return round <= next.rounds()
        && page.choice().courses().get(round - 1).places().stream()
            .map(place -> place.held())
            .toList()
            .equals(
                next.choice().courses().get(round - 1).places().stream()
                    .map(place -> place.held())
                    .toList());
  }

  private void same(XSSFWorkbook book, String cell, Plan plan, Length expected, String what) {
    CellReference at = new CellReference(cell);
    double number =
        book.getSheet(at.getSheetName())
            .getRow(at.getRow())
            .getCell(at.getCol())
            .getNumericCellValue();
    double wanted = expected.decimal(plan.job().rules().unit(), 9).doubleValue();
    assertEquals(wanted, number, CLOSE, what);
    compared++;
  }
}
