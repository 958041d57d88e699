package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Log;
import roundbook.problem.Severity;

/** The rows under a tally's headings: which are logs, and what is said of the others. */
class TallyReaderTest {
  private static final String FIRST = "A1|18|14|13|12";
  private static final String LAST = "A9|20|15|14|13";

  /** One row between two logs; what is said of it, and whether it is a log. */
  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Total|38|; A1 A9; A3 summary-row",
        "|38|total||; A1 A9; C3 summary-row",
        "Average|19|14.5|13.5|12.5; A1 A9; A3 summary-row",
        "Summe:|38; A1 A9; A3 summary-row",
        "2 logs; A1 A9; A3 summary-row",
        "----|-----|----|----|----; A1 A9;",
        "* * *; A1 A9;",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in); A1 A9; 3 repeated-header",
        "these were measured by two of us; A1 A9; 3 note-row.text",
        "north side of the yard|||; A1 A9; 3 note-row.text",
        "17; A1 A9; 3 numbered-row",
        "A2|20|15|14|13; A1 A2 A9;",
        "A2|n/a|15|14|13; A1 A9; B3 missing-cell.length",
        "A2|20|n/a|n/a|n/a; A1 A9; C3 missing-cell.diameter",
        "|20|15|14|13; A1 3-1 A9; A3 missing-id.row",
        "A1|18|14|13|12; A1 A9; A3 duplicate-row",
        "A1|20|14|13|12; A1 A9; A3 duplicate-id.left-out",
        "A2|\"|\"|\"|\"; A1 A2 A9; B3 doubtful-value.ditto, C3 doubtful-value.ditto, "
            + "D3 doubtful-value.ditto, E3 doubtful-value.ditto",
        "A2|20|15|14|13|fine; A1 A2 A9; F3 extra-cell.kept",
        "A2|20|15|14|13|5|7; A1 A9; F3 extra-cell.cut",
        "A2|20|12|13|15; A1 A2 A9; C3 butt-tip-swapped.row",
        "A2|20|14|13|14 1/4; A1 A2 A9; C3 butt-smaller-than-tip",
        "A2|20|15|16|13; A1 A2 A9; D3 mid-outside-ends",
        "A2|20|15|12|13; A1 A2 A9; D3 mid-outside-ends",
        "A2|18|24|18|12; A1 A2 A9; C3 taper-large",
      })
  void tellsWhatARowIs(String row, String tags, String said) {
    Tally tally = Tally.of(Tally.HEADINGS, FIRST, row, LAST);
    assertEquals(tags, tally.tags());
    assertEquals(said == null ? "" : said, tally.said());
  }

  @Test
  void unitsUnderRepeatedHeadingsAreRead() {
    Tally tally =
        Tally.of("Log|Length|Butt|Tip", "|ft|in|in", "A1|18|14|12", "|m|cm|cm", "A2|5.5|35|30");
    assertEquals("A1 216 14/13/12; A2 216.54 13.78/12.8/11.81", tally.measures());
  }

  /** A second tally below the first, its columns in another order. */
  @Test
  void headingsBelowBeginAnotherTally() {
    Tally tally =
        Tally.of(
            Tally.HEADINGS,
            FIRST,
            "",
            "Tip (cm)|Mid (cm)|Butt (cm)|Length (m)|Log",
            "30|32.5|35|5.5|B1");
    assertEquals("A1 216 14/13/12; B1 216.54 13.78/12.8/11.81", tally.measures());
  }

  @Test
  void blocksSideBySideAreReadEach() {
    Tally tally =
        Tally.of(
            "Log|Length (ft)|Mid (in)||Log|Length (ft)|Mid (in)",
            "A1|18|13||B1|20|14",
            "A2|19|12",
            "||||B2|16|11",
            "Total|37|||Total|36");
    assertEquals("A1 B1 A2 B2", tally.tags());
    assertEquals("A5", tally.problem("summary-row").where().address());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 5, 6, 9})
  void notesAreListedUpToFive(int notes) {
    Stream<String> texts = Stream.generate(() -> "words of a note").limit(notes);
    Tally tally =
        Tally.of(
            Stream.of(Stream.of(Tally.HEADINGS, FIRST), texts, Stream.of(LAST))
                .flatMap(each -> each)
                .toArray(String[]::new));
    assertEquals("A1 A9", tally.tags());
    assertEquals(Math.min(notes, 5) + (notes > 5 ? 1 : 0), tally.read().problems().size());
    if (notes > 5) {
      String more = "note-row.more(count=" + (notes - 5) + ")";
      assertEquals(more, tally.problem("note-row.more").said().toString());
    }
  }

  /** Numbers prepared for logs to come: fine below the last log, a doubt between logs. */
  @Test
  void rowsThatHoldATagAloneAreCounted() {
    Tally below = Tally.of(Tally.HEADINGS, FIRST, "A2", "A3", "A4");
    assertEquals("numbered-row(count=3 last=5)", below.problem("numbered-row").said().toString());
    assertEquals(Severity.INFO, below.problem("numbered-row").severity());
    Tally between = Tally.of(Tally.HEADINGS, FIRST, "A2", "A3", LAST);
    assertEquals(Severity.WARNING, between.problem("numbered-row").severity());
  }

  @Test
  void headingsWithoutLogsAreAnError() {
    Tally tally = Tally.of(Tally.HEADINGS, "Total|0");
    assertEquals("1 no-rows, A2 summary-row", tally.said());
    assertEquals(Severity.ERROR, tally.problem("no-rows").severity());
    assertEquals("no-rows", Tally.of(Tally.HEADINGS).problem("no-rows").code().id());
  }

  /**
   * Without a tag a log is named by its row, and by its number where the row stands for several.
   */
  @Test
  void logsWithoutATagAreNamedByTheirRow() {
    Tally tally =
        Tally.of(
            "Length (ft)|Mid (in)|Qty", "18|13|1", "19|12|2", "20|12|0", "21|12|x", "22|12|1.5");
    assertEquals("2-1 3-1 3-2", tally.tags());
    assertEquals("C3", tally.problem("quantity-row").where().address());
    assertEquals(
        2,
        tally.read().problems().stream()
            .filter(each -> each.said().key().equals("bad-number.count"))
            .count());
  }

  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "12.0, 12",
    "=12.0, 12.0",
    "A-7, A-7",
    "N12, N12",
    "1.25E+05, 125000",
    "'1,5E+03', 1500",
    "07, 07",
    "a b c, a b c",
  })
  void aTagIsWhatAPersonSees(String cell, String tag) {
    Log log = Tally.one(Tally.HEADINGS, cell + "|18|14|13|12").log();
    assertEquals(tag, log.tag());
  }

  @Test
  void aDateIsNoTag() {
    Tally tally = Tally.one(Tally.HEADINGS, "=date 38263|18|14|13|12");
    assertEquals("", tally.tags());
    assertEquals("A2 date-in-number.tag", tally.said().replaceAll(", .*", ""));
  }

  /** A number within a load or tree is told with it, but only where it repeats. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Load|Log; 1|1 1|2 2|1; 1-1 1-2 2-1",
        "Load|Log; 1|1 1|2 2|3; 1 2 3",
        "Load|Tree|No; 1|5|1 1|5|2 1|6|1; 1-5-1 1-5-2 1-6-1",
        "Tree|Log; 5|1 |1 ; 5-1 1",
      })
  void aTagThatRepeatsIsToldWithItsLoadOrTree(String names, String rows, String tags) {
    String[] lines =
        Stream.concat(
                Stream.of(names + "|Length (ft)|Mid (in)"),
                Arrays.stream(rows.strip().split(" ")).map(row -> row + "|18|13"))
            .toArray(String[]::new);
    assertEquals(tags, Tally.of(lines).tags());
  }

  @ParameterizedTest
  @CsvSource({"6, 1", "5, 0"})
  void aValueThatAnotherUnitExplainsLiesApart(int logs, int said) {
    Stream<String> rows =
        Stream.iterate(1, i -> i + 1).limit(logs - 1).map(i -> "A" + i + "|18|14|" + (12 + i % 2));
    Tally tally =
        Tally.of(
            Stream.of(
                    Stream.of("Log|Length (ft)|Butt (in)|Mid (in)"),
                    rows,
                    Stream.of("B|18|14|31.75"))
                .flatMap(each -> each)
                .toArray(String[]::new));
    assertEquals(logs, tally.logs().size());
    // 12.5 in are 31.75 cm; of five logs nothing is concluded.
    assertEquals(said == 1, tally.said().contains("doubtful-value.apart"), tally.said());
  }

  @Test
  void aLargeLogIsNoDoubt() {
    Tally tally =
        Tally.of(
            "Log|Length (ft)|Mid (in)",
            "1|18|12",
            "2|18|13",
            "3|18|12",
            "4|18|13",
            "5|18|12",
            "6|18|20");
    assertFalse(tally.said().contains("apart"), tally.said());
  }
}
