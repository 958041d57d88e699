package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.rounds.Shortage;
import roundbook.stack.Course;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/** Says aloud every doubt of a plan: gaps, spreads, steps, thin ends, missing logs. */
final class Doubts {
  /** A wall of so many hewn logs is higher than any that is built (common practice). */
  private static final Length HIGHEST = Length.of(40, LengthUnit.FOOT);

  private final Job job;
  private final Choice choice;
  private final Stack stack;
  private final List<PiecePlan> pieces;
  private final Takeoff takeoff;
  private final LengthFormat formats;
  private final List<Problem> problems = new ArrayList<>();

  Doubts(Job job, Choice choice, Stack stack, List<PiecePlan> pieces, Takeoff takeoff) {
    this.job = job;
    this.choice = choice;
    this.stack = stack;
    this.pieces = pieces;
    this.takeoff = takeoff;
    this.formats = LengthFormat.forJob(job.rules().unit(), job.rules().printStep());
  }

  List<Problem> all() {
    problems.addAll(choice.problems());
    choice.shortage().ifPresent(this::shortage);
    height();
    leftOut();
    stack.courses().stream().filter(course -> !isCut(course.round())).forEach(this::course);
    stack.joints().forEach(this::joint);
    List<PiecePlan> uncut =
        pieces.stream().filter(piece -> !isCut(piece.placed().round())).toList();
    uncut.forEach(this::ends);
    problems.addAll(new OpeningDoubts(formats).longLogs(uncut, new Fit(job)));
    if (!pieces.isEmpty()) {
      problems.addAll(new OpeningDoubts(formats).of(job.openings(), takeoff.openings()));
      problems.addAll(new OpeningDoubts(formats).kept(pieces));
    }
    return List.copyOf(problems);
  }

  /** Returns whether a round is cut: no exchange of logs can mend it any more. */
  private boolean isCut(int round) {
    return job.built().isCut(round);
  }

  private void shortage(Shortage shortage) {
    String message =
        String.format(
            Locale.ROOT,
            "%s wanted, the logs allow %d; missing: %s%s",
            rounds(shortage.wanted()),
            shortage.built(),
            shortage.missing().stream().map(this::missing).collect(Collectors.joining("; ")),
            shortage.proof().map(this::proof).orElse(""));
    problems.add(Problem.of(ProblemCode.TOO_FEW_LOGS, CellRef.ofFile(""), "", message));
  }

  /** Says that the walls, as high as was asked, would be higher than any are built. */
  private void height() {
    int built = stack.courses().size();
    int wanted = choice.shortage().map(Shortage::wanted).orElse(built);
    Length highest =
        takeoff.top().stream()
            .flatMap(top -> top.walls().stream())
            .map(wall -> wall.centre().timesRatio(wanted, built))
            .reduce(Length.ZERO, Length::most);
    if (highest.isMoreThan(HIGHEST)) {
      String height = formats.feetInches(highest.roundedTo(printedHeight()));
      String message =
          wanted
              + " rounds come to some "
              + height
              + "; hewn log walls higher than 40 ft (12 m) are not built";
      say(ProblemCode.WALL_HIGH, height, message);
    }
  }

  private Length printedHeight() {
    return job.rules().metric() ? Length.ofMillimetres(100) : Length.ofInches(12);
  }

  private String missing(Shortage.Missing missing) {
    return String.format(
        Locale.ROOT,
        "%d %s of %s or longer, middle %s to %s, for %s",
        missing.count(),
        missing.count() == 1 ? "log" : "logs",
        formats.feetInches(missing.least()),
        formats.mark(missing.midFrom()),
        withUnit(missing.midTo()),
        missing.walls());
  }

  private static String rounds(int count) {
    return count + (count == 1 ? " round" : " rounds");
  }

  private String proof(Shortage.Proof proof) {
    return String.format(
        Locale.ROOT,
        " (planned again with them: %s; with any one fewer: %d)",
        rounds(proof.rounds()),
        proof.oneFewer());
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
                String found = formats.feetInches(log.length());
                String message = "log " + log.tag() + " is left out: " + reason.words();
                problems.add(Problem.of(code, log.origin(), found, message).about(log.tag()));
              });
    }
  }

  private void course(Course course) {
    BuildRules rules = job.rules();
    String round = "round " + course.round();
    Length spread = printed(course.spread());
    if (spread.isMoreThan(rules.length(Setting.SPREAD_MOST))) {
      say(
          ProblemCode.SPREAD_LARGE,
          formats.mark(spread),
          round + ": middle diameters differ by " + withUnit(spread));
    }
    job.building().walls().stream()
        .map(wall -> course.notch().thinnest(wall.thickness()))
        .reduce(Length::least)
        .filter(neck -> neck.isLessThan(rules.length(Setting.NECK_LEAST)))
        .ifPresent(
            neck ->
                say(
                    ProblemCode.NECK_THIN,
                    formats.mark(neck),
                    round + ": the neck is " + withUnit(neck) + " where it is thinnest"));
    step(course, round);
  }

  private void step(Course course, String round) {
    if (course.round() == 1) {
      return;
    }
    Length below = stack.courses().get(course.round() - 2).notch().size();
    Length step = printed(course.notch().size().minus(below).absolute());
    if (step.isMoreThan(job.rules().length(Setting.STEP_MOST))) {
      say(
          ProblemCode.STEP_LARGE,
          formats.mark(step),
          round + " differs from the round below by " + withUnit(step));
    }
  }

  private void joint(Joint joint) {
    Length least = printed(joint.least());
    Length most = printed(joint.most());
    if (least.isLessThan(job.rules().length(Setting.GAP_LEAST))) {
      say(joint, ProblemCode.GAP_SMALL, least, "least gap ");
    } else if (most.isMoreThan(job.rules().length(Setting.GAP_MOST))) {
      say(joint, ProblemCode.GAP_LARGE, most, "largest gap ");
    }
  }

  private void say(Joint joint, ProblemCode code, Length gap, String which) {
    String message =
        String.format(
            Locale.ROOT,
            "wall %s, round %d on round %d: %s%s (log %s on log %s)",
            joint.lower().wall().name(),
            joint.upper().round(),
            joint.lower().round(),
            which,
            withUnit(gap),
            joint.upper().tags(),
            joint.lower().tags());
    CellRef where = joint.upper().first().piece().log().origin();
    Problem problem =
        Problem.of(code, where, formats.mark(gap), message).about(joint.upper().tags());
    problems.add(isCut(joint.upper().round()) ? standing(problem) : problem);
  }

  /** Says of a joint whose two logs are cut what can still be done: it is filled as it is. */
  private static Problem standing(Problem problem) {
    boolean small = problem.code() == ProblemCode.GAP_SMALL;
    String remedy =
        small
            ? "Both logs are cut: flatten the crown there."
            : "Both logs are cut: plan for more filling there.";
    return problem.as(Severity.INFO).remedy(remedy);
  }

  private void ends(PiecePlan piece) {
    if (!piece.halves().isEmpty()) {
      piece.halves().stream().filter(half -> half.fit().weak()).forEach(this::end);
      return;
    }
    boolean butt = piece.buttFit().weak();
    boolean tip = piece.tipFit().weak();
    if (!butt && !tip) {
      return;
    }
    List<String> ends = new ArrayList<>();
    if (tip) {
      ends.add("tip end " + piece.tipFit().verdict());
    }
    if (butt) {
      ends.add("butt end " + piece.buttFit().verdict());
    }
    Length diameter = (tip ? piece.tipFit() : piece.buttFit()).diameter();
    ends(piece.placed().first(), String.join("; ", ends), diameter);
  }

  /** Says that a short log beside an opening is too thin at its corner. */
  private void end(PiecePlan.Half half) {
    String said = (half.buttOut() ? "butt end " : "tip end ") + half.fit().verdict();
    ends(half.placed(), said, half.fit().diameter());
  }

  private void ends(PlacedLog placed, String said, Length diameter) {
    Log log = placed.piece().log();
    String message =
        String.format(
            Locale.ROOT,
            "round %d wall %s, log %s: %s",
            placed.round(),
            placed.wall().name(),
            log.tag(),
            said);
    problems.add(
        Problem.of(ProblemCode.TIP_THIN, log.origin(), formats.mark(diameter), message)
            .about(log.tag()));
  }

  private void say(ProblemCode code, String found, String message) {
    problems.add(Problem.of(code, CellRef.ofFile(""), found, message));
  }

  private Length printed(Length length) {
    return length.roundedTo(job.rules().printStep());
  }

  private String withUnit(Length length) {
    return formats.mark(length) + " " + job.rules().unit().symbol();
  }
}
