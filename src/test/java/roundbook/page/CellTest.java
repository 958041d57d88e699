package roundbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.page.Figure.FigureAnchor;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

class CellTest {
  @Test
  void aCellIsPutTogetherStepByStep() {
    Cell cell =
        Cell.formula("A1/2", 3.5)
            .role(Role.MARK)
            .format(Cell.Format.FRACTION)
            .align(Cell.Align.LEFT)
            .named("Upper_1")
            .linkTo("Start");
    Cell.Value value = new Cell.Formula("A1/2", new Cell.Number(3.5));
    assertEquals(
        new Cell(value, Role.MARK, Cell.Format.FRACTION, Cell.Align.LEFT, "Upper_1", "Start"),
        cell);
  }

  @Test
  void lengthsAreNumbersOfTheirUnit() {
    assertEquals(Cell.number(3.5), Cell.length(Length.ofInchFraction(7, 2), LengthUnit.INCH));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsRefused(double number) {
    assertThrows(IllegalArgumentException.class, () -> Cell.number(number));
    assertThrows(IllegalArgumentException.class, () -> Cell.formula("1/0", number));
  }

  static List<Executable> wrong() {
    Rule.Advice advice = Rule.Advice.refusing("t", "e");
    Area area = Area.of("A1");
    return List.of(
        () -> Cell.formula("", 1),
        () -> Cell.formula("=1", 1),
        () -> new Cell.Formula("1", new Cell.Blank()),
        () -> new Cell.Formula("1", new Cell.Formula("1", new Cell.Number(1))),
        () -> Cell.number(1).named("R"),
        () -> new Rule.OneOf(area, List.of(), advice),
        () -> new Rule.OneOf(area, List.of("a,b"), advice),
        () -> new Rule.OneOf(area, List.of("x".repeat(256)), advice),
        () -> Rule.Advice.refusing("x".repeat(33), ""),
        () -> Rule.Advice.asking("", "x".repeat(256)),
        () -> advice.prompt("x".repeat(256)));
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void whatASpreadsheetCannotHoldIsRefused(Executable make) {
    assertThrows(IllegalArgumentException.class, make);
  }

  @Test
  void picturesAreEqualWhenTheirBytesAre() {
    FigureAnchor place = new Figure.Over(Area.of("A1:B2"));
    byte[] bytes = {1, 2, 3};
    Figure.Picture picture = new Figure.Picture(bytes, place, "dots");
    bytes[0] = 9;
    assertEquals(new Figure.Picture(new byte[] {1, 2, 3}, place, "dots"), picture);
    assertEquals(1, picture.png()[0]);
  }
}
