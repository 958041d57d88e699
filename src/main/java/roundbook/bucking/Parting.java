package roundbook.bucking;

import java.util.List;

/**
 * Places that an opening cuts through: each may have one piece for the whole wall, or two, one each
 * side of the opening.
 *
 * <p>Gaps beside openings are counted where two pieces lie, at the ends of both; between them a
 * place is as thick as a straight line from the end of the one to the end of the other.
 *
 * @param places the places
 * @param trim steps squared off each end of a piece
 * @param least the least gap over and under two pieces, in ticks
 * @param most the largest gap there
 * @param thinner how many ticks thinner than its round a piece may be at the inside face
 * @param prices for each stem, in unit², what a piece of it costs in each place, and then at the
 *     left and at the right of the opening in each of these
 * @param buttsLeft whether the butts of the first round lie at the left, seen from outside
 */
public record Parting(
    List<PartedPlace> places,
    int trim,
    long least,
    long most,
    long thinner,
    double[][] prices,
    boolean buttsLeft) {
  /** No place is cut through. */
  public static final Parting NONE = new Parting(List.of(), 0, 0, 0, 0, new double[0][], true);

  /** Copies the list. */
  public Parting {
    places = List.copyOf(places);
  }

  /**
   * A place that an opening cuts through.
   *
   * @param place its number
   * @param left steps from saw cut to saw cut of the piece at the left, seen from outside
   * @param right those of the piece at the right
   */
  public record PartedPlace(int place, int left, int right) {}
}
