package roundbook.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.BuildRules;
import roundbook.job.GapSpot;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.LogColumn;
import roundbook.page.TypedBox;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Holds what was typed against itself and against what was cut before. */
final class Checks {
  private static final List<Setting> CUT_INTO_WOOD =
      List.of(
          Setting.LOG_THICKNESS,
          Setting.OVERHANG,
          Setting.SLOPE_RUN,
          Setting.PRINT_STEP,
          Setting.BUTTS_RUN,
          Setting.FIRST_BED,
          Setting.REENTRANT);

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

  void check(SiteReport report) {
    settings(report);
    places(report);
    report.typed().used().forEach((place, tag) -> longEnough(report, place, tag));
    report.typed().measures().forEach((place, typed) -> measures(report, place, typed));
    report.typed().yard().forEach(this::yard);
    readings(report);
    report.typed().gaps().keySet().forEach(spot -> gap(report, spot));
    unmeasured(report);
  }

  private void settings(SiteReport report) {
    BuildRules now = job.rules();
    BuildRules then = report.printed();
    if (!now.unit().equals(then.unit())) {
      contradict("unit", Setting.UNITS, "set-back-unit");
    }
    for (Setting setting : CUT_INTO_WOOD) {
      boolean same =
          Objects.equals(
              now.value(setting).map(BuildRules.Value::value),
              then.value(setting).map(BuildRules.Value::value));
      if (!same && report.typed().ticks().begun() > 0) {
        fields.say(
            fields
                .contradiction("setting", setting.label())
                .with("setting", setting.label())
                .remedyOf("set-back"));
      }
    }
    laidFirst(now, then);
    if (now.rounds().isPresent() && now.rounds().getAsInt() < report.typed().ticks().begun()) {
      contradict("rounds", Setting.ROUNDS, "more-rounds");
    }
  }

  /** Which walls are laid first stands in the list of walls, from which the plan is made. */
  private void laidFirst(BuildRules now, BuildRules then) {
    if (!now.text(Setting.LAID_FIRST).equals(then.text(Setting.LAID_FIRST))) {
      contradict("laid-first", Setting.LAID_FIRST, "set-back-walls");
    }
  }

  /** No log in two places, no lost log in a wall. */
  private void places(SiteReport report) {
    Map<String, Place> seen = new HashMap<>();
    List<Place> settled = report.plan().keySet().stream().filter(report::isSettled).toList();
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
      fields.say(
          fields
              .contradiction("two-places", TypedBox.USED.named(typed.round(), typed.named()))
              .with("log", tag)
              .with("place", named(first))
              .about(tag)
              .remedyOf("clear-one"));
    }
  }

  private void lost(SiteReport report, String tag, Place place) {
    boolean cut = report.typed().ticks().isCut(place);
    boolean used = report.typed().used().containsKey(place);
    if (cut || used) {
      fields.say(
          Problem.of(ProblemCode.CONTRADICTION, "lost", rows.lost().get(tag))
              .with("log", tag)
              .with("place", named(place))
              .found("x")
              .about(tag)
              .remedyOf("clear-tick"));
    }
  }

  private void longEnough(SiteReport report, Place place, String tag) {
    Length trimmed = trimmed(report, place);
    Log log = job.log(tag).orElseThrow();
    if (log.length().isLessThan(trimmed)) {
      fields.say(
          fields
              .contradiction("short", TypedBox.USED.named(place.round(), place.named()))
              .with("log", tag)
              .with("wall", place.wall())
              .about(tag)
              .remedyOf("check-tag"));
    }
  }

  private Length trimmed(SiteReport report, Place place) {
    if (place.side() != PlacePart.WHOLE) {
      int at = place.side() == PlacePart.LEFT ? 0 : 1;
      return report.plan().get(place.whole()).logs().get(at).beside().orElseThrow().trimmed();
    }
    Wall wall = job.building().wall(place.wall()).orElseThrow();
    return job.building().trimmed(wall, job.rules().overhang());
  }

  /** Holds what was measured of a log in the yard against its tally. */
  private void yard(String tag, Measures typed) {
    Length mid = job.log(tag).orElseThrow().mid();
    Length middle = typed.mid().orElse(mid);
    typed.mid().ifPresent(each -> diameter(tag, LogColumn.HEWN_MIDS, each, mid));
    typed.butt().ifPresent(each -> diameter(tag, LogColumn.HEWN_BUTTS, each, mid));
    typed.tip().ifPresent(each -> diameter(tag, LogColumn.HEWN_TIPS, each, mid));
    typed
        .butt()
        .filter(middle::isMoreThan)
        .ifPresent(butt -> yard("butt-thin", tag, LogColumn.HEWN_BUTTS, butt, middle));
    typed
        .tip()
        .filter(tip -> tip.isMoreThan(middle))
        .ifPresent(tip -> yard("tip-thick", tag, LogColumn.HEWN_TIPS, tip, middle));
  }

  private void diameter(String tag, LogColumn column, Length typed, Length mid) {
    CellRef where = rows.yardAt(tag, column);
    grade(typed, mid, Length.ZERO, column == LogColumn.HEWN_MIDS)
        .ifPresent(code -> fields.say(told(Problem.of(code, "diameter", where), typed, mid)));
  }

  private void yard(String variant, String tag, LogColumn column, Length typed, Length mid) {
    Problem problem = Problem.of(ProblemCode.DOUBTFUL_VALUE, variant, rows.yardAt(tag, column));
    fields.say(told(problem, typed, mid).remedyOf("which-end"));
  }

  private void measures(SiteReport report, Place place, Measures typed) {
    Length thickness = job.building().wall(place.wall()).orElseThrow().thickness();
    Optional<Log> log = report.tag(place).flatMap(job::log);
    Length mid = log.map(Log::mid).orElse(thickness);
    diameter(TypedBox.MEASURED, place, typed.mid(), mid, thickness);
    diameter(TypedBox.MEASURED_BUTT, place, typed.butt(), mid, Length.ZERO);
    diameter(TypedBox.MEASURED_TIP, place, typed.tip(), mid, Length.ZERO);
    Length middle = typed.mid().orElse(mid);
    typed
        .butt()
        .filter(middle::isMoreThan)
        .ifPresent(butt -> say("butt-thin", TypedBox.MEASURED_BUTT, place, butt, middle));
    typed
        .tip()
        .filter(tip -> tip.isMoreThan(middle))
        .ifPresent(tip -> say("tip-thick", TypedBox.MEASURED_TIP, place, tip, middle));
    Stream.of(typed.lowerCut(), typed.upperCut())
        .flatMap(Optional::stream)
        .filter(mark -> !mark.isMoreThan(Length.ZERO) || mark.times(2).isMoreThan(mid))
        .forEach(
            mark ->
                fields.say(
                    fields
                        .problem(
                            ProblemCode.OUT_OF_RANGE,
                            "mark",
                            (typed.lowerCut().filter(mark::equals).isPresent()
                                    ? TypedBox.LOWER_CUT
                                    : TypedBox.UPPER_CUT)
                                .named(place.round(), place.named()))
                        .with("mark", shown(mark))));
  }

  private void diameter(
      TypedBox box, Place place, Optional<Length> typed, Length mid, Length least) {
    if (typed.isEmpty()) {
      return;
    }
    String name = box.named(place.round(), place.named());
    grade(typed.get(), mid, least, box == TypedBox.MEASURED)
        .ifPresent(
            code -> fields.say(told(fields.problem(code, "diameter", name), typed.get(), mid)));
  }

  /** Returns how a diameter is doubted: one that is far off, and a middle that differs much. */
  private Optional<ProblemCode> grade(Length typed, Length mid, Length least, boolean middle) {
    Length differs = typed.minus(mid).absolute();
    if (!typed.isMoreThan(least) || differs.isMoreThan(far().times(3))) {
      return Optional.of(ProblemCode.OUT_OF_RANGE);
    }
    return middle && differs.isMoreThan(far())
        ? Optional.of(ProblemCode.DOUBTFUL_VALUE)
        : Optional.empty();
  }

  /** Says that an end does not taper from butt to tip. */
  private void say(String variant, TypedBox box, Place place, Length typed, Length mid) {
    String name = box.named(place.round(), place.named());
    Problem problem = fields.problem(ProblemCode.DOUBTFUL_VALUE, variant, name);
    fields.say(told(problem, typed, mid).remedyOf("which-end"));
  }

  /** Tells of a diameter beside the middle of the log as it was tallied or measured. */
  private Problem told(Problem problem, Length typed, Length mid) {
    return problem.with("typed", shown(typed)).with("mid", shown(mid));
  }

  private void readings(SiteReport report) {
    for (var corner : report.typed().firstReadings().keySet()) {
      int begun = report.typed().cut() + 1;
      if (corner.round() > begun) {
        fields.say(
            fields
                .contradiction(
                    "first-reading", TypedBox.FIRST_READING.named(corner.round(), corner.name()))
                .with("round", begun)
                .remedyOf("tick-rounds-below"));
      }
    }
    report
        .typed()
        .readings()
        .keySet()
        .forEach(
            corner -> {
              if (corner.round() > report.typed().cut()) {
                fields.say(
                    fields
                        .contradiction(
                            "reading", TypedBox.READING.named(corner.round(), corner.name()))
                        .with("round", corner.round())
                        .remedyOf("tick-round"));
              }
            });
  }

  /** A gap is there when both logs lie. */
  private void gap(SiteReport report, GapSpot spot) {
    if (!report.typed().ticks().isCut(new Place(spot.below() + 1, spot.wall()))) {
      fields.say(
          fields
              .contradiction("gap", TypedBox.GAP.named(spot.below(), spot.named()))
              .with("round", spot.below() + 1)
              .remedyOf("tick-gap"));
    }
  }

  private void unmeasured(SiteReport report) {
    for (int round = recorded.rounds() + 1; round <= report.typed().cut(); round++) {
      List<String> walls = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        boolean all =
            report.parts(new Place(round, wall.name())).stream()
                .allMatch(part -> isMeasured(report, part));
        if (!all) {
          walls.add(wall.name());
        }
      }
      if (!walls.isEmpty()) {
        fields.say(
            fields
                .problem(ProblemCode.NOT_MEASURED, "", TypedBox.CUT.named(round))
                .with("round", round)
                .with("walls", String.join(" ", walls)));
      }
    }
  }

  /** Returns whether the middle of what lies in a place was measured, there or in the yard. */
  private static boolean isMeasured(SiteReport report, Place part) {
    boolean there = report.typed().measures().getOrDefault(part, Measures.NONE).mid().isPresent();
    return there
        || report
            .tag(part)
            .map(tag -> report.typed().yard().get(tag))
            .flatMap(Measures::mid)
            .isPresent();
  }

  private Length far() {
    return job.rules().metric() ? Length.ofMillimetres(50) : Length.ofInches(2);
  }

  private Value shown(Length length) {
    return Value.measure(length, LengthFormat.forJob(job.rules().unit(), Length.ZERO));
  }

  private static Phrase named(Place place) {
    return Phrase.of("place.round-wall").with("round", place.round()).with("wall", place.named());
  }

  private void contradict(String variant, Setting setting, String remedy) {
    fields.say(fields.contradiction(variant, setting.label()).remedyOf(remedy));
  }
}
