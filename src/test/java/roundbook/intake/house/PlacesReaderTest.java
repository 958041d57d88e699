package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.intake.Tally;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.Pin;
import roundbook.job.Wall;
import roundbook.plan.Houses;
import roundbook.plan.Jobs;
import roundbook.problem.Problems;
import roundbook.problem.words.Sentences;
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

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "3|N|7||; ",
        "3.0|n|7||; ",
        "|N|7||; ",
        "3|||NE|; ",
        "0|N|7||; A2 bad-pin.no-round",
        "x|N|7||; A2 bad-pin.no-round",
        "1000|N|7||; A2 bad-pin.no-round",
        "3|Q|7||; B2 bad-pin.no-wall",
        "3|N|9||; C2 bad-pin.no-log",
        "3|N|7|SE|; D2 bad-pin.butt",
      })
  void aPinIsSoundOrRefused(String row, String said) {
    List<Pin> pins = reader.pins(table("Round|Wall|Log|Butt at|Why", row), "7"::equals);
    assertEquals(said == null ? "" : said, Tally.said(problems.sorted()));
    assertEquals(said == null ? 1 : 0, pins.size());
  }

  /** Two pins of one place, or two places of one log: the first stands. */
  @Test
  void theSecondPinOfAPlaceOrALogIsRefused() {
    List<Pin> pins =
        reader.pins(
            table("Round|Wall|Log|Butt at|Why", "3|N|7||", "3.0|n|8||", "4|N|7||", "|S|||"),
            tag -> true);
    assertEquals("A3 bad-pin.same-place, C4 bad-pin.same-log", Tally.said(problems.sorted()));
    assertEquals("7", pins.get(0).log());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Door|S|60|36|0|84|; 60 36 0 84",
        "Door|s|5'|3 ft|=0|7'|; 60 36 0 84",
        "|S|60|36|0|84|; 60 36 0 84",
        "Door||60|36|0|84|; 2 bad-opening.wall-unnamed",
        "Door|Q|60|36|0|84|; 2 bad-opening.no-wall",
        "Door|S|x|36|0|84|; C2 bad-number.length",
        "Door|S|60||0|84|; D2 bad-number.length",
        "Door|S|ca. 60|36|0|84|; C2 bad-number.length",
      })
  void anOpeningHasFourMeasures(String row, String told) {
    List<Opening> openings = openings(row);
    String measures =
        openings.stream()
            .flatMap(each -> Stream.of(each.left(), each.width(), each.sill(), each.head()))
            .map(each -> String.valueOf(Math.round(each.inches())))
            .collect(Collectors.joining(" "));
    assertEquals(told, openings.isEmpty() ? Tally.said(problems.sorted()) : measures);
  }

  /** The first of two openings that share room stands; a shared edge is none. */
  @Test
  void anOpeningInAnotherIsLeftOut() {
    List<Opening> openings =
        openings("Door|S|60|36|0|84|", "Hatch|S|80|10|20|40|", "Sash|S|96|30|40|84|");
    assertEquals(List.of("Door", "Sash"), openings.stream().map(Opening::name).toList());
    assertEquals("3 bad-opening.overlaps", Tally.said(problems.sorted()));
  }

  /** One that lies over a corner, or has no size, is told when the job is read. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"Door|S|3|36|0|84|", "Door|S|200|36|0|84|", "Door|S|60|36|84|84|"})
  void anOpeningOverACornerIsLeftOut(String row) {
    assertEquals(List.of(), openings(row));
    assertEquals("2 opening-outside", Tally.said(problems.sorted()));
  }

  /** By hand: 60 in from the outer face of S, whose 6 in the left end of W2 crosses. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"W2, 60, 66", "E2, 60, 60", "W2, 110, ", "E2, 110, ", "W2, 0, 6", "W2, -1, "})
  void anOpeningInAWingsSideIsMeasuredFromTheHouse(String wall, int left, Long lies) {
    Building tee = Houses.wingWithDoor().job().building();
    PlacesReader house = new PlacesReader(Jobs.rules(false), tee, problems);
    Table table =
        table(
            "Name|Wall|From left corner|Width|Sill|Head|Leaf",
            "Door|" + wall + "|" + left + "|36|0|84|");
    List<Opening> read = house.openings(table);
    assertEquals(
        Optional.ofNullable(lies).map(Length::ofInches),
        read.stream().map(Opening::left).findFirst());
    read.forEach(each -> assertEquals(Length.ofInches(left), each.toldLeft(tee)));
    assertEquals(lies == null ? "2 opening-outside" : "", Tally.said(problems.sorted()));
  }

  /** By hand: the left side of the wing stands 84 to 90 in from the left corner of S. */
  @Test
  void anOpeningOverAWingsSideIsToldOfThatSide() {
    Building tee = Houses.wingWithDoor().job().building();
    PlacesReader house = new PlacesReader(Jobs.rules(false), tee, problems);
    String heads = "Name|Wall|From left corner|Width|Sill|Head|Leaf";
    assertEquals(List.of(), house.openings(table(heads, "Door|S|60|36|0|84|")));
    String said = problems.sorted().get(0).said().in(Sentences.english());
    assertTrue(said.contains("wing side W2 on S stands from 7' 0\" to 7' 6\""), said);
  }

  /** The German job workbook names the same columns. */
  @Test
  void germanHeadingsAreRead() {
    Table table =
        table(
            "Name|Wand|Ab linker Ecke|Breite|H\u00F6he der Br\u00FCstung|H\u00F6he des Sturzes|"
                + "Danach geschnitten (cut after stacking) oder short logs|Blatt",
            "T\u00FCr|S|60|36|0|84|short logs|30 x 80");
    Opening door = reader.openings(table).get(0);
    assertEquals(List.of(), problems.sorted());
    assertEquals(Length.ofInches(84), door.head());
    assertEquals(true, door.shortLogs() && door.leaf().isPresent());
  }

  private List<Opening> openings(String... rows) {
    List<String> lines =
        new ArrayList<>(List.of("Name|Wall|From left corner|Width|Sill|Head|Leaf"));
    lines.addAll(List.of(rows));
    return reader.openings(table(lines.toArray(String[]::new)));
  }

  private static Table table(String... lines) {
    return Tally.of(lines).table("Openings");
  }
}
