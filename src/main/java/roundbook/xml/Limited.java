package roundbook.xml;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * A stream that refuses to go on past a limit, so that a small file cannot unpack to a huge one.
 */
public final class Limited extends FilterInputStream {
  private final long limit;
  private long read;

  /** Says that a part of a file is longer than its limit. */
  public static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1L;
    private final long limit;

    /** Says the limit, in bytes. */
    public TooLarge(long limit) {
      super("exceeds the max of " + limit + " bytes");
      this.limit = limit;
    }

    /** Returns the limit, in bytes. */
    public long limit() {
      return limit;
    }
  }

  /**
   * Limits a stream.
   *
   * @param in the stream
   * @param limit how many bytes it may give
   */
  public Limited(InputStream in, long limit) {
    super(in);
    this.limit = limit;
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    count(one < 0 ? 0 : 1);
    return one;
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    int some = super.read(bytes, from, length);
    count(Math.max(0, some));
    return some;
  }

  private void count(int more) throws TooLarge {
    read += more;
    if (read > limit) {
      throw new TooLarge(limit);
    }
  }
}
