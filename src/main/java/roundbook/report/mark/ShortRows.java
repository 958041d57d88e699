package roundbook.report.mark;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.page.Cell;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.CrewContext;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveSpot;
import roundbook.units.Length;

/**
 * How a short log beside an opening stands in the lists.
 *
 * @param context the plan
 * @param piece its place
 * @param half the short log
 */
public record ShortRows(CrewContext context, PiecePlan piece, PiecePlan.Half half) {
  /** Returns the short logs that fill a place, the left one first; none where one log does. */
  public static List<ShortRows> of(CrewContext context, PiecePlan piece) {
    return piece.halves().stream().map(half -> new ShortRows(context, piece, half)).toList();
  }

  /** Returns what a page says of the short logs of a place. */
  public static String said(CrewContext context, PiecePlan piece) {
    return context.text(
        "beside.round",
        piece.placed().wall().name() + " " + piece.placed().round(),
        piece.halves().get(0).opening(),
        of(context, piece).stream().map(ShortRows::said).collect(Collectors.joining("; ")));
  }

  /**
   * Returns the rows of a place: one of its log, or one of each short log that lies there.
   *
   * @param ofShort what is written of a short log
   * @param ofWhole what is written of a log that fills its place alone
   */
  public static Stream<List<Cell>> rows(
      CrewContext context,
      PiecePlan piece,
      Function<ShortRows, List<Cell>> ofShort,
      Supplier<List<Cell>> ofWhole) {
    return piece.halves().isEmpty()
        ? Stream.of(ofWhole.get())
        : of(context, piece).stream().map(ofShort);
  }

  /** Returns what its tag says of its ends, and in which order its marks stand. */
  public Cell ends() {
    String tip = half.buttOut() ? opening() : half.corner();
    return cells().aroundOffButt("tags.ends", buttAt(), tip);
  }

  /** Returns its cells, which follow what is typed. */
  public PieceCells cells() {
    return new PieceCells(LiveContext.of(context), piece, LiveSpot.of(half));
  }

  private String said() {
    return context.text(
        "beside.piece",
        sign(),
        half.placed().piece().log().tag(),
        buttAt(),
        context.formats().feetInches(shoulder()),
        context.formats().feetInches(half.placed().piece().trimmed()));
  }

  /** Returns the wall with the side of the opening. */
  public String place() {
    return place(LiveSpot.of(half));
  }

  /** Returns a log's wall, with its side of an opening where it lies beside one. */
  public static String place(LiveSpot spot) {
    String wall = spot.wall().name();
    return switch (spot.place().side()) {
      case WHOLE -> wall;
      case LEFT -> wall + " ◄";
      case RIGHT -> wall + " ►";
    };
  }

  private String sign() {
    return half.left() ? "◄" : "►";
  }

  private Length shoulder() {
    return half.shoulder();
  }

  /** Returns the corner or the opening at which its butt lies. */
  public String buttAt() {
    return half.buttOut() ? half.corner() : opening();
  }

  private String opening() {
    return context.text("beside.opening");
  }
}
