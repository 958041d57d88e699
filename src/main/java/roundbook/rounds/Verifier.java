package roundbook.rounds;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
  private final List<String> faults = new ArrayList<>();

  private Verifier(Job job) {
    this.job = job;
  }

  /**
   * Checks a plan.
   *
   * @param job what was asked
   * @param choice which log goes where
   * @param stack the heights and gaps that will be printed
   * @return every fault in words; empty when the plan holds
   */
  public static List<String> faults(Job job, Choice choice, Stack stack) {
    Verifier verifier = new Verifier(job);
    verifier.eachLogOnce(choice);
    for (Course course : choice.courses()) {
      verifier.oneLogAWall(course);
      verifier.buttsRunRound(course);
      course.places().stream()
          .filter(place -> !place.isShared())
          .forEach(place -> verifier.longEnough(place.first()));
      if (!job.built().isCut(course.round())) {
        verifier.thinTips(course);
      }
    }
    verifier.faults.addAll(new PairCheck(job, stack).faults());
    verifier.asBuilt(choice);
    verifier.wishesKept(choice);
    verifier.pinsKept(choice);
    verifier.faults.addAll(new StackCheck(job, choice.courses(), stack).faults());
    return List.copyOf(verifier.faults);
  }

  private void eachLogOnce(Choice choice) {
    Set<String> seen = new HashSet<>();
    for (Course course : choice.courses()) {
      for (PlacedLog placed : course.logs()) {
        Log log = placed.piece().log();
        check(seen.add(log.tag()), "log " + log.tag() + " stands in two places");
        boolean skipped = log.traits().skip() && !isSettled(log);
        check(!skipped, "log " + log.tag() + " was to be skipped");
        check(job.logs().contains(log), "log " + log.tag() + " is not of this tally");
        if (!isSettled(log)) {
          keptForItsPlace(log, course.round(), choice.courses().size());
        }
      }
    }
    for (Log log : choice.unused()) {
      check(seen.add(log.tag()), "log " + log.tag() + " is both placed and unused");
    }
    check(seen.size() == job.logs().size(), "some logs are neither placed nor unused");
  }

  private void keptForItsPlace(Log log, int round, int rounds) {
    Log.Keep keep = log.traits().keep();
    check(keep != Log.Keep.SPARE, "spare " + log.tag() + " is placed");
    check(keep != Log.Keep.SILL || round == 1, "sill " + log.tag() + " lies in round " + round);
    check(
        keep != Log.Keep.PLATE || round == rounds,
        "plate " + log.tag() + " lies in round " + round);
  }

  private void oneLogAWall(Course course) {
    List<Wall> walls = course.places().stream().map(FilledPlace::wall).toList();
    check(walls.equals(job.building().walls()), name(course) + " has not one log on every wall");
    check(
        course.places().stream().allMatch(place -> place.round() == course.round()),
        name(course) + " holds a log of another round");
  }

  private void buttsRunRound(Course course) {
    boolean odd = course.round() % 2 == 1;
    boolean clockwise = odd != job.rules().text(Setting.BUTTS_RUN).equals("counterclockwise");
    check(
        course.places().stream()
            .allMatch(
                place ->
                    place.buttAtStart() == clockwise
                        && (place.isShared() || place.first().buttAtStart() == clockwise)),
        name(course) + " has a butt at the wrong end");
  }

  private void longEnough(PlacedLog placed) {
    Log log = placed.piece().log();
    double trimmed = placed.wall().outside().inches() + 2 * inches(Setting.OVERHANG);
    double least = inches(Setting.SQUARING_ALLOWANCE) - 1e-7;
    double offButt = placed.piece().cutOffButt().inches();
    double left = log.length().inches() - offButt - trimmed;
    if (isSettled(log)) {
      check(left > -1e-7, "log " + log.tag() + " is cut longer than it is");
      return;
    }
    check(
        Math.abs(placed.piece().trimmed().inches() - trimmed) < 1e-7,
        "log " + log.tag() + " is trimmed to another length than its wall's");
    check(
        offButt >= least && left >= least,
        "log " + log.tag() + " lacks the squaring allowance on wall " + placed.wall().name());
  }

  private void thinTips(Course course) {
    if (!job.rules().text(Setting.TIP_RULE).equals("refuse")) {
      return;
    }
    for (FilledPlace place : course.places()) {
      if (place.logs().stream().allMatch(log -> isSettled(log.piece().log()))) {
        continue;
      }
      double trimmed = place.wall().outside().inches() + 2 * inches(Setting.OVERHANG);
      double diameter = StackCheck.diameter(place, place.buttAtStart() ? 0 : trimmed, trimmed);
      double thickness = place.wall().thickness().inches();
      double depth = Math.max(course.notch().upper().inches(), bearingDepth(place, course));
      check(
          diameter + 1e-6 >= StrictMath.hypot(thickness, 2 * depth),
          "log " + place.tags() + " has a thin tip, which the rules refuse");
    }
  }

  private double bearingDepth(FilledPlace placed, Course course) {
    double crossing = placed.crossingAtTip(job.building()).thickness().inches();
    double drop = StackCheck.rounded(crossing / slopeRun(), inches(Setting.PRINT_STEP));
    return course.notch().lower().inches() + drop;
  }

  private double slopeRun() {
    return job.rules().number(Setting.SLOPE_RUN).doubleValue();
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
              check(kept, "log " + held.words() + " of round " + place.round() + " was moved");
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
        check(
            wish.wall().isEmpty() || wish.wall().equalsIgnoreCase(placed.wall().name()),
            "log " + tag + " stands on another wall than the tally asks");
        check(
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
              check(
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

  private void check(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
