package roundbook.intake;

import java.util.Map;
import java.util.Optional;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Completes a row's diameters and checks that its ends and middle make a log. */
final class EndsCheck {
  private static final Length SLIGHT = Length.ofInchFraction(1, 4);

  private final Table table;
  private final Row row;
  private final Map<Field, Heading> block;
  private final Problems problems;
  private final String tag;

  EndsCheck(Table table, Row row, Map<Field, Heading> block, Problems problems, String tag) {
    this.table = table;
    this.row = row;
    this.block = block;
    this.problems = problems;
    this.tag = tag;
  }

  /** Returns the diameters, ends turned round where they are swapped; empty with an error. */
  Optional<Diameters> complete(Length length, LogReader.EnumOptional read, boolean upperLog) {
    Optional<Length> butt = read.get(Field.BUTT);
    Optional<Length> tip = read.get(Field.TIP);
    boolean swapped =
        butt.isPresent() && tip.isPresent() && tip.get().minus(butt.get()).isMoreThan(SLIGHT);
    Optional<Diameters> diameters =
        swapped
            ? Diameters.of(length, tip, read.get(Field.MID), butt, upperLog)
            : Diameters.of(length, butt, read.get(Field.MID), tip, upperLog);
    if (diameters.isEmpty()) {
      Heading any =
          block.getOrDefault(Field.BUTT, block.getOrDefault(Field.MID, block.get(Field.TIP)));
      int column = any == null ? 0 : any.column();
      say(ProblemCode.MISSING_CELL, column, Severity.ERROR, "the log has no diameter");
      return diameters;
    }
    missingCells(read);
    checkEnds(diameters.get(), swapped, butt, tip);
    checkTaper(length, diameters.get());
    return diameters;
  }

  private void missingCells(LogReader.EnumOptional read) {
    for (Field field : new Field[] {Field.BUTT, Field.MID, Field.TIP}) {
      if (block.containsKey(field) && read.get(field).isEmpty()) {
        String name = field.name().toLowerCase(java.util.Locale.ROOT);
        say(
            ProblemCode.MISSING_CELL,
            block.get(field).column(),
            Severity.WARNING,
            "no " + name + " diameter; it is estimated");
      }
    }
  }

  private void checkEnds(
      Diameters diameters, boolean swapped, Optional<Length> butt, Optional<Length> tip) {
    if (swapped) {
      say(
          ProblemCode.BUTT_TIP_SWAPPED,
          block.get(Field.BUTT).column(),
          Severity.WARNING,
          "the butt is thinner than the tip; read as butt "
              + inches(diameters.butt())
              + ", tip "
              + inches(diameters.tip()));
    } else if (butt.isPresent() && tip.isPresent() && tip.get().isMoreThan(butt.get())) {
      say(
          ProblemCode.BUTT_SMALLER_THAN_TIP,
          block.get(Field.BUTT).column(),
          Severity.WARNING,
          "the butt is a little thinner than the tip; kept as read");
    } else if (outside(diameters) && block.containsKey(Field.MID)) {
      say(
          ProblemCode.MID_OUTSIDE_ENDS,
          block.get(Field.MID).column(),
          Severity.WARNING,
          "the middle is not between butt and tip; kept as read");
    }
  }

  private static boolean outside(Diameters diameters) {
    Length low = diameters.butt().least(diameters.tip());
    Length high = diameters.butt().most(diameters.tip());
    return diameters.mid().isLessThan(low) || diameters.mid().isMoreThan(high);
  }

  private void checkTaper(Length length, Diameters diameters) {
    Length drop = diameters.butt().minus(diameters.tip()).absolute();
    if (drop.isMoreThan(length.timesRatio(6, 120))) {
      Field field = block.containsKey(Field.BUTT) ? Field.BUTT : Field.TIP;
      int column = block.containsKey(field) ? block.get(field).column() : 0;
      say(
          ProblemCode.TAPER_LARGE,
          column,
          Severity.WARNING,
          "the log tapers by more than 0.6 in a foot (5 cm a metre)");
    }
  }

  private void say(ProblemCode code, int column, Severity severity, String message) {
    String found = column == 0 ? "" : row.cell(column).text();
    problems.add(Problem.of(code, table.at(row, column), found, message).as(severity).about(tag));
  }

  private static String inches(Length length) {
    return length.decimal(roundbook.units.LengthUnit.INCH, 4).stripTrailingZeros().toPlainString()
        + " in";
  }
}
