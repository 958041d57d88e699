package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Adds up trimmed lengths, weights and what falls off. */
final class Quantities {
  private final List<Quantity> lines = new ArrayList<>();
  private final boolean metric;

  private Quantities(boolean metric) {
    this.metric = metric;
  }

  static List<Quantity> of(Job job, Stack stack, List<PiecePlan> pieces) {
    Quantities quantities = new Quantities(job.rules().metric());
    if (!stack.courses().isEmpty()) {
      quantities.logs(pieces);
      quantities.offcuts(pieces);
    }
    return List.copyOf(quantities.lines);
  }

  private void logs(List<PiecePlan> pieces) {
    lines.add(new Quantity("logs", "logs placed", pieces.size(), "count", ""));
    Length trimmed = sum(pieces.stream().map(piece -> piece.placed().piece().trimmed()).toList());
    lines.add(length("logs", "trimmed length", trimmed, ""));
    double weight =
        pieces.stream()
            .map(PiecePlan::weight)
            .mapToDouble(each -> metric ? each.kilograms() : each.pounds())
            .sum();
    lines.add(
        new Quantity(
            "logs",
            "green weight",
            weight,
            metric ? "kg" : "lb",
            "estimate, sawn wood before notches"));
  }

  private void offcuts(List<PiecePlan> pieces) {
    Length eight = metric ? Length.ofMillimetres(2400) : Length.ofInches(96);
    Length four = metric ? Length.ofMillimetres(1200) : Length.ofInches(48);
    List<Length> offcuts = new ArrayList<>();
    for (PiecePlan piece : pieces) {
      Piece cut = piece.placed().piece();
      offcuts.add(cut.cutOffButt());
      offcuts.add(cut.fallsOff());
    }
    band(offcuts, eight, null, "long offcuts", "joists, lintels, pieces beside a door");
    band(offcuts, four, eight, "middling offcuts", "treads, benches, test notches");
    band(offcuts, Length.ZERO, four, "short offcuts", "fillers, pegs, firewood");
    Length tallied =
        sum(pieces.stream().map(piece -> piece.placed().piece().log().length()).toList());
    Length waste = sum(offcuts);
    double share = 100.0 * waste.nanometres() / tallied.nanometres();
    lines.add(length("offcuts", "taken off in all", waste, "of the length tallied"));
    lines.add(new Quantity("offcuts", "share of the length tallied", share, "%", ""));
  }

  private void band(List<Length> offcuts, Length from, Length to, String item, String use) {
    List<Length> inside =
        offcuts.stream()
            .filter(each -> !each.isZero() && !each.isLessThan(from))
            .filter(each -> to == null || each.isLessThan(to))
            .toList();
    lines.add(length("offcuts", item, sum(inside), inside.size() + " pieces: " + use));
  }

  private Quantity length(String section, String item, Length length, String note) {
    LengthUnit unit = metric ? LengthUnit.METRE : LengthUnit.FOOT;
    return new Quantity(section, item, length.in(unit), unit.symbol(), note);
  }

  private static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }
}
