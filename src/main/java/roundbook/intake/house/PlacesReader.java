package roundbook.intake.house;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.Pin;
import roundbook.job.Saddle;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthReader;

/** Reads the Pins and Openings sheets, and checks them against walls and logs. */
public final class PlacesReader {
  private static final Pattern TIMES = Pattern.compile("\\s*[x×*]\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern ROUND = Pattern.compile("[1-9]\\d{0,2}");

  private final BuildRules rules;
  private final Building building;
  private final Problems problems;

  /** Takes the house that pins and openings are placed in. */
  public PlacesReader(BuildRules rules, Building building, Problems problems) {
    this.rules = rules;
    this.building = building;
    this.problems = problems;
  }

  /** Reads the pins: round, wall, log, butt at, why. */
  public List<Pin> pins(Table table, Predicate<String> tags) {
    SheetColumns columns = SheetColumns.of(table);
    List<Pin> pins = new ArrayList<>();
    Map<String, Integer> places = new HashMap<>();
    for (Row row : columns.below()) {
      if (isSound(columns, row, tags) && isFirst(columns, row, places)) {
        pins.add(pin(columns, row));
      }
    }
    return pins;
  }

  private static Pin pin(SheetColumns columns, Row row) {
    String round = whole(columns.text(row, "round"));
    return new Pin(
        round.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(round)),
        columns.text(row, "wall").toUpperCase(Locale.ROOT),
        columns.text(row, "log"),
        columns.text(row, "butt at").toUpperCase(Locale.ROOT),
        columns.text(row, "why"),
        columns.table().at(row));
  }

  private boolean isSound(SheetColumns columns, Row row, Predicate<String> tags) {
    String round = whole(columns.text(row, "round"));
    String wall = columns.text(row, "wall").toUpperCase(Locale.ROOT);
    String log = columns.text(row, "log");
    String corner = columns.text(row, "butt at").toUpperCase(Locale.ROOT);
    if (!round.isEmpty() && !ROUND.matcher(round).matches()) {
      return refuse(columns, row, "round", pin("no-round").with("text", round));
    }
    if (!wall.isEmpty() && building.wall(wall).isEmpty()) {
      return refuse(columns, row, "wall", pin("no-wall").with("wall", wall));
    }
    if (!log.isEmpty() && !tags.test(log)) {
      return refuse(columns, row, "log", pin("no-log").with("log", log));
    }
    if (!corner.isEmpty() && !building.corners().contains(corner)) {
      return refuse(columns, row, "butt at", noCorner(wall, corner));
    }
    Optional<Phrase> why = pin(columns, row).againstButt(building, rules);
    return why.isEmpty() || refuse(columns, row, "butt at", why.get());
  }

  /** Names the corners that there are: those of the wall that is pinned, or all. */
  private Phrase noCorner(String wall, String corner) {
    String names =
        building
            .wall(wall)
            .map(each -> List.of(building.startCorner(each), building.endCorner(each)))
            .orElseGet(building::corners)
            .stream()
            .sorted()
            .collect(Collectors.joining(" "));
    return pin("no-corner").with("corner", corner).with("corners", names);
  }

  /** Refuses a second pin of the same place, and a second place for the same log. */
  private boolean isFirst(SheetColumns columns, Row row, Map<String, Integer> places) {
    String round = whole(columns.text(row, "round"));
    String wall = columns.text(row, "wall").toUpperCase(Locale.ROOT);
    String log = columns.text(row, "log");
    boolean place = !round.isEmpty() && !wall.isEmpty();
    Integer other = place ? places.putIfAbsent("place " + round + wall, row.number()) : null;
    if (other != null) {
      return refuse(columns, row, "round", pin("same-place").with("row", other));
    }
    Integer same = log.isEmpty() ? null : places.putIfAbsent("log " + log, row.number());
    return same == null || refuse(columns, row, "log", pin("same-log").with("row", same));
  }

  private static Phrase pin(String variant) {
    return Phrase.of(ProblemCode.BAD_PIN.id() + "." + variant);
  }

  private boolean refuse(SheetColumns columns, Row row, String heading, Phrase said) {
    int column = columns.column(heading);
    String found = row.cell(column).text();
    problems.add(
        Problem.of(ProblemCode.BAD_PIN, columns.table().at(row, column), said).found(found));
    return false;
  }

  private static String whole(String text) {
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** Reads the openings: name, wall, from left corner, width, sill height, head height. */
  public List<Opening> openings(Table table) {
    SheetColumns columns = SheetColumns.of(table);
    List<Opening> openings = new ArrayList<>();
    for (Row row : columns.below()) {
      opening(columns, row)
          .filter(each -> isClear(each, openings))
          .filter(each -> isClearOfPartitions(each) && isInside(each))
          .ifPresent(openings::add);
    }
    return openings;
  }

  /** An opening keeps the least piece from where a partition crosses its wall. */
  private boolean isClearOfPartitions(Opening opening) {
    Optional<Saddle> saddle = opening.againstSaddle(building, rules);
    LengthFormat format = LengthFormat.forJob(rules.unit(), rules.printStep());
    saddle.ifPresent(
        each ->
            problems.add(
                Problem.of(
                        ProblemCode.BAD_OPENING,
                        each.inward() ? "wing-side" : "saddle",
                        opening.origin())
                    .with("opening", opening.name())
                    .with("wall", opening.wall())
                    .with("partition", each.partition().name())
                    .with("from", Value.tape(each.from(), format))
                    .with("to", Value.tape(each.to(), format))
                    .with("least", Value.tape(rules.length(Setting.PIECE_LEAST), format))));
    return saddle.isEmpty();
  }

  /** An opening lies between the walls that cross its own. */
  private boolean isInside(Opening opening) {
    if (opening.fits(building, rules)) {
      return true;
    }
    LengthFormat format = LengthFormat.forJob(rules.unit(), rules.printStep());
    problems.add(
        Problem.of(ProblemCode.OPENING_OUTSIDE, opening.origin())
            .with("opening", opening.name())
            .with("wall", opening.wall())
            .found(Value.mark(opening.toldLeft(building), format)));
    return false;
  }

  /** Two openings that share room would each be given pieces of the same log. */
  private boolean isClear(Opening opening, List<Opening> before) {
    Optional<Opening> other = before.stream().filter(each -> each.overlaps(opening)).findFirst();
    other.ifPresent(
        each ->
            problems.add(
                Problem.of(ProblemCode.BAD_OPENING, "overlaps", opening.origin())
                    .with("opening", opening.name())
                    .with("wall", opening.wall())
                    .with("other", each.name())
                    .with("row", each.origin().row())));
    return other.isEmpty();
  }

  /** Reads a leaf, such as {@code 36 x 80}; a text that is none is said and left out. */
  private Optional<Leaf> leaf(SheetColumns columns, Row row) {
    String text = columns.text(row, "leaf");
    LengthReader reader = new LengthReader(rules.unit(), columns.table().decimalComma());
    List<Length> sides =
        TIMES
            .splitAsStream(text.strip())
            .flatMap(side -> reader.read(side).stream())
            .filter(reading -> reading.doubt().isEmpty())
            .map(LengthReader.Reading::length)
            .filter(side -> side.isMoreThan(Length.ZERO))
            .toList();
    if (sides.size() == 2) {
      return Optional.of(new Leaf(sides.get(0), sides.get(1)));
    }
    if (!text.isBlank()) {
      CellRef where = columns.table().at(row, columns.column("leaf"));
      problems.add(
          Problem.of(ProblemCode.BAD_NUMBER, "leaf", where).with("text", text).found(text));
    }
    return Optional.empty();
  }

  private Optional<Opening> opening(SheetColumns columns, Row row) {
    String wall = columns.text(row, "wall").toUpperCase(Locale.ROOT);
    Optional<Wall> on = building.wall(wall);
    if (on.isEmpty()) {
      CellRef where = columns.table().at(row);
      problems.add(
          wall.isEmpty()
              ? Problem.of(ProblemCode.BAD_OPENING, "wall-unnamed", where)
              : Problem.of(ProblemCode.BAD_OPENING, "no-wall", where)
                  .with("wall", wall)
                  .found(wall));
      return Optional.empty();
    }
    List<Length> lengths = new ArrayList<>();
    for (String heading : List.of("from left", "width", "sill", "head")) {
      columns.length(row, heading, rules.unit(), problems).ifPresent(lengths::add);
    }
    if (lengths.size() < 4) {
      return Optional.empty();
    }
    boolean shortLogs = columns.text(row, "cut after").toLowerCase(Locale.ROOT).contains("short");
    return Optional.of(
        new Opening(
            columns.text(row, "name"),
            wall,
            lengths.get(0).plus(building.beforeLeft(on.get())),
            lengths.get(1),
            lengths.get(2),
            lengths.get(3),
            shortLogs,
            leaf(columns, row),
            columns.text(row, "remarks"),
            columns.table().at(row)));
  }
}
