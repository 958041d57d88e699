package roundbook.report.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Pages of the workbook that are printed together.
 *
 * @param kind for whom
 * @param parts its pages in their order, sheet by sheet
 */
public record PrintSet(Kind kind, List<Part> parts) {
  /** Copies the list. */
  public PrintSet {
    parts = List.copyOf(parts);
  }

  /** For whom pages are printed. */
  public enum Kind {
    /** What is cut by now. */
    CREW,
    /** What is done with logs before they come to the wall. */
    YARD,
    /** What is kept and reckoned with. */
    OFFICE
  }

  /**
   * Pages of a sheet, by their numbers when all visible sheets are printed at once.
   *
   * @param sheet its name
   * @param first the first page
   * @param last the last page
   */
  public record Part(String sheet, int first, int last) {
    private String numbers() {
      return first == last ? "" + first : first + "–" + last;
    }
  }

  /** Returns the numbers of the pages as they are typed to print them, such as {@code 1–4, 9}. */
  public String numbers() {
    List<Part> joined = new ArrayList<>();
    for (Part part : parts) {
      Part before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (before != null && before.last() + 1 == part.first()) {
        joined.set(joined.size() - 1, new Part("", before.first(), part.last()));
      } else {
        joined.add(part);
      }
    }
    return joined.stream().map(Part::numbers).collect(Collectors.joining(", "));
  }

  /** Returns how many pages it has. */
  public int pages() {
    return parts.stream().mapToInt(part -> part.last() - part.first() + 1).sum();
  }

  /** Returns the names of its sheets. */
  public String sheets() {
    return parts.stream().map(Part::sheet).distinct().collect(Collectors.joining(", "));
  }
}
