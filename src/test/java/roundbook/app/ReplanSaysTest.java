package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.AsBuilt.Place;
import roundbook.plan.PiecePlan;

/**
 * A later revision says what is still true: who set a value, and nothing to mend on what is cut.
 */
class ReplanSaysTest {
  @TempDir private Path folder;

  @Test
  void whoSetAValueIsCarriedAlong() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(7, 2, 3);
    site.plan(
        "--rounds",
        "2",
        "--gap",
        "1.25",
        "--set",
        "Air_temperature=70",
        "--set",
        "Air_humidity=30");
    Map<String, String> first = setBy(site, 1);
    assertEquals("default", first.get("Size_step"));
    assertEquals("option", first.get("Chinking_gap"));
    TypedBook.type(site.book(1), Map.of("Overhang", 7));
    assertEquals(0, site.replan(1), site.said());
    Map<String, String> second = setBy(site, 2);
    assertEquals("workbook", second.put("Overhang", first.get("Overhang")));
    assertEquals(first, second);
    List<String> heights = lines(site, 2, "Heights");
    assertEquals(
        lines(site, 1, "Heights").stream().filter(line -> line.contains("%")).findFirst(),
        heights.stream().filter(line -> line.contains("%")).findFirst());
    assertEquals(0, site.replan(2), site.said());
    second.put("Overhang", "workbook");
    assertEquals(second, setBy(site, 3));
  }

  @Test
  void aCorrectionOfTheTallyLeavesWhatIsCutAsItWasPlanned() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(7, 2, 3).plan("--rounds", "2");
    List<String> planned = planned(site, 1, "Round 01");
    Map<String, Object> typed = new TreeMap<>(Map.of("Cut_1", "x", "Tally_correction", 0.25));
    for (PiecePlan piece : site.planOf(1).round(1)) {
      String wall = piece.placed().wall().name();
      typed.put("Measured_1_" + wall, piece.placed().first().piece().mid().inches() + 0.25);
    }
    TypedBook.type(site.book(1), typed);
    List<String> above = planned(site, 1, "Round 02");
    assertEquals(0, site.replan(1), site.said());
    assertEquals(planned, planned(site, 2, "Round 01"));
    assertFalse(above.equals(planned(site, 2, "Round 02")));
    TypedBook.type(site.book(2), Map.of("Tally_correction", 0.5));
    assertEquals(0, site.replan(2), site.said());
    assertEquals(planned, planned(site, 3, "Round 01"));
    assertEquals(tallied(site, 2), tallied(site, 3));
  }

  /** Returns the walls of a round with the middles planned, which stand above those measured. */
  private static List<String> planned(CrewFolder site, int revision, String page) throws Exception {
    List<String> planned = new ArrayList<>();
    TypedBook.change(
        site.book(revision),
        book -> {
          int round = Integer.parseInt(page.substring(page.length() - 1));
          for (String wall : List.of("N", "E", "S", "W")) {
            var cell = TypedBook.cell(book, "Measured_" + round + "_" + wall);
            planned.add(wall + " " + cell.getRow().getCell(2).getNumericCellValue());
          }
        });
    return planned;
  }

  /** Returns the tally's middles of the logs of round 1 as the sheet As built has them. */
  private static List<String> tallied(CrewFolder site, int revision) throws Exception {
    return lines(site, revision, "As built").stream()
        .filter(line -> line.matches("1\\|[NESW]\\|.*"))
        .toList();
  }

  private static Map<String, String> setBy(CrewFolder site, int revision) throws Exception {
    Map<String, String> origins = new TreeMap<>();
    for (String line : lines(site, revision, "Settings")) {
      String[] cells = line.split("\\|", -1);
      if (cells.length > 4 && cells[4].matches("default|option|workbook")) {
        origins.put(cells[0], cells[4]);
      }
    }
    return origins;
  }

  @Test
  void whatIsCutIsNotToBeMendedByAnotherLog() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(7, 4, 3);
    String[] tight = {"--set", "Gap_least=1.2", "--set", "Shoulder_least=4"};
    site.plan("--rounds", "4", tight[0], tight[1], tight[2], tight[3]);
    assertTrue(all(site, 1, "Mend before cutting:").size() > 1, site.said());
    assertTrue(site.said().contains("tip-thin: round 1 "), site.said());
    Map<String, Object> typed = new TreeMap<>();
    for (int round = 1; round <= 4; round++) {
      typed.put("Cut_" + round, "x");
      for (PiecePlan piece : site.planOf(1).round(round)) {
        typed.put(
            "Measured_" + round + "_" + piece.placed().wall().name(),
            piece.placed().first().piece().mid().inches());
      }
    }
    TypedBook.type(site.book(1), typed);
    assertEquals(0, site.replan(1), site.said());
    assertFalse(site.said().contains("tip-thin"), site.said());
    assertFalse(site.said().contains("warning gap-"), site.said());
    assertEquals(List.of(), all(site, 2, "Mend before cutting:"));
    assertEquals(List.of(), all(site, 2, "Swap a log"));
    assertTrue(all(site, 2, "Both logs are cut").size() > 1, site.said());
    assertTrue(
        lines(site, 2, "Start").stream()
            .noneMatch(line -> line.contains("gap ") && line.contains(" on round ")),
        "Start");
    assertEquals(
        site.report(1).plan().get(new Place(1, "N")), site.report(2).plan().get(new Place(1, "N")));
  }

  /** Returns the lines of all sheets that hold a text. */
  private static List<String> all(CrewFolder site, int revision, String text) throws Exception {
    List<String> found = new ArrayList<>();
    for (String sheet : List.of("Start", "Wall N", "Wall E", "Wall S", "Wall W", "Problems")) {
      lines(site, revision, sheet).stream().filter(line -> line.contains(text)).forEach(found::add);
    }
    return found;
  }

  /** Returns what a sheet shows, row by row. */
  static List<String> lines(CrewFolder site, int revision, String name) throws Exception {
    List<String> lines = new ArrayList<>();
    TypedBook.change(
        site.book(revision), book -> book.getSheet(name).forEach(row -> lines.add(line(row))));
    return lines;
  }

  private static String line(Row row) {
    DataFormatter shown = new DataFormatter();
    shown.setUseCachedValuesForFormulaCells(true);
    List<String> cells = new ArrayList<>();
    row.forEach(cell -> cells.add(shown.formatCellValue(cell)));
    return String.join("|", cells);
  }
}
