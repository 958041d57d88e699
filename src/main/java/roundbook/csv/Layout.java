package roundbook.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a text table is laid out.
 *
 * @param encoding its encoding
 * @param skipped how many lines at the top are no part of the table: 1 for a {@code sep=} line
 * @param separator the character between cells
 * @param decimalComma whether numbers are written with a decimal comma
 * @param blank whether there is nothing but blanks in its first lines
 * @param cuts cuts lines whose columns are apart by blanks; null for others
 */
record Layout(
    Encoding encoding,
    int skipped,
    char separator,
    boolean decimalComma,
    boolean blank,
    Cuts cuts) {
  private static final int SAMPLE_LINES = 60;
  private static final char[] SEPARATORS = {'\t', ';', '|', ','};
  private static final Pattern COMMA_NUMBER =
      Pattern.compile("(?<![\\d.,])\\d{1,4},(\\d+)(?![\\d.,])");
  private static final Pattern POINT_NUMBER =
      Pattern.compile("(?<![\\d.])\\d{1,4}\\.(\\d+)(?![\\d.])");

  static Layout of(Path file) throws IOException {
    Encoding encoding = Encoding.of(file);
    List<String> sample = new ArrayList<>();
    try (Lines lines = new Lines(encoding.open(file))) {
      String line = lines.next();
      while (line != null && sample.size() < SAMPLE_LINES) {
        if (!line.isBlank()) {
          sample.add(line);
        }
        line = lines.next();
      }
    }
    return of(encoding, sample);
  }

  private static Layout of(Encoding encoding, List<String> sample) {
    String first = sample.isEmpty() ? "" : sample.get(0).strip().toLowerCase(Locale.ROOT);
    String bare = first.replace("\"", "");
    boolean told = bare.startsWith("sep=") && bare.length() <= 5;
    List<String> body = told ? sample.subList(1, sample.size()) : sample;
    Cuts cuts = told ? null : Cuts.of(body).orElse(null);
    if (cuts != null) {
      boolean comma = isDecimalComma(body, Cuts.BETWEEN);
      return new Layout(encoding, 0, Cuts.BETWEEN, comma, false, cuts);
    }
    char separator = !told ? separatorOf(body) : bare.length() == 5 ? bare.charAt(4) : '\t';
    boolean comma = isDecimalComma(body, separator);
    return new Layout(encoding, told ? 1 : 0, separator, comma, body.isEmpty(), null);
  }

  /**
   * Commas are decimal unless they cut cells, only ever group thousands beside points, or are fewer
   * than decimal points: a comma typed once among points makes no thousands of the others.
   */
  private static boolean isDecimalComma(List<String> body, char separator) {
    int[] commas = new int[2];
    int[] points = new int[2];
    for (String line : body) {
      count(COMMA_NUMBER, separator == ',' ? quotedNumbers(line) : line, commas);
      count(POINT_NUMBER, line, points);
    }
    return commas[0] > 0
        ? commas[0] >= points[0]
        : commas[1] > 0 && points[0] + points[1] == 0 && separator != ',';
  }

  /** Counts numbers with a mark: first those with decimals, then those that may be thousands. */
  private static void count(Pattern marked, String line, int[] counts) {
    Matcher matcher = marked.matcher(line);
    while (matcher.find()) {
      counts[matcher.group(1).length() == 3 ? 1 : 0]++;
    }
  }

  private static String quotedNumbers(String line) {
    StringBuilder numbers = new StringBuilder();
    Matcher matcher = Pattern.compile("\"(\\d+,\\d+)\"").matcher(line);
    while (matcher.find()) {
      numbers.append(matcher.group(1)).append(' ');
    }
    return numbers.toString();
  }

  /** Finds the separator that stands in the most lines, the same number of times in each. */
  private static char separatorOf(List<String> lines) {
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
    long most = mode(counts);
    if (most == 0) {
      return 0;
    }
    long cut = Arrays.stream(counts).filter(count -> count > 0).count();
    long even = Arrays.stream(counts).filter(count -> count == most).count();
    double preference = separator == ',' ? 0.9 : 1;
    return preference * (cut + even) / (2.0 * counts.length) * (most > 1 ? 1 : 0.8);
  }

  /** Returns the count above zero that most lines have, the larger of two as frequent. */
  private static long mode(long[] counts) {
    long best = 0;
    long bestLines = 0;
    for (long count : counts) {
      long same = Arrays.stream(counts).filter(each -> each == count).count();
      if (count > 0 && (same > bestLines || same == bestLines && count > best)) {
        best = count;
        bestLines = same;
      }
    }
    return best;
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
}
