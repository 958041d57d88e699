package roundbook.csv;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Cuts the lines of a table whose columns stand under one another, or apart by blanks.
 *
 * <p>Columns are where no line of figures has a letter; as many as the headings above have. A line
 * that crosses a gap, as headings often do, is cut at its own blanks where that gives as many
 * cells; else what crosses stays in the column that it begins in, so that the next one is empty.
 */
final class Cuts {
  /** What cut lines have between their cells. */
  static final char BETWEEN = '\t';

  private static final int FEWEST = 3;
  private static final Pattern WIDE = Pattern.compile("\\s{2,}");
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern FIGURE = Pattern.compile("(?:^|\\s)\\S*\\d\\S*");
  private static final Pattern DECIMAL_COMMAS = Pattern.compile("(?:[^,]|(?<=\\d),(?=\\d))*");

  private final int columns;
  private final int[] begins;

  private Cuts(int columns, int[] begins) {
    this.columns = columns;
    this.begins = begins;
  }

  /** Finds the columns of a text's first lines; empty where another mark separates its cells. */
  static Optional<Cuts> of(List<String> lines) {
    boolean marked =
        lines.stream()
            .anyMatch(
                line ->
                    line.indexOf('\t') >= 0
                        || line.indexOf(';') >= 0
                        || line.indexOf('|') >= 0
                        || !DECIMAL_COMMAS.matcher(line).matches());
    List<String> figures = lines.stream().filter(Cuts::isFigures).toList();
    int first = figures.isEmpty() ? -1 : lines.indexOf(figures.get(0));
    if (marked || first < 1) {
      return Optional.empty();
    }
    String heading = lines.get(first - 1).strip();
    int wide = WIDE.split(heading).length;
    int all = BLANKS.split(heading).length;
    for (int columns : new int[] {wide, all}) {
      int[] begins = begins(figures, columns);
      boolean even =
          figures.stream().allMatch(line -> BLANKS.split(line.strip()).length == columns);
      if (columns >= FEWEST && (begins.length == columns || even)) {
        return Optional.of(new Cuts(columns, even ? new int[0] : begins));
      }
    }
    return Optional.empty();
  }

  private static boolean isFigures(String line) {
    var matcher = FIGURE.matcher(line);
    int count = 0;
    while (matcher.find()) {
      count++;
    }
    return count >= FEWEST - 1;
  }

  /** Returns where columns begin; the narrowest gaps are none where there are more than wanted. */
  private static int[] begins(List<String> lines, int wanted) {
    BitSet letters = new BitSet();
    for (String line : lines) {
      for (int i = 0; i < line.length(); i++) {
        if (!Character.isWhitespace(line.charAt(i))) {
          letters.set(i);
        }
      }
    }
    List<int[]> gaps = new ArrayList<>();
    for (int at = letters.nextClearBit(letters.nextSetBit(0)); at < letters.length(); ) {
      int next = letters.nextSetBit(at);
      gaps.add(new int[] {next, next - at});
      at = letters.nextClearBit(next);
    }
    List<int[]> widest = new ArrayList<>(gaps);
    widest.sort((one, other) -> other[1] - one[1]);
    List<int[]> kept = widest.subList(0, Math.min(Math.max(0, wanted - 1), widest.size()));
    int[] begins = new int[kept.size() + 1];
    for (int i = 0; i < kept.size(); i++) {
      begins[i + 1] = kept.get(i)[0];
    }
    Arrays.sort(begins);
    return begins;
  }

  /** Cuts a line; one that is no row of the table stays whole. */
  String cut(String line) {
    String text = line.strip();
    String[] words = BLANKS.split(text);
    if (begins.length == 0) {
      String[] wide = WIDE.split(text);
      return wide.length == columns ? join(wide) : words.length == columns ? join(words) : line;
    }
    return isClear(line) ? byPlace(line) : crossing(line, words);
  }

  private boolean isClear(String line) {
    for (int i = 1; i < begins.length; i++) {
      boolean blank =
          begins[i] > line.length() || Character.isWhitespace(line.charAt(begins[i] - 1));
      if (!blank) {
        return false;
      }
    }
    return true;
  }

  private String byPlace(String line) {
    String[] cells = new String[begins.length];
    for (int i = 0; i < cells.length; i++) {
      int from = Math.min(begins[i], line.length());
      int to = i + 1 < begins.length ? Math.min(begins[i + 1], line.length()) : line.length();
      cells[i] = line.substring(from, to);
    }
    return join(cells);
  }

  private String crossing(String line, String[] words) {
    String[] wide = WIDE.split(line.strip());
    if (wide.length == columns) {
      return join(wide);
    }
    if (words.length == columns) {
      return join(words);
    }
    String[] cells = new String[begins.length];
    Arrays.fill(cells, "");
    int column = 0;
    for (int at = 0; at < line.length(); ) {
      int end = at;
      while (end < line.length() && !Character.isWhitespace(line.charAt(end))) {
        end++;
      }
      while (column + 1 < begins.length && begins[column + 1] <= at) {
        column++;
      }
      cells[column] = (cells[column] + " " + line.substring(at, end)).strip();
      at = end + 1;
    }
    return join(cells);
  }

  private static String join(String[] cells) {
    return String.join(String.valueOf(BETWEEN), Arrays.stream(cells).map(String::strip).toList());
  }
}
