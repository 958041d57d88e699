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
import java.util.function.Function;
import java.util.stream.Collectors;
import roundbook.app.PlanRun.Chosen;
import roundbook.app.PlanRun.Ready;
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
  private final Stop stop;
  private final long moves;

  Batch(Options options, Console console, Stop stop, long moves) {
    this.options = options;
    this.console = console;
    this.stop = stop;
    this.moves = moves;
  }

  /** The whole work of one file. */
  interface Whole {
    /** Does it. */
    Outcome of(Path file, Run run, Console console) throws IOException;
  }

  /** What all files of a run go through together. */
  private interface Way {
    List<Outcome> go(FileRuns files, Run run);
  }

  /** Runs all files, each apart, and returns the worst exit. */
  Exit run(Whole work) throws IOException {
    return run(
        Inputs.expand(options.files(), options.job().recursive()),
        (files, run) ->
            files.last(
                files.begun(),
                file -> begun -> Stage.ended(work.of(file.file(), run, file.console())),
                console));
  }

  /**
   * Plans all files; where they share a yard, they choose one after the other.
   *
   * <p>All are read first, side by side. Then each chooses from what those named before it left.
   * When all have chosen, the workbooks are written side by side, and each says what the others
   * took. A file that fails before it has chosen leaves its logs to the next.
   */
  Exit plan() throws IOException {
    if (options.job().yard().isEmpty()) {
      return run((file, run, own) -> new PlanRun(file, run, own).outcome());
    }
    List<Path> jobs = withoutYard(Inputs.expand(options.files(), options.job().recursive()));
    Optional<String> twice = namedTwice(jobs);
    if (twice.isPresent()) {
      console.fail("error: a yard and another file are both named " + twice.get() + "; rename one");
      return Exit.USAGE;
    }
    Yard yard = new Yard(options.job().yard(), jobs);
    return run(jobs, (files, run) -> shared(files, run, yard));
  }

  private List<Outcome> shared(FileRuns files, Run run, Yard yard) {
    Function<FileRun, PlanRun> plan = file -> new PlanRun(file.file(), run, file.console());
    List<Stage<Ready>> read =
        files.sideBySide(files.begun(), file -> begun -> plan.apply(file).readShared());
    List<Stage<Chosen>> chosen =
        files.inTurn(read, file -> job -> plan.apply(file).choose(job, yard));
    return files.last(
        chosen, file -> each -> Stage.ended(plan.apply(file).write(each, yard)), console);
  }

  /** Passes over the yard's own files, which a folder or a pattern may hold too. */
  private List<Path> withoutYard(List<Path> files) throws IOException {
    List<Path> jobs = new ArrayList<>();
    for (Path file : files) {
      boolean own = false;
      for (Path pile : options.job().yard()) {
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
    for (Path pile : options.job().yard()) {
      if (!yard.add(pile.getFileName().toString())) {
        return Optional.of(pile.getFileName().toString());
      }
    }
    List<Path> others = new ArrayList<>(files);
    others.addAll(options.setting().logs());
    return others.stream()
        .map(file -> file.getFileName().toString())
        .filter(yard::contains)
        .findFirst();
  }

  private Exit run(List<Path> files, Way way) throws IOException {
    if (files.isEmpty()) {
      console.fail("error: there is no file to read");
      return Exit.NO_ACCESS;
    }
    Run run = new Run(options, Together.of(files), stop, moves);
    if (run.files().isBatch() && options.book().file().isPresent()) {
      String book = options.book().file().get().toString();
      console.fail("error: " + files.size() + " files cannot all be written to " + book);
      return Exit.USAGE;
    }
    List<Outcome> outcomes;
    try (FileRuns all = new FileRuns(fileRuns(files), options.run().jobs())) {
      outcomes = way.go(all, run);
    }
    if (options.run().report().isPresent()) {
      byte[] report = CsvText.bytes(Outcome.report(outcomes));
      SafeFile.write(options.run().report().get(), true, out -> out.write(report), written -> {});
    }
    if (run.files().isBatch()) {
      summary(outcomes);
    }
    return outcomes.stream().map(Outcome::exit).reduce(Exit.DONE, Exit::worse);
  }

  private List<FileRun> fileRuns(List<Path> files) {
    RunOptions how = options.run();
    return files.size() == 1
        ? List.of(FileRun.alone(files.get(0), console, how))
        : files.stream().map(file -> FileRun.among(file, how)).toList();
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
