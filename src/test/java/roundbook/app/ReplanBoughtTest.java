package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.AsBuilt.Place;
import roundbook.rounds.Shortage;

/** Logs bought when the walls are under way come in by a further tally. */
class ReplanBoughtTest {
  @TempDir private Path folder;

  @Test
  void logsBoughtLaterMakeTheJobWhole() throws Exception {
    CrewFolder site = twoOfThreeRounds();
    assertEquals(2, site.planOf(1).rounds());
    int logs = site.report(1).job().logs().size();
    TypedBook.type(site.book(1), Map.of("Cut_1", "x", "Used_2_N", "New1"));
    assertEquals(3, site.replan(1), "not on the log list yet");
    String bought = bought("New", 6);
    assertEquals(0, replan(site, 1, bought), site.said());
    assertEquals(3, site.planOf(2).rounds());
    assertEquals("New1", site.report(2).plan().get(new Place(2, "N")).words());
    assertEquals(logs + 6, site.report(2).job().logs().size());
    String clash = folder.resolve("bought.csv").getFileName() + ": A2: error duplicate-id";
    assertEquals(3, replan(site, 2, bought));
    assertTrue(site.said().contains(clash), site.said());
    assertFalse(Files.exists(site.book(3)));
    assertEquals(0, site.replan(2), "the bought logs are in the workbook now");
    assertEquals(site.report(2).plan(), site.report(3).plan());
  }

  @Test
  void aBadRowIsLeftOutAndSaidInLaterRevisionsToo() throws Exception {
    CrewFolder site = twoOfThreeRounds();
    String bought = bought("B", 5);
    List<String> lines = new ArrayList<>(Files.readAllLines(Path.of(bought)));
    lines.set(3, "B3,thick,13,12,11");
    Files.write(Path.of(bought), lines);
    assertEquals(0, replan(site, 1, bought), site.said());
    assertTrue(site.said().contains("bought.csv: B4: error bad-number"), site.said());
    assertTrue(site.report(2).job().log("B3").isEmpty());
    assertEquals(0, site.replan(2), site.said());
    assertTrue(site.said().contains("bought.csv: B4: error bad-number"), site.said());
    Files.writeString(Path.of(bought), "Log,Length in,Mid in\nZ1,nothing,12\n");
    assertEquals(3, replan(site, 3, bought), site.said());
    assertEquals(5, replan(site, 3, folder.resolve("none.csv").toString()), site.said());
    assertFalse(Files.exists(site.book(4)));
  }

  /** A re-plan that runs short orders the fewest logs for the rest, proved by planning again. */
  @Test
  void whatIsMissingForTheRestIsOrderedAndProved() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(31, 3, 1).plan("--rounds", "3");
    List<String> lost =
        site.report(1).plan().entrySet().stream()
            .filter(each -> each.getKey().round() == 3)
            .map(each -> each.getValue().words())
            .toList();
    Map<String, Object> typed = new java.util.TreeMap<>(Map.of("Cut_1", "x"));
    lost.forEach(tag -> typed.put("Lost_" + (Integer.parseInt(tag.substring(1)) + 1), "x"));
    TypedBook.type(site.book(1), typed);
    assertEquals(4, site.replan(1), site.said());
    assertEquals(2, site.planOf(2).rounds());
    assertTrue(site.said().contains("planned again with them: 3 rounds"), site.said());
    Shortage shortage = site.planOf(2).choice().shortage().orElseThrow();
    assertEquals(2, shortage.count(), "four logs are lost and two spares are left");
    assertEquals(0, site.run("compare", site.book(1).toString(), site.book(2).toString()));
    List<String> ordered = site.said().lines().filter(each -> each.startsWith("Order ")).toList();
    assertEquals(2, ordered.size(), site.said());
    for (String wall : List.of("S", "W")) {
      String line = "Order " + wall + " .*: – → 1";
      assertTrue(ordered.stream().anyMatch(each -> each.matches(line)), site.said());
    }
  }

  /** Plans three rounds of which the yard has logs for two, and two long and two short spares. */
  private CrewFolder twoOfThreeRounds() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(31, 2, 1);
    String[] plan = {
      "plan",
      folder.resolve("hut.csv").toString(),
      "--walls",
      "20x14",
      "--no-pictures",
      "--rounds",
      "3"
    };
    assertEquals(4, site.run(plan), site.said());
    return site;
  }

  private static int replan(CrewFolder site, int revision, String logs) {
    return site.run("replan", "--no-pictures", site.book(revision).toString(), "--logs", logs);
  }

  /** Writes a tally of long logs with other headings than the first one had. */
  private String bought(String start, int count) throws IOException {
    List<String> lines = new ArrayList<>(List.of("Tag,Length ft,Butt in,Mid in,Tip in"));
    for (int i = 1; i <= count; i++) {
      lines.add("%s%d,21.5,13,12,11".formatted(start, i));
    }
    return Files.write(folder.resolve("bought.csv"), lines).toString();
  }
}
