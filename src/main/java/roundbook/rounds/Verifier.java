package roundbook.rounds;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * Checks a finished plan from first principles before anything is written.
 *
 * <p>It shares no code with the planner: lengths are taken as binary inches, diameters are
 * interpolated, sizes, marks, heights and gaps recomputed here from the formulas, and compared. A
 * fault found here is a fault of the program, never of the user's input.
 */
public final class Verifier {
  private final Job job;
  private final Checks checks = new Checks();

  private Verifier(Job job) {
    this.job = job;
  }

  /** What a check is about. */
  public enum Subject {
    /** Each log is of the tally, lies once, and only where it may lie. */
    LOGS,
    /** Every wall of every round has its log. */
    PLACES,
    /** Butts run round the building, the other way in the next round. */
    BUTTS,
    /** Logs are long enough, with wood to square off at both ends. */
    LENGTHS,
    /** Sizes and marks follow from the middles. */
    MARKS,
    /** Heights follow from the marks. */
    HEIGHTS,
    /** Gaps follow from heights and diameters. */
    GAPS,
    /** Tips hold their marks, where thin ones are refused. */
    TIPS,
    /** Pieces of stems lie apart on them, sound and as thick as told; none without stems. */
    STEMS,
    /** Pins, wishes and what is built are kept. */
    WISHES
  }

  /**
   * What was checked and what was found.
   *
   * @param counts how many checks were made about each subject; a subject without one is missing
   * @param faults every fault in words; empty when the plan holds
   */
  public record Verdict(Map<Subject, Integer> counts, List<String> faults) {
    /** Copies both. */
    public Verdict {
      counts = new TreeMap<>(counts);
      faults = List.copyOf(faults);
    }

    /** Returns how many checks were made in all. */
    public int checks() {
      return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
  }

  /**
   * Checks a plan.
   *
   * @param job what was asked
   * @param choice which log goes where
   * @param stack the heights and gaps that will be printed
   * @return how many checks were made, and every fault
   */
  public static Verdict verify(Job job, Choice choice, Stack stack) {
    Verifier verifier = new Verifier(job);
    verifier.eachLogOnce(choice);
    for (Course course : choice.courses()) {
      verifier.oneLogAWall(course);
      course.places().stream()
          .filter(place -> !place.isShared())
          .forEach(place -> verifier.longEnough(place.first()));
      if (!job.built().isCut(course.round())) {
        verifier.thinTips(course, choice.courses().size());
      }
    }
    new GroundCheck(job, verifier.checks).check(choice.courses());
    new PairCheck(job, stack, verifier.checks).pairs();
    new StemCheck(job, verifier.checks).pieces();
    verifier.asBuilt(choice);
    verifier.wishesKept(choice);
    verifier.pinsKept(choice);
    new StackCheck(job, choice.courses(), stack, verifier.checks).check();
    return verifier.checks.verdict();
  }

  private void eachLogOnce(Choice choice) {
    Set<String> seen = new HashSet<>();
    for (Course course : choice.courses()) {
      for (PlacedLog placed : course.logs()) {
        Log log = placed.piece().log();
        checks.that(
            Subject.LOGS, seen.add(log.tag()), "log " + log.tag() + " stands in two places");
        boolean skipped = log.traits().skip() && !isSettled(log);
        checks.that(Subject.LOGS, !skipped, "log " + log.tag() + " was to be skipped");
        checks.that(
            Subject.LOGS, job.logs().contains(log), "log " + log.tag() + " is not of this tally");
        if (!isSettled(log)) {
          keptForItsPlace(log, course.round(), choice.courses().size());
        }
      }
    }
    for (Log log : choice.unused()) {
      checks.that(
          Subject.LOGS, seen.add(log.tag()), "log " + log.tag() + " is both placed and unused");
    }
    checks.that(
        Subject.LOGS, seen.size() == job.logs().size(), "some logs are neither placed nor unused");
  }

  private void keptForItsPlace(Log log, int round, int rounds) {
    Log.Keep keep = log.traits().keep();
    checks.that(Subject.LOGS, keep != Log.Keep.SPARE, "spare " + log.tag() + " is placed");
    checks.that(
        Subject.LOGS,
        keep != Log.Keep.SILL || round == 1,
        "sill " + log.tag() + " lies in round " + round);
    checks.that(
        Subject.LOGS,
        keep != Log.Keep.PLATE || round == rounds,
        "plate " + log.tag() + " lies in round " + round);
  }

  private void oneLogAWall(Course course) {
    List<Wall> walls = course.places().stream().map(FilledPlace::wall).toList();
    checks.that(
        Subject.PLACES,
        walls.equals(job.building().walls()),
        name(course) + " has not one log on every wall");
    checks.that(
        Subject.PLACES,
        course.places().stream().allMatch(place -> place.round() == course.round()),
        name(course) + " holds a log of another round");
  }

  private void longEnough(PlacedLog placed) {
    Log log = placed.piece().log();
    double trimmed = placed.wall().outside().inches() + 2 * inches(Setting.OVERHANG);
    double least = inches(Setting.SQUARING_ALLOWANCE) - 1e-7;
    double offButt = placed.piece().cutOffButt().inches();
    double left = log.length().inches() - offButt - trimmed;
    if (isSettled(log)) {
      checks.that(Subject.LENGTHS, left > -1e-7, "log " + log.tag() + " is cut longer than it is");
      return;
    }
    checks.that(
        Subject.LENGTHS,
        Math.abs(placed.piece().trimmed().inches() - trimmed) < 1e-7,
        "log " + log.tag() + " is trimmed to another length than its wall's");
    checks.that(
        Subject.LENGTHS,
        offButt >= least && left >= least,
        "log " + log.tag() + " lacks the squaring allowance on wall " + placed.wall().name());
  }

  private void thinTips(Course course, int rounds) {
    if (!job.rules().text(Setting.TIP_RULE).equals("refuse")) {
      return;
    }
    course.places().stream()
        .filter(place -> !place.logs().stream().allMatch(log -> isSettled(log.piece().log())))
        .forEach(
            place ->
                checks.that(
                    Subject.TIPS,
                    !EndCheck.isRefused(job, course.notch(), place, rounds),
                    "log " + place.tags() + " has a thin tip, which the rules refuse"));
  }

  /** What is cut or measured stands where it stood, cut as it was. */
  private void asBuilt(Choice choice) {
    job.built()
        .held()
        .forEach(
            (place, held) -> {
              boolean kept =
                  choice.courses().stream()
                      .filter(course -> course.round() == place.round())
                      .flatMap(course -> course.places().stream())
                      .anyMatch(
                          filled ->
                              (filled.wall().name().equals(place.wall())
                                      || job.built().isMovable(place))
                                  && filled.held().equals(held));
              checks.that(
                  Subject.WISHES,
                  kept,
                  "log " + held.words() + " of round " + place.round() + " was moved");
            });
  }

  private boolean isSettled(Log log) {
    return job.built().placeOf(log.tag()).isPresent();
  }

  private void wishesKept(Choice choice) {
    for (Course course : choice.courses()) {
      for (PlacedLog placed : course.logs()) {
        if (isSettled(placed.piece().log())) {
          continue;
        }
        Log.Wish wish = placed.piece().log().place();
        String tag = placed.piece().log().tag();
        checks.that(
            Subject.WISHES,
            wish.wall().isEmpty() || wish.wall().equalsIgnoreCase(placed.wall().name()),
            "log " + tag + " stands on another wall than the tally asks");
        checks.that(
            Subject.WISHES,
            wish.round().isEmpty() || wish.round().getAsInt() == course.round(),
            "log " + tag + " stands in another round than the tally asks");
      }
    }
  }

  private void pinsKept(Choice choice) {
    job.pins().stream()
        .filter(pin -> !pin.log().isEmpty() && pin.round().isPresent() && !pin.wall().isEmpty())
        .filter(pin -> pin.round().getAsInt() <= choice.courses().size())
        .filter(pin -> job.built().held(pin.round().getAsInt(), pin.wall()).isEmpty())
        .filter(
            pin -> choice.problems().stream().noneMatch(said -> said.where().equals(pin.origin())))
        .forEach(
            pin -> {
              Course course = choice.courses().get(pin.round().getAsInt() - 1);
              checks.that(
                  Subject.WISHES,
                  course.logs().stream()
                      .anyMatch(
                          placed ->
                              placed.wall().name().equalsIgnoreCase(pin.wall())
                                  && placed.piece().log().tag().equals(pin.log())),
                  "the pin of log " + pin.log() + " is not kept");
            });
  }

  private double inches(Setting setting) {
    return job.rules().length(setting).inches();
  }

  private static String name(Course course) {
    return "round " + course.round();
  }
}
