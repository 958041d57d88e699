package roundbook.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.heading.Vocabulary;
import roundbook.intake.felled.StemsReader;
import roundbook.intake.house.CranePlace;
import roundbook.intake.house.KeptPlates;
import roundbook.intake.house.OtherLogsReader;
import roundbook.intake.house.PlacesReader;
import roundbook.intake.house.PricesReader;
import roundbook.intake.house.WallsReader;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stems;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Table;

/**
 * Reads the tables of one job's files as a job, and finds every problem in one pass.
 *
 * <p>Sheets named Job, Walls, Openings, Pins, Prices and Other_logs are read as what they are
 * named, and those that only tell an order are passed over; every other sheet that has the headings
 * of a tally is read as one. Hidden sheets are passed over with a warning when they hold a tally,
 * with an error when no other sheet does.
 */
public final class JobReader {
  private static final Set<String> OWN_SHEETS =
      Set.of("job", "walls", "openings", "pins", "prices", "other_logs", "stems");

  /** Sheets of an order workbook that say what was ordered, in every language it is written in. */
  private static final Set<String> TOLD_SHEETS =
      Set.of("start", "order", "cost", "loads", "trees", "bestellung", "kosten", "fuhren", "bäume");

  private final List<Table> tables;
  private final Asked asked;
  private final Mapping mapping;
  private final Problems problems = new Problems();
  private boolean hasLogs;
  private List<Stem> stems = List.of();

  private JobReader(List<Table> tables, Asked asked) {
    this.tables = tables;
    this.asked = asked;
    this.mapping = Mapping.of(asked, sheet("job"));
    for (String line : asked.words()) {
      if (!Vocabulary.isUsable(line)) {
        problems.add(
            Problem.of(ProblemCode.HEADING_DOUBTFUL, "words", CellRef.ofFile(""))
                .with("line", line)
                .remedyOf("words"));
      }
    }
  }

  /**
   * What was read of a job's files.
   *
   * @param logs every usable log
   * @param job the whole job, with no log where there is none; empty when walls are missing
   */
  public record Findings(List<Log> logs, Optional<Job> job) {}

  /**
   * Reads the tables of a job.
   *
   * @param tables every sheet of the job's files, in file order
   * @param asked what the command line asked
   * @return what was read, with every problem in file order
   */
  public static Read<Findings> read(List<Table> tables, Asked asked) {
    JobReader reader = new JobReader(tables, asked);
    List<Log> logs = new ArrayList<>();
    Places places = reader.read(rules -> logs::add);
    Optional<Job> job =
        places.building().map(walls -> places.job(walls, logs).withStems(Stems.of(reader.stems)));
    return Read.of(new Findings(logs, job), reader.inFileOrder());
  }

  /**
   * Reads the tables of a job for their problems alone, and holds no log but felled stems: a tally
   * of a million fits in little memory.
   *
   * @param tables every sheet of the job's files, in file order
   * @param asked what the command line asked
   * @param taker takes each usable log as it is read, given the settings
   * @return the felled stems, with every problem in file order
   */
  public static Read<List<Stem>> check(
      List<Table> tables, Asked asked, Function<BuildRules, Consumer<Log>> taker) {
    JobReader reader = new JobReader(tables, asked);
    reader.read(taker);
    return Read.of(reader.stems, reader.inFileOrder());
  }

  /**
   * Reads the logs and felled stems of further tallies for a job that is known.
   *
   * @param tables every sheet of the tallies, in file order
   * @param rules the job's settings
   * @param building the job's walls
   * @param asked what the command line asked
   * @return a job of the usable ones, with every problem in file order
   */
  public static Read<Job> logs(
      List<Table> tables, BuildRules rules, Building building, Asked asked) {
    JobReader reader = new JobReader(tables, asked);
    List<Log> logs = new ArrayList<>();
    reader.logs(rules, log -> logs.add(reader.wishChecked(log, Optional.of(building))));
    Job job = new Job(rules, building, logs, List.of(), List.of());
    return Read.of(job.withStems(Stems.of(reader.stems)), reader.inFileOrder());
  }

  /** Reads settings alone: label, value and unit a row, as the Job sheet has them. */
  public static Read<BuildRules> rules(Table settings, Asked asked) {
    Problems problems = new Problems();
    BuildRules rules = new SettingsReader(problems).read(Optional.of(settings), asked);
    return Read.of(rules, problems.sorted());
  }

  /** Sorts problems by sheets as they stand in their files, then by row and column. */
  private List<Problem> inFileOrder() {
    List<CellRef> places = tables.stream().map(Table::place).toList();
    return problems.sorted().stream()
        .map(this::weighed)
        .sorted(Comparator.comparingInt(problem -> places.indexOf(sheetOf(problem))))
        .toList();
  }

  /** A list without logs is an error only where no other list has any. */
  private Problem weighed(Problem problem) {
    boolean other = problem.code() == ProblemCode.NO_ROWS && hasLogs;
    return other ? problem.as(Severity.INFO).remedy() : problem;
  }

  private static CellRef sheetOf(Problem problem) {
    return CellRef.ofSheet(problem.where().file(), problem.where().sheet());
  }

  /** What a job holds besides its logs. */
  private record Places(
      BuildRules rules,
      Optional<Building> building,
      List<Opening> openings,
      List<Pin> pins,
      List<Price> prices,
      List<OtherLog> others) {
    Job job(Building walls, List<Log> logs) {
      return new Job(rules, walls, logs, openings, pins).withPrices(prices).withOthers(others);
    }
  }

  private Places read(Function<BuildRules, Consumer<Log>> taker) {
    BuildRules rules = new SettingsReader(problems).read(sheet("job"), asked);
    if (sheet("job").isEmpty()) {
      sheet("walls").ifPresent(this::sayNoSettings);
    }
    boolean wallsGiven = asked.walls().isPresent() || sheet("walls").isPresent();
    Optional<Building> building =
        wallsGiven
            ? new WallsReader(rules, problems).read(sheet("walls"), asked.walls())
            : Optional.empty();
    Consumer<Log> logs = taker.apply(rules);
    KeptPlates plates = new KeptPlates(building);
    Predicate<String> tags =
        logs(
            rules,
            log -> {
              Log wished = wishChecked(log, building);
              plates.see(wished);
              logs.accept(wished);
            });
    plates.problem().ifPresent(problems::add);
    List<Price> prices =
        sheet("prices").map(table -> new PricesReader(table, problems).prices()).orElse(List.of());
    List<OtherLog> others =
        sheet("other_logs")
            .map(table -> new OtherLogsReader(table, rules, problems).others())
            .orElse(List.of());
    if (building.isEmpty()) {
      return new Places(rules, building, List.of(), List.of(), prices, others);
    }
    CranePlace.problem(rules, building.get()).ifPresent(problems::add);
    if (rules.optionalLength(Setting.FOUNDATION_STEP).isPresent() && !rules.stepsFoundation()) {
      problems.add(Problem.of(ProblemCode.BAD_SETTING, "foundation", CellRef.ofFile("")));
    }
    PlacesReader places = new PlacesReader(rules, building.get(), problems);
    List<Pin> pins = sheet("pins").map(table -> places.pins(table, tags)).orElse(List.of());
    List<Opening> openings = sheet("openings").map(places::openings).orElse(List.of());
    return new Places(rules, building, openings, pins, prices, others);
  }

  private void sayNoSettings(Table walls) {
    problems.add(Problem.of(ProblemCode.NO_JOB_SHEET, CellRef.ofFile(walls.file())));
  }

  /** A log that is wanted on a wall that does not exist may go anywhere. */
  private Log wishChecked(Log log, Optional<Building> building) {
    String wall = log.place().wall();
    if (wall.isEmpty() || building.isEmpty() || building.get().wall(wall).isPresent()) {
      return log;
    }
    problems.add(
        Problem.of(ProblemCode.BAD_PIN, "no-wall", log.origin())
            .with("wall", wall)
            .found(wall)
            .about(log.tag()));
    return log.placed(Log.Wish.ANYWHERE);
  }

  private Optional<Table> sheet(String name) {
    return tables.stream()
        .filter(table -> table.sheet().toLowerCase(Locale.ROOT).equals(name))
        .findFirst();
  }

  /** Reads every tally, gives its logs to the taker, and returns what tells their tags. */
  private Predicate<String> logs(BuildRules rules, Consumer<Log> taker) {
    Map<Boolean, List<Table>> others =
        tables.stream()
            .filter(table -> !isOwn(table))
            .collect(Collectors.partitioningBy(JobReader::hasStems));
    List<Table> candidates = others.get(false);
    List<Table> tallies = candidates.stream().filter(this::hasTally).toList();
    boolean allHidden = tallies.stream().allMatch(Table::hidden);
    UniqueLogs doubles = new UniqueLogs(tallies.size() > 1, problems, taker);
    boolean any = false;
    for (Table table : candidates) {
      boolean chosen =
          asked.sheet().isPresent() ? isAsked(table) : isTally(table, tallies.isEmpty());
      if (chosen) {
        new TallyReader(table, mapping, rules, problems).read(doubles);
        any = true;
      } else if (asked.sheet().isEmpty()) {
        sayNotRead(table, allHidden);
      }
    }
    if (asked.sheet().isPresent() && candidates.stream().noneMatch(this::isAsked)) {
      String names = String.join(", ", candidates.stream().map(Table::sheet).toList());
      problems.add(
          Problem.of(ProblemCode.SHEET_SKIPPED, "no-sheet", CellRef.ofFile("--sheet"))
              .with("sheet", asked.sheet().get())
              .with("sheets", names)
              .as(Severity.ERROR)
              .remedyOf("name-one"));
    }
    stems(others.get(true), rules, doubles::has);
    boolean nothing =
        asked.sheet().isEmpty() && !any && tallies.isEmpty() && others.get(true).isEmpty();
    if (nothing && !tables.isEmpty()) {
      CellRef where = CellRef.ofFile(tables.get(0).file());
      problems.add(Problem.of(ProblemCode.EMPTY_FILE, "no-tally", where));
    }
    hasLogs = doubles.hasAny() || !stems.isEmpty();
    return doubles::has;
  }

  /** Reads the sheet Stems, and every other table that has its columns. */
  private void stems(List<Table> tables, BuildRules rules, Predicate<String> taken) {
    StemsReader.Units units = new StemsReader.Units(asked.lengthUnit(), asked.diameterUnit());
    StemsReader reader = new StemsReader(rules, units, taken, problems);
    Stream<Table> own =
        this.tables.stream()
            .filter(table -> table.sheet().equalsIgnoreCase("stems"))
            .filter(StemsReader::isOfStems);
    Stream.concat(own, tables.stream()).forEach(reader::read);
    stems = reader.stems();
  }

  private static boolean hasStems(Table table) {
    return !table.hidden() && StemsReader.isOfStems(table);
  }

  private boolean isAsked(Table table) {
    return asked.sheet().filter(name -> name.equalsIgnoreCase(table.sheet())).isPresent();
  }

  /** Where no sheet has a tally's headings, any that shows is taken for one that lacks them. */
  private boolean isTally(Table table, boolean none) {
    boolean poor = none && !table.rows().isEmpty();
    return table.sheet().isEmpty() || !table.hidden() && (poor || hasTally(table));
  }

  private void sayNotRead(Table table, boolean allHidden) {
    boolean tally = hasTally(table);
    String why = tally ? "hidden" : table.rows().isEmpty() ? "empty" : "no-columns";
    Problem problem = Problem.of(ProblemCode.SHEET_SKIPPED, why, table.place());
    Severity hidden = allHidden ? Severity.ERROR : Severity.WARNING;
    problems.add(tally ? problem.as(hidden) : problem);
  }

  private static boolean isOwn(Table table) {
    String name = table.sheet().toLowerCase(Locale.ROOT);
    return OWN_SHEETS.contains(name) || TOLD_SHEETS.contains(name);
  }

  private boolean hasTally(Table table) {
    return Header.find(table, mapping).isPresent();
  }
}
