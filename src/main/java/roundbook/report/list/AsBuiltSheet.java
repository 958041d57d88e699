package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.CellNames;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.plan.TallyBias;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveSpot;
import roundbook.report.mark.ShortRows;
import roundbook.stack.Course;
import roundbook.units.Length;

/**
 * What is cut and measured up to a revision, from which the next one tells what is new.
 *
 * <p>The boxes on the rounds' pages hold the same values again and may be corrected there; this
 * sheet keeps what this revision was planned with.
 */
final class AsBuiltSheet {
  private static final double[] WIDTHS = {7, 7, 9, 10, 9, 9, 9, 10, 9, 9, 9};
  private final CrewContext context;
  private final AsBuilt built;
  private final Cells cells;
  private final ListSheet list;

  private AsBuiltSheet(CrewContext context) {
    this.context = context;
    this.built = context.plan().job().built();
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.AS_BUILT, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet; none while nothing is built. */
  static List<Sheet> sheets(CrewContext context) {
    return isWanted(context) ? List.of(new AsBuiltSheet(context).sheet()) : List.of();
  }

  /** Returns whether anything is cut or measured. */
  static boolean isWanted(CrewContext context) {
    AsBuilt built = context.plan().job().built();
    return !built.cut().isEmpty() || !built.measures().isEmpty();
  }

  private Sheet sheet() {
    list.title(Tab.AS_BUILT);
    list.text(Role.NOTE, context.text("as_built.note", cells.unitWord()));
    rounds();
    logs();
    bias();
    return list.build();
  }

  private void rounds() {
    int begun = built.rounds() + (built.isBegun(built.rounds() + 1) ? 1 : 0);
    if (begun == 0) {
      return;
    }
    list.heading(context.text("as_built.rounds"));
    list.spans(1, 1, 1, 1, 1, 1, 1, 2, 2).headOf("as_built.rounds.head");
    for (Course course : context.plan().choice().courses().subList(0, begun)) {
      int round = course.round();
      boolean cut = built.cutSize(round).isPresent();
      list.row(
          cells.count(round),
          cut
              ? cells.exact(course.notch().size()).named(CellNames.built("size", round))
              : cells.text(""),
          cut
              ? cells.exact(course.notch().gap()).named(CellNames.built("gap", round))
              : cells.text(""),
          cells.exact(course.notch().upper()),
          cells.exact(course.notch().lower()),
          done(round),
          cells.tape(context.plan().stack().levelHeight(round)),
          cells
              .text(corners(corner -> built.firstReading(round, corner)))
              .named(CellNames.built("first_readings", round)),
          cells
              .text(corners(corner -> built.reading(round, corner)))
              .named(CellNames.built("readings", round)));
      if (cut) {
        correction(round);
      }
    }
  }

  /** Returns whose logs of a round are cut: all, or those of some walls. */
  private Cell done(int round) {
    if (built.isCut(round)) {
      return cells.centre(context.text("as_built.all"));
    }
    String walls =
        context.plan().job().building().walls().stream()
            .map(wall -> new Place(round, wall.name()))
            .filter(built::isCut)
            .map(Place::wall)
            .collect(Collectors.joining(CellNames.BETWEEN_TAGS));
    return cells.centre(walls).named(CellNames.built("walls", round));
  }

  /** Puts what the tally was corrected by when the round was planned right of the page. */
  private void correction(int round) {
    Cell cell = cells.exact(built.cut().get(round - 1).correction()).role(Role.HELPER);
    int column = WIDTHS.length + 2;
    list.sheet().put(list.next() - 1, column, cell.named(CellNames.built("correction", round)));
  }

  /** Returns what each corner read, such as {@code NW=18.25; NE=18.125}. */
  private String corners(Function<String, Optional<Length>> reading) {
    return context.plan().job().building().corners().stream()
        .flatMap(
            corner ->
                reading.apply(corner).stream()
                    .map(read -> corner + "=" + cells.formats().decimal(read)))
        .collect(Collectors.joining("; "));
  }

  private String signed(Length length) {
    String mark = cells.formats().mark(length);
    return length.isNegative() || mark.equals("0") ? mark : "+" + mark;
  }

  private void logs() {
    list.heading(context.text("as_built.logs"));
    list.spans(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1).headOf("as_built.logs.head");
    for (PiecePlan piece : context.plan().pieces()) {
      int round = piece.placed().round();
      if (built.held(round, piece.placed().wall().name()).isPresent()) {
        LiveSpot.of(piece).forEach(spot -> list.row(row(spot)));
      }
    }
  }

  /** The marks of two short logs are recorded with the left one. */
  private List<Cell> row(LiveSpot spot) {
    int round = spot.round();
    String wall = spot.place().named();
    Measures typed = built.measures(spot.place());
    Measures marks = built.measures(spot.place().whole());
    boolean right = spot.place().side() == PlacePart.RIGHT;
    Length tally = TallyBias.talliedMid(context.plan().job(), spot.placed());
    List<Cell> row = new ArrayList<>();
    row.add(cells.count(round));
    row.add(cells.centre(ShortRows.place(spot)));
    String tag = spot.piece().log().tag();
    row.add(cells.bold(tag).named(CellNames.built("log", round, wall)));
    row.add(cells.exact(spot.piece().cutOffButt()));
    row.add(known(typed.butt()).named(CellNames.built("butt", round, wall)));
    row.add(known(typed.mid()).named(CellNames.built("mid", round, wall)));
    row.add(known(typed.tip()).named(CellNames.built("tip", round, wall)));
    row.add(cells.printed(tally));
    row.add(typed.mid().map(mid -> differs(mid.minus(tally))).orElse(cells.text("")));
    String whole = spot.place().whole().named();
    row.add(
        right
            ? cells.text("")
            : known(marks.lowerCut()).named(CellNames.built("lower", round, whole)));
    row.add(
        right
            ? cells.text("")
            : known(marks.upperCut()).named(CellNames.built("upper", round, whole)));
    return row;
  }

  private Cell known(Optional<Length> length) {
    return length.map(cells::exact).orElse(cells.text(""));
  }

  private Cell differs(Length length) {
    boolean metric = context.rules().metric();
    return cells.printed(length).format(metric ? Format.WHOLE_SIGNED : Format.FRACTION_SIGNED);
  }

  /** Writes how the logs hewn so far differ from the tally, and what can be done about it. */
  private void bias() {
    String unit = context.rules().unit().symbol();
    TallyBias.of(context.plan())
        .ifPresent(
            bias -> {
              list.text(
                  Role.PLAIN_BOLD,
                  context.text(
                      "as_built.bias",
                      bias.logs(),
                      signed(bias.mean()),
                      signed(bias.least()),
                      unit,
                      signed(bias.most())));
              if (bias.worthCorrecting(context.rules())) {
                String tab = Tab.SETTINGS.in(context.words());
                String value = cells.formats().mark(bias.correction(context.rules()));
                list.text(Role.CAUTION, context.text("as_built.bias.offer", value, tab));
              }
            });
    Length used = context.rules().length(Setting.TALLY_CORRECTION);
    if (!used.isZero()) {
      list.text(Role.PLAIN, context.text("as_built.bias.used", signed(used), unit));
    }
  }
}
