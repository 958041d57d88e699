package roundbook.report.live;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * One log of the tally where it lies, with the names of the cells that are typed in for it.
 *
 * @param place its place, or its side of an opening
 * @param placed the log
 * @param near distance of the near shoulder from the trimmed butt; zero at an opening
 * @param far distance of the far shoulder from the trimmed butt; the length at an opening
 */
public record LiveSpot(Place place, PlacedLog placed, Length near, Length far) {
  /** Returns the logs that lie in a place: one, or a short one each side of an opening. */
  public static List<LiveSpot> of(PiecePlan piece) {
    return piece.halves().isEmpty()
        ? List.of(whole(piece))
        : piece.halves().stream().map(LiveSpot::of).toList();
  }

  /** Returns a whole place by the log that fills it, or by the left one of two. */
  public static LiveSpot whole(PiecePlan piece) {
    return new LiveSpot(
        piece.placed().place(), piece.placed().first(), piece.nearShoulder(), piece.farShoulder());
  }

  /** Returns a short log beside an opening. */
  public static LiveSpot of(PiecePlan.Half half) {
    Length end = half.placed().piece().trimmed();
    return new LiveSpot(
        half.place(),
        half.placed(),
        half.buttOut() ? half.shoulder() : Length.ZERO,
        half.buttOut() ? end : half.shoulder());
  }

  public Piece piece() {
    return placed.piece();
  }

  public Wall wall() {
    return placed.wall();
  }

  public int round() {
    return place.round();
  }

  /** Returns the name of the cell of one of its boxes. */
  public String named(TypedBox box) {
    return box.named(round(), place.named());
  }

  /** Returns the conditions that no other end is typed than was known when this was planned. */
  Stream<String> endsAsPlanned(LiveContext live) {
    Measures typed = live.plan().job().built().measures(place);
    return Stream.of(
        asPlanned(live, typed.butt(), named(TypedBox.MEASURED_BUTT)),
        asPlanned(live, typed.tip(), named(TypedBox.MEASURED_TIP)));
  }

  private static String asPlanned(LiveContext live, java.util.Optional<Length> known, String name) {
    return known
        .map(length -> "N(" + name + ")=" + live.number(length))
        .orElse("COUNT(" + name + ")=0");
  }
}
