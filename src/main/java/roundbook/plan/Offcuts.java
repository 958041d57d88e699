package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.problem.Value;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;

/** Sorts what is left over by length, with a use for each band. */
final class Offcuts {
  private static final String SECTION = "offcuts";

  private final QuantityLines lines;

  Offcuts(QuantityLines lines) {
    this.lines = lines;
  }

  void add(List<Log> whole, List<Piece> pieces, Takeoff takeoff) {
    lines.length(
        SECTION,
        "whole_logs",
        sum(whole.stream().map(Log::length).toList()),
        Value.count(whole.size()));
    List<Length> offcuts = new ArrayList<>();
    for (Piece cut : pieces) {
      offcuts.addAll(List.of(cut.cutOffButt(), cut.fallsOff()));
    }
    List<Length> cutOut = cutOut(takeoff);
    bands(Stream.concat(offcuts.stream(), cutOut.stream()).toList());
    Length waste = sum(offcuts);
    Length tallied = sum(pieces.stream().map(piece -> piece.log().length()).toList());
    lines.length(SECTION, "taken_off", waste);
    lines.length(SECTION, "cut_out", sum(cutOut), Value.count(cutOut.size()));
    double share = 100.0 * waste.nanometres() / tallied.nanometres();
    lines.percent(SECTION, "share", share);
  }

  /** What falls out of an opening from each whole log that it cuts in two. */
  private static List<Length> cutOut(Takeoff takeoff) {
    return takeoff.openings().stream()
        .flatMap(
            each ->
                each.of(CutExtent.THROUGH).stream()
                    .filter(cut -> !cut.log().isShared())
                    .map(cut -> each.opening().width()))
        .toList();
  }

  private void bands(List<Length> offcuts) {
    Length eight = lines.metric() ? Length.ofMillimetres(2400) : Length.ofInches(96);
    Length four = lines.metric() ? Length.ofMillimetres(1200) : Length.ofInches(48);
    band("long_offcuts", offcuts.stream().filter(each -> !each.isLessThan(eight)).toList());
    band(
        "middling_offcuts",
        offcuts.stream().filter(each -> each.isLessThan(eight) && !each.isLessThan(four)).toList());
    band(
        "short_offcuts",
        offcuts.stream().filter(each -> each.isLessThan(four) && !each.isZero()).toList());
  }

  private void band(String item, List<Length> inside) {
    lines.length(SECTION, item, sum(inside), Value.count(inside.size()));
  }

  private static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }
}
