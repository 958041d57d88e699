package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Pin;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Reads the Pins and Openings sheets, and checks them against walls and logs. */
final class PlacesReader {
  private final BuildRules rules;
  private final Building building;
  private final Problems problems;

  PlacesReader(BuildRules rules, Building building, Problems problems) {
    this.rules = rules;
    this.building = building;
    this.problems = problems;
  }

  /** Reads the pins: round, wall, log, butt at, why. */
  List<Pin> pins(Table table, List<Log> logs) {
    SheetColumns columns = SheetColumns.of(table);
    Set<String> tags = logs.stream().map(Log::tag).collect(Collectors.toSet());
    List<Pin> pins = new ArrayList<>();
    for (Row row : columns.below()) {
      String wall = columns.text(row, "wall").toUpperCase(Locale.ROOT);
      String log = columns.text(row, "log");
      String round = columns.text(row, "round").replaceAll("\\.0+$", "");
      String fault = fault(round, wall, log, tags);
      if (!fault.isEmpty()) {
        problems.add(Problem.of(ProblemCode.BAD_PIN, table.at(row), log, fault));
        continue;
      }
      OptionalInt number =
          round.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(round));
      pins.add(
          new Pin(
              number,
              wall,
              log,
              columns.text(row, "butt at").toUpperCase(Locale.ROOT),
              columns.text(row, "why"),
              table.at(row)));
    }
    return pins;
  }

  private String fault(String round, String wall, String log, Set<String> tags) {
    if (!round.isEmpty() && !round.matches("[1-9]\\d{0,2}")) {
      return "'" + round + "' is no round";
    }
    if (!wall.isEmpty() && building.wall(wall).isEmpty()) {
      return "there is no wall " + wall;
    }
    return !log.isEmpty() && !tags.contains(log) ? "log " + log + " is not in the tally" : "";
  }

  /** Reads the openings: name, wall, from left corner, width, sill height, head height. */
  List<Opening> openings(Table table) {
    SheetColumns columns = SheetColumns.of(table);
    List<Opening> openings = new ArrayList<>();
    for (Row row : columns.below()) {
      opening(columns, row).ifPresent(openings::add);
    }
    return openings;
  }

  private Optional<Opening> opening(SheetColumns columns, Row row) {
    String wall = columns.text(row, "wall").toUpperCase(Locale.ROOT);
    if (building.wall(wall).isEmpty()) {
      problems.add(
          Problem.of(
              ProblemCode.BAD_WALLS, columns.table().at(row), wall, "there is no wall " + wall));
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
            lengths.get(0),
            lengths.get(1),
            lengths.get(2),
            lengths.get(3),
            shortLogs,
            columns.text(row, "remarks"),
            columns.table().at(row)));
  }
}
