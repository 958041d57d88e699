package roundbook.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.replan.Replan;
import roundbook.replan.Replanner;
import roundbook.report.ChangeWords;
import roundbook.report.CrewContext;
import roundbook.report.CrewContext.Issue;
import roundbook.report.PlainTables;
import roundbook.report.Words;
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
  private final Options options;
  private final Console console;
  private final CrewFile output;
  private final List<Problem> problems = new ArrayList<>();
  private List<Problem> stopped = List.of();

  ReplanRun(Path file, Options options, Console console) {
    this.file = file;
    this.options = options;
    this.console = console;
    this.output = new CrewFile(file, options, console);
  }

  Outcome run() throws IOException {
    Read<SiteReport> site = CrewSource.read(file, options.logs(), options.asked());
    problems.addAll(site.problems());
    if (site.value().isEmpty() || badSetting()) {
      return nothingWritten(
          isCrewBook()
              ? "what was typed cannot be used as it is"
              : "it is no crew workbook to read");
    }
    Searching searching = new Searching(file, options, console);
    if (options.stop().asked()) {
      return searching.notBegun(problems);
    }
    SiteReport typed = site.value().get();
    output.newer(typed.issue().revision()).ifPresent(problems::add);
    Read<Replan> made = searching.run(typed.job(), effort -> Replanner.replan(typed, effort));
    problems.addAll(made.problems());
    stopped = searching.doubts();
    return made.value().isEmpty()
        ? nothingWritten("what was typed cannot be used as it is")
        : write(site.value().get(), made.value().get());
  }

  private Outcome write(SiteReport site, Replan replan) throws IOException {
    Plan plan = replan.plan();
    CrewContext first = context(site, replan, site.issue().revision() + 1);
    console.say(file, first.problems());
    Path written =
        output.writeAfter(site.issue().revision(), revision -> output.book(first.as(revision)));
    output.tables(PlainTables.of(first));
    LOG.info("{} re-planned: {} changes, written to {}", file, replan.changes().size(), written);
    console.result(written.toString());
    Words words = first.words();
    new ChangeWords(words).brief(replan, first.changed()).forEach(console::say);
    boolean shortage = plan.choice().shortage().isPresent();
    boolean doubts =
        first.problems().stream().anyMatch(problem -> problem.severity() != Severity.INFO);
    Exit good = options.strict() && doubts ? Exit.BAD_INPUT : Exit.DONE;
    Exit ended = shortage ? Exit.SHORT_OF_LOGS : good;
    Exit exit = stopped.isEmpty() ? ended : Exit.STOPPED;
    return Outcome.planned(file, exit, written, plan, first.problems());
  }

  private CrewContext context(SiteReport site, Replan replan, int revision) {
    String from = site.issue().from();
    String input = from.isEmpty() ? file.getFileName().toString() : from;
    Issue issue = new Issue(revision, input, Version.NUMBER, options.pictures());
    return CrewContext.of(replan.plan(), found(site), issue).following(replan, typed());
  }

  /** Returns what was found when tallies were read: as it was said then, and now. */
  private List<Problem> found(SiteReport site) {
    Words words = Words.of(site.printed().text(Setting.LANGUAGE));
    Stream<Problem> before =
        site.tally().found().stream().map(each -> words.inEnglish(each.told(), each.severity()));
    Stream<Problem> now = problems.stream().filter(problem -> !isTyped(problem));
    return Stream.concat(Stream.concat(before, now), stopped.stream()).toList();
  }

  private List<Problem> typed() {
    return problems.stream().filter(this::isTyped).toList();
  }

  /** Returns whether a problem is of the crew workbook and not of a further tally. */
  private boolean isTyped(Problem problem) {
    return problem.where().file().equals(file.getFileName().toString());
  }

  /** Returns whether the file was read as a crew workbook, and only what stands in it is wrong. */
  private boolean isCrewBook() {
    return problems.stream().map(Problem::code).noneMatch(NO_CREW_BOOK::contains);
  }

  private Outcome nothingWritten(String why) {
    console.say(problems);
    String said = "nothing was written: " + why;
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    console.fail(Problem.of(ProblemCode.NOTHING_PLANNED, where, "", said).toString());
    return Outcome.failed(file, CrewSource.exit(problems), problems, said);
  }

  private boolean badSetting() {
    return problems.stream().anyMatch(problem -> problem.code() == ProblemCode.BAD_SETTING);
  }
}
