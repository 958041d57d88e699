package roundbook.report.table;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.page.PlainTable;
import roundbook.plan.Junction;
import roundbook.plan.Plan;
import roundbook.report.words.Decimals;
import roundbook.units.Length;

/**
 * Where logs cross, a row a junction and round: the log that goes through, at a corner the one laid
 * first, its saddle from its squared butt, and its marks there. Crossings are our own reckoning.
 */
final class JunctionTable {
  private JunctionTable() {}

  static PlainTable of(Plan plan, Decimals decimals) {
    Stream<Junction> junctions =
        plan.stack().courses().stream()
            .flatMap(course -> Junction.of(plan.stack(), course).stream());
    return new PlainColumns<Junction>(decimals)
        .number("round", row -> row.through().round())
        .text("through_wall", row -> row.through().wall().name())
        .text("through_log", row -> row.through().piece().log().tag())
        .text("wall", row -> row.wall().wall().name())
        .text("log", row -> row.wall().piece().log().tag())
        .text("kind", row -> row.kind().name().toLowerCase(Locale.ROOT))
        .length("saddle_from", row -> step(plan, row.from()))
        .length("saddle_to", row -> step(plan, row.to()))
        .lengthIf("upper", row -> row.upper().map(each -> step(plan, each)))
        .lengthIf("upper_outside", row -> row.upperOutside().map(each -> step(plan, each)))
        .lengthIf("lower", row -> row.lower().map(each -> step(plan, each)))
        .table("junctions", junctions.toList());
  }

  private static Length step(Plan plan, Length exact) {
    return Optional.of(exact).map(each -> each.roundedTo(plan.job().rules().printStep())).get();
  }
}
