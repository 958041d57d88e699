package roundbook.page;

import java.util.List;

/**
 * A table of plain text, one header row, for a file of values.
 *
 * @param name the file's name without ending, such as {@code rounds}
 * @param header the headings
 * @param rows the rows, each as long as the header; no value is null
 */
public record PlainTable(String name, List<String> header, List<List<String>> rows) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a row is not as long as the header
   */
  public PlainTable {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
    int wide = header.size();
    if (rows.stream().anyMatch(row -> row.size() != wide)) {
      throw new IllegalArgumentException(name + ": a row is not as long as the header");
    }
  }

  /** Returns the values of a column from the top down. */
  public List<String> column(String heading) {
    int index = header.indexOf(heading);
    return rows.stream().map(row -> row.get(index)).toList();
  }
}
