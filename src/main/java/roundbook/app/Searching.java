package roundbook.app;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/** The choice of logs of one file as the user sees it: shown as it goes on, ended when asked. */
record Searching(Path file, Run run, Console console) {
  private static final Logger LOG = LoggerFactory.getLogger(Searching.class);

  /** Searches with the job's seed; a run of one file has all processors. */
  <T> T search(Job job, Function<Effort, T> search) {
    long seed = job.rules().number(Setting.SEED).longValue();
    LOG.info("{}: choosing logs", file);
    Effort effort = run.effort(seed);
    return run.files().isBatch() ? search.apply(effort) : shown(effort.onAnyThreads(), search);
  }

  private <T> T shown(Effort effort, Function<Effort, T> search) {
    if (console.quiet() || !Progress.isSeen()) {
      return search.apply(effort);
    }
    try (Progress line = Progress.onTerminal(file.getFileName().toString())) {
      return search.apply(effort.telling(line));
    }
  }

  /** Returns what the crew must know of a search that may have been ended before its time. */
  List<Problem> doubts() {
    if (!run.stop().asked()) {
      return List.of();
    }
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    return List.of(Problem.of(ProblemCode.SEARCH_STOPPED, where));
  }

  /** Returns the outcome of a file whose turn had not come when the run was stopped. */
  Outcome notBegun(List<Problem> problems) {
    String note = "the run was stopped before it was planned";
    console.fail(file.getFileName() + ": " + note);
    return Outcome.failed(file, Exit.STOPPED, problems, note);
  }
}
