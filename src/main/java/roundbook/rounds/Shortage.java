package roundbook.rounds;

import java.util.List;
import roundbook.units.Length;

/**
 * What is missing for the rounds that were wanted.
 *
 * @param wanted rounds wanted
 * @param built rounds that the logs allow
 * @param missing what would make the job whole, the longest class first
 */
public record Shortage(int wanted, int built, List<Missing> missing) {
  /** Copies the list. */
  public Shortage {
    missing = List.copyOf(missing);
  }

  /**
   * Logs of one length class that are missing.
   *
   * @param count how many
   * @param least least length of a log, squaring at both ends included
   * @param walls the walls it is for, such as {@code N S}
   * @param midFrom least middle diameter wanted
   * @param midTo largest middle diameter wanted
   */
  public record Missing(int count, Length least, String walls, Length midFrom, Length midTo) {}

  /** Returns how many logs are missing in all. */
  public int count() {
    return missing.stream().mapToInt(Missing::count).sum();
  }
}
