package roundbook.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;

/**
 * One file of a batch on its way, and what it says.
 *
 * <p>What it says is held back until it is asked for, so that files side by side do not talk at
 * once.
 */
final class FileRun {
  private final Path file;
  private final boolean debug;
  private final Console console;
  private final StringWriter results = new StringWriter();
  private final StringWriter messages = new StringWriter();

  private FileRun(Path file, Optional<Console> direct, RunOptions options) {
    this.file = file;
    this.debug = options.debug();
    this.console =
        direct.orElseGet(
            () ->
                new Console(new PrintWriter(results), new PrintWriter(messages), options.quiet()));
  }

  /** Returns a run that says at once what it has to say. */
  static FileRun alone(Path file, Console console, RunOptions options) {
    return new FileRun(file, Optional.of(console), options);
  }

  /** Returns a run that holds back what it has to say. */
  static FileRun among(Path file, RunOptions options) {
    return new FileRun(file, Optional.empty(), options);
  }

  Path file() {
    return file;
  }

  /** Returns where it says what it has to say. */
  Console console() {
    return console;
  }

  /** Prints what was held back. */
  void say(Console whole) {
    whole.err().print(messages);
    whole.err().flush();
    whole.out().print(results);
    whole.out().flush();
  }

  /** Does a step, unless the file has ended; a failure ends it. */
  <A, B> Stage<B> step(Stage<A> from, Stage.Step<A, B> step) {
    try {
      return from.then(step);
    } catch (IOException | UncheckedIOException broken) {
      IOException cause =
          broken instanceof UncheckedIOException wrapped
              ? wrapped.getCause()
              : (IOException) broken;
      String message = file.getFileName() + ": " + FileFailure.line(cause);
      console.fail(message);
      return failed(Exit.NO_ACCESS, message);
    } catch (OutOfMemoryError full) {
      String message = tooLarge(file);
      console.fail(message);
      return failed(Exit.NO_ACCESS, message);
    } catch (RuntimeException | StackOverflowError fault) {
      console.fail(file.getFileName() + ": roundbook is at fault: " + fault);
      console.fault(fault, debug);
      return failed(Exit.FAULT, "a fault of the program: " + fault);
    }
  }

  private <B> Stage<B> failed(Exit exit, String note) {
    return Stage.ended(Outcome.failed(file, exit, List.of(), note));
  }

  /** A file may be sound and yet more than this run has memory for. */
  private static String tooLarge(Path file) {
    long megabytes = Runtime.getRuntime().maxMemory() >> 20;
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    return Sentences.english()
        .line(
            Problem.of(ProblemCode.TOO_LARGE, "memory", where)
                .with("megabytes", megabytes)
                .remedyOf("split"));
  }
}
