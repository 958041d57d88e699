package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;

/**
 * The units of bare numbers. A wall log is 6 to 60 ft long, 4 to 36 in thick, and tapers by 0.03 to
 * 0.6 in a foot, one part in 400 to one in 20; so of 18, 14 and 11 the taper of 3 in 18 ft is one
 * in 72, that of 3 cm in 18 m one in 600, no log.
 */
class UnitsTest {
  private static final String BARE = "Log|Length|Butt|Tip";

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource({
    "18, 14, 11, ft, in",
    "216, 10, 8, in, in",
    "5.5, 35, 28, m, cm",
    "5.5, 350, 280, m, mm",
    "18, 350, 280, m, mm",
    "550, 45, 38, cm, cm",
    "5500, 35, 28, mm, cm",
    "5500, 350, 280, mm, mm",
    "550, 350, 280, cm, mm",
    "50, 14, 14, ft, in",
  })
  void areConcludedWhereOnePairFits(
      String length, String butt, String tip, String along, String through) {
    Tally tally = Tally.one(BARE, "A1|" + length + "|" + butt + "|" + tip);
    assertEquals(1, tally.logs().size(), tally.said());
    assertEquals("B1 unit-assumed.taken", tally.said().replaceAll("^1 mid-estimated.every, ", ""));
    String said = tally.problem("unit-assumed.taken").said().toString();
    assertEquals("unit-assumed.taken(length=\"" + along + "\" diameter=\"" + through + "\")", said);
  }

  /** 7 in 16 ft is one in 27, and 7 cm in 16 m one in 229: both are logs. */
  @Test
  void areAskedAboutWhereTwoPairsFit() {
    Tally tally = Tally.one(BARE, "A1|16|20|13");
    assertEquals("", tally.tags());
    String said = tally.problem("unit-unknown.more").said().in(Sentences.english());
    assertEquals("true true", said.contains("ft and in") + " " + said.contains("m and cm"), said);
    assertEquals(Severity.ERROR, tally.problem("unit-unknown.more").severity());
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 1", "1.5, 35, 28", "18, 3, 2", "18, 20, 1", "1000000, 14, 11"})
  void areAskedAboutWhereNoneFits(String length, String butt, String tip) {
    Tally tally = Tally.one(BARE, "A1|" + length + "|" + butt + "|" + tip);
    assertEquals("", tally.tags());
    assertEquals("B1 unit-unknown.no-fit", tally.said().replaceAll(", .*", ""));
  }

  /** Most of the logs decide; a slip among them is a problem of its own row. */
  @Test
  void aSlipInOneRowDoesNotHideThem() {
    Tally tally = Tally.of(BARE, "A1|18|14|11", "A2|20|15|12", "A3|16|13|11", "A4|18|140|11");
    assertEquals("A1 A2 A3", tally.tags());
    assertEquals("C5", tally.problem("out-of-range.outside").where().address());
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource({
    "Length (ft), Butt, Tip, 18, 14, 11, 216",
    "Length (m), Butt, Tip, 5.5, 35, 28, 216.54",
    "Length, Butt (in), Tip (in), 18, 14, 11, 216",
    "Length, Butt (in), Tip, 18, 14, 11, 216",
    "Length, Butt (cm), Tip (cm), 5.5, 35, 28, 216.54",
    "Length, Butt (cm), Tip (cm), 18, 35, 28, 708.66",
  })
  void whatOneHeadingSaysHelpsTheOther(
      String length, String butt, String tip, String l, String b, String t, String inches) {
    Tally tally =
        Tally.one("Log|" + length + "|" + butt + "|" + tip, "A1|" + l + "|" + b + "|" + t);
    assertEquals(inches, Tally.inches(tally.log().length()), tally.said());
  }

  /** 16, 20 and 13 alone fit feet and inches as well as metres and centimetres. */
  @ParameterizedTest
  @CsvSource({
    "16 ft, 20, 13, 192",
    "16 m, 20, 13, 629.92",
    "=16@m, 20, 13, 629.92",
    "=16@ft, =20@in, =13@in, 192",
    "15 1/2 ft, 20, 13, 186",
  })
  void oneCellThatSaysItsUnitSaysThatOfItsColumn(
      String first, String butt, String tip, String inches) {
    Tally tally =
        Tally.of(BARE, "A1|" + first + "|" + butt + "|" + tip, "A2|16|20|13", "A3|16|20|13");
    assertEquals(3, tally.logs().size(), tally.said());
    assertEquals(inches, Tally.inches(tally.logs().get(0).length()));
    boolean metric = !first.contains("ft");
    String second = Tally.inches(tally.logs().get(1).length());
    assertEquals(metric ? "629.92" : "192", second);
  }

  /** The middle is reckoned by the usual taper, 0.13 in a foot: 13 + 8 x 0.13. */
  @Test
  void aFractionIsOneOfInches() {
    Tally tally = Tally.of(BARE, "A1|16|20 1/2|13", "A2|16|20|13");
    assertEquals("A1 192 20.5/14.04/13; A2 192 20/14.04/13", tally.measures());
  }

  @ParameterizedTest
  @CsvSource({"ft, in, 192", "m, cm, 629.92"})
  void aSettingSaysThem(String along, String through, String inches) {
    Tally tally =
        Tally.one(BARE, "A1|16|20|13").set("Length_unit", along).set("Diameter_unit", through);
    assertEquals(inches, Tally.inches(tally.log().length()));
    assertFalse(tally.said().contains("unit"), tally.said());
  }

  @ParameterizedTest
  @CsvSource({
    "Log|Length (ft / m)|Butt (in)|Tip (in), B1 unit-unknown.two",
    "Log|Length (ft)|Butt (in or cm)|Tip (in), C1 unit-unknown.two",
    "Log|Length (ft)|Butt (in)|Butt eighths|Tip (in), D1 unit-unknown.eighths",
  })
  void twoUnitsInOneHeadingAreAskedAbout(String headings, String said) {
    Tally tally = Tally.one(headings, "A1|18|14|11|11");
    assertEquals("", tally.tags());
    assertEquals(true, tally.said().contains(said), tally.said());
  }

  @Test
  void aMissingColumnIsNamed() {
    assertEquals("1 missing-column.length", Tally.one("Log|Butt (in)|Tip (in)", "1|14|11").said());
    assertEquals("1 missing-column.diameter", Tally.one("Log|Length (ft)", "1|18").said());
    assertEquals(
        "1 missing-column.breast-height", Tally.one("Log|Length (ft)|DBH (in)", "1|18|14").said());
    assertEquals(
        "1 missing-column.where", Tally.one("Log|Length (ft)|Diameter (in)", "1|18|14").said());
    assertEquals("1 missing-column.headings", Tally.one("colour|of|sky", "1|18|14").said());
  }
}
