package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The name of a crew workbook or of an order, with its revision.
 *
 * @param folder where it is written
 * @param stem the input's name, mostly without its ending
 * @param kind what the workbook holds: rounds, or an order
 * @param first the least revision that may be written
 */
record Revision(Path folder, String stem, String kind, int first) {
  private static final String ROUNDS = "rounds";
  private static final String ORDER = "order";
  private static final String OWN = " - " + ROUNDS + " rev\\d+";
  private static final String ORDERED = " - " + ORDER + " rev\\d+";

  /** Returns the workbook's path of a revision. */
  Path path(int number) {
    return folder.resolve(stem + " - " + kind + " rev" + number + ".xlsx");
  }

  /** Returns the name of an order of the same file. */
  Revision ofOrder() {
    return new Revision(folder, stem, ORDER, first);
  }

  /** Returns the revision over the highest that is there: a hole among them is no place for one. */
  int firstFree() throws IOException {
    return StrictMath.max(first, highest() + 1);
  }

  /** Returns the highest revision that is there; 0 for none. */
  int highest() throws IOException {
    if (!Files.isDirectory(folder)) {
      return 0;
    }
    Pattern name = Pattern.compile(Pattern.quote(stem + " - " + kind) + " rev(\\d{1,6})\\.xlsx");
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> name.matcher(file.getFileName().toString()))
          .filter(Matcher::matches)
          .mapToInt(found -> Integer.parseInt(found.group(1)))
          .max()
          .orElse(0);
    }
  }

  /** Returns the name for an input file, written beside it or in a folder. */
  static Revision of(Path input, Path folder) {
    Path beside = input.toAbsolutePath().getParent();
    return new Revision(folder == null ? beside : folder, plain(input), ROUNDS, 1);
  }

  /** Returns the name that keeps the input's ending, for a file beside one of the same name. */
  Revision withEnding(Path input) {
    return new Revision(folder, input.getFileName().toString(), kind, first);
  }

  /** Returns the name without its ending; what follows an order is named as its job was. */
  private static String plain(Path input) {
    String name = input.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name).replaceFirst(ORDERED + "$", "");
  }

  /** Returns a file's name without its ending, and a crew workbook's without its revision. */
  static String stem(Path input) {
    return plain(input).replaceFirst(OWN + "$", "");
  }

  /** Returns the name for what follows a revision of a crew workbook. */
  static Revision after(int revision, Path crew, Path folder) {
    return new Revision(of(crew, folder).folder(), stem(crew), ROUNDS, revision + 1);
  }

  /** Returns whether a file is one of the program's own workbooks or another's lock file. */
  static boolean skipped(Path file) {
    String name = file.getFileName().toString();
    return name.startsWith("~$")
        || name.startsWith(".~lock")
        || name.endsWith(".part")
        || name.matches(".*" + OWN + "\\.xlsx");
  }
}
