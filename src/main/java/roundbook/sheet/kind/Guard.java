package roundbook.sheet.kind;

import java.io.EOFException;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.zip.ZipException;
import org.apache.poi.EncryptedDocumentException;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.xml.Limited;

/**
 * Turns whatever a broken file makes the libraries throw into one problem.
 *
 * <p>Malformed workbooks make them throw exceptions of a dozen types, some only while cells are
 * read and some of them errors of the machine's memory or stack, so everything is caught here,
 * once.
 */
public final class Guard {
  private static final String SAVE_AGAIN = "save-again";

  private Guard() {}

  /** A problem found on the way that ends the reading. */
  static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Stop(Problem problem) {
      super(problem.toString());
      this.problem = problem;
    }

    Problem problem() {
      return problem;
    }
  }

  /** Wraps what the taker of the rows throws: a fault of the program, not of the file. */
  public static final class Own extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Own(RuntimeException cause) {
      super(cause);
    }
  }

  public static Stop stop(ProblemCode code, String variant, String file) {
    return new Stop(Problem.of(code, variant, CellRef.ofFile(file)));
  }

  /** A file that is another thing than a workbook that can be read. */
  public static Stop other(String file, String what) {
    return new Stop(other(file, Phrase.of(what)));
  }

  /** Returns that a file is another thing than a workbook that can be read. */
  public static Problem other(String file, Phrase what) {
    return Problem.of(ProblemCode.NOT_A_WORKBOOK, "other", CellRef.ofFile(file)).with("what", what);
  }

  /** A file or a part of it that is over a limit. */
  public static Stop over(String variant, String file, long most) {
    return new Stop(
        Problem.of(ProblemCode.TOO_LARGE, variant, CellRef.ofFile(file)).with("most", most));
  }

  /** A part that is lost or makes no sense, so that not all of the file can be read. */
  public static Stop damaged(String file, Phrase what) {
    return new Stop(
        Problem.of(ProblemCode.UNREADABLE, "damaged", CellRef.ofFile(file))
            .with("what", what)
            .remedyOf(SAVE_AGAIN));
  }

  /** Runs a reading of a file; what it throws becomes a problem. */
  public static <T> Read<T> read(String file, Callable<Read<T>> reading) {
    try {
      return reading.call();
    } catch (Own own) {
      throw (RuntimeException) own.getCause();
    } catch (Stop stop) {
      return Read.failed(java.util.List.of(stop.problem()));
    } catch (Exception | OutOfMemoryError | StackOverflowError | LinkageError thrown) {
      return Read.failed(java.util.List.of(problem(file, thrown)));
    }
  }

  private static Problem problem(String file, Throwable thrown) {
    CellRef where = CellRef.ofFile(file);
    if (has(thrown, EncryptedDocumentException.class)) {
      return Problem.of(ProblemCode.ENCRYPTED, where);
    }
    String said = said(thrown);
    if (said.contains("internal file entries")) {
      return Problem.of(ProblemCode.TOO_LARGE, "parts", where);
    }
    Optional<Throwable> large = chain(thrown, Limited.TooLarge.class);
    if (large.isPresent()) {
      return over("part", file, ((Limited.TooLarge) large.get()).limit()).problem();
    }
    if (has(thrown, OutOfMemoryError.class)
        || said.contains("zip bomb")
        || said.contains("exceeds the max")
        || has(thrown, StackOverflowError.class)
        || said.contains("tried to allocate")
        || said.contains("jaxp0")) {
      return Problem.of(ProblemCode.TOO_LARGE, "unpacks", where);
    }
    boolean cut =
        has(thrown, EOFException.class)
            || has(thrown, ZipException.class)
            || said.contains("unexpected end")
            || said.contains("truncated");
    return Problem.of(ProblemCode.UNREADABLE, cut ? "cut-short" : "no-workbook", where)
        .remedyOf(SAVE_AGAIN);
  }

  private static boolean has(Throwable thrown, Class<? extends Throwable> type) {
    return chain(thrown, type).isPresent();
  }

  private static Optional<Throwable> chain(Throwable thrown, Class<? extends Throwable> type) {
    Throwable each = thrown;
    for (int depth = 0; each != null && depth < 20; depth++, each = each.getCause()) {
      if (type.isInstance(each)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  private static String said(Throwable thrown) {
    StringBuilder said = new StringBuilder();
    Throwable each = thrown;
    for (int depth = 0; each != null && depth < 20; depth++, each = each.getCause()) {
      said.append(each.getMessage()).append('\n');
    }
    return said.toString().toLowerCase(Locale.ROOT);
  }
}
