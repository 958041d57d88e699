package roundbook.intake.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
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
 * length, laid first (x), thickness if not the job's, remarks.
 */
public final class WallsReader {
  private static final List<String> NAMES = List.of("N", "E", "S", "W");

  private final BuildRules rules;
  private final Problems problems;

  /** Takes the rules of the job, for its unit, thickness and overhang. */
  public WallsReader(BuildRules rules, Problems problems) {
    this.rules = rules;
    this.problems = problems;
  }

  /** Reads the walls; empty when they make no building. */
  public Optional<Building> read(Optional<Table> sheet, Optional<String> option) {
    if (option.isPresent()) {
      return fromOption(option.get());
    }
    if (sheet.isEmpty()) {
      problems.add(bad("not-given", CellRef.ofFile("")));
      return Optional.empty();
    }
    return fromSheet(sheet.get());
  }

  private Optional<Building> fromOption(String text) {
    String[] parts = text.strip().toLowerCase(Locale.ROOT).split("\\s*[x×]\\s*");
    LengthReader reader =
        new LengthReader(rules.metric() ? LengthUnit.METRE : LengthUnit.FOOT, false);
    Optional<Length> first = parts.length == 2 ? length(reader, parts[0]) : Optional.empty();
    Optional<Length> second = parts.length == 2 ? length(reader, parts[1]) : Optional.empty();
    if (first.isEmpty() || second.isEmpty()) {
      problems.add(bad("option", CellRef.ofFile("--walls")).with("text", text).found(text));
      return Optional.empty();
    }
    Set<String> laidFirst = laidFirst();
    List<Wall> walls = new ArrayList<>();
    for (String name : NAMES) {
      Length outside = name.equals("N") || name.equals("S") ? first.get() : second.get();
      walls.add(new Wall(name, outside, laidFirst.contains(name), rules.thickness(), ""));
    }
    CellRef option = CellRef.ofFile("--walls");
    return checked(walls, option, Collections.nCopies(walls.size(), option));
  }

  private static Optional<Length> length(LengthReader reader, String text) {
    return reader.read(text).map(LengthReader.Reading::length);
  }

  private Optional<Building> fromSheet(Table table) {
    SheetColumns columns = SheetColumns.of(table);
    Set<String> laidFirst = laidFirst();
    List<Wall> walls = new ArrayList<>();
    List<CellRef> cells = new ArrayList<>();
    for (Row row : columns.below()) {
      String name = columns.text(row, "wall").toUpperCase(Locale.ROOT);
      String outside = columns.text(row, "outside length");
      if (name.isEmpty() || outside.isEmpty()) {
        continue;
      }
      Optional<Length> length =
          columns.length(row, "outside length", lengthUnit(outside), problems);
      Optional<Length> thickness =
          columns.text(row, "thickness").isEmpty()
              ? Optional.of(rules.thickness())
              : columns.length(row, "thickness", rules.unit(), problems);
      if (length.isEmpty() || thickness.isEmpty()) {
        return Optional.empty();
      }
      String first = columns.text(row, "laid first");
      boolean laid =
          first.isEmpty() ? laidFirst.contains(name) : first.matches("(?i)x|y|yes|1|true");
      walls.add(new Wall(name, length.get(), laid, thickness.get(), columns.text(row, "remarks")));
      cells.add(table.at(row, columns.column("wall")));
    }
    return checked(walls, table.place(), cells);
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
    Optional<WallsFault> fault = WallsFault.of(walls);
    if (fault.isEmpty()) {
      return Optional.of(new Building(walls));
    }
    CellRef where =
        fault.get().wall().map(wall -> cells.get(listed.lastIndexOf(wall))).orElse(list);
    problems.add(
        Problem.of(ProblemCode.BAD_WALLS, where, fault.get().said()).remedy(fault.get().remedy()));
    return Optional.empty();
  }

  private Set<String> laidFirst() {
    String text = rules.text(Setting.LAID_FIRST).toUpperCase(Locale.ROOT);
    return new java.util.HashSet<>(List.of(text.strip().split("[\\s,;]+")));
  }

  private static Problem bad(String variant, CellRef where) {
    return Problem.of(ProblemCode.BAD_WALLS, variant, where);
  }
}
