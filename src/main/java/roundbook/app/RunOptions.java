package roundbook.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What every command that runs files takes: how they are run, and what is told of them. */
final class RunOptions {
  @Option(names = "--tables", paramLabel = "DIR", description = "Also write plain tables (CSV).")
  private Path tables;

  @Option(
      names = {"-j", "--jobs"},
      paramLabel = "N",
      defaultValue = "1",
      description = "How many files to run at once.")
  private int jobs = 1;

  @Option(names = "--report", paramLabel = "FILE", description = "Write what became of each file.")
  private Path report;

  @Option(names = "--strict", description = "Treat warnings as errors in the exit code.")
  private boolean strict;

  @Option(
      names = {"-q", "--quiet"},
      description = "Say nothing but errors.")
  private boolean quiet;

  @Option(names = "--debug", description = "Show a stack trace where the program is at fault.")
  private boolean debug;

  @Option(names = "--log", paramLabel = "FILE", description = "Write a log to a file.")
  void log(Path file) {
    LogSetup.toFile(file);
  }

  Optional<Path> tables() {
    return Optional.ofNullable(tables);
  }

  int jobs() {
    return Math.max(1, jobs);
  }

  Optional<Path> report() {
    return Optional.ofNullable(report);
  }

  boolean strict() {
    return strict;
  }

  boolean quiet() {
    return quiet;
  }

  boolean debug() {
    return debug;
  }
}
