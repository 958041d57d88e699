package roundbook.report;

import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Writes the program's rounding and printing as formulas that spreadsheets of 2010 know.
 *
 * @param unit the unit of the numbers in cells
 * @param step the step that marks are printed to
 */
record LiveMath(LengthUnit unit, Length step) {

  /**
   * Returns a value rounded to a step, ties up: {@code INT(ROUND(x / step, 6) + 1/2) * step}.
   *
   * @param value a formula
   * @param size the step's length; zero leaves the value as it is
   * @param cell where the step stands
   */
  static String rounded(String value, Length size, String cell) {
    return size.isZero() ? value : "INT(ROUND((" + value + ")/" + cell + ",6)+0.5)*" + cell;
  }

  /** Returns a text as a formula's literal. */
  static String literal(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }

  /**
   * Returns a tape distance as text: feet, inches and a reduced fraction, or whole metric units.
   *
   * @param value a formula of a value that is already rounded to the step
   */
  String tape(String value) {
    if (unit.metric()) {
      return "ROUND(" + value + ",3)&" + literal(" " + unit.symbol());
    }
    long parts = parts();
    return parts == 0
        ? decimals(value)
        : fractions("ROUND((" + value + ")*" + parts + ",0)", parts);
  }

  /** Returns a mark as text without its unit: whole inches and a reduced fraction. */
  String mark(String value) {
    long parts = unit.metric() ? 0 : parts();
    return parts == 0
        ? "ROUND(" + value + ",6)"
        : inches("ROUND((" + value + ")*" + parts + ",0)", parts);
  }

  /** Returns how many steps an inch has, or 0 when that is no power of two up to 64. */
  private long parts() {
    long inch = LengthUnit.INCH.nanometres();
    if (step.isZero() || inch % step.nanometres() != 0) {
      return 0;
    }
    long parts = inch / step.nanometres();
    return parts <= 64 && Long.bitCount(parts) == 1 ? parts : 0;
  }

  private static String decimals(String value) {
    return "INT(" + value + "/12)&\"' \"&ROUND(MOD(" + value + ",12),6)&" + literal("\"");
  }

  private static String fractions(String count, long parts) {
    long foot = 12 * parts;
    String rest = "MOD(" + count + "," + foot + ")";
    return "INT(" + count + "/" + foot + ")&\"' \"&" + inches(rest, parts) + "&" + literal("\"");
  }

  private static String inches(String count, long parts) {
    if (parts == 1) {
      return count;
    }
    String whole = "INT(" + count + "/" + parts + ")";
    String part = "MOD(" + count + "," + parts + ")";
    String divisor = "GCD(" + part + "," + parts + ")";
    String fraction = part + "/" + divisor + "&\"/\"&" + parts + "/" + divisor;
    return "IF("
        + part
        + "=0,"
        + whole
        + "&\"\",IF("
        + count
        + "<"
        + parts
        + ",\"\","
        + whole
        + "&\" \")&"
        + fraction
        + ")";
  }
}
