package roundbook.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.page.PlainTable;
import roundbook.plan.CrossCuts;
import roundbook.plan.CrossCuts.CutStem;
import roundbook.plan.CrossCuts.Part;
import roundbook.plan.Plan;
import roundbook.report.words.Decimals;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** The parts of stems as a plain table: a row a part, from the butt up, in the order of bucking. */
final class CrossCutTable {
  private CrossCutTable() {}

  private record Row(Stem stem, Part part) {
    /** Returns a diameter of the piece as trimmed, or squared off where it has no place. */
    Optional<Length> diameter(Length squared, Function<Piece, Length> where) {
      return part.log()
          .map(log -> new Piece(log, squared, log.length().minus(squared.times(2))))
          .map(piece -> part.placed().map(PlacedLog::piece).orElse(piece))
          .map(where);
    }
  }

  static PlainTable of(Plan plan, Decimals decimals) {
    Length squared = plan.job().rules().length(Setting.SQUARING_ALLOWANCE);
    List<Row> rows = new ArrayList<>();
    for (CutStem stem : CrossCuts.of(plan).stems()) {
      stem.parts().forEach(part -> rows.add(new Row(stem.stem(), part)));
    }
    return new PlainColumns<Row>(decimals)
        .text("stem", row -> row.stem().tag())
        .textIf("piece", row -> row.part().log().map(Log::tag))
        .length("from", row -> row.part().from())
        .length("raw", row -> row.part().raw())
        .lengthIf("butt", row -> row.diameter(squared, Piece::butt))
        .lengthIf("mid", row -> row.diameter(squared, Piece::mid))
        .lengthIf("tip", row -> row.diameter(squared, Piece::tip))
        .textIf("round", row -> row.part().placed().map(placed -> "" + placed.round()))
        .textIf("wall", row -> row.part().placed().map(placed -> placed.wall().name()))
        .text("use", row -> row.part().fate().name().toLowerCase(Locale.ROOT))
        .table("crosscuts", rows);
  }
}
