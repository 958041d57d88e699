package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.balance.Effort;
import roundbook.buying.Purchase;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.plan.LackOrder;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.plan.Taken;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.words.Sentences;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.CrewContext.Issue;
import roundbook.report.table.PlainTables;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Choice;
import roundbook.rounds.LeastScore;
import roundbook.table.Table;
import roundbook.takeoff.Top;
import roundbook.takeoff.Top.WantedHeight;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Reads, plans and writes one job, from its files to its outcome. */
final class PlanRun {
  private static final Logger LOG = LoggerFactory.getLogger(PlanRun.class);

  private final Path file;
  private final Run run;
  private final Console console;
  private final CrewFile output;
  private final Proving proving;

  PlanRun(Path file, Run run, Console console) {
    this.file = file;
    this.run = run;
    this.console = console;
    this.output = new CrewFile(file, run, console);
    this.proving = new Proving(file, run, console);
  }

  /**
   * A job that was read.
   *
   * @param job the job, its tally corrected
   * @param problems every problem found on the way
   */
  record Ready(Job job, List<Problem> problems) {}

  /**
   * A job whose logs are chosen.
   *
   * @param job the job, with the logs that others have taken
   * @param plan the plan of the logs that were left to it
   * @param problems every problem found on the way
   * @param stopped whether the search, or what was asked after it, was ended before its time
   */
  record Chosen(Job job, Plan plan, List<Problem> problems, boolean stopped) {}

  /** Plans a file that shares no yard, unless an earlier run has made its workbook. */
  Outcome outcome() throws IOException {
    Yard own = new Yard(List.of(), List.of(file));
    Optional<Outcome> before = run.options().resume() ? before() : Optional.empty();
    return before.isPresent()
        ? before.get()
        : read()
            .then(job -> choose(job, own))
            .then(plan -> Stage.ended(write(plan, own)))
            .outcome();
  }

  /** Returns the outcome of an earlier run whose workbook was made from the same. */
  private Optional<Outcome> before() throws IOException {
    if (!Files.isReadable(file)) {
      return Optional.empty();
    }
    Optional<Path> newest = output.newest();
    Optional<BookOrigin> made = newest.flatMap(BookOrigin::read);
    if (made.isEmpty() || !made.get().inputs().equals(BookOrigin.inputs(file, run.options()))) {
      return Optional.empty();
    }
    console.say("%s: planned before, as %s".formatted(file.getFileName(), newest.get()));
    return Optional.of(made.get().outcome(file, newest.get()));
  }

  /** Reads the job of a shared yard; what could not be written is told before it takes a log. */
  Stage<Ready> readShared() throws IOException {
    output.checkFolder();
    return read();
  }

  /** Reads the job; it ends when nothing can be planned. */
  private Stage<Ready> read() throws IOException {
    Read<List<Table>> tables = Sources.all(file, run.options().tallies());
    if (tables.value().isEmpty()) {
      return Stage.ended(nothingPlanned(Phrase.of("why.no-file"), tables.problems()));
    }
    Read<Findings> read =
        JobReader.read(tables.value().get(), OwnWords.beside(file, run.options().asked()));
    List<Problem> problems = joined(tables.problems(), read.problems());
    Findings found = read.value().orElseThrow();
    boolean whole = found.job().filter(PlanRun::hasWood).isPresent();
    return !whole || ProblemCode.BAD_SETTING.isIn(problems)
        ? Stage.ended(nothingPlanned(why(found, problems), problems))
        : Stage.goingOn(new Ready(found.job().get().corrected(), problems));
  }

  private static boolean hasWood(Job job) {
    return !job.logs().isEmpty() || !job.stems().isEmpty();
  }

  private static Phrase why(Findings found, List<Problem> problems) {
    if (ProblemCode.BAD_SETTING.isIn(problems)) {
      return Phrase.of("why.setting");
    } else if (found.logs().isEmpty()) {
      boolean none = ProblemCode.NO_ROWS.isIn(problems) || ProblemCode.EMPTY_FILE.isIn(problems);
      return Phrase.of(none ? "why.no-log-yet" : "why.no-log");
    }
    return ProblemCode.BAD_WALLS.isIn(problems)
        ? Phrase.of("why.bad-walls")
        : Phrase.of("why.no-walls");
  }

  /** Chooses logs of what other jobs have left in the yard, and takes them. */
  Stage<Chosen> choose(Ready ready, Yard yard) throws IOException {
    Searching searching = new Searching(file, run, console);
    if (run.stop().asked()) {
      return Stage.ended(searching.notBegun(ready.problems()));
    }
    Job left = yard.left(file, ready.job());
    Planner planner = new Planner(new BalancedChooser());
    Plan first = searching.search(left, effort -> planner.plan(left, effort));
    List<Problem> stopped = searching.doubts();
    Plan plan = proving.effort(first).map(effort -> proved(first, effort)).orElse(first);
    List<Problem> problems = joined(joined(ready.problems(), greed(ready.job(), yard)), stopped);
    if (plan.rounds() == 0) {
      List<Problem> all = joined(problems, plan.problems());
      return Stage.ended(noRound(ready.job(), plan, all));
    }
    yard.take(file, ready.job(), plan);
    return Stage.goingOn(new Chosen(ready.job(), plan, problems, run.stop().asked()));
  }

  /** Returns the plan with how much better another could be, or a better one. */
  private Plan proved(Plan plan, Effort effort) {
    Choice choice = LeastScore.reckoned(plan.job(), plan.choice(), effort);
    double less = 1 - choice.score().total() / plan.choice().score().total();
    if (less > 0) {
      sayBetter(less);
    }
    return Planner.of(plan.job(), choice);
  }

  private void sayBetter(double share) {
    String by = share < 0.01 ? "less than 1 %" : (int) (100 * share) + " %";
    console.say(
        file.getFileName() + ": came upon a choice that is better by " + by + ", which is planned");
  }

  /** Says that no round can be built, and writes what to order so that all can. */
  private Outcome noRound(Job job, Plan plan, List<Problem> problems) throws IOException {
    Outcome nothing = nothingPlanned(Phrase.of("why.no-round"), problems);
    Optional<Purchase> purchase =
        LackOrder.of(job, plan)
            .flatMap(order -> Purchase.of(job.rules(), order, job.prices()).value());
    return purchase.isEmpty()
        ? nothing
        : new OrderRun(file, run, console).lacking(job, purchase.get(), problems);
  }

  /** Returns the doubt that a job takes all of a shared yard before others choose. */
  private List<Problem> greed(Job job, Yard yard) {
    BuildRules rules = job.rules();
    boolean bounded =
        rules.rounds().isPresent() || rules.optionalLength(Setting.WALL_HEIGHT).isPresent();
    if (bounded || !yard.isSharedAfter(file)) {
      return List.of();
    }
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    return List.of(Problem.of(ProblemCode.TAKES_ALL, where));
  }

  /** Plans with the logs chosen and writes the crew workbook. */
  Outcome write(Chosen chosen, Yard yard) throws IOException {
    List<Taken> taken = yard.taken(file, chosen.job());
    Plan plan =
        taken.isEmpty()
            ? chosen.plan()
            : Planner.of(whole(chosen, taken), chosen.plan().choice(), taken);
    List<Problem> found = joined(chosen.problems(), output.otherInput().stream().toList());
    CrewContext first = context(plan, found, 1);
    console.brief(file, first.problems());
    Exit exit =
        Exit.planned(plan, first.problems(), chosen.stopped(), run.options().run().strict());
    String inputs = chosen.stopped() ? "stopped" : BookOrigin.inputs(file, run.options());
    String made =
        BookOrigin.of(inputs, Outcome.planned(file, exit, file, plan, first.problems())).text();
    Path written =
        output.write(
            revision ->
                CrewBook.of(context(plan, found, revision)).property(BookOrigin.PROPERTY, made));
    output.tables(() -> PlainTables.of(first));
    LOG.info("{} planned: {} rounds, written to {}", file, plan.rounds(), written);
    say(plan, written);
    return Outcome.planned(file, exit, written, plan, first.problems());
  }

  /** Returns the job with the logs that others took, and the pieces of stems that it planned. */
  private static Job whole(Chosen chosen, List<Taken> taken) {
    Job planned = chosen.plan().job();
    return planned.stems().isEmpty()
        ? chosen.job()
        : planned.withLogs(
            Stream.concat(planned.logs().stream(), taken.stream().map(Taken::log)).toList());
  }

  private void say(Plan plan, Path written) {
    console.result(written.toString());
    proving.say(plan, false);
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

  /** Where no gap gives the height, the rounds that are ordered, or about so many, come nearer. */
  private static String rounds(Plan plan, WantedHeight wanted) {
    double course = wanted.now().in(LengthUnit.INCH) / plan.rounds();
    long nearer =
        plan.choice()
            .shortage()
            .map(shortage -> (long) shortage.wanted())
            .orElse(Math.round(wanted.height().in(LengthUnit.INCH) / course));
    return nearer == plan.rounds()
        ? "other logs would have to be chosen"
        : "about " + come(nearer) + " nearer";
  }

  private static String come(long rounds) {
    return rounds + (rounds == 1 ? " round comes" : " rounds come");
  }

  private CrewContext context(Plan plan, List<Problem> found, int revision) {
    String input = file.getFileName().toString();
    boolean pictures = run.options().book().pictures();
    return CrewContext.of(plan, found, new Issue(revision, input, Version.NUMBER, pictures));
  }

  private Outcome nothingPlanned(Phrase why, List<Problem> problems) {
    console.say(file, problems);
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    Problem nothing = Problem.of(ProblemCode.NOTHING_PLANNED, "plan", where).with("why", why);
    console.fail(nothing);
    String said = Sentences.english().message(nothing);
    String first = Outcome.firstError(problems);
    String note = first.isEmpty() ? said : said + ": " + first;
    return Outcome.failed(file, Exit.refused(problems), problems, note);
  }

  private static List<Problem> joined(List<Problem> one, List<Problem> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }
}
