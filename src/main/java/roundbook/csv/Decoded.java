package roundbook.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * A text file's characters and how they were found.
 *
 * @param text the characters, without a byte order mark, every line end one line feed
 * @param guessed whether the encoding had to be guessed
 */
record Decoded(String text, boolean guessed) {
  private static final int SAMPLE = 4096;

  /** Decodes UTF-8 and UTF-16 with or without their marks, else Windows-1252. */
  static Decoded of(byte[] bytes) {
    if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
      return exactly(bytes, 3, StandardCharsets.UTF_8);
    }
    if (starts(bytes, 0xFF, 0xFE)) {
      return exactly(bytes, 2, StandardCharsets.UTF_16LE);
    }
    if (starts(bytes, 0xFE, 0xFF)) {
      return exactly(bytes, 2, StandardCharsets.UTF_16BE);
    }
    return unmarked(bytes);
  }

  private static Decoded unmarked(byte[] bytes) {
    int odd = zeros(bytes, 1);
    int even = zeros(bytes, 0);
    int pairs = Math.min(bytes.length, SAMPLE) / 2;
    if (pairs > 1 && odd > pairs / 2) {
      return exactly(bytes, 0, StandardCharsets.UTF_16LE);
    }
    if (pairs > 1 && even > pairs / 2) {
      return exactly(bytes, 0, StandardCharsets.UTF_16BE);
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return new Decoded(lines(text), false);
    } catch (CharacterCodingException notUtf8) {
      return new Decoded(lines(new String(bytes, Charset.forName("windows-1252"))), true);
    }
  }

  private static Decoded exactly(byte[] bytes, int from, Charset charset) {
    return new Decoded(lines(new String(bytes, from, bytes.length - from, charset)), false);
  }

  private static String lines(String text) {
    return text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n").replace('\r', '\n');
  }

  private static int zeros(byte[] bytes, int from) {
    int count = 0;
    for (int i = from; i < Math.min(bytes.length, SAMPLE); i += 2) {
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
