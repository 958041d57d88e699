package roundbook.intake;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import roundbook.table.Cell;
import roundbook.table.Row;

/** What a row under the headings is. */
enum RowKind {
  /** A log, or several alike. */
  LOG,
  /** A row that may be headings: words only. */
  HEADINGS,
  /** A total, average or count. */
  SUMMARY,
  /** Free text. */
  NOTE,
  /** A line drawn with hyphens or the like. */
  RULE;

  private static final Pattern SUMMARY_WORDS =
      Pattern.compile(
          "(?iu)(?:grand |sub)?-?\\s?total.*|sums?|sum of.*|summe|zwischensumme|gesamt.*|averages?"
              + "|avg\\.?|means?|mittel(?:wert)?|durchschnitt|min(?:imum)?\\.?|max(?:imum)?\\.?"
              + "|count|totalt|summa|yhteensä|sous-total|moyenne|medel(?:värde)?|media|promedio"
              + "|keskiarvo|suma|somme|std\\.? ?dev.*|anzahl|antal|nombre"
              + "|\\d+\\s+(?:logs?|pieces|pcs|stämme|stück|billes|grumes|stockar|tukkia|trozas)\\.?");
  private static final Pattern DRAWN = Pattern.compile("[-=_.*#~+\\s]+");
  private static final int TAG_LETTERS = 12;

  /** Six words have five blanks between them and a letter each. */
  private static final int SENTENCE_LETTERS = 10;

  /** Tells what a row is. */
  static RowKind of(Row row, Header header) {
    List<Cell> cells = row.cells();
    boolean words = true;
    boolean drawn = true;
    Cell first = null;
    for (Cell cell : cells) {
      if (!cell.isBlank()) {
        first = first == null ? cell : first;
        boolean text = cell.kind() == Cell.Kind.TEXT;
        words &= text && !Character.isDigit(cell.text().charAt(0));
        drawn = drawn && text && isDrawn(cell);
      }
    }
    if (drawn) {
      return RULE;
    }
    if (first != null && first.kind() == Cell.Kind.TEXT && isSummary(first)) {
      return SUMMARY;
    }
    if (words && row.filled().size() > 1) {
      return HEADINGS;
    }
    return isNote(row, header) ? NOTE : LOG;
  }

  private static boolean isDrawn(Cell cell) {
    return !Character.isLetterOrDigit(cell.text().charAt(0))
        && DRAWN.matcher(cell.text()).matches();
  }

  private static boolean isSummary(Cell first) {
    String text = first.text();
    char last = text.charAt(text.length() - 1);
    boolean number = isDigit(text.charAt(0)) && isDigit(last);
    return !number
        && text.length() < 60
        && SUMMARY_WORDS.matcher(text.replaceFirst("\\s*[:=].*$", "")).matches();
  }

  private static boolean isDigit(char letter) {
    return letter >= '0' && letter <= '9';
  }

  /** A note has no digits where measures stand, and no short tag with digits where tags stand. */
  static boolean isNote(Row row, Header header) {
    for (Map<Field, Heading> block : header.blocks()) {
      for (Map.Entry<Field, Heading> each : block.entrySet()) {
        Cell cell = row.cell(each.getValue().column());
        boolean measure =
            each.getKey() == Field.LENGTH || each.getKey().diameter() || each.getKey().girth();
        boolean tag = each.getKey() == Field.TAG;
        boolean text = cell.kind() == Cell.Kind.TEXT;
        boolean telling = !cell.isBlank() && (!text || hasDigit(cell.text()));
        if (measure && telling && !isSentence(cell)
            || tag && telling && cell.text().length() < TAG_LETTERS) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean hasDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (isDigit(text.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSentence(Cell cell) {
    return cell.text().length() > SENTENCE_LETTERS
        && cell.kind() == Cell.Kind.TEXT
        && cell.text().split("\\s+").length > 5;
  }
}
