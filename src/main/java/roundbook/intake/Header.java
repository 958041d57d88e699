package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * The headings of a tally: where they stand and what each column means.
 *
 * @param row the row that holds them; the last one where they take two rows
 * @param blocks the columns of each block of logs; several where blocks stand side by side
 * @param others columns that have a heading without a meaning of ours
 */
record Header(Row row, List<Map<Field, Heading>> blocks, List<Heading> others) {
  private static final int SEARCHED_ROWS = 60;

  /** Finds the headings; empty when no row has a length or diameter and one more. */
  static Optional<Header> find(Table table) {
    List<Row> rows = table.rows();
    Header best = null;
    for (int i = 0; i < Math.min(rows.size(), SEARCHED_ROWS); i++) {
      Header one = of(rows.get(i), rows.get(i).filled());
      Header two = i + 1 < rows.size() ? joined(rows.get(i), rows.get(i + 1)) : one;
      Header better = two.score() > one.score() ? two : one;
      if (better.isTally() && (best == null || better.score() > best.score())) {
        best = better;
      }
      if (best != null && i > rows.indexOf(best.row()) + 1) {
        break;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Joins two heading rows: a group's name above stands before each heading under it. */
  private static Header joined(Row upper, Row lower) {
    List<Cell> cells = new ArrayList<>();
    String group = "";
    int last = Math.max(upper.cells().size(), lower.cells().size());
    for (int column = 1; column <= last + 1; column++) {
      String above = upper.cell(column).text();
      group = above.isEmpty() ? group : above;
      String below = lower.cell(column).text();
      if (!below.isEmpty() || !above.isEmpty()) {
        boolean whole = below.isEmpty() || Heading.of(column, below).field().isPresent();
        String text = below.isEmpty() ? above : whole ? below : group + " " + below;
        boolean swapped = Heading.of(column, text).field().isEmpty();
        cells.add(Cell.text(column, swapped ? below + " " + group : text));
      }
    }
    return of(lower, cells);
  }

  private static Header of(Row row, List<Cell> cells) {
    List<Map<Field, Heading>> blocks = new ArrayList<>();
    List<Heading> others = new ArrayList<>();
    Map<Field, Heading> block = new EnumMap<>(Field.class);
    for (Cell cell : cells) {
      Heading heading = Heading.of(cell.column(), cell.text());
      Field field = cell.kind() == Cell.Kind.TEXT ? heading.field().orElse(null) : null;
      if (field == null) {
        others.add(heading);
        continue;
      }
      if (block.containsKey(field) && startsBlock(field)) {
        blocks.add(block);
        block = new EnumMap<>(Field.class);
      }
      block.putIfAbsent(field, heading);
    }
    blocks.add(block);
    return new Header(row, blocks, others);
  }

  private static boolean startsBlock(Field field) {
    return field == Field.TAG || field == Field.LENGTH;
  }

  private int score() {
    return blocks.stream().mapToInt(Map::size).sum();
  }

  private boolean isTally() {
    Set<Field> fields = EnumSet.noneOf(Field.class);
    blocks.forEach(block -> fields.addAll(block.keySet()));
    boolean measured =
        fields.stream()
            .anyMatch(
                field ->
                    field.diameter()
                        || field.girth()
                        || field == Field.LENGTH
                        || field == Field.DBH);
    return measured && fields.size() >= 2;
  }

  /** Returns whether a field has a column in every block. */
  boolean has(Field field) {
    return blocks.stream().allMatch(block -> block.containsKey(field));
  }

  /** Returns the columns that have a heading. */
  Set<Integer> columns() {
    Set<Integer> columns = new HashSet<>();
    blocks.forEach(block -> block.values().forEach(each -> columns.add(each.column())));
    others.forEach(each -> columns.add(each.column()));
    return columns;
  }

  /** Returns whether a row repeats these headings. */
  boolean repeats(Row other) {
    List<String> own = row.filled().stream().map(Cell::text).toList();
    return own.equals(other.filled().stream().map(Cell::text).toList());
  }

  /** Returns whether the headings stand in the first column, a log a column. */
  static boolean sideways(Table table) {
    long fields =
        table.rows().stream()
            .limit(20)
            .map(row -> row.cell(1))
            .filter(cell -> cell.kind() == Cell.Kind.TEXT)
            .map(cell -> Heading.of(1, cell.text()).field())
            .filter(Optional::isPresent)
            .distinct()
            .count();
    return fields >= 3;
  }
}
