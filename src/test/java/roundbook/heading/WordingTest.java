package roundbook.heading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.units.LengthUnit;

/**
 * Headings as people write them, the first of each row being asked about: what a reader of that
 * language takes it for. Words of the trade from memory: common practice of tally sheets.
 */
class WordingTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Length | LENGTH",
        "Log # | TAG NUMBER",
        "\u2116 | NUMBER",
        "Butt dia | BUTT DIAMETER",
        "TipDiameter | TIP DIAMETER",
        "tip_dia | TIP DIAMETER",
        "Butt's diameter | BUTT DIAMETER",
        "butt1 | BUTT READING",
        "Trees | STEM",
        "d.i.b. | DIAMETER UNDER",
        "D. O. B. butt | DIAMETER OVER BUTT",
        "Diameter 1.3 | DIAMETER BREAST",
        "Diameter inside bark | DIAMETER UNDER BARK",
        "Diameter with bark | DIAMETER WITH BARK OVER",
        "Diameter without bark | DIAMETER WITHOUT BARK UNDER",
        "Durchmesser in Rinde; Zopf; Stockende | DIAMETER BARK OVER FILLER",
        "Durchm. m. R.; Zopf | DIAMETER OVER",
        "Durchm. o.R.; Zopf | DIAMETER UNDER",
        "\u00D8 Zopf; L\u00E4nge | DIAMETER TIP",
        "Zopfdurchmesser; Nummer; L\u00E4nge | TIP DIAMETER",
        "Mittendurchmesser; L\u00E4nge; Zopf | MID DIAMETER",
        "Stammnummer; L\u00E4nge; Zopf | STEM NUMBER",
        "Rotdiameter; L\u00E4ngd; Toppdiameter | BUTT DIAMETER",
        "Latval\u00E4pimitta; Pituus; Tyvi | TIP DIAMETER",
        "Stock; L\u00E4nge; Zopf; Nummer | BUTT",
        "Stock; L\u00E4ngd; Rotdiameter; Toppdiameter | TAG",
      })
  void meansWhatItsRowSays(String row, String terms) {
    Set<Term> wanted =
        Arrays.stream(terms.split(" "))
            .map(Term::valueOf)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Term.class)));
    assertEquals(wanted, terms(read(row)), row);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Length (ft) | FOOT",
        "Length, ft | FOOT",
        "Length feet | FOOT",
        "Length ft in | FOOT",
        "Length (ft & in) | FOOT",
        "Length in m | METRE",
        "Butt in | INCH",
        "Butt (in) | INCH",
        "Butt \" | INCH",
        "Butt in ob | INCH",
        "Butt diameter in inches | INCH",
        "Mid cm (in) | INCH",
        "Tip / cm | CENTIMETRE",
        "Tip dia. (both ends, mm) | MILLIMETRE",
        "Length dm | DECIMETRE",
        "\u00D8 Zopf [cm]; L\u00E4nge | CENTIMETRE",
        "Durchmesser in der Mitte; L\u00E4nge |",
        "Butt dm |",
        "Length |",
        "Length ft or m |",
        "Mid (in) (cm) |",
      })
  void statesAUnitOrNone(String row, LengthUnit unit) {
    assertEquals(Optional.ofNullable(unit), read(row).unit(), row);
  }

  @ParameterizedTest
  @CsvSource({
    "Length ft in, true, false, false",
    "Length (ft-in), true, false, false",
    "Length (ft.in), true, true, false",
    "Length feet.inches, true, true, false",
    "Length ft, false, false, false",
    "Length ft or in, false, false, true",
    "Length ft / m, false, false, true",
    "Mid cm mm, false, false, true",
    "Mid cm cm, false, false, false",
  })
  void tellsFeetAndInchesFromTwoUnits(String heading, boolean both, boolean point, boolean two) {
    Wording words = read(heading);
    assertEquals(both, words.isFeetAndInches(), heading);
    assertEquals(point, words.isFeetDotInches(), heading);
    assertEquals(two, words.hasTwoUnits(), heading);
  }

  @ParameterizedTest
  @CsvSource({
    "ft, true",
    "(in), true",
    "feet and inches, true",
    "dm, true",
    "in, true",
    "ft long, false",
    "ft x, false",
    "length, false",
    "ft flitch, false",
  })
  void isAUnitAloneWhereNothingElseIsSaid(String heading, boolean alone) {
    assertEquals(alone, read(heading).isUnitAlone(), heading);
  }

  /** A foot is also the thick end: beside another unit it is no unit. */
  @Test
  void aFootBesideAnotherUnitIsTheButt() {
    assertEquals(Optional.of(LengthUnit.INCH), read("Butt foot in").unit());
    assertEquals(Optional.of(LengthUnit.FOOT), read("Butt foot").unit());
  }

  @ParameterizedTest
  @CsvSource({
    "Large flitch, flitch",
    "Butt quibble dia, quibble",
    "xyzzy, xyzzy",
    "Butt zz9, zz9",
  })
  void keepsWordsThatItDoesNotKnow(String heading, String stranger) {
    assertEquals(List.of(stranger), read(heading).strangers());
  }

  @Test
  void aWordOfTwoLanguagesIsUnsureUntilTheRowTells() {
    assertEquals(List.of("stock"), read("Stock").unsure());
    assertEquals(List.of(), read("Stock; L\u00E4nge; Zopf; Nummer").unsure());
    assertEquals(List.of(), read("Stock; L\u00E4ngd; Rotdiameter").unsure());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "---", "()", "(", ")", "\n", "\"\"", "((("})
  void anEmptyOrBrokenHeadingMeansNothing(String heading) {
    Wording words = Wording.ofRow(List.of(heading), Vocabulary.standard()).get(0);
    assertEquals(Set.of(), terms(words));
    assertEquals(List.of(), words.strangers());
    assertFalse(words.has(Term.values()));
  }

  /** The worked example of the README. */
  @Test
  void aUsersWordsGoBeforeAllOthers() {
    Vocabulary own =
        Vocabulary.with(
            List.of(
                "# mine", "Kopfende = tip", "Kopfdurchmesser = tip diameter", "butt = remarks"));
    List<Wording> row = Wording.ofRow(List.of("Kopfende", "Kopfdurchmesser (cm)", "Butt"), own);
    assertEquals(EnumSet.of(Term.TIP), terms(row.get(0)));
    assertEquals(EnumSet.of(Term.TIP, Term.DIAMETER), terms(row.get(1)));
    assertEquals(EnumSet.of(Term.REMARKS), terms(row.get(2)));
    assertEquals(List.of("kopfende"), read("Kopfende").strangers());
  }

  private static Set<Term> terms(Wording words) {
    return Arrays.stream(Term.values())
        .filter(words::has)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Term.class)));
  }

  private static Wording read(String row) {
    List<String> headings = List.of(row.split("; "));
    return Wording.ofRow(headings, Vocabulary.standard()).get(0);
  }
}
