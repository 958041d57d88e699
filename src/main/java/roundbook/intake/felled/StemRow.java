package roundbook.intake.felled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundbook.intake.felled.StemColumns.At;
import roundbook.intake.felled.StemColumns.Meaning;
import roundbook.intake.felled.StemsReader.Units;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** One row of a table of stems. */
final class StemRow {
  private static final Length DIAMETER_LEAST = Length.ofInchFraction(1, 2);
  private static final Length DIAMETER_MOST = Length.ofInches(60);

  private final Table table;
  private final StemColumns columns;
  private final Row row;
  private final BuildRules rules;
  private final Units units;
  private final Problems problems;
  private final String tag;
  private boolean sound = true;

  StemRow(
      Table table, StemColumns columns, Row row, BuildRules rules, Units units, Problems problems) {
    this.table = table;
    this.columns = columns;
    this.row = row;
    this.rules = rules;
    this.units = units;
    this.problems = problems;
    this.tag = text(Meaning.TAG);
  }

  /** Returns the stem; empty where the row holds none or something of it is wrong. */
  Optional<Stem> stem(List<At> at) {
    if (row.filled().isEmpty() || tag.isEmpty() && text(Meaning.LENGTH).isEmpty()) {
      return Optional.empty();
    }
    if (tag.isEmpty()) {
      fault("no-tag", columns.column(Meaning.TAG));
      return Optional.empty();
    }
    LengthUnit own = units.length().orElse(rules.unit());
    Optional<Length> length = measure(columns.column(Meaning.LENGTH), own, "length");
    List<Station> stations = stations(at);
    length.ifPresent(each -> check(each, stations, at));
    List<Stretch> bad = length.map(each -> bad(each, own, stations)).orElse(List.of());
    boolean over = text(Meaning.BARK).toLowerCase(Locale.ROOT).matches("over|ob|mit( rinde)?");
    Log.Traits traits = traits(over);
    if (!sound || length.isEmpty()) {
      return Optional.empty();
    }
    Length off = over ? rules.length(Setting.BARK_OFF) : Length.ZERO;
    return Optional.of(
        new Stem(
            tag,
            length.get(),
            new DiameterProfile(stations).thinnedBy(off),
            bad,
            traits,
            false,
            table.at(row)));
  }

  private List<Station> stations(List<At> at) {
    List<Station> stations = new ArrayList<>();
    LengthUnit unit = units.diameter().orElse(rules.unit());
    for (At each : at) {
      if (!row.cell(each.column()).isBlank()
          && !LengthReader.isNothing(row.cell(each.column()).text())) {
        measure(each.column(), unit, columns.head().cell(each.column()).text())
            .filter(diameter -> isDiameter(diameter, each))
            .ifPresent(
                diameter -> stations.add(new Station(each.fromButt().orElseThrow(), diameter)));
      }
    }
    return stations;
  }

  private boolean isDiameter(Length diameter, At at) {
    boolean fits = !diameter.isLessThan(DIAMETER_LEAST) && !diameter.isMoreThan(DIAMETER_MOST);
    return fits || fault("diameter", at.column());
  }

  /** Checks that the stations make a profile of a stem of that length. */
  private void check(Length length, List<Station> stations, List<At> at) {
    Length little = rules.metric() ? Length.ofMillimetres(12) : Length.ofInchFraction(1, 2);
    for (int i = 1; i < stations.size(); i++) {
      Station one = stations.get(i);
      if (one.diameter().minus(stations.get(i - 1).diameter()).isMoreThan(little)) {
        fault("thickens", columnOf(one, at));
      }
    }
    if (!stations.isEmpty()) {
      Station last = stations.get(stations.size() - 1);
      if (last.fromButt().isMoreThan(length)) {
        fault("length", columns.column(Meaning.LENGTH));
      }
    }
    Length widest = widest(stations);
    if (stations.size() < 3 || widest.isMoreThan(Length.ofInches(146))) {
      fault("few", columns.column(Meaning.TAG));
      return;
    }
    Length top = length.minus(stations.get(stations.size() - 1).fromButt());
    boolean butt = stations.get(1).fromButt().isMoreThan(Length.ofInches(18));
    if (sound && (butt || widest.isMoreThan(Length.ofInches(60)))) {
      warn("stations", widest);
    } else if (sound && top.isMoreThan(Length.ofInches(60))) {
      warn("top", top);
    }
  }

  private void warn(String variant, Length length) {
    LengthFormat formats = LengthFormat.forJob(rules.unit(), rules.printStep());
    problems.add(
        Problem.of(ProblemCode.STEM_STATIONS, variant, table.at(row, columns.column(Meaning.TAG)))
            .with("stem", tag)
            .with("length", Value.measure(length, formats))
            .found(tag)
            .about(tag));
  }

  private static Length widest(List<Station> stations) {
    Length widest = Length.ZERO;
    for (int i = 1; i < stations.size(); i++) {
      widest = widest.most(stations.get(i).fromButt().minus(stations.get(i - 1).fromButt()));
    }
    return widest;
  }

  private static int columnOf(Station station, List<At> at) {
    return at.stream()
        .filter(each -> each.fromButt().filter(station.fromButt()::equals).isPresent())
        .mapToInt(At::column)
        .findFirst()
        .orElse(0);
  }

  /** Returns what no piece may have a part of: as told, and what was not measured. */
  private List<Stretch> bad(Length length, LengthUnit unit, List<Station> stations) {
    List<Stretch> bad = new ArrayList<>();
    for (StemColumns.Pair pair : columns.bad()) {
      if (!row.cell(pair.from()).isBlank() || !row.cell(pair.to()).isBlank()) {
        Optional<Length> from = measure(pair.from(), unit, "bad from");
        Optional<Length> to = measure(pair.to(), unit, "bad to");
        if (from.isPresent() && to.isPresent() && isWithin(from.get(), to.get(), length, pair)) {
          bad.add(new Stretch(from.get(), to.get()));
        }
      }
    }
    Length from = clear(Meaning.CLEAR_FROM, unit, length).orElse(Length.ZERO);
    Length to = clear(Meaning.CLEAR_TO, unit, length).orElse(length);
    if (stations.size() > 1) {
      from = from.most(stations.get(0).fromButt());
      to = to.least(stations.get(stations.size() - 1).fromButt());
    }
    bad.add(new Stretch(Length.ZERO, from.most(rules.length(Setting.BUTT_OFF_LEAST))));
    bad.add(new Stretch(to, length));
    bad.removeIf(each -> !each.to().isMoreThan(each.from()));
    bad.sort(Comparator.comparing(Stretch::from));
    return bad;
  }

  private boolean isWithin(Length from, Length to, Length length, StemColumns.Pair pair) {
    boolean within = !to.isMoreThan(length) && to.isMoreThan(from);
    return within || fault("stretch", to.isMoreThan(from) ? pair.to() : pair.from());
  }

  private Optional<Length> clear(Meaning meaning, LengthUnit unit, Length length) {
    int column = columns.column(meaning);
    if (column == 0 || row.cell(column).isBlank()) {
      return Optional.empty();
    }
    return measure(column, unit, meaning.name().toLowerCase(Locale.ROOT).replace('_', ' '))
        .filter(each -> !each.isMoreThan(length) || fault("stretch", column));
  }

  private Log.Traits traits(boolean over) {
    int column = columns.column(Meaning.SWEEP);
    Optional<Length> sweep =
        column == 0 || row.cell(column).isBlank()
            ? Optional.empty()
            : measure(column, units.diameter().orElse(rules.unit()), "sweep");
    String keep = text(Meaning.KEEP).toLowerCase(Locale.ROOT);
    Log.Keep kept =
        Arrays.stream(Log.Keep.values())
            .filter(
                each -> !keep.isEmpty() && keep.startsWith(each.name().toLowerCase(Locale.ROOT)))
            .findFirst()
            .orElse(Log.Keep.ANY);
    if (!keep.isEmpty() && kept == Log.Keep.ANY && !keep.startsWith("any")) {
      fault("keep", columns.column(Meaning.KEEP));
    }
    return new Log.Traits(
        text(Meaning.SPECIES),
        over ? Log.Bark.OVER : text(Meaning.BARK).isEmpty() ? Log.Bark.UNSTATED : Log.Bark.OFF,
        sweep.orElse(Length.ZERO),
        kept,
        !text(Meaning.SKIP).isEmpty(),
        text(Meaning.REMARKS));
  }

  private Optional<Length> measure(int column, LengthUnit unit, String heading) {
    Optional<Length> length = table.length(row, column, unit).filter(each -> !each.isNegative());
    if (length.isEmpty()) {
      problems.add(
          Problem.of(ProblemCode.BAD_NUMBER, "length", table.at(row, column))
              .with("heading", heading)
              .with("text", row.cell(column).text())
              .found(row.cell(column).text())
              .about(tag));
      sound = false;
      return Optional.empty();
    }
    return length;
  }

  /** Says what is wrong with a cell, by which the stem is left out. */
  private boolean fault(String variant, int column) {
    String found = row.cell(column).text();
    problems.add(
        Problem.of(ProblemCode.BAD_STEM, variant, table.at(row, column))
            .with("stem", tag)
            .with("text", found)
            .found(found)
            .about(tag));
    sound = false;
    return false;
  }

  private String text(Meaning meaning) {
    int column = columns.column(meaning);
    return column == 0 ? "" : row.cell(column).text();
  }
}
