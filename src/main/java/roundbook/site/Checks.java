package roundbook.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Measures;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.CellNames;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.units.Length;

/** Holds what was typed against itself and against what was cut before. */
final class Checks {
  private static final List<Setting> CUT_INTO_WOOD =
      List.of(
          Setting.LOG_THICKNESS,
          Setting.OVERHANG,
          Setting.SLOPE_RUN,
          Setting.PRINT_STEP,
          Setting.BUTTS_RUN,
          Setting.FIRST_BED);

  private final Job job;
  private final LogRows rows;
  private final AsBuilt recorded;
  private final Fields fields;

  Checks(Job job, LogRows rows, AsBuilt recorded, Fields fields) {
    this.job = job;
    this.rows = rows;
    this.recorded = recorded;
    this.fields = fields;
  }

  /** Returns how many rounds are cut: those ticked, from the lowest up without a hole. */
  int cut(List<Integer> ticks) {
    int cut = 0;
    for (int round : ticks) {
      if (round != cut + 1) {
        String message =
            "round " + round + " is ticked cut, but round " + (cut + 1) + " under it is not";
        contradict(CellNames.cut(round), message, "Tick the round below, or clear this box.");
      }
      cut = round;
    }
    for (int round = cut + 1; round <= recorded.rounds(); round++) {
      String message = "round " + round + " was cut in an earlier revision and is no longer ticked";
      contradict(CellNames.cut(round), message, "Tick it again: what is cut stays cut.");
    }
    return Math.max(cut, recorded.rounds());
  }

  void check(SiteReport report) {
    settings(report);
    places(report);
    report.typed().used().forEach((place, tag) -> longEnough(report, place, tag));
    report.typed().measures().forEach((place, typed) -> measures(report, place, typed));
    readings(report);
    unmeasured(report);
  }

  private void settings(SiteReport report) {
    BuildRules now = job.rules();
    BuildRules then = report.printed();
    if (!now.unit().equals(then.unit())) {
      String remedy = "Set it back; plan again from the tally for another unit.";
      contradict(Setting.UNITS.label(), "the unit of a crew workbook cannot change", remedy);
    }
    for (Setting setting : CUT_INTO_WOOD) {
      boolean same =
          Objects.equals(
              now.value(setting).map(BuildRules.Value::value),
              then.value(setting).map(BuildRules.Value::value));
      if (!same && report.typed().cut() > 0) {
        String message = setting.label() + " cannot change once a round is cut";
        contradict(setting.label(), message, "Set it back.");
      }
    }
    laidFirst(now, then);
    if (now.rounds().isPresent() && now.rounds().getAsInt() < report.typed().cut()) {
      String message = "fewer rounds are wanted than are cut";
      contradict(Setting.ROUNDS.label(), message, "Type more rounds, or none.");
    }
  }

  /** Which walls are laid first stands in the list of walls, from which the plan is made. */
  private void laidFirst(BuildRules now, BuildRules then) {
    if (!now.text(Setting.LAID_FIRST).equals(then.text(Setting.LAID_FIRST))) {
      String message = "the walls laid first cannot change in a crew workbook";
      String remedy = "Set it back; plan again from the tally for other walls.";
      contradict(Setting.LAID_FIRST.label(), message, remedy);
    }
  }

  /** No log in two places, no lost log in a wall. */
  private void places(SiteReport report) {
    Map<String, Place> seen = new HashMap<>();
    List<Place> settled =
        report.plan().keySet().stream().filter(place -> isSettled(report, place)).toList();
    settled.forEach(
        place -> report.stands(place).forEach((part, tag) -> once(report, seen, part, tag)));
    report
        .typed()
        .lost()
        .forEach(tag -> Optional.ofNullable(seen.get(tag)).ifPresent(at -> lost(report, tag, at)));
  }

  private void once(SiteReport report, Map<String, Place> seen, Place place, String tag) {
    Place other = seen.putIfAbsent(tag, place);
    if (other != null) {
      boolean swapped = report.typed().used().containsKey(place);
      Place typed = swapped ? place : other;
      Place first = swapped ? other : place;
      fields.contradict(
          CellNames.used(typed.round(), typed.named()),
          tag,
          "log " + tag + " stands in two places: here and in " + named(first),
          "Clear or correct one of them.");
    }
  }

  private void lost(SiteReport report, String tag, Place place) {
    boolean cut = place.round() <= report.typed().cut();
    boolean used = report.typed().used().containsKey(place);
    if (cut || used) {
      String message = "log " + tag + " is ticked lost, but it stands in " + named(place);
      fields.say(
          Problem.of(ProblemCode.CONTRADICTION, rows.lost().get(tag), "x", message)
              .about(tag)
              .remedy("Clear the tick, or type on that round's page which log was used instead."));
    }
  }

  /**
   * A place is settled when its round is cut or begun, when another log is used there, or when it
   * is measured.
   */
  static boolean isSettled(SiteReport report, Place place) {
    return place.round() <= report.typed().cut()
        || report.isBegun(place.round())
        || report.uses(place)
        || report.hewn(place);
  }

  private void longEnough(SiteReport report, Place place, String tag) {
    Length trimmed = trimmed(report, place);
    Log log = job.log(tag).orElseThrow();
    if (log.length().isLessThan(trimmed)) {
      fields.contradict(
          CellNames.used(place.round(), place.named()),
          tag,
          "log " + tag + " is too short for wall " + place.wall(),
          "Check the tag.");
    }
  }

  private Length trimmed(SiteReport report, Place place) {
    if (place.side() != AsBuilt.Side.WHOLE) {
      int at = place.side() == AsBuilt.Side.LEFT ? 0 : 1;
      return report.plan().get(place.whole()).logs().get(at).beside().orElseThrow().trimmed();
    }
    Wall wall = job.building().wall(place.wall()).orElseThrow();
    return job.building().trimmed(wall, job.rules().overhang());
  }

  private void measures(SiteReport report, Place place, Measures typed) {
    Length thickness = job.building().wall(place.wall()).orElseThrow().thickness();
    String wall = place.named();
    int round = place.round();
    Optional<Log> log = report.tag(place).flatMap(job::log);
    Length mid = log.map(Log::mid).orElse(thickness);
    diameter(CellNames.measured(round, wall), typed.mid(), mid, thickness);
    diameter(CellNames.measuredButt(round, wall), typed.butt(), mid, Length.ZERO);
    diameter(CellNames.measuredTip(round, wall), typed.tip(), mid, Length.ZERO);
    Stream.of(typed.lowerCut(), typed.upperCut())
        .flatMap(Optional::stream)
        .filter(mark -> !mark.isMoreThan(Length.ZERO) || mark.times(2).isMoreThan(mid))
        .forEach(
            mark ->
                fields.say(
                    ProblemCode.OUT_OF_RANGE,
                    typed.lowerCut().filter(mark::equals).isPresent()
                        ? CellNames.lowerCut(round, wall)
                        : CellNames.upperCut(round, wall),
                    "a mark of " + shown(mark) + " does not lie on the log"));
  }

  private void diameter(String name, Optional<Length> typed, Length mid, Length least) {
    if (typed.isEmpty()) {
      return;
    }
    Length differs = typed.get().minus(mid).absolute();
    if (!typed.get().isMoreThan(least) || differs.isMoreThan(far().times(3))) {
      String message = shown(typed.get()) + " cannot be the diameter of this log";
      fields.say(ProblemCode.OUT_OF_RANGE, name, message + ": its tally has " + shown(mid));
    } else if (differs.isMoreThan(far()) && name.matches("Measured_\\d.*")) {
      String message = shown(typed.get()) + " differs much from the tally's " + shown(mid);
      fields.say(ProblemCode.DOUBTFUL_VALUE, name, message);
    }
  }

  private void readings(SiteReport report) {
    for (var corner : report.typed().firstReadings().keySet()) {
      int begun = report.typed().cut() + 1;
      if (corner.round() > begun) {
        contradict(
            CellNames.firstReading(corner.round(), corner.name()),
            "the corner is read, but round " + begun + " under it is not ticked cut",
            "Tick the rounds below, or clear the reading.");
      }
    }
    report
        .typed()
        .readings()
        .keySet()
        .forEach(
            corner -> {
              if (corner.round() > report.typed().cut()) {
                contradict(
                    CellNames.reading(corner.round(), corner.name()),
                    "the corner is read, but round " + corner.round() + " is not ticked cut",
                    "Tick the round, or clear the reading.");
              }
            });
  }

  private void unmeasured(SiteReport report) {
    for (int round = recorded.rounds() + 1; round <= report.typed().cut(); round++) {
      List<String> walls = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        boolean all =
            report.parts(new Place(round, wall.name())).stream()
                .map(part -> report.typed().measures().getOrDefault(part, Measures.NONE))
                .allMatch(typed -> typed.mid().isPresent());
        if (!all) {
          walls.add(wall.name());
        }
      }
      if (!walls.isEmpty()) {
        String message =
            "round "
                + round
                + " is cut, but no middle was measured on "
                + String.join(" ", walls)
                + "; the tally's stands";
        fields.say(ProblemCode.NOT_MEASURED, CellNames.cut(round), message);
      }
    }
  }

  private Length far() {
    return job.rules().metric() ? Length.ofMillimetres(50) : Length.ofInches(2);
  }

  private String shown(Length length) {
    return roundbook.units.LengthFormat.forJob(job.rules().unit(), Length.ZERO).mark(length)
        + " "
        + job.rules().unit().symbol();
  }

  private static String named(Place place) {
    return "round " + place.round() + " on wall " + place.named();
  }

  private void contradict(String name, String message, String remedy) {
    fields.contradict(name, "", message, remedy);
  }
}
