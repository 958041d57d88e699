package roundbook.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import roundbook.page.PlainTable;
import roundbook.report.words.Decimals;
import roundbook.units.Length;

/**
 * The columns of a plain table from left to right, each with its heading and how its value is told.
 *
 * @param <T> what a row is about
 */
public final class PlainColumns<T> {
  private final Decimals decimals;
  private final List<String> headings = new ArrayList<>();
  private final List<Function<T, String>> values = new ArrayList<>();

  /**
   * Begins a table.
   *
   * @param decimals how numbers are written
   */
  public PlainColumns(Decimals decimals) {
    this.decimals = decimals;
  }

  /** Adds a column of texts. */
  public PlainColumns<T> text(String heading, Function<T, String> value) {
    headings.add(heading);
    values.add(value);
    return this;
  }

  /** Adds a column of texts; empty where there is none. */
  public PlainColumns<T> textIf(String heading, Function<T, Optional<String>> value) {
    return text(heading, row -> value.apply(row).orElse(""));
  }

  /** Adds a column of whole numbers. */
  public PlainColumns<T> count(String heading, ToIntFunction<T> value) {
    return text(heading, row -> String.valueOf(value.applyAsInt(row)));
  }

  /** Adds a column of numbers of rows or columns; empty where it is none. */
  public PlainColumns<T> number(String heading, ToIntFunction<T> value) {
    return textIf(
        heading,
        row -> Optional.of(value.applyAsInt(row)).filter(n -> n != 0).map(String::valueOf));
  }

  /** Adds a column of lengths, its heading with their unit. */
  public PlainColumns<T> length(String heading, Function<T, Length> value) {
    return lengthIf(heading, row -> Optional.of(value.apply(row)));
  }

  /** Adds a column of lengths, its heading with their unit; empty where there is none. */
  public PlainColumns<T> lengthIf(String heading, Function<T, Optional<Length>> value) {
    String unit = heading + "_" + decimals.symbol();
    return textIf(unit, row -> value.apply(row).map(decimals::one));
  }

  /** Returns the headings. */
  List<String> headings() {
    return headings;
  }

  /** Returns the values of a row. */
  List<String> row(T row) {
    return values.stream().map(value -> value.apply(row)).toList();
  }

  /** Returns the table of such rows. */
  public PlainTable table(String name, List<T> rows) {
    return new PlainTable(name, headings, rows.stream().map(this::row).toList());
  }
}
