package roundbook.intake;

import java.util.List;
import java.util.Map;
import roundbook.intake.LogReader.SeenLog;
import roundbook.job.Log.Source;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.Table;
import roundbook.units.LengthUnit;

/** Says once for a whole column what is doubtful about all of it. */
final class ColumnDoubts {
  private static final int FEW = 3;

  private final Table table;
  private final Header header;
  private final Map<Field, Heading> block;
  private final Problems problems;

  ColumnDoubts(Table table, Header header, Map<Field, Heading> block, Problems problems) {
    this.table = table;
    this.header = header;
    this.block = block;
    this.problems = problems;
  }

  void say(List<SeenLog> seen) {
    if (seen.isEmpty()) {
      return;
    }
    boolean estimated =
        seen.stream().anyMatch(log -> log.diameters().sources().mid() == Source.ESTIMATED);
    if (!block.containsKey(Field.MID) && estimated) {
      add(
          ProblemCode.MID_ESTIMATED,
          0,
          "there is no middle diameter: it is estimated from butt, tip and length for every log");
    }
    if (!block.containsKey(Field.TAG)) {
      add(ProblemCode.MISSING_ID, 0, "there is no tag column: logs are named by row and count");
    }
    block.keySet().stream()
        .filter(Field::girth)
        .findFirst()
        .ifPresent(
            field ->
                add(
                    ProblemCode.GIRTH_CONVERTED,
                    block.get(field).column(),
                    "girths were turned into diameters (girth / pi)"));
    feetDotInches(seen);
  }

  private void feetDotInches(List<SeenLog> seen) {
    Heading lengths = block.get(Field.LENGTH);
    if (lengths.unit().filter(unit -> unit == LengthUnit.FOOT).isEmpty() || seen.size() < FEW) {
      return;
    }
    List<String> texts =
        seen.stream().map(log -> log.row().cell(lengths.column())).map(Cell::text).toList();
    boolean all = texts.stream().allMatch(text -> text.matches("\\d+\\.(?:0\\d|1[01])|\\d+"));
    long notWhole = texts.stream().filter(text -> text.matches("\\d+\\.(?!00).*")).count();
    if (all && notWhole >= FEW) {
      add(
          ProblemCode.MAYBE_FEET_DOT_INCHES,
          lengths.column(),
          "every length ends in .00 to .11: were feet and inches meant? Read as decimal feet");
    }
  }

  private void add(ProblemCode code, int column, String message) {
    String found = column == 0 ? "" : header.row().cell(column).text();
    problems.add(Problem.of(code, table.at(header.row(), column), found, message));
  }
}
