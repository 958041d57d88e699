package roundbook.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.buying.Line;
import roundbook.buying.Purchase;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.intake.house.HouseTold;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.report.buy.OrderBook;
import roundbook.report.buy.OrderTables;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.CrewContext.Issue;
import roundbook.table.Table;
import roundbook.units.Bulk;

/** Reads a job that has no log yet, or walls alone, and writes what to order for it. */
final class OrderRun {
  private static final Logger LOG = LoggerFactory.getLogger(OrderRun.class);

  /** The ending of what stands for a file where only walls are given. */
  private static final String NO_FILE = ".walls";

  /** What is wrong with a tally is of no matter here: the logs of it do not count. */
  private static final Set<ProblemCode> OF_NO_MATTER =
      Set.of(ProblemCode.NO_ROWS, ProblemCode.EMPTY_FILE);

  /** What an order cannot be made with. */
  private static final Set<ProblemCode> REFUSING =
      Set.of(ProblemCode.BAD_SETTING, ProblemCode.BAD_WALLS, ProblemCode.BAD_PRICE);

  private final Path file;
  private final Run run;
  private final Console console;
  private final CrewFile output;

  OrderRun(Path file, Run run, Console console) {
    this.file = file;
    this.run = run;
    this.console = console;
    this.output = new CrewFile(file, run, console);
  }

  /** Returns what stands for the file where walls such as {@code 24x18} are given alone. */
  static Path noFile(HouseTold walls) {
    return Path.of(walls.words().strip().replaceAll("[^\\p{L}\\p{Nd}.]+", "-") + NO_FILE);
  }

  private boolean isWallsAlone() {
    return file.toString().endsWith(NO_FILE);
  }

  Outcome outcome() throws IOException {
    Read<List<Table>> tables =
        isWallsAlone() ? Read.of(List.of(), List.of()) : Sources.all(file, run.options().tallies());
    if (tables.value().isEmpty()) {
      return refused(tables.problems());
    }
    Read<Findings> read = JobReader.read(tables.value().get(), run.options().asked());
    List<Problem> problems =
        read.problems().stream().filter(each -> !OF_NO_MATTER.contains(each.code())).toList();
    Optional<Job> job = read.value().flatMap(Findings::job).map(this::named);
    if (job.isEmpty() || problems.stream().anyMatch(each -> REFUSING.contains(each.code()))) {
      return refused(problems);
    }
    Read<Purchase> purchase = Purchase.of(job.get());
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(purchase.problems());
    return purchase.value().isEmpty()
        ? refused(all)
        : write(job.get(), purchase.value().get(), all);
  }

  /** Names a job of which only walls are given after them. */
  private Job named(Job job) {
    boolean nameless = isWallsAlone() && job.rules().text(Setting.JOB_NAME).isBlank();
    return nameless ? job.with(job.rules().with(Setting.JOB_NAME, name(), Origin.OPTION)) : job;
  }

  private Outcome write(Job job, Purchase purchase, List<Problem> problems) throws IOException {
    say(problems);
    Path written = written(job, purchase);
    if (!job.logs().isEmpty()) {
      String logs = Console.count(job.logs().size(), "log");
      console.say(name() + ": not counted: " + logs + " of the tally; plan orders what is missing");
    }
    Exit exit = Exit.done(problems, run.options().run().strict());
    return Outcome.ordered(file, exit, written, purchase.order().count(), problems);
  }

  /** Writes what a yard lacks whose logs make not one round; what is wrong is said already. */
  Outcome lacking(Job job, Purchase purchase, List<Problem> problems) throws IOException {
    int logs = purchase.order().count();
    Path written = written(job, purchase);
    return Outcome.ordered(file, Exit.SHORT_OF_LOGS, written, logs, problems);
  }

  private Path written(Job job, Purchase purchase) throws IOException {
    Plan none = Planner.unplanned(job.withLogs(List.of()));
    Path written = output.writeOrder(revision -> OrderBook.of(context(none, revision), purchase));
    output.tables(() -> OrderTables.of(purchase));
    LOG.info("{} ordered: {} logs, written to {}", file, purchase.order().count(), written);
    console.result(written.toString());
    console.say(name() + ": " + said(purchase));
    return written;
  }

  private static String said(Purchase purchase) {
    boolean metric = purchase.rules().metric();
    double pounds = purchase.order().total(Line::pounds);
    int rounds = purchase.order().sizes().count();
    return "%s to order, %d of them spares%s; %d %s green%s"
        .formatted(
            Console.count(purchase.order().count(), "log"),
            purchase.order().spares(),
            rounds == 0 ? "" : ", for " + Console.count(rounds, "round"),
            Math.round(new Bulk(metric).weight(pounds)),
            metric ? "kg" : "lb",
            purchase
                .loads()
                .map(loads -> ", " + Console.count(loads.loads().size(), "load"))
                .orElse(""));
  }

  private CrewContext context(Plan none, int revision) {
    boolean pictures = run.options().book().pictures();
    return CrewContext.of(none, List.of(), new Issue(revision, name(), Version.NUMBER, pictures));
  }

  /** Returns the file's name, or the walls where only they are given. */
  private String name() {
    String name = file.getFileName().toString();
    return isWallsAlone() ? name.substring(0, name.length() - NO_FILE.length()) : name;
  }

  /** Says problems, of a file by its name. */
  private void say(List<Problem> problems) {
    if (isWallsAlone()) {
      console.say(problems);
    } else {
      console.say(file, problems);
    }
  }

  private Outcome refused(List<Problem> problems) {
    List<Problem> errors =
        problems.stream().filter(each -> each.severity() == Severity.ERROR).toList();
    say(problems);
    return Outcome.failed(file, Exit.refused(problems), problems, Outcome.firstError(errors));
  }
}
