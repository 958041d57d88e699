package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.problem.Problems;
import roundbook.problem.words.Sentences;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Openings and pins as builders type them. */
class PlacesReaderTest {
  private static final Building CABIN =
      new Building(
          List.of(
              wall("N", 240, true),
              wall("E", 168, false),
              wall("S", 240, true),
              wall("W", 168, false)));

  private final Problems problems = new Problems();
  private final PlacesReader reader = new PlacesReader(Jobs.rules(false), CABIN, problems);

  private static Wall wall(String name, long inches, boolean first) {
    return new Wall(name, Length.ofInches(inches), first, Length.ofInches(6), "");
  }

  /** A leaf is a width and a height; a bare number is in the job's unit. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {"36 x 80|36|80", "3' X 6' 8\"|36|80", "36 1/2×80|36.5|80", "30*60 in|30|60"})
  void aLeafIsAWidthAndAHeight(String text, double width, double height) {
    Leaf leaf = leaf(text).orElseThrow();
    assertEquals(width, leaf.width().inches());
    assertEquals(height, leaf.height().inches());
    assertEquals(List.of(), problems.sorted());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"36", "36 by eighty", "36 x 80 x 2", "0 x 80"})
  void aLeafThatIsNoneIsSaidAndTheOpeningStays(String text) {
    assertEquals(Optional.empty(), leaf(text));
    assertEquals("G2", problems.sorted().get(0).where().address());
  }

  private Optional<Leaf> leaf(String text) {
    Table table =
        table(
            "Name|Wall|From left corner, as seen from outside (in)|Width (in)|Sill (in)|Head (in)|"
                + "Leaf, width x height (in)",
            "Door|S|60|40|0|84|" + text);
    return reader.openings(table).get(0).leaf();
  }

  /** Where a corner is none, those that there are are named: of the wall that is pinned. */
  @Test
  void aPinOfNoCornerIsToldWhichThereAre() {
    Table table = table("Round|Wall|Log|Butt at|Why", "1|N|7|XX|", "2||8|YY|");
    assertEquals(List.of(), reader.pins(table, tag -> true));
    String said = problems.sorted().get(0).said().in(Sentences.english());
    assertTrue(said.endsWith("no corner XX here; there are NE NW"), said);
    String all = problems.sorted().get(1).said().in(Sentences.english());
    assertTrue(all.endsWith("there are NE NW SE SW"), all);
  }

  private static Table table(String... lines) {
    List<Row> rows = new ArrayList<>();
    for (int number = 1; number <= lines.length; number++) {
      String[] texts = lines[number - 1].split("\\|", -1);
      List<Cell> cells = new ArrayList<>();
      for (int column = 1; column <= texts.length; column++) {
        if (!texts[column - 1].isEmpty()) {
          cells.add(Cell.text(column, texts[column - 1]));
        }
      }
      rows.add(new Row(number, cells, false, false));
    }
    return Table.of("job.xlsx", "Openings", Set.of(), rows);
  }
}
