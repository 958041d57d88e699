package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;

/** A wing on a wall of the house: where its walls cross the others, and what is refused. */
class WingTest {
  /** 28 by 20 ft, a wing of 14 by 12 ft outside of S at its right end; logs 6 in thick. */
  private static final String ELL = "N 336, E 384, S 336, W 240, S2 168 S 168, W2 150";

  /** The same wing 7 ft from the left end. */
  private static final String TEE = "N 336, E 240, S 336, W 240, E2 150, S2 168 S 84, W2 150";

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  /** Reads walls from {@code name outside [on at]}, a name that ends with 2 being of pen 2. */
  private static List<Wall> walls(String told) {
    return Stream.of(told.split(", ")).map(WingTest::wall).collect(Collectors.toList());
  }

  private static Wall wall(String told) {
    String[] parts = told.split(" ");
    List<String> on = parts.length > 2 ? List.of(parts[2].split("-")) : List.of();
    Optional<Length> at =
        parts.length > 3 ? Optional.of(in(Long.parseLong(parts[3]))) : Optional.empty();
    boolean first = parts[0].startsWith("N") || parts[0].startsWith("S");
    int pen = parts[0].endsWith("2") ? 2 : parts[0].endsWith("3") ? 3 : 1;
    Stand stand = new Stand(pen, on, at);
    return new Wall(parts[0], in(Long.parseLong(parts[1])), first, in(6), "", stand);
  }

  private static Building building(String told) {
    return new Building(Building.inOrder(walls(told)));
  }

  private static String names(Building building) {
    return building.walls().stream()
        .map(
            wall ->
                building.before(wall).name()
                    + "-"
                    + wall.name()
                    + "-"
                    + building.after(wall).name())
        .collect(Collectors.joining(" "));
  }

  /**
   * B-W11, by hand: two tails of 3 in past the outer faces; the wing's side 12 ft, the wall that it
   * dies in and two tails.
   */
  @Test
  void anEllHasTheLengthsReckonedByHand() {
    Building ell = building(ELL);
    assertEquals(Optional.empty(), WallsFault.of(ell.walls(), rules("hook")));
    assertEquals("W-N-E N-E-S2 E-S-W S-W-N E-S2-W2 S2-W2-S", names(ell));
    assertEquals(
        List.of(in(342), in(390), in(342), in(246), in(174), in(156)),
        ell.walls().stream().map(wall -> ell.trimmed(wall, in(3))).toList());
    assertEquals(3, ell.walls().stream().filter(Wall::laidFirst).count());
    assertEquals(List.of("NW", "NE", "SE", "SW", "S2E", "S2W2", "SW2"), ell.corners());
    assertEquals(in(144), ell.told(ell.wall("W2").orElseThrow()));
  }

  /** The wall that goes on is crossed 12 ft from its end; the shared one where the wing begins. */
  @Test
  void saddlesOfAnEllLieInTheWallsThatGoThrough() {
    Building ell = building(ELL);
    Saddle through = ell.saddles(ell.wall("E").orElseThrow()).get(0);
    assertEquals(in(144), through.from());
    assertEquals("S", through.partition().name());
    assertFalse(through.inward(), "its tail shows outside of E");
    Saddle tee = ell.saddles(ell.wall("S").orElseThrow()).get(0);
    assertEquals(in(168), tee.from());
    assertTrue(tee.inward(), "its tail shows inside the house");
    assertEquals("SW2", ell.corner(tee));
    assertEquals(
        List.of("E", "W", "W2"),
        ell.crossing(ell.wall("S").orElseThrow()).stream().map(Wall::name).toList());
  }

  @Test
  void bothSidesOfATeeDieInTheSharedWall() {
    Building tee = building(TEE);
    assertEquals(Optional.empty(), WallsFault.of(tee.walls(), rules("drain")));
    assertEquals("W-N-E N-E-S E-S-W S-W-N S-E2-S2 E2-S2-W2 S2-W2-S", names(tee));
    List<Saddle> saddles = tee.saddles(tee.wall("S").orElseThrow());
    assertEquals(List.of(in(84), in(246)), saddles.stream().map(Saddle::from).toList());
    assertTrue(saddles.stream().allMatch(Saddle::inward));
  }

  /** Every wall may bear a wing, at either end; the other walls are listed in any order. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "N 336, E 240, S 336, W 384, E2 150, S2 168 S 0 | W-N-E N-E-S E-S-W S2-W-N S-E2-S2 E2-S2-W",
        "N 480, E 240, S 336, W 240, E2 120 E 120, S2 150 | W-N-E2 N-E-S E-S-W S-W-N N-E2-S2"
            + " E2-S2-E",
        "N 336, E 240, S 336, W 240, S2 150, W2 120 W 60, N2 150"
            + " | W-N-E N-E-S E-S-W S-W-N W-S2-W2 S2-W2-N2 W2-N2-W",
      })
  void aWingStandsOnAnyWall(String told, String found) {
    Building building = building(told);
    assertEquals(Optional.empty(), WallsFault.of(building.walls(), rules("hook")));
    assertEquals(found, names(building));
    building
        .saddles()
        .forEach(
            saddle -> assertTrue(saddle.through().laidFirst() != saddle.partition().laidFirst()));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "N 336, E 384, S 336, W 240, S2 168 Q 168, W2 150 | wing-on",
        "N 336, E 384, S 336, W 240, S2 168 S 200, W2 150 | wing-past",
        "N 336, E 384, S 336, W 384, S2 336 S 0, W2 150 | wing-whole",
        "N 336, E 240, S 336, W 240, E2 150, S2 168 S 17, W2 150 | wing-near",
        "N 336, E 240, S 336, W 240, S2 168 S 84, W2 150 | wing-three",
        "N 336, E 384, S 336, W 240, E2 150, S2 168 S 168, W2 150 | wing-two",
        "N 336, E 380, S 336, W 240, S2 168 S 168, W2 150 | wing-goes-on",
        "N 336, E 240, S 336, W 240, E2 150, S2 168 S 84, W2 149 | opposite",
        "N 336, E 384, S 336, W 240, S2 168 S 168, W2 150, P1 336 E-W 90 | wing-partition",
        "N 336, E 384, S 336, W 240, S2 168 S 168, W2 150, N3 300, E3 240, S3 300, W3 240 |"
            + " wing-more",
        "N 336, E 384, S 336, W 240, S2 168 S 168, W2 150, P1 240 N-S 100 | ",
        "N 336, E 384, S 336, W 240, S2 168 S 168, W2 150, P1 240 N-S 150 | near-partition",
      })
  void whatDoesNotCloseOrHasNoRoomIsRefused(String told, String key) {
    Optional<WallsFault> fault = WallsFault.of(Building.inOrder(walls(told)), rules("hook"));
    assertEquals(
        Optional.ofNullable(key).map(each -> "bad-walls." + each),
        fault.map(each -> each.said().key()));
  }

  /** Hook or drain has no default: what is not said is asked. */
  @Test
  void hookOrDrainIsAsked() {
    List<Wall> ell = building(ELL).walls();
    Optional<WallsFault> fault = WallsFault.of(ell, rules(""));
    assertEquals("bad-walls.reentrant", fault.orElseThrow().said().key());
    assertEquals("remedy.walls-reentrant", fault.orElseThrow().remedy().key());
  }

  private static BuildRules rules(String reentrant) {
    Map<Setting, BuildRules.Value> values = new EnumMap<>(Setting.class);
    values.put(Setting.PIECE_LEAST, value(in(12)));
    values.put(Setting.PRINT_STEP, value(Length.ofInchFraction(1, 16)));
    if (!reentrant.isEmpty()) {
      values.put(Setting.REENTRANT, value(reentrant));
    }
    return BuildRules.of(values);
  }

  private static BuildRules.Value value(Object value) {
    return new BuildRules.Value(value, BuildRules.Origin.DEFAULT);
  }

  @Test
  void wallsAreListedInAnyOrder() {
    List<Wall> listed = new ArrayList<>(walls(TEE));
    java.util.Collections.reverse(listed);
    Building building = new Building(Building.inOrder(listed));
    assertEquals(Optional.empty(), WallsFault.of(building.walls(), rules("hook")));
    assertEquals(7, building.saddles().size() + 5);
  }
}
