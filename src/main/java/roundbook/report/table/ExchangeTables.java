package roundbook.report.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    return new PlainColumns<Substitute>(decimals)
        .count("round", each -> each.placed().round())
        .text("wall", each -> each.placed().wall().name())
        .text("log", Substitute::out)
        .text("spare", each -> each.in().log().tag())
        .length("cut_off_butt", each -> each.in().cutOffButt())
        .length("least_gap", each -> each.effect().least())
        .length("most_gap", each -> each.effect().most())
        .count("flags_before", each -> each.effect().flagsBefore())
        .count("flags_after", each -> each.effect().flagsAfter())
        .text("score_change_in2", each -> score(each.effect().change()))
        .table("spares", plan.exchanges().substitutes());
  }

  private PlainTable reasons() {
    return new PlainColumns<Reason>(decimals)
        .count("round", Reason::round)
        .length("thin", Reason::thin)
        .length("thick", Reason::thick)
        .length("on_hand_thin", Reason::handThin)
        .length("on_hand_thick", Reason::handThick)
        .count("thicker_above", Reason::thickerAbove)
        .count("long_on_short", Reason::longOnShort)
        .textIf("next_out", reason -> reason.next().map(next -> next.out().tags()))
        .textIf("next_in", reason -> reason.next().map(Reason.Exchange::in))
        .textIf("next_in_round", reason -> from(reason).map(log -> String.valueOf(log.round())))
        .textIf("next_in_wall", reason -> from(reason).map(log -> log.wall().name()))
        .textIf("next_cost_in2", reason -> reason.next().map(next -> score(next.cost())))
        .table("reasons", plan.exchanges().reasons());
  }

  private static Optional<FilledPlace> from(Reason reason) {
    return reason.next().flatMap(Reason.Exchange::from);
  }

  private static String score(double squareInches) {
    return String.format(Locale.ROOT, "%.4f", squareInches);
  }
}
