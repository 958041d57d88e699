package roundbook.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Book;
import roundbook.page.Sheet;
import roundbook.page.TypedBox;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.SheetMaker;
import roundbook.report.frame.Tab;
import roundbook.report.list.ListSheets;
import roundbook.report.live.LiveSheet;
import roundbook.report.live.LiveSpot;
import roundbook.report.mark.NotchChartSheet;
import roundbook.report.proof.ProofSheet;
import roundbook.report.round.RoundSheets;
import roundbook.report.wall.WallSheets;
import roundbook.rounds.Choice;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Hewn;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** Plans made over as a program would that reads what a crew typed in. */
public final class LivePlans {
  /** Diameters between stations are whole nanometres in the program and not in a sheet. */
  public static final double NANOMETRES = 2e-7;

  private LivePlans() {}

  /** Returns the live sheets of a plan and nothing else. */
  public static Book book(Plan plan) {
    CrewContext context = context(plan);
    List<SheetMaker> makers =
        List.of(
            ProofSheet::sheets,
            NotchChartSheet::of,
            LivePlans::rounds,
            LivePlans::walls,
            made -> List.of(list(made, Tab.LEVELS)),
            made -> List.of(list(made, Tab.LOG_LIST)),
            LiveSheet::of);
    List<Sheet> sheets = makers.stream().flatMap(maker -> maker.sheets(context).stream()).toList();
    return Book.of(Book.Properties.titled("live"), sheets).names(ListSheets.names(context));
  }

  /** Returns one of the sheets after the walls. */
  public static Sheet list(CrewContext context, Tab tab) {
    return ListSheets.sheets(context).stream()
        .filter(sheet -> sheet.id().equals(tab.id()))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the sheets of all rounds. */
  public static List<Sheet> rounds(CrewContext context) {
    return RoundSheets.sheets(context);
  }

  /** Returns the sheets of all walls. */
  public static List<Sheet> walls(CrewContext context) {
    return WallSheets.sheets(context);
  }

  /** Writes a book and returns its file. */
  public static Path written(Path file, Book book) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    return file;
  }

  /** Returns the row of a round's page that a named cell stands in. */
  public static int rowOf(int round, Plan plan, String name) {
    return rounds(context(plan)).get(round - 1).rows().entrySet().stream()
        .filter(row -> row.getValue().values().stream().anyMatch(each -> each.name().equals(name)))
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  /** Returns the context of a plan without pictures. */
  public static CrewContext context(Plan plan) {
    CrewContext.Issue issue = new CrewContext.Issue(1, "cabin.xlsx", "0.1.0", false);
    return CrewContext.of(plan, List.of(), issue);
  }

  /** Returns the same plan with each placed log made over. */
  static Plan with(Plan plan, UnaryOperator<FilledPlace> change) {
    return with(plan, plan.job().building(), change);
  }

  private static Plan with(Plan plan, Building building, UnaryOperator<FilledPlace> change) {
    List<Course> courses = new ArrayList<>();
    Map<String, Log> placed = new TreeMap<>();
    for (Course course : plan.choice().courses()) {
      List<FilledPlace> logs = course.places().stream().map(change).toList();
      logs.stream()
          .flatMap(place -> place.logs().stream())
          .forEach(log -> placed.put(log.piece().log().tag(), log.piece().log()));
      courses.add(Course.of(course.round(), logs, plan.job().rules()));
    }
    List<Log> logs =
        plan.job().logs().stream().map(log -> placed.getOrDefault(log.tag(), log)).toList();
    Job job = new Job(plan.job().rules(), building, logs, plan.job().openings(), plan.job().pins());
    List<Log> unused = logs.stream().filter(log -> !placed.containsKey(log.tag())).toList();
    Choice old = plan.choice();
    return Planner.of(
        job, new Choice(courses, unused, old.score(), old.shortage(), old.problems()));
  }

  /** Returns the plan with logs of every wall as thick as given, in the walls' order. */
  public static Plan thick(Plan plan, Length... thicknesses) {
    List<Wall> old = plan.job().building().walls();
    List<Wall> walls = new ArrayList<>();
    for (int index = 0; index < old.size(); index++) {
      Wall wall = old.get(index);
      walls.add(
          new Wall(
              wall.name(), wall.outside(), wall.laidFirst(), thicknesses[index], wall.remarks()));
    }
    return with(
        plan,
        new Building(walls),
        place -> on(place, walls.get(old.indexOf(place.wall())), PlacedLog::piece));
  }

  /** Returns the plan with tags of thirty characters and remarks of 200 on every wall. */
  public static Plan wordy(Plan plan) {
    List<Wall> old = plan.job().building().walls();
    List<Wall> walls =
        old.stream()
            .map(
                wall ->
                    new Wall(
                        wall.name(),
                        wall.outside(),
                        wall.laidFirst(),
                        wall.thickness(),
                        PlanFixtures.LONG_REMARK))
            .toList();
    Job job = plan.job();
    List<Log> logs = job.logs().stream().map(LivePlans::wordy).toList();
    Job renamed = new Job(job.rules(), new Building(walls), logs, job.openings(), List.of());
    List<Course> courses = new ArrayList<>();
    for (Course course : plan.choice().courses()) {
      List<FilledPlace> placed =
          course.places().stream()
              .map(
                  place ->
                      on(place, walls.get(old.indexOf(place.wall())), log -> wordy(log.piece())))
              .toList();
      courses.add(Course.of(course.round(), placed, job.rules()));
    }
    List<Log> unused = plan.choice().unused().stream().map(LivePlans::wordy).toList();
    Choice choice = plan.choice();
    return Planner.of(
        renamed, new Choice(courses, unused, choice.score(), choice.shortage(), choice.problems()));
  }

  private static Piece wordy(Piece piece) {
    return new Piece(wordy(piece.log()), piece.cutOffButt(), piece.trimmed());
  }

  /** Returns a place on a wall like its own, each log of it made over. */
  private static FilledPlace on(FilledPlace place, Wall wall, Function<PlacedLog, Piece> change) {
    return new FilledPlace(
        wall,
        place.round(),
        place.buttAtStart(),
        place.logs().stream()
            .map(
                log ->
                    new PlacedLog(
                        change.apply(log), wall, log.round(), log.buttAtStart(), log.fromLeft()))
            .toList());
  }

  private static Log wordy(Log log) {
    return log.tagged("=lot 7 \"white pine\" no. 00" + log.tag());
  }

  /** Returns the plan with logs as hewn; logs without a measurement stay. */
  public static Plan hewn(Plan plan, Map<String, Hewn> measured) {
    return with(
        plan,
        place ->
            on(
                place,
                place.wall(),
                log ->
                    Optional.ofNullable(measured.get(log.piece().log().tag()))
                        .map(hewn -> hewn.of(log.piece()))
                        .orElse(log.piece())));
  }

  /** Returns the plan with another log in one place, squared at its butt. */
  public static Plan used(Plan plan, int round, String wall, String tag) {
    Log log = plan.job().log(tag).orElseThrow();
    Length allowance = plan.job().rules().length(Setting.SQUARING_ALLOWANCE);
    return with(
        plan,
        old ->
            old.round() == round && old.wall().name().equals(wall)
                ? old.with(new Piece(log, allowance, old.trimmed()))
                : old);
  }

  /** Returns middle diameters of about two logs in three, a little off the plan's, by tag. */
  public static Map<String, Hewn> mids(Plan plan, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, Hewn> measured = new TreeMap<>();
    plan.pieces().stream()
        .flatMap(piece -> piece.logs().stream())
        .forEach(
            placed -> {
              Length step = plan.job().rules().printStep();
              Piece log = placed.piece();
              Length mid = log.mid().roundedTo(step).plus(step.times(random.nextInt(-9, 10)));
              if (random.nextInt(3) > 0) {
                measured.put(
                    log.log().tag(),
                    new Hewn(Optional.empty(), Optional.of(mid), Optional.empty()));
              }
            });
    return measured;
  }

  /** Returns what a crew types for measured logs, by the cells' names. */
  public static Map<String, Object> typed(Plan plan, Map<String, Hewn> measured) {
    Map<String, Object> typed = new TreeMap<>();
    plan.pieces().stream()
        .flatMap(piece -> LiveSpot.of(piece).stream())
        .forEach(
            spot -> {
              Hewn hewn = measured.get(spot.piece().log().tag());
              if (hewn != null) {
                put(plan, typed, spot.named(TypedBox.MEASURED), hewn.mid());
                put(plan, typed, spot.named(TypedBox.MEASURED_BUTT), hewn.butt());
                put(plan, typed, spot.named(TypedBox.MEASURED_TIP), hewn.tip());
              }
            });
    return typed;
  }

  private static void put(
      Plan plan, Map<String, Object> typed, String name, Optional<Length> length) {
    length.ifPresent(value -> typed.put(name, value.in(plan.job().rules().unit())));
  }
}
