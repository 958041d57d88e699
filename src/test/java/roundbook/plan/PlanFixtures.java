package roundbook.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import roundbook.problem.CellRef;
import roundbook.rounds.Choice;
import roundbook.rounds.Shortage;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.LogCut.RemainingPieces;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Plans of invented jobs for tests of what is made from a plan.
 *
 * <p>The building is 24 by 18 ft (7.3 by 5.5 m) outside; logs are dealt out in order, the largest
 * low, so that no chooser is needed. Every seventh log has an estimated middle.
 */
public final class PlanFixtures {
  /** A remark of 200 characters. */
  public static final String LONG_REMARK =
      "Lay beside the gate, not on the heap; the haulier bumped the tip and a splinter is off,"
          + " about a hand wide and two deep, so turn that face in and down, and look at the butt"
          + " for the old staple there....";

  private final boolean metric;
  private final Map<Setting, BuildRules.Value> values = new EnumMap<>(Setting.class);
  private final List<Opening> openings = new ArrayList<>();
  private int wanted;
  private boolean shortLogs;
  private long windowLeft = 80;

  private PlanFixtures(boolean metric) {
    this.metric = metric;
    for (Setting setting : Setting.values()) {
      standard(setting);
    }
    set(Setting.UNITS, metric ? "mm" : "in");
    set(Setting.JOB_NAME, "Test cabin");
    set(Setting.PAPER, metric ? "a4" : "letter");
  }

  /** Returns the beginnings of a job in inches on Letter paper. */
  public static PlanFixtures inches() {
    return new PlanFixtures(false);
  }

  /** Returns the beginnings of a job in millimetres on A4 paper. */
  public static PlanFixtures metric() {
    return new PlanFixtures(true);
  }

  /** Sets a value as a job workbook would; lengths and numbers in their own types. */
  public PlanFixtures set(Setting setting, Object value) {
    values.put(setting, new BuildRules.Value(value, Origin.WORKBOOK));
    return this;
  }

  /** Asks for more rounds than there are logs for. */
  public PlanFixtures wanting(int rounds) {
    wanted = rounds;
    return set(Setting.ROUNDS, BigDecimal.valueOf(rounds));
  }

  /** Adds a door in the south wall and a window in the east wall. */
  public PlanFixtures withOpenings() {
    openings.add(
        new Opening(
            "Front door",
            "S",
            length(120),
            length(36),
            Length.ZERO,
            length(82),
            false,
            Optional.of(new Leaf(length(32), length(74))),
            "",
            new CellRef("cabin.xlsx", "Openings", 2, 0)));
    openings.add(
        new Opening(
            "East window",
            "E",
            length(windowLeft),
            length(40),
            length(34),
            length(76),
            true,
            LONG_REMARK,
            new CellRef("cabin.xlsx", "Openings", 3, 0)));
    return this;
  }

  /** Lays two short logs beside the east window, in the lowest round that it cuts through. */
  public PlanFixtures withShortLogs() {
    return withShortLogs(80);
  }

  /** Lays them beside a window so many inches from the left corner (25 mm to the inch). */
  public PlanFixtures withShortLogs(long left) {
    shortLogs = true;
    windowLeft = left;
    return withOpenings();
  }

  /** Returns the plan of so many rounds, with four spares and two logs left out. */
  public Plan plan(int rounds) {
    Job job = job(rounds);
    Choice choice = choice(job, rounds);
    return Planner.of(job, shortLogs ? paired(job, choice) : choice);
  }

  private static Choice paired(Job job, Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses());
    LogCut cut = OpeningCut.of(job, stack).get(1).of(CutExtent.THROUGH).get(0);
    FilledPlace freed = cut.log();
    int last = job.logs().size() - 1;
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    RemainingPieces sides = cut.sides().orElseThrow();
    Length left = sides.left().length();
    Length right = sides.right().length();
    FilledPlace placed =
        FilledPlace.of(
            job,
            new PlacedLog(
                new Piece(job.logs().get(last - 1), allowance, left),
                freed.wall(),
                freed.round(),
                false,
                Length.ZERO),
            new PlacedLog(
                new Piece(job.logs().get(last), allowance, right),
                freed.wall(),
                freed.round(),
                false,
                freed.trimmed().minus(right)));
    List<Course> courses = new ArrayList<>(choice.courses());
    List<FilledPlace> logs = new ArrayList<>(courses.get(freed.round() - 1).places());
    logs.set(logs.indexOf(freed), placed);
    courses.set(freed.round() - 1, Course.of(freed.round(), logs, job.rules()));
    List<Log> unused = new ArrayList<>(choice.unused());
    placed.logs().forEach(log -> unused.remove(log.piece().log()));
    unused.add(freed.first().piece().log());
    return new Choice(
        courses,
        unused,
        choice.score(),
        choice.shortage(),
        choice.problems(),
        List.of(placed),
        Optional.empty());
  }

  /** Returns the job with logs for so many rounds, four more and two that are too short. */
  public Job job(int rounds) {
    BuildRules rules = BuildRules.of(values);
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < rounds * 4 + 4; i++) {
      logs.add(log(i, rounds));
    }
    for (int i = 0; i < 2; i++) {
      long side = i == 0 ? windowLeft : 180 - windowLeft;
      logs.add(
          log(
              rounds * 4 + 4 + i,
              rounds,
              length(shortLogs ? Math.max(30, side) + 16 : 100 + 7 * i)));
    }
    return new Job(rules, building(rules.thickness()), logs, openings, List.of());
  }

  private Building building(Length thickness) {
    Length across = metric ? Length.ofMillimetres(7300) : length(288);
    Length deep = metric ? Length.ofMillimetres(5500) : length(216);
    return new Building(
        List.of(
            new Wall("N", across, true, thickness, ""),
            new Wall("E", deep, false, thickness, ""),
            new Wall("S", across, true, thickness, "road side"),
            new Wall("W", deep, false, thickness, "")));
  }

  private Log log(int number, int rounds) {
    boolean across = number % 4 % 2 == 0;
    Length least = across ? (metric ? Length.ofMillimetres(7550) : length(298)) : Length.ZERO;
    Length own = least.isZero() ? (metric ? Length.ofMillimetres(5750) : length(226)) : least;
    return log(number, rounds, own.plus(length(number * 7 % 23)));
  }

  private Log log(int number, int rounds, Length length) {
    int round = Math.min(number / 4, rounds);
    int sixteenths = 14 * 16 - 48 * round / Math.max(1, rounds) + number * 5 % 9 - 4;
    Length mid = metric ? Length.ofMillimetres(sixteenths * 25L / 16) : sixteenth(sixteenths);
    Length half = metric ? Length.ofMillimetres(24 + number % 5 * 4) : sixteenth(15 + number % 9);
    boolean guessed = number % 7 == 3;
    Log.Source source = guessed ? Log.Source.ESTIMATED : Log.Source.MEASURED;
    return new Log(
        "L" + (number + 1),
        length,
        DiameterProfile.of(length, mid.plus(half), mid, mid.minus(half)),
        new Log.Sources(Log.Source.MEASURED, source, Log.Source.MEASURED),
        new Log.Traits(
            number % 3 == 0 ? "white pine" : "red spruce",
            Log.Bark.OFF,
            number % 4 == 0 ? length(1) : Length.ZERO,
            number < 4 ? Log.Keep.SILL : Log.Keep.ANY,
            false,
            number == 5 ? LONG_REMARK : number == 6 ? "=1+1" : ""),
        Log.Wish.ANYWHERE,
        new CellRef("cabin.xlsx", "Logs", number + 2, 0),
        Map.of("Bin", "B" + number % 3));
  }

  private Choice choice(Job job, int rounds) {
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= rounds; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (int wall = 0; wall < 4; wall++) {
        logs.add(placed(job, job.logs().get((round - 1) * 4 + wall), wall, round));
      }
      courses.add(Course.of(round, logs, job.rules()));
    }
    List<Log> unused = job.logs().subList(rounds * 4, job.logs().size());
    return new Choice(
        courses, unused, new Choice.Score(0, 0, 0, 0, 0, 0), shortage(rounds), List.of());
  }

  private Optional<Shortage> shortage(int rounds) {
    if (wanted <= rounds) {
      return Optional.empty();
    }
    int count = 2 * (wanted - rounds);
    return Optional.of(
        new Shortage(
            wanted,
            rounds,
            List.of(
                new Shortage.Missing(count, length(298), "N S", length(10), length(12)),
                new Shortage.Missing(count, length(226), "E W", length(10), length(12)))));
  }

  private FilledPlace placed(Job job, Log log, int index, int round) {
    Wall wall = job.building().walls().get(index);
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    Length trimmed = job.building().trimmed(wall, job.rules().overhang());
    return FilledPlace.of(
        new Piece(log, allowance, trimmed), wall, round, job.rules().clockwise(round));
  }

  private void standard(Setting setting) {
    String text = setting.standard(metric);
    if (text.isEmpty()) {
      return;
    }
    Object value =
        switch (setting.kind()) {
          case LENGTH -> metric ? Length.ofMillimetres(Long.parseLong(text)) : inches(text);
          case NUMBER, COUNT -> new BigDecimal(text);
          case TEXT, CHOICE -> text;
        };
    values.put(setting, new BuildRules.Value(value, Origin.DEFAULT));
  }

  private static Length inches(String text) {
    Length sum = Length.ZERO;
    for (String part : text.split(" ")) {
      String[] halves = part.split("/");
      long denominator = halves.length == 1 ? 1 : Long.parseLong(halves[1]);
      sum = sum.plus(Length.ofInchFraction(Long.parseLong(halves[0]), denominator));
    }
    return sum;
  }

  private Length length(long inches) {
    return metric ? Length.of(inches * 25, LengthUnit.MILLIMETRE) : Length.ofInches(inches);
  }

  private static Length sixteenth(long count) {
    return Length.ofInchFraction(count, 16);
  }
}
