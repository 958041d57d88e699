package roundbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PositionsTest {
  private enum Part {
    FIRST,
    SECOND,
    THIRD
  }

  @Test
  void partsStandOneAfterTheOther() {
    Positions<Part> positions = Positions.of(Part.class);
    assertEquals(1, positions.number(Part.FIRST));
    assertEquals(3, positions.number(Part.THIRD));
  }
}
