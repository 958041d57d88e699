package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * The headings of a tally: where they stand and what each column means.
 *
 * @param row the row that holds them; the last one where they take two rows
 * @param blocks the columns of each block of logs; several where blocks stand side by side
 * @param others columns that have a heading without a meaning of ours
 * @param doubles columns that mean what another one means
 */
record Header(
    Row row, List<Map<Field, Heading>> blocks, List<Heading> others, List<Heading> doubles) {
  private static final int SEARCHED_ROWS = 100;

  /** Finds the headings; empty when no row has a length or diameter and one more. */
  static Optional<Header> find(Table table, Mapping mapping) {
    List<Row> rows = table.rows();
    Header best = null;
    for (int i = 0; i < Math.min(rows.size(), SEARCHED_ROWS); i++) {
      Header one = at(rows, i, mapping);
      if (one.isTally() && (best == null || one.score() > best.score())) {
        best = one;
      } else if (best != null) {
        break;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Reads the headings of a row, with the row under it where the two together say more. */
  static Header at(List<Row> rows, int index, Mapping mapping) {
    Row row = rows.get(index);
    Header one = of(row, row.cells(), mapping);
    if (index + 1 >= rows.size() || row.filled().size() < 2) {
      return one;
    }
    Header two = joined(row, rows.get(index + 1), mapping);
    return two.score() > one.score() ? two : one;
  }

  /** Reads a single row as headings. */
  static Header of(Row row, Mapping mapping) {
    return of(row, row.cells(), mapping);
  }

  /** Joins two heading rows: a group's name above stands before each heading under it. */
  private static Header joined(Row upper, Row lower, Mapping mapping) {
    List<Cell> cells = new ArrayList<>();
    String group = "";
    for (int column : columnsOf(upper, lower)) {
      String above = upper.cell(column).text();
      Cell under = lower.cell(column);
      if (!under.isBlank() && !isWord(under)) {
        return of(upper, upper.cells(), mapping);
      }
      group = above.isEmpty() && !under.isBlank() ? group : above;
      cells.add(Cell.text(column, (group + " " + under.text()).strip()));
    }
    return of(lower, cells, mapping);
  }

  private static boolean isWord(Cell cell) {
    return cell.kind() == Cell.Kind.TEXT && !Character.isDigit(cell.text().charAt(0));
  }

  private static Set<Integer> columnsOf(Row upper, Row lower) {
    Set<Integer> columns = new TreeSet<>();
    upper.filled().forEach(cell -> columns.add(cell.column()));
    lower.filled().forEach(cell -> columns.add(cell.column()));
    return columns;
  }

  private static Header of(Row row, List<Cell> cells, Mapping mapping) {
    Blocks blocks = new Blocks();
    for (Cell cell : cells) {
      if (cell.kind() == Cell.Kind.TEXT) {
        Heading heading = Heading.of(cell.column(), cell.text());
        blocks.add(mapping.field(cell.text()).map(heading::meaning).orElse(heading));
      }
    }
    blocks.end();
    return new Header(row, blocks.blocks(), blocks.others(), blocks.doubles());
  }

  /** Returns how much the row says: a meaning counts for two, a unit of a measure for one. */
  private int score() {
    int score = 0;
    for (Map<Field, Heading> block : blocks) {
      for (Map.Entry<Field, Heading> each : block.entrySet()) {
        boolean measure = isMeasure(each.getKey()) || each.getKey() == Field.LENGTH;
        score += measure && each.getValue().unit().isPresent() ? 3 : 2;
      }
    }
    return score;
  }

  private static boolean isMeasure(Field field) {
    return field.diameter() || field.girth() || field == Field.DBH || field == Field.DIAMETER;
  }

  /** Returns whether the row heads a tally: it names a length or diameter and one thing more. */
  boolean isTally() {
    Set<Field> fields = EnumSet.noneOf(Field.class);
    blocks.forEach(block -> fields.addAll(block.keySet()));
    boolean measured = fields.stream().anyMatch(field -> isMeasure(field) || field == Field.LENGTH);
    return measured && fields.size() >= 2;
  }

  /** Returns the last column that has a heading. */
  int lastColumn() {
    int last = 0;
    for (Map<Field, Heading> block : blocks) {
      last = Math.max(last, block.values().stream().mapToInt(Heading::column).max().orElse(0));
    }
    return Math.max(last, others.stream().mapToInt(Heading::column).max().orElse(0));
  }

  /** Returns the columns that have a heading. */
  Set<Integer> columns() {
    Set<Integer> columns = new TreeSet<>();
    blocks.forEach(block -> block.values().forEach(each -> columns.add(each.column())));
    others.forEach(each -> columns.add(each.column()));
    return columns;
  }

  /** Returns whether another heading row means the same, column by column. */
  boolean means(Header other) {
    return meanings(blocks).equals(meanings(other.blocks));
  }

  private static List<List<String>> meanings(List<Map<Field, Heading>> blocks) {
    return blocks.stream()
        .map(
            block ->
                block.entrySet().stream()
                    .map(each -> each.getKey() + ":" + each.getValue().column())
                    .toList())
        .toList();
  }

  /** Returns whether the headings stand in the first column, a log a column. */
  static boolean sideways(Table table) {
    long fields =
        table.rows().stream()
            .limit(20)
            .map(row -> row.cell(1))
            .filter(cell -> cell.kind() == Cell.Kind.TEXT)
            .map(cell -> Heading.of(1, cell.text()).field())
            .flatMap(Optional::stream)
            .distinct()
            .count();
    return fields >= 3;
  }
}
