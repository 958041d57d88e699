package roundbook.report.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.exchange.Effect;
import roundbook.exchange.Reason;
import roundbook.exchange.Reason.Exchange;
import roundbook.exchange.Substitute;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;

/** Says in words why a round has its logs, and what a spare would do. */
public final class ExchangeWords {
  private final CrewContext context;
  private final Cells cells;

  public ExchangeWords(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
  }

  /**
   * Returns one sentence or two on a round: sizes, order, spread, long logs, the next best; empty
   * when it is cut.
   */
  public String why(int round) {
    return context.plan().exchanges().reasons().stream()
        .filter(reason -> reason.round() == round)
        .findFirst()
        .map(this::why)
        .orElse("");
  }

  private String why(Reason reason) {
    String sizes =
        context.text(
            "why.sizes",
            cells.formats().mark(reason.thin()),
            cells.withUnit(reason.thick()),
            cells.formats().mark(reason.handThin()),
            cells.withUnit(reason.handThick()),
            cells.withUnit(reason.spread()));
    return sizes
        + thicker(reason)
        + spent(reason)
        + "."
        + next(reason, context.plan().exchanges().score());
  }

  private String thicker(Reason reason) {
    if (reason.round() == context.plan().rounds()) {
      return "";
    }
    int above = reason.thickerAbove();
    String key = above == 0 ? "why.low.all" : above == 1 ? "why.low.one" : "why.low.some";
    return context.text(key, above);
  }

  private String spent(Reason reason) {
    int spent = reason.longOnShort();
    return spent == 0 ? "" : context.text(spent == 1 ? "why.long.one" : "why.long.some", spent);
  }

  private String next(Reason reason, double score) {
    Optional<Exchange> next = reason.next();
    if (next.isEmpty()) {
      return "";
    }
    Exchange exchange = next.get();
    String from =
        exchange
            .from()
            .map(log -> context.text("why.from", log.round(), log.wall().name()))
            .orElse(context.text("why.from.spare"));
    return " "
        + context.text(
            "why.next",
            exchange.in(),
            from,
            exchange.out().tags(),
            inThousandths(exchange.cost()),
            inThousandths(score));
  }

  /** Returns square inches to three decimals, with a proper minus and the language's mark. */
  public String inThousandths(double squareInches) {
    String plain = String.format(Locale.ROOT, "%.3f", Math.abs(squareInches));
    boolean minus = squareInches < 0 && !plain.equals("0.000");
    return (minus ? "−" : "") + context.words().number(plain);
  }

  /** Returns what a substitute would do to the flags. */
  public String verdict(Effect effect) {
    int before = effect.flagsBefore();
    int cleared = effect.cleared();
    if (cleared < 0) {
      return context.text("spares.adds", -cleared);
    }
    if (cleared == 0) {
      return before == 0 ? context.text("spares.clean") : context.text("spares.stays", before);
    }
    if (cleared < before) {
      return context.text("spares.clears", cleared, before);
    }
    String all = before == 1 ? "spares.clears.one" : "spares.clears.both";
    return before > 2 ? context.text("spares.clears.all", before) : context.text(all);
  }

  /** Returns the spares that would clear flags of a round, the most first; empty when none do. */
  public String cures(int round) {
    return context.plan().exchanges().substitutes().stream()
        .filter(each -> each.placed().round() == round && each.effect().cleared() > 0)
        .sorted(Comparator.comparingInt((Substitute each) -> -each.effect().cleared()))
        .limit(2)
        .map(this::cure)
        .collect(Collectors.joining(" "));
  }

  private String cure(Substitute each) {
    return context.text(
        "spares.cure",
        each.in().log().tag(),
        each.out(),
        each.placed().wall().name(),
        verdict(each.effect()));
  }

  /** Returns places as walls with their rounds, such as {@code N 1–9 · S 1–4, 6}. */
  public String places(List<FilledPlace> places) {
    return context.plan().job().building().walls().stream()
        .map(wall -> rounds(places, wall))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" · "));
  }

  private static String rounds(List<FilledPlace> places, Wall wall) {
    List<Integer> rounds =
        places.stream()
            .filter(place -> place.wall().equals(wall))
            .map(FilledPlace::round)
            .sorted()
            .toList();
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= rounds.size(); i++) {
      if (i == rounds.size() || rounds.get(i) != rounds.get(i - 1) + 1) {
        int low = rounds.get(from);
        int high = rounds.get(i - 1);
        parts.add(low == high ? "" + low : low + "–" + high);
        from = i;
      }
    }
    return parts.isEmpty() ? "" : wall.name() + " " + String.join(", ", parts);
  }
}
