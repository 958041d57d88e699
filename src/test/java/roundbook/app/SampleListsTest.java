package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is left over, counted and scaled on the Materials sheet of the samples, the frames of the
 * Openings sheet and the columns of the Lifting sheet, against sums made apart from the program.
 */
class SampleListsTest {
  private SampleRun run;
  private HandWalls hand;
  private boolean metric;

  @ParameterizedTest(name = "{0}")
  @CsvSource({"hill-cabin, false", "metric-hut, true"})
  void listsAgreeWithSumsMadeApart(String sample, boolean inMetric) throws IOException {
    metric = inMetric;
    run = SampleRun.of(sample + ".xlsx");
    hand = new HandWalls(run, metric);
    leftOver();
    counts();
    backers();
    classes();
    scale();
    frames();
    lifts();
  }

  private double run(double length) {
    return length / (metric ? 1000 : 12);
  }

  private List<Object> line(String item) {
    return run.rows("Materials", item).get(0);
  }

  private void amount(double expected, String item) {
    assertEquals(expected, (double) line(item).get(1), 6e-4, item);
  }

  /** Checks a line of so many pieces; how many stands first in its note. */
  private void pieces(String item, List<Double> lengths) {
    amount(run(lengths.stream().mapToDouble(each -> each).sum()), item);
    String note = line(item).get(3).toString();
    assertTrue(note.startsWith(lengths.size() + " "), item + ": " + note);
  }

  private void leftOver() {
    List<Double> ends = new ArrayList<>();
    for (CSVRecord piece : hand.pieces()) {
      ends.add(hand.number(piece, "cut_off_butt"));
      ends.add(hand.number(piece, "falls_off"));
    }
    List<Double> cutOut =
        run.table("cuts").stream()
            .filter(cut -> cut.get("cut").equals("through"))
            .map(cut -> hand.number(opening(cut.get("opening")), "width"))
            .toList();
    double eight = metric ? 2400 : 96;
    double four = metric ? 1200 : 48;
    List<Double> all = Stream.concat(ends.stream(), cutOut.stream()).toList();
    pieces("long offcuts", all.stream().filter(each -> each >= eight).toList());
    pieces("middling offcuts", all.stream().filter(each -> each < eight && each >= four).toList());
    pieces("short offcuts", all.stream().filter(each -> each < four && each > 0).toList());
    pieces("cut out of openings", cutOut);
    double off = ends.stream().mapToDouble(each -> each).sum();
    double tallied =
        hand.pieces().stream().mapToDouble(piece -> hand.number(log(piece), "length")).sum();
    amount(100 * off / tallied, "share of the length tallied");
    List<Double> whole =
        run.table("logs").stream()
            .filter(row -> row.get("round").isEmpty())
            .map(row -> hand.number(row, "length"))
            .toList();
    pieces("logs without a place", whole);
  }

  private CSVRecord opening(String name) {
    return run.table("openings").stream()
        .filter(row -> row.get("name").equals(name))
        .findFirst()
        .orElseThrow();
  }

  private CSVRecord log(CSVRecord piece) {
    return run.table("logs").stream()
        .filter(row -> row.get("log").equals(piece.get("log")))
        .findFirst()
        .orElseThrow();
  }

  /** Logs without a lower notch or without an upper cut are to be held another way. */
  private void counts() {
    amount(hand.pieces().size(), "logs placed");
    List<String> loose =
        Stream.of(hand.piece("N", 1), hand.piece("S", 1), hand.piece("E", 8), hand.piece("W", 8))
            .map(piece -> piece.get("log"))
            .toList();
    amount(4, "logs to anchor or peg");
    assertEquals(String.join(", ", loose), line("logs to anchor or peg").get(3));
    amount(run.table("openings").size(), "openings");
    double legs = run.table("openings").stream().mapToDouble(o -> hand.number(o, "leg")).sum();
    amount(run(2 * legs), "key stock");
  }

  /** Backer is bought for both faces of each joint in the size that fits its widest place. */
  private void backers() {
    Map<Double, Double> runs = new TreeMap<>();
    for (CSVRecord joint : run.table("chinking")) {
      double size = hand.number(joint, "backer");
      runs.merge(size, 2 * hand.number(joint, "run"), Double::sum);
    }
    Map<Double, String> names =
        Map.of(
            1.5,
            "1 1/2 in",
            2.0,
            "2 in",
            2.5,
            "2 1/2 in",
            3.0,
            "3 in",
            40.0,
            "40 mm",
            50.0,
            "50 mm",
            60.0,
            "60 mm",
            80.0,
            "80 mm");
    runs.forEach((size, length) -> amount(run(length), "backer " + names.get(size)));
  }

  /** Logs needed, placed, on hand and spare of each length class, the long walls' first. */
  private void classes() {
    double above = Double.MAX_VALUE;
    for (String wall : List.of("N", "E")) {
      double least = hand.number(hand.piece(wall, 1), "trimmed") + (metric ? 100 : 4);
      double limit = above;
      List<CSVRecord> inside =
          run.table("logs").stream()
              .filter(row -> hand.number(row, "length") >= least)
              .filter(row -> hand.number(row, "length") < limit)
              .filter(row -> !row.get("use").equals("left out"))
              .toList();
      long spare = inside.stream().filter(row -> row.get("use").equals("spare")).count();
      String walls = wall.equals("N") ? "N S" : "E W";
      List<Object> row = run.rowWith("Materials", "(" + walls + ")");
      assertEquals(List.of(16.0, 16.0, (double) inside.size(), (double) spare), row.subList(1, 5));
      above = least;
    }
  }

  /** Totals of the logs' scales; the rules themselves are held to printed tables elsewhere. */
  private void scale() {
    Map<String, String> rules =
        Map.of(
            "Doyle", "doyle_bd_ft",
            "Scribner formula", "scribner_bd_ft",
            "Scribner Decimal C", "scribner_decimal_c_bd_ft",
            "International 1/4-inch", "international_quarter_bd_ft",
            "Huber", metric ? "huber_m3" : "huber_ft3",
            "Smalian", metric ? "smalian_m3" : "smalian_ft3",
            "Newton", metric ? "newton_m3" : "newton_ft3");
    rules.forEach(
        (rule, column) -> {
          double total =
              run.table("scale").stream()
                  .mapToDouble(row -> Double.parseDouble(row.get(column)))
                  .sum();
          assertEquals(total, (double) line(rule).get(1), 0.06, rule);
        });
  }

  /** The frames as they are printed: lengths to a sixteenth in feet and inches, or millimetres. */
  private void frames() {
    for (CSVRecord opening : run.table("openings")) {
      String name = opening.get("name") + " (" + opening.get("wall") + ")";
      List<Object> row = run.rows("Openings", name).get(run.rows("Openings", name).size() - 1);
      assertTrue(row.get(1).toString().startsWith(opening.get("header_log") + ","), row.toString());
      String leg = tape(hand.number(opening, "leg"));
      assertEquals(leg, row.get(4));
      boolean sill = hand.number(opening, "sill") > 0;
      assertEquals((sill ? "2 × " : "1 × ") + tape(hand.number(opening, "width")), row.get(5));
      double buck = metric ? 40 : 1.5;
      String between = tape(hand.number(opening, "width") - 2 * buck).replace(" mm", "");
      assertEquals(leg, tape(hand.number(opening, "clear_height")), "the frame keeps its height");
      String clear = row.get(6).toString();
      double wide = hand.number(opening, "clear_width");
      assertEquals(between, tape(wide).replace(" mm", ""));
      assertTrue(clear.contains(" × "), clear);
      double pin = metric ? 100 : 4;
      double from = hand.number(opening, "left") - pin;
      double to = hand.number(opening, "left") + hand.number(opening, "width") + pin;
      String pins = row.get(7).toString();
      assertTrue(pins.contains(tape(from)) && pins.contains(tape(to)), pins);
    }
  }

  private String tape(double length) {
    if (metric) {
      return Math.round(length) + " mm";
    }
    long sixteenths = Math.round(length * 16);
    long inches = sixteenths / 16 % 12;
    long part = sixteenths % 16;
    long whole = 16;
    while (part > 0 && part % 2 == 0) {
      part /= 2;
      whole /= 2;
    }
    String fraction = part == 0 ? "" : part + "/" + whole;
    String said = inches == 0 && part > 0 ? fraction : (inches + " " + fraction).strip();
    return sixteenths / 192 + "' " + said + "\"";
  }

  /** Weights from light to heavy wood, unhewn by the round volume, from the lowest log up. */
  private void lifts() {
    String weight = metric ? "_kg" : "_lb";
    String volume = metric ? "_m3" : "_ft3";
    List<CSVRecord> needed =
        run.table("wood").stream()
            .sorted(Comparator.comparingDouble(row -> hand.number(piece(row), "centre_height")))
            .toList();
    for (int i = 0; i < needed.size(); i++) {
      CSVRecord row = needed.get(i);
      List<Object> shown = run.rows("Lifting", (double) (i + 1)).get(0);
      assertEquals(row.get("log"), shown.get(1));
      double most = Double.parseDouble(row.get("most" + weight));
      double unhewn =
          most
              * Double.parseDouble(row.get("round" + volume))
              / Double.parseDouble(row.get("sawn" + volume));
      List<Double> wanted =
          Stream.of("green", "least", "most")
              .map(each -> Double.parseDouble(row.get(each + weight)))
              .collect(Collectors.toCollection(ArrayList::new));
      wanted.add(unhewn);
      wanted.add(Double.parseDouble(row.get("service" + weight)));
      for (int column = 0; column < wanted.size(); column++) {
        double near = 0.52 + 0.005 * wanted.get(column);
        assertEquals(wanted.get(column), (double) shown.get(4 + column), near, shown.toString());
      }
      assertEquals(tape(hand.number(piece(row), "trimmed")), shown.get(10));
    }
    double heaviest =
        needed.stream()
            .mapToDouble(row -> Double.parseDouble(row.get("most" + weight)))
            .max()
            .orElseThrow();
    String told = run.rowWith("Lifting", "heaviest lift").get(0).toString();
    double said = Double.parseDouble(told.replaceAll(".* reach (\\d+) (lb|kg) hewn.*", "$1"));
    assertEquals(heaviest, said, 0.52, told);
  }

  private CSVRecord piece(CSVRecord row) {
    return hand.piece(row.get("wall"), Integer.parseInt(row.get("round")));
  }
}
