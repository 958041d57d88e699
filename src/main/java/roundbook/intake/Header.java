package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.heading.Wording;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * The headings of a tally: where they stand and what each column means.
 *
 * @param row the row that holds them; the last one where they take several rows
 * @param blocks the columns of each block of logs; several where blocks stand side by side
 * @param others columns that are not read, each with the reason
 */
record Header(Row row, List<Map<Field, Heading>> blocks, List<Heading> others) {
  private static final int SEARCHED_ROWS = 100;

  /** Finds the headings; empty when no row has a length or diameter and one more. */
  static Optional<HeadingRow> find(Table table, Mapping mapping) {
    List<Row> rows = table.rows();
    HeadingRow best = null;
    for (int i = 0; i < Math.min(rows.size(), SEARCHED_ROWS); i++) {
      HeadingRow one = HeadingRow.at(rows, i, mapping);
      if (one.isTally() && (best == null || one.score() > best.score())) {
        best = one;
      } else if (best != null) {
        break;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Settles what each column of a heading row means, by the rows under it. */
  static Header of(HeadingRow found, Table table) {
    List<Row> under =
        table.rows().stream().filter(row -> row.number() > found.row().number()).toList();
    List<Heading> others = new ArrayList<>();
    List<Map<Field, Heading>> blocks = new ArrayList<>();
    for (List<Heading> block : Blocks.of(found.headings())) {
      Claims claims = new Claims(block, new Fit(under, table.decimalComma()));
      blocks.add(claims.settle());
      others.addAll(claims.unread());
    }
    return new Header(found.row(), blocks, others);
  }

  /** Returns the last column that has a heading. */
  int lastColumn() {
    return columns().stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  /** Returns the columns that have a heading. */
  Set<Integer> columns() {
    Set<Integer> columns = new TreeSet<>();
    blocks.forEach(block -> block.values().forEach(each -> columns.add(each.column())));
    others.forEach(each -> columns.add(each.column()));
    return columns;
  }

  /** Returns whether the headings stand in the first column, a log a column. */
  static boolean sideways(Table table, Mapping mapping) {
    List<String> texts =
        table.rows().stream()
            .limit(20)
            .map(row -> row.cell(1))
            .filter(cell -> cell.kind() == CellKind.TEXT)
            .map(Cell::text)
            .toList();
    Set<Field> fields =
        Wording.ofRow(texts, mapping.vocabulary()).stream()
            .map(words -> HeadingField.of(words).field())
            .flatMap(Optional::stream)
            .collect(Collectors.toSet());
    return fields.size() >= 3;
  }
}
