package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Taper models at 0.3, 1.3, 3, 6, 10 and 15 m: the spruce of 40 cm and 28 m as the open package
 * taperNOR 0.2.0 of the models' authors has it; the others, of 40 cm and 25 m, computed apart.
 */
class StemTaperTest {
  @ParameterizedTest
  @CsvSource({
    "NORWAY_SPRUCE, 28, 48.269 37.928 34.522 31.889 28.527 22.901",
    "WHITE_PINE, 25, 45.356 37.240 34.181 31.779 28.813 23.319",
    "RED_SPRUCE, 25, 47.574 38.719 34.848 31.743 28.486 22.922"
  })
  void diametersWithoutBark(StemTaper model, double top, String expected) {
    double[] told = Arrays.stream(expected.split(" ")).mapToDouble(Double::parseDouble).toArray();
    double[] found =
        DoubleStream.of(0.3, 1.3, 3, 6, 10, 15).map(h -> model.diameter(h, 40, top)).toArray();
    assertArrayEquals(told, found, 6e-4);
  }

  @ParameterizedTest
  @EnumSource
  void aTreeIsThinnerHigherUpAndThickerWhereItsBreastIs(StemTaper model) {
    for (double height = 2; height < 14; height++) {
      assertTrue(model.diameter(height, 40, 25) > model.diameter(height + 1, 40, 25));
      assertTrue(model.diameter(height, 41, 25) > model.diameter(height, 40, 25));
      double breast = model.breastFor(20, height, 25);
      assertTrue(Math.abs(model.diameter(height, breast, 25) - 20) < 1e-6, model + " " + height);
    }
  }
}
