package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.heading.Term;
import roundbook.heading.Wording;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/**
 * One to three rows read as headings together, before it is settled which column is read.
 *
 * @param top the first of the rows
 * @param row the last of the rows
 * @param headings what stands in each column, by rising column
 */
record HeadingRow(Row top, Row row, List<Heading> headings) {
  private static final int MOST_ROWS = 3;

  /** Reads a row, with the rows under it where all together say more. */
  static HeadingRow at(List<Row> rows, int index, Mapping mapping) {
    Row row = rows.get(index);
    HeadingRow best = of(row, mapping);
    List<Cell> upper = row.cells();
    boolean lone = row.filled().size() < 2;
    for (int i = 1; i < MOST_ROWS && index + i < rows.size(); i++) {
      Row lower = rows.get(index + i);
      if (lone && !isGroup(upper, mapping) || !isWords(lower)) {
        return best;
      }
      List<Cell> joined = joined(upper, lower, mapping);
      HeadingRow more = of(row, lower, joined, mapping);
      if (more.score() <= best.score()) {
        return best;
      }
      best = more;
      upper = joined;
      lone = false;
    }
    return best;
  }

  /** Reads a single row. */
  static HeadingRow of(Row row, Mapping mapping) {
    return of(row, row, row.cells(), mapping);
  }

  /** Reads a row under another that stood alone above it. */
  static HeadingRow under(Row upper, Row lower, Mapping mapping) {
    return of(upper, lower, joined(upper.cells(), lower, mapping), mapping);
  }

  private static HeadingRow of(Row top, Row row, List<Cell> cells, Mapping mapping) {
    List<Cell> texts = cells.stream().filter(cell -> cell.kind() == CellKind.TEXT).toList();
    List<Wording> wordings =
        Wording.ofRow(texts.stream().map(Cell::text).toList(), mapping.vocabulary());
    boolean globe = wordings.stream().anyMatch(words -> words.has(Term.PLACE));
    List<Heading> headings = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Cell cell = texts.get(i);
      String text = cell.text().replace('\n', ' ');
      Heading heading = Heading.of(cell.column(), text, wordings.get(i));
      boolean degrees =
          globe && cell.text().toLowerCase(java.util.Locale.ROOT).matches("long?\\.?");
      Heading own = degrees ? heading.unread(Unread.PLACE) : heading;
      headings.add(mapping.field(text).map(own::meaning).orElse(own));
    }
    return new HeadingRow(top, row, headings);
  }

  private static boolean isGroup(List<Cell> cells, Mapping mapping) {
    List<String> texts = cells.stream().map(Cell::text).filter(text -> !text.isEmpty()).toList();
    return Wording.ofRow(texts, mapping.vocabulary()).stream()
        .allMatch(
            words ->
                words.strangers().isEmpty()
                    && (words.has(Term.DIAMETER, Term.GIRTH, Term.LENGTH) || words.isUnitAlone()));
  }

  private static boolean isWords(Row row) {
    return row.filled().stream()
        .allMatch(
            cell ->
                cell.kind() == CellKind.TEXT
                    && (!Character.isDigit(cell.text().charAt(0)) || cell.text().length() == 1));
  }

  /** Joins two rows: a group's name above stands before each heading under it that it fits. */
  private static List<Cell> joined(List<Cell> upper, Row lower, Mapping mapping) {
    Row above = new Row(0, upper, false, false);
    List<Cell> cells = new ArrayList<>();
    String group = "";
    boolean lone = above.filled().size() < 2;
    for (int column : columnsOf(above, lower)) {
      String over = above.cell(column).text();
      String under = lower.cell(column).text();
      boolean goesOn = over.isEmpty() && !under.isEmpty();
      group = goesOn ? group : over;
      boolean own = (goesOn || lone) && !group.isEmpty() && standsAlone(under, mapping);
      group = own ? "" : group;
      cells.add(Cell.text(column, (group + "\n" + under).strip()));
    }
    return cells;
  }

  /** Returns whether a heading says by itself what no group of measures above it could add to. */
  private static boolean standsAlone(String text, Mapping mapping) {
    Wording words = Wording.ofRow(List.of(text), mapping.vocabulary()).get(0);
    Optional<Field> field = HeadingField.of(words).field();
    return field.filter(each -> !isPart(each)).isPresent() && words.strangers().isEmpty();
  }

  private static boolean isPart(Field field) {
    return field.diameter() || field == Field.DIAMETER || field == Field.RUNNING;
  }

  private static Set<Integer> columnsOf(Row upper, Row lower) {
    Set<Integer> columns = new TreeSet<>();
    upper.filled().forEach(cell -> columns.add(cell.column()));
    lower.filled().forEach(cell -> columns.add(cell.column()));
    return columns;
  }

  /** Returns how much the row says: a meaning counts for two, a unit of a measure for one. */
  int score() {
    int score = 0;
    for (Heading heading : headings) {
      Field field = heading.field().orElse(null);
      boolean united = heading.unit().isPresent() && isMeasure(field);
      score += field == null ? 0 : united ? 3 : 2;
    }
    return score;
  }

  private static boolean isMeasure(Field field) {
    return field != null
        && (field.diameter()
            || field.girth()
            || field == Field.LENGTH
            || field == Field.DBH
            || field == Field.DIAMETER);
  }

  /** Returns whether the row heads a tally: it names a length or diameter and one thing more. */
  boolean isTally() {
    Set<Field> fields =
        headings.stream()
            .map(Heading::field)
            .flatMap(Optional::stream)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Field.class)));
    return fields.stream().anyMatch(HeadingRow::isMeasure) && fields.size() >= 2 || isFeetPair();
  }

  private boolean isFeetPair() {
    return headings.stream().filter(each -> each.wording().isUnitAlone()).count() >= 2
        && headings.stream().anyMatch(each -> each.field().filter(Field::diameter).isPresent());
  }

  /** Returns whether another row says the same again, column by column, units too if it has any. */
  boolean isRepeatedBy(HeadingRow other) {
    boolean units = other.headings.stream().anyMatch(heading -> heading.unit().isPresent());
    return meanings(units).equals(other.meanings(units));
  }

  private List<String> meanings(boolean units) {
    return headings.stream()
        .filter(heading -> heading.field().isPresent())
        .map(
            heading ->
                heading.field().get()
                    + ":"
                    + heading.column()
                    + (units ? heading.unit().map(Object::toString).orElse("") : ""))
        .toList();
  }

  /** Returns whether it holds nothing but units. */
  boolean isUnits() {
    return headings.stream().allMatch(heading -> heading.wording().isUnitAlone())
        && !headings.isEmpty();
  }
}
