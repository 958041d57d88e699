package roundbook.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import roundbook.exchange.Effect;
import roundbook.exchange.Reason;
import roundbook.exchange.Substitute;
import roundbook.page.PlainTable;
import roundbook.plan.Plan;
import roundbook.report.words.Decimals;
import roundbook.stack.FilledPlace;

/** Spares, substitutes and reasons as plain tables; scores are in square inches in every job. */
final class ExchangeTables {
  private final Plan plan;
  private final Decimals decimals;

  private ExchangeTables(Plan plan, Decimals decimals) {
    this.plan = plan;
    this.decimals = decimals;
  }

  static List<PlainTable> of(Plan plan, Decimals decimals) {
    ExchangeTables tables = new ExchangeTables(plan, decimals);
    return List.of(tables.spares(), tables.reasons());
  }

  private PlainTable spares() {
    return new PlainTable(
        "spares",
        decimals.header(
            "round,wall,log,spare,cut_off_butt_#,least_gap_#,most_gap_#,flags_before,flags_after,"
                + "score_change_in2"),
        plan.exchanges().substitutes().stream().map(this::row).toList());
  }

  private List<String> row(Substitute each) {
    Effect effect = each.effect();
    FilledPlace placed = each.placed();
    List<String> row = new ArrayList<>();
    row.add(String.valueOf(placed.round()));
    row.add(placed.wall().name());
    row.add(each.out());
    row.add(each.in().log().tag());
    row.addAll(decimals.of(each.in().cutOffButt(), effect.least(), effect.most()));
    row.add(String.valueOf(effect.flagsBefore()));
    row.add(String.valueOf(effect.flagsAfter()));
    row.add(score(effect.change()));
    return row;
  }

  private PlainTable reasons() {
    return new PlainTable(
        "reasons",
        decimals.header(
            "round,thin_#,thick_#,on_hand_thin_#,on_hand_thick_#,thicker_above,long_on_short,"
                + "next_out,next_in,next_in_round,next_in_wall,next_cost_in2"),
        plan.exchanges().reasons().stream().map(this::row).toList());
  }

  private List<String> row(Reason reason) {
    List<String> row = new ArrayList<>();
    row.add(String.valueOf(reason.round()));
    row.addAll(decimals.of(reason.thin(), reason.thick(), reason.handThin(), reason.handThick()));
    row.add(String.valueOf(reason.thickerAbove()));
    row.add(String.valueOf(reason.longOnShort()));
    row.addAll(reason.next().map(ExchangeTables::next).orElse(List.of("", "", "", "", "")));
    return row;
  }

  private static List<String> next(Reason.Exchange next) {
    return List.of(
        next.out().tags(),
        next.in(),
        next.from().map(log -> String.valueOf(log.round())).orElse(""),
        next.from().map(log -> log.wall().name()).orElse(""),
        score(next.cost()));
  }

  private static String score(double squareInches) {
    return String.format(Locale.ROOT, "%.4f", squareInches);
  }
}
