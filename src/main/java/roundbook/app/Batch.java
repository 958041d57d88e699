package roundbook.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import roundbook.csv.CsvText;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/**
 * Runs every file of a command line apart, side by side where asked, and sums up.
 *
 * <p>What a file says is printed when it is done, in the order of the files, so that the output
 * does not depend on how many run at once. A file that fails never stops the rest.
 */
final class Batch {
  private final Options options;
  private final Console console;

  Batch(Options options, Console console) {
    this.options = options;
    this.console = console;
  }

  /** One file's work. */
  interface Work {
    /** Does it, saying what is to be said on the console given. */
    Outcome run(JobRun run) throws IOException;
  }

  /** Runs all files and returns the worst exit. */
  Exit run(Work work) throws IOException {
    List<Path> files = Inputs.expand(options.files(), options.recursive());
    options.setBatch(files.size() > 1);
    if (files.isEmpty()) {
      console.fail("error: there is no file to read");
      return Exit.NO_ACCESS;
    }
    List<Outcome> outcomes =
        files.size() == 1 ? List.of(alone(files.get(0), work)) : all(files, work);
    if (options.report().isPresent()) {
      byte[] report = CsvText.bytes(Outcome.report(outcomes));
      SafeFile.write(options.report().get(), true, out -> out.write(report), written -> {});
    }
    if (files.size() > 1) {
      summary(outcomes);
    }
    return outcomes.stream().map(Outcome::exit).reduce(Exit.DONE, Exit::worse);
  }

  private Outcome alone(Path file, Work work) {
    return guarded(file, work, console);
  }

  private List<Outcome> all(List<Path> files, Work work) {
    ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, options.jobs()));
    try {
      List<Future<Outcome>> running = new ArrayList<>();
      List<StringWriter> results = new ArrayList<>();
      List<StringWriter> messages = new ArrayList<>();
      for (Path file : files) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        results.add(out);
        messages.add(err);
        Console own = new Console(new PrintWriter(out), new PrintWriter(err), console.quiet());
        running.add(pool.submit(() -> guarded(file, work, own)));
      }
      List<Outcome> outcomes = new ArrayList<>();
      for (int i = 0; i < running.size(); i++) {
        outcomes.add(running.get(i).get());
        console.err().print(messages.get(i));
        console.err().flush();
        console.out().print(results.get(i));
        console.out().flush();
      }
      return outcomes;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the batch was interrupted", stopped);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private Outcome guarded(Path file, Work work, Console own) {
    try {
      return work.run(new JobRun(file, options, own));
    } catch (IOException | UncheckedIOException broken) {
      String message = file.getFileName() + ": error: cannot read or write: " + said(broken);
      own.fail(message);
      return Outcome.failed(file, Exit.NO_ACCESS, List.of(), message);
    } catch (OutOfMemoryError full) {
      String message = tooLarge(file);
      own.fail(message);
      return Outcome.failed(file, Exit.NO_ACCESS, List.of(), message);
    } catch (RuntimeException | StackOverflowError fault) {
      own.fail(file.getFileName() + ": roundbook is at fault: " + fault);
      own.fault(fault, options.debug());
      return Outcome.failed(file, Exit.FAULT, List.of(), "a fault of the program: " + fault);
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

  private static String said(Exception broken) {
    if (broken instanceof FileSystemException denied) {
      String kind = denied.getClass().getSimpleName().replace("Exception", "");
      return denied.getFile() + ": " + (denied.getReason() == null ? kind : denied.getReason());
    }
    return broken.getMessage();
  }

  private void summary(List<Outcome> outcomes) {
    long good = outcomes.stream().filter(each -> each.exit() == Exit.DONE).count();
    for (Outcome each : outcomes) {
      String end = each.note().isEmpty() ? each.written() : each.note();
      console.say("%d  %s  %s".formatted(each.exit().code(), each.file(), end).stripTrailing());
    }
    console.say(
        "%d files, %d done, %d not".formatted(outcomes.size(), good, outcomes.size() - good));
  }
}
