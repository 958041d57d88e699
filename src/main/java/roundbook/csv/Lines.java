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
  private boolean skipLineFeed;

  Lines(Reader reader) {
    this.reader = reader;
  }

  /** Says that a line is longer than any tally's. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;

    TooLong() {
      super("a line is longer than " + LONGEST + " characters");
    }
  }

  /** Returns the next line without its end; null after the last. */
  String next() throws IOException {
    return putBack.isEmpty() ? read() : putBack.pop();
  }

  /** Puts a line back, to be the next. */
  void putBack(String text) {
    putBack.push(text);
  }

  private String read() throws IOException {
    line.setLength(0);
    boolean any = false;
    for (int letter = letter(); letter >= 0; letter = letter()) {
      boolean secondOfPair = letter == '\n' && skipLineFeed;
      skipLineFeed = letter == '\r';
      if (secondOfPair) {
        continue;
      }
      if (letter == '\n' || letter == '\r') {
        return line.toString();
      }
      any = true;
      append((char) letter);
    }
    return any ? line.toString() : null;
  }

  private void append(char letter) throws IOException {
    if (letter != 0) {
      line.append(letter);
    }
    if (line.length() > LONGEST) {
      throw new TooLong();
    }
  }

  private int letter() throws IOException {
    if (at == end) {
      end = reader.read(buffer);
      at = 0;
      if (end <= 0) {
        end = 0;
        return -1;
      }
    }
    return buffer[at++];
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
