package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundbook.bucking.BuckingTask.Cut;

/**
 * A whole plan of 32 pieces from the 28 measured stems, and what it comes to, made and scored by a
 * script apart from this program (its pieces stand in src/test/resources/stems/joint-plan.csv).
 */
class JointPlanTest {
  private static final Path PLAN = Path.of("src/test/resources/stems/joint-plan.csv");

  private List<double[][]> stems;
  private BuckingTask task;
  private List<Cut> cuts;
  private List<String[]> rows;

  @BeforeEach
  void read() throws IOException {
    stems = MeasuredStems.stations();
    task = MeasuredStems.task(MeasuredStems.boles(stems), 0.001);
    rows = Files.readAllLines(PLAN).stream().skip(1).map(row -> row.split(",")).toList();
    cuts = new ArrayList<>();
    for (String[] row : rows) {
      cuts.add(
          new Cut(
              Integer.parseInt(row[2]) - 1,
              (int) Math.round(Double.parseDouble(row[3]) * MeasuredStems.STEPS),
              (int) Math.round(Double.parseDouble(row[4]) * MeasuredStems.STEPS)));
    }
  }

  @Test
  void has32PiecesAndNoneOverlap() {
    assertEquals(32, cuts.size());
    assertEquals(List.of(), OverlapCheck.faults(task, cuts));
    List<Cut> moved = new ArrayList<>(cuts);
    moved.set(0, new Cut(23, 250 * MeasuredStems.STEPS, cuts.get(0).raw()));
    assertTrue(OverlapCheck.faults(task, moved).size() > 0, "an overlap is seen");
  }

  @Test
  void hasTheSizesAndTheScoreThatWereReckonedApart() {
    BuckingResult result = BuckingResult.of(task, cuts);
    List<Double> sizes =
        result.sizes().stream().map(size -> size / (double) MeasuredStems.INCH).toList();
    assertEquals(List.of(13.5, 11.5, 10.5, 10.0, 9.5, 9.5, 9.5, 9.0), sizes);
    assertEquals(0.8315, result.score(), 0.0005);
    assertEquals(0.0995, result.rms(MeasuredStems.INCH) / MeasuredStems.INCH, 0.00005);
    assertEquals(84, result.gaps().length);
    assertEquals(0, result.gapsOutside(5_000, 17_500));
  }

  @Test
  void usesSoManyStemsAndSoMuchOfThem() {
    assertEquals(27, cuts.stream().mapToInt(Cut::bole).distinct().count());
    assertEquals(6272, cuts.stream().mapToInt(Cut::raw).sum() / MeasuredStems.STEPS);
    double stations = stems.stream().mapToDouble(JointPlanTest::lastThick).sum();
    assertEquals(10_114, stations, 0.5, "to the last station of 8 in");
    int usable = task.boles().stream().mapToInt(Bole::usable).sum() / MeasuredStems.STEPS;
    assertTrue(usable >= 10_114 && usable < 10_114 + 28 * 4.94, "between that and the next one");
  }

  private static double lastThick(double[][] stem) {
    double last = 0;
    for (double[] station : stem) {
      last = station[1] >= 8 ? station[0] : last;
    }
    return last;
  }

  @Test
  void readsDiametersBetweenStationsAlongStraightLines() {
    double[] at = {0, 26, 100, 200, 333.3};
    double[] inches = {12.9530, 10.6767, 9.5748, 9.3700, 7.6380};
    for (int i = 0; i < at.length; i++) {
      assertEquals(inches[i], MeasuredStems.at(stems.get(0), at[i]), 0.00005);
    }
  }

  @Test
  void trimsPiecesAsTheScriptDid() {
    for (int place = 0; place < cuts.size(); place++) {
      Cut cut = cuts.get(place);
      Bole bole = task.boles().get(cut.bole());
      int squared = task.side(place).inset();
      String[] row = rows.get(place);
      assertEquals(inches(row[5]), bole.atHalf(2 * (cut.from() + squared)), 51);
      assertEquals(inches(row[6]), bole.atHalf(cut.from() + cut.to()), 51);
      assertEquals(inches(row[7]), bole.atHalf(2 * (cut.to() - squared)), 51);
    }
  }

  private static double inches(String text) {
    return Double.parseDouble(text) * MeasuredStems.INCH;
  }
}
