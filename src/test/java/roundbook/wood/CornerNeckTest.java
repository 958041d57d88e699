package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The wood left in a neck and cut away from it. */
class CornerNeckTest {
  /** Computed apart; 639.3152 in³ is a solid modeller's. */
  @Test
  void eighteenInchLog() {
    CornerNeck neck = new CornerNeck((18 + 1.5) / 2, 8, 8 + 3, 0.25, 0.25);
    assertEquals(891, neck.volume(), 1e-9);
    assertEquals(639.185895026, neck.removedFrom(18), 1e-6);
    assertEquals(639.3152, neck.removedFrom(18), 0.2);
  }

  /** Size 13, gap 1, logs 6 in thick, 3 in past the corner, 1:3, no taper; computed apart. */
  @Test
  void thirteenInchLog() {
    CornerNeck neck = new CornerNeck((13 + 1) / 2.0, 6, 6 + 3, 1 / 3.0, 1 / 3.0);
    assertEquals(271.2, neck.removedFrom(13), 0.05);
  }

  /** The two planes, U − s (T/2 − v) and −L − s t, integrated with Apache Commons Math. */
  @RepeatedTest(20)
  void planesIntegrated(RepetitionInfo info) {
    long seed = 4000 + info.getCurrentRepetition();
    Random random = new Random(seed);
    double thickness = 4 + 4 * random.nextDouble();
    double crossing = 4 + 4 * random.nextDouble();
    double length = crossing + 4 * random.nextDouble();
    double lower = 2 + 2 * random.nextDouble();
    double upper = lower + 1;
    double slope = random.nextDouble() / 2;
    double along = random.nextDouble() / 2;
    double top =
        Pieces.integrate(
            v -> upper - slope * (thickness / 2 - v), List.of(-thickness / 2, thickness / 2));
    double bottom = Pieces.integrate(t -> lower + along * t, List.of(0.0, length));
    CornerNeck neck = new CornerNeck(upper + lower, thickness, length, slope, along);
    assertEquals(top * length + bottom * thickness, neck.volume(), 1e-9, "seed " + seed);
  }
}
