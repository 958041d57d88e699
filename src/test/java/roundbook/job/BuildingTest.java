package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;

/** Walls in their order round the house, their corners, and lists of walls that make no house. */
class BuildingTest {
  /** Reads {@code N240*} as a wall N of 240 in that is laid first. */
  private static List<Wall> walls(String all) {
    List<Wall> walls = new ArrayList<>();
    for (String each : all.split(" ")) {
      boolean first = each.endsWith("*");
      String name = each.replaceAll("\\d.*", "");
      long outside = Long.parseLong(each.replaceAll("\\D", ""));
      walls.add(new Wall(name, Length.ofInches(outside), first, Length.ofInches(6), ""));
    }
    return walls;
  }

  private static final Building HOUSE = new Building(walls("N240* E168 S240* W168"));

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "N240 E168 S240 W168, N E S W",
    "N240 S240 E168 W168, N E S W",
    "E168 W168 N240 S240, E S W N",
    "W168 S240 E168 N240, W N E S",
    "A10 B20 C10 D20, A B C D",
    "N240 E168 S240, N E S",
    "N240 E168 S240 X168, N E S X",
  })
  void wallsAreTakenInTheirOrderRoundTheHouse(String listed, String order) {
    List<String> names = Building.inOrder(walls(listed)).stream().map(Wall::name).toList();
    assertEquals(order, String.join(" ", names));
  }

  @Test
  void cornersAreNamedByTheirWalls() {
    assertEquals(List.of("NW", "NE", "SE", "SW"), HOUSE.corners());
    Wall south = HOUSE.wall("s").orElseThrow();
    assertEquals("SE", HOUSE.startCorner(south));
    assertEquals("SW", HOUSE.endCorner(south));
    assertEquals("E", HOUSE.before(south).name());
    assertEquals("W", HOUSE.after(south).name());
    assertEquals("N", HOUSE.after(HOUSE.wall("W").orElseThrow()).name(), "round the house");
    assertTrue(HOUSE.wall("Q").isEmpty());
  }

  /** By hand: 20 ft and 6 in past each crossing wall's outer face. */
  @Test
  void aTrimmedLogReachesPastBothCorners() {
    Length trimmed = HOUSE.trimmed(HOUSE.walls().get(0), Length.ofInches(6));
    assertEquals(Length.ofInches(252), trimmed);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "N240* E168 S240*, bad-walls.count",
    "N240* E168 S240* W168 Q99, bad-walls.count",
    "N240* E168 N240* W168, bad-walls.same-name",
    "N240* E168* S240 W168, bad-walls.both-first",
    "N240* E168 S240 W168*, bad-walls.neither-first",
    "N240* E168 S228* W168, bad-walls.opposite",
    "N240* E168 S240* W180, bad-walls.opposite",
  })
  void whatIsNoRectangleIsRefused(String listed, String key) {
    assertEquals(key, WallsFault.of(walls(listed)).orElseThrow().said().key());
  }

  @Test
  void aRectangleIsSound() {
    assertTrue(WallsFault.of(HOUSE.walls()).isEmpty());
    assertTrue(WallsFault.of(walls("N240 E168* S240 W168*")).isEmpty());
  }
}
