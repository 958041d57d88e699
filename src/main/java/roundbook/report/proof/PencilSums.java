package roundbook.report.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.proof.Pencil.Term;
import roundbook.report.proof.Pencil.Value;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** The marks, cuts and heights of round 1 and a gap over it, sum by sum, as a pencil does them. */
final class PencilSums {
  private static final String PLUS = "{0} + {1}";
  private static final String MINUS = "{0} − {1}";

  private final LiveContext live;
  private final LiveMap map;
  private final Stack stack;
  private final Notch notch;
  private final Pencil pencil;
  private final List<Sum> sums = new ArrayList<>();
  private int number;

  private PencilSums(LiveContext live) {
    this.live = live;
    this.map = live.map();
    this.stack = live.plan().stack();
    this.notch = live.course(1).notch();
    this.pencil = new Pencil(live);
  }

  /**
   * One line of a sum.
   *
   * @param number which sum it is of, counted from 1
   * @param what what it gives, in words
   * @param sum the terms
   * @param result what the program has for it
   */
  record Sum(int number, Term what, Term sum, Term result) {}

  /** Returns the lines of all sums in their order. */
  static List<Sum> of(LiveContext live) {
    PencilSums all = new PencilSums(live);
    all.size();
    all.marks();
    all.falls();
    all.cuts();
    all.heights();
    if (live.plan().rounds() > 1) {
      all.gap();
    }
    return List.copyOf(all.sums);
  }

  private void begin() {
    number++;
  }

  private void line(String key, Term sum, Term result, Object... values) {
    sums.add(new Sum(number, Term.of(live.text("proof.sum." + key, values)), sum, result));
  }

  private Value of(RoundColumn column, Length now) {
    return new Value(map.round(1, column), now);
  }

  private Value mid(int round, Wall wall) {
    Length now = live.piece(round, wall).placed().mid();
    return new Value(map.piece(round, wall, PieceColumn.MID), now);
  }

  /** Sum 1: the size, from the middles as they are written. */
  private void size() {
    begin();
    List<Value> mids = live.walls().stream().map(wall -> pencil.written(mid(1, wall))).toList();
    int count = mids.size();
    Value sum = mids.stream().reduce(Value::plus).orElseThrow();
    Value mean = pencil.written(sum.dividedBy(count));
    String terms =
        IntStream.range(0, count).mapToObj(i -> "{" + i + "}").collect(Collectors.joining(" + "));
    Term[] written = mids.stream().map(pencil::decimal).toArray(Term[]::new);
    line(
        "mids",
        Pencil.sum(terms, written),
        pencil.decimal(sum),
        Pencil.names(live.walls().stream()));
    line("mean", Pencil.sum("{0} ÷ " + count, pencil.decimal(sum)), pencil.decimal(mean), count);
    Value exact = of(RoundColumn.MEAN, live.course(1).size().mean());
    Length step = live.rules().sizeStep();
    Term shown =
        step.isZero()
            ? pencil.decimal(mean)
            : pencil.settled(mean, exact, taken(mean), wholeSize());
    String key = step.isZero() ? "size.exact" : "size";
    line(key, unlessCut(taken(exact), shown), pencil.size(wholeSize()), withUnit(step));
  }

  private Value taken(Value mean) {
    Length step = live.rules().sizeStep();
    String formula = LiveMath.rounded(mean.formula(), step, map.rule(RuleLine.SIZE_STEP));
    return new Value(formula, mean.now().roundedTo(step));
  }

  /** Returns a term, or words where a log that is cut has fixed another size than the mean's. */
  private Term unlessCut(Value taken, Term mean) {
    String same = "ABS(" + taken.formula() + "-" + wholeSize().formula() + ")<0.000001";
    String cut = LiveMath.literal(live.text("proof.sum.as_cut"));
    return new Term("IF(" + same + "," + mean.formula() + "," + cut + ")", mean.now());
  }

  private String withUnit(Length length) {
    return live.formats().mark(length) + " " + live.unit().symbol();
  }

  private Value wholeSize() {
    return of(RoundColumn.SIZE, notch.size());
  }

  /** Sums 2 to 4: the lower mark, the neck and the upper mark. */
  private void marks() {
    Term size = pencil.size(wholeSize());
    Term gap = pencil.mark(of(RoundColumn.MARK_GAP, notch.gap()));
    Term lower = pencil.mark(of(RoundColumn.LOWER, notch.lower()));
    Term neck = pencil.mark(of(RoundColumn.NECK, notch.neckHeight()));
    begin();
    line("lower", Pencil.sum("({0} − {1}) ÷ 4", size, gap), lower);
    begin();
    line("neck", Pencil.sum("({0} + {1}) ÷ 2", size, gap), neck);
    begin();
    line("upper", Pencil.sum(MINUS, neck, lower), pencil.mark(upper()));
  }

  private Value upper() {
    return of(RoundColumn.UPPER, notch.upper());
  }

  /** Sum 5: the fall of the necks over each thickness, and the two marks that it changes. */
  private void falls() {
    begin();
    Set<Length> thicknesses = new LinkedHashSet<>();
    live.walls().forEach(wall -> thicknesses.add(wall.thickness()));
    Value lower = of(RoundColumn.LOWER, notch.lower());
    for (Length thickness : thicknesses) {
      List<Wall> walls =
          live.walls().stream().filter(wall -> wall.thickness().equals(thickness)).toList();
      String names = thicknesses.size() == 1 ? "" : " " + Pencil.names(walls.stream());
      Value fall = new Value(map.wall(walls.get(0), WallColumn.DROP), notch.drop(thickness));
      Term down = pencil.mark(fall);
      Term over = Pencil.sum("{0} ÷ " + live.context().slopeRun(), pencil.mark(thickness));
      line("fall", over, down, names);
      Term outside = pencil.mark(upper().minus(fall));
      line("outside", Pencil.sum(MINUS, pencil.mark(upper()), down), outside, names);
      Term corner = pencil.mark(lower.plus(fall));
      line("corner", Pencil.sum(PLUS, pencil.mark(lower), down), corner, names);
    }
  }

  /** Sum 6: shoulders and cut of the first wall that a whole log lies on. */
  private void cuts() {
    live.plan().round(1).stream()
        .filter(piece -> piece.halves().isEmpty())
        .findFirst()
        .ifPresent(this::cuts);
  }

  private void cuts(PiecePlan piece) {
    begin();
    Building building = map.building();
    Wall wall = piece.placed().wall();
    Length butt = piece.placed().crossingAtButt(building).thickness();
    Length tip = piece.placed().crossingAtTip(building).thickness();
    Term past = pencil.inches(live.rules().overhang());
    Term trimmed = pencil.tape(piece.placed().trimmed());
    String on = wall.name();
    Term near = pencil.inches(printed(piece.nearShoulder()));
    line("near", Pencil.sum(PLUS, past, pencil.inches(butt)), near, on);
    Term whole = pencil.tape(printed(piece.placed().trimmed()));
    line("cut", Pencil.sum("{0} + 2 × {1}", pencil.tape(wall.outside()), past), whole, on);
    Term far = Pencil.sum("{0} − {1} − {2}", trimmed, past, pencil.inches(tip));
    line("far", far, pencil.tape(printed(piece.farShoulder())), on);
  }

  private Length printed(Length length) {
    return length.roundedTo(live.rules().printStep());
  }

  /** Sum 7: centre lines and the tops that are read, from the bed up. */
  private void heights() {
    begin();
    boolean starter = live.rules().text(Setting.FIRST_BED).equals("starter");
    Length bed = starter ? notch.upper() : Length.ZERO;
    Value first = of(RoundColumn.FIRST_HEIGHT, stack.firstHeights().get(0));
    Value firstTop = of(RoundColumn.FIRST_LEVEL, stack.firstLevelHeight(1));
    Value second = of(RoundColumn.SECOND_HEIGHT, stack.secondHeights().get(0));
    Value top = of(RoundColumn.LEVEL_HEIGHT, stack.levelHeight(1));
    Term base = starter ? pencil.mark(upper()) : pencil.mark(bed);
    String firsts = live.names(true);
    String seconds = live.names(false);
    Term lower = mean(1, true, PieceColumn.LOWER, first.now().minus(bed));
    line(
        starter ? "first.starter" : "first",
        Pencil.sum(PLUS, base, lower),
        pencil.mark(first),
        firsts);
    rise(
        "top",
        first,
        mean(1, true, PieceColumn.UPPER, firstTop.now().minus(first.now())),
        firstTop,
        firsts);
    rise(
        "second",
        firstTop,
        mean(1, false, PieceColumn.LOWER, second.now().minus(firstTop.now())),
        second,
        seconds);
    rise(
        "top",
        second,
        mean(1, false, PieceColumn.UPPER, top.now().minus(second.now())),
        top,
        seconds);
    if (live.plan().rounds() > 1) {
      next(top, new Value(map.round(2, RoundColumn.FIRST_HEIGHT), stack.firstHeights().get(1)));
    }
  }

  /** The centre lines of round 2, which go on from where the corners are read. */
  private void next(Value top, Value next) {
    Length common = stack.corners().step(1, map.building(), live.rules());
    Length mark = next.now().minus(top.now()).minus(common);
    Term lower = mean(2, true, PieceColumn.LOWER, mark);
    boolean held = live.rules().holdsHeight();
    String walls = held ? "0" : map.round(1, RoundColumn.COMMON);
    Term read = signed(new Value(walls, common), pencil::mark);
    Term sum = Pencil.sum("{0} + {1}{2}", pencil.mark(top), lower, read);
    line("next", sum, pencil.mark(next), live.names(true));
  }

  private void rise(String key, Value from, Term by, Value to, String walls) {
    line(key, Pencil.sum(PLUS, pencil.mark(from), by), pencil.mark(to), walls);
  }

  /** Returns a mark as the logs of one laying order are cut by it, the mean of them. */
  private Term mean(int round, boolean first, PieceColumn column, Length now) {
    return pencil.mark(new Value(map.mean(round, first, column), now));
  }

  /** Sum 8: the gap in the middle of the first wall that is laid first, over round 1. */
  private void gap() {
    begin();
    Wall wall = live.walls().stream().filter(Wall::laidFirst).findFirst().orElseThrow();
    Value low = height(1, wall);
    Value high = height(2, wall);
    Value rise = high.minus(low);
    Value one = pencil.written(mid(1, wall));
    Value other = pencil.written(mid(2, wall));
    Value half = pencil.written(one.plus(other).dividedBy(2));
    String on = wall.name();
    line("rise", Pencil.sum(MINUS, pencil.mark(high), pencil.mark(low)), pencil.mark(rise), on);
    Term sum = Pencil.sum("({0} + {1}) ÷ 2", pencil.decimal(one), pencil.decimal(other));
    line("half", sum, pencil.decimal(half), on);
    Joint joint = stack.joints(wall).get(0);
    Value gap = new Value(map.piece(2, wall, PieceColumn.MIDDLE_GAP), joint.middle());
    Value exact = mid(1, wall).plus(mid(2, wall)).dividedBy(2);
    Value read = read(joint);
    Term less = pencil.settled(half, exact, toStep(rise.plus(read).minus(half)), toStep(gap));
    Term last =
        Pencil.sum("{0}{1} − {2}", pencil.decimal(rise), signed(read, pencil::decimal), less);
    line("gap", last, pencil.mark(toStep(gap)), on, withUnit(live.rules().printStep()));
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

  /** Returns a value with the sign that adds it or takes it away; nothing where there is none. */
  private Term signed(Value more, Function<Value, Term> as) {
    Term positive = as.apply(more);
    Term negative = as.apply(new Value("-(" + more.formula() + ")", more.now().negated()));
    String formula =
        "IF(ABS("
            + more.formula()
            + ")<0.000001,\"\",IF("
            + more.formula()
            + ">0,\" + \"&"
            + positive.formula()
            + ",\" − \"&"
            + negative.formula()
            + "))";
    boolean none = more.now().absolute().isLessThan(Length.ofNanometres(26));
    String sign = more.now().isNegative() ? " − " + negative.now() : " + " + positive.now();
    return new Term(formula, none ? "" : sign);
  }
}
