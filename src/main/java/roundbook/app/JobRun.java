package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.csv.CsvText;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.plan.Taken;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.report.CrewContext;
import roundbook.report.CrewContext.Issue;
import roundbook.report.PlainTables;
import roundbook.rounds.BalancedChooser;
import roundbook.table.Table;
import roundbook.takeoff.Top;
import roundbook.takeoff.Top.WantedHeight;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Reads, plans and writes one job, from its files to its outcome. */
final class JobRun {
  private static final Logger LOG = LoggerFactory.getLogger(JobRun.class);

  private final Path file;
  private final Options options;
  private final Console console;
  private final CrewFile output;
  private final List<Problem> problems = new ArrayList<>();
  private Optional<Findings> findings = Optional.empty();
  private Optional<Job> job = Optional.empty();
  private Plan chosen;
  private boolean isStopped;

  JobRun(Path file, Options options, Console console) {
    this.file = file;
    this.options = options;
    this.console = console;
    this.output = new CrewFile(file, options, console);
  }

  /** Reads and reports; writes no workbook, and holds no log. */
  Optional<Outcome> check() throws IOException {
    return Optional.of(checked());
  }

  private Outcome checked() throws IOException {
    Optional<List<Table>> tables = open();
    AtomicInteger logs = new AtomicInteger();
    if (tables.isPresent() && !output.table("logs", out -> check(tables.get(), out, logs))) {
      check(tables.get(), rules -> log -> logs.incrementAndGet());
    }
    LOG.info("{} checked: {} problems", file, problems.size());
    console.say(problems);
    output.tables(List.of(PlainTables.problems(problems)));
    if (tables.isEmpty()) {
      return Outcome.failed(file, errorExit(true), problems, Outcome.firstError(problems));
    }
    Exit exit = errorExit(count(Severity.ERROR) > 0);
    console.say(
        "%s: %s read, %s, %s"
            .formatted(
                file.getFileName(),
                Console.count(logs.get(), "log"),
                Console.count(count(Severity.ERROR), "error"),
                Console.count(count(Severity.WARNING), "warning")));
    return Outcome.checked(file, exit, logs.get(), problems);
  }

  private void check(List<Table> tables, Function<BuildRules, Consumer<Log>> taker) {
    problems.addAll(JobReader.check(tables, options.asked(), taker));
  }

  /** Writes each log as it is read. */
  private void check(List<Table> tables, OutputStream out, AtomicInteger count) {
    try (CsvText text = CsvText.to(out)) {
      check(
          tables,
          rules -> {
            boolean metric = rules.metric();
            text.row(PlainTables.logHeader(metric));
            return log -> {
              count.incrementAndGet();
              text.row(PlainTables.logRow(log, metric));
            };
          });
    }
  }

  /** Reads, plans and writes the crew workbook. */
  Optional<Outcome> plan() throws IOException {
    Yard own = new Yard(List.of(), List.of(file));
    Optional<Outcome> ended = options.resume() ? before() : Optional.empty();
    if (ended.isEmpty()) {
      ended = readJob();
    }
    if (ended.isEmpty()) {
      ended = choose(own);
    }
    return ended.isPresent() ? ended : write(own);
  }

  /** Returns the outcome of an earlier run whose workbook was made from the same. */
  private Optional<Outcome> before() throws IOException {
    if (!Files.isReadable(file)) {
      return Optional.empty();
    }
    Optional<Path> newest = output.newest();
    Optional<Made> made = newest.flatMap(Made::read);
    if (made.isEmpty() || !made.get().inputs().equals(Made.inputs(file, options))) {
      return Optional.empty();
    }
    console.say("%s: planned before, as %s".formatted(file.getFileName(), newest.get()));
    return Optional.of(made.get().outcome(file, newest.get()));
  }

  /** Reads the job of a shared yard; what could not be written is told before it takes a log. */
  Optional<Outcome> readShared() throws IOException {
    output.checkFolder();
    return readJob();
  }

  /** Reads the job; the outcome is there when nothing can be planned. */
  private Optional<Outcome> readJob() {
    findings = read();
    job = findings.flatMap(Findings::job).map(Job::corrected);
    return job.isEmpty() || badSetting() ? Optional.of(nothingPlanned(findings)) : Optional.empty();
  }

  /** Chooses logs of what other jobs have left in the yard, and takes them. */
  Optional<Outcome> choose(Yard yard) {
    if (options.stop().asked()) {
      return Optional.of(searching().notBegun(problems));
    }
    Job whole = job.orElseThrow();
    if (yard.isSharedAfter(file) && takesAll(whole.rules())) {
      String message = "the job names neither rounds nor height, so it takes all it can of the";
      CellRef where = CellRef.ofFile(file.getFileName().toString());
      problems.add(Problem.of(ProblemCode.TAKES_ALL, where, "", message + " shared yard"));
    }
    Job left = yard.left(file, whole);
    Planner planner = new Planner(new BalancedChooser());
    chosen = searching().run(left, effort -> planner.plan(left, effort));
    List<Problem> stopped = searching().doubts();
    problems.addAll(stopped);
    isStopped = !stopped.isEmpty();
    if (chosen.rounds() == 0) {
      problems.addAll(chosen.problems());
      return Optional.of(nothingPlanned(findings));
    }
    yard.take(file, whole, chosen);
    return Optional.empty();
  }

  private Searching searching() {
    return new Searching(file, options, console);
  }

  private static boolean takesAll(BuildRules rules) {
    return rules.rounds().isEmpty() && rules.optionalLength(Setting.WALL_HEIGHT).isEmpty();
  }

  /** Plans with the logs chosen and writes the crew workbook. */
  Optional<Outcome> write(Yard yard) throws IOException {
    Job whole = job.orElseThrow();
    List<Taken> taken = yard.taken(file, whole);
    return Optional.of(write(taken.isEmpty() ? chosen : Planner.of(whole, chosen.choice(), taken)));
  }

  /** Reads a crew workbook back, plans the rest anew, and writes the next revision. */
  Optional<Outcome> replan() throws IOException {
    return Optional.of(new ReplanRun(file, options, console).run());
  }

  private Outcome write(Plan plan) throws IOException {
    output.otherInput().ifPresent(problems::add);
    List<Problem> found = List.copyOf(problems);
    CrewContext first = context(plan, found, 1);
    console.say(file, first.problems());
    Exit exit = exit(plan, first.problems());
    String made =
        Made.of(
                isStopped ? "stopped" : Made.inputs(file, options),
                Outcome.planned(file, exit, file, plan, first.problems()))
            .text();
    Path written =
        output.write(
            revision -> output.book(context(plan, found, revision)).property(Made.PROPERTY, made));
    output.tables(PlainTables.of(first));
    LOG.info("{} planned: {} rounds, written to {}", file, plan.rounds(), written);
    console.result(written.toString());
    plan.takeoff().top().flatMap(Top::wanted).ifPresent(wanted -> sayHeight(plan, wanted));
    long taken = plan.count(Plan.Use.TAKEN);
    console.say(
        "%s: %s used, %d spare, %d left out%s"
            .formatted(
                file.getFileName(),
                Console.count(plan.count(Plan.Use.PLACED), "log"),
                plan.count(Plan.Use.SPARE),
                plan.count(Plan.Use.LEFT_OUT),
                taken == 0 ? "" : ", " + taken + " taken by other jobs"));
    return Outcome.planned(file, exit, written, plan, first.problems());
  }

  private void sayHeight(Plan plan, WantedHeight wanted) {
    BuildRules rules = plan.job().rules();
    LengthFormat formats = LengthFormat.forJob(rules.unit(), rules.printStep());
    Length gap = Length.of(wanted.gap(), LengthUnit.INCH).roundedTo(rules.printStep());
    console.say(
        "%s: %s to %s, wanted %s; a gap of %s %s gives it%s"
            .formatted(
                file.getFileName(),
                come(plan.rounds()),
                formats.feetInches(wanted.now()),
                formats.feetInches(wanted.height()),
                formats.mark(gap),
                rules.unit().symbol(),
                wanted.allowed() ? "" : ", but it is outside the limits: " + rounds(plan, wanted)));
  }

  /** Where no gap gives the height, another number of rounds comes nearer. */
  private static String rounds(Plan plan, WantedHeight wanted) {
    double course = wanted.now().in(LengthUnit.INCH) / plan.rounds();
    long nearer = Math.round(wanted.height().in(LengthUnit.INCH) / course);
    return nearer == plan.rounds()
        ? "other logs would have to be chosen"
        : "about " + come(nearer) + " nearer";
  }

  private static String come(long rounds) {
    return rounds + (rounds == 1 ? " round comes" : " rounds come");
  }

  private CrewContext context(Plan plan, List<Problem> found, int revision) {
    String input = file.getFileName().toString();
    return CrewContext.of(
        plan, found, new Issue(revision, input, Version.NUMBER, options.pictures()));
  }

  private Exit exit(Plan plan, List<Problem> all) {
    if (isStopped) {
      return Exit.STOPPED;
    }
    if (plan.choice().shortage().isPresent()) {
      return Exit.SHORT_OF_LOGS;
    }
    boolean doubts = all.stream().anyMatch(problem -> problem.severity() != Severity.INFO);
    return options.strict() && doubts ? Exit.BAD_INPUT : Exit.DONE;
  }

  private Optional<Findings> read() {
    return open()
        .flatMap(
            tables -> {
              Read<Findings> findings = JobReader.read(tables, options.asked());
              problems.addAll(findings.problems());
              return findings.value();
            });
  }

  private Optional<List<Table>> open() {
    List<Table> tables = new ArrayList<>();
    List<Path> files = new ArrayList<>(List.of(file));
    files.addAll(options.logs());
    files.addAll(options.yard());
    boolean opened = true;
    for (Path each : files) {
      Read<List<Table>> read = Sources.read(each);
      problems.addAll(read.problems());
      read.value().ifPresent(tables::addAll);
      opened &= read.value().isPresent();
    }
    return opened ? Optional.of(tables) : Optional.empty();
  }

  private Outcome nothingPlanned(Optional<Findings> findings) {
    console.say(file, problems);
    boolean logs = findings.filter(found -> !found.logs().isEmpty()).isPresent();
    boolean walls = findings.flatMap(Findings::job).isPresent();
    String why = walls ? "the logs do not make one round" : "the walls are not known; give --walls";
    if (findings.isEmpty()) {
      why = "the file could not be read";
    } else if (badSetting()) {
      why = "a setting cannot be used, and its default may not be what was meant";
    } else if (!logs) {
      why = "there is no usable log";
    }
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    String said = "nothing was planned: " + why;
    console.fail(Problem.of(ProblemCode.NOTHING_PLANNED, where, "", said).toString());
    String first = Outcome.firstError(problems);
    String note = first.isEmpty() ? said : said + ": " + first;
    return Outcome.failed(file, errorExit(true), problems, note);
  }

  private boolean badSetting() {
    return problems.stream().anyMatch(problem -> problem.code() == ProblemCode.BAD_SETTING);
  }

  private Exit errorExit(boolean failed) {
    boolean closed =
        problems.stream().anyMatch(problem -> problem.code() == ProblemCode.UNREADABLE);
    if (closed) {
      return Exit.NO_ACCESS;
    }
    boolean strict = options.strict() && count(Severity.WARNING) > 0;
    return failed || strict ? Exit.BAD_INPUT : Exit.DONE;
  }

  private long count(Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }
}
