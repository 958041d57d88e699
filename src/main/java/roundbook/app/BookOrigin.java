package roundbook.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import roundbook.sheet.read.BookReader;

/**
 * From what a crew workbook was made and how that ended, as the workbook itself carries it.
 *
 * <p>A batch that was stopped half-way is gone on with by this: a file whose newest workbook was
 * made from the same bytes, options and version is not planned again.
 *
 * @param inputs a digest of the files, the options and the program's version
 * @param numbers exit code, rounds, logs used, spare and left out, by how many hundredths another
 *     choice could be better at most or −1 where that is not known, errors and warnings
 */
record BookOrigin(String inputs, List<Integer> numbers) {
  /** The custom property of the workbook that holds it. */
  static final String PROPERTY = "roundbook-made";

  private static final int NUMBERS = 8;

  private static final int NOT_ASKED = -1;

  /** Keeps the numbers from being changed. */
  BookOrigin {
    numbers = List.copyOf(numbers);
  }

  /** Returns it with the outcome of a plan. */
  static BookOrigin of(String inputs, Outcome end) {
    long[] numbers = {
      end.exit().code(),
      end.rounds(),
      end.used(),
      end.spare(),
      end.leftOut(),
      end.better().orElse(NOT_ASKED),
      end.errors(),
      end.warnings()
    };
    return new BookOrigin(inputs, Arrays.stream(numbers).mapToObj(each -> (int) each).toList());
  }

  /** Returns the digest of everything that a file's workbook is made from. */
  static String inputs(Path file, Options options) throws IOException {
    List<Path> files = new ArrayList<>(List.of(file));
    files.addAll(options.setting().logs());
    options.book().template().ifPresent(files::add);
    OwnWords.file(file).ifPresent(files::add);
    MessageDigest digest = digest();
    String asked = options.asked() + " " + options.book().pictures() + " " + Version.NUMBER;
    asked += options.job().yard().isEmpty() ? "" : " shared yard " + options.job().yard();
    asked += options.proof().map(time -> " proof " + time).orElse("");
    digest.update((asked + " " + Version.COMMIT).getBytes(StandardCharsets.UTF_8));
    for (Path each : files) {
      digest.update(each.getFileName().toString().getBytes(StandardCharsets.UTF_8));
      try (InputStream in = new DigestInputStream(Files.newInputStream(each), digest)) {
        in.transferTo(java.io.OutputStream.nullOutputStream());
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  /** Reads it from a workbook; empty where there is none. */
  static Optional<BookOrigin> read(Path book) {
    return BookReader.property(book, PROPERTY)
        .map(text -> text.split(" "))
        .filter(words -> words.length == 1 + NUMBERS)
        .filter(words -> Arrays.stream(words).skip(1).allMatch(word -> word.matches("-1|\\d{1,9}")))
        .map(
            words ->
                new BookOrigin(
                    words[0], Arrays.stream(words).skip(1).map(Integer::valueOf).toList()));
  }

  /** Returns it as the property's text. */
  String text() {
    return inputs + " " + String.join(" ", numbers.stream().map(String::valueOf).toList());
  }

  /** Returns the outcome again, of a file whose workbook stands already. */
  Outcome outcome(Path file, Path written) {
    return new Outcome(
        file,
        Exit.ofCode(numbers.get(0)).orElse(Exit.DONE),
        written.toString(),
        numbers.get(1),
        numbers.get(2),
        numbers.get(3),
        numbers.get(4),
        Optional.of(numbers.get(5)).filter(percent -> percent != NOT_ASKED),
        numbers.get(6),
        numbers.get(7),
        "planned before");
  }
}
