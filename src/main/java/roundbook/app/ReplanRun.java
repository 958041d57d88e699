package roundbook.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.job.Job;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.words.Sentences;
import roundbook.replan.Replan;
import roundbook.replan.Replanner;
import roundbook.replan.StillOpen;
import roundbook.report.book.ChangedPages;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.CrewContext.Issue;
import roundbook.report.start.ChangeWords;
import roundbook.report.table.PlainTables;
import roundbook.rounds.LeastScore;
import roundbook.site.SiteReport;

/** Reads one crew workbook back, plans the rest anew and writes the next revision. */
final class ReplanRun {
  private static final Logger LOG = LoggerFactory.getLogger(ReplanRun.class);

  private static final Set<ProblemCode> NO_CREW_BOOK =
      EnumSet.of(
          ProblemCode.UNREADABLE,
          ProblemCode.NOT_A_WORKBOOK,
          ProblemCode.ENCRYPTED,
          ProblemCode.TOO_LARGE,
          ProblemCode.EMPTY_FILE,
          ProblemCode.NOT_A_CREW_WORKBOOK,
          ProblemCode.OTHER_VERSION);

  private final Path file;
  private final Run run;
  private final Console console;
  private final CrewFile output;
  private final Proving proving;
  private final Optional<Path> with;

  /**
   * A run.
   *
   * @param with another copy of the revision, that somebody else typed into
   */
  ReplanRun(Path file, Optional<Path> with, Run run, Console console) {
    this.file = file;
    this.with = with;
    this.run = run;
    this.console = console;
    this.output = new CrewFile(file, run, console);
    this.proving = new Proving(file, run, console);
  }

  Outcome outcome() throws IOException {
    Options options = run.options();
    Read<SiteReport> site =
        CrewSource.read(
            file, with, options.setting().logs(), OwnWords.beside(file, options.asked()));
    if (site.value().isEmpty() || ProblemCode.BAD_SETTING.isIn(site.problems())) {
      return nothingWritten(site.problems());
    }
    Searching searching = new Searching(file, run, console);
    if (run.stop().asked()) {
      return searching.notBegun(site.problems());
    }
    SiteReport typed = site.value().get();
    Read<Replan> made = searching.search(typed.job(), effort -> Replanner.replan(typed, effort));
    List<Problem> stopped = searching.doubts();
    List<Problem> problems = new ArrayList<>(site.problems());
    output.newer(typed.issue().revision()).ifPresent(problems::add);
    problems.addAll(made.problems());
    return made.value().isEmpty()
        ? nothingWritten(problems)
        : write(typed, proved(made.value().get()), problems, stopped);
  }

  /** Returns a re-plan with how much better another could be, where that is asked. */
  private Replan proved(Replan replan) {
    Plan plan = replan.plan();
    return proving
        .effort(plan)
        .map(effort -> LeastScore.told(plan.job(), plan.choice(), effort))
        .map(choice -> replan.with(Planner.of(plan.job(), choice)))
        .orElse(replan);
  }

  private Outcome write(
      SiteReport site, Replan replan, List<Problem> problems, List<Problem> stopped)
      throws IOException {
    Plan plan = replan.plan();
    CrewContext first = context(site, replan, problems, stopped);
    console.brief(file, first.problems());
    Path written =
        output.writeAfter(site.issue().revision(), revision -> CrewBook.of(first.as(revision)));
    output.tables(() -> PlainTables.of(first));
    LOG.info("{} re-planned: {} changes, written to {}", file, replan.changes().size(), written);
    console.result(written.toString());
    proving.say(plan, true);
    new ChangeWords(first.words()).brief(replan, first.changed()).forEach(console::say);
    boolean strict = run.options().run().strict();
    Exit exit = Exit.planned(plan, first.problems(), run.stop().asked(), strict);
    return Outcome.planned(file, exit, written, plan, first.problems());
  }

  private CrewContext context(
      SiteReport site, Replan replan, List<Problem> problems, List<Problem> stopped) {
    String from = site.issue().from();
    String input = from.isEmpty() ? file.getFileName().toString() : from;
    boolean pictures = run.options().book().pictures();
    Issue issue = new Issue(site.issue().revision() + 1, input, Version.NUMBER, pictures);
    List<Problem> typed = problems.stream().filter(this::isTyped).toList();
    CrewContext context =
        CrewContext.of(replan.plan(), found(site, replan.plan().job(), problems, stopped), issue)
            .saying(typed);
    return context.following(replan, ChangedPages.of(replan.before(), context));
  }

  /** Returns what was found when tallies were read: as it was said then, and now. */
  private List<Problem> found(
      SiteReport site, Job job, List<Problem> problems, List<Problem> stopped) {
    Stream<Problem> before = StillOpen.of(site.tally().found(), job).stream();
    Stream<Problem> now = problems.stream().filter(problem -> !isTyped(problem));
    return Stream.concat(Stream.concat(before, now), stopped.stream()).toList();
  }

  /** Returns whether a problem is of the crew workbook and not of a further tally. */
  private boolean isTyped(Problem problem) {
    return Stream.concat(Stream.of(file), with.stream())
        .anyMatch(each -> problem.where().file().equals(each.getFileName().toString()));
  }

  private Outcome nothingWritten(List<Problem> problems) {
    console.say(problems);
    boolean crewBook = problems.stream().map(Problem::code).noneMatch(NO_CREW_BOOK::contains);
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    Problem nothing =
        Problem.of(ProblemCode.NOTHING_PLANNED, "write", where)
            .with("why", Phrase.of(crewBook ? "why.typed" : "why.no-crew-workbook"));
    console.fail(nothing);
    String said = Sentences.english().message(nothing);
    return Outcome.failed(file, Exit.refused(problems), problems, said);
  }
}
