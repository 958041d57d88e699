package roundbook.intake.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.job.WallsFault;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Reads the walls, from {@code --walls} or from the Walls sheet.
 *
 * <p>{@code 24x18} gives the outside lengths of the N and S walls and of the E and W walls, in feet
 * in inch work and in metres in metric work unless the text states units. The sheet has a wall a
 * row in clockwise order, or in any order where their names are N, E, S and W: wall, outside
 * length, laid first (x), thickness if not the job's, remarks; of a partition also the two walls
 * that it runs between and where it stands, of a wall of a second pen the pen's number and, in one
 * row, the width of the passage under {@code at}. Of a wing the row of its far wall names under
 * {@code between} the one wall that it stands on and under {@code at} where; its sides are as long
 * as it stands out from that wall.
 */
public final class WallsReader {
  private final BuildRules rules;
  private final Problems problems;

  /** Takes the rules of the job, for its unit, thickness and overhang. */
  public WallsReader(BuildRules rules, Problems problems) {
    this.rules = rules;
    this.problems = problems;
  }

  /** Reads the walls; empty when they make no building. */
  public Optional<Building> read(Optional<Table> sheet, Optional<HouseTold> option) {
    if (option.isPresent()) {
      return fromOption(option.get());
    }
    if (sheet.isEmpty()) {
      problems.add(bad("not-given", CellRef.ofFile("")));
      return Optional.empty();
    }
    return fromSheet(sheet.get());
  }

  private Optional<Building> fromOption(HouseTold house) {
    LengthUnit unit = rules.metric() ? LengthUnit.METRE : LengthUnit.FOOT;
    WallsOption option = new WallsOption(rules, laidFirst(), new LengthReader(unit, false));
    WallsOption.Told told = option.walls(house);
    if (told.walls().isEmpty()) {
      String variant = "option" + told.option().replace("--", ".");
      String text = told.text();
      problems.add(bad(variant, CellRef.ofFile(told.option())).with("text", text).found(text));
      return Optional.empty();
    }
    CellRef rings = CellRef.ofFile(house.pens().isPresent() ? "--pens" : "--walls");
    List<CellRef> where =
        told.walls().stream()
            .map(wall -> option(wall, house).map(CellRef::ofFile).orElse(rings))
            .toList();
    return checked(told.walls(), rings, where);
  }

  private static Optional<String> option(Wall wall, HouseTold house) {
    return wall.isPartition()
        ? Optional.of("--partition")
        : Optional.of("--wing").filter(w -> house.wing().isPresent() && wall.stand().pen() > 1);
  }

  private Optional<Building> fromSheet(Table table) {
    SheetColumns columns = SheetColumns.of(table);
    List<Wall> walls = new ArrayList<>();
    List<CellRef> cells = new ArrayList<>();
    Set<String> first = laidFirst(columns);
    for (Row row : columns.below()) {
      String name = name(columns, row);
      boolean partition = !columns.text(row, "between").isEmpty();
      if (name.isEmpty() || !partition && columns.text(row, "outside length").isEmpty()) {
        continue;
      }
      Optional<Wall> wall = fromRow(columns, row, first);
      if (wall.isEmpty()) {
        return Optional.empty();
      }
      walls.add(wall.get());
      cells.add(table.at(row, columns.column("wall")));
    }
    List<Wall> reaching = Building.withinReach(walls, walls);
    List<Wall> whole = reaching.stream().map(wall -> WallsOption.beside(wall, reaching)).toList();
    return checked(whole, table.place(), cells);
  }

  private Optional<Wall> fromRow(SheetColumns columns, Row row, Set<String> laidFirst) {
    String outside = columns.text(row, "outside length");
    Optional<Length> length =
        outside.isEmpty()
            ? Optional.of(Length.ZERO)
            : columns.length(row, "outside length", lengthUnit(outside), problems);
    Optional<Length> thickness =
        columns.text(row, "thickness").isEmpty()
            ? Optional.of(rules.thickness())
            : columns.length(row, "thickness", rules.unit(), problems);
    Optional<Stand> stand = stand(columns, row);
    if (length.isEmpty() || thickness.isEmpty() || stand.isEmpty()) {
      return Optional.empty();
    }
    String name = name(columns, row);
    boolean first =
        stand.get().isPartition() && columns.text(row, "laid first").isEmpty()
            ? !laidFirst.contains(stand.get().between().get(0))
            : isFirst(columns, row);
    String remarks = columns.text(row, "remarks");
    return Optional.of(new Wall(name, length.get(), first, thickness.get(), remarks, stand.get()));
  }

  /** Reads where a wall stands: pen, between, at; empty where that cannot be read. */
  private Optional<Stand> stand(SheetColumns columns, Row row) {
    String pen = columns.text(row, "pen").replaceAll("\\.0$", "");
    String at = columns.text(row, "at");
    String between = columns.text(row, "between").strip().toUpperCase(Locale.ROOT);
    if (!pen.matches("[1-9]?")) {
      CellRef where = columns.table().at(row, columns.column("pen"));
      problems.add(bad("pen-number", where).with("pen", pen).found(pen).remedyOf("walls-pen"));
      return Optional.empty();
    }
    Optional<Length> place =
        at.isEmpty() ? Optional.empty() : columns.length(row, "at", lengthUnit(at), problems);
    if (place.isEmpty() && !at.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = between.isEmpty() ? List.of() : List.of(between.split("[\\s,;–-]+"));
    return Optional.of(new Stand(pen.isEmpty() ? 1 : Integer.parseInt(pen), names, place));
  }

  /** Returns the walls laid first; a partition of which nothing is said is laid across them. */
  private Set<String> laidFirst(SheetColumns columns) {
    return columns.below().stream()
        .filter(row -> columns.text(row, "between").isEmpty() && isFirst(columns, row))
        .map(row -> name(columns, row))
        .collect(Collectors.toSet());
  }

  private boolean isFirst(SheetColumns columns, Row row) {
    String said = columns.text(row, "laid first");
    return said.isEmpty()
        ? WallsOption.isFirst(name(columns, row), laidFirst())
        : said.matches("(?i)x|y|yes|1|true");
  }

  private static String name(SheetColumns columns, Row row) {
    return columns.text(row, "wall").toUpperCase(Locale.ROOT);
  }

  /** Bare wall lengths are feet in inch work when they are small enough to be. */
  private LengthUnit lengthUnit(String text) {
    boolean small =
        new LengthReader(LengthUnit.INCH, false)
            .number(text)
            .filter(number -> number.doubleValue() < 60)
            .isPresent();
    if (!small) {
      return rules.unit();
    }
    return rules.metric() ? LengthUnit.METRE : LengthUnit.FOOT;
  }

  /** Returns the building of the walls listed, or says what keeps them from being planned. */
  private Optional<Building> checked(List<Wall> listed, CellRef list, List<CellRef> cells) {
    List<Wall> walls = Building.inOrder(listed);
    Optional<WallsFault> fault = WallsFault.of(walls, rules);
    if (fault.isEmpty()) {
      return Optional.of(new Building(walls));
    }
    CellRef where =
        fault.get().wall().map(wall -> cells.get(last(listed, wall.name()))).orElse(list);
    problems.add(
        Problem.of(ProblemCode.BAD_WALLS, where, fault.get().said()).remedy(fault.get().remedy()));
    return Optional.empty();
  }

  private static int last(List<Wall> listed, String name) {
    return listed.stream().map(Wall::name).toList().lastIndexOf(name);
  }

  private Set<String> laidFirst() {
    String text = rules.text(Setting.LAID_FIRST).toUpperCase(Locale.ROOT);
    return new java.util.HashSet<>(List.of(text.strip().split("[\\s,;]+")));
  }

  private static Problem bad(String variant, CellRef where) {
    return Problem.of(ProblemCode.BAD_WALLS, variant, where);
  }
}
