package roundbook.report.live;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** The gap under each log at three stations, with its flag, as formulas. */
public final class LiveGaps {
  private final LiveContext live;
  private final LiveMap map;

  LiveGaps(LiveContext live) {
    this.live = live;
    this.map = live.map();
  }

  /** Returns the joint under a log; empty in the first round. */
  public static Optional<Joint> under(LiveContext live, FilledPlace upper) {
    List<Joint> joints = live.plan().stack().joints(upper.wall());
    return upper.round() == 1 ? Optional.empty() : Optional.of(joints.get(upper.round() - 2));
  }

  /** Returns a cell of the gap under a log; an empty text in the first round. */
  Cell cell(FilledPlace upper, PieceColumn column) {
    return under(live, upper)
        .map(joint -> new Under(upper, joint).cell(column))
        .orElseGet(() -> Cell.text(""));
  }

  /** One joint's cells. */
  private final class Under {
    private final Joint joint;
    private final Wall wall;
    private final int round;

    Under(FilledPlace upper, Joint joint) {
      this.joint = joint;
      this.wall = upper.wall();
      this.round = upper.round();
    }

    /** Returns the cell of a column. */
    Cell cell(PieceColumn column) {
      return switch (column) {
        case LEFT_GAP -> formula(gap(column), joint.left());
        case MIDDLE_GAP -> formula(gap(column), joint.middle());
        case RIGHT_GAP -> formula(gap(column), joint.right());
        case LESS_BETWEEN -> Cell.length(least().minus(joint.least()), live.unit());
        case MORE_BETWEEN -> Cell.length(joint.most().minus(most()), live.unit());
        case LEAST_GAP -> formula(extreme("MIN", "-", PieceColumn.LESS_BETWEEN), joint.least());
        case MOST_GAP -> formula(extreme("MAX", "+", PieceColumn.MORE_BETWEEN), joint.most());
        default -> Cell.formula(flag(), joint.flag(live.rules()).symbol());
      };
    }

    /** Returns a cell of a formula and a length as planned. */
    private Cell formula(String expression, Length now) {
      return Cell.formula(expression, live.number(now));
    }

    /** Returns the least of the three gaps as planned. */
    private Length least() {
      return joint.left().least(joint.middle()).least(joint.right());
    }

    /** Returns the largest of the three gaps as planned. */
    private Length most() {
      return joint.left().most(joint.middle()).most(joint.right());
    }

    /** Returns where a value of the upper log stands. */
    private String at(PieceColumn column) {
      return map.piece(round, wall, column);
    }

    /** Returns a gap: the rise of the centre lines less half of both diameters. */
    private String gap(PieceColumn column) {
      String below = map.piece(round - 1, wall, PieceColumn.HEIGHT);
      String diameters =
          map.piece(round - 1, wall, station(joint.lower(), column))
              + "+"
              + at(station(joint.upper(), column));
      return at(PieceColumn.HEIGHT) + "-" + below + more(column) + "-(" + diameters + ")/2";
    }

    /** Returns how much further apart the logs are at a station by how their corners stand. */
    private String more(PieceColumn gap) {
      String left = more(PieceColumn.LEFT_LIFT, "");
      String right = more(PieceColumn.RIGHT_LIFT, "");
      return switch (gap) {
        case LEFT_GAP -> left;
        case RIGHT_GAP -> right;
        default ->
            more(PieceColumn.LEFT_LIFT, 1 - share() + "*")
                + more(PieceColumn.RIGHT_LIFT, share() + "*");
      };
    }

    private String more(PieceColumn lift, String factor) {
      return "+" + factor + "(" + at(lift) + "-" + map.piece(round - 1, wall, lift) + ")";
    }

    /** Returns how far the middle lies from the left inside face, as a share of the way. */
    private double share() {
      Length half = joint.lower().trimmed().dividedBy(2);
      double way = joint.rightFace().minus(joint.leftFace()).nanometres();
      return half.minus(joint.leftFace()).nanometres() / way;
    }

    /** Returns which diameter of a log lies at a gap's station, seen from outside. */
    private PieceColumn station(FilledPlace placed, PieceColumn gap) {
      if (gap == PieceColumn.MIDDLE_GAP) {
        return PieceColumn.MID;
      }
      boolean atButt = (gap == PieceColumn.RIGHT_GAP) == placed.buttAtStart();
      return atButt ? PieceColumn.NEAR : PieceColumn.FAR;
    }

    /**
     * Returns the least or largest gap between the inside faces, kinks of the profiles included.
     */
    private String extreme(String function, String sign, PieceColumn between) {
      String gaps =
          at(PieceColumn.LEFT_GAP)
              + ","
              + at(PieceColumn.MIDDLE_GAP)
              + ","
              + at(PieceColumn.RIGHT_GAP);
      return function + "(" + gaps + ")" + sign + "IF(" + asPlanned() + "," + at(between) + ",0)";
    }

    /** Returns whether both logs keep the shape they have here, so that kinks stay too. */
    private String asPlanned() {
      String ends =
          Stream.of(round - 1, round)
              .flatMap(number -> LiveSpot.of(live.piece(number, wall)).stream())
              .flatMap(spot -> spot.endsAsPlanned(live))
              .reduce((one, other) -> one + "," + other)
              .orElseThrow();
      String below = map.piece(round - 1, wall, PieceColumn.SOURCE);
      return "AND(" + at(PieceColumn.SOURCE) + "<=0," + below + "<=0," + ends + ")";
    }

    /** Returns the symbols of what is outside the limits, the printed value being compared. */
    private String flag() {
      String small = live.toStep(at(PieceColumn.LEAST_GAP)) + "<" + map.rule(RuleLine.GAP_LEAST);
      String large = live.toStep(at(PieceColumn.MOST_GAP)) + ">" + map.rule(RuleLine.GAP_MOST);
      return "IF(" + small + ",\"▼\",\"\")&IF(" + large + ",\"▲\",\"\")";
    }
  }
}
