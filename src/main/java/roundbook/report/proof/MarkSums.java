package roundbook.report.proof;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.proof.Pencil.Term;
import roundbook.report.proof.Pencil.Value;
import roundbook.units.Length;

/** Sums 1 to 6: the size of round 1, its marks, and where a log is marked and cut. */
final class MarkSums {
  private final Lines lines;
  private final LiveContext live;
  private final LiveMap map;
  private final Notch notch;
  private final Pencil pencil;

  MarkSums(Lines lines) {
    this.lines = lines;
    this.live = lines.live();
    this.map = live.map();
    this.notch = live.course(1).notch();
    this.pencil = lines.pencil();
  }

  void add() {
    size();
    marks();
    falls();
    cuts();
  }

  /** Sum 1: the size, from the middles as they are written. */
  private void size() {
    lines.begin();
    List<Value> mids =
        live.walls().stream().map(wall -> pencil.written(lines.mid(1, wall))).toList();
    int count = mids.size();
    Value sum = mids.stream().reduce(Value::plus).orElseThrow();
    Value mean = pencil.written(sum.dividedBy(count));
    String terms =
        IntStream.range(0, count).mapToObj(i -> "{" + i + "}").collect(Collectors.joining(" + "));
    Term[] written = mids.stream().map(pencil::decimal).toArray(Term[]::new);
    lines.add(
        "mids",
        Pencil.sum(terms, written),
        pencil.decimal(sum),
        Pencil.names(live.walls().stream()));
    lines.add(
        "mean", Pencil.sum("{0} ÷ " + count, pencil.decimal(sum)), pencil.decimal(mean), count);
    Value exact = lines.of(RoundColumn.MEAN, live.course(1).size().mean());
    Length step = live.rules().sizeStep();
    Term shown =
        step.isZero()
            ? pencil.decimal(mean)
            : pencil.settled(mean, exact, taken(mean), wholeSize());
    String key = step.isZero() ? "size.exact" : "size";
    lines.add(key, unlessCut(taken(exact), shown), pencil.size(wholeSize()), pencil.withUnit(step));
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

  private Value wholeSize() {
    return lines.of(RoundColumn.SIZE, notch.size());
  }

  /** Sums 2 to 4: the lower mark, the neck and the upper mark. */
  private void marks() {
    Term size = pencil.size(wholeSize());
    Term gap = pencil.mark(lines.of(RoundColumn.MARK_GAP, notch.gap()));
    Term lower = pencil.mark(lines.of(RoundColumn.LOWER, notch.lower()));
    Term neck = pencil.mark(lines.of(RoundColumn.NECK, notch.neckHeight()));
    lines.begin();
    lines.add("lower", Pencil.sum("({0} − {1}) ÷ 4", size, gap), lower);
    lines.begin();
    lines.add("neck", Pencil.sum("({0} + {1}) ÷ 2", size, gap), neck);
    lines.begin();
    lines.add("upper", Pencil.sum(Lines.MINUS, neck, lower), pencil.mark(upper()));
  }

  private Value upper() {
    return lines.of(RoundColumn.UPPER, notch.upper());
  }

  /** Sum 5: the fall of the necks over each thickness, and the two marks that it changes. */
  private void falls() {
    lines.begin();
    Set<Length> thicknesses = new LinkedHashSet<>();
    live.walls().forEach(wall -> thicknesses.add(wall.thickness()));
    Value lower = lines.of(RoundColumn.LOWER, notch.lower());
    for (Length thickness : thicknesses) {
      List<Wall> walls =
          live.walls().stream().filter(wall -> wall.thickness().equals(thickness)).toList();
      String names = thicknesses.size() == 1 ? "" : " " + Pencil.names(walls.stream());
      Value fall = new Value(map.wall(walls.get(0), WallColumn.DROP), notch.drop(thickness));
      Term down = pencil.mark(fall);
      Term over = Pencil.sum("{0} ÷ " + live.context().slopeRun(), pencil.mark(thickness));
      lines.add("fall", over, down, names);
      Term outside = pencil.mark(upper().minus(fall));
      lines.add("outside", Pencil.sum(Lines.MINUS, pencil.mark(upper()), down), outside, names);
      Term corner = pencil.mark(lower.plus(fall));
      lines.add("corner", Pencil.sum(Lines.PLUS, pencil.mark(lower), down), corner, names);
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
    lines.begin();
    Building building = map.building();
    Wall wall = piece.placed().wall();
    Length butt = piece.placed().crossingAtButt(building).thickness();
    Length tip = piece.placed().crossingAtTip(building).thickness();
    Term past = pencil.inches(live.rules().overhang());
    Term trimmed = pencil.tape(piece.placed().trimmed());
    String on = wall.name();
    Term near = pencil.inches(printed(piece.nearShoulder()));
    lines.add("near", Pencil.sum(Lines.PLUS, past, pencil.inches(butt)), near, on);
    Term whole = pencil.tape(printed(piece.placed().trimmed()));
    lines.add("cut", Pencil.sum("{0} + 2 × {1}", pencil.tape(wall.outside()), past), whole, on);
    Term far = Pencil.sum("{0} − {1} − {2}", trimmed, past, pencil.inches(tip));
    lines.add("far", far, pencil.tape(printed(piece.farShoulder())), on);
  }

  private Length printed(Length length) {
    return length.roundedTo(live.rules().printStep());
  }
}
