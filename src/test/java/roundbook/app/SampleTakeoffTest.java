package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.app.HandWalls.Stretch;

/**
 * The Openings, Materials, Chinking, Order and Lifting sheets of the samples against sums made
 * apart from the program: from the tally and the places of its logs.
 *
 * <p>Figures: eastern white pine weighs 35 lb/ft³ green, red spruce 34 (USDA Forest Service weight
 * table); specific gravity 0.34 and 0.37; red spruce loses 3.8 % radially and 7.8 % tangentially
 * from green to ovendry (Wood Handbook, Table 4-3, from memory), and at 12 % of 30 it has lost 0.6
 * of that.
 */
class SampleTakeoffTest {
  private static final double KILOGRAMS = 0.45359237;
  private static final double MEAN_LOSS = 0.6 * (0.038 + 0.078) / 2;
  private static final double TANGENTIAL_LOSS = 0.6 * 0.078;

  private SampleRun run;
  private HandWalls hand;
  private boolean metric;

  private void plan(String sample, boolean inMetric) throws IOException {
    metric = inMetric;
    run = SampleRun.of(sample + ".xlsx");
    hand = new HandWalls(run, metric);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"hill-cabin, false", "metric-hut, true"})
  void sheetsAgreeWithSumsMadeApart(String sample, boolean inMetric) throws IOException {
    plan(sample, inMetric);
    run.table("openings").forEach(this::opening);
    double[] wood = wood();
    double[] joints = chinking();
    materials(wood, joints);
    lifting();
    order();
  }

  /** Returns cubic inches or millimetres as cubic feet or metres. */
  private double bulk(double volume) {
    return volume / (metric ? 1e9 : 1728);
  }

  private double run(double length) {
    return length / (metric ? 1000 : 12);
  }

  private double step() {
    return metric ? 1 : 1 / 16.0;
  }

  private double roundedUp(double length) {
    return Math.ceil(length / step() - 1e-9) * step();
  }

  private void opening(CSVRecord opening) {
    double sill = hand.number(opening, "sill");
    double head = hand.number(opening, "head");
    assertEquals((head - sill) * MEAN_LOSS, hand.number(opening, "clearance"), 1e-5);
    double leave = roundedUp((head - sill) * TANGENTIAL_LOSS);
    assertEquals(leave, hand.number(opening, "leave"), 1e-6);
    double boards = (sill > 0 ? 2 : 1) * (metric ? 40 : 1.5);
    assertEquals(head - sill - leave - boards, hand.number(opening, "leg"), 1e-6);
    String header = "";
    for (int round = 1; round <= 8; round++) {
      CSVRecord piece = hand.piece(opening.get("wall"), round);
      boolean over = cut(opening, piece, sill, head);
      header = header.isEmpty() && over ? piece.get("log") : header;
    }
    assertEquals(header, opening.get("header_log"));
  }

  /** Checks the cut of one log; returns whether it reaches over the head. */
  private boolean cut(CSVRecord opening, CSVRecord piece, double sill, double head) {
    double left = hand.number(opening, "left");
    double width = hand.number(opening, "width");
    double centre = hand.number(piece, "centre_height");
    double half = hand.thickest(piece, left, width) / 2;
    boolean first = piece.get("round").equals("1");
    double lower = hand.number(run.table("rounds").get(0), "lower");
    double bottom = centre - (first ? lower : half);
    double depth = Math.min(head, centre + half) - Math.max(sill, bottom);
    boolean through = depth > 0 && sill <= bottom && head >= centre + half;
    CSVRecord row = row(opening, piece);
    assertEquals(Math.max(0, depth), hand.number(row, "depth"), metric ? 0.01 : 1e-3);
    assertEquals(through, row.get("cut").equals("through"), row.toString());
    if (through) {
      double overhang = metric ? 75 : 3;
      assertEquals(left + overhang, hand.number(row, "left_piece"), 1e-6);
      double trimmed = hand.number(piece, "trimmed");
      assertEquals(trimmed - left - overhang - width, hand.number(row, "right_piece"), 1e-6);
    }
    if (depth > 0) {
      onOpeningsSheet(opening, piece, depth);
    }
    return !through && centre + half > head;
  }

  private CSVRecord row(CSVRecord opening, CSVRecord piece) {
    return run.table("cuts").stream()
        .filter(row -> row.get("opening").equals(opening.get("name")))
        .filter(row -> row.get("round").equals(piece.get("round")))
        .findFirst()
        .orElseThrow();
  }

  private void onOpeningsSheet(CSVRecord opening, CSVRecord piece, double depth) {
    String name = opening.get("name") + " (" + opening.get("wall") + ")";
    List<Object> shown =
        run.rows("Openings", name).stream()
            .filter(row -> row.get(1).equals(Double.valueOf(piece.get("round"))))
            .findFirst()
            .orElseThrow();
    assertEquals(piece.get("log"), shown.get(2));
    assertEquals(depth, (double) shown.get(4), step() * 0.51);
  }

  private double green(CSVRecord piece) {
    return hand.species(piece).equals("red spruce") ? 34 : 35;
  }

  private double dry(CSVRecord piece) {
    return 62.43 * 1.12 * (hand.species(piece).equals("red spruce") ? 0.37 : 0.34);
  }

  /** Pounds a cubic foot times cubic feet or metres, in pounds or kilograms. */
  private double weight(double density, double bulk) {
    return density * bulk * (metric ? KILOGRAMS / 0.028316846592 : 1);
  }

  /** Checks every log; returns round and sawn volume, green weight and weight in service. */
  private double[] wood() {
    double[] sums = new double[4];
    String volume = metric ? "_m3" : "_ft3";
    String weight = metric ? "_kg" : "_lb";
    for (int i = 0; i < hand.pieces().size(); i++) {
      CSVRecord piece = hand.pieces().get(i);
      CSVRecord row = run.table("wood").get(i);
      double round = bulk(hand.volume(piece, false));
      double sawn = bulk(hand.volume(piece, true));
      double finished = Double.parseDouble(row.get("finished" + volume));
      assertEquals(round, Double.parseDouble(row.get("round" + volume)), 2e-3);
      assertEquals(sawn, Double.parseDouble(row.get("sawn" + volume)), 2e-3);
      double green = weight(green(piece), sawn);
      assertEquals(green, Double.parseDouble(row.get("green" + weight)), 0.02);
      double service = weight(dry(piece), finished);
      assertEquals(service, Double.parseDouble(row.get("service" + weight)), metric ? 0.5 : 0.05);
      double balance = metric ? 0.5 : 0.02;
      assertEquals(hand.balance(piece), hand.number(row, "balance"), balance);
      sums[0] += round;
      sums[1] += sawn;
      sums[2] += green;
      sums[3] += Double.parseDouble(row.get("service" + weight));
    }
    return sums;
  }

  /** Checks every joint; returns run, area of both faces, gap volume and strips. */
  private double[] chinking() {
    double[] sums = new double[4];
    double half = metric ? 75 : 3;
    double depth = metric ? 25 : 1;
    for (CSVRecord row : run.table("chinking")) {
      List<Stretch> parts = parts(row);
      double length = parts.stream().mapToDouble(part -> part.to() - part.from()).sum();
      double area = parts.stream().mapToDouble(hand::faceArea).sum();
      double gap = parts.stream().mapToDouble(part -> hand.jointVolume(part, 0, half)).sum();
      double strips =
          parts.stream().mapToDouble(part -> hand.jointVolume(part, half - depth, half)).sum();
      assertEquals(length, hand.number(row, "run"), 1e-5);
      double widest =
          parts.stream().mapToDouble(part -> hand.widest(part, half - depth)).max().orElseThrow();
      assertEquals(widest, hand.number(row, "widest"), metric ? 0.05 : 2e-3);
      assertEquals(stock(widest * 1.25), hand.number(row, "backer"));
      assertEquals(bulk(gap), Double.parseDouble(row.get(metric ? "gap_m3" : "gap_ft3")), 2e-3);
      sums[0] += run(length);
      sums[1] += 2 * area / (metric ? 1e6 : 144);
      sums[2] += bulk(gap);
      sums[3] += bulk(strips);
    }
    return sums;
  }

  /** The stock sizes that hold what the samples want. */
  private double stock(double wanted) {
    double[] sizes = metric ? new double[] {40, 50, 60, 80, 100} : new double[] {1.5, 2, 2.5, 3};
    for (double size : sizes) {
      if (size >= wanted) {
        return size;
      }
    }
    throw new AssertionError(wanted);
  }

  private List<Stretch> parts(CSVRecord joint) {
    String wall = joint.get("wall");
    CSVRecord lower = hand.piece(wall, Integer.parseInt(joint.get("lower_round")));
    CSVRecord upper = hand.piece(wall, Integer.parseInt(joint.get("upper_round")));
    double neck = metric ? 225 : 9;
    double overhang = metric ? 75 : 3;
    double end = hand.number(lower, "trimmed") - neck;
    List<Stretch> parts = new ArrayList<>();
    double from = neck;
    for (CSVRecord opening : run.table("openings")) {
      double left = hand.number(opening, "left") + overhang;
      double width = hand.number(opening, "width");
      double at = left + width / 2;
      double crown = hand.number(lower, "centre_height") + hand.fromLeft(lower, at) / 2;
      double belly = hand.number(upper, "centre_height") - hand.fromLeft(upper, at) / 2;
      double middle = (crown + belly) / 2;
      boolean taken =
          middle > hand.number(opening, "sill") && middle < hand.number(opening, "head");
      if (opening.get("wall").equals(wall) && taken) {
        parts.add(new Stretch(lower, upper, from, left));
        from = left + width;
      }
    }
    parts.add(new Stretch(lower, upper, from, end));
    return parts;
  }

  private void materials(double[] wood, double[] joints) {
    Map<String, Double> sums = new TreeMap<>();
    sums.put("round volume", wood[0]);
    sums.put("slabs", wood[0] - wood[1]);
    sums.put("sawn volume", wood[1]);
    sums.put("green weight", wood[2]);
    sums.put("weight in service", wood[3]);
    sums.put("joint run per face", joints[0]);
    sums.put("chinking to be seen", joints[1]);
    sums.put("gap volume", joints[2]);
    sums.put("chinking volume", joints[3]);
    sums.put("chinking to buy", 1.1 * joints[3]);
    sums.put("the same in pails", 1.1 * joints[3] * (metric ? 1000 : 1728 / 231.0));
    sums.put("room between the strips", joints[2] - joints[3]);
    sums.put("buck board", run(buckBoard()));
    sums.put("trimmed length", run(sum("trimmed")));
    sums.put("taken off the ends in all", run(sum("cut_off_butt") + sum("falls_off")));
    for (Map.Entry<String, Double> each : sums.entrySet()) {
      double shown = (double) run.rows("Materials", each.getKey()).get(0).get(1);
      assertEquals(each.getValue(), shown, 3e-4 * each.getValue() + 1e-3, each.getKey());
    }
  }

  private double buckBoard() {
    double total = 0;
    for (CSVRecord opening : run.table("openings")) {
      int across = hand.number(opening, "sill") > 0 ? 2 : 1;
      total += 2 * hand.number(opening, "leg") + across * hand.number(opening, "width");
    }
    return total;
  }

  private double sum(String column) {
    return hand.pieces().stream().mapToDouble(row -> hand.number(row, column)).sum();
  }

  /** Every log stands once, none before what it lies on, and each weighs what its volume says. */
  private void lifting() {
    double before = 0;
    Set<Object> lifted = new HashSet<>();
    for (int number = 1; number <= hand.pieces().size(); number++) {
      List<Object> shown = run.rows("Lifting", (double) number).get(0);
      CSVRecord piece =
          hand.pieces().stream()
              .filter(row -> row.get("log").equals(shown.get(1)))
              .findFirst()
              .orElseThrow();
      double green = weight(green(piece), bulk(hand.volume(piece, true)));
      assertEquals(green, (double) shown.get(4), 0.52);
      double height = hand.number(piece, "centre_height");
      assertTrue(height >= before, shown.toString());
      assertTrue(lifted.add(shown.get(1)), shown.toString());
      before = height;
    }
  }

  /** Spares of each length: one in twenty of the logs needed, one at the least. */
  private void order() {
    double squaring = metric ? 100 : 4;
    double most = Double.MAX_VALUE;
    int missing = 0;
    for (String wall : List.of("N", "E")) {
      double least = hand.number(hand.piece(wall, 1), "trimmed") + squaring;
      double limit = most;
      long spares =
          run.table("logs").stream()
              .filter(row -> row.get("use").equals("spare"))
              .filter(row -> hand.number(row, "length") >= least)
              .filter(row -> hand.number(row, "length") < limit)
              .count();
      missing += (int) Math.max(0, 1 - spares);
      most = least;
    }
    boolean none = run.rows("Order", "How many").isEmpty();
    assertEquals(missing == 0, none);
    assertEquals(missing > 0, !run.rows("Order", (double) missing).isEmpty());
  }
}
