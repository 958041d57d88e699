package roundbook.report.live;

import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.page.Cell;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/** What one end of a log loses, as formulas, in the way of {@link NeckFit}. */
final class LiveEnd {
  /** From a column of the tip end to the same of the butt end. */
  private static final int APART = PieceColumn.TIP_NECK.ordinal() - PieceColumn.BUTT_NECK.ordinal();

  private final LiveContext live;
  private final LiveMap map;
  private final FilledPlace placed;
  private final NeckFit fit;
  private final boolean butt;
  private final Wall crossing;

  LiveEnd(LiveContext live, PiecePlan plan, boolean butt) {
    this.live = live;
    this.map = live.map();
    this.placed = plan.placed();
    this.fit = butt ? plan.buttFit() : plan.tipFit();
    this.butt = butt;
    this.crossing =
        butt ? placed.crossingAtButt(map.building()) : placed.crossingAtTip(map.building());
  }

  /** Returns the cell of a column of this end that holds a number. */
  Cell number(PieceColumn column) {
    return switch (column) {
      case BUTT_NECK, TIP_NECK -> Cell.formula(neck(), live.number(fit.neck().bearing()));
      case BUTT_WHOLE, TIP_WHOLE -> Cell.formula(whole(), fit.wholeInches() * inch());
      case BUTT_BEARS, TIP_BEARS -> Cell.formula(bears(), fit.bearingShare());
      default -> Cell.formula(over(), fit.woodAboveUpperInches() * inch());
    };
  }

  /** Returns where a value of this end stands, by the column of the tip end. */
  String at(PieceColumn ofTip) {
    return piece(butt ? PieceColumn.values()[ofTip.ordinal() - APART] : ofTip);
  }

  /** Returns the condition that the end is to be looked at, or worse. */
  String flagged() {
    String thin = "ROUND(" + at(PieceColumn.TIP_OVER) + "-" + rule(RuleLine.SHOULDER_LEAST);
    String look = "MIN(" + rule(RuleLine.BEARING_LOOK) + "," + rule(RuleLine.BEARING_STOP) + ")";
    String face = hasUpper() ? thin + ",6)<0," : "";
    return "OR(" + noFace() + "," + face + moreGone(look) + ")";
  }

  /** Returns the condition that the log may not lie there. */
  String stop() {
    String gone = moreGone(rule(RuleLine.BEARING_STOP));
    return "OR(" + noFace() + "," + off() + "," + gone + ")";
  }

  /** Returns the condition that there is no sawn face somewhere along the bearing. */
  String noFace() {
    return "ROUND(" + at(PieceColumn.TIP_NECK) + "-" + thickness() + ",6)<=0";
  }

  /** Returns the condition that the upper mark is off the inside face. */
  String off() {
    return hasUpper() ? "ROUND(" + at(PieceColumn.TIP_OVER) + ",6)<0" : "FALSE";
  }

  /** Returns whether an upper mark is cut on the log: something crosses above it. */
  boolean hasUpper() {
    return fit.corner().marks() != NeckFit.Marks.LOWER;
  }

  /** Returns whether the log is sawn flat underneath, all along. */
  private boolean isFlat() {
    return fit.corner().marks() == NeckFit.Marks.UPPER;
  }

  /** Returns the condition that the tail past the corner has wane. */
  String wane() {
    String along = map.wall(crossing, WallColumn.THICKNESS) + "+" + rule(RuleLine.OVERHANG);
    String drop = isFlat() ? "" : "+(" + along + ")/" + rule(RuleLine.SLOPE_RUN);
    String height = round(RoundColumn.LOWER) + drop;
    String least = "SQRT(" + thickness() + "^2+4*(" + height + ")^2)";
    return "ROUND(" + end() + "-" + least + ",6)<0";
  }

  private String moreGone(String share) {
    return "ROUND(1-" + at(PieceColumn.TIP_BEARS) + "-" + share + ",6)>0";
  }

  /** Returns the lesser of the diameters at the shoulder and at the corner line. */
  private String neck() {
    String overhang = rule(RuleLine.OVERHANG);
    String neck = "(" + map.wall(crossing, WallColumn.THICKNESS) + "+" + overhang + ")";
    String more = "(" + shoulder() + "-" + end() + ")*" + overhang + "/" + neck;
    return "MAX(0.001,MIN(" + shoulder() + "," + end() + "+" + more + "))";
  }

  /** Returns how far down the bearing is whole. */
  private String whole() {
    String reach = reach(at(PieceColumn.TIP_NECK));
    return "MIN(" + bottom() + ",MAX(" + round(RoundColumn.LOWER) + "," + reach + "))";
  }

  /** Returns the share of the bearing that is left. */
  private String bears() {
    if (isFlat()) {
      return "1";
    }
    String whole = at(PieceColumn.TIP_WHOLE);
    String lost =
        thickness()
            + "*("
            + bottom()
            + "-"
            + whole
            + ")-("
            + chords(bottom())
            + "-"
            + chords(whole);
    String all = thickness() + "*(" + bottom() + "-" + round(RoundColumn.LOWER) + ")";
    return "1-(" + lost + "))/(" + all + ")";
  }

  /** Returns the area of the round section between its centre and a height. */
  private String chords(String height) {
    String radius = at(PieceColumn.TIP_NECK) + "/2";
    String z = "MIN(" + height + "," + radius + ")";
    String half = "SQRT(MAX(0,(" + radius + ")^2-" + z + "^2))";
    return "(" + z + "*" + half + "+(" + radius + ")^2*ASIN(MIN(1," + z + "/(" + radius + "))))";
  }

  private String over() {
    return reach(shoulder()) + (hasUpper() ? "-" + round(RoundColumn.UPPER) : "");
  }

  /** Returns the reach of the sawn face on a diameter. */
  private String reach(String diameter) {
    return "SQRT(MAX(0," + diameter + "^2-" + thickness() + "^2))/2";
  }

  /** Returns the depth of the lower mark at the corner line. */
  private String bottom() {
    String least = live.number(NeckFit.LEAST_DROP) + "";
    String drop = "MAX(" + least + "," + map.wall(crossing, WallColumn.DROP) + ")";
    return "(" + round(RoundColumn.LOWER) + "+" + drop + ")";
  }

  private String end() {
    return piece(butt ? PieceColumn.BUTT : PieceColumn.TIP);
  }

  private String shoulder() {
    return piece(butt ? PieceColumn.NEAR : PieceColumn.FAR);
  }

  private String thickness() {
    return map.wall(placed.wall(), WallColumn.THICKNESS);
  }

  private String rule(RuleLine line) {
    return map.rule(line);
  }

  private String piece(PieceColumn column) {
    return map.piece(placed.round(), placed.wall(), column);
  }

  private String round(RoundColumn column) {
    return map.round(placed.round(), column);
  }

  private double inch() {
    return live.number(Length.ofInches(1));
  }
}
