package roundbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** What is said is carried as key and values, and told with the values filled in. */
class PhraseTest {
  private static final LengthFormat INCHES =
      LengthFormat.forJob(LengthUnit.INCH, Length.ofInchFraction(1, 16));
  private static final LengthFormat METRIC =
      LengthFormat.forJob(LengthUnit.MILLIMETRE, Length.ofNanometres(500_000));
  private static final Length LENGTH = Length.ofInchFraction(99, 8);

  static List<Value> values() {
    return List.of(
        Value.text("14.1"),
        Value.text(""),
        Value.text("a \"quote\", a \\ and two\nlines (x=1)"),
        Value.count(-3),
        Value.number(new BigDecimal("12.0")),
        Value.decimal(new BigDecimal("4.900"), LengthUnit.METRE),
        Value.mark(LENGTH, INCHES),
        Value.measure(LENGTH, METRIC),
        Value.tape(LENGTH, INCHES),
        Phrase.of("field.mid-at"),
        Phrase.counted("rounds", 1),
        Value.list("list.or", List.of()),
        Value.list("list.or", List.of(Value.text("]"), Phrase.of("a").with("b", "c"))));
  }

  @ParameterizedTest
  @MethodSource("values")
  void comesBackAsItWasWritten(Value value) {
    Phrase phrase = Phrase.of("code.variant").with("one", value).with("other", value);
    assertEquals(Optional.of(phrase), Phrase.parse(phrase.toString()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Key",
        "key(",
        "key(a)",
        "key(a=)",
        "key(a=\"b)",
        "key(a=<MARK 1 2>)",
        "key()",
        "key(a=[or 1)",
        "key(a=1) ",
        "key(a=<SIZE 1 2 in>)",
        "key(a=1.2.3)",
        "key(a=<MARK x 2 in>)"
      })
  void whatSomebodyTypedOverIsNone(String written) {
    assertEquals(Optional.empty(), Phrase.parse(written));
  }

  @Test
  void nothingIsReadDeeperThanIsWritten() {
    assertEquals(Optional.empty(), Phrase.parse("a(a=".repeat(5000) + "1" + ")".repeat(5000)));
  }

  @Test
  void numbersAndLengthsAreToldInTheFormOfTheLanguage() {
    Phrase phrase =
        Phrase.of("{a}; {b}; {c}; {d}")
            .with("a", Value.measure(Length.ofNanometres(27_500_000), METRIC))
            .with("b", Value.tape(Length.ofInches(250), INCHES))
            .with("c", Value.decimal(new BigDecimal("4.90"), LengthUnit.METRE))
            .with("d", "14.1");
    assertEquals("27,5 mm; 20' 10\"; 4,9 m; 14.1", phrase.in(new Itself(',')));
    assertEquals("27.5 mm; 20' 10\"; 4.9 m; 14.1", phrase.in(new Itself('.')));
  }

  @Test
  void aHoleThatNothingFillsIsAFault() {
    Phrase phrase = Phrase.of("{tag} and {log}").with("tag", "7");
    assertThrows(IllegalStateException.class, () -> phrase.in(new Itself('.')));
  }

  @Test
  void aProblemIsCarriedWithAllButItsPlace() {
    CellRef where = new CellRef("a.csv", "", 3, 2);
    Problem problem =
        Problem.of(ProblemCode.GAP_SMALL, where)
            .with("gap", Value.measure(LENGTH, INCHES))
            .found(Value.mark(LENGTH, INCHES))
            .as(Severity.INFO)
            .about("L 7")
            .remedyOf("gap-small-cut")
            .alsoRemedy(Phrase.of("remedy.log-left-out").with("tag", "L 7"));
    assertEquals(Optional.of(problem), Problem.ofCarried(problem.carried(), where));
    Problem none = Problem.of(ProblemCode.NOTE_ROW, "text", where).remedy();
    assertEquals(Optional.of(none), Problem.ofCarried(none.carried(), where));
    assertEquals(Optional.empty(), Problem.ofCarried("gap-small(severity=\"info\")", where));
    String other = problem.carried().replace("\"info\"", "\"dire\"");
    assertEquals(Optional.empty(), Problem.ofCarried(other, where));
  }

  /** A language whose texts are their own keys. */
  private record Itself(char decimalMark) implements Language {
    @Override
    public String pattern(String key) {
      return key;
    }
  }
}
