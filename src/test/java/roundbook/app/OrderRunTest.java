package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code order}, from walls alone and from a job workbook. */
class OrderRunTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  @TempDir private Path folder;

  @Test
  void wallsAndAHeightAreEnough() throws IOException {
    Path tables = folder.resolve("tables");
    assertEquals(
        0,
        order(
            "--walls",
            "20x16",
            "--height",
            "8' 6\"",
            "--set",
            "Band_most=1 1/2",
            "--set",
            "Load_most=10000",
            "-o",
            folder.toString(),
            "--tables",
            tables.toString()));
    assertTrue(Files.exists(folder.resolve("20x16 - order rev1.xlsx")));
    List<String> order = Files.readAllLines(tables.resolve("order.csv"));
    assertEquals(
        "line,walls,rounds,from,logs,spares,least_length_in,ask_length_in,mid_from_in,mid_to_in,"
            + "mid_at_in,least_tip_in,better_tip_in,volume_ft3,weight_lb,cost",
        order.get(0));
    assertTrue(order.get(1).startsWith("1,N S,1-3,butt,3,1,274,288,12.5,14,149,"), order.get(1));
    assertEquals(13, order.size());
    assertEquals(
        List.of("line,basis,quantity,price,cost"), Files.readAllLines(tables.resolve("cost.csv")));
    List<String> loads = Files.readAllLines(tables.resolve("loads.csv"));
    assertEquals("load,line,logs,weight_lb,longest_in", loads.get(0));
    assertEquals(38, loads.stream().skip(1).mapToInt(row -> cell(row, 2)).sum());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--height 8ft|2|name a job workbook, or give --walls",
        "--walls 20x16|3|order-height: neither Wall_height nor Rounds",
        "--walls 20x16 --height 8ft --yard pile.csv|2|order takes no --yard",
        "--walls 20x16 --height 6in|3|Wall_height cannot be '6in'",
        "--walls 20 --height 8ft|3|bad-walls",
        "--walls 20x16 --height 8|3|A number alone is in in: write its unit, such as 8ft or 2.4m",
        "--walls 20x16 --rounds 7 --set Bed_length=20|3|96 in to 2400 in",
        "--walls 20x16 --rounds 7 --set Butt_share=150|3|Butt_share cannot be '150'",
        "--walls 20x16 --rounds 7 --set Mid_top=4|3|order-band"
      })
  void whatCannotBeOrderedIsOneLine(String line, int exit, String said) {
    assertEquals(exit, order((line + " -o " + folder).split(" ")));
    List<String> lines = err().lines().toList();
    assertEquals(1, lines.size(), err());
    assertTrue(lines.get(0).contains(said), err());
  }

  /** The order's own file is the job with an empty tally: it orders again, and plan names order. */
  @ParameterizedTest
  @CsvSource({"en, 20x16", "de, 6.1mx4.9m"})
  void theWorkbookOfAnOrderIsTheJobItself(String language, String walls) throws IOException {
    Path tables = folder.resolve("tables");
    Path again = folder.resolve("again");
    List<String> house = List.of("--walls", walls, "--rounds", "7", "--set", "Load_most=30000");
    List<String> asked = List.of(and(house, "--language", language, "-o", "" + folder));
    assertEquals(0, order(and(asked, "--tables", tables.toString())), err());
    Path book = folder.resolve(walls + " - order rev1.xlsx");
    assertEquals(0, order(book.toString(), "--tables", again.toString()), err());
    assertTrue(Files.exists(folder.resolve(walls + " - order rev2.xlsx")));
    assertEquals(
        Files.readString(tables.resolve("order.csv")),
        Files.readString(again.resolve("order.csv")));
    err.reset();
    assertEquals(3, run("plan", book.toString()));
    assertTrue(err().contains("there is no log yet; roundbook order FILE says what to buy"), err());
    assertFalse(err().contains("sheet-skipped"), err());
  }

  /** Nine rounds of 24 by 18 ft with logs of 20 ft alone: no round stands, the order is written. */
  @Test
  void aJobThatMakesNoRoundWritesItsOrder() throws IOException {
    List<String> rows = new ArrayList<>(List.of("Log,Length (ft),Butt (in),Mid (in),Tip (in)"));
    for (int log = 1; log <= 22; log++) {
      rows.add(log + ",20,13,12.5,11");
    }
    Path tally = Files.write(folder.resolve("short.csv"), rows);
    Path tables = folder.resolve("tables");
    assertEquals(
        4,
        run(
            "plan",
            tally.toString(),
            "--walls",
            "24x18",
            "--rounds",
            "9",
            "--tables",
            tables.toString()),
        err());
    assertTrue(Files.exists(folder.resolve("short - order rev1.xlsx")));
    List<String> order = Files.readAllLines(tables.resolve("order.csv"));
    assertEquals(3, order.size());
    assertTrue(order.get(1).startsWith("1,N S,1-9,butt,9,"), order.get(1));
    assertTrue(order.get(2).startsWith("2,N S,1-9,second,9,"), order.get(2));
  }

  private static String[] and(List<String> args, String... more) {
    List<String> all = new ArrayList<>(args);
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  private static int cell(String row, int column) {
    return Integer.parseInt(row.split(",")[column]);
  }

  private int order(String... args) {
    List<String> all = new ArrayList<>(List.of("order"));
    all.addAll(List.of(args));
    return run(all.toArray(String[]::new));
  }

  private int run(String... args) {
    return Quick.run(args, new PrintStream(out, true), new PrintStream(err, true));
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
