package roundbook.replan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.GapSpot;
import roundbook.page.TypedBox;
import roundbook.plan.Plan;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.replan.GapCheck.Finding;
import roundbook.site.SiteReport;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Doubts measured gaps as corner readings are doubted, and says why walls are not as planned. */
final class GapDoubts {
  private final SiteReport site;
  private final GapCheck gaps;
  private final BuildRules rules;
  private final LengthFormat formats;

  GapDoubts(SiteReport site, Plan plan, GapCheck gaps) {
    this.site = site;
    this.gaps = gaps;
    this.rules = plan.job().rules();
    this.formats = LengthFormat.forJob(rules.unit(), rules.printStep());
  }

  List<Problem> all() {
    List<Problem> problems = new ArrayList<>();
    gaps.lines().forEach(line -> doubt(line).ifPresent(problems::add));
    if (!gaps.lines().isEmpty() && !gaps.asPlanned()) {
      problems.add(differ());
    }
    return problems;
  }

  private Optional<Problem> doubt(GapCheck.Line line) {
    Length off = line.difference().absolute();
    if (!off.isMoreThan(most(20, 3, 4))) {
      return Optional.empty();
    }
    boolean refused = !off.isLessThan(most(50, 2, 1));
    ProblemCode code = refused ? ProblemCode.OUT_OF_RANGE : ProblemCode.DOUBTFUL_VALUE;
    return Optional.of(
        Problem.of(code, "gap", where(line.spot()))
            .with("wall", line.spot().wall())
            .with("gap", mark(line.measured()))
            .with("expected", mark(line.predicted()))
            .found(mark(line.measured()))
            .remedyOf("gap-again"));
  }

  private roundbook.problem.CellRef where(GapSpot spot) {
    return site.where(TypedBox.GAP.named(spot.below(), spot.named()));
  }

  private Length most(long millimetres, long inches, long part) {
    return rules.metric() ? Length.ofMillimetres(millimetres) : Length.ofInchFraction(inches, part);
  }

  private Problem differ() {
    Optional<Finding> finding = gaps.finding();
    String cause =
        finding.map(each -> each.cause().name().toLowerCase(Locale.ROOT)).orElse("unknown");
    Length by = finding.map(Finding::by).orElse(Length.ZERO);
    long share = Math.round(100 * finding.map(Finding::share).orElse(0.0));
    return Problem.of(ProblemCode.GAPS_DIFFER, cause, where(gaps.lines().get(0).spot()))
        .with("count", gaps.lines().size())
        .with("mean", measure(gaps.mean()))
        .with("spread", measure(gaps.spread()))
        .with("by", measure(by))
        .with("share", share)
        .found(mark(gaps.mean()))
        .remedyOf("gaps-" + cause);
  }

  private Value measure(Length length) {
    return Value.measure(length.roundedTo(rules.printStep()), formats);
  }

  private Value mark(Length length) {
    return Value.mark(length.roundedTo(rules.printStep()), formats);
  }
}
