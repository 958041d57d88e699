package roundbook.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The encoding of a text file and how it was found.
 *
 * @param charset the encoding
 * @param mark how many bytes the byte order mark takes
 * @param guessed whether the bytes only leave a guess
 */
record Encoding(Charset charset, int mark, boolean guessed) {
  private static final int SAMPLE = 4096;
  private static final int BUFFER = 1 << 16;
  private static final long HIGH_BITS = 0x8080808080808080L;

  /** Tells the encoding: by its mark, else UTF-16 or UTF-8 by its bytes, else Windows-1252. */
  static Encoding of(Path file) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(SAMPLE);
    }
    if (starts(head, 0xEF, 0xBB, 0xBF) && isUtf8(file)) {
      return new Encoding(StandardCharsets.UTF_8, 3, false);
    }
    if (starts(head, 0xFF, 0xFE)) {
      return new Encoding(StandardCharsets.UTF_16LE, 2, false);
    }
    if (starts(head, 0xFE, 0xFF)) {
      return new Encoding(StandardCharsets.UTF_16BE, 2, false);
    }
    return unmarked(file, head);
  }

  private static Encoding unmarked(Path file, byte[] head) throws IOException {
    int pairs = head.length / 2;
    if (pairs > 1 && zeros(head, 1) > pairs / 2) {
      return new Encoding(StandardCharsets.UTF_16LE, 0, false);
    }
    if (pairs > 1 && zeros(head, 0) > pairs / 2) {
      return new Encoding(StandardCharsets.UTF_16BE, 0, false);
    }
    int mark = starts(head, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    return isUtf8(file)
        ? new Encoding(StandardCharsets.UTF_8, mark, false)
        : new Encoding(Charset.forName("windows-1252"), mark, true);
  }

  /** Opens the text after its mark. */
  Reader open(Path file) throws IOException {
    InputStream in = Files.newInputStream(file);
    in.skipNBytes(mark);
    return new InputStreamReader(in, charset);
  }

  private static boolean isUtf8(Path file) throws IOException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
    CharBuffer letters = CharBuffer.allocate(BUFFER);
    try (FileChannel channel = FileChannel.open(file)) {
      boolean more = true;
      while (more) {
        more = channel.read(bytes) >= 0;
        bytes.flip();
        passPlain(bytes);
        letters.clear();
        if (decoder.decode(bytes, letters, !more).isError()) {
          return false;
        }
        bytes.compact();
      }
    }
    return true;
  }

  /** Passes over bytes that stand for one letter each in any case, which most texts are made of. */
  private static void passPlain(ByteBuffer bytes) {
    int at = bytes.position();
    while (at + Long.BYTES <= bytes.limit() && (bytes.getLong(at) & HIGH_BITS) == 0) {
      at += Long.BYTES;
    }
    while (at < bytes.limit() && bytes.get(at) >= 0) {
      at++;
    }
    bytes.position(at);
  }

  private static int zeros(byte[] bytes, int from) {
    int count = 0;
    for (int i = from; i < bytes.length; i += 2) {
      count += bytes[i] == 0 ? 1 : 0;
    }
    return count;
  }

  private static boolean starts(byte[] bytes, int... marks) {
    if (bytes.length < marks.length) {
      return false;
    }
    for (int i = 0; i < marks.length; i++) {
      if ((bytes[i] & 0xFF) != marks[i]) {
        return false;
      }
    }
    return true;
  }
}
