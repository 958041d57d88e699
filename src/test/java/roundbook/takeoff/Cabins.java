package roundbook.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.balance.Effort;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Leaf;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.rounds.BalancedChooser;
import roundbook.rounds.Choice;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Cabins of invented logs, 240 by 168 in outside, simple enough to be worked out by hand.
 *
 * <p>All logs are Engelmann spruce, whose figures were read in a source. Unless told otherwise they
 * are cylinders, 6 in thick when hewn, with a gap of 1 in and 3 in past the corner.
 */
public final class Cabins {
  static final String SPRUCE = "Engelmann spruce";

  private BuildRules rules = Jobs.rules(false);
  private final List<double[]> rounds = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Log> spares = new ArrayList<>();
  private List<String> species = List.of(SPRUCE);
  private double taper;

  /** Begins a cabin of cylinders, a diameter a round. */
  public static Cabins ofRounds(double... diameters) {
    Cabins cabin = new Cabins();
    for (double diameter : diameters) {
      cabin.rounds.add(new double[] {diameter, diameter, diameter, diameter});
    }
    return cabin;
  }

  /** Makes every log taper by so much from end to end, the middle staying as it is. */
  Cabins tapering(double inches) {
    taper = inches;
    return this;
  }

  /** Makes its logs of a species, or of several in turn. */
  Cabins of(String... names) {
    species = List.of(names);
    return this;
  }

  Cabins with(Setting setting, Object value) {
    rules = rules.with(setting, value, Origin.WORKBOOK);
    return this;
  }

  Cabins with(Setting setting, double number) {
    return with(setting, BigDecimal.valueOf(number));
  }

  /** Adds an opening: wall, left, width, sill, head. */
  Cabins opening(String wall, double left, double width, double sill, double head) {
    return opening(wall, false, left, width, sill, head);
  }

  /** Adds an opening, with short logs beside it or not: left, width, sill, head. */
  public Cabins opening(String wall, boolean shortLogs, double... at) {
    openings.add(
        new Opening(
            "O" + (openings.size() + 1),
            wall,
            in(at[0]),
            in(at[1]),
            in(at[2]),
            in(at[3]),
            shortLogs,
            "",
            new CellRef("cabin.xlsx", "Openings", openings.size() + 2, 0)));
    return this;
  }

  /** Says what is to stand in the last opening. */
  Cabins leaf(double width, double height) {
    Opening last = openings.remove(openings.size() - 1);
    openings.add(
        new Opening(
            last.name(),
            last.wall(),
            last.left(),
            last.width(),
            last.sill(),
            last.head(),
            last.shortLogs(),
            Optional.of(new Leaf(in(width), in(height))),
            last.remarks(),
            last.origin()));
    return this;
  }

  /** Adds a log without a place: its length and diameter. */
  public Cabins spare(double length, double diameter) {
    spares.add(log("S" + (901 + spares.size()), length, diameter));
    return this;
  }

  BuildRules rules() {
    return rules;
  }

  Job job() {
    List<Log> logs =
        Stream.concat(
                stack().courses().stream()
                    .flatMap(course -> course.places().stream())
                    .map(log -> log.first().piece().log()),
                spares.stream())
            .toList();
    return new Job(rules, building(), logs, openings, List.of());
  }

  Stack stack() {
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= rounds.size(); round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (int wall = 0; wall < 4; wall++) {
        logs.add(placed(round, building().walls().get(wall), rounds.get(round - 1)[wall]));
      }
      courses.add(Course.of(round, logs, rules));
    }
    return Stack.of(rules, building(), courses);
  }

  /** Returns the whole plan of the cabin. */
  public Plan plan() {
    Choice.Score score = new Choice.Score(0, 0, 0, 0, 0, 0);
    return Planner.of(
        job(),
        new Choice(stack().courses(), List.copyOf(spares), score, Optional.empty(), List.of()));
  }

  /** Returns the plan of the cabin's logs, chosen anew for as many rounds. */
  public Plan chosen() {
    Job job = with(Setting.ROUNDS, rounds.size()).job();
    return new Planner(new BalancedChooser()).plan(job, Effort.usual(1).withMoves(20_000));
  }

  Takeoff takeoff() {
    return Takeoff.of(job(), stack());
  }

  private Building building() {
    return Jobs.building(in(240), in(168), rules.thickness());
  }

  private FilledPlace placed(int round, Wall wall, double diameter) {
    Length trimmed = building().trimmed(wall, rules.overhang());
    Log log = log(wall.name() + round, trimmed.inches() + 4, diameter);
    return FilledPlace.of(new Piece(log, in(2), trimmed), wall, round, rules.clockwise(round));
  }

  private Log log(String tag, double length, double diameter) {
    int turn = tag.charAt(0) % species.size();
    return new Log(
        tag,
        in(length),
        DiameterProfile.of(
            in(length), in(diameter + taper / 2), in(diameter), in(diameter - taper / 2)),
        Log.Sources.MEASURED,
        new Log.Traits(species.get(turn), Log.Bark.OFF, Length.ZERO, Log.Keep.ANY, false, ""),
        Log.Wish.ANYWHERE,
        new CellRef("cabin.xlsx", "Logs", 2, 0),
        java.util.Map.of());
  }

  static Length in(double inches) {
    return Length.of(inches, LengthUnit.INCH);
  }
}
