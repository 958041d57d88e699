package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import roundbook.app.FileRun.Work;
import roundbook.csv.CsvText;

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

  /**
   * A step that every file takes before any takes the next.
   *
   * @param work what is done
   * @param inTurn whether files take it one after the other, in their order
   */
  private record Step(Work work, boolean inTurn) {}

  /** Runs all files and returns the worst exit. */
  Exit run(Work work) throws IOException {
    return run(Inputs.expand(options.files(), options.recursive()), List.of(new Step(work, false)));
  }

  /**
   * Plans all files; where they share a yard, they choose one after the other.
   *
   * <p>All are read first, side by side. Then each chooses from what those named before it left.
   * When all have chosen, the workbooks are written side by side, and each says what the others
   * took. A file that fails before it has chosen leaves its logs to the next.
   */
  Exit plan() throws IOException {
    if (options.yard().isEmpty()) {
      return run(JobRun::plan);
    }
    List<Path> files = withoutYard(Inputs.expand(options.files(), options.recursive()));
    Optional<String> twice = namedTwice(files);
    if (twice.isPresent()) {
      console.fail("error: a yard and another file are both named " + twice.get() + "; rename one");
      return Exit.USAGE;
    }
    Yard yard = new Yard(options.yard(), files);
    return run(
        files,
        List.of(
            new Step(JobRun::readShared, false),
            new Step(run -> run.choose(yard), true),
            new Step(run -> run.write(yard), false)));
  }

  /** Passes over the yard's own files, which a folder or a pattern may hold too. */
  private List<Path> withoutYard(List<Path> files) throws IOException {
    List<Path> jobs = new ArrayList<>();
    for (Path file : files) {
      boolean own = false;
      for (Path pile : options.yard()) {
        own |= Files.exists(pile) && Files.exists(file) && Files.isSameFile(pile, file);
      }
      if (!own) {
        jobs.add(file);
      }
    }
    return jobs;
  }

  /** Logs of the yard are known by their file's name, so no other file may have it. */
  private Optional<String> namedTwice(List<Path> files) {
    Set<String> yard = new HashSet<>();
    for (Path pile : options.yard()) {
      if (!yard.add(pile.getFileName().toString())) {
        return Optional.of(pile.getFileName().toString());
      }
    }
    List<Path> others = new ArrayList<>(files);
    others.addAll(options.logs());
    return others.stream()
        .map(file -> file.getFileName().toString())
        .filter(yard::contains)
        .findFirst();
  }

  private Exit run(List<Path> files, List<Step> steps) throws IOException {
    options.setFiles(files);
    if (files.isEmpty()) {
      console.fail("error: there is no file to read");
      return Exit.NO_ACCESS;
    }
    if (options.batch() && options.outFile().isPresent()) {
      String book = options.outFile().get().toString();
      console.fail("error: " + files.size() + " files cannot all be written to " + book);
      return Exit.USAGE;
    }
    List<Outcome> outcomes =
        files.size() == 1 ? List.of(alone(files.get(0), steps)) : all(files, steps);
    if (options.report().isPresent()) {
      byte[] report = CsvText.bytes(Outcome.report(outcomes));
      SafeFile.write(options.report().get(), true, out -> out.write(report), written -> {});
    }
    if (files.size() > 1) {
      summary(outcomes);
    }
    return outcomes.stream().map(Outcome::exit).reduce(Exit.DONE, Exit::worse);
  }

  private Outcome alone(Path file, List<Step> steps) {
    FileRun run = FileRun.alone(file, options, console);
    steps.forEach(step -> run.step(step.work()));
    return run.outcome();
  }

  private List<Outcome> all(List<Path> files, List<Step> steps) {
    List<FileRun> runs =
        files.stream().map(file -> FileRun.among(file, options, console.quiet())).toList();
    ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, options.jobs()));
    try {
      for (Step step : steps) {
        List<Future<?>> running = new ArrayList<>();
        for (FileRun run : runs) {
          Future<?> begun = pool.submit(() -> run.step(step.work()));
          running.add(begun);
          if (step.inTurn()) {
            begun.get();
          }
        }
        for (int i = 0; i < runs.size(); i++) {
          running.get(i).get();
          if (step == steps.get(steps.size() - 1)) {
            runs.get(i).say(console);
          }
        }
      }
      return runs.stream().map(FileRun::outcome).toList();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the batch was interrupted", stopped);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private void summary(List<Outcome> outcomes) {
    console.say("exit code, file, what became of it:");
    for (Outcome each : outcomes) {
      String line = "%d  %s  %s".formatted(each.exit().code(), each.file(), each.became());
      console.say(line.stripTrailing());
    }
    String ends =
        Arrays.stream(Exit.values())
            .map(exit -> ended(exit, outcomes))
            .filter(each -> !each.isEmpty())
            .collect(Collectors.joining(", "));
    console.say(outcomes.size() + " files: " + ends);
  }

  private static String ended(Exit exit, List<Outcome> outcomes) {
    long count = outcomes.stream().filter(each -> each.exit() == exit).count();
    return count == 0 ? "" : count + " " + exit.brief();
  }
}
