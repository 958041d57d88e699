package roundbook.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.balance.Effort;
import roundbook.crosscut.ButtRule;
import roundbook.crosscut.Crosscutter;
import roundbook.crosscut.CutJob;
import roundbook.exchange.Exchanges;
import roundbook.exchange.LongLog;
import roundbook.job.AsBuilt;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stems;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.problem.Phrase;
import roundbook.problem.Value;
import roundbook.rounds.Choice;
import roundbook.rounds.Chooser;
import roundbook.rounds.Fit;
import roundbook.rounds.KeepingChooser;
import roundbook.rounds.PairMiss;
import roundbook.rounds.Reorder;
import roundbook.rounds.Verifier;
import roundbook.rounds.Verifier.Verdict;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.Starter;
import roundbook.takeoff.Takeoff;

/** Makes the whole plan of a job from the choice of its logs. */
public final class Planner {
  private static final BigDecimal LITTLE = new BigDecimal("0.001");

  private final Chooser chooser;

  /** Plans with a way to choose logs. */
  public Planner(Chooser chooser) {
    this.chooser = chooser;
  }

  /**
   * Plans a job and checks the plan from first principles.
   *
   * @param job the job
   * @param effort how hard to look for a good choice of logs
   * @return the plan; it has no rounds when not one could be built
   * @throws IllegalStateException if the check finds a fault: a fault of the program
   */
  public Plan plan(Job job, Effort effort) {
    CutJob crosscut = Crosscutter.cut(job, effort);
    Job cut = crosscut.job();
    Choice choice = Reorder.proved(chooser, cut, choice(crosscut, effort), effort);
    return of(cut.withStems(comparedWithRule(job, cut.stems(), choice, effort)), choice);
  }

  /** Returns the better of what logs were cut for, mended, and what a search finds anew. */
  private Choice choice(CutJob cut, Effort effort) {
    Choice found = chooser.choose(cut.job(), effort);
    if (!cut.isCut()) {
      return found;
    }
    Choice kept = mended(cut, effort);
    boolean better =
        kept.courses().size() == found.courses().size()
            && kept.score().total() < found.score().total();
    return better ? kept : found;
  }

  /** Returns what logs were cut for, mended where any change makes it better. */
  public static Choice mended(CutJob cut, Effort effort) {
    Job mending =
        cut.job().with(cut.job().rules().with(Setting.CHANGE_PAYS, LITTLE, Origin.OPTION));
    int rounds = cut.places().keySet().stream().mapToInt(AsBuilt.Place::round).max().orElse(0);
    return new KeepingChooser(cut.places(), OptionalInt.of(rounds))
        .choose(mending, effort)
        .choice();
  }

  /** Returns the stems with what cutting them from the butt would have come to. */
  private Stems comparedWithRule(Job job, Stems stems, Choice choice, Effort effort) {
    boolean felled = stems.all().stream().anyMatch(stem -> !stem.isLog());
    if (!felled || choice.courses().isEmpty()) {
      return stems;
    }
    Job ruled = ButtRule.cut(job, choice.courses().size());
    BigDecimal rounds = BigDecimal.valueOf(choice.courses().size());
    Job bound = ruled.with(job.rules().with(Setting.ROUNDS, rounds, Origin.OPTION));
    Choice other = chooser.choose(bound, effort);
    long flagged =
        Stack.of(job.rules(), job.building(), other.courses(), job.built()).joints().stream()
            .filter(joint -> joint.flag(job.rules()) != Joint.Flag.NONE)
            .count();
    return stems.with(new Stems.ByRule(other.courses().size(), Math.toIntExact(flagged)));
  }

  /**
   * Makes the plan of a choice that was already made.
   *
   * @throws IllegalStateException if the check finds a fault: a fault of the program
   */
  public static Plan of(Job job, Choice choice) {
    return of(job, choice, List.of());
  }

  /** Returns the plan of a job of which nothing is planned yet: it has no round. */
  public static Plan unplanned(Job job) {
    Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
    return of(job, new Choice(List.of(), job.logs(), none, Optional.empty(), List.of()));
  }

  /**
   * Makes the plan of a choice that was made from a shared yard.
   *
   * @param whole the job with all logs of the yard
   * @param made the choice, which has none of the logs taken in a place
   * @param taken what other jobs have taken
   * @throws IllegalStateException if the check finds a fault: a fault of the program
   */
  public static Plan of(Job whole, Choice made, List<Taken> taken) {
    Set<String> gone = taken.stream().map(each -> each.log().tag()).collect(Collectors.toSet());
    Job job =
        whole.withLogs(whole.logs().stream().filter(log -> !gone.contains(log.tag())).toList());
    Choice choice = made.without(gone);
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses(), job.built());
    Verdict verdict = Verifier.verify(job, choice, stack);
    if (!verdict.faults().isEmpty()) {
      String faults = String.join("; ", verdict.faults());
      throw new IllegalStateException("the plan does not hold: " + faults);
    }
    Takeoff takeoff = Takeoff.of(job, stack);
    List<PiecePlan> pieces = new PiecePlanner(job, stack, takeoff).pieces();
    Starter starter = takeoff.starter();
    Choice free = choice.without(starter.tags());
    Supplies supplies = new Supplies(job, free);
    List<ClassSupply> classes = supplies.classes();
    Exchanges exchanges = Exchanges.of(job, free, stack);
    return new Plan(
        job,
        choice,
        stack,
        pieces,
        takeoff,
        uses(whole, pieces, starter, taken, exchanges.longLogs()),
        classes,
        Quantities.of(job, pieces, takeoff),
        supplies.order(classes, starter),
        exchanges,
        new Doubts(job, choice, stack, pieces, takeoff, exchanges).all(),
        verdict,
        PairMiss.nearest(job, free, stack));
  }

  private static List<LogUse> uses(
      Job job,
      List<PiecePlan> pieces,
      Starter starter,
      List<Taken> taken,
      Map<String, LongLog> longLogs) {
    Map<String, LogUse> known = new HashMap<>();
    pieces.stream()
        .flatMap(piece -> placed(piece, longLogs))
        .forEach(use -> known.put(use.log().tag(), use));
    taken.stream()
        .map(each -> new LogUse(each.log(), Use.TAKEN, Optional.empty(), each.phrase()))
        .forEach(use -> known.put(use.log().tag(), use));
    starter
        .log()
        .map(log -> new LogUse(log, Use.SPARE, Optional.empty(), Phrase.of("use.starter")))
        .ifPresent(use -> known.put(use.log().tag(), use));
    Fit fit = new Fit(job);
    return job.logs().stream()
        .map(log -> known.containsKey(log.tag()) ? known.get(log.tag()) : unused(log, fit))
        .toList();
  }

  private static Stream<LogUse> placed(PiecePlan piece, Map<String, LongLog> longLogs) {
    Optional<LongLog> longer = Optional.ofNullable(longLogs.get(piece.placed().tags()));
    return piece.halves().isEmpty()
        ? Stream.of(placed(piece.placed().first(), longer.map(Planner::words).orElse(Value.NONE)))
        : piece.halves().stream().map(half -> placed(half.placed(), beside(half)));
  }

  /** Returns why a log is longer than its place needs. */
  private static Value words(LongLog log) {
    return log.shorter()
        .map(
            shorter ->
                Phrase.of(log.worse() > 0 ? "use.long.worse" : "use.long.spare")
                    .with("log", shorter.tag())
                    .with(
                        "cost",
                        Value.number(
                            BigDecimal.valueOf(log.worse()).setScale(2, RoundingMode.HALF_UP))))
        .orElseGet(() -> Phrase.of("use.long.only"));
  }

  private static Value beside(PiecePlan.Half half) {
    return Phrase.of(half.left() ? "use.left" : "use.right").with("opening", half.opening());
  }

  private static LogUse placed(PlacedLog place, Value note) {
    return new LogUse(place.piece().log(), Use.PLACED, Optional.of(place), note);
  }

  private static LogUse unused(Log log, Fit fit) {
    Optional<Fit.Reason> refused = fit.refused(log);
    Use use = refused.isPresent() ? Use.LEFT_OUT : Use.SPARE;
    Value note = refused.<Value>map(Fit.Reason::phrase).orElse(Value.NONE);
    return new LogUse(log, use, Optional.empty(), note);
  }
}
