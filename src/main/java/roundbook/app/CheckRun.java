package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.csv.CsvText;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules;
import roundbook.job.Log;
import roundbook.job.Stem;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.report.table.PlainTables;
import roundbook.table.Table;

/** Reads one job and reports; writes no workbook, and holds no log. */
final class CheckRun {
  private static final Logger LOG = LoggerFactory.getLogger(CheckRun.class);

  private final Path file;
  private final Run run;
  private final Console console;
  private final CrewFile output;
  private int stems;

  CheckRun(Path file, Run run, Console console) {
    this.file = file;
    this.run = run;
    this.console = console;
    this.output = new CrewFile(file, run, console);
  }

  Outcome outcome() throws IOException {
    Read<List<Table>> tables = Sources.all(file, run.options().tallies());
    List<Problem> problems = new ArrayList<>(tables.problems());
    AtomicInteger logs = new AtomicInteger();
    if (tables.value().isPresent()) {
      problems.addAll(check(tables.value().get(), logs));
    }
    LOG.info("{} checked: {} problems", file, problems.size());
    console.say(problems);
    output.tables(() -> List.of(PlainTables.problems(problems)));
    if (tables.value().isEmpty()) {
      return Outcome.failed(file, Exit.refused(problems), problems, Outcome.firstError(problems));
    }
    long errors = Outcome.count(problems, Severity.ERROR);
    console.say(
        "%s: %s read, %s, %s"
            .formatted(
                file.getFileName(),
                counted(logs.get()),
                Console.count(errors, "error"),
                Console.count(Outcome.count(problems, Severity.WARNING), "warning")));
    Exit exit =
        errors > 0 ? Exit.refused(problems) : Exit.done(problems, run.options().run().strict());
    return Outcome.checked(file, exit, logs.get(), problems);
  }

  /** Returns how many logs and felled stems were read; no word of what there is none of. */
  private String counted(int logs) {
    String felled = Console.count(stems, "stem");
    return stems == 0
        ? Console.count(logs, "log")
        : logs == 0 ? felled : Console.count(logs, "log") + " and " + felled;
  }

  /** Finds the problems, writing each log as it is read where tables are asked for. */
  private List<Problem> check(List<Table> tables, AtomicInteger logs) throws IOException {
    List<Problem> problems = new ArrayList<>();
    boolean written = output.table("logs", out -> problems.addAll(check(tables, out, logs)));
    if (!written) {
      problems.addAll(check(tables, rules -> log -> logs.incrementAndGet()));
    }
    return problems;
  }

  private List<Problem> check(List<Table> tables, OutputStream out, AtomicInteger logs)
      throws IOException {
    try (CsvText text = CsvText.to(out)) {
      return check(
          tables,
          rules -> {
            boolean metric = rules.metric();
            text.row(PlainTables.logHeader(metric));
            return log -> {
              logs.incrementAndGet();
              text.row(PlainTables.logRow(log, metric));
            };
          });
    }
  }

  private List<Problem> check(List<Table> tables, Function<BuildRules, Consumer<Log>> taker)
      throws IOException {
    Read<List<Stem>> read =
        JobReader.check(tables, OwnWords.beside(file, run.options().asked()), taker);
    stems = read.value().orElseThrow().size();
    return read.problems();
  }
}
