package roundbook.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.BuildRules.Value;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.job.WallsFault;
import roundbook.page.CellNames;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Found;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Reads settings, walls, openings and pins of a crew workbook by the names of their cells. */
final class RulesFields {
  private final NamedBook book;
  private final Problems problems;

  RulesFields(NamedBook book, Problems problems) {
    this.book = book;
    this.problems = problems;
  }

  /** Returns the settings as they stand in the yellow boxes, options of the command line first. */
  BuildRules now(Asked asked) {
    BuildRules printed = printed();
    BuildRules now = rules(UnaryOperator.identity(), asked);
    for (Setting setting : Setting.values()) {
      now = carried(setting, now, printed);
    }
    return now;
  }

  /** A value that nobody has changed keeps the origin that it had. */
  private static BuildRules carried(Setting setting, BuildRules now, BuildRules printed) {
    Optional<Value> value = now.value(setting).filter(each -> each.origin() == Origin.WORKBOOK);
    return printed
        .value(setting)
        .filter(was -> value.filter(each -> each.value().equals(was.value())).isPresent())
        .map(was -> now.with(setting, was.value(), was.origin()))
        .orElse(now);
  }

  /** Returns the settings that the workbook was planned with. */
  BuildRules printed() {
    BuildRules rules = rules(CellNames::was, Asked.NOTHING);
    for (Setting setting : Setting.values()) {
      Optional<Origin> origin = origin(setting);
      Optional<Value> value = rules.value(setting);
      if (origin.isPresent() && value.isPresent()) {
        rules = rules.with(setting, value.get().value(), origin.get());
      }
    }
    return rules;
  }

  /** Returns who set a setting when the workbook was planned, where it says so. */
  private Optional<Origin> origin(Setting setting) {
    String said = book.cell(CellNames.setBy(setting.label())).map(Found::text).orElse("");
    return Stream.of(Origin.values())
        .filter(each -> each.name().substring(0, 1).equals(said))
        .findFirst();
  }

  private BuildRules rules(UnaryOperator<String> name, Asked asked) {
    String unit = book.cell(name.apply(Setting.UNITS.label())).map(Found::text).orElse("in");
    List<Row> rows = new ArrayList<>();
    String sheet = "";
    for (Setting setting : Setting.values()) {
      Optional<Found> found = book.cell(name.apply(setting.label()));
      if (found.isEmpty() && isNewer(setting)) {
        continue;
      }
      if (found.isEmpty()) {
        problems.add(
            Problem.of(ProblemCode.CELL_LOST, "cell", CellRef.ofFile(book.file()))
                .with("name", name.apply(setting.label())));
        continue;
      }
      sheet = found.get().where().sheet();
      rows.add(row(setting, found.get(), unit));
    }
    Table table = Table.of(book.file(), sheet, Set.of(), rows);
    Read<BuildRules> read = JobReader.rules(table, asked);
    read.problems().forEach(problems::add);
    return read.value().orElseThrow();
  }

  /** Says in one line which settings came after the workbook: they have their defaults. */
  void sayNewer() {
    String newer =
        Stream.of(Setting.values())
            .filter(this::isNewer)
            .map(Setting::label)
            .collect(Collectors.joining(" "));
    if (!newer.isEmpty()) {
      problems.add(
          Problem.of(ProblemCode.CELL_LOST, "newer", CellRef.ofFile(book.file()))
              .with("settings", newer)
              .as(Severity.INFO)
              .remedyOf("newer-settings"));
    }
  }

  /** Returns whether a setting leaves no trace: a cell that was deleted leaves its name. */
  private boolean isNewer(Setting setting) {
    return Stream.of(setting.label(), CellNames.was(setting.label()))
        .allMatch(name -> !book.has(name) && book.gone(name).isEmpty());
  }

  /** Returns a row as the Job sheet has it: label, value, unit. */
  private static Row row(Setting setting, Found found, String unit) {
    Cell value = found.cell();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(1, setting.label()));
    cells.add(new Cell(2, value.kind(), value.text(), value.number(), value.unit()));
    if (setting.kind() == SettingKind.LENGTH) {
      cells.add(Cell.text(3, unit));
    }
    return new Row(found.where().row(), cells, false, false);
  }

  /** Returns the walls; empty when they are gone. */
  Optional<Building> building(Fields fields, BuildRules rules) {
    List<Wall> walls = new ArrayList<>();
    for (int number = 1; book.has(CellNames.item("Wall", number, "name")); number++) {
      Optional<Length> outside = fields.length(CellNames.item("Wall", number, "outside"));
      Optional<Length> thickness = fields.length(CellNames.item("Wall", number, "thickness"));
      if (outside.isEmpty() || thickness.isEmpty()) {
        return Optional.empty();
      }
      walls.add(
          new Wall(
              fields.text(CellNames.item("Wall", number, "name")),
              outside.get(),
              fields.ticked(CellNames.item("Wall", number, "first")),
              thickness.get(),
              fields.text(CellNames.item("Wall", number, "remarks")),
              stand(fields, number)));
    }
    List<Wall> whole = Building.withinReach(walls, walls);
    Optional<WallsFault> fault = walls.isEmpty() ? Optional.empty() : WallsFault.of(whole, rules);
    fault.ifPresent(found -> say(found, fields.where(CellNames.item("Wall", 1, "name"))));
    return walls.isEmpty() ? Optional.empty() : Optional.of(new Building(whole));
  }

  /** Returns where a wall stands; a workbook of one pen without partitions does not tell. */
  private Stand stand(Fields fields, int number) {
    String pen = CellNames.item("Wall", number, "pen");
    if (!book.has(pen)) {
      return Stand.RING;
    }
    String between = fields.text(CellNames.item("Wall", number, "between")).strip();
    String told = fields.text(pen).replaceAll("\\D.*", "");
    return new Stand(
        told.isEmpty() ? 1 : Integer.parseInt(told),
        between.isEmpty() ? List.of() : List.of(between.split("\\s+")),
        fields.length(CellNames.item("Wall", number, "at")));
  }

  private void say(WallsFault fault, CellRef where) {
    problems.add(Problem.of(ProblemCode.BAD_WALLS, where, fault.said()).remedy(fault.remedy()));
  }

  /** Returns the openings of a building. */
  List<Opening> openings(Fields fields, Building building) {
    List<Opening> openings = new ArrayList<>();
    for (int each : numbers("Opening", "name")) {
      String wall = fields.text(CellNames.item("Opening", each, "wall"));
      Length before = building.wall(wall).map(building::beforeLeft).orElse(Length.ZERO);
      openings.add(
          new Opening(
              fields.text(CellNames.item("Opening", each, "name")),
              wall,
              at(fields, each, "left").plus(before),
              at(fields, each, "width"),
              at(fields, each, "sill"),
              at(fields, each, "head"),
              fields.ticked(CellNames.item("Opening", each, "short")),
              leaf(fields, each),
              fields.text(CellNames.item("Opening", each, "remarks")),
              fields.where(CellNames.item("Opening", each, "name"))));
    }
    return openings;
  }

  /** Returns the numbers of a list that are there; deleted rows leave holes. */
  private List<Integer> numbers(String list, String what) {
    String name = CellNames.item(list, 0, what).replace("0", "(\\d{1,4})");
    Pattern numbered = Pattern.compile(name, Pattern.CASE_INSENSITIVE);
    return book.beginning(list).stream()
        .map(numbered::matcher)
        .filter(Matcher::matches)
        .map(matcher -> Integer.valueOf(matcher.group(1)))
        .sorted()
        .toList();
  }

  private static Optional<Leaf> leaf(Fields fields, int number) {
    return fields
        .length(CellNames.item("Opening", number, "leaf_width"))
        .map(width -> new Leaf(width, at(fields, number, "leaf_height")));
  }

  private static Length at(Fields fields, int number, String what) {
    return fields.length(CellNames.item("Opening", number, what)).orElse(Length.ZERO);
  }

  /** Returns what yards ask, as it stands there; a price that is no number is passed over. */
  List<Price> prices(Fields fields) {
    List<Price> prices = new ArrayList<>();
    for (int number : numbers("Selling", "basis")) {
      Optional<Basis> basis = Basis.of(fields.text(CellNames.item("Selling", number, "basis")));
      Optional<BigDecimal> price = money(fields, number, "price");
      Set<Integer> lines =
          Arrays.stream(fields.text(CellNames.item("Selling", number, "lines")).split("\\D+"))
              .filter(line -> !line.isEmpty())
              .map(Integer::valueOf)
              .collect(Collectors.toSet());
      if (basis.isPresent() && price.isPresent()) {
        prices.add(new Price(basis.get(), price.get(), lines, money(fields, number, "delivery")));
      }
    }
    return prices;
  }

  private static Optional<BigDecimal> money(Fields fields, int number, String what) {
    String text = fields.text(CellNames.item("Selling", number, what));
    return new LengthReader(LengthUnit.MILLIMETRE, false).number(text);
  }

  /** Returns the logs for other places than the walls. */
  List<OtherLog> others(Fields fields) {
    List<OtherLog> others = new ArrayList<>();
    for (int number : numbers("Other", "name")) {
      String count = fields.text(CellNames.item("Other", number, "count"));
      Optional<Length> length = other(fields, number, "length");
      if (length.isPresent() && count.matches("[1-9]\\d{0,3}")) {
        others.add(
            new OtherLog(
                fields.text(CellNames.item("Other", number, "name")),
                Integer.parseInt(count),
                length.get(),
                other(fields, number, "mid").orElse(Length.ZERO),
                other(fields, number, "tip").orElse(Length.ZERO),
                other(fields, number, "sweep"),
                fields.text(CellNames.item("Other", number, "remarks")),
                fields.where(CellNames.item("Other", number, "name"))));
      }
    }
    return others;
  }

  private static Optional<Length> other(Fields fields, int number, String what) {
    String name = CellNames.item("Other", number, what);
    return fields.text(name).isEmpty() ? Optional.empty() : fields.length(name);
  }

  /** Returns the places that the builder has settled. */
  List<Pin> pins(Fields fields) {
    List<Pin> pins = new ArrayList<>();
    for (int number : numbers("Pin", "why")) {
      String round = fields.text(CellNames.item("Pin", number, "round"));
      boolean told = round.matches("[1-9]\\d{0,2}");
      pins.add(
          new Pin(
              told ? OptionalInt.of(Integer.parseInt(round)) : OptionalInt.empty(),
              fields.text(CellNames.item("Pin", number, "wall")),
              fields.text(CellNames.item("Pin", number, "log")),
              fields.text(CellNames.item("Pin", number, "butt")),
              fields.text(CellNames.item("Pin", number, "why")),
              fields.where(CellNames.item("Pin", number, "log"))));
    }
    return pins;
  }
}
