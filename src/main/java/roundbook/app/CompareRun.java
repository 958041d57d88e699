package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.intake.Asked;
import roundbook.job.Building;
import roundbook.plan.Plan;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.replan.Comparison;
import roundbook.replan.Replanner;
import roundbook.report.book.ChangedPages;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.CrewContext.Issue;
import roundbook.report.start.ChangeWords;
import roundbook.site.SiteReport;

/** Reads two crew workbooks and says what is printed otherwise in the second. */
final class CompareRun {
  private final Console console;

  CompareRun(Console console) {
    this.console = console;
  }

  Exit run(Path old, Path now) {
    List<Problem> problems = new ArrayList<>();
    Optional<Plan> before = plan(old, problems);
    Optional<Plan> after = plan(now, problems);
    if (before.isPresent() && after.isPresent() && !sameBuilding(before.get(), after.get())) {
      CellRef where = CellRef.ofFile(now.getFileName().toString());
      problems.add(
          Problem.of(ProblemCode.CONTRADICTION, "buildings", where).remedyOf("two-revisions"));
    }
    console.say(problems);
    boolean failed = problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    if (before.isEmpty() || after.isEmpty() || failed) {
      return Exit.refused(problems);
    }
    Issue issue = new Issue(1, now.getFileName().toString(), Version.NUMBER, true);
    CrewContext context = CrewContext.of(after.get(), List.of(), issue);
    new ChangeWords(context.words())
        .lines(Comparison.of(before.get(), after.get()), ChangedPages.of(before.get(), context))
        .forEach(console::result);
    return Exit.DONE;
  }

  private static boolean sameBuilding(Plan before, Plan after) {
    Building one = before.job().building();
    Building other = after.job().building();
    return one.walls().size() == other.walls().size()
        && one.walls().stream()
            .allMatch(
                wall ->
                    other
                        .wall(wall.name())
                        .filter(each -> each.outside().equals(wall.outside()))
                        .isPresent());
  }

  private static Optional<Plan> plan(Path file, List<Problem> problems) {
    Read<SiteReport> site = CrewSource.read(file, Asked.NOTHING);
    if (site.value().isEmpty()) {
      problems.addAll(site.problems());
      return Optional.empty();
    }
    site.problems().stream()
        .filter(problem -> problem.code() == ProblemCode.CELL_LOST)
        .forEach(problems::add);
    Read<Plan> plan = Replanner.printed(site.value().get());
    problems.addAll(plan.problems());
    return plan.value();
  }
}
