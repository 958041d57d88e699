package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundbook.exchange.Exchanges;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.notch.NeckFit;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.Value;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.rounds.Shortage;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Says aloud every doubt of a plan: gaps, spreads, steps, thin ends, missing logs. */
final class Doubts {
  private final Job job;
  private final Choice choice;
  private final Stack stack;
  private final List<PiecePlan> pieces;
  private final Takeoff takeoff;
  private final Exchanges exchanges;
  private final LengthFormat formats;
  private final List<Problem> problems = new ArrayList<>();

  /** Gaps that bows bring out of their limits, with how far. */
  private final Map<Problem, Length> swept = new LinkedHashMap<>();

  Doubts(
      Job job,
      Choice choice,
      Stack stack,
      List<PiecePlan> pieces,
      Takeoff takeoff,
      Exchanges exchanges) {
    this.job = job;
    this.choice = choice;
    this.stack = stack;
    this.pieces = pieces;
    this.takeoff = takeoff;
    this.exchanges = exchanges;
    this.formats = LengthFormat.forJob(job.rules().unit(), job.rules().printStep());
  }

  List<Problem> all() {
    problems.addAll(choice.problems());
    choice.shortage().ifPresent(this::shortage);
    height();
    leftOut();
    stack.courses().stream().filter(course -> !isCut(course.round())).forEach(this::course);
    stack.joints().forEach(this::joint);
    swept.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .forEach(each -> problems.add(each.getKey()));
    List<PiecePlan> uncut =
        pieces.stream().filter(piece -> !job.built().isCut(piece.placed().place())).toList();
    uncut.forEach(this::ends);
    problems.addAll(new OpeningDoubts(formats).longLogs(uncut, new Fit(job)));
    if (!pieces.isEmpty()) {
      problems.addAll(new OpeningDoubts(formats).of(job, takeoff.openings()));
      problems.addAll(new OpeningDoubts(formats).kept(pieces));
    }
    return List.copyOf(problems);
  }

  /** Returns whether a round is cut: no exchange of logs can mend it any more. */
  private boolean isCut(int round) {
    return job.built().isCut(round);
  }

  private void shortage(Shortage shortage) {
    List<Phrase> missing = shortage.missing().stream().map(this::missing).toList();
    String variant = missing.isEmpty() ? "no-order" : "";
    Problem few = Problem.of(ProblemCode.TOO_FEW_LOGS, variant, CellRef.ofFile(""));
    problems.add(
        (missing.isEmpty() ? few.remedyOf("no-order") : few)
            .with("wanted", Phrase.counted("rounds", shortage.wanted()))
            .with("built", shortage.built())
            .with("missing", Value.list("list.semicolon", missing))
            .with("proof", shortage.proof().map(this::proof).orElse(Value.NONE)));
  }

  /**
   * Says that the walls, as high as was asked, would be higher than any are built; or that, no
   * height being asked for, they stop at a storey though logs are left.
   */
  private void height() {
    int built = stack.courses().size();
    int wanted = choice.shortage().map(Shortage::wanted).orElse(built);
    Length highest =
        takeoff.top().stream()
            .flatMap(top -> top.walls().stream())
            .map(wall -> wall.centre().timesRatio(wanted, built))
            .reduce(Length.ZERO, Length::most);
    Value height = Value.tape(highest.roundedTo(printedHeight()), formats);
    if (highest.isMoreThan(Choice.HIGHEST)) {
      problems.add(
          problem(ProblemCode.WALL_HIGH, height).with("rounds", wanted).with("height", height));
    } else if (built > 0 && !job.asksHeight() && hasRoundLeft(highest.timesRatio(1, built))) {
      problems.add(
          Problem.of(ProblemCode.WALL_HIGH, "stopped", CellRef.ofFile(""))
              .with("rounds", built)
              .with("height", height));
    }
  }

  /** Returns whether another round has logs, but would make the walls higher than a storey. */
  private boolean hasRoundLeft(Length course) {
    Fit fit = new Fit(job);
    long left = choice.unused().stream().filter(log -> fit.refused(log).isEmpty()).count();
    int built = stack.courses().size();
    return left >= job.building().walls().size()
        && course.times(built + 1L).isMoreThan(Choice.STOREY);
  }

  private Length printedHeight() {
    return job.rules().metric() ? Length.ofMillimetres(100) : Length.ofInches(12);
  }

  private Phrase missing(Shortage.Missing missing) {
    return Phrase.counted("missing-logs", missing.count())
        .with("least", Value.tape(missing.least(), formats))
        .with("from", Value.mark(missing.midFrom(), formats))
        .with("to", withUnit(missing.midTo()))
        .with("walls", missing.walls());
  }

  private Value proof(Shortage.Proof proof) {
    return Phrase.of("order-proof")
        .with("rounds", Phrase.counted("rounds", proof.rounds()))
        .with("fewer", proof.oneFewer());
  }

  private void leftOut() {
    Fit fit = new Fit(job);
    for (Log log : choice.unused()) {
      fit.refused(log)
          .filter(reason -> reason != Fit.Reason.SKIPPED)
          .ifPresent(
              reason -> {
                boolean isShort = reason == Fit.Reason.SHORT;
                ProblemCode code = isShort ? ProblemCode.TOO_SHORT : ProblemCode.TOO_THIN;
                problems.add(
                    Problem.of(code, log.origin())
                        .with("log", log.tag())
                        .with("why", reason.phrase())
                        .found(Value.tape(log.length(), formats))
                        .about(log.tag()));
              });
    }
  }

  private void course(Course course) {
    BuildRules rules = job.rules();
    Length spread = printed(course.spread());
    if (spread.isMoreThan(rules.length(Setting.SPREAD_MOST))) {
      problems.add(
          problem(ProblemCode.SPREAD_LARGE, mark(spread))
              .with("round", course.round())
              .with("spread", withUnit(spread)));
    }
    job.building().walls().stream()
        .map(wall -> course.notch().thinnest(wall.thickness()))
        .reduce(Length::least)
        .filter(neck -> neck.isLessThan(rules.length(Setting.NECK_LEAST)))
        .ifPresent(
            neck ->
                problems.add(
                    problem(ProblemCode.NECK_THIN, mark(neck))
                        .with("round", course.round())
                        .with("neck", withUnit(neck))));
    step(course);
  }

  private void step(Course course) {
    if (course.round() == 1) {
      return;
    }
    Length below = stack.courses().get(course.round() - 2).notch().size();
    Length step = printed(course.notch().size().minus(below).absolute());
    if (step.isMoreThan(job.rules().length(Setting.STEP_MOST))) {
      problems.add(
          problem(ProblemCode.STEP_LARGE, mark(step))
              .with("round", course.round())
              .with("step", withUnit(step)));
    }
  }

  private void joint(Joint joint) {
    Length least = printed(joint.least());
    Length most = printed(joint.most());
    if (least.isLessThan(job.rules().length(Setting.GAP_LEAST))) {
      say(joint, ProblemCode.GAP_SMALL, least);
    } else if (most.isMoreThan(job.rules().length(Setting.GAP_MOST))) {
      say(joint, ProblemCode.GAP_LARGE, most);
    } else if (!bows(joint)) {
      watch(joint);
    }
  }

  /**
   * Says of a gap that bowed logs do not have it at the middle, where they lie crown up: there it
   * is wider by what the upper log bows and narrower by what the lower one does. Returns whether it
   * did.
   */
  private boolean bows(Joint joint) {
    BuildRules rules = job.rules();
    Length over = bow(joint.upper());
    Length under = bow(joint.lower());
    Length gap = printed(joint.middle().plus(over).minus(under));
    boolean inside =
        !gap.isLessThan(rules.length(Setting.GAP_LEAST))
            && !gap.isMoreThan(rules.length(Setting.GAP_MOST));
    if (inside || over.equals(under)) {
      return false;
    }
    Length lacks = rules.length(Setting.GAP_LEAST).minus(gap);
    Length exceeds = gap.minus(rules.length(Setting.GAP_MOST));
    Problem problem =
        told(joint, ProblemCode.GAP_SWEEP, gap)
            .with("over", withUnit(printed(over)))
            .with("under", withUnit(printed(under)));
    problem = exceeds.isMoreThan(lacks) ? problem.remedyOf("gap-sweep-wide") : problem;
    boolean cut = job.built().isCut(joint.upper().place());
    swept.put(cut ? problem.as(Severity.INFO) : problem, lacks.most(exceeds));
    return true;
  }

  /**
   * Returns how much a trimmed log bows: what falls off takes its share of an even bow with it, as
   * the square of the length. Short logs beside openings count as straight.
   */
  private static Length bow(FilledPlace place) {
    Piece piece = place.first().piece();
    Length sweep = piece.log().traits().sweep();
    double part = piece.trimmed().inches() / piece.log().length().inches();
    return place.logs().size() > 1
        ? Length.ZERO
        : sweep.timesRatio(StrictMath.round(1_000_000 * part * part), 1_000_000);
  }

  /** Says of a gap that is inside its limits that it hardly is, while its log is not cut yet. */
  private void watch(Joint joint) {
    GapChance chances = new GapChance(job, stack);
    double chance = chances.canTell(joint) ? chances.outside(joint) : 0;
    if (chance > GapChance.WATCHED) {
      Length least = joint.least();
      Length most = joint.most();
      Length middle = least.plus(most).dividedBy(2);
      boolean large = middle.isMoreThan(job.rules().gap());
      problems.add(
          told(joint, ProblemCode.GAP_WATCH, printed(large ? most : least))
              .with("chance", Math.round(100 * chance)));
    }
  }

  private void say(Joint joint, ProblemCode code, Length gap) {
    Problem problem = told(joint, code, gap);
    problems.add(job.built().isCut(joint.upper().place()) ? standing(problem) : problem);
  }

  private Problem told(Joint joint, ProblemCode code, Length gap) {
    return Problem.of(code, joint.upper().first().piece().log().origin())
        .with("wall", joint.lower().wall().name())
        .with("round", joint.upper().round())
        .with("below", joint.lower().round())
        .with("gap", withUnit(gap))
        .with("upper", joint.upper().tags())
        .with("lower", joint.lower().tags())
        .found(mark(gap))
        .about(joint.upper().tags());
  }

  /** Says of a joint whose two logs are cut what can still be done: it is filled as it is. */
  private static Problem standing(Problem problem) {
    boolean small = problem.code() == ProblemCode.GAP_SMALL;
    return problem.as(Severity.INFO).remedyOf(small ? "gap-small-cut" : "gap-large-cut");
  }

  private void ends(PiecePlan piece) {
    if (!piece.halves().isEmpty()) {
      piece.halves().stream().filter(half -> half.fit().isFlagged()).forEach(this::end);
      return;
    }
    List<Phrase> ends = new ArrayList<>();
    NeckFit worst = piece.tipFit();
    if (worst.isFlagged()) {
      ends.add(end("end.tip", worst));
    }
    if (piece.buttFit().isFlagged()) {
      ends.add(end("end.butt", piece.buttFit()));
      boolean worse = piece.buttFit().grade().compareTo(worst.grade()) > 0;
      worst = worse ? piece.buttFit() : worst;
    }
    if (!ends.isEmpty()) {
      ends(piece.placed().first(), ends, worst);
    }
  }

  /** Says what the end of a short log beside an opening loses at its corner. */
  private void end(PiecePlan.Half half) {
    Phrase said = end(half.buttOut() ? "end.butt" : "end.tip", half.fit());
    ends(half.placed(), List.of(said), half.fit());
  }

  private Phrase end(String which, NeckFit fit) {
    return Phrase.of(which).with("said", EndPhrase.of(fit, formats));
  }

  private void ends(PlacedLog placed, List<Phrase> ends, NeckFit worst) {
    Log log = placed.piece().log();
    Problem thin =
        Problem.of(ProblemCode.TIP_THIN, log.origin())
            .with("round", placed.round())
            .with("wall", placed.wall().name())
            .with("log", log.tag())
            .with("ends", Value.list("list.semicolon", ends))
            .with("cure", cure(log))
            .found(mark(worst.neck().shoulder()))
            .about(log.tag());
    boolean stop = worst.grade() == NeckFit.Grade.STOP;
    problems.add(stop ? thin.as(Severity.ERROR).remedyOf("tip-thin-stop") : thin);
  }

  /**
   * Returns the spare with which neither end of its place is flagged, nor anything in its stead.
   */
  private Value cure(Log log) {
    return exchanges.substitutes().stream()
        .filter(each -> each.out().equals(log.tag()))
        .filter(each -> each.effect().endsHold() && each.effect().cleared() > 0)
        .findFirst()
        .<Value>map(each -> Phrase.of("end.cure").with("spare", each.in().log().tag()))
        .orElse(Value.NONE);
  }

  private static Problem problem(ProblemCode code, Value found) {
    return Problem.of(code, CellRef.ofFile("")).found(found);
  }

  private Length printed(Length length) {
    return length.roundedTo(job.rules().printStep());
  }

  private Value mark(Length length) {
    return Value.mark(length, formats);
  }

  private Value withUnit(Length length) {
    return Value.measure(length, formats);
  }
}
