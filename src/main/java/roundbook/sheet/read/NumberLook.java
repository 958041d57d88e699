package roundbook.sheet.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.units.LengthReader;

/**
 * How a number format makes its numbers look: as dates, with a unit, or as a padded tag.
 *
 * @param index the format's number in the file
 * @param format the format's code
 * @param date whether it shows a date or a time
 * @param unit the symbol of the unit of length that it shows, or empty
 * @param padded whether it makes tags of numbers, as {@code 000} or {@code "L-"000} do
 * @param struck whether the cell's font is struck through
 */
record NumberLook(
    int index, String format, boolean date, String unit, boolean padded, boolean struck) {
  private static final double WHOLE = 1e15;
  private static final int DIGITS = 15;

  /** The days from the first date of one system to that of the other. */
  private static final BigDecimal DAYS_TO_1904 = BigDecimal.valueOf(1462);

  private static final MathContext AS_TYPED = new MathContext(DIGITS);

  static NumberLook of(int index, String format, boolean struck) {
    String code = format == null ? "General" : format;
    boolean date = mayBeDate(index, code) && DateUtil.isADateFormat(index, code);
    String unit = unitOf(code);
    return new NumberLook(index, code, date, unit, unit.isEmpty() && isPadded(code), struck);
  }

  /**
   * Returns whether the library need be asked: a date shows a year, month, day, hour, minute or
   * second, or is one of those that spreadsheets know by number (ECMA-376 part 1, 18.8.30). Its
   * first answer takes longer than to read a tally.
   */
  private static boolean mayBeDate(int index, String code) {
    return index > 13 && index < 59
        || code.chars().anyMatch(letter -> "ymdhsYMDHS".indexOf(letter) >= 0);
  }

  /**
   * Returns a cell of a number, with the 15 digits that a spreadsheet keeps of what was typed.
   *
   * @param system1904 whether dates count from 1904
   */
  Cell cell(int column, double value, boolean system1904) {
    BigDecimal plain = plain(value);
    if (date) {
      BigDecimal serial = system1904 ? plain.add(DAYS_TO_1904) : plain;
      return new Cell(column, CellKind.DATE, shown(value, system1904), serial, "");
    }
    String text = padded ? shown(value, system1904) : plain.toPlainString();
    return new Cell(column, CellKind.NUMBER, text, plain, unit);
  }

  private static BigDecimal plain(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < WHOLE;
    BigDecimal number =
        whole
            ? BigDecimal.valueOf((long) value)
            : new BigDecimal(Double.toString(value)).round(AS_TYPED);
    return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
  }

  /** A format such as {@code 000} or {@code "L-"000} makes a tag whose look is its name. */
  private static boolean isPadded(String format) {
    String first = firstSection(format);
    return first.contains("00")
        && first.indexOf('.') < 0
        && first.indexOf(',') < 0
        && first.indexOf('E') < 0;
  }

  private String shown(double value, boolean system1904) {
    DataFormatter formatter = new DataFormatter(Locale.US);
    return Cell.strip(formatter.formatRawCellContents(value, index, format, system1904));
  }

  /** Finds the unit among the literal characters of a format. */
  private static String unitOf(String format) {
    StringBuilder literal = new StringBuilder();
    String first = firstSection(format);
    boolean quoted = false;
    for (int i = 0; i < first.length(); i++) {
      char letter = first.charAt(i);
      if (letter == '\\' && !quoted && i + 1 < first.length()) {
        literal.append(first.charAt(++i));
      } else if (letter == '_' && !quoted) {
        i++;
      } else if (letter == '"') {
        quoted = !quoted;
      } else if (quoted || letter == '\'') {
        literal.append(letter);
      }
    }
    String word = literal.toString().strip().replaceFirst("^\\((.*)\\)$", "$1");
    return word.isEmpty() ? "" : LengthReader.unitOf(word).map(unit -> unit.symbol()).orElse("");
  }

  private static String firstSection(String format) {
    boolean quoted = false;
    for (int i = 0; i < format.length(); i++) {
      char letter = format.charAt(i);
      quoted ^= letter == '"';
      if (letter == '\\') {
        i++;
      } else if (letter == ';' && !quoted) {
        return format.substring(0, i);
      }
    }
    return format;
  }
}
