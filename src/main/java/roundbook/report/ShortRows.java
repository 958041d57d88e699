package roundbook.report;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.Role;
import roundbook.plan.PiecePlan;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.ShortStock;
import roundbook.units.Length;

/**
 * How a short log beside an opening stands in the lists; nothing of it follows what is typed.
 *
 * @param context the plan
 * @param placed the short log in its place
 * @param part which log it is and which end lies at the corner
 * @param atLeft whether it stands left of the opening, seen from outside
 */
record ShortRows(CrewContext context, PlacedLog placed, ShortStock.Part part, boolean atLeft) {
  /** Returns the short logs that stand in the place of a long one, the left one first. */
  static List<ShortRows> of(CrewContext context, ShortStock stock) {
    Length allowance = context.rules().length(Setting.SQUARING_ALLOWANCE);
    List<PlacedLog> logs = stock.placed(allowance);
    return List.of(
        new ShortRows(context, logs.get(0), stock.left(), true),
        new ShortRows(context, logs.get(1), stock.right(), false));
  }

  /** Returns what a page says of short logs in the place of a long one. */
  static String said(CrewContext context, ShortStock stock) {
    return context.text(
        "beside.round",
        stock.freed().wall().name() + " " + stock.freed().round(),
        stock.opening().opening().name(),
        stock.freed().piece().log().tag(),
        of(context, stock).stream().map(ShortRows::said).collect(Collectors.joining("; ")));
  }

  /**
   * Returns the rows of a place: one of its log, or one of each short log that stands there
   * instead.
   *
   * @param ofShort what is written of a short log
   * @param ofWhole what is written of the log where none stands instead
   */
  static Stream<List<Cell>> rows(
      CrewContext context,
      PiecePlan piece,
      Function<ShortRows, List<Cell>> ofShort,
      Supplier<List<Cell>> ofWhole) {
    return context
        .plan()
        .takeoff()
        .beside(piece.placed())
        .map(stock -> of(context, stock).stream().map(ofShort))
        .orElseGet(() -> Stream.of(ofWhole.get()));
  }

  /** Returns the row of the cut list: one shoulder only, for the other end is the opening's. */
  List<Cell> cut(Cells cells) {
    Piece piece = placed.piece();
    boolean out = part.buttOut();
    Cell none = cells.centre("–");
    return List.of(
        cells.count(placed.round()).align(Align.CENTRE),
        cells.bold(place()).align(Align.CENTRE),
        cells.bold(piece.log().tag()),
        cells.centre("● " + buttAt()),
        cells.tape(piece.cutOffButt()),
        out ? cells.tape(shoulder()) : none,
        out ? none : cells.tape(shoulder()),
        cells.tape(piece.trimmed()).role(Role.LARGE_CUT),
        cells.tape(piece.fallsOff()),
        Cell.blank(Role.TICK),
        Cell.blank(Role.TICK));
  }

  /** Returns the row of the hewing sheet. */
  List<Cell> hew(Cells cells) {
    Piece piece = placed.piece();
    Log log = piece.log();
    Length thickness = placed.wall().thickness();
    Length sweep = log.traits().sweep();
    return List.of(
        cells.count(placed.round()),
        cells.bold(place()).align(Align.CENTRE),
        cells.bold(log.tag()),
        cells.text(log.traits().species()),
        cells.exact(thickness).role(Role.BODY_BOLD).align(Align.CENTRE),
        sweep.isZero() ? cells.centre("") : cells.printed(sweep),
        cells.word(placed.buttAtStart() ? "hewing.left" : "hewing.right"),
        cells.printed(piece.butt()),
        cells.printed(piece.mid()),
        cells.printed(piece.tip()),
        cells.printed(piece.butt().minus(thickness).dividedBy(2)),
        cells.printed(piece.tip().minus(thickness).dividedBy(2)),
        cells.word("beside.mind"),
        Cell.blank(Role.TICK));
  }

  /** Returns what its tag says of its ends, and in which order its marks stand. */
  String ends() {
    return context.text("tags.ends", buttAt(), part.buttOut() ? opening() : corner());
  }

  private String said() {
    return context.text(
        "beside.piece",
        sign(),
        part.log().tag(),
        buttAt(),
        context.formats().feetInches(shoulder()),
        context.formats().feetInches(part.length()));
  }

  /** Returns the wall with the side of the opening. */
  String place() {
    return placed.wall().name() + " " + sign();
  }

  private String sign() {
    return atLeft ? "◄" : "►";
  }

  private Length shoulder() {
    Wall crossing = atLeft ? building().after(placed.wall()) : building().before(placed.wall());
    return part.shoulder(crossing.thickness().plus(context.rules().overhang()));
  }

  private String buttAt() {
    return part.buttOut() ? corner() : opening();
  }

  private String opening() {
    return context.text("beside.opening");
  }

  private String corner() {
    return atLeft ? building().endCorner(placed.wall()) : building().startCorner(placed.wall());
  }

  private Building building() {
    return context.plan().job().building();
  }
}
