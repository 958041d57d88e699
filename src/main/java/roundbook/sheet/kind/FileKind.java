package roundbook.sheet.kind;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.poifs.filesystem.FileMagic;
import roundbook.problem.Phrase;

/** What a file is, told from its content and never from its name. */
public enum FileKind {
  /** No bytes at all. */
  EMPTY,
  /** A zipped workbook, or another zipped file. */
  ZIP,
  /** A workbook or other file of the old binary kind. */
  OLE2,
  /** Text, such as a CSV file. */
  TEXT,
  /** Text that a program wrote for another (JSON). */
  JSON,
  /** XML, such as a harvester's file. */
  XML,
  /** A web page. */
  HTML,
  /** A text document. */
  RTF,
  /** A PDF document. */
  PDF,
  /** A picture. */
  PICTURE,
  /** A sheet as records of text, a line each. */
  SYLK,
  /** A sheet as values of text, two lines each. */
  DIF,
  /** A sheet of a program from before 1994. */
  OLD_SHEET,
  /** Anything else. */
  BINARY;

  private static final int HEAD = 8192;

  /** Returns what it is, as a problem names it. */
  public Phrase phrase() {
    return Phrase.of("kind." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /**
   * Tells what a file is.
   *
   * @throws IOException if it cannot be read
   */
  public static FileKind of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return of(in.readNBytes(HEAD));
    }
  }

  private static FileKind of(byte[] head) {
    if (head.length == 0) {
      return EMPTY;
    }
    return switch (FileMagic.valueOf(head)) {
      case OLE2 -> OLE2;
      case OOXML -> ZIP;
      case PDF -> PDF;
      case RTF -> RTF;
      case HTML -> HTML;
      case BIFF2, BIFF3, BIFF4 -> OLD_SHEET;
      case JPEG, GIF, PNG, TIFF, WMF, EMF, BMP -> picture(head);
      default -> other(head);
    };
  }

  /** A text may begin with the two letters that begin a bitmap. */
  private static FileKind picture(byte[] head) {
    return isBinary(head) ? PICTURE : other(head);
  }

  private static FileKind other(byte[] head) {
    if (head[0] == 'P' && head.length > 3 && head[1] == 'K' && head[2] < 9 && head[3] < 9) {
      return ZIP;
    }
    if (isBinary(head)) {
      return BINARY;
    }
    String text = new String(head, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
    String start = text.replaceFirst("^(?:\u00EF\u00BB\u00BF|[\u00FE\u00FF]{2})", "");
    start = start.replace("\0", "").stripLeading();
    if (start.startsWith("{\\rtf")) {
      return RTF;
    }
    if (start.matches("(?s)id;p[a-z0-9.]*(?:;[a-z])*\\R[a-z]{1,2};.*")) {
      return SYLK;
    }
    if (start.matches("(?s)table\\R0,1\\R.*")) {
      return DIF;
    }
    if (start.matches("(?s)[\\[{]\\s*(?:[\\[{\"\\]}]|-?\\d|true|false|null).*")) {
      return JSON;
    }
    if (!start.startsWith("<")) {
      return TEXT;
    }
    boolean page =
        start.matches(
            "(?s)(?:<\\?xml.{0,200}?\\?>\\s*)?(?:<!--.{0,2000}?-->\\s*)?"
                + "<(?:!doctype html|html|head|body|table|meta|style|div).*");
    return page ? HTML : start.matches("(?s)<(?:\\?xml|!doctype|!--|[a-z]).*") ? XML : TEXT;
  }

  /** Control characters other than blanks mean no text, but for the zeros of UTF-16. */
  private static boolean isBinary(byte[] head) {
    int zeros = 0;
    int controls = 0;
    for (byte each : head) {
      zeros += each == 0 ? 1 : 0;
      controls +=
          each > 0
                  && each < 32
                  && each != '\t'
                  && each != '\n'
                  && each != '\r'
                  && each != 12
                  && each != 26
              ? 1
              : 0;
    }
    boolean wide = zeros * 3 > head.length && zeros * 5 < head.length * 3;
    return controls * 50 > head.length || zeros > 0 && !wide && zeros * 50 > head.length;
  }
}
