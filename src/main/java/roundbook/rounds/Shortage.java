package roundbook.rounds;

import java.util.List;
import java.util.Optional;
import roundbook.units.Length;

/**
 * What is missing for the rounds that were wanted.
 *
 * @param wanted rounds wanted
 * @param built rounds that the logs allow
 * @param missing what would make the job whole, the longest class first; empty where no order does
 * @param proof what planning again with these logs gave; empty while that was not done
 */
public record Shortage(int wanted, int built, List<Missing> missing, Optional<Proof> proof) {
  /** Copies the list. */
  public Shortage {
    missing = List.copyOf(missing);
  }

  /** A shortage of which the missing logs are counted but were not planned with. */
  public Shortage(int wanted, int built, List<Missing> missing) {
    this(wanted, built, missing, Optional.empty());
  }

  /**
   * What came of planning again with the missing logs.
   *
   * <p>It was done with logs at the thin end, in the middle and at the thick end of every band, and
   * once for each line with one log fewer.
   *
   * @param rounds rounds that stand with all of them, whichever end of the bands they come from
   * @param oneFewer the most rounds that stand with one log fewer, whichever is left out
   * @param leastGap least gap of the plan with logs from the middle of the bands
   * @param mostGap largest gap of that plan
   */
  public record Proof(int rounds, int oneFewer, Length leastGap, Length mostGap) {}

  /**
   * Logs of one length class that are missing.
   *
   * @param count how many
   * @param least least length of a log, squaring at both ends included
   * @param walls the walls it is for, such as {@code N S}
   * @param midFrom least middle diameter wanted
   * @param midTo largest middle diameter wanted
   */
  public record Missing(int count, Length least, String walls, Length midFrom, Length midTo) {
    /** Returns the middle of the band of diameters. */
    public Length middle() {
      return midFrom.plus(midTo).dividedBy(2);
    }

    /** Returns the line for another number of logs. */
    public Missing withCount(int other) {
      return new Missing(other, least, walls, midFrom, midTo);
    }

    /** Returns the line with another band of middle diameters. */
    public Missing withBand(Length from, Length to) {
      return new Missing(count, least, walls, from, to);
    }
  }

  /** Returns whether planning again brought rounds, and fewer with any log fewer. */
  public boolean isProved() {
    return proof
        .filter(again -> again.rounds() > built && again.oneFewer() < again.rounds())
        .isPresent();
  }

  /** Returns how many logs are missing in all. */
  public int count() {
    return missing.stream().mapToInt(Missing::count).sum();
  }
}
