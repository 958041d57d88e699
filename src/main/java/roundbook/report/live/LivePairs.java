package roundbook.report.live;

import java.util.List;
import roundbook.job.Piece;
import roundbook.page.Cell;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Half;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * The place of two short logs as formulas of both: its ends are theirs at the corners, its middle
 * is that of the log which lies at the middle of the wall, or lies on the line across the opening.
 */
final class LivePairs {
  private final LiveContext live;

  LivePairs(LiveContext live) {
    this.live = live;
  }

  /** Returns the cell of a column: what lies there, and its diameters. */
  Cell cell(PiecePlan pair, PieceColumn column) {
    String left = at(pair.halves().get(0), PieceColumn.SOURCE);
    String right = at(pair.halves().get(1), PieceColumn.SOURCE);
    String both = left + "," + right;
    return switch (column) {
      case PLANNED_TAG -> Cell.text(tag(pair));
      case SOURCE -> Cell.formula("IF(MIN(" + both + ")<0,MIN(" + both + "),MAX(" + both + "))", 0);
      case TAG ->
          Cell.formula(
              at(pair.halves().get(0), PieceColumn.TAG)
                  + "&\" + \"&"
                  + at(pair.halves().get(1), PieceColumn.TAG),
              tag(pair));
      case TO_NEAR -> Cell.length(pair.nearShoulder(), live.unit());
      case TO_FAR -> Cell.length(pair.placed().trimmed().minus(pair.farShoulder()), live.unit());
      case HALF -> Cell.length(pair.placed().trimmed().dividedBy(2), live.unit());
      default -> diameter(pair, column);
    };
  }

  private static String tag(PiecePlan pair) {
    return pair.placed().tags();
  }

  private String at(Half half, PieceColumn column) {
    return live.map().at(half.place(), column);
  }

  private Cell diameter(PiecePlan pair, PieceColumn column) {
    DiameterRow group = DiameterRow.of(column);
    int station = group.station(column);
    FilledPlace piece = group == DiameterRow.HEWN ? pair.placed() : live.expected(pair.placed());
    Length now =
        List.of(
                piece.butt(),
                piece.at(pair.nearShoulder()),
                piece.mid(),
                piece.at(pair.farShoulder()),
                piece.tip())
            .get(station);
    return group == DiameterRow.PLANNED
        ? Cell.length(now, live.unit())
        : Cell.formula(formula(pair, group, station), live.number(now));
  }

  private String formula(PiecePlan pair, DiameterRow group, int station) {
    if (station == 2) {
      return middle(pair, group);
    }
    boolean buttEnd = station < 2;
    boolean left = buttEnd != pair.placed().buttAtStart();
    Half half = pair.halves().get(left ? 0 : 1);
    boolean end = station == 0 || station == 4;
    int own = half.buttOut() ? (end ? 0 : 1) : (end ? 4 : 3);
    return at(half, group.column(own));
  }

  private String middle(PiecePlan pair, DiameterRow group) {
    Half left = pair.halves().get(0);
    Half right = pair.halves().get(1);
    Length trimmed = pair.placed().trimmed();
    Length middle = trimmed.dividedBy(2);
    Length from = left.placed().piece().trimmed();
    Length to = trimmed.minus(right.placed().piece().trimmed());
    if (middle.isLessThan(from)) {
      return inside(left, group, middle, pair);
    }
    if (middle.isMoreThan(to)) {
      return inside(right, group, trimmed.minus(middle), pair);
    }
    double share = share(middle.minus(from), to.minus(from));
    return between(inner(left, group), inner(right, group), share);
  }

  /** Returns a diameter of a short log between its middle and the opening. */
  private String inside(Half half, DiameterRow group, Length fromCorner, PiecePlan pair) {
    Length own = half.placed().piece().trimmed().dividedBy(2);
    double share = share(fromCorner.minus(own), own);
    Piece piece = live.expected(half.placed());
    double end = (half.buttOut() ? piece.tip() : piece.butt()).in(live.unit());
    double straight = live.number(piece.mid()) * (1 - share) + end * share;
    double bend = live.number(live.expected(pair.placed()).mid()) - straight;
    LiveSpot spot = LiveSpot.of(half);
    String typed =
        half.buttOut() ? spot.named(TypedBox.MEASURED_TIP) : spot.named(TypedBox.MEASURED_BUTT);
    String another = at(half, PieceColumn.SOURCE) + "<>0";
    String bent =
        group == DiameterRow.HEWN ? "OR(" + another + ",ISNUMBER(" + typed + "))" : another;
    String line = between(at(half, group.column(2)), inner(half, group), share);
    return line + "+IF(" + bent + ",0," + bend + ")";
  }

  private String inner(Half half, DiameterRow group) {
    return at(half, group.column(half.buttOut() ? 4 : 0));
  }

  private static String between(String one, String other, double share) {
    return one + "*" + (1 - share) + "+" + other + "*" + share;
  }

  private static double share(Length part, Length whole) {
    return (double) part.nanometres() / whole.nanometres();
  }
}
