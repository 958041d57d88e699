package roundbook.report.proof;

import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.proof.Pencil.Term;
import roundbook.report.proof.Pencil.Value;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Sums 7 and 8: heights from the bed up, and a gap over round 1. */
final class HeightSums {
  private final Lines lines;
  private final LiveContext live;
  private final LiveMap map;
  private final Stack stack;
  private final Notch notch;
  private final Pencil pencil;

  HeightSums(Lines lines) {
    this.lines = lines;
    this.live = lines.live();
    this.map = live.map();
    this.stack = live.plan().stack();
    this.notch = live.course(1).notch();
    this.pencil = lines.pencil();
  }

  void add() {
    heights();
    if (live.plan().rounds() > 1) {
      gap();
    }
  }

  /** Sum 7: centre lines and the tops that are read, from the bed up. */
  private void heights() {
    lines.begin();
    Value first = lines.of(RoundColumn.FIRST_HEIGHT, stack.firstHeights().get(0));
    Value firstTop = lines.of(RoundColumn.FIRST_LEVEL, stack.firstLevelHeight(1));
    Value second = lines.of(RoundColumn.SECOND_HEIGHT, stack.secondHeights().get(0));
    Value top = lines.of(RoundColumn.LEVEL_HEIGHT, stack.levelHeight(1));
    bed(first);
    rise("top", true, first, PieceColumn.UPPER, firstTop);
    rise("second", false, firstTop, PieceColumn.LOWER, second);
    if (live.plan().rounds() > 1) {
      rise("top", false, second, PieceColumn.UPPER, top);
      next(top, new Value(map.round(2, RoundColumn.FIRST_HEIGHT), stack.firstHeights().get(1)));
    }
  }

  /** The first centre lines: over a flat bed, or over the necks of half-log starters. */
  private void bed(Value first) {
    boolean starter = live.rules().text(Setting.FIRST_BED).equals("starter");
    Length bed = starter ? notch.upper() : Length.ZERO;
    Term base = starter ? pencil.mark(lines.of(RoundColumn.UPPER, bed)) : pencil.mark(bed);
    Term lower = mean(1, true, PieceColumn.LOWER, first.now().minus(bed));
    String key = starter ? "first.starter" : "first";
    lines.add(key, Pencil.sum(Lines.PLUS, base, lower), pencil.mark(first), live.names(true));
  }

  /** One height over another by a mark of the logs of one laying order. */
  private void rise(String key, boolean firstLaid, Value from, PieceColumn mark, Value to) {
    Term by = mean(1, firstLaid, mark, to.now().minus(from.now()));
    Term sum = Pencil.sum(Lines.PLUS, pencil.mark(from), by);
    lines.add(key, sum, pencil.mark(to), live.names(firstLaid));
  }

  /** The centre lines of round 2, which go on from where the corners are read. */
  private void next(Value top, Value next) {
    Length common = stack.corners().step(1, map.building(), live.rules());
    Length mark = next.now().minus(top.now()).minus(common);
    Term lower = mean(2, true, PieceColumn.LOWER, mark);
    boolean held = live.rules().holdsHeight();
    String walls = held ? "0" : map.round(1, RoundColumn.COMMON);
    Term read = pencil.signed(new Value(walls, common), pencil::mark);
    Term sum = Pencil.sum("{0} + {1}{2}", pencil.mark(top), lower, read);
    lines.add("next", sum, pencil.mark(next), live.names(true));
  }

  /** Returns a mark as the logs of one laying order are cut by it, the mean of them. */
  private Term mean(int round, boolean first, PieceColumn column, Length now) {
    return pencil.mark(new Value(map.mean(round, first, column), now));
  }

  /** Sum 8: the gap in the middle of the first wall that is laid first, over round 1. */
  private void gap() {
    lines.begin();
    Wall wall = live.walls().stream().filter(Wall::laidFirst).findFirst().orElseThrow();
    Value rise = rise(wall);
    Value half = half(wall);
    Joint joint = stack.joints(wall).get(0);
    Value read = read(joint);
    Value gap = toStep(new Value(map.piece(2, wall, PieceColumn.MIDDLE_GAP), joint.middle()));
    Value exact = lines.mid(1, wall).plus(lines.mid(2, wall)).dividedBy(2);
    Term less = pencil.settled(half, exact, toStep(rise.plus(read).minus(half)), gap);
    Term more = pencil.signed(read, pencil::decimal);
    Term sum = Pencil.sum("{0}{1} − {2}", pencil.decimal(rise), more, less);
    String step = pencil.withUnit(live.rules().printStep());
    lines.add("gap", sum, pencil.mark(gap), wall.name(), step);
  }

  private Value rise(Wall wall) {
    Value low = height(1, wall);
    Value high = height(2, wall);
    Value rise = high.minus(low);
    Term sum = Pencil.sum(Lines.MINUS, pencil.mark(high), pencil.mark(low));
    lines.add("rise", sum, pencil.mark(rise), wall.name());
    return rise;
  }

  private Value half(Wall wall) {
    Value one = pencil.written(lines.mid(1, wall));
    Value other = pencil.written(lines.mid(2, wall));
    Value half = pencil.written(one.plus(other).dividedBy(2));
    Term sum = Pencil.sum("({0} + {1}) ÷ 2", pencil.decimal(one), pencil.decimal(other));
    lines.add("half", sum, pencil.decimal(half), wall.name());
    return half;
  }

  /** Returns how much further apart two logs are in the middle by how their corners are read. */
  private Value read(Joint joint) {
    Length way = joint.rightFace().minus(joint.leftFace());
    Length half = joint.lower().trimmed().dividedBy(2).minus(joint.leftFace());
    double share = (double) half.nanometres() / way.nanometres();
    Value left = lift(joint, PieceColumn.LEFT_LIFT, joint.more().left());
    Value right = lift(joint, PieceColumn.RIGHT_LIFT, joint.more().right());
    Length more = right.now().minus(left.now());
    return new Value(
        (1 - share) + "*(" + left.formula() + ")+" + share + "*(" + right.formula() + ")",
        left.now().plus(more.timesRatio(half.nanometres(), way.nanometres())));
  }

  private Value lift(Joint joint, PieceColumn side, Length now) {
    Wall wall = joint.lower().wall();
    return new Value(map.piece(2, wall, side) + "-" + map.piece(1, wall, side), now);
  }

  private Value height(int round, Wall wall) {
    return new Value(map.piece(round, wall, PieceColumn.HEIGHT), stack.centre(round, wall));
  }

  private Value toStep(Value value) {
    return new Value(live.toStep(value.formula()), value.now().roundedTo(live.rules().printStep()));
  }
}
