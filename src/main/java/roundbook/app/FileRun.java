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

/**
 * One file of a batch on its way: its work, what it says, and how it ended.
 *
 * <p>What it says is held back until it is asked for, so that files side by side do not talk at
 * once.
 */
final class FileRun {
  private final Path file;
  private final boolean debug;
  private final Console own;
  private final StringWriter results = new StringWriter();
  private final StringWriter messages = new StringWriter();
  private final JobRun job;
  private Outcome outcome;

  private FileRun(Path file, Options options, Optional<Console> direct, boolean quiet) {
    this.file = file;
    this.debug = options.debug();
    this.own =
        direct.orElseGet(
            () -> new Console(new PrintWriter(results), new PrintWriter(messages), quiet));
    this.job = new JobRun(file, options, own);
  }

  /** Returns a run that says at once what it has to say. */
  static FileRun alone(Path file, Options options, Console console) {
    return new FileRun(file, options, Optional.of(console), console.quiet());
  }

  /** Returns a run that holds back what it has to say. */
  static FileRun among(Path file, Options options, boolean quiet) {
    return new FileRun(file, options, Optional.empty(), quiet);
  }

  /** One step of a file's work. */
  interface Work {
    /** Does it; the outcome is there when the file has ended, well or not. */
    Optional<Outcome> run(JobRun run) throws IOException;
  }

  /** Returns whether the file has ended. */
  boolean ended() {
    return outcome != null;
  }

  Outcome outcome() {
    return outcome;
  }

  /** Prints what was held back. */
  void say(Console console) {
    console.err().print(messages);
    console.err().flush();
    console.out().print(results);
    console.out().flush();
  }

  /** Does a step, unless the file has ended; a failure ends it. */
  void step(Work work) {
    if (!ended()) {
      outcome = guarded(work).orElse(null);
    }
  }

  private Optional<Outcome> guarded(Work work) {
    try {
      return work.run(job);
    } catch (IOException | UncheckedIOException broken) {
      IOException cause =
          broken instanceof UncheckedIOException wrapped
              ? wrapped.getCause()
              : (IOException) broken;
      String message = file.getFileName() + ": error: cannot read or write: " + Denied.said(cause);
      own.fail(message);
      return Optional.of(Outcome.failed(file, Exit.NO_ACCESS, List.of(), message));
    } catch (OutOfMemoryError full) {
      String message = tooLarge(file);
      own.fail(message);
      return Optional.of(Outcome.failed(file, Exit.NO_ACCESS, List.of(), message));
    } catch (RuntimeException | StackOverflowError fault) {
      own.fail(file.getFileName() + ": roundbook is at fault: " + fault);
      own.fault(fault, debug);
      String note = "a fault of the program: " + fault;
      return Optional.of(Outcome.failed(file, Exit.FAULT, List.of(), note));
    }
  }

  /** A file may be sound and yet more than this run has memory for. */
  private static String tooLarge(Path file) {
    long megabytes = Runtime.getRuntime().maxMemory() >> 20;
    String message = "it needs more memory than the " + megabytes + " MB this run may take";
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    return Problem.of(ProblemCode.TOO_LARGE, where, "", message)
        .remedy("Split it, or give Java more memory: java -Xmx4g -jar roundbook.jar …")
        .toString();
  }
}
