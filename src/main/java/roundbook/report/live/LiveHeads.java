package roundbook.report.live;

import java.util.Locale;
import roundbook.page.Cell;
import roundbook.page.Role;

/** The headings of the working sheet's tables, in the workbook's language. */
final class LiveHeads {
  private LiveHeads() {}

  /** Returns the heading of a column: the text of {@code working.table.column}. */
  static Cell of(LiveContext live, String table, Enum<?> column) {
    String key = "working." + table + "." + column.name().toLowerCase(Locale.ROOT);
    return Cell.text(live.text(key)).role(Role.COLUMN_HEAD);
  }
}
