package roundbook.page;

/**
 * Estimates how high wrapped text stands, so that no viewer cuts it off.
 *
 * <p>Merged cells do not grow by themselves, and not every viewer grows single ones. The estimate
 * breaks lines between words as viewers do, with letters a little wider than a digit.
 */
public final class TextHeight {
  private static final double USUAL_POINTS = 11;
  private static final double LEADING = 1.32;
  private static final double PADDING = 3;
  private static final double MARGIN_CHARACTERS = 1.6;
  private static final double BOLD = 1.08;

  private TextHeight() {}

  /**
   * Returns the height that a text needs.
   *
   * @param text the text; line feeds begin new lines
   * @param role the role whose font it is shown in
   * @param characters the width of its cell in characters of the usual font
   * @return points
   */
  public static double of(String text, Role role, double characters) {
    double points = points(role);
    double fitting = (characters - MARGIN_CHARACTERS) * USUAL_POINTS / points;
    double capacity = Math.max(1, bold(role) ? fitting / BOLD : fitting);
    int lines = text.lines().mapToInt(line -> linesOf(line, capacity)).sum();
    return Math.max(1, lines) * points * LEADING + PADDING;
  }

  private static int linesOf(String line, double capacity) {
    int lines = 1;
    double used = 0;
    for (String word : line.split(" ", -1)) {
      double wide = word.chars().mapToDouble(TextHeight::width).sum();
      if (used > 0 && used + 0.5 + wide > capacity) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? 0.5 : 0) + wide;
      while (used > capacity) {
        lines++;
        used -= capacity;
      }
    }
    return lines;
  }

  private static double width(int letter) {
    if ("iljtfr'.,:;|!()[]/ ".indexOf(letter) >= 0) {
      return 0.6;
    }
    return Character.isUpperCase(letter) || "mw@%●○▼▲→—".indexOf(letter) >= 0 ? 1.4 : 1.09;
  }

  private static boolean bold(Role role) {
    return switch (role) {
      case PLAIN_BOLD,
          BODY_BOLD,
          COLUMN_HEAD,
          COLUMN_HEAD_SHADED,
          HEADING,
          SUBHEADING,
          LARGE,
          LARGE_CUT,
          CAUTION,
          CAUTION_HEAD,
          TITLE,
          TITLE_SIDE,
          LABEL,
          FLAG ->
          true;
      default -> false;
    };
  }

  private static double points(Role role) {
    return switch (role) {
      case TITLE -> 28;
      case TITLE_SIDE, REVISION, HEADING, TAG_BODY -> 16;
      case CAUTION_HEAD -> 14;
      case SUBHEADING -> 12;
      case LARGE, LARGE_NUMBER, LARGE_CUT -> 18;
      default -> USUAL_POINTS;
    };
  }
}
