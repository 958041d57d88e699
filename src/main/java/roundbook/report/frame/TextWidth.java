package roundbook.report.frame;

import roundbook.page.Cell;

/** About how wide a bold text prints in the usual sans-serif letters. */
public final class TextWidth {
  private static final double DIGIT = 0.556;
  private static final double NARROW = 0.33;
  private static final double LETTER = 0.7;
  private static final double SMALL = 11;
  private static final double LINE = 14;

  private TextWidth() {}

  /** Returns the text that a cell shows now; empty for a number. */
  public static String shown(Cell cell) {
    Cell.Value value =
        cell.value() instanceof Cell.Formula formula ? formula.result() : cell.value();
    return value instanceof Cell.Text text ? text.text() : "";
  }

  /** Returns about how many points wide a text is in letters of a size in points. */
  public static double points(String text, double size) {
    return size * text.chars().mapToDouble(TextWidth::em).sum();
  }

  /** Returns the height of a text of small letters in so much room across, in points. */
  public static double height(String text, double room) {
    return LINE * StrictMath.max(1, StrictMath.ceil(points(text, SMALL) / room));
  }

  /** Returns about how wide a letter is, as a part of the letters' size. */
  private static double em(int character) {
    if (Character.isDigit(character)) {
      return DIGIT;
    }
    boolean narrow = " '\".,:;/|!()-ijlI1".indexOf(character) >= 0;
    return narrow ? NARROW : LETTER;
  }
}
