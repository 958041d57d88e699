package roundbook.xml;

import java.io.FilterInputStream;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;

/**
 * Refuses a tag with more attributes than anything but an attack has.
 *
 * <p>The reader compares every attribute and every namespace of a tag with those before it, so that
 * a tag of a hundred thousand, which packs into a few kilobytes, would keep it busy for minutes.
 */
final class TagCount {
  private static final int MOST = 1000;

  private State state = State.TEXT;
  private int quote;
  private int values;

  private enum State {
    TEXT,
    BEGUN,
    TAG,
    VALUE
  }

  private TagCount() {}

  /** Returns a stream of UTF-8 that refuses such a tag. */
  static InputStream of(InputStream in) {
    TagCount count = new TagCount();
    return new FilterInputStream(in) {
      @Override
      public int read() throws IOException {
        int one = super.read();
        count.take(one);
        return one;
      }

      @Override
      public int read(byte[] bytes, int from, int length) throws IOException {
        int some = super.read(bytes, from, length);
        for (int i = 0; i < some; i++) {
          count.take(bytes[from + i]);
        }
        return some;
      }
    };
  }

  /** Returns a reader that refuses such a tag. */
  static Reader of(Reader in) {
    TagCount count = new TagCount();
    return new FilterReader(in) {
      @Override
      public int read() throws IOException {
        int one = super.read();
        count.take(one);
        return one;
      }

      @Override
      public int read(char[] letters, int from, int length) throws IOException {
        int some = super.read(letters, from, length);
        for (int i = 0; i < some; i++) {
          count.take(letters[from + i]);
        }
        return some;
      }
    };
  }

  private void take(int letter) throws IOException {
    switch (state) {
      case TEXT -> state = letter == '<' ? State.BEGUN : State.TEXT;
      case BEGUN -> {
        values = 0;
        state = letter == '!' || letter == '?' ? State.TEXT : State.TAG;
      }
      case TAG -> inTag(letter);
      default -> state = letter == quote ? State.TAG : State.VALUE;
    }
  }

  private void inTag(int letter) throws IOException {
    if (letter == '>') {
      state = State.TEXT;
    } else if (letter == '"' || letter == '\'') {
      quote = letter;
      state = State.VALUE;
      values++;
      if (values > MOST) {
        throw new IOException("a tag exceeds the max of " + MOST + " attributes");
      }
    }
  }
}
