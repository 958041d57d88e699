package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.PricedCuts.Laid;
import roundbook.bucking.PricedCuts.Priced;

/**
 * The dynamic programme of bucking, against values of a script apart from this program and against
 * trying every way.
 */
class PricedCutsTest {
  private static List<Priced> longAt(double price) {
    return List.of(new Priced(226, price), new Priced(166, 1));
  }

  /** Stem 1 of the measured ones is 8 in thick up to 291 in, stem 4 up to 370 in. */
  @Test
  void cutsOneLongPieceOrTwoShortOnes() {
    Stretch one = new Stretch(0, 291);
    Stretch four = new Stretch(0, 370);
    for (double price : new double[] {1.2, 1.5}) {
      assertEquals(List.of(new Laid(0, 226)), PricedCuts.best(one, 0, longAt(price)));
      assertEquals(
          List.of(new Laid(0, 166), new Laid(166, 166)), PricedCuts.best(four, 0, longAt(price)));
    }
  }

  @Test
  void takesTheKerfBetweenPiecesAndNotAfterTheLast() {
    List<Priced> lengths = List.of(new Priced(100, 1));
    assertEquals(2, PricedCuts.best(new Stretch(10, 211), 1, lengths).size());
    assertEquals(1, PricedCuts.best(new Stretch(10, 210), 1, lengths).size());
    assertEquals(List.of(), PricedCuts.best(new Stretch(0, 99), 1, lengths));
  }

  /** Twenty of the measured stems, prices drawn with a seed. */
  @Test
  void isWorthWhatTryingEveryWayIsWorth() throws IOException {
    Random random = new Random(20);
    for (Bole bole : MeasuredStems.boles(MeasuredStems.stations()).subList(0, 20)) {
      Stretch free = bole.free().get(0);
      List<Priced> lengths =
          List.of(
              new Priced(226 * 4, 1 + random.nextDouble()),
              new Priced(166 * 4, 0.8 + 0.4 * random.nextDouble()),
              new Priced(97 * 4, random.nextDouble()));
      List<Laid> pieces = PricedCuts.best(free, 1, lengths);
      double worth = pieces.stream().mapToDouble(piece -> price(lengths, piece)).sum();
      assertEquals(every(free.length() + 1, 1, lengths), worth, 1e-12);
      for (int i = 0; i < pieces.size(); i++) {
        int next = i + 1 < pieces.size() ? pieces.get(i + 1).from() - 1 : free.to();
        assertTrue(pieces.get(i).from() + pieces.get(i).raw() <= next);
      }
    }
  }

  private static double price(List<Priced> lengths, Laid piece) {
    return lengths.stream()
        .filter(each -> each.raw() == piece.raw())
        .findFirst()
        .orElseThrow()
        .price();
  }

  private static double every(int left, int kerf, List<Priced> lengths) {
    double best = 0;
    for (Priced each : lengths) {
      if (each.raw() + kerf <= left) {
        best = Math.max(best, each.price() + every(left - each.raw() - kerf, kerf, lengths));
      }
    }
    return best;
  }
}
