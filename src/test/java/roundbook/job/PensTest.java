package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;

/** Partitions and pens in a row: where their walls cross, and at which ends their butts lie. */
class PensTest {
  /** 32 by 18 ft with a partition 150 in from the left outside corner of N; logs 6 in thick. */
  private static final Building PARTED = building(384, 216, partition("P1", 1, "N", "S", 150));

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static Wall partition(String name, int pen, String one, String other, long at) {
    boolean first = one.startsWith("E") || one.startsWith("W");
    Length outside = in(first ? 384 : 216);
    Stand stand = new Stand(pen, List.of(one, other), Optional.of(in(at)));
    return new Wall(name, outside, first, in(6), "", stand);
  }

  private static Building building(long along, long deep, Wall... partitions) {
    List<Wall> walls = new ArrayList<>(Rings.ring(1, along, deep, ""));
    walls.addAll(List.of(partitions));
    return new Building(Building.inOrder(walls));
  }

  private static Building twoPens() {
    List<Wall> walls = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    walls.addAll(Rings.ring(2, 192, 216, "2"));
    walls.add(partition("P1", 2, "N2", "S2", 90));
    return new Building(Building.inOrder(walls));
  }

  private static Wall wall(Building building, String name) {
    return building.wall(name).orElseThrow();
  }

  /**
   * By hand: a log of 390 in; its saddle 153–159 from the butt at the left, 231–237 at the right.
   */
  @Test
  void aSaddleIsToldFromTheSquaredButt() {
    Wall north = wall(PARTED, "N");
    assertEquals(in(390), PARTED.trimmed(north, in(3)));
    Saddle saddle = PARTED.saddles(north).get(0);
    assertEquals(in(153), saddle.fromButt(false, in(3)));
    assertEquals(in(231), saddle.fromButt(true, in(3)));
    Saddle south = PARTED.saddles(wall(PARTED, "S")).get(0);
    assertEquals(in(384 - 150 - 6), south.from(), "seen from the other side");
  }

  /** By hand: walls 18 ft apart outside and a tail on both sides. */
  @Test
  void aPartitionReachesPastBothWalls() {
    Wall partition = wall(PARTED, "P1");
    assertEquals(in(222), PARTED.trimmed(partition, in(3)));
    assertEquals("N", PARTED.before(partition).name());
    assertEquals("S", PARTED.after(partition).name());
    assertEquals(List.of("NW", "NE", "SE", "SW", "NP1", "SP1"), PARTED.corners());
    assertEquals("P1", PARTED.wallAt("SP1", false).name());
    assertEquals("S", PARTED.wallAt("SP1", true).name());
    assertEquals(
        List.of("W", "E", "P1"),
        PARTED.crossing(wall(PARTED, "N")).stream().map(Wall::name).toList());
  }

  /** Told from the wall across, the same partition stands where it stood. */
  @Test
  void aPartitionMayBeToldFromEitherWall() {
    assertEquals(PARTED, building(384, 216, partition("P1", 1, "S", "N", 228)));
  }

  /**
   * By hand: P1 stands 150 in from the left of N, so 228 from the left of S; P2 90 in from the left
   * of E. Both go through, and either is told where it is crossed.
   */
  @Test
  void partitionsThatCrossBothGoThrough() {
    Building crossed =
        building(384, 216, partition("P2", 1, "E", "W", 90), partition("P1", 1, "N", "S", 150));
    Saddle on1 = crossed.saddles(wall(crossed, "P1")).get(0);
    Saddle on2 = crossed.saddles(wall(crossed, "P2")).get(0);
    assertEquals(List.of(in(90), in(228)), List.of(on1.from(), on2.from()));
    assertTrue(on1.isLevel() && on2.isLevel());
    assertEquals("P1P2", crossed.corner(on1));
    assertEquals("P1P2", crossed.corner(on2));
    assertEquals(
        List.of("NW", "NE", "SE", "SW", "NP1", "SP1", "EP2", "WP2", "P1P2"), crossed.corners());
    assertEquals("P2", crossed.wallAt("P1P2", true).name());
    assertEquals("P1", crossed.wallAt("P1P2", false).name());
  }

  /** Seen from outside N its left neighbour is E, then each partition in turn. */
  @Test
  void buttsOfPartitionsLieOppositeToTheWallLeftOfThem() {
    Building three =
        building(384, 216, partition("P2", 1, "N", "S", 240), partition("P1", 1, "N", "S", 120));
    assertEquals(
        List.of("N", "E", "S", "W", "P1", "P2"), three.walls().stream().map(Wall::name).toList());
    assertTrue(three.isMirrored(wall(three, "P1")));
    assertTrue(!three.isMirrored(wall(three, "P2")));
  }

  @Test
  void theSecondPenMirrorsTheFirst() {
    Building pens = twoPens();
    assertEquals(List.of(1, 2), pens.pens());
    assertEquals(Optional.of(in(120)), pens.passage(2));
    assertEquals(
        List.of("NW", "NE", "SE", "SW", "NW2", "NE2", "SE2", "SW2", "N2P1", "S2P1"),
        pens.corners());
    assertTrue(pens.isMirrored(wall(pens, "N2")));
    assertTrue(!pens.isMirrored(wall(pens, "P1")), "opposite to E2, which is mirrored");
    assertEquals("E2", pens.after(wall(pens, "N2")).name());
  }

  /**
   * B-W10, by hand: 16 + 10 + 16 ft and two tails; of three pens each passage counts. One pen has
   * no row.
   */
  @Test
  void aRowReachesOverItsPassages() {
    assertEquals(Optional.of(in(42 * 12)), twoPens().row());
    assertEquals(Optional.of(in(68 * 12)), new Building(Building.inOrder(threePens())).row());
    assertEquals(Optional.empty(), PARTED.row());
  }

  private static List<Wall> threePens() {
    List<Wall> walls = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    walls.addAll(Rings.ring(2, 192, 216, "2"));
    walls.addAll(Rings.ring(3, 192, 216, "3"));
    return walls;
  }

  /** The third pen lies as the first does, and is told without a gap between the numbers. */
  @Test
  void threePensStandInARow() {
    Building pens = new Building(Building.inOrder(threePens()));
    assertEquals(Optional.empty(), WallsFault.of(pens.walls(), rules()));
    assertEquals(12, pens.corners().size());
    assertTrue(pens.isMirrored(wall(pens, "S2")));
    assertTrue(!pens.isMirrored(wall(pens, "S3")));
    List<Wall> gap = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    gap.addAll(Rings.ring(3, 192, 216, "3"));
    assertEquals("bad-walls.pen-number", WallsFault.of(gap, rules()).orElseThrow().said().key());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "N, S, 17, 216, near-corner",
    "N, S, 361, 216, near-corner",
    "N, S, 379, 216, outside",
    "N, S, 150, 200, partition-length",
    "N, E, 150, 216, between",
    "N, X, 150, 216, between",
  })
  void whatHasNoRoomOrDoesNotCloseIsRefused(
      String one, String other, long at, long outside, String key) {
    Stand stand = new Stand(1, List.of(one, other), Optional.of(in(at)));
    Wall wall = new Wall("P1", in(outside), false, in(6), "", stand);
    assertEquals("bad-walls." + key, fault(wall).orElseThrow().said().key());
  }

  @Test
  void partitionsThatRunOneWayKeepRoomBetweenThem() {
    Wall one = partition("P1", 1, "N", "S", 150);
    assertEquals(Optional.empty(), fault(one));
    assertEquals(Optional.empty(), fault(one, partition("P2", 1, "N", "S", 168)));
    Optional<WallsFault> near = fault(one, partition("P2", 1, "N", "S", 167));
    assertEquals("bad-walls.near-partition", near.orElseThrow().said().key());
    Optional<WallsFault> same = fault(one, partition("P2", 1, "N", "S", 152));
    assertEquals("bad-walls.same-place", same.orElseThrow().said().key());
    assertEquals(Optional.empty(), fault(one, partition("P2", 1, "E", "W", 90)));
    Wall first = new Wall("P1", in(216), true, in(6), "", one.stand());
    assertEquals("bad-walls.both-first", fault(first).orElseThrow().said().key());
  }

  @Test
  void aStarterOfHalfLogsIsForOnePen() {
    BuildRules rules = rules().with(Setting.FIRST_BED, "starter", BuildRules.Origin.OPTION);
    Optional<WallsFault> fault = WallsFault.of(PARTED.walls(), rules);
    assertEquals("bad-walls.starter", fault.orElseThrow().said().key());
    assertEquals(Optional.empty(), WallsFault.of(Rings.ring(1, 384, 216, ""), rules));
  }

  private static Optional<WallsFault> fault(Wall... partitions) {
    List<Wall> walls = new ArrayList<>(Rings.ring(1, 384, 216, ""));
    walls.addAll(List.of(partitions));
    return WallsFault.of(Building.inOrder(walls), rules());
  }

  private static BuildRules rules() {
    BuildRules.Value piece = new BuildRules.Value(in(12), BuildRules.Origin.DEFAULT);
    BuildRules.Value step =
        new BuildRules.Value(Length.ofInchFraction(1, 16), BuildRules.Origin.DEFAULT);
    return BuildRules.of(
        new java.util.EnumMap<>(
            java.util.Map.of(Setting.PIECE_LEAST, piece, Setting.PRINT_STEP, step)));
  }

  @Test
  void pensStandInARowAcrossPassages() {
    assertEquals(Optional.empty(), WallsFault.of(twoPens().walls(), rules()));
    List<Wall> open = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    Rings.ring(2, 192, 216, "2")
        .forEach(wall -> open.add(wall.at(new Stand(2, List.of(), Optional.empty()))));
    assertEquals("bad-walls.no-passage", WallsFault.of(open, rules()).orElseThrow().said().key());
    List<Wall> deep = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    deep.addAll(Rings.ring(2, 192, 204, "2"));
    assertEquals("bad-walls.pen-deep", WallsFault.of(deep, rules()).orElseThrow().said().key());
    List<Wall> wing = new ArrayList<>(Rings.ring(1, 192, 216, ""));
    wing.addAll(Rings.ring(2, 192, 216, "2").subList(1, 4));
    assertEquals("bad-walls.pen-count", WallsFault.of(wing, rules()).orElseThrow().said().key());
  }
}
