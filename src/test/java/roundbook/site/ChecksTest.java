package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.AsBuilt.Place;
import roundbook.job.GapSpot;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.table.Cell.CellKind;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** What a crew types is held against itself, against the tally and against what was cut. */
class ChecksTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(3);
  private static final CrewWorkbook BLANK = CrewWorkbook.of(PLAN);
  private static final String MIDDLES =
      " Measured_1_N=m Measured_1_E=m Measured_1_S=m Measured_1_W=m";

  /**
   * What is typed, cell by cell, and what is said; {@code m+2} is the tallied middle of the log in
   * that place and 2 in more. An inch or two come of hewing; six are another log.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Cut_1=x |not-measured",
        "Cut_1=x{} |",
        "Cut_1=yes{} |",
        "Cut_1=0.5{} | bad-number.tick",
        "Cut_1=FALSE |",
        "Cut_1_N=x |",
        "Cut_1_N=x Cut_1_E=x Cut_1_S=x Cut_1_W=x{} |",
        "Cut_1_N=x Cut_2_E=x | contradiction.hole",
        "Cut_2=x{} | contradiction.hole",
        "Cut_1=x Cut_3=x{} | contradiction.hole not-measured",
        "Measured_1_N=m |",
        "Measured_1_N=m+2 |",
        "Measured_1_N=m-2 |",
        "Measured_1_N=m+2.01 | doubtful-value.diameter",
        "Measured_1_N=m-2.01 | doubtful-value.diameter",
        "Measured_1_N=m+6 | doubtful-value.diameter",
        "Measured_1_N=m+6.01 | out-of-range.diameter",
        "Measured_1_N=5.9 | out-of-range.diameter",
        "Measured_1_N=0 | out-of-range.diameter",
        "Measured_1_N=about 13 | bad-number.box",
        "Measured_1_N=13-14 | bad-number.box",
        "Measured_1_N=n/a |",
        "Measured_butt_1_N=m-0.01 | doubtful-value.butt-thin",
        "Measured_butt_1_N=m |",
        "Measured_butt_1_N=m+6.01 | out-of-range.diameter",
        "Measured_1_N=m+1 Measured_butt_1_N=m+0.5 | doubtful-value.butt-thin",
        "Measured_tip_1_N=m+0.01 | doubtful-value.tip-thick",
        "Measured_tip_1_N=m |",
        "Measured_tip_1_N=m-6.01 | out-of-range.diameter",
        "Lower_cut_1_N=3 Upper_cut_1_N=4 |",
        "Lower_cut_1_N=0 | out-of-range.mark",
        "Lower_cut_1_N=-1 | out-of-range.mark",
        "Upper_cut_1_N=h |",
        "Upper_cut_1_N=h+0.01 | out-of-range.mark",
        "Reading_1_NW=12 | contradiction.reading",
        "Cut_1=x Reading_1_NW=12{} |",
        "Reading_first_1_NW=12 |",
        "Reading_first_2_NW=12 | contradiction.first-reading",
        "Cut_1=x Reading_first_2_NW=12{} |",
        "Gap_1_N_left=1 | contradiction.gap",
        "Cut_1=x Gap_1_N_left=1{} | contradiction.gap",
        "Cut_1=x Cut_2_N=x Gap_1_N_left=1{} |",
        "Cut_1=x Cut_2_E=x Gap_1_N_left=1{} | contradiction.gap",
        "Used_1_N=no such log | contradiction.no-log",
        "Overhang=4 |",
        "Cut_1=x Overhang=4{} | contradiction.setting",
        "Cut_1_N=x Overhang=4 | contradiction.setting",
        "Cut_1=x Chinking_gap=1.25{} |",
        "Units=mm | contradiction.unit",
        "Laid_first=E W | contradiction.laid-first",
        "Rounds=2 |",
        "Cut_1=x Rounds=0{} | bad-setting.value",
        "Overhang=far | bad-setting.value",
        "Lost_2=x |",
        "Lost_2=lost | bad-number.tick",
      })
  void holdsWhatIsTypedAgainstItself(String typed, String said) {
    assertEquals(said == null ? "" : said, said(typed.replace("{}", MIDDLES)));
  }

  /** A box with a date in it, and one with an error. */
  @Test
  void cellsThatHoldNoLengthAreSaid() {
    CrewWorkbook book =
        BLANK
            .again()
            .type("Measured_1_N", CellKind.DATE, "3-Oct-04")
            .type("Measured_1_E", CellKind.ERROR, "#N/A");
    assertEquals("date-in-number.box bad-number.box", keys(book.read().problems()));
  }

  @Test
  void aLogLiesInOnePlaceAlone() {
    String east = tag(1, "E");
    String other = tag(2, "N");
    assertEquals("", said("Used_1_N=" + spare().tag()));
    assertEquals("contradiction.two-places", said("Cut_1=x Used_1_N=" + east + MIDDLES));
    assertEquals("contradiction.two-places", said("Used_1_N=" + other + " Used_2_E=" + other));
    assertEquals("", said("Used_1_N=" + other), "its own place is not settled");
  }

  @Test
  void aLostLogIsInNoWall() {
    int row = PLAN.job().log(tag(1, "N")).orElseThrow().origin().row();
    String lost = "Lost_" + row + "=x";
    assertEquals("", said(lost));
    assertEquals("contradiction.lost", said(lost + " Cut_1=x" + MIDDLES));
    assertEquals("contradiction.lost", said(lost + " Used_2_N=" + tag(1, "N")));
  }

  /** N and S are 24 ft, so a log for E and W that is shorter is none for them. */
  @Test
  void aLogMustBeLongEnoughForItsWall() {
    Log shortest =
        PLAN.job().logs().stream()
            .min((one, other) -> one.length().compareTo(other.length()))
            .orElseThrow();
    boolean tooShort = shortest.length().isLessThan(Length.of(24, LengthUnit.FOOT));
    assertEquals(tooShort ? "contradiction.short" : "", said("Used_1_N=" + shortest.tag()));
  }

  /** The yard's boxes stand on the log list, by the row of the tally. */
  @ParameterizedTest
  @CsvSource({
    "mid, 0, ''",
    "mid, 2.01, doubtful-value.diameter",
    "mid, 6.01, out-of-range.diameter",
    "butt, 1, ''",
    "butt, -1, doubtful-value.butt-thin",
    "tip, 1, doubtful-value.tip-thick",
    "tip, -1, ''",
  })
  void aLogMeasuredInTheYardIsHeldAgainstItsTally(String where, double off, String said) {
    Log spare = spare();
    String box = "Hewn_" + where + "_" + spare.origin().row();
    Map<String, Double> typed = Map.of(box, spare.mid().inches() + off);
    Read<SiteReport> read = BLANK.again().type(typed).read();
    assertEquals(said, keys(read.problems()));
    if (read.value().isPresent()) {
      assertEquals(1, read.value().get().typed().yard().size());
    }
  }

  @Test
  void gapsAreReadByTheirStations() {
    SiteReport report =
        typed("Cut_1=x Cut_2=x Gap_1_N_left=1 Gap_1_N_middle=1.25 Gap_1_E_right=0.75" + MIDDLES)
            .read()
            .value()
            .orElseThrow();
    assertEquals(
        Map.of(
            new GapSpot(1, "N", GapSpot.Station.LEFT), Length.ofInches(1),
            new GapSpot(1, "N", GapSpot.Station.MIDDLE), Length.ofInchFraction(5, 4),
            new GapSpot(1, "E", GapSpot.Station.RIGHT), Length.ofInchFraction(3, 4)),
        report.typed().gaps());
  }

  /** A tick is told from a log that has none: the round is begun, and three walls stand open. */
  @Test
  void logsAreTickedOneByOne() {
    CutTicks ticks = typed("Cut_1=x Cut_2_N=x" + MIDDLES).report().typed().ticks();
    assertEquals(1, ticks.rounds());
    assertEquals(2, ticks.begun());
    assertEquals(
        List.of("E", "S", "W"), ticks.open(2, PLAN.job().building()).stream().sorted().toList());
    assertEquals(4, ticks.open(3, PLAN.job().building()).size());
    assertEquals(true, ticks.isCut(new Place(2, "N")) && !ticks.isCut(new Place(3, "N")));
  }

  /** German pages have other words, and the same names. */
  @Test
  void aGermanWorkbookIsHeldAgainstTheSame() {
    Plan german = PlanFixtures.inches().set(Setting.LANGUAGE, "de").plan(3);
    Map<String, Object> typed = Map.of("Cut_2", "ja", "Measured_1_N", "13,25");
    List<Problem> problems = CrewWorkbook.of(german).type(typed).read().problems();
    assertEquals(true, keys(problems).contains("contradiction.hole"), keys(problems));
  }

  private static Log spare() {
    return PLAN.choice().unused().get(0);
  }

  private static String tag(int round, String wall) {
    return piece(round, wall).placed().held().tags().get(0);
  }

  private static PiecePlan piece(int round, String wall) {
    return PLAN.pieces().stream()
        .filter(each -> each.placed().round() == round)
        .filter(each -> each.placed().wall().name().equals(wall))
        .findFirst()
        .orElseThrow();
  }

  private static String said(String typed) {
    return keys(typed(typed).read().problems());
  }

  private static CrewWorkbook typed(String cells) {
    Map<String, Object> values = new TreeMap<>();
    for (String each : cells.strip().split(" (?=\\w+=)")) {
      String[] halves = each.split("=", 2);
      values.put(halves[0], value(halves[0], halves[1]));
    }
    return BLANK.again().type(values);
  }

  /** Returns a number, one beside the tallied middle or half of it, or the text as it is. */
  private static Object value(String name, String text) {
    if (text.matches("-?\\d+(\\.\\d+)?")) {
      return Double.valueOf(text);
    }
    if (!text.matches("[mh]([+-][\\d.]+)?")) {
      return text;
    }
    String[] place = name.replaceAll("^\\D+", "").split("_");
    String tag = tag(Integer.parseInt(place[0]), place[1]);
    double mid = PLAN.job().log(tag).orElseThrow().mid().inches();
    double off = text.length() > 1 ? Double.parseDouble(text.substring(1)) : 0;
    return (text.startsWith("h") ? mid / 2 : mid) + off;
  }

  private static String keys(List<Problem> problems) {
    List<String> keys = new ArrayList<>();
    problems.forEach(each -> keys.add(each.said().key()));
    return String.join(" ", keys);
  }
}
