package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is doubtful of a whole column, said once, with how many logs it is about. */
class ColumnDoubtsTest {
  @ParameterizedTest(name = "[{index}] {0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Log|Length (ft)|Butt (in)|Tip (in); 1|18|14|12 2|18|14|12; mid-estimated.every",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in); 1|18|14||12 2|18|14|13|12; "
            + "mid-estimated.some-tagged(tag=\"1\" count=1 logs=2 row=2)",
        "Length (ft)|Butt (in)|Mid (in)|Tip (in); 18|14|13|12 18|14||12 18|14||12; "
            + "missing-id.column mid-estimated.some(tag=\"\" count=2 logs=3 row=3)",
        "Log|Length (ft)|Mid est. (in); 1|18|13; "
            + "end-estimated(end=field.butt count=1 logs=1) end-estimated(end=field.tip count=1 "
            + "logs=1) mid-estimated.heading(heading=\"Mid est. (in)\")",
        "Log|Length (ft)|Butt (in)|Mid (in); 1|18|14|13 2|18|14|13; "
            + "end-estimated(end=field.tip count=2 logs=2)",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in); 1|18|14|13| 2|18||13|12; "
            + "missing-cell.estimated(end=field.tip) missing-cell.estimated(end=field.butt)",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in); 1|18|12|13|14 2|18|12|13|14 3|18|12|13|14; "
            + "butt-tip-swapped.every",
        "Log|Length (ft)|Mid girth (in)|Butt (in)|Tip (in); 1|18|41|14|12; girth-converted",
        "Log|Length (ft)|Butt ob (in)|Mid ub (in)|Tip ub (in); 1|18|14|13|12; "
            + "bark-uncertain.columns bark-uncertain.over",
        "Log|Length (ft)|Butt ob (in)|Mid ob (in)|Tip ob (in); 1|18|14|13|12; bark-uncertain.over",
        "Log|Length (ft)|Butt ub (in)|Mid ub (in)|Tip ub (in); 1|18|14|13|12;",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)|Bark; 1|18|14|13|12|over 2|18|14|13|12|off "
            + "3|18|14|13|12|; bark-uncertain.mixed(logs=3 over=1 off=1 unsaid=1)",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)|Sweep; 1|18|14|13|12|S2 2|18|14|13|12|1; "
            + "doubtful-value.sweep-class(count=1 logs=2)",
      })
  void saysOnceWhatIsDoubtful(String headings, String rows, String said) {
    assertEquals(said == null ? "" : said, said(headings, rows));
  }

  /**
   * 18.06, 16.11 and 14.02 ft can be 18 ft 6 in, 16 ft 11 in and 14 ft 2 in; with 16.5 or 14.25 ft
   * among them they cannot, nor where fewer than three are not whole.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "18.06 16.11 14.02, true",
    "18.06 16.11 14.02 20, true",
    "18.06 16.1 14.11, true",
    "18.06 16.11 14.02 16.5, false",
    "18.06 16.11 14.02 14.25, false",
    "18.06 16.11, false",
    "18.1 16.1 14.0, false",
    "18 16 14, false",
  })
  void lengthsThatMayBeFeetPointInchesAreDoubted(String lengths, boolean doubted) {
    String rows =
        Arrays.stream(lengths.split(" "))
            .map(each -> "L" + each + "|" + each + "|14|13|12")
            .collect(Collectors.joining(" "));
    assertEquals(doubted ? "maybe-feet-dot-inches" : "", said(Tally.HEADINGS, rows));
  }

  /** Half an inch of bark is taken off what was measured over it, and off nothing else. */
  @ParameterizedTest
  @CsvSource({
    "ob, over, 13, 12.5",
    "'', over, 13, 12.5",
    "'', on, 13, 12.5",
    "'', mit Rinde, 13, 12.5",
    "'', o.b., 13, 12.5",
    "'', off, 13, 13",
    "'', peeled, 13, 13",
    "'', none, 13, 13",
    "'', '', 13, 13",
    "'', some, 13, 13",
    "ub, '', 13, 13",
    "ob, off, 13, 13",
  })
  void barkIsTakenOffWhereItWasMeasured(String heading, String bark, String mid, String peeled) {
    Tally tally =
        Tally.one("Log|Length (ft)|Mid " + heading + " (in)|Bark", "1|18|" + mid + "|" + bark)
            .set("Bark_off", "0.5");
    assertEquals(peeled, Tally.inches(tally.log().mid()));
  }

  /** Says all but what an ordered column list says; in the order in which the columns stand. */
  private static String said(String headings, String rows) {
    String[] lines =
        (headings + "\n" + String.join("\n", rows.strip().split(" (?=[^ ]*\\|)"))).split("\n");
    return Tally.of(lines).read().problems().stream()
        .map(each -> each.said().toString())
        .collect(Collectors.joining(" "));
  }
}
