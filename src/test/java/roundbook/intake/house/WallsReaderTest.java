package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.words.Sentences;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/** One rectangle is planned; every other ring of walls is refused, with its place and a remedy. */
class WallsReaderTest {
  private final Problems problems = new Problems();

  /** A plan that is no rectangle was once planned as if all its corners were outer ones. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "an L, A 240 x/B 180/C 120 x/D 60/E 120 x/F 120, A6, 6 walls are given",
    "a U, 'A 300 x/B 180/C 100 x/D 90/E 100 x/F 90/G 100 x/H 180', A6, 8 walls are given",
    "two pens, 'A 240 x/B 168/C 240 x/D 168/E 120 x/F 96/G 120 x/H 96', A6, 8 walls are given",
    "six alike, A 240 x/B 240/C 240 x/D 240/E 240 x/F 240, A6, 6 walls are given",
    "an open pen, A 240 x/B 168/C 240 x, '', 3 walls are given",
    "no wall, '', '', 0 walls are given",
    "a trapezium, A 240 x/B 168/C 250 x/D 168, A4, walls A and C face each other",
    "a kite, A 240 x/B 168/C 240 x/D 160, A5, walls B and D face each other",
    "a name twice, A 240 x/B 168/A 240 x/D 168, A4, two walls are named A",
    "one below nothing, A 240 x/B -168/C 240 x/D -168, A3, wall B is no longer than the two logs",
    "side by side, A 240 x/C 240 x/B 168/D 168, A3, walls A and C meet at a corner",
    "none first, A 240/B 168/C 240/D 168, A3, walls A and B meet at a corner",
    "lengths side by side, A 240 x/B 240/C 168 x/D 168, A4, walls A and C face each other",
  })
  void refuses(String name, String walls, String cell, String message) {
    assertEquals(Optional.empty(), read(walls));
    List<Problem> said = problems.sorted();
    assertEquals(1, said.size(), said.toString());
    Problem only = said.get(0);
    assertEquals(ProblemCode.BAD_WALLS, only.code());
    String place = cell == null || cell.isEmpty() ? "Walls" : "Walls!" + cell;
    assertEquals("job.xlsx: " + place, only.where().toString());
    String told = Sentences.english().message(only);
    assertTrue(told.startsWith(message), told);
    assertTrue(!Sentences.english().remedy(only).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "A 240 x/B 168/C 240 x/D 168, A B C D, AB",
    "N 240/E 168/S 240/W 168, N E S W, NE",
    "N 240/S 240/E 168/W 168, N E S W, NE",
    "W 168/E 168/S 240/N 240, W N E S, NW",
    "n 240/w 168/s 240/e 168, N E S W, NE",
    "E 168 x/N 240 n/W 168 x/S 240 n, E S W N, SE",
    "N1 240 x/E1 168/S1 240 x/W1 168, N1 E1 S1 W1, N1E1",
    "N1 240 x/W1 168/S1 240 x/E1 168, N1 W1 S1 E1, N1W1",
  })
  void takesARectangleInItsOrderRoundTheHouse(String walls, String order, String corner) {
    Building read = read(walls).orElseThrow(() -> new AssertionError(problems.sorted()));
    assertEquals(List.of(order.split(" ")), read.walls().stream().map(Wall::name).toList());
    assertEquals(corner, read.endCorner(read.walls().get(0)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "32x18 + 15-9, N 384/E 216/S 384/W 216/P1 216",
    "32x18 + 15-9 + 8, N 384/E 216/S 384/W 216/P2 216/P1 216",
    "32x18 + E:7, N 384/E 216/S 384/W 216/P1 384",
    "'16,10,16x18', N 192/E 216/S 192/W 216/N2 192/E2 216/S2 192/W2 216",
    "'16,10,16x18 + N2:7', N 192/E 216/S 192/W 216/N2 192/E2 216/S2 192/W2 216/P1 216",
    "'28x20 wing S:14,14x12', N 336/E 384/S 336/W 240/S2 168/W2 150",
    "'28x20 wing S:0,14x12', N 336/E 240/S 336/W 384/E2 150/S2 168",
    "'28x20 + 10 wing s:7,14x12', N 336/E 240/S 336/W 240/P1 240/E2 150/S2 168/W2 150",
    "'28x20 wing E:10,10x12', N 480/E 240/S 336/W 240/E2 120/S2 150",
  })
  void anOptionHasPensAndPartitions(String option, String walls) {
    Building read = option(option).orElseThrow(() -> new AssertionError(problems.sorted()));
    assertEquals(
        walls,
        read.walls().stream()
            .map(wall -> wall.name() + " " + (int) wall.outside().inches())
            .collect(java.util.stream.Collectors.joining("/")));
  }

  @ParameterizedTest
  @CsvSource({
    "'16,10x18'",
    "32x18 + Q:7",
    "32x18 + -",
    "+ 15-9",
    "'32x18 and 16,10,16x18'",
    "32x18 + 1",
    "'28x20 wing S:14,14'",
    "'28x20 wing Q:14,14x12'",
    "'28x20 wing 14,14x12'",
    "'28x20 wing S:20,14x12'",
    "'16,10,16x18 wing S:7,9x12'",
    "'wing S:7,9x12'",
  })
  void anOptionThatCannotBeReadIsRefused(String option) {
    assertEquals(Optional.empty(), option(option));
    assertEquals(ProblemCode.BAD_WALLS, problems.sorted().get(0).code());
  }

  /** Reads {@code rings [and pens] [+ partition] [wing where]} as if given by options. */
  private Optional<Building> option(String text) {
    String[] wing = text.split("\\s*wing ", -1);
    String[] parts = wing[0].split("\\s*\\+\\s*", -1);
    List<String> rings =
        Arrays.stream(parts[0].split(" and ")).filter(each -> !each.isEmpty()).toList();
    HouseTold told =
        new HouseTold(
            rings.stream().filter(each -> !each.contains(",")).findFirst(),
            rings.stream().filter(each -> each.contains(",")).findFirst(),
            List.of(parts).subList(1, parts.length),
            wing.length > 1 ? Optional.of(wing[1]) : Optional.empty());
    return new WallsReader(rules(), problems).read(Optional.empty(), Optional.of(told));
  }

  private static BuildRules rules() {
    return JobReader.rules(table(List.of()), Asked.NOTHING)
        .value()
        .orElseThrow()
        .with(Setting.REENTRANT, "hook", BuildRules.Origin.OPTION);
  }

  /** A sheet tells where partitions stand, and the pens of walls. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "N 384/E 216/S 384/W 216/P1 - - N_S 15'9\", N E S W P1, ''",
    "N 384/E 216/S 384/W 216/P1 216 - S_N 190, N E S W P1, ''",
    "A 384 x/B 216/C 384 x/D 216/P1 - - A_C 150, A B C D P1, ''",
    "A 384/B 216 x/C 384/D 216 x/P1 - - A_C 150, A B C D P1, ''",
    "N1 384/E1 216/S1 384/W1 216/P1 - - N1_S1 150, N1 E1 S1 W1 P1, ''",
    "N 384/E 216/S 384/W 216/P1 - - N_S 12in, '', A6",
    "N 384/E 216/S 384/W 216/P1 200 - N_S 150, '', A6",
    "N 384/E 216/S 384/W 216/P1 - - N_E 150, '', A6",
    "N 384/E 216/S 384/W 216/P1 - x N_S 150, '', A6",
    "N 384/E 216/S 384/W 216/P1 - - N_S 150/P2 - - N_S 160, '', A7",
    "N 384/E 216/S 384/W 216/P1 - - N_S 150/P2 - - E_W 90, N E S W P1 P2, ''",
    "N 336/E 384/S 336/W 240/S2 168 - S 168 2/W2 144 - - - 2, N E S W S2 W2, ''",
    "N 336/E 240/S 336/W 240/S2 168 - S 168 2/W2 144 - - - 2, '', A3",
    "N 192/E 216/S 192/W 216/N2 192 - - - 2/E2 216 - - - 2/S2 192 - - - 2/W2 216 - - - 2, '', A6",
  })
  void aSheetHasPartitionsAndPens(String walls, String order, String cell) {
    List<Row> rows = new ArrayList<>();
    rows.add(row(1, "Wall", "Outside length", "Laid first", "Between", "At", "Pen"));
    for (String wall : walls.split("/")) {
      String[] texts =
          Arrays.stream(wall.split(" "))
              .map(each -> each.equals("-") ? "" : each.replace('_', ' ').replace("'9", "' 9"))
              .toArray(String[]::new);
      rows.add(row(rows.size() + 1, texts));
    }
    Optional<Building> read =
        new WallsReader(rules(), problems).read(Optional.of(table(rows)), Optional.empty());
    String names =
        read.map(all -> String.join(" ", all.walls().stream().map(Wall::name).toList())).orElse("");
    assertEquals(order, names, problems.sorted().toString());
    if (read.isEmpty()) {
      assertEquals("job.xlsx: Walls!" + cell, problems.sorted().get(0).where().toString());
    }
  }

  @Test
  void anOptionIsARectangle() {
    Building read =
        new WallsReader(
                JobReader.rules(table(List.of()), Asked.NOTHING).value().orElseThrow(), problems)
            .read(Optional.empty(), Optional.of(HouseTold.ofWalls("20x14")))
            .orElseThrow();
    assertEquals(
        List.of(240, 168, 240, 168),
        read.walls().stream().map(wall -> wall.outside().inches()).map(Double::intValue).toList());
  }

  private Optional<Building> read(String walls) {
    List<Row> rows = new ArrayList<>(List.of(row(1, "Wall", "Outside length", "Laid first (x)")));
    for (String wall : walls == null ? new String[0] : walls.split("/")) {
      if (!wall.isEmpty()) {
        rows.add(row(rows.size() + 1, wall.split(" ")));
      }
    }
    return new WallsReader(
            JobReader.rules(table(List.of()), Asked.NOTHING).value().orElseThrow(), problems)
        .read(Optional.of(table(rows)), Optional.empty());
  }

  private static Table table(List<Row> rows) {
    return Table.of("job.xlsx", "Walls", Set.of(), rows);
  }

  private static Row row(int number, String... texts) {
    List<Cell> cells = new ArrayList<>();
    Arrays.stream(texts).forEach(text -> cells.add(Cell.text(cells.size() + 1, text)));
    return new Row(number, cells, false, false);
  }
}
