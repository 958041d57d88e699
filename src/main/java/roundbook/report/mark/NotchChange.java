package roundbook.report.mark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Positions;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMath;
import roundbook.stack.Course;
import roundbook.units.Length;

/**
 * The block that tries other diameters for one round and changes nothing else.
 *
 * <p>A diameter that is left empty is the one that the round has now.
 */
final class NotchChange {
  private static final double TITLE = 21;
  private static final double HEWN = 32;
  private static final double BOXES = 30;
  private static final double HEADS = 44;
  private static final double RESULTS = 28;

  /** More walls than these take further rows, or the words beside them would have no room. */
  private static final int IN_A_ROW = 6;

  private static final String ROUND = "Change_round";
  private static final int FIRST_RESULT = 2;
  private static final Positions<Result> COLUMNS = Positions.of(Result.class);
  private final LiveContext live;
  private final SheetBuilder sheet;

  NotchChange(LiveContext live, SheetBuilder sheet) {
    this.live = live;
    this.sheet = sheet;
  }

  /** Returns how high the block stands under columns of these widths, in points. */
  static double height(LiveContext live, double[] widths) {
    return TITLE + rows(live) * (HEWN + boxes(live, widths)) + HEADS + RESULTS;
  }

  /** Returns how many rows of boxes there are. */
  private static int rows(LiveContext live) {
    return (live.walls().size() + IN_A_ROW - 1) / IN_A_ROW;
  }

  /** Returns how many boxes stand in a row at most: as many in each as in any other. */
  private static int inARow(LiveContext live) {
    return (live.walls().size() + rows(live) - 1) / rows(live);
  }

  /** Returns the height of a row of boxes, beside which the words on ends must have room. */
  private static double boxes(LiveContext live, double[] widths) {
    double room = Arrays.stream(widths).skip(inARow(live) + 1L).sum();
    return Math.max(BOXES, TextHeight.of(ends(live), Role.PLAIN, room) / rows(live) - HEWN);
  }

  /** Returns what the grades of ends mean, from where on each begins, and what to do. */
  private static String ends(LiveContext live) {
    String shoulder = live.formats().mark(live.rules().length(Setting.SHOULDER_LEAST));
    String over = shoulder + " " + live.unit().symbol();
    String look = live.rules().number(Setting.BEARING_LOOK).toPlainString();
    String stop = live.rules().number(Setting.BEARING_STOP).toPlainString();
    return String.join("\n", live.context().words().lines("ends.meaning", over, look, stop));
  }

  /** Puts the block under the current row, under columns of these widths. */
  void put(double[] widths) {
    int columns = widths.length;
    sheet.nextRow().height(TITLE);
    sheet.addAcross(columns, Cell.text(live.text("change.title")).role(Role.HEADING));
    int first = sheet.row() + 1;
    int most = inARow(live);
    for (int from = 0; from < live.walls().size(); from += most) {
      int to = StrictMath.min(from + most, live.walls().size());
      boxes(live.walls().subList(from, to), from == 0, boxes(live, widths));
    }
    sheet.merge(
        new Area(first, most + 2, sheet.row(), columns), Cell.text(ends(live)).role(Role.PLAIN));
    rules(first + 1);
    sheet.nextRow().height(HEADS).skip(1);
    for (Result result : Result.values()) {
      String key = "change.head." + result.name().toLowerCase(Locale.ROOT);
      sheet.add(head(key, live.names(result.first)));
    }
    sheet.nextRow().height(RESULTS).skip(1);
    for (Result result : Result.values()) {
      flag(result);
      sheet.add(cell(result));
    }
  }

  /** Puts the boxes of some walls under their heads, the first ones beside that of the round. */
  private void boxes(List<Wall> walls, boolean round, double height) {
    sheet.nextRow().height(HEWN);
    if (round) {
      sheet.add(head("change.round"));
    } else {
      sheet.skip(1);
    }
    walls.forEach(wall -> sheet.add(head("change.hewn", wall.name())));
    sheet.nextRow().height(height);
    if (round) {
      Cell hand = Cell.number(hand()).role(Role.TYPED_IN_LARGE).format(Cell.Format.WHOLE);
      sheet.add(hand.named(ROUND));
    } else {
      sheet.skip(1);
    }
    for (Wall wall : walls) {
      Cell typed = Cell.blank(Role.TYPED_IN_LARGE).format(live.markFormat());
      sheet.add(typed.named(name(wall)));
    }
  }

  /** Returns a heading by its key. */
  private Cell head(String key, Object... values) {
    return Cell.text(live.text(key, values)).role(Role.COLUMN_HEAD);
  }

  /** Returns the name of the cell of a wall's diameter. */
  private static String name(Wall wall) {
    return Book.nameOf("Change", wall.name());
  }

  /** Offers the rounds as a list, which no number of rounds makes too long. */
  private void rules(int row) {
    String rounds = live.map().rounds(RoundColumn.ROUND);
    String text = live.text("change.advice");
    Rule.Advice advice = Rule.Advice.refusing(live.text("change.round"), text).prompt(text);
    sheet.rule(new Rule.OneOfCells(Area.cell(row, 1), rounds, advice));
  }

  /** What is worked out for the round in hand, one a column. */
  private enum Result {
    /** The size taken. */
    SIZE(true),
    /** The upper mark on the inside face. */
    UPPER_INSIDE(true),
    /** The upper mark on the outside face. */
    UPPER_OUTSIDE(true),
    /** The lower mark at the shoulder. */
    LOWER_SHOULDER(true),
    /** The lower mark at the corner line. */
    LOWER_CORNER(true),
    /** The height of the neck. */
    NECK(true),
    /** The gap below on the first-laid walls. */
    FIRST_BELOW(true),
    /** The gap below on the second-laid walls. */
    SECOND_BELOW(false),
    /** The gap above on the first-laid walls. */
    FIRST_ABOVE(true),
    /** The gap above on the second-laid walls. */
    SECOND_ABOVE(false);

    private final boolean first;

    Result(boolean first) {
      this.first = first;
    }

    /** Returns whether the result is a gap, which is flagged. */
    private boolean isGap() {
      return switch (this) {
        case FIRST_BELOW, SECOND_BELOW, FIRST_ABOVE, SECOND_ABOVE -> true;
        default -> false;
      };
    }
  }

  /** Returns the address of a result in the current row. */
  private String at(Result result) {
    return Area.cell(sheet.row(), FIRST_RESULT + COLUMNS.number(result) - 1).toString();
  }

  /** Returns the round in hand: the lowest that is not cut. */
  private int hand() {
    return Math.min(live.plan().rounds(), live.plan().job().built().rounds() + 1);
  }

  /** Returns the cell of a result, as it is for the round in hand. */
  private Cell cell(Result result) {
    Course now = live.course(hand());
    return switch (result) {
      case SIZE -> live.mark(size(), now.notch().size(), Role.RESULT_LARGE);
      case UPPER_INSIDE ->
          live.mark(
              at(Result.NECK) + "-" + at(Result.LOWER_SHOULDER), now.notch().upper(), Role.MARK);
      case UPPER_OUTSIDE ->
          WallMark.cell(
              live, WallMark.outside(live, at(Result.UPPER_INSIDE), now.notch(), false), Role.MARK);
      case LOWER_SHOULDER -> live.mark(part("-", 4), now.notch().lower(), Role.MARK_LOWER);
      case LOWER_CORNER ->
          WallMark.cell(
              live, WallMark.corner(live, at(Result.LOWER_SHOULDER), now.notch()), Role.MARK_LOWER);
      case NECK -> live.mark(part("+", 2), now.notch().neckHeight(), Role.RESULT);
      case FIRST_BELOW, SECOND_BELOW -> below(result);
      default -> above(result);
    };
  }

  /** Returns the size and the gap, added or taken away, over so many parts. */
  private String part(String sign, int parts) {
    String sum = at(Result.SIZE) + sign + live.map().rule(RuleLine.GAP);
    return live.toStep("(" + sum + ")/" + parts);
  }

  /** Returns the size from the typed diameters, the round's own where none is typed. */
  private String size() {
    String mids = live.map().pieces(PieceColumn.MID);
    int count = live.walls().size();
    List<String> sum = new ArrayList<>();
    for (int index = 0; index < count; index++) {
      String typed = name(live.walls().get(index));
      String row = "(" + ROUND + "-1)*" + count + "+" + (index + 1);
      sum.add("IF(ISNUMBER(" + typed + ")," + typed + ",INDEX(" + mids + "," + row + "))");
    }
    String mean = "(" + String.join("+", sum) + ")/" + count;
    return LiveMath.rounded(mean, live.rules().sizeStep(), live.map().rule(RuleLine.SIZE_STEP));
  }

  /** Returns a value of a round by its number. */
  private String of(RoundColumn column, String round) {
    return "INDEX(" + live.map().rounds(column) + "," + round + ")";
  }

  /** Returns the gap to the round below the one in hand. */
  private Cell below(Result result) {
    String round = ROUND + "-1";
    String neck = result.first ? of(RoundColumn.NECK, round) : at(Result.NECK);
    String rise = neck + "+" + of(RoundColumn.UPPER, round) + "+" + at(Result.LOWER_SHOULDER);
    String formula = "IF(" + ROUND + "=1,\"–\"," + gap(rise, round) + ")";
    return hand() == 1
        ? Cell.formula(formula, "–").role(Role.RESULT).format(live.markFormat())
        : live.mark(formula, gapNow(hand() - 1, result.first), Role.RESULT);
  }

  /** Returns the gap over a round by the marks of the chart. */
  private Length gapNow(int lower, boolean first) {
    Notch below = live.course(lower).notch();
    Notch above = live.course(lower + 1).notch();
    Length neck = first ? below.neckHeight() : above.neckHeight();
    Length rise = neck.plus(below.upper()).plus(above.lower());
    return rise.minus(below.size().plus(above.size()).dividedBy(2))
        .roundedTo(live.rules().printStep());
  }

  /** Returns the gap to the round above the one in hand. */
  private Cell above(Result result) {
    String round = ROUND + "+1";
    String neck = result.first ? at(Result.NECK) : of(RoundColumn.NECK, round);
    String rise = neck + "+" + at(Result.UPPER_INSIDE) + "+" + of(RoundColumn.LOWER, round);
    int rounds = live.plan().rounds();
    String formula = "IF(" + ROUND + "=" + rounds + ",\"–\"," + gap(rise, round) + ")";
    return hand() == rounds
        ? Cell.formula(formula, "–").role(Role.RESULT).format(live.markFormat())
        : live.mark(formula, gapNow(hand(), result.first), Role.RESULT);
  }

  /** Returns a rise less half of both sizes, rounded to the printed step. */
  private String gap(String rise, String round) {
    String sizes = "(" + at(Result.SIZE) + "+" + of(RoundColumn.SIZE, round) + ")/2";
    return live.toStep(rise + "-" + sizes);
  }

  /** Turns a gap outside the limits black. */
  private void flag(Result result) {
    if (!result.isGap()) {
      return;
    }
    String cell = at(result);
    String small = cell + "<" + live.map().rule(RuleLine.GAP_LEAST);
    String large = cell + ">" + live.map().rule(RuleLine.GAP_MOST);
    String out = "AND(ISNUMBER(" + cell + "),OR(" + small + "," + large + "))";
    Area area = Area.cell(sheet.row(), FIRST_RESULT + COLUMNS.number(result) - 1);
    sheet.rule(new Rule.LooksLike(area, out, Role.FLAG));
  }
}
