package roundbook.sheet.read;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.sheet.kind.FileKind;
import roundbook.sheet.kind.Guard;
import roundbook.table.NamedBook;
import roundbook.table.Table;

/**
 * Reads workbooks, of the zipped XML kind and of the old binary kind.
 *
 * <p>A value is what the file stores: the number, not the rounded look of it, and the cached value
 * of a formula, which is never reckoned again. Whatever is wrong with a file becomes one problem in
 * words; nothing is thrown for it.
 */
public final class BookReader {
  private BookReader() {}

  /**
   * Reads every sheet of a workbook in its order, hidden ones too.
   *
   * @param file the file's name, for messages
   * @param path the file
   * @return its tables, or the one problem that keeps it from being read; a crew workbook that this
   *     program wrote is such a problem
   */
  public static Read<List<Table>> read(String file, Path path) {
    return read(
        file,
        path,
        () -> new XlsxReader(file, path).read(),
        () -> new XlsReader(file, path).read());
  }

  /**
   * Reads every sheet of a workbook with its defined names, whoever wrote it; a workbook of the old
   * kind has no names here.
   */
  public static Read<NamedBook> readNamed(String file, Path path) {
    return read(
        file,
        path,
        () -> new XlsxReader(file, path).readNamed(),
        () -> named(file, new XlsReader(file, path).read()));
  }

  /** Reads a workbook of the present kind or of the old one; any other file is a problem. */
  private static <T> Read<T> read(
      String file, Path path, Callable<Read<T>> present, Callable<Read<T>> old) {
    return Guard.read(
        file,
        () -> {
          FileKind kind = FileKind.of(path);
          return switch (kind) {
            case ZIP -> present.call();
            case OLE2 -> old.call();
            default -> Read.failed(List.of(refusal(file, kind)));
          };
        });
  }

  private static Read<NamedBook> named(String file, Read<List<Table>> read) {
    return new Read<>(
        read.value().map(tables -> new NamedBook(file, tables, Map.of(), Set.of())),
        read.problems());
  }

  /** Returns the text of a property that this program gave a workbook; empty when it has none. */
  public static Optional<String> property(Path path, String name) {
    Read<Optional<String>> read =
        Guard.read(
            path.toString(),
            () -> {
              try (XlsxBook book = XlsxBook.open(path.toString(), path)) {
                return Read.of(Optional.ofNullable(book.property(name)), List.of());
              }
            });
    return read.value().flatMap(Function.identity());
  }

  /** Returns the problem of a file that is no table at all. */
  public static Problem refusal(String file, FileKind kind) {
    return Guard.other(file, Phrase.of("what.no-table").with("what", kind.phrase()));
  }
}
