package roundbook.intake;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Setting;

/** Finds the setting that a misspelt name was most likely meant to be. */
final class Spelling {
  private Spelling() {}

  /**
   * Returns the label nearest to a name.
   *
   * @param most how many letters may be added, left out or changed
   */
  static Optional<String> nearest(String name, int most) {
    String wanted = plain(name);
    return Stream.of(Setting.values())
        .map(Setting::label)
        .filter(label -> distance(plain(label), wanted) <= most)
        .min(Comparator.comparingInt(label -> distance(plain(label), wanted)));
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
  }

  /** The edit distance of Levenshtein, a row of its table at a time. */
  private static int distance(String one, String other) {
    int[] row = new int[other.length() + 1];
    for (int i = 0; i < row.length; i++) {
      row[i] = i;
    }
    for (int i = 1; i <= one.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int least = Math.min(corner + change, Math.min(row[j], row[j - 1]) + 1);
        corner = row[j];
        row[j] = least;
      }
    }
    return row[other.length()];
  }
}
