package roundbook.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;

/** The physical lines of a text, whichever way they end; lines may be put back. */
final class Lines implements AutoCloseable {
  /** The longest line that a tally can have. */
  static final int LONGEST = 1_000_000;

  private final Reader reader;
  private final Deque<String> putBack = new ArrayDeque<>();
  private final StringBuilder line = new StringBuilder();
  private final char[] buffer = new char[1 << 15];
  private int at;
  private int end;
  private final Cuts cuts;
  private boolean skipLineFeed;

  Lines(Reader reader) {
    this(reader, null);
  }

  /**
   * Begins with a text whose lines are cut into columns.
   *
   * @param cuts cuts them; null where they stay as they are
   */
  Lines(Reader reader, Cuts cuts) {
    this.reader = reader;
    this.cuts = cuts;
  }

  /** Says that a line is longer than any tally's. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;

    TooLong() {
      super("longer than " + LONGEST);
    }
  }

  /** Returns the next line without its end; null after the last. */
  String next() throws IOException {
    String text = putBack.isEmpty() ? read() : putBack.pop();
    return cuts == null || text == null ? text : cuts.cut(text);
  }

  /** Puts a line back, to be the next. */
  void putBack(String text) {
    putBack.push(text);
  }

  private String read() throws IOException {
    line.setLength(0);
    boolean any = false;
    while (fill()) {
      boolean secondOfPair = buffer[at] == '\n' && skipLineFeed;
      skipLineFeed = false;
      if (secondOfPair) {
        at++;
        continue;
      }
      int from = at;
      at = mark(from);
      if (line.length() == 0 && at < end && buffer[at] != 0) {
        String whole = new String(buffer, from, at - from);
        endsLine();
        return whole;
      }
      line.append(buffer, from, at - from);
      any |= at > from;
      if (line.length() > LONGEST) {
        throw new TooLong();
      }
      if (at < end && endsLine()) {
        return line.toString();
      }
    }
    return any ? line.toString() : null;
  }

  /** Returns the place of the next mark in the buffer, or its end. */
  private int mark(int from) {
    int place = from;
    while (place < end && !isMark(buffer[place])) {
      place++;
    }
    return place;
  }

  /** Passes over a mark; a zero is no letter and is left out of the line. */
  private boolean endsLine() {
    char mark = buffer[at++];
    skipLineFeed = mark == '\r';
    return mark != 0;
  }

  private static boolean isMark(char letter) {
    return letter == '\n' || letter == '\r' || letter == 0;
  }

  /** Returns whether there is a letter to be taken. */
  private boolean fill() throws IOException {
    if (at == end) {
      end = Math.max(0, reader.read(buffer));
      at = 0;
    }
    return at < end;
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
