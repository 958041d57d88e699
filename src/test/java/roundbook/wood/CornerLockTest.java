package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The areas that lock a corner. */
class CornerLockTest {
  /**
   * D and d 14, g 3/4, T 5, s 1/4: the shoulders computed apart in another language, and measured
   * on a solid model as 34.7305.
   */
  @Test
  void areasOfACornerAreThoseOfASolidModel() {
    CornerLock lock = new CornerLock(new CornerNeck(7.375, 5, 7, 0.25, 0.25), 14);
    assertEquals(34.732049763, lock.shoulders(), 1e-8);
    assertEquals(34.7305, lock.shoulders(), 2e-3);
    assertEquals(6.25, lock.slidingIn(5));
  }

  /** The shoulders are what is left of the section around the neck at its root. */
  @Test
  void shouldersAndNeckMakeTheSection() {
    CornerNeck neck = new CornerNeck(6.5, 6, 9, 1 / 3.0, 1 / 3.0);
    double root = 6 * (6.5 + 6.5 - 2) / 2;
    double shoulders = new CornerLock(neck, 13).shoulders();
    assertEquals(SawnLog.section(13, 6), root + shoulders, 1e-9);
  }
}
