package roundbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AreaTest {
  @ParameterizedTest
  @CsvSource({
    "A1, 1, 1, 1, 1, A1",
    "Z9, 9, 26, 9, 26, Z9",
    "AA10, 10, 27, 10, 27, AA10",
    "XFD1048576, 1048576, 16384, 1048576, 16384, XFD1048576",
    "B3:D5, 3, 2, 5, 4, B3:D5",
    "D5:B3, 3, 2, 5, 4, B3:D5",
    "$B$3:$D$5, 3, 2, 5, 4, B3:D5"
  })
  void addressesAreRead(String address, int top, int left, int bottom, int right, String printed) {
    Area area = Area.of(address);
    assertEquals(new Area(top, left, bottom, right), area);
    assertEquals(printed, area.toString());
    assertEquals(area, Area.of(area.absolute()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "A", "1", "A0", "a1", "A1:", "A1:B", "R1C1", "XFE1", "A1048577"})
  void whatIsNoAddressIsRefused(String address) {
    assertThrows(IllegalArgumentException.class, () -> Area.of(address));
  }

  @ParameterizedTest
  @CsvSource({
    "B2:C3, C3:D4, true",
    "B2:C3, D2:E3, false",
    "B2:C3, B4:C5, false",
    "A1:Z9, B2, true"
  })
  void overlapsAreFoundBothWays(String one, String two, boolean overlap) {
    assertEquals(overlap, Area.of(one).overlaps(Area.of(two)));
    assertEquals(overlap, Area.of(two).overlaps(Area.of(one)));
  }

  @ParameterizedTest
  @CsvSource({"Round 01, B3, '''Round 01''!$B$3'", "Wood's, B3:C4, '''Wood''''s''!$B$3:$C$4'"})
  void formulasOnOtherSheetsQuoteTheName(String sheet, String address, String formula) {
    assertEquals(formula, Area.of(address).on(sheet));
  }

  @ParameterizedTest
  @CsvSource({"B3, 2, 1, C5", "B3:C4, 0, 0, B3:C4"})
  void areasMove(String address, int rows, int columns, String moved) {
    assertEquals(moved, Area.of(address).moved(rows, columns).toString());
    assertEquals("B3:D6", Area.of("B3").sized(4, 3).toString());
  }
}
