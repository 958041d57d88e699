package roundbook.problem;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * Something that a sentence names: a text as it stands in a cell, a number, a length, a word.
 *
 * <p>A value holds what is meant and is told in a language only when it is shown. Its {@code
 * toString} is what a workbook carries on, and {@link Phrase#parse} reads it again.
 */
public sealed interface Value
    permits Phrase, Value.Text, Value.Number, Value.Measure, Value.Series {
  /** No text. */
  Value NONE = new Text("");

  /** Tells the value in a language. */
  String in(Language language);

  /** Returns a text that is the same in every language: a tag, a cell's text, a name. */
  static Value text(String text) {
    return new Text(text);
  }

  /** Returns a whole number. */
  static Value count(long number) {
    return new Number(BigDecimal.valueOf(number), "");
  }

  /** Returns a decimal number of a unit, without zeros at its end. */
  static Value decimal(BigDecimal number, LengthUnit unit) {
    return new Number(stripped(number), unit.symbol());
  }

  /** Returns a number with all its decimals. */
  static Value number(BigDecimal number) {
    return new Number(number, "");
  }

  private static BigDecimal stripped(BigDecimal number) {
    return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
  }

  /** Returns a length as a mark is printed, without its unit. */
  static Value mark(Length length, LengthFormat format) {
    return new Measure(length, format, Form.MARK);
  }

  /** Returns a length as a mark is printed, with its unit. */
  static Value measure(Length length, LengthFormat format) {
    return new Measure(length, format, Form.UNIT);
  }

  /** Returns a length as a tape distance. */
  static Value tape(Length length, LengthFormat format) {
    return new Measure(length, format, Form.TAPE);
  }

  /**
   * Returns values one after another.
   *
   * @param between the key of the words between two of them
   */
  static Value list(String between, List<? extends Value> values) {
    return new Series(between, List.copyOf(values));
  }

  /**
   * A text that is the same in every language.
   *
   * @param text the text
   */
  record Text(String text) implements Value {
    @Override
    public String in(Language language) {
      return text;
    }

    @Override
    public String toString() {
      return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
  }

  /**
   * A number.
   *
   * @param number the number, printed with all its decimals
   * @param unit the symbol printed after it, or empty
   */
  record Number(BigDecimal number, String unit) implements Value {
    @Override
    public String in(Language language) {
      String plain = number.toPlainString().replace('.', language.decimalMark());
      return unit.isEmpty() ? plain : plain + " " + unit;
    }

    @Override
    public String toString() {
      return number.toPlainString() + unit;
    }
  }

  /** How a length is printed. */
  enum Form {
    /** As a mark, without its unit. */
    MARK,
    /** As a mark, with its unit. */
    UNIT,
    /** As a tape distance: feet and inches, or a metric number with its unit. */
    TAPE
  }

  /**
   * A length in the unit of its job.
   *
   * @param length the length
   * @param format the job's unit and the step it is rounded to
   * @param form how it is printed
   */
  record Measure(Length length, LengthFormat format, Form form) implements Value {
    @Override
    public String in(Language language) {
      LengthFormat own = format.withDecimalMark(language.decimalMark());
      return switch (form) {
        case MARK -> own.mark(length);
        case UNIT -> own.mark(length) + " " + own.symbol();
        case TAPE -> own.feetInches(length);
      };
    }

    @Override
    public String toString() {
      String unit = format.unit().symbol();
      return "<"
          + form
          + " "
          + length.nanometres()
          + " "
          + format.step().nanometres()
          + " "
          + unit
          + ">";
    }
  }

  /**
   * Values one after another.
   *
   * @param between the key of the words between two of them
   * @param values the values
   */
  record Series(String between, List<Value> values) implements Value {
    @Override
    public String in(Language language) {
      return values.stream()
          .map(value -> value.in(language))
          .collect(Collectors.joining(language.pattern(between)));
    }

    @Override
    public String toString() {
      return values.stream()
          .map(Value::toString)
          .collect(Collectors.joining(" ", "[" + between + " ", "]"));
    }
  }
}
