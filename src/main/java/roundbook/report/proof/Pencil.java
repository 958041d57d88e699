package roundbook.report.proof;

import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Stream;
import roundbook.job.Wall;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMath;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Writes numbers as they stand in a sum that is done by hand. */
final class Pencil {
  private static final Length FRACTION = Length.ofInchFraction(1, 64);
  private static final String TIE = "0.000001";

  private final LiveContext live;
  private final Length decimal;
  private final LiveMath marks;
  private final LiveMath decimals;
  private final LiveMath finer;

  Pencil(LiveContext live) {
    this.live = live;
    boolean metric = live.unit().metric();
    this.decimal = Length.of(BigDecimal.ONE.movePointLeft(decimals()), live.unit());
    this.decimals = math(decimal);
    this.finer = math(Length.ZERO);
    this.marks = !metric && isInFractions() ? math(FRACTION) : decimals;
  }

  /**
   * A number or a sum as text.
   *
   * @param formula what makes the text of what is typed
   * @param now the text as planned
   */
  record Term(String formula, String now) {
    /** Returns a text that nothing changes. */
    static Term of(String text) {
      return new Term(LiveMath.literal(text), text);
    }
  }

  /**
   * A length that follows from what is typed.
   *
   * @param formula the number's formula
   * @param now the length as planned
   */
  record Value(String formula, Length now) {
    Value plus(Value other) {
      return new Value(formula + "+" + other.formula, now.plus(other.now));
    }

    Value minus(Value other) {
      return new Value(formula + "-(" + other.formula + ")", now.minus(other.now));
    }

    Value dividedBy(int parts) {
      return new Value("(" + formula + ")/" + parts, now.dividedBy(parts));
    }
  }

  private LiveMath math(Length step) {
    char mark = live.context().words().decimalMark();
    return new LiveMath(LengthFormat.forJob(live.unit(), step).withDecimalMark(mark));
  }

  /** Returns whether every number that marks are made of is a whole number of 64ths of an inch. */
  private boolean isInFractions() {
    Stream<Length> walls =
        live.walls().stream().flatMap(wall -> Stream.of(wall.thickness(), wall.outside()));
    Stream<Length> rules = Stream.of(live.rules().gap(), live.rules().overhang());
    return Stream.concat(walls, rules).allMatch(Pencil::isFraction)
        && isStep(live.rules().printStep());
  }

  private static boolean isStep(Length step) {
    return !step.isZero() && isFraction(step);
  }

  private static boolean isFraction(Length length) {
    return length.nanometres() % FRACTION.nanometres() == 0;
  }

  /** Returns a round's size: a mean that is taken as it is stands in decimals. */
  Term size(Value value) {
    return isStep(live.rules().sizeStep()) ? mark(value) : decimal(value);
  }

  /** Returns a mark or a height: in fractions of an inch where the job's rules are. */
  Term mark(Value value) {
    return new Term(marks.mark(value.formula()), marks.markNow(value.now()));
  }

  /** Returns a length that nothing changes. */
  Term mark(Length length) {
    return Term.of(marks.markNow(length));
  }

  /** Returns a length of a wall, in feet and inches in inch work. */
  Term tape(Length length) {
    return live.unit().metric() ? mark(length) : Term.of(marks.tapeNow(length));
  }

  /** Returns a length of less than a foot beside those of a wall. */
  Term inches(Length length) {
    return live.unit().metric() ? mark(length) : Term.of(marks.markNow(length) + "\"");
  }

  /** Returns a value rounded to the decimals that are written. */
  Value written(Value value) {
    String cell = String.valueOf(decimal.in(live.unit()));
    return new Value(
        LiveMath.rounded(value.formula(), decimal, cell), value.now().roundedTo(decimal));
  }

  /** Returns a value in decimals. */
  Term decimal(Value value) {
    return new Term(decimals.mark(value.formula()), decimals.markNow(value.now()));
  }

  /**
   * Returns a value as it is written, with two decimals more where without them a result would be
   * rounded the other way.
   *
   * @param written the value in the decimals that are written
   * @param exact the value as the program has it
   * @param result what comes of the value as it is written, rounded
   * @param wanted the result as the program has it
   */
  Term settled(Value written, Value exact, Value result, Value wanted) {
    Term usual = decimal(written);
    String same = "ABS(" + result.formula() + "-(" + wanted.formula() + "))<" + TIE;
    String formula = "IF(" + same + "," + usual.formula() + "," + finer.mark(exact.formula()) + ")";
    boolean sameNow = result.now().equals(wanted.now());
    return new Term(formula, sameNow ? usual.now() : finer.markNow(exact.now()));
  }

  /** Returns a value with the sign that adds it or takes it away; nothing where there is none. */
  Term signed(Value more, Function<Value, Term> as) {
    Term positive = as.apply(more);
    Term negative = as.apply(new Value("-(" + more.formula() + ")", more.now().negated()));
    String formula =
        "IF(ABS("
            + more.formula()
            + ")<0.000001,\"\",IF("
            + more.formula()
            + ">0,\" + \"&"
            + positive.formula()
            + ",\" − \"&"
            + negative.formula()
            + "))";
    boolean none = more.now().absolute().isLessThan(Length.ofNanometres(26));
    String sign = more.now().isNegative() ? " − " + negative.now() : " + " + positive.now();
    return new Term(formula, none ? "" : sign);
  }

  /** Returns a sum of terms, such as {@code ({0} − {1}) ÷ 4}. */
  static Term sum(String pattern, Term... terms) {
    StringBuilder formula = new StringBuilder();
    StringBuilder now = new StringBuilder();
    for (String part : pattern.split("(?=\\{\\d})|(?<=\\{\\d})")) {
      boolean hole = part.startsWith("{");
      Term term = hole ? terms[part.charAt(1) - '0'] : Term.of(part);
      formula.append(formula.isEmpty() ? "" : "&").append(term.formula());
      now.append(term.now());
    }
    return new Term(formula.toString(), now.toString());
  }

  /** Returns a length with its unit, for words. */
  String withUnit(Length length) {
    return live.formats().mark(length) + " " + live.unit().symbol();
  }

  /** Returns how many decimals are written. */
  int decimals() {
    return switch (live.unit()) {
      case MILLIMETRE -> 2;
      case CENTIMETRE -> 3;
      default -> 4;
    };
  }

  /** Returns the names of walls, one after the other. */
  static String names(Stream<Wall> walls) {
    return String.join(" ", walls.map(Wall::name).toList());
  }
}
