package roundbook.csv;

import java.util.List;
import java.util.regex.Pattern;

/**
 * How a text table is laid out.
 *
 * @param body the text without a {@code sep=} line, every quoted field well formed
 * @param skipped how many lines were left out at the top
 * @param separator the character between cells
 * @param decimalComma whether numbers are written with a decimal comma
 */
record Layout(String body, int skipped, char separator, boolean decimalComma) {
  private static final int SAMPLE_LINES = 40;
  private static final char[] SEPARATORS = {'\t', ';', '|', ','};
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<![\\d.,])\\d+,\\d+(?![\\d.,])");

  static Layout of(String text) {
    String first = text.lines().findFirst().orElse("").strip();
    boolean told =
        first.length() == 5 && first.toLowerCase(java.util.Locale.ROOT).startsWith("sep=");
    String body = told ? text.substring(text.indexOf('\n') + 1) : text;
    char separator = told ? first.charAt(4) : separatorOf(body);
    boolean comma = separator != ',' && DECIMAL_COMMA.matcher(sample(body)).find();
    return new Layout(body, told ? 1 : 0, separator, comma);
  }

  /** Finds the separator that stands in the most lines, the same number of times in each. */
  private static char separatorOf(String body) {
    List<String> lines = body.lines().filter(line -> !line.isBlank()).limit(SAMPLE_LINES).toList();
    char best = ',';
    double bestScore = 0;
    for (char separator : SEPARATORS) {
      double score = score(lines, separator);
      if (score > bestScore) {
        bestScore = score;
        best = separator;
      }
    }
    return best;
  }

  private static double score(List<String> lines, char separator) {
    long[] counts = lines.stream().mapToLong(line -> count(line, separator)).toArray();
    long most = java.util.Arrays.stream(counts).max().orElse(0);
    if (most == 0) {
      return 0;
    }
    long cut = java.util.Arrays.stream(counts).filter(count -> count > 0).count();
    long even = java.util.Arrays.stream(counts).filter(count -> count == most).count();
    double preference = separator == ',' ? 0.9 : 1;
    return preference * (cut + even) / (2.0 * counts.length) * (most > 1 ? 1 : 0.8);
  }

  private static long count(String line, char separator) {
    boolean quoted = false;
    long count = 0;
    for (int i = 0; i < line.length(); i++) {
      char letter = line.charAt(i);
      boolean atStart = i == 0 || line.charAt(i - 1) == separator;
      if (letter == '"' && (quoted || atStart)) {
        quoted = !quoted;
      } else if (letter == separator && !quoted) {
        count++;
      }
    }
    return count;
  }

  private static String sample(String body) {
    StringBuilder sample = new StringBuilder();
    body.lines().limit(SAMPLE_LINES).forEach(line -> sample.append(line).append('\n'));
    return sample.toString();
  }
}
