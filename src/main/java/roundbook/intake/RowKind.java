package roundbook.intake;

import java.util.List;
import java.util.regex.Pattern;
import roundbook.table.Cell;
import roundbook.table.Row;

/** What a row under the headings is. */
enum RowKind {
  /** A log, or several alike. */
  LOG,
  /** The headings once more. */
  REPEATED_HEADER,
  /** A total, average or count. */
  SUMMARY,
  /** Free text. */
  NOTE;

  private static final Pattern SUMMARY_WORDS =
      Pattern.compile(
          "(?iu)(?:grand |sub)?-?\\s?total.*|sum|summe|gesamt.*|average|avg\\.?|mean|mittel(?:wert)?"
              + "|durchschnitt|min(?:imum)?|max(?:imum)?|count|totalt|summa|yhteensä|total(?:es)?"
              + "|moyenne|medel(?:värde)?|media|keskiarvo|\\d+ (?:logs?|pieces|pcs|stämme|stück"
              + "|billes|grumes|stockar|tukkia|trozas)");

  /** Tells what a row is. */
  static RowKind of(Row row, Header header) {
    if (header.repeats(row)) {
      return REPEATED_HEADER;
    }
    List<Cell> filled = row.filled();
    Cell first = filled.get(0);
    if (first.kind() == Cell.Kind.TEXT && SUMMARY_WORDS.matcher(first.text()).matches()) {
      return SUMMARY;
    }
    boolean textOnly = filled.stream().allMatch(cell -> cell.kind() == Cell.Kind.TEXT);
    boolean noDigitsAfter =
        filled.size() == 1 && (first.text().length() > 8 || !first.text().matches(".*\\d.*"));
    return textOnly && noDigitsAfter ? NOTE : LOG;
  }
}
