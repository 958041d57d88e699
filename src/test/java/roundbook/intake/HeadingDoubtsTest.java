package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;

/** What is said of columns that are not read: a measure that might be missed is a warning. */
class HeadingDoubtsTest {
  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Log|Length (ft)|Mid (in)|Volume|Photo; 1|18|13; ; "
            + "'Volume' (no log is cut by it), 'Photo' (no log is cut by it)",
        "Log|Length (ft)|Mid (in)|Whim; 1|18|13; ; 'Whim' (no meaning is known for it)",
        "Log|Length (ft)|Mid (in)|Butt whim; 1|18|13; "
            + "D1 the column 'Butt whim' was not read: no meaning is known for it;",
        "Log|Length (ft)|Mid (in)|Mid radius; 1|18|13; "
            + "D1 the column 'Mid radius' was not read: a radius is no diameter;",
        "Log|Length (ft)|Mid (in)|Taper %; 1|18|13; ; 'Taper %' (it is in hundredths)",
        "Log|Length (ft)|Mid (in)|Diameter; 1|18|13; "
            + "D1 the column 'Diameter' was not read: it does not say where on the log;",
        "Log|Length (ft)|Mid (in)|DBH; 1|18|13; ; 'DBH' (it was measured on the standing tree)",
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)|Knot diameter; 1|18|14|13|12; ; "
            + "'Knot diameter' (no log is cut by it)",
        "Log|Length (ft)|Mid (in)|Knot diameter; 1|18|13; "
            + "D1 the column 'Knot diameter' was not read: no log is cut by it;",
        "Log|Length (ft)|Mid (in)|Mid (in); 1|18|13|13; "
            + "D1 the column 'Mid (in)' was not read: another column means the same;",
        "Log|Length (ft)|Mid (in)|Ordered length; 1|18|13|20; "
            + "D1 the column 'Ordered length' was not read: it was wanted, not measured;",
      })
  void saysWhatWasNotRead(String headings, String log, String warned, String listed) {
    Tally tally = Tally.one(headings, log);
    String warnings =
        tally.read().problems().stream()
            .filter(each -> each.said().key().equals("duplicate-column.unread"))
            .filter(each -> each.severity() == Severity.WARNING)
            .map(each -> each.where().address() + " " + each.said().in(Sentences.english()))
            .collect(Collectors.joining(", "));
    String list =
        tally.read().problems().stream()
            .filter(each -> each.code() == ProblemCode.COLUMN_NOT_READ)
            .map(each -> each.said().in(Sentences.english()))
            .map(each -> each.replace("columns carried through but not read: ", ""))
            .collect(Collectors.joining(", "));
    assertEquals(warned == null ? "" : warned, warnings);
    assertEquals(listed == null ? "" : listed, list);
  }

  /** A column of the bark beside diameters that do not say whether it is on them. */
  @ParameterizedTest
  @CsvSource({
    "Log|Length (ft)|Mid (in)|Bark thickness, true",
    "Log|Length (ft)|Mid ub (in)|Bark thickness, false",
    "Log|Length (ft)|Mid (in)|Volume, false",
  })
  void barkThatIsMeasuredAsksWhetherItIsOnTheDiameters(String headings, boolean asked) {
    Tally tally = Tally.one(headings, "1|18|13|1");
    assertEquals(asked, tally.said().contains("D1 bark-uncertain.measured"), tally.said());
  }

  /** A heading with a word that is not known is read where its numbers fit, and said. */
  @ParameterizedTest
  @CsvSource({
    "Butt quibble (in), BUTT, 'heading-doubtful', butt",
    "Length quibble (ft), LENGTH, 'heading-doubtful', length",
  })
  void aDoubtfulHeadingIsSaidWithItsSetting(String heading, Field field, String key, String name) {
    String other = field == Field.BUTT ? "Length (ft)|" : "Butt (in)|";
    Tally tally = Tally.one("Log|" + other + heading, field == Field.BUTT ? "1|18|14" : "1|14|18");
    assertEquals("C1", tally.problem(key).where().address());
    assertEquals(true, tally.remedy(key).contains("--set Column_" + name + "="), tally.remedy(key));
  }

  @ParameterizedTest
  @CsvSource({"Mid 1 (in)|Mid 2 (in)", "Mid a (in)|Mid b (in)", "Mid max (in)|Mid min (in)"})
  void twoReadingsAreSaidToBeAMean(String mids) {
    Tally tally = Tally.one("Log|Length (ft)|" + mids, "1|18|13|12");
    assertEquals("12.5", Tally.inches(tally.log().mid()));
    assertEquals("D1", tally.problem("duplicate-column.across").where().address());
  }
}
