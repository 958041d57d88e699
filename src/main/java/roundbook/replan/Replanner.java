package roundbook.replan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.page.LogColumn;
import roundbook.plan.DealtAnew;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.plan.TallyBias;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.problem.Value;
import roundbook.rounds.Choice;
import roundbook.rounds.Chooser;
import roundbook.rounds.KeepingChooser;
import roundbook.rounds.Placement;
import roundbook.rounds.Reorder;
import roundbook.site.SiteReport;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Plans the rest of the walls anew from what a crew built, measured and typed. */
public final class Replanner {
  private final SiteReport site;
  private final Progress progress;

  private Replanner(SiteReport site) {
    this.site = site;
    this.progress = new Progress(site);
  }

  /**
   * Makes the next plan.
   *
   * @param site the crew workbook as it came back
   * @param effort how hard to look for logs where places must be filled
   * @return the plan, unless a reading cannot be; and what must be said
   */
  public static Read<Replan> replan(SiteReport site, Effort effort) {
    Replanner replanner = new Replanner(site);
    Read<Plan> printed = printed(site);
    if (printed.value().isEmpty()) {
      return Read.failed(printed.problems());
    }
    Plan before = printed.value().get();
    Job job = replanner.progress.job();
    KeepingChooser.Kept kept =
        new KeepingChooser(site.plan(), replanner.wanted()).choose(job, effort);
    Optional<DealtAnew> anew = DealtAnew.of(job, kept.choice(), effort);
    Map<Place, Held> places = anew.map(each -> places(each.choice())).orElse(site.plan());
    DealtAnew dealt = anew.orElse(new DealtAnew(job, kept.choice()));
    Plan plan = plan(dealt.job(), ordered(dealt, places, effort));
    GapCheck gaps = GapCheck.of(plan);
    List<Problem> said = new ArrayList<>(new ReadingDoubts(site, plan).all());
    said.addAll(new GapDoubts(site, plan, gaps).all());
    if (said.stream().anyMatch(each -> each.severity() == Severity.ERROR)) {
      return Read.failed(said);
    }
    said.addAll(replanner.bias(plan));
    List<Change> changes = new Reasons(site, plan, kept.moves(), anew.isPresent()).all();
    Replan replan =
        new Replan(
            site.issue().revision(), before, plan, changes, Comparison.of(before, plan), gaps);
    return new Read<>(Optional.of(replan), said);
  }

  /** Returns the choice with the smallest order for what is missing of the rest, and its proof. */
  private static Choice ordered(DealtAnew dealt, Map<Place, Held> places, Effort effort) {
    Chooser again =
        (job, looking) ->
            new KeepingChooser(places, job.job().rules().rounds()).choose(job, looking).choice();
    return Reorder.proved(again, dealt.job(), dealt.choice(), effort);
  }

  /** Makes the plan; what was measured goes with a log that changes walls. */
  private static Plan plan(Job job, Choice choice) {
    return Planner.of(job.withBuilt(job.built().moved(places(choice))), choice);
  }

  /**
   * Returns the plan of a workbook as it was printed, before anything more was typed into it; a
   * problem where its lists do not hold together.
   */
  public static Read<Plan> printed(SiteReport site) {
    try {
      Job job = Progress.printed(site);
      int wanted = site.issue().wanted().orElse(site.rounds());
      return Read.of(Planner.of(job, Placement.choice(job, site.plan(), wanted)), List.of());
    } catch (IllegalArgumentException | IllegalStateException broken) {
      CellRef where = site.where(LogColumn.TAGS.named());
      return Read.failed(
          List.of(
              Problem.of(ProblemCode.CELL_LOST, "lists", where)
                  .with("why", String.valueOf(broken.getMessage()))));
    }
  }

  /** Returns how many rounds are wanted; empty to ask the job, where the wish was changed. */
  private OptionalInt wanted() {
    boolean same =
        Set.of(Setting.ROUNDS, Setting.WALL_HEIGHT).stream()
            .allMatch(
                setting ->
                    Objects.equals(
                        value(site.job().rules(), setting), value(site.printed(), setting)));
    return same ? OptionalInt.of(site.issue().wanted().orElse(site.rounds())) : OptionalInt.empty();
  }

  private static Object value(BuildRules rules, Setting setting) {
    return rules.value(setting).map(BuildRules.Value::value).orElse(null);
  }

  private List<Problem> bias(Plan plan) {
    BuildRules rules = plan.job().rules();
    return TallyBias.of(plan)
        .filter(bias -> bias.worthCorrecting(rules))
        .map(
            bias -> {
              LengthFormat formats = LengthFormat.forJob(rules.unit(), rules.printStep());
              Length correction = bias.correction(rules);
              return Problem.of(
                      ProblemCode.TALLY_BIAS, site.where(Setting.TALLY_CORRECTION.label()))
                  .with("count", bias.logs())
                  .with("difference", Value.measure(correction, formats))
                  .found(Value.mark(correction, formats));
            })
        .stream()
        .toList();
  }

  private static Map<Place, Held> places(Choice choice) {
    Map<Place, Held> places = new TreeMap<>();
    choice.courses().stream()
        .flatMap(course -> course.places().stream())
        .forEach(filled -> places.put(filled.place(), filled.held()));
    return places;
  }

  /** Returns the log and the cut of every place of a plan. */
  static Map<Place, Held> places(Plan plan) {
    Map<Place, Held> places = new TreeMap<>();
    plan.pieces().forEach(piece -> places.put(piece.placed().place(), piece.placed().held()));
    return places;
  }
}
