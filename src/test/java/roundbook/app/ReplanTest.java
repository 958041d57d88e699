package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.AsBuilt.Place;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;

/** A crew workbook is typed into, read back, and the rest is planned anew. */
class ReplanTest {
  @TempDir private static Path made;
  @TempDir private Path folder;
  private CrewFolder site;

  @BeforeAll
  static void planOnce() throws Exception {
    new CrewFolder(made).tally(7, 4, 3).plan("--rounds", "4");
  }

  @BeforeEach
  void copy() throws Exception {
    site = new CrewFolder(folder);
    Files.copy(new CrewFolder(made).book(1), site.book(1));
  }

  @Test
  void nothingTypedChangesNothing() throws Exception {
    byte[] before = Files.readAllBytes(site.book(1));
    assertEquals(0, site.replan(1), site.said());
    assertArrayEquals(before, Files.readAllBytes(site.book(1)), "the typed workbook was changed");
    assertEquals(site.report(1).plan(), site.report(2).plan());
    assertTrue(site.said().contains("No page of the crew's must be printed again."), site.said());
    assertEquals(0, site.run("compare", site.book(1).toString(), site.book(2).toString()));
    assertEquals("Nothing that is printed changed.", site.said().lines().findFirst().orElse(""));
  }

  @Test
  void aCutRoundStaysAsItWasCutInEveryLaterRevision() throws Exception {
    Map<String, Object> typed = new TreeMap<>(Map.of("Cut_1", "x", "Lower_cut_1_E", 3.0));
    Plan first = site.planOf(1);
    for (PiecePlan piece : first.round(1)) {
      double hewn = piece.placed().first().piece().mid().inches() + 0.5;
      typed.put("Measured_1_" + piece.placed().wall().name(), hewn);
    }
    typed.put("Measured_butt_1_N", "13 1/2");
    typed.put("Reading_1_NW", first.stack().levelHeight(1).inches() - 0.5);
    TypedBook.type(site.book(1), typed);
    assertEquals(0, site.replan(1), site.said());
    Plan second = site.planOf(2);
    var size = second.choice().courses().get(0).notch().size();
    assertEquals(first.choice().courses().get(0).notch().size().inches() + 0.5, size.inches());
    TypedBook.type(site.book(2), Map.of("Chinking_gap", 1.25, "Size_step", 0.25));
    assertEquals(0, site.replan(2), site.said());
    Plan third = site.planOf(3);
    assertEquals(second.choice().courses().get(0).notch(), third.choice().courses().get(0).notch());
    assertEquals(
        second.choice().courses().get(0).places(), third.choice().courses().get(0).places());
    assertEquals(second.stack().levelHeight(1), third.stack().levelHeight(1));
    assertEquals(1.25, third.choice().courses().get(1).notch().gap().inches());
    for (PiecePlan piece : first.round(1)) {
      Place place = new Place(1, piece.placed().wall().name());
      assertEquals(site.report(1).plan().get(place), site.report(3).plan().get(place));
    }
    assertEquals(site.report(2).typed(), site.report(3).typed());
    assertTrue(third.stack().corners().change(2, true, "NW").inches() > 0.2);
  }

  @Test
  void aLostLogIsReplacedAndTheOthersStay() throws Exception {
    Place place = new Place(3, "S");
    String tag = site.report(1).plan().get(place).words();
    TypedBook.type(site.book(1), Map.of("Lost_" + row(tag), "x"));
    assertEquals(0, site.replan(1), site.said());
    assertEquals(Set.of(tag), site.report(1).typed().lost());
    Map<Place, ?> was = site.report(1).plan();
    Map<Place, ?> now = site.report(2).plan();
    List<Place> moved =
        was.keySet().stream().filter(at -> !was.get(at).equals(now.get(at))).toList();
    assertTrue(moved.contains(place) && moved.size() <= 4, site.said());
    assertTrue(site.said().contains("Log " + tag + " is lost."), site.said());
    assertTrue(site.report(2).typed().lost().contains(tag));
  }

  @Test
  void sparesAreOfferedForWhatIsNotCut() throws Exception {
    assertEquals(Set.of("1", "2", "3", "4"), roundsWithSpares(1));
    TypedBook.type(site.book(1), Map.of("Cut_1", "x", "Cut_2", "x"));
    assertEquals(0, site.replan(1), site.said());
    assertEquals(Set.of("3", "4"), roundsWithSpares(2));
  }

  /** Returns the rounds in the first column of the sheet Spares. */
  private Set<String> roundsWithSpares(int revision) throws Exception {
    Set<String> rounds = new TreeSet<>();
    TypedBook.change(
        site.book(revision),
        book ->
            book.getSheet("Spares")
                .forEach(row -> rounds.add(new DataFormatter().formatCellValue(row.getCell(0)))));
    rounds.removeIf(text -> !text.matches("\\d+"));
    return rounds;
  }

  @Test
  void aWallThatIsAllCutStaysAndIsTold() throws Exception {
    Map<String, Object> cut = new TreeMap<>();
    for (int round = 1; round <= 4; round++) {
      cut.put("Cut_" + round, "x");
    }
    TypedBook.type(site.book(1), cut);
    assertEquals(0, site.replan(1), site.said());
    assertEquals(site.report(1).plan(), site.report(2).plan());
    List<String> start = new ArrayList<>();
    TypedBook.change(
        site.book(2),
        book ->
            book.getSheet("Start")
                .forEach(
                    row ->
                        row.forEach(cell -> start.add(new DataFormatter().formatCellValue(cell)))));
    assertTrue(start.stream().anyMatch(text -> text.startsWith("Every round is cut.")));
    assertTrue(start.stream().noneMatch(text -> text.startsWith("Hew the logs of round")));
    assertEquals(0, site.replan(2), site.said());
    assertEquals(0, site.run("compare", site.book(1).toString(), site.book(3).toString()));
  }

  @Test
  void aLogUsedInsteadStandsInItsPlace() throws Exception {
    Place other = new Place(4, "N");
    String tag = site.report(1).plan().get(other).words();
    TypedBook.type(
        site.book(1), Map.of("Used_2_N", " " + tag.toLowerCase(), "Cut_1", "x", "Cut_2", "X"));
    assertEquals(0, site.replan(1), site.said());
    assertEquals(tag, site.report(2).plan().get(new Place(2, "N")).words());
    assertFalse(site.report(2).plan().get(other).words().equals(tag));
    assertTrue(site.said().contains("Its log was used in round 2 N."), site.said());
  }

  private static int row(String tag) {
    return Integer.parseInt(tag.substring(1)) + 1;
  }
}
