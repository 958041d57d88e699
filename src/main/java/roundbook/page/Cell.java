package roundbook.page;

import java.util.Objects;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * One cell to be written: its value, its role, its number format.
 *
 * <p>Start from a factory and add: {@code
 * Cell.number(3.5).role(Role.MARK).format(Format.FRACTION)}. Text is always written as text,
 * whatever it begins with; only {@link #formula} makes a formula.
 *
 * @param value what the cell holds
 * @param role what it is for
 * @param format how a number is shown, or {@link Format#OF_ROLE}
 * @param align where the content stands, or {@link Align#OF_ROLE}
 * @param name the defined name of the cell, or empty
 * @param link where a click leads, a sheet's name, or empty
 */
public record Cell(Value value, Role role, Format format, Align align, String name, String link) {

  /** Checks that nothing is missing. */
  public Cell {
    Objects.requireNonNull(value);
    Objects.requireNonNull(role);
    Objects.requireNonNull(format);
    Objects.requireNonNull(align);
    Objects.requireNonNull(name);
    Objects.requireNonNull(link);
  }

  /** What a cell holds. */
  public sealed interface Value permits Blank, Text, Number, Truth, Formula {}

  /** Nothing; the cell only has looks. */
  public record Blank() implements Value {}

  /**
   * Text, which is never taken for a formula or a number.
   *
   * @param text the text
   */
  public record Text(String text) implements Value {
    /** Checks that there is a text. */
    public Text {
      Objects.requireNonNull(text);
    }
  }

  /**
   * A number.
   *
   * @param number the number, finite
   */
  public record Number(double number) implements Value {
    /**
     * Checks that a workbook can hold the number.
     *
     * @throws IllegalArgumentException if it is infinite or no number
     */
    public Number {
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException("not a number for a cell: " + number);
      }
    }
  }

  /**
   * True or false.
   *
   * @param truth which of the two
   */
  public record Truth(boolean truth) implements Value {}

  /**
   * A formula with the value it has now.
   *
   * @param expression the formula without its equals sign, functions and commas in English
   * @param result the value that the program computed, never a formula itself
   */
  public record Formula(String expression, Value result) implements Value {
    /**
     * Checks the formula's form.
     *
     * @throws IllegalArgumentException if it is empty, begins with an equals sign, or is nested
     */
    public Formula {
      if (expression.isEmpty() || expression.startsWith("=")) {
        throw new IllegalArgumentException("no formula: " + expression);
      }
      if (result instanceof Formula || result instanceof Blank) {
        throw new IllegalArgumentException("no result for " + expression);
      }
    }
  }

  /** Where the content stands in its cell. */
  public enum Align {
    /** As the role's style says. */
    OF_ROLE,
    /** At the left. */
    LEFT,
    /** In the middle. */
    CENTRE,
    /** At the right. */
    RIGHT
  }

  /**
   * How a number is shown; the template may show it otherwise.
   *
   * <p>A fraction's value must already be rounded to the step it is printed to.
   */
  public enum Format {
    /** As the role's style says. */
    OF_ROLE("General"),
    /** As the spreadsheet likes. */
    GENERAL("General"),
    /** As text, also when a number is typed in. */
    TEXT("@"),
    /** A whole number. */
    WHOLE("0"),
    /** A whole number with separated thousands. */
    THOUSANDS("#,##0"),
    /** One decimal. */
    DECIMAL_1("0.0"),
    /** Two decimals. */
    DECIMAL_2("0.00"),
    /** Three decimals. */
    DECIMAL_3("0.000"),
    /** A whole number of hundredths. */
    PERCENT("0%"),
    /** Whole inches and a fraction, such as 3 1/2 or 2 9/16. */
    FRACTION("# ?/??"),
    /** The same with its sign, nothing being 0. */
    FRACTION_SIGNED("+# ?/??;-# ?/??;0"),
    /** Whole inches and a fraction with the unit behind. */
    INCHES("# ?/??\" in\""),
    /** Whole millimetres with the unit behind. */
    MILLIMETRES("0\" mm\""),
    /** Whole millimetres with their sign. */
    WHOLE_SIGNED("+0;-0;0"),
    /** Decimal feet with the unit behind. */
    FEET("#,##0.0\" ft\""),
    /** Decimal metres with the unit behind. */
    METRES("#,##0.00\" m\""),
    /** Whole pounds with the unit behind. */
    POUNDS("#,##0\" lb\""),
    /** Whole kilograms with the unit behind. */
    KILOGRAMS("#,##0\" kg\""),
    /** Whole pounds that only stand in for what is not known. */
    POUNDS_STAND_IN("\"▲ \"#,##0\" lb\""),
    /** Whole kilograms that only stand in for what is not known. */
    KILOGRAMS_STAND_IN("\"▲ \"#,##0\" kg\""),
    /** A day, year first. */
    DATE("yyyy-mm-dd");

    private final String code;

    Format(String code) {
      this.code = code;
    }

    /** Returns the format code that the default template gives. */
    public String code() {
      return code;
    }
  }

  /** Returns a cell that only has looks. */
  public static Cell blank(Role role) {
    return of(new Blank(), role);
  }

  /** Returns a cell of text. */
  public static Cell text(String text) {
    return of(new Text(text), Role.BODY);
  }

  /** Returns a cell of a number. */
  public static Cell number(double number) {
    return of(new Number(number), Role.NUMBER);
  }

  /** Returns a cell of a length as a number of a unit; the unit is not shown. */
  public static Cell length(Length length, LengthUnit unit) {
    return number(length.in(unit));
  }

  /** Returns a cell of true or false. */
  public static Cell truth(boolean truth) {
    return of(new Truth(truth), Role.BODY_CENTRE);
  }

  /** Returns a cell of a formula that is a number now. */
  public static Cell formula(String expression, double result) {
    return of(new Formula(expression, new Number(result)), Role.NUMBER);
  }

  /** Returns a cell of a formula that is a text now, maybe an empty one. */
  public static Cell formula(String expression, String result) {
    return of(new Formula(expression, new Text(result)), Role.BODY);
  }

  /** Returns a cell of a formula that is true or false now. */
  public static Cell formula(String expression, boolean result) {
    return of(new Formula(expression, new Truth(result)), Role.BODY_CENTRE);
  }

  private static Cell of(Value value, Role role) {
    return new Cell(value, role, Format.OF_ROLE, Align.OF_ROLE, "", "");
  }

  /** Returns this cell in another role. */
  public Cell role(Role other) {
    return new Cell(value, other, format, align, name, link);
  }

  /** Returns this cell with another number format. */
  public Cell format(Format other) {
    return new Cell(value, role, other, align, name, link);
  }

  /** Returns this cell with its content elsewhere. */
  public Cell align(Align other) {
    return new Cell(value, role, format, other, name, link);
  }

  /** Returns this cell with a defined name, which formulas on every sheet can use. */
  public Cell named(String other) {
    return new Cell(value, role, format, align, Book.checkedName(other), link);
  }

  /** Returns this cell as a link to the first cell of a sheet of the book. */
  public Cell linkTo(String sheet) {
    return new Cell(value, role, format, align, name, sheet);
  }
}
