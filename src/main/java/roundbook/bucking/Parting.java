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
 * @param ends what is wanted of pieces beside openings
 * @param prices what is paid for them
 * @param buttsLeft whether the butts of the first round lie at the left, seen from outside
 */
public record Parting(List<PartedPlace> places, Ends ends, Prices prices, boolean buttsLeft) {
  /** No place is cut through. */
  public static final Parting NONE =
      new Parting(List.of(), new Ends(0, 0, 0, 0), new Prices(0, new double[0]), true);

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

  /**
   * What is wanted of pieces beside openings.
   *
   * @param trim steps squared off each end
   * @param least the least gap over and under them, in ticks
   * @param most the largest gap
   * @param thinner how much thinner than its round a log may be at the inside face of its corner
   */
  public record Ends(int trim, long least, long most, long thinner) {}

  /**
   * What is paid, in unit².
   *
   * @param whole what a piece for the whole wall costs in such a place
   * @param beside for each stem what a piece of it costs beside an opening
   */
  public record Prices(double whole, double[] beside) {}
}
