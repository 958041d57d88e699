package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.CellRef;
import roundbook.table.Table;

/**
 * Which column of a tally is read as what, and why the others are not: as a careful person would
 * take them who sees the headings and the numbers.
 */
class HeaderTest {
  private static final String LOG = "7|18|14|13|12";

  /**
   * Each column's letter with its meaning, a block a bracket, and those not read with the reason.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Log|Length|Butt|Mid|Tip; 7|18|14|13|12; [A TAG B LENGTH C BUTT D MID E TIP]",
        "Row|Log|Length|Mid; 1|7|18|13; [B TAG C LENGTH D MID] A RUNNING",
        "No|Length|Mid; 7|18|13; [A TAG B LENGTH C MID]",
        "Log|Barcode|Length|Mid; 7|9|18|13; [A TAG C LENGTH D MID] B LABEL",
        "Barcode|Length|Mid; 9|18|13; [A TAG B LENGTH C MID]",
        "Tree|No|Length|Mid; 5|1|18|13/5|2|18|13; [A STEM B TAG C LENGTH D MID]",
        "Tree|No|Length|Mid; 5|1|18|13/6|2|18|13; [A TAG C LENGTH D MID] B RUNNING",
        "Tree|Row|Length|Mid; 5|1|18|13/5|2|18|13; [A TAG C LENGTH D MID] B RUNNING",
        "Load|Log|Length|Mid; 5|1|18|13; [A LOT B TAG C LENGTH D MID]",
        "Logs|Length|Mid; 5|18|13/6|18|13; [A TAG B LENGTH C MID]",
        "Logs|Length|Mid; 2|18|13/2|19|13; [A COUNT B LENGTH C MID]",
        "Log|Logs|Length|Mid; 5|2|18|13; [A TAG B COUNT C LENGTH D MID]",
        "Log|Length|Mid|Mid est.; 7|18|13|13; [A TAG B LENGTH C MID] D ESTIMATED",
        "Log|Length|Mid est.|Mid; 7|18|13|13; [A TAG B LENGTH D MID] C ESTIMATED",
        "Log|Length|Ordered length|Mid; 7|18|20|13; [A TAG B LENGTH D MID] C NOMINAL",
        "Log|Length|Mid ob|Mid ub; 7|18|13|12; [A TAG B LENGTH D MID] C OVER_BARK",
        "Log|Length|Mid|Mid ub; 7|18|13|12; [A TAG B LENGTH D MID] C SAME",
        "Log|Length|Mid 1|Mid 2; 7|18|13|12; [A TAG B LENGTH C MID D MID_ACROSS]",
        "Log|Length|Mid 1 (in)|Mid 2 (cm); 7|18|13|33; [A TAG B LENGTH C MID] D SAME",
        "Log|Length|Mid|Mid girth; 7|18|13|41; [A TAG B LENGTH C MID] D SAME",
        "Log|Length|Butt|Mid girth; 7|18|13|41; [A TAG B LENGTH C BUTT D MID_GIRTH]",
        "Log|Length|Mid|Diameter; 7|18|13|12; [A TAG B LENGTH C MID] D NOWHERE",
        "Log|Length|Mid|DBH; 7|18|13|15; [A TAG B LENGTH C MID] D STANDING",
        "Log|Length|Mid|Mid radius; 7|18|13|6; [A TAG B LENGTH C MID] D RADIUS",
        "Log|Length|Mid|Quarter girth; 7|18|13|10; [A TAG B LENGTH C MID] D QUARTER",
        "Log|Length|Mid|Taper %; 7|18|13|2; [A TAG B LENGTH C MID] D PERCENT",
        "Log|Length|Mid|Lat|Long; 7|18|13|61|25; [A TAG B LENGTH C MID] D PLACE E PLACE",
        "Log|Length|Mid|Mid eighths; 7|18|13|4; [A TAG B LENGTH C MID] D EIGHTHS",
        "Log|Length|Mid|Volume; 7|18|13|4; [A TAG B LENGTH C MID] D OTHER",
        "Log|Length|Mid|Large knots; 7|18|13|4; [A TAG B LENGTH C MID] D OTHER",
        "Log|Length|Mid|Trim; 7|18|13|4; [A TAG B LENGTH C MID] D OTHER",
        "Log|Length|Mid|Wall length; 7|18|13|24; [A TAG B LENGTH C MID] D OTHER",
        "Log|Length|Mid|quibble; 7|18|13|4; [A TAG B LENGTH C MID] D UNKNOWN",
        "Log|Length|Butt quibble; 7|18|13; [A TAG B LENGTH] C UNKNOWN",
        "Log|Length|Mid|Butt quibble (in); 7|18|13|14; [A TAG B LENGTH C MID D BUTT]",
        "Log|Length|Mid|Butt quibble (in); 7|18|13|140; [A TAG B LENGTH C MID] D NO_FIT",
        "Log|Length|Mid|Butt quibble (in); 7|18|13|; [A TAG B LENGTH C MID] D EMPTY",
        "Log|Length|Mid|Mid measured at; 7|18|13|9; [A TAG B LENGTH C MID D MID_AT]",
        "Log|Length|Mid|Species|Keep for|Wall|Round|Skip; 7|18|13; "
            + "[A TAG B LENGTH C MID D SPECIES E KEEP F WALL G ROUND H SKIP]",
        "Log|Length|Mid|Qty|Sweep|Bark|Remarks|Butt log; 7|18|13; "
            + "[A TAG B LENGTH C MID D COUNT E SWEEP F BARK G REMARKS H PART]",
        "Log|Length ft|in|Mid; 7|18|6|13; [A TAG B LENGTH C LENGTH_REST D MID]",
        "Log|ft|in|Mid; 7|18|6|13; [A TAG B LENGTH C LENGTH_REST D MID]",
        "Nr|L\u00E4nge|Zopf|Mitte|Baumart; 7|5,5|30|33|Fichte; "
            + "[A TAG B LENGTH C TIP D MID E SPECIES]",
        "Log|Length|Mid|Log|Length|Mid; 7|18|13|8|18|13; "
            + "[A TAG B LENGTH C MID] [D TAG E LENGTH F MID]",
        "Log|Length|Mid||Log|Length|Mid; 7|18|13||8|18|13; "
            + "[A TAG B LENGTH C MID] [E TAG F LENGTH G MID]",
        "Length|Mid|Length|Mid; 18|13|18|13; [A LENGTH B MID] [C LENGTH D MID]",
        "Log|Length|Mid|Log; 7|18|13|8; [A TAG B LENGTH C MID] D SAME",
        "Log|Length (ft)|Mid (in)|Length (m)|Mid (cm); 7|18|13|5.5|33; "
            + "[A TAG B LENGTH C MID] D SAME E SAME",
      })
  void readsEachColumnAsItIsHeaded(String headings, String rows, String columns) {
    String[] lines = (headings + "/" + rows).split("/");
    assertEquals(columns, columns(Tally.of(lines).table()));
  }

  /** Headings over two and three rows, with a group's name above its own. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "||Diameter (in)/Log|Length (ft)|Butt|Mid|Tip; [A TAG B LENGTH C BUTT D MID E TIP]; 2",
        "Log|Length|Butt|Mid|Tip/|ft|in|in|in; [A TAG B LENGTH C BUTT D MID E TIP]; 2",
        "||Diameter/Log|Length|Butt|Mid|Tip/|ft|in|in|in; "
            + "[A TAG B LENGTH C BUTT D MID E TIP]; 3",
        "The old yard/Log|Length|Butt|Mid|Tip; [A TAG B LENGTH C BUTT D MID E TIP]; 2",
        "The old yard/measured in May/Log|Length|Butt|Mid|Tip; "
            + "[A TAG B LENGTH C BUTT D MID E TIP]; 3",
        "Log|Length|Diameter|||Remarks/||Butt|Mid|Tip; "
            + "[A TAG B LENGTH C BUTT D MID E TIP F REMARKS]; 2",
      })
  void joinsRowsOfHeadings(String rows, String columns, int last) {
    Table table = Tally.of((rows + "/" + LOG).split("/")).table();
    assertEquals(columns, columns(table));
    assertEquals(last, Header.find(table, mapping()).orElseThrow().row().number());
  }

  @Test
  void headingsDownTheFirstColumnAreTurned() {
    Tally tally = Tally.of("Log|7|8", "Length (ft)|18|20", "Butt (in)|14|15", "Tip (in)|12|12");
    assertTrue(Header.sideways(tally.table(), mapping()));
    assertEquals("A1 transposed-table", tally.said());
  }

  @ParameterizedTest
  @CsvSource({"Log|Remarks|Species", "12|13|14", "''", "Mid", "Log"})
  void otherRowsHeadNoTally(String row) {
    assertEquals(Optional.empty(), Header.find(Tally.of(row, LOG).table(), mapping()));
  }

  @Test
  void aSettingSaysWhatAColumnIs() {
    Tally tally =
        Tally.one("Log|Length (ft)|quibble|Butt (in)", "A1|18|13|14").set("Column_mid", "Quibble");
    Tally other =
        Tally.one("Log|Length (ft)|quibble|Butt (in)", "A1|18|13|14").set("column-mid", "quibble");
    assertEquals("13", Tally.inches(tally.log().mid()));
    assertEquals("13", Tally.inches(other.log().mid()));
  }

  private static Mapping mapping() {
    return Mapping.of(Asked.NOTHING, Optional.empty());
  }

  private static String columns(Table table) {
    Header header = Header.of(Header.find(table, mapping()).orElseThrow(), table);
    String blocks =
        header.blocks().stream().map(HeaderTest::block).collect(Collectors.joining(" "));
    String others =
        header.others().stream()
            .map(each -> " " + CellRef.columnName(each.column()) + " " + each.unread())
            .collect(Collectors.joining());
    return blocks + others;
  }

  private static String block(Map<Field, Heading> block) {
    return block.entrySet().stream()
        .sorted(Comparator.comparing(each -> each.getValue().column()))
        .map(each -> CellRef.columnName(each.getValue().column()) + " " + each.getKey())
        .collect(Collectors.joining(" ", "[", "]"));
  }
}
