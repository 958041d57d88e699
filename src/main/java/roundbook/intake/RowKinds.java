package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import roundbook.heading.CellWords;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/** Tells what the rows under a tally's headings are. */
final class RowKinds {
  private static final Pattern DRAWN = Pattern.compile("[-=_.*#~+\\s]+");
  private static final int TAG_LETTERS = 12;

  /** Six words have five blanks between them and a letter each. */
  private static final int SENTENCE_LETTERS = 10;

  private final Header header;
  private final CellWords words;
  private final List<Part> parts = new ArrayList<>();

  /** The columns from one block's end to the next. */
  private record Part(Map<Field, Heading> block, int first, int last) {
    boolean holds(Cell cell) {
      return cell.column() >= first && cell.column() <= last;
    }

    Cell tag(Row row) {
      Heading tag = block.get(Field.TAG);
      return tag == null ? Cell.blank(0) : row.cell(tag.column());
    }

    boolean isMeasure(Cell cell) {
      return block.entrySet().stream()
          .anyMatch(
              each ->
                  each.getValue().column() == cell.column() && RowKinds.isMeasure(each.getKey()));
    }
  }

  RowKinds(Header header, CellWords words) {
    this.header = header;
    this.words = words;
    int first = 1;
    for (int i = 0; i < header.blocks().size(); i++) {
      Map<Field, Heading> block = header.blocks().get(i);
      boolean end = i + 1 == header.blocks().size();
      int last =
          end
              ? Integer.MAX_VALUE
              : block.values().stream().mapToInt(Heading::column).max().orElse(first);
      parts.add(new Part(block, first, last));
      first = last + 1;
    }
  }

  /** Tells what a row is. */
  RowKind of(Row row) {
    boolean only = true;
    boolean drawn = true;
    int filled = 0;
    for (Cell cell : row.cells()) {
      if (!cell.isBlank()) {
        filled++;
        boolean text = cell.kind() == CellKind.TEXT;
        only &= text && !Character.isDigit(cell.text().charAt(0));
        drawn = drawn && text && isDrawn(cell);
      }
    }
    if (drawn) {
      return RowKind.RULE;
    }
    if (isSummary(row)) {
      return RowKind.SUMMARY;
    }
    if (only && filled > 1) {
      return RowKind.HEADINGS;
    }
    return isNote(row) ? RowKind.NOTE : isNumbered(row) ? RowKind.NUMBERED : RowKind.LOG;
  }

  private static boolean isDrawn(Cell cell) {
    return !Character.isLetterOrDigit(cell.text().charAt(0))
        && DRAWN.matcher(cell.text()).matches();
  }

  /** Returns whether a row holds figures over others in every block that it holds anything in. */
  private boolean isSummary(Row row) {
    boolean any = false;
    for (int i = 0; i < parts.size(); i++) {
      if (isFilled(row, i)) {
        if (!isSummary(row, i)) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  /** Returns the column of the word that names the figures of a row. */
  int summaryColumn(Row row) {
    return row.filled().stream()
        .filter(cell -> cell.kind() == CellKind.TEXT && words.isSummary(cell.text()))
        .findFirst()
        .orElse(row.filled().get(0))
        .column();
  }

  private boolean isFilled(Row row, int block) {
    for (Cell cell : row.cells()) {
      if (!cell.isBlank() && parts.get(block).holds(cell)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns whether a row holds figures over other rows in one block. Beside a tag, only a word in
   * the place of a measure or before all else says so: a grade may be average.
   */
  boolean isSummary(Row row, int block) {
    Part part = parts.get(block);
    Cell tag = part.tag(row);
    boolean first = true;
    for (Cell cell : row.cells()) {
      if (!cell.isBlank() && part.holds(cell)) {
        boolean telling = first || tag.isBlank() || cell == tag || part.isMeasure(cell);
        if (telling && cell.kind() == CellKind.TEXT && words.isSummary(cell.text())) {
          return true;
        }
        first = false;
      }
    }
    return false;
  }

  /** A note has no digits where measures stand, and no short tag with digits where tags stand. */
  boolean isNote(Row row) {
    for (Map<Field, Heading> block : header.blocks()) {
      for (Map.Entry<Field, Heading> each : block.entrySet()) {
        Cell cell = row.cell(each.getValue().column());
        boolean text = cell.kind() == CellKind.TEXT;
        boolean telling = !cell.isBlank() && (!text || hasDigit(cell.text()));
        boolean tag = each.getKey() == Field.TAG;
        if (isMeasure(each.getKey()) && (telling || words.isDitto(cell.text())) && !isSentence(cell)
            || tag && telling && cell.text().length() < TAG_LETTERS) {
          return false;
        }
      }
    }
    return true;
  }

  /** Returns whether a row holds nothing but the number of a log that was never written in. */
  private boolean isNumbered(Row row) {
    int filled = 0;
    for (Cell cell : row.cells()) {
      filled += cell.isBlank() ? 0 : 1;
      if (filled > parts.size()) {
        return false;
      }
    }
    return row.filled().stream().allMatch(this::isName);
  }

  private boolean isName(Cell cell) {
    return header.blocks().stream()
        .map(block -> block.get(Field.TAG))
        .anyMatch(tag -> tag != null && tag.column() == cell.column());
  }

  private static boolean isMeasure(Field field) {
    return field == Field.LENGTH || field.diameter() || field.girth();
  }

  private static boolean hasDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSentence(Cell cell) {
    return cell.text().length() > SENTENCE_LETTERS
        && cell.kind() == CellKind.TEXT
        && cell.text().split("\\s+").length > 5;
  }
}
