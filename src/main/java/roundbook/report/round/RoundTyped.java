package roundbook.report.round;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Measures;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.live.LiveSpot;
import roundbook.report.mark.BoxRules;
import roundbook.report.mark.ShortRows;
import roundbook.units.Length;

/** What is typed in after measuring a round's logs, with the corner readings. */
final class RoundTyped {
  private static final double ROW_HEIGHT = 15;
  private static final double HEAD_HEIGHT = 28;
  private static final int WALL = 2;
  private static final int PLANNED = 3;
  private static final List<TypedBox> BOXES =
      Stream.of(TypedBox.Per.LOG, TypedBox.Per.WALL)
          .flatMap(per -> per.boxes().stream())
          .filter(box -> box != TypedBox.LOG_CUT)
          .toList();

  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;

  RoundTyped(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
  }

  /** Puts the table under the current row, with the corner readings on its right. */
  void put() {
    sheet.nextRow().height(HEAD_HEIGHT);
    int top = sheet.row();
    head(WALL, "wall");
    head(PLANNED, "planned");
    BOXES.forEach(box -> head(span(box), box.name().toLowerCase(Locale.ROOT)));
    for (Wall wall : live.walls()) {
      LiveSpot.of(live.piece(round, wall)).forEach(this::row);
    }
    int last = sheet.row();
    RoundLevels levels = new RoundLevels(live, round, sheet);
    levels.put(top);
    for (int row = last + 1; row <= top + levels.rows(); row++) {
      sheet.row(row).height(ROW_HEIGHT);
    }
    sheet.row(StrictMath.max(last, top + levels.rows()));
    rules(top + 1, last);
    levels.putRule();
  }

  /** Returns how many columns of the page's grid a box takes; the middle is always measured. */
  private static int span(TypedBox box) {
    return box == TypedBox.MEASURED ? 4 : 3;
  }

  private void head(int span, String what) {
    sheet.addAcross(span, Cell.text(live.text("round.type." + what)).role(Role.COLUMN_HEAD));
  }

  /** Writes one log's row. */
  private void row(LiveSpot spot) {
    sheet.nextRow().height(ROW_HEIGHT);
    sheet.addAcross(WALL, Cell.text(ShortRows.place(spot)).role(Role.BODY_CENTRE));
    String planned = live.map().at(spot.place(), PieceColumn.OWN_MID);
    Length now = live.expected(spot.placed()).mid();
    Cell cell = live.printed(planned, now, Role.BODY_CENTRE);
    sheet.addAcross(PLANNED, unlessText(cell, spot));
    BOXES.forEach(box -> sheet.addAcross(span(box), cell(spot, box)));
  }

  /**
   * Returns the planned middle, which gives way to a word while a box beside it holds a length as
   * text: the page cannot reckon with that.
   */
  private Cell unlessText(Cell planned, LiveSpot spot) {
    Cell.Formula known = (Cell.Formula) planned.value();
    String texts =
        Stream.of(TypedBox.MEASURED, TypedBox.MEASURED_BUTT, TypedBox.MEASURED_TIP)
            .map(box -> "ISTEXT(" + spot.named(box) + ")")
            .collect(Collectors.joining(","));
    String word = LiveMath.literal(live.text("round.type.as_number"));
    String formula = "IF(OR(" + texts + ")," + word + "," + known.expression() + ")";
    Cell cell = Cell.formula(formula, ((Cell.Number) known.result()).number());
    Area here = Area.cell(sheet.row(), 1 + WALL).sized(1, PLANNED);
    sheet.rule(new Rule.LooksLike(here, "OR(" + texts + ")", Role.FLAG));
    return cell.role(planned.role()).format(planned.format());
  }

  /** Returns the cell of a box; the marks of two short logs stand with the left one. */
  private Cell cell(LiveSpot spot, TypedBox box) {
    Measures known = live.plan().job().built().measures(spot.place());
    Measures marks = live.plan().job().built().measures(spot.place().whole());
    return switch (box) {
      case MEASURED -> live.typed(known.mid(), spot.named(box));
      case MEASURED_BUTT -> live.typed(known.butt(), spot.named(box));
      case MEASURED_TIP -> live.typed(known.tip(), spot.named(box));
      case USED -> Cell.blank(Role.TYPED_IN_TEXT).named(spot.named(box));
      case LOWER_CUT -> mark(spot, box, marks.lowerCut());
      default -> mark(spot, box, marks.upperCut());
    };
  }

  private Cell mark(LiveSpot spot, TypedBox box, Optional<Length> known) {
    return spot.place().side() == PlacePart.RIGHT
        ? Cell.text("◄").role(Role.BODY_CENTRE)
        : live.typed(known, box.named(round, spot.wall().name()));
  }

  /** Checks what is typed, column by column. */
  private void rules(int top, int last) {
    int column = 1 + WALL + PLANNED;
    for (TypedBox box : BOXES) {
      sheet.rule(BoxRules.of(live, box, new Area(top, column, last, column)));
      column += span(box);
    }
  }
}
