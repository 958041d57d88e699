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
import roundbook.job.AsBuilt.Place;

/** What cannot be true, cannot be read or is not ours is said with its cell; nothing is written. */
class ReplanRefusedTest {
  @TempDir private static Path made;
  private static String firstLog;
  private static String secondLog;
  @TempDir private Path folder;
  private CrewFolder site;

  @BeforeAll
  static void planOnce() throws Exception {
    CrewFolder first = new CrewFolder(made).tally(11, 3, 3).plan("--rounds", "3");
    firstLog = first.report(1).plan().get(new Place(1, "N")).words();
    secondLog = first.report(1).plan().get(new Place(2, "N")).words();
  }

  @BeforeEach
  void copy() throws Exception {
    site = new CrewFolder(folder);
    Files.copy(new CrewFolder(made).book(1), site.book(1));
  }

  static Stream<Arguments> contradictions() {
    return Stream.of(
        Arguments.of("a hole in the ticks", "Cut_2=x", "Round 02!", "contradiction"),
        Arguments.of("no such log", "Used_1_N=nowhere", "Round 01!", "contradiction"),
        Arguments.of("one log twice", "Cut_1=x;Used_2_S=FIRST", "Round 02!", "contradiction"),
        Arguments.of("cut log lost", "Cut_1=x;LOST=x", "Log list!", "contradiction"),
        Arguments.of("read before cut", "Reading_1_NW=12", "Round 01!", "contradiction"),
        Arguments.of("reading too high", "Cut_1=x;Reading_1_NW=120", "Round 01!", "out-of-range"),
        Arguments.of("digits turned round", "Measured_1_N=31", "Round 01!", "out-of-range"),
        Arguments.of("thinner than hewn", "Measured_1_N=5", "Round 01!", "out-of-range"),
        Arguments.of("no length", "Measured_1_E=thick", "Round 01!", "bad-number"),
        Arguments.of("a guess", "Measured_1_E=about 14", "Round 01!", "bad-number"),
        Arguments.of("a guessed reading", "Cut_1=x;Reading_1_NE=12?", "Round 01!", "bad-number"),
        Arguments.of("no tick", "Cut_1=maybe", "Round 01!", "bad-number"),
        Arguments.of("mark off the log", "Cut_1=x;Lower_cut_1_N=9", "Round 01!", "out-of-range"),
        Arguments.of("overhang after a cut", "Cut_1=x;Overhang=4", "Settings!", "contradiction"),
        Arguments.of("huge", "Measured_1_N=1e300", "Round 01!", "bad-number"),
        Arguments.of("a huge mark", "Lower_cut_1_S=1e300", "Round 01!", "bad-number"),
        Arguments.of("negative", "Measured_tip_1_N=-12", "Round 01!", "out-of-range"),
        Arguments.of("a mark of nothing", "Cut_1=x;Upper_cut_1_N=0", "Round 01!", "out-of-range"),
        Arguments.of("a formula that fails", "Measured_1_W==1/0", "Round 01!", "bad-number"),
        Arguments.of("a date", "Measured_butt_1_S=DATE", "Round 01!", "date-in-number"),
        Arguments.of(
            "cut and used elsewhere", "Cut_1=x;Used_1_S=FIRST", "Round 01!", "contradiction"),
        Arguments.of("used and lost", "Used_2_S=FIRST;LOST=x", "Log list!", "contradiction"),
        Arguments.of("lost by a word", "LOST=perhaps", "Log list!", "bad-number"),
        Arguments.of(
            "read above what is cut", "Cut_1=x;Reading_2_NW=26", "Round 02!", "contradiction"),
        Arguments.of("a gap below zero", "Chinking_gap=-1", "Settings!", "bad-setting"),
        Arguments.of("no round", "Rounds=0", "Settings!", "bad-setting"),
        Arguments.of("thousands of rounds", "Rounds=5000", "Settings!", "bad-setting"),
        Arguments.of("a tower", "Wall_height=100000", "Settings!", "bad-setting"),
        Arguments.of("other walls first", "Laid_first=E W", "Settings!", "contradiction"),
        Arguments.of("a house that does not close", "Wall_1_outside=200", "Settings!", "bad-walls"),
        Arguments.of("another unit", "Units=mm", "Settings!", "contradiction"),
        Arguments.of("a setting that is none", "Chinking_gap=wide", "Settings!", "bad-setting"),
        Arguments.of("too few rounds", "Cut_1=x;Cut_2=x;Rounds=1", "Settings!", "contradiction"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("contradictions")
  void isSaidWithItsCell(String name, String typed, String place, String code) throws Exception {
    Map<String, Object> values = new TreeMap<>();
    for (String each : typed.split(";")) {
      String[] halves = each.split("=", 2);
      String cell = halves[0].equals("LOST") ? "Lost_" + row(firstLog) : halves[0];
      String value = halves[1].equals("FIRST") ? firstLog : halves[1];
      values.put(cell, value.matches("-?[0-9.]+(e\\d+)?") ? Double.valueOf(value) : value);
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
    assertFalse(secondLog.equals(firstLog));
  }

  private static int row(String tag) {
    return Integer.parseInt(tag.substring(1)) + 1;
  }
}
