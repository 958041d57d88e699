package roundbook.report.live;

import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import roundbook.notch.Notch;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.stack.Course;
import roundbook.units.Length;

/** Size, marks, heights and nominal gaps of every round as formulas of what was measured. */
public final class LiveRounds {
  private final LiveContext live;
  private final LiveMap map;

  public LiveRounds(LiveContext live) {
    this.live = live;
    this.map = live.map();
  }

  /** Puts the table on the working sheet. */
  void put(SheetBuilder sheet) {
    sheet.row(map.roundHeadRow());
    for (RoundColumn column : RoundColumn.values()) {
      sheet.add(LiveHeads.of(live, "round", column));
    }
    for (Course course : live.plan().choice().courses()) {
      sheet.nextRow();
      for (RoundColumn column : RoundColumn.values()) {
        sheet.add(cell(course, column));
      }
    }
  }

  /** Returns the cell of a column. */
  private Cell cell(Course course, RoundColumn column) {
    int round = course.round();
    return switch (column) {
      case ROUND -> Cell.number(round).role(Role.HELPER);
      case MEAN -> exact(mean(round), course.size().mean());
      case SPREAD -> exact(spread(round), course.spread());
      case SIZE, MARK_GAP, LOWER, NECK, UPPER, RISE -> shared(course, column);
      case FIRST_HEIGHT -> exact(map.mean(round, true, PieceColumn.HEIGHT), first(round));
      case SECOND_HEIGHT -> exact(map.mean(round, false, PieceColumn.HEIGHT), second(round));
      case FIRST_LEVEL -> exact(level(round, true), live.plan().stack().firstLevelHeight(round));
      case LEVEL_HEIGHT -> exact(level(round, false), live.plan().stack().levelHeight(round));
      case SMALLEST_END -> smallestEnd(course);
      case FIRST_GAP -> gap(round, RoundColumn.FIRST_HEIGHT);
      case SECOND_GAP -> gap(round, RoundColumn.SECOND_HEIGHT);
      case COMMON, HELD -> new LiveCorners(live).cell(round, column);
    };
  }

  /** Returns the size or a mark; once a log of the round is cut they are what it was cut to. */
  private Cell shared(Course course, RoundColumn column) {
    Cell cell =
        switch (column) {
          case SIZE -> size(course);
          case MARK_GAP -> gap(course);
          default -> mark(course, column);
        };
    boolean cut = live.plan().job().built().cutSize(course.round()).isPresent();
    return cut && cell.value() instanceof Cell.Formula formula
        ? Cell.number(((Cell.Number) formula.result()).number()).role(Role.HELPER)
        : cell;
  }

  /**
   * Returns a value by the marks of a log that is cut, where it is ticked by its own box and both
   * marks are typed; else another value. The first log that is cut fixes the marks of its round.
   */
  private String fixed(int round, BinaryOperator<String> byMarks, String otherwise) {
    String formula = otherwise;
    for (int index = live.walls().size() - 1; index >= 0; index--) {
      String wall = live.walls().get(index).name();
      String lower = TypedBox.LOWER_CUT.named(round, wall);
      String upper = TypedBox.UPPER_CUT.named(round, wall);
      String cut = TypedBox.LOG_CUT.named(round, wall) + "<>\"\"";
      String both = "AND(" + cut + ",COUNT(" + lower + "," + upper + ")=2)";
      formula = "IF(" + both + "," + byMarks.apply(lower, upper) + "," + formula + ")";
    }
    return formula;
  }

  /** Returns g, the gap wanted, or that which the marks of a log that is cut have. */
  private Cell gap(Course course) {
    String gap = map.rule(RuleLine.GAP);
    return exact(
        fixed(course.round(), (lower, upper) -> upper + "-" + lower, gap), course.notch().gap());
  }

  /** Returns a cell of a formula and a length as planned, not rounded. */
  private Cell exact(String formula, Length now) {
    return Cell.formula(formula, live.number(now)).role(Role.HELPER);
  }

  /** Returns the height of the first-laid centre lines as planned. */
  private Length first(int round) {
    return live.plan().stack().firstHeights().get(round - 1);
  }

  /** Returns the height of the second-laid centre lines as planned. */
  private Length second(int round) {
    return live.plan().stack().secondHeights().get(round - 1);
  }

  /** Returns the mean of the middle diameters. */
  private String mean(int round) {
    return "SUM(" + map.pieces(round, PieceColumn.MID) + ")/" + live.walls().size();
  }

  /** Returns the largest middle diameter less the smallest. */
  private String spread(int round) {
    String mids = map.pieces(round, PieceColumn.MID);
    return "MAX(" + mids + ")-MIN(" + mids + ")";
  }

  /** Returns the height of the tops of the necks of one laying order, {@code b + U'}. */
  private String level(int round, boolean first) {
    return map.mean(round, first, PieceColumn.HEIGHT)
        + "+"
        + map.mean(round, first, PieceColumn.UPPER);
  }

  /** Returns D, the mean rounded to the step of sizes. */
  private Cell size(Course course) {
    String mean = map.round(course.round(), RoundColumn.MEAN);
    Length step = live.rules().sizeStep();
    String taken = LiveMath.rounded(mean, step, map.rule(RuleLine.SIZE_STEP));
    String otherwise =
        live.plan().job().heldSize(course.round()).isPresent()
            ? "" + live.number(course.notch().size())
            : taken;
    String formula = fixed(course.round(), (lower, upper) -> upper + "+3*" + lower, otherwise);
    return exact(formula, course.notch().size());
  }

  /**
   * Returns a mark: {@code L' = r((D − g) / 4)}, the neck {@code r((D + g) / 2)}, {@code U'} their
   * difference, the rise twice the neck.
   */
  private Cell mark(Course course, RoundColumn column) {
    Notch notch = course.notch();
    String size = map.round(course.round(), RoundColumn.SIZE);
    String gap = map.round(course.round(), RoundColumn.MARK_GAP);
    String neck = map.round(course.round(), RoundColumn.NECK);
    return switch (column) {
      case LOWER -> exact(live.toStep("(" + size + "-" + gap + ")/4"), notch.lower());
      case NECK -> exact(live.toStep("(" + size + "+" + gap + ")/2"), notch.neckHeight());
      case UPPER -> exact(neck + "-" + map.round(course.round(), RoundColumn.LOWER), notch.upper());
      default -> exact("2*" + neck, notch.neckHeight().times(2));
    };
  }

  /** Returns the gap to the round below from heights and sizes; empty in the first round. */
  private Cell gap(int round, RoundColumn height) {
    if (round == 1) {
      return Cell.text("").role(Role.HELPER);
    }
    String formula =
        map.round(round, height)
            + "-"
            + map.round(round - 1, height)
            + "-("
            + map.round(round, RoundColumn.SIZE)
            + "+"
            + map.round(round - 1, RoundColumn.SIZE)
            + ")/2";
    return exact(formula, nominalGap(round, height == RoundColumn.FIRST_HEIGHT));
  }

  /** Returns the gap to the round below that the sizes alone give. */
  public Length nominalGap(int round, boolean firstLaid) {
    Length rise =
        firstLaid ? first(round).minus(first(round - 1)) : second(round).minus(second(round - 1));
    Length sizes = live.course(round).notch().size().plus(live.course(round - 1).notch().size());
    return rise.minus(sizes.dividedBy(2));
  }

  /** Returns the least shoulder with the face wanted over UPPER, rounded up to the step. */
  public Cell smallestEnd(Course course) {
    String ends =
        live.walls().stream()
            .map(wall -> map.wall(wall, WallColumn.THICKNESS))
            .distinct()
            .map(thickness -> end(course.round(), thickness))
            .collect(Collectors.joining(",", "MAX(", ")"));
    String step = map.rule(RuleLine.PRINT_STEP);
    boolean stepped = !live.rules().printStep().isZero();
    String formula = stepped ? "-INT(-ROUND(" + ends + "/" + step + ",6))*" + step : ends;
    return exact(formula, roundedUp(leastEnd(course.round())));
  }

  /** Returns the least such diameter on a wall, {@code √(T² + 4 (U' + m)²)}. */
  private String end(int round, String thickness) {
    String height = map.round(round, RoundColumn.UPPER) + "+" + map.rule(RuleLine.SHOULDER_LEAST);
    return "SQRT(" + thickness + "^2+4*(" + height + ")^2)";
  }

  /** Returns the largest such diameter of a round's walls as planned. */
  private Length leastEnd(int round) {
    return live.plan().round(round).stream()
        .map(piece -> piece.tipFit().leastForShoulder())
        .reduce(Length::most)
        .orElseThrow();
  }

  /** Returns a length rounded up to the printed step. */
  private Length roundedUp(Length exact) {
    Length step = live.rules().printStep();
    if (step.isZero()) {
      return exact;
    }
    double steps = (double) exact.nanometres() / step.nanometres();
    return step.times((long) StrictMath.ceil(StrictMath.rint(steps * 1e6) / 1e6));
  }
}
