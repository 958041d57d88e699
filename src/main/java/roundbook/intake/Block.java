package roundbook.intake;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundbook.heading.CellWords;
import roundbook.job.Log.Bark;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * One block of logs in a tally, with all that reading a row of it needs.
 *
 * @param table the tally
 * @param header its headings
 * @param columns the block's own columns
 * @param units the units of its bare numbers
 * @param problems takes what is found
 * @param readings reads its measures
 * @param outliers finds values that another unit would explain
 * @param words understands words in cells
 */
record Block(
    Table table,
    Header header,
    Map<Field, Heading> columns,
    Units units,
    Problems problems,
    Readings readings,
    Outliers outliers,
    CellWords words) {

  boolean has(Field field) {
    return columns.containsKey(field);
  }

  Heading heading(Field field) {
    return columns.get(field);
  }

  /** Returns the cell of a field; blank where the block has no such column. */
  Cell cell(Row row, Field field) {
    Heading heading = columns.get(field);
    return heading == null ? Cell.blank(0) : row.cell(heading.column());
  }

  String text(Row row, Field field) {
    return cell(row, field).text();
  }

  boolean isBlank(Row row) {
    for (Heading heading : columns.values()) {
      if (!row.cell(heading.column()).isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** Returns whether a column is read for this block. */
  boolean isRead(int column) {
    return columns.entrySet().stream()
        .anyMatch(each -> each.getValue().column() == column && each.getKey() != Field.REMARKS);
  }

  /** Returns the field or girth that holds a diameter; null where there is neither. */
  Heading through(Field diameter) {
    Heading own = columns.get(diameter);
    return own == null ? columns.get(diameter.asGirth()) : own;
  }

  /** Returns whether one diameter is headed as over bark and another as under it. */
  boolean barksDiffer() {
    return barks().containsAll(EnumSet.of(Bark.OVER, Bark.OFF));
  }

  /** Returns whether the headings say over or under bark; over where they differ. */
  Bark bark() {
    Set<Bark> barks = barks();
    return barks.contains(Bark.OVER)
        ? Bark.OVER
        : barks.contains(Bark.OFF) ? Bark.OFF : Bark.UNSTATED;
  }

  private Set<Bark> barks() {
    Set<Bark> barks = EnumSet.noneOf(Bark.class);
    columns.forEach(
        (field, heading) -> {
          if (field.diameter() || field.girth()) {
            barks.add(heading.bark());
          }
        });
    return barks;
  }

  /**
   * Returns a problem of a cell.
   *
   * @param variant which of its code's sentences; empty where there is but one
   */
  Problem problem(Row row, int column, ProblemCode code, String variant) {
    String found = column == 0 ? "" : row.cell(column).text();
    return Problem.of(code, variant, table.at(row, column)).found(found);
  }

  void say(Problem problem) {
    problems.add(problem);
  }

  /** Says that a cell keeps its log from being used. */
  void refuse(Problem problem, String tag) {
    Phrase left =
        tag.isEmpty()
            ? Phrase.of("remedy.row-left-out")
            : Phrase.of("remedy.log-left-out").with("tag", tag);
    say(problem.as(Severity.ERROR).about(tag).alsoRemedy(left));
  }

  /**
   * Returns a problem of a whole column, or of the heading row where there is none.
   *
   * @param variant which of its code's sentences; empty where there is but one
   */
  Problem ofColumn(ProblemCode code, String variant, Optional<Heading> heading) {
    int column = heading.map(Heading::column).orElse(0);
    String found = heading.map(Heading::text).orElse("");
    return Problem.of(code, variant, table.at(header.row(), column)).found(found);
  }
}
