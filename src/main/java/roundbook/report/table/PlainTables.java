package roundbook.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.PlainTable;
import roundbook.plan.OrderLine;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Weight;
import roundbook.plan.Plan;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Quantity;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.words.Sentences;
import roundbook.report.frame.CrewContext;
import roundbook.report.words.Decimals;
import roundbook.report.words.QuantityWords;
import roundbook.report.words.Words;
import roundbook.stack.Course;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;

/**
 * A plan as plain tables for other programs, one a file.
 *
 * <p>Lengths are decimals of inches or millimetres, as the headings say, with at most six decimals.
 * Marks are the printed ones; means, diameters and gaps are not rounded. Left and right of a gap
 * are seen from outside, at the two inside faces.
 *
 * <pre>{@code
 * round,mean_in,size_in,lower_in,upper_in,…
 * 1,14.9375,15,3.5,4.5,…
 * }</pre>
 */
public final class PlainTables {
  private final Plan plan;
  private final List<Problem> problems;
  private final Decimals decimals;

  private PlainTables(CrewContext context) {
    this.plan = context.plan();
    this.problems = context.problems();
    this.decimals = new Decimals(context.rules().metric());
  }

  /** Returns every table of a plan: logs, problems, rounds, pieces, gaps and the rest. */
  public static List<PlainTable> of(CrewContext context) {
    PlainTables tables = new PlainTables(context);
    TakeoffTables takeoff = new TakeoffTables(context.plan());
    List<PlainTable> exchanges = ExchangeTables.of(context.plan(), tables.decimals);
    return List.of(
        tables.logs(),
        problems(tables.problems),
        tables.rounds(),
        tables.pieces(),
        tables.gaps(),
        takeoff.openings(),
        takeoff.cuts(),
        takeoff.chinking(),
        takeoff.wood(),
        takeoff.scale(),
        tables.materials(),
        tables.order(),
        exchanges.get(0),
        exchanges.get(1),
        settings(context.rules()));
  }

  /**
   * Returns the headings of logs as they are read, before any plan.
   *
   * @param metric whether the job is metric
   */
  public static List<String> logHeader(boolean metric) {
    return logHeader(new Decimals(metric));
  }

  /** Returns the row of a log as it is read; its use, round, wall and note are empty. */
  public static List<String> logRow(Log log, boolean metric) {
    return logRow(log, new Decimals(metric), List.of("", "", "", ""));
  }

  /** Returns the table of problems. */
  public static PlainTable problems(List<Problem> problems) {
    return table(
        "problems",
        "file,sheet,cell,row,column,severity,code,log,found,message,remedy",
        problems,
        PlainTables::problemRow);
  }

  /** Returns the table of settings, those without a value too. */
  public static PlainTable settings(BuildRules rules) {
    Decimals decimals = new Decimals(rules.metric());
    return table(
        "settings",
        "name,value,unit,source",
        List.of(Setting.values()),
        setting -> settingRow(setting, rules, decimals));
  }

  private PlainTable logs() {
    List<List<String>> rows = new ArrayList<>();
    for (LogUse use : plan.uses()) {
      List<String> rest =
          List.of(
              use.use().words(),
              use.placed().map(placed -> String.valueOf(placed.round())).orElse(""),
              use.placed().map(placed -> placed.wall().name()).orElse(""),
              use.note().in(Sentences.english()));
      rows.add(logRow(use.log(), decimals, rest));
    }
    return new PlainTable("logs", logHeader(decimals), rows);
  }

  private static List<String> logHeader(Decimals decimals) {
    return decimals.header(
        "file,sheet,row,log,species,length_#,butt_#,mid_#,tip_#,mid_source,use,round,wall,note");
  }

  private static List<String> logRow(Log log, Decimals decimals, List<String> rest) {
    List<String> row = new ArrayList<>();
    row.add(log.origin().file());
    row.add(log.origin().sheet());
    row.add(number(log.origin().row()));
    row.add(log.tag());
    row.add(log.traits().species());
    row.addAll(decimals.of(log.length(), log.butt(), log.mid(), log.tip()));
    row.add(log.sources().mid().word());
    row.addAll(rest);
    return row;
  }

  private static List<String> problemRow(Problem problem) {
    Sentences english = Sentences.english();
    CellRef where = problem.where();
    return List.of(
        where.file(),
        where.sheet(),
        where.column() == 0 ? "" : where.address(),
        number(where.row()),
        number(where.column()),
        problem.severity().word(),
        problem.code().id(),
        problem.log(),
        english.found(problem),
        english.message(problem),
        english.remedy(problem));
  }

  private PlainTable rounds() {
    return new PlainTable(
        "rounds",
        decimals.header(
            "round,mean_#,size_#,lower_#,upper_#,upper_outside_#,lower_corner_#,neck_#,"
                + "first_height_#,second_height_#,spread_#,butts_run"),
        plan.stack().courses().stream().map(this::roundRow).toList());
  }

  private List<String> roundRow(Course course) {
    Notch notch = course.notch();
    Wall first = plan.job().building().walls().stream().filter(Wall::laidFirst).findFirst().get();
    Wall crossing = plan.job().building().before(first);
    List<String> row = new ArrayList<>();
    row.add(number(course.round()));
    row.addAll(
        decimals.of(
            course.size().mean(),
            notch.size(),
            notch.lower(),
            notch.upper(),
            notch.upperOutside(first.thickness()),
            notch.lowerCorner(crossing.thickness()),
            notch.neckHeight(),
            plan.stack().firstHeights().get(course.round() - 1),
            plan.stack().secondHeights().get(course.round() - 1),
            course.spread()));
    row.add(course.clockwise() ? "clockwise" : "counterclockwise");
    return row;
  }

  private PlainTable pieces() {
    String weight = decimals.metric() ? "weight_kg" : "weight_lb";
    return new PlainTable(
        "pieces",
        decimals.header(
            "round,wall,log,butt_at,cut_off_butt_#,trimmed_#,near_shoulder_#,far_shoulder_#,"
                + "falls_off_#,butt_#,mid_#,tip_#,centre_height_#,"
                + weight
                + ",balance_#"),
        plan.pieces().stream().flatMap(this::pieceRows).toList());
  }

  private Stream<List<String>> pieceRows(PiecePlan piece) {
    List<String> both = decimals.of(piece.nearShoulder(), piece.farShoulder());
    PlacedLog first = piece.placed().first();
    return piece.halves().isEmpty()
        ? Stream.of(row(piece, first, piece.buttAt(), both, piece.weight()))
        : piece.halves().stream().map(half -> row(piece, half));
  }

  /** Returns the row of a short log beside an opening, which has one shoulder only. */
  private List<String> row(PiecePlan piece, PiecePlan.Half half) {
    String one = decimals.one(half.shoulder());
    boolean out = half.buttOut();
    List<String> shoulders = out ? List.of(one, "") : List.of("", one);
    return row(piece, half.placed(), out ? half.corner() : "opening", shoulders, half.weight());
  }

  private List<String> row(
      PiecePlan plan, PlacedLog placed, String buttAt, List<String> shoulders, Weight weight) {
    Piece piece = placed.piece();
    List<String> row = new ArrayList<>();
    row.add(number(placed.round()));
    row.add(placed.wall().name());
    row.add(piece.log().tag());
    row.add(buttAt);
    row.addAll(decimals.of(piece.cutOffButt(), piece.trimmed()));
    row.addAll(shoulders);
    row.addAll(
        decimals.of(piece.fallsOff(), piece.butt(), piece.mid(), piece.tip(), plan.centre()));
    row.add(decimals.weight(weight));
    row.addAll(decimals.of(weight.balance()));
    return row;
  }

  private PlainTable gaps() {
    return new PlainTable(
        "gaps",
        decimals.header(
            "wall,lower_round,upper_round,lower_log,upper_log,left_#,middle_#,right_#,least_#,"
                + "most_#,flag"),
        plan.stack().joints().stream().map(this::gapRow).toList());
  }

  private List<String> gapRow(Joint joint) {
    List<String> row = new ArrayList<>();
    row.add(joint.lower().wall().name());
    row.add(number(joint.lower().round()));
    row.add(number(joint.upper().round()));
    row.add(joint.lower().tags());
    row.add(joint.upper().tags());
    row.addAll(
        decimals.of(joint.left(), joint.middle(), joint.right(), joint.least(), joint.most()));
    row.add(joint.flag(plan.job().rules()).symbol());
    return row;
  }

  private PlainTable materials() {
    return table(
        "materials",
        "section,item,quantity,unit,note",
        plan.quantities(),
        PlainTables::materialRow);
  }

  private static List<String> materialRow(Quantity quantity) {
    QuantityWords words = new QuantityWords(Words.of("en"));
    return List.of(
        quantity.section(),
        words.item(quantity),
        Decimals.plain(quantity.amount()),
        quantity.unit(),
        words.note(quantity));
  }

  private PlainTable order() {
    return new PlainTable(
        "order",
        decimals.header(
            "count,length_#,mid_from_#,mid_to_#,walls,for,butt_ask_length_#,butt_mid_at_#,"
                + "second_ask_length_#,second_mid_at_#,least_tip_#,better_tip_#"),
        plan.order().stream().map(this::orderRow).toList());
  }

  private List<String> orderRow(OrderLine line) {
    List<String> row = new ArrayList<>();
    row.add(number(line.count()));
    row.addAll(decimals.of(line.least(), line.midFrom(), line.midTo()));
    row.add(line.walls());
    row.add(line.needed() ? "needed" : "spare");
    row.addAll(
        decimals.of(
            line.butt().ask(),
            line.butt().midAt(),
            line.second().ask(),
            line.second().midAt(),
            line.tips().least(),
            line.tips().better()));
    return row;
  }

  private static List<String> settingRow(Setting setting, BuildRules rules, Decimals decimals) {
    String source =
        rules.value(setting).map(BuildRules.Value::origin).orElse(BuildRules.Origin.DEFAULT).name();
    return List.of(
        setting.label(),
        decimals.setting(setting, rules),
        setting.kind() == SettingKind.LENGTH ? decimals.symbol() : "",
        source.toLowerCase(java.util.Locale.ROOT));
  }

  private static <T> PlainTable table(
      String name, String header, List<T> values, Function<T, List<String>> row) {
    return new PlainTable(name, List.of(header.split(",")), values.stream().map(row).toList());
  }

  private static String number(int number) {
    return number == 0 ? "" : String.valueOf(number);
  }
}
