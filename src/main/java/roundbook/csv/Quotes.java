package roundbook.csv;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells how the quotes of a line are meant.
 *
 * <p>By the rules a quoted field ends at a quote that is not doubled. People who write inches put
 * quotes where the rules have none: {@code "16' 6""} was meant as {@code 16' 6"}.
 *
 * @param separator the character between cells
 */
record Quotes(char separator) {
  /** How a line's quotes come out when they are read by the rules. */
  enum State {
    /** Every quoted field ends where a cell ends. */
    SOUND,
    /** The last field is still open at the end of the line. */
    OPEN,
    /** Something stands between the end of a quoted field and the next cell. */
    BROKEN
  }

  /** Reads a line, or several joined, by the rules. */
  State state(String text) {
    for (int open = opening(text, 0); open >= 0; ) {
      int close = close(text, open + 1);
      if (close < 0) {
        return State.OPEN;
      }
      if (close + 1 < text.length() && text.charAt(close + 1) != separator) {
        return State.BROKEN;
      }
      open = opening(text, close + 1);
    }
    return State.SOUND;
  }

  /** Returns the place of the next quote that begins a cell; negative when there is none. */
  int opening(String text, int from) {
    int quote = text.indexOf('"', from);
    while (quote > 0 && text.charAt(quote - 1) != separator) {
      quote = text.indexOf('"', quote + 1);
    }
    return quote;
  }

  /** Returns how many cells a text of sound quotes has. */
  int count(String text) {
    int count = 1;
    int quote = opening(text, 0);
    for (int cut = text.indexOf(separator); cut >= 0; cut = text.indexOf(separator, cut + 1)) {
      if (quote >= 0 && cut > quote) {
        cut = close(text, quote + 1);
        quote = opening(text, cut + 1);
      } else {
        count++;
      }
    }
    return count;
  }

  /** Returns the place of the quote that ends a field by the rules; negative when none does. */
  private static int close(String text, int from) {
    int i = from;
    while (i < text.length()) {
      if (text.charAt(i) != '"') {
        i++;
      } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
        i += 2;
      } else {
        return i;
      }
    }
    return -1;
  }

  /**
   * Cuts a line where a quote is followed by the end of a cell, taking other quotes as they stand;
   * null when a quoted field never ends so.
   */
  List<String> cutLoosely(String line) {
    List<String> fields = new ArrayList<>();
    int from = 0;
    while (from <= line.length()) {
      boolean quoted = from < line.length() && line.charAt(from) == '"';
      int end = quoted ? looseEnd(line, from + 1) : end(line, from);
      if (end < 0) {
        return null;
      }
      String field = quoted ? line.substring(from + 1, end - 1) : line.substring(from, end);
      fields.add(quoted ? field.replace("\"\"", "\"") : field);
      from = end + 1;
    }
    return fields;
  }

  /** Cuts a line at every separator, taking all quotes as they stand. */
  List<String> cutBare(String line) {
    List<String> fields = new ArrayList<>();
    for (int from = 0; from <= line.length(); from = end(line, from) + 1) {
      fields.add(line.substring(from, end(line, from)));
    }
    return fields;
  }

  /** Writes fields as a line that reads as them by the rules. */
  String line(List<String> fields) {
    StringBuilder line = new StringBuilder();
    for (String field : fields) {
      line.append(line.length() == 0 ? "" : separator);
      line.append('"').append(field.replace("\"", "\"\"")).append('"');
    }
    return line.toString();
  }

  private int end(String line, int from) {
    int end = line.indexOf(separator, from);
    return end < 0 ? line.length() : end;
  }

  private int looseEnd(String line, int from) {
    for (int i = line.indexOf('"', from); i >= 0; i = line.indexOf('"', i + 1)) {
      if (i + 1 == line.length() || line.charAt(i + 1) == separator) {
        return i + 1;
      }
    }
    return -1;
  }
}
