package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be true, cannot be read or is not ours is said with its cell; nothing is written. */
class ReplanRefusedTest {
  @TempDir private static Path made;
  @TempDir private Path folder;
  private CrewFolder site;

  @BeforeAll
  static void planOnce() throws Exception {
    new CrewFolder(made).tally(11, 3, 3).plan("--rounds", "3");
  }

  @BeforeEach
  void copy() throws Exception {
    site = new CrewFolder(folder);
    Files.copy(new CrewFolder(made).book(1), site.book(1));
  }

  /** One of each kind; every contradiction is tested in the rooms that find it. */
  static Stream<Arguments> contradictions() {
    return Stream.of(
        Arguments.of("a hole in the ticks", "Cut_2=x", "Round 02!", "contradiction"),
        Arguments.of("a formula that fails", "Measured_1_W==1/0", "Round 01!", "bad-number"),
        Arguments.of("a date", "Measured_butt_1_S=DATE", "Round 01!", "date-in-number"),
        Arguments.of("a gap below zero", "Chinking_gap=-1", "Settings!", "bad-setting"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("contradictions")
  void isSaidWithItsCell(String name, String typed, String place, String code) throws Exception {
    Map<String, Object> values = new TreeMap<>();
    for (String each : typed.split(";")) {
      String[] halves = each.split("=", 2);
      boolean number = halves[1].matches("-?[0-9.]+");
      values.put(halves[0], number ? Double.valueOf(halves[1]) : halves[1]);
    }
    TypedBook.type(site.book(1), values);
    assertEquals(3, site.replan(1), site.said());
    String line = site.said().lines().filter(each -> each.contains(code)).findFirst().orElse("");
    assertTrue(line.contains("rev1.xlsx: " + place), site.said());
    assertFalse(Files.exists(site.book(2)));
  }

  @Test
  void aRoundOnceCutStaysTicked() throws Exception {
    TypedBook.type(site.book(1), Map.of("Cut_1", "x"));
    assertEquals(0, site.replan(1), site.said());
    assertTrue(site.said().contains("not-measured"), site.said());
    TypedBook.type(site.book(2), Map.of("Cut_1", ""));
    assertEquals(3, site.replan(2), site.said());
    assertTrue(site.said().contains("no longer ticked"), site.said());
  }

  @Test
  void aLostPageIsSaid() throws Exception {
    TypedBook.change(site.book(1), book -> book.removeSheetAt(book.getSheetIndex("Round 02")));
    assertEquals(3, site.replan(1), site.said());
    assertTrue(site.said().contains("round 2 cannot be read back"), site.said());
  }

  @Test
  void otherFilesAreRefused() throws Exception {
    Path tally = made.resolve("hut.csv");
    assertEquals(3, site.run("replan", tally.toString()), site.said());
    assertEquals(3, site.run("replan", "samples/hill-cabin.xlsx"), site.said());
    assertTrue(site.said().contains("not-a-crew-workbook"), site.said());
    assertEquals(5, site.run("replan", folder.resolve("none.xlsx").toString()), site.said());
    byte[] bytes = Files.readAllBytes(site.book(1));
    Path damaged = folder.resolve("damaged.xlsx");
    Files.write(damaged, java.util.Arrays.copyOf(bytes, bytes.length / 2));
    assertEquals(5, site.run("replan", damaged.toString()), site.said());
    assertEquals(3, site.run("compare", site.book(1).toString(), "samples/hill-cabin.xlsx"));
  }

  @Test
  void anotherVersionIsRefused() throws Exception {
    TypedBook.type(site.book(1), Map.of("Made_layout", 99));
    assertEquals(3, site.replan(1), site.said());
    assertTrue(site.said().contains("other-version"), site.said());
    assertTrue(site.said().contains("Settings!"), site.said());
  }

  @Test
  void otherBuildingsAreNotCompared() throws Exception {
    Path mine = folder.resolve("mine");
    Files.createDirectories(mine);
    CrewFolder metric = new CrewFolder(mine);
    Files.writeString(mine.resolve("hut.csv"), Files.readString(made.resolve("hut.csv")));
    assertEquals(
        0,
        metric.run(
            "plan",
            mine.resolve("hut.csv").toString(),
            "--walls",
            "16x12",
            "--no-pictures",
            "--rounds",
            "1"),
        metric.said());
    assertEquals(3, site.run("compare", site.book(1).toString(), metric.book(1).toString()));
    assertTrue(site.said().contains("different buildings"), site.said());
  }
}
