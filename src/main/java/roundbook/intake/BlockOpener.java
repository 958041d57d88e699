package roundbook.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.heading.CellWords;
import roundbook.heading.Term;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Makes ready to read the blocks under a tally's headings: whether all is there that is needed, and
 * in which units; says what keeps a block from being read.
 *
 * @param table the tally
 * @param header its headings
 * @param mapping what the user says of its columns
 * @param words understands words in cells
 * @param problems takes what is found
 */
record BlockOpener(
    Table table, Header header, Mapping mapping, CellWords words, Problems problems) {
  /** Returns a block that can be read; empty with an error where it cannot. */
  Optional<Block> open(Map<Field, Heading> columns, List<Row> sample) {
    if (!isComplete(columns)) {
      return Optional.empty();
    }
    Heading lengths = columns.get(Field.LENGTH);
    boolean stated = HyphenFeet.isStated(lengths);
    boolean meant = !stated && HyphenFeet.isMeant(lengths, sample);
    boolean comma = table.decimalComma();
    Units units = Units.of(columns, mapping, sample, comma, meant);
    Readings readings = new Readings(table, stated || meant, lengths);
    Outliers outliers = new Outliers(columns, units, sample, comma);
    Block block = new Block(table, header, columns, units, problems, readings, outliers, words);
    if (meant) {
      block.say(block.ofColumn(ProblemCode.UNIT_ASSUMED, "hyphen", Optional.of(lengths)));
    }
    return isCertain(block, sample) && unitsTold(block) ? Optional.of(block) : Optional.empty();
  }

  /** Returns whether a block has all that is needed, so that rows under it would be logs. */
  boolean hasLengths(Map<Field, Heading> columns) {
    return columns.containsKey(Field.LENGTH)
        && columns.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
  }

  private boolean isComplete(Map<Field, Heading> columns) {
    if (hasLengths(columns)) {
      return true;
    }
    boolean diameter =
        columns.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
    problems.add((diameter ? missing("length") : missingDiameter(columns)).remedyOf("mid-column"));
    return false;
  }

  private Problem missingDiameter(Map<Field, Heading> columns) {
    if (columns.containsKey(Field.DIAMETER)) {
      return missing("where").with("heading", columns.get(Field.DIAMETER).text());
    }
    return missing(columns.containsKey(Field.DBH) ? "breast-height" : "diameter");
  }

  private Problem missing(String variant) {
    return Problem.of(ProblemCode.MISSING_COLUMN, variant, table.at(header.row()));
  }

  /** Asks about two units in one heading, and about eighths of inches in a column of their own. */
  private boolean isCertain(Block block, List<Row> sample) {
    boolean certain = true;
    for (Map.Entry<Field, Heading> each : block.columns().entrySet()) {
      Heading heading = each.getValue();
      boolean along = each.getKey() == Field.LENGTH;
      boolean told = along ? mapping.length().isPresent() : mapping.diameter().isPresent();
      boolean measure = along || each.getKey().diameter() || each.getKey().girth();
      if (measure && heading.wording().hasTwoUnits() && !told && Units.isBare(heading, sample)) {
        block.say(
            block
                .ofColumn(ProblemCode.UNIT_UNKNOWN, "two", Optional.of(heading))
                .with("heading", heading.text()));
        certain = false;
      }
    }
    for (Heading other : header.others()) {
      if (other.unread() == Unread.EIGHTHS && other.wording().has(Term.BUTT, Term.MID, Term.TIP)) {
        block.say(
            block
                .ofColumn(ProblemCode.UNIT_UNKNOWN, "eighths", Optional.of(other))
                .remedyOf("eighths"));
        certain = false;
      }
    }
    return certain;
  }

  private boolean unitsTold(Block block) {
    Units units = block.units();
    if (units.asking().isEmpty()) {
      return true;
    }
    if (units.assumed()) {
      block.say(
          block
              .ofColumn(ProblemCode.UNIT_ASSUMED, "taken", units.asking())
              .with("length", units.length().orElseThrow().symbol())
              .with("diameter", units.diameter().orElseThrow().symbol()));
      return true;
    }
    List<Phrase> pairs = units.plausible().stream().map(Units.Pair::phrase).toList();
    block.say(
        pairs.isEmpty()
            ? block.ofColumn(ProblemCode.UNIT_UNKNOWN, "no-fit", units.asking())
            : block
                .ofColumn(ProblemCode.UNIT_UNKNOWN, "more", units.asking())
                .with("pairs", Value.list("list.comma-or", pairs)));
    return false;
  }
}
