package roundbook.report.live;

import java.math.BigDecimal;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * Writes the program's rounding and printing as formulas that spreadsheets of 2010 know.
 *
 * <p>Fractions are made with INT and MOD, for the number formats of text functions differ from one
 * spreadsheet to the next. Where the step is no half, quarter and so on of an inch, inches are
 * printed as decimals.
 *
 * <p>A spreadsheet makes text of a number with the mark of its own country, so both marks are
 * turned into the job's, wherever there can be decimals.
 *
 * @param formats how the program prints lengths: the unit of the numbers in cells, the step, the
 *     mark before decimals
 */
public record LiveMath(LengthFormat formats) {
  private static final int DECIMALS = 6;
  private static final int MOST_PARTS = 64;
  private static final int FOOT = 12;

  /**
   * Returns a value rounded to a step, ties up: {@code INT(ROUND(x / step, 6) + 1/2) * step}.
   *
   * @param value a formula
   * @param size the step's length; zero leaves the value as it is
   * @param cell where the step stands
   */
  public static String rounded(String value, Length size, String cell) {
    return size.isZero() ? value : "INT(ROUND((" + value + ")/" + cell + ",6)+0.5)*" + cell;
  }

  /** Returns a text as a formula's literal. */
  public static String literal(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }

  /** Returns the formula of a tape distance as text, rounded to the step. */
  public String tape(String value) {
    if (unit().metric()) {
      return text(plain(value)) + "&" + literal(" " + unit().symbol());
    }
    if (parts() == 0) {
      String inches = inSteps(value);
      String rest = "ROUND(MOD(" + inches + "," + FOOT + "),6)";
      return "INT(" + inches + "/" + FOOT + ")&\"' \"&" + text(rest) + "&" + literal("\"");
    }
    long foot = FOOT * parts();
    String count = count(value);
    String rest = "MOD(" + count + "," + foot + ")";
    return "INT(" + count + "/" + foot + ")&\"' \"&" + inches(rest, true) + "&" + literal("\"");
  }

  /** Returns a tape distance as the formula of {@link #tape} shows it. */
  public String tapeNow(Length length) {
    if (unit().metric() || parts() > 0) {
      return formats.feetInches(length);
    }
    Length rounded = length.roundedTo(step());
    long feet = rounded.nanometres() / LengthUnit.FOOT.nanometres();
    Length rest = rounded.minus(Length.of(feet, LengthUnit.FOOT));
    return feet + "' " + decimal(rest) + "\"";
  }

  /** Returns the formula of a mark as text without its unit, rounded to the step. */
  public String mark(String value) {
    return fractions() ? inches(count(value), false) : text(plain(value)) + "&\"\"";
  }

  /** Returns a mark as the formula of {@link #mark} shows it. */
  public String markNow(Length length) {
    return fractions() ? formats.mark(length) : decimal(length.roundedTo(step()));
  }

  /** Returns a length as a decimal of the unit without needless zeros. */
  private String decimal(Length length) {
    BigDecimal number = length.decimal(unit(), DECIMALS).stripTrailingZeros();
    String plain = number.signum() == 0 ? "0" : number.toPlainString();
    return plain.replace('.', formats.decimalMark());
  }

  /** Returns a number's formula as text with the job's decimal mark, where it can have decimals. */
  private String text(String number) {
    boolean whole = !step().isZero() && step().nanometres() % unit().nanometres() == 0;
    if (whole) {
      return number;
    }
    char mark = formats.decimalMark();
    char other = mark == '.' ? ',' : '.';
    return "SUBSTITUTE(" + number + "," + literal("" + other) + "," + literal("" + mark) + ")";
  }

  private boolean fractions() {
    return !unit().metric() && parts() > 0;
  }

  private LengthUnit unit() {
    return formats.unit();
  }

  private Length step() {
    return formats.step();
  }

  /** Returns the formula of a value rounded to the step, freed of binary crumbs. */
  private String plain(String value) {
    return "ROUND(" + inSteps(value) + ",6)";
  }

  /** Returns the formula of a value rounded to the step. */
  private String inSteps(String value) {
    return rounded(value, step(), String.valueOf(step().in(unit())));
  }

  /** Returns how many steps an inch has, or 0 when that is no power of two up to 64. */
  private long parts() {
    long inch = LengthUnit.INCH.nanometres();
    if (step().isZero() || inch % step().nanometres() != 0) {
      return 0;
    }
    long parts = inch / step().nanometres();
    return parts <= MOST_PARTS && Long.bitCount(parts) == 1 ? parts : 0;
  }

  /** Returns the formula of how many steps a value is, ties up. */
  private String count(String value) {
    return "INT(ROUND((" + value + ")*" + parts() + ",6)+0.5)";
  }

  /**
   * Returns the formula of whole inches and a fraction from a count of steps.
   *
   * @param behindFeet whether feet stand before them; a fraction alone then has a 0 before it
   */
  private String inches(String count, boolean behindFeet) {
    long parts = parts();
    if (parts == 1) {
      return count;
    }
    String whole = "INT(" + count + "/" + parts + ")";
    String spaced = whole + "&\" \"";
    String alone = behindFeet ? spaced : "IF(" + count + "<" + parts + ",\"\"," + spaced + ")";
    String none = "MOD(" + count + "," + parts + ")=0";
    return "IF(" + none + "," + whole + "&\"\"," + alone + "&" + fraction(count, parts) + ")";
  }

  /**
   * Returns the reduced fraction of a count of parts: odd over all parts, else over half of them.
   */
  private static String fraction(String count, long parts) {
    String text = "";
    StringBuilder ends = new StringBuilder();
    for (long divisor = 1; divisor < parts; divisor *= 2) {
      String top = "MOD(" + count + "," + parts + ")" + (divisor == 1 ? "" : "/" + divisor);
      String shown = top + "&\"/" + parts / divisor + "\"";
      boolean last = divisor * 2 == parts;
      String odd = "MOD(" + count + "," + 2 * divisor + ")=" + divisor;
      text += last ? shown : "IF(" + odd + "," + shown + ",";
      ends.append(last ? "" : ")");
    }
    return text + ends;
  }
}
