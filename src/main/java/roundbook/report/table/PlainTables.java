package roundbook.report.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Log;
import roundbook.job.OtherLog;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Stem;
import roundbook.job.Wall;
import roundbook.page.PlainTable;
import roundbook.plan.OrderLine;
import roundbook.plan.OtherLogs;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Weight;
import roundbook.plan.Plan;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Quantity;
import roundbook.problem.Problem;
import roundbook.problem.words.Sentences;
import roundbook.report.frame.CrewContext;
import roundbook.report.words.Decimals;
import roundbook.report.words.QuantityWords;
import roundbook.report.words.Words;
import roundbook.rounds.Nearness;
import roundbook.stack.Course;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.units.Bulk;
import roundbook.units.Length;

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

  /**
   * Returns every table of a plan: logs, problems, rounds, pieces, gaps and the rest; cross-cuts
   * where there are stems, junctions where there are more than four walls, nearness where it was
   * reckoned how near the best the plan is.
   */
  public static List<PlainTable> of(CrewContext context) {
    PlainTables tables = new PlainTables(context);
    TakeoffTables takeoff = new TakeoffTables(context.plan());
    List<PlainTable> exchanges = ExchangeTables.of(context.plan(), tables.decimals);
    List<PlainTable> others =
        context.plan().job().others().isEmpty() ? List.of() : List.of(tables.otherLogs());
    List<PlainTable> usual =
        List.of(
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
    List<PlainTable> cuts =
        context.plan().job().stems().isEmpty()
            ? List.of()
            : List.of(CrossCutTable.of(context.plan(), tables.decimals));
    List<PlainTable> nearness =
        context.plan().choice().nearness().stream().map(tables::nearness).toList();
    boolean more = context.plan().job().building().walls().size() > 4;
    List<PlainTable> junctions =
        more ? List.of(JunctionTable.of(context.plan(), tables.decimals)) : List.of();
    return Stream.of(usual, others, cuts, junctions, nearness).flatMap(List::stream).toList();
  }

  /** A log found for another place than the walls, or so many that are to be ordered. */
  private record Other(OtherLog other, Optional<OtherLogs.Found> found, int count) {}

  private PlainTable otherLogs() {
    OtherLogs all = OtherLogs.of(plan);
    Bulk bulk = new Bulk(decimals.metric());
    return new PlainColumns<Other>(decimals)
        .text("for", row -> row.other().name())
        .count("count", Other::count)
        .textIf("log", row -> row.found().map(found -> found.log().tag()))
        .length("length", row -> row.other().length())
        .length("least_mid", row -> row.other().mid())
        .length("least_tip", row -> row.other().tip())
        .lengthIf("most_sweep", row -> row.other().sweep())
        .lengthIf("cut_off", row -> row.found().map(OtherLogs.Found::over))
        .textIf(
            decimals.metric() ? "most_weight_kg" : "most_weight_lb",
            row -> row.found().map(found -> Decimals.plain(bulk.weight(found.pounds()))))
        .text("use", row -> row.found().isPresent() ? "found" : "to order")
        .lengthIf("from", row -> row.found().map(OtherLogs.Found::from))
        .table(
            "other_logs",
            Stream.concat(
                    all.taken().stream().map(each -> new Other(each.other(), Optional.of(each), 1)),
                    all.lacking().stream()
                        .map(each -> new Other(each.other(), Optional.empty(), each.count())))
                .toList());
  }

  /**
   * Returns the headings of logs as they are read, before any plan.
   *
   * @param metric whether the job is metric
   */
  public static List<String> logHeader(boolean metric) {
    return logs(new Decimals(metric)).headings();
  }

  /** Returns the row of a log as it is read; its use, round, wall and note are empty. */
  public static List<String> logRow(Log log, boolean metric) {
    return logs(new Decimals(metric)).row(new TalliedLog(log, Optional.empty()));
  }

  /** Returns the table of problems. */
  public static PlainTable problems(List<Problem> problems) {
    Sentences english = Sentences.english();
    Decimals noLengths = new Decimals(true);
    return new PlainColumns<Problem>(noLengths)
        .text("file", problem -> problem.where().file())
        .text("sheet", problem -> problem.where().sheet())
        .text("cell", problem -> problem.where().column() == 0 ? "" : problem.where().address())
        .number("row", problem -> problem.where().row())
        .number("column", problem -> problem.where().column())
        .text("severity", problem -> problem.severity().word())
        .text("code", problem -> problem.code().id())
        .text("log", Problem::log)
        .text("found", english::found)
        .text("message", english::message)
        .text("remedy", english::remedy)
        .table("problems", problems);
  }

  /** Returns the table of settings, those without a value too. */
  public static PlainTable settings(BuildRules rules) {
    Decimals decimals = new Decimals(rules.metric());
    return new PlainColumns<Setting>(decimals)
        .text("name", Setting::label)
        .text("value", setting -> decimals.setting(setting, rules))
        .text("unit", setting -> setting.kind() == SettingKind.LENGTH ? decimals.symbol() : "")
        .text("source", setting -> source(setting, rules))
        .table("settings", List.of(Setting.values()));
  }

  private static String source(Setting setting, BuildRules rules) {
    return rules
        .value(setting)
        .map(BuildRules.Value::origin)
        .orElse(BuildRules.Origin.DEFAULT)
        .name()
        .toLowerCase(Locale.ROOT);
  }

  /**
   * A log of the tally.
   *
   * @param log the log as it was read
   * @param use what becomes of it, once there is a plan
   */
  private record TalliedLog(Log log, Optional<LogUse> use) {
    Optional<PlacedLog> placed() {
      return use.flatMap(LogUse::placed);
    }
  }

  private static PlainColumns<TalliedLog> logs(Decimals decimals) {
    return new PlainColumns<TalliedLog>(decimals)
        .text("file", row -> row.log().origin().file())
        .text("sheet", row -> row.log().origin().sheet())
        .number("row", row -> row.log().origin().row())
        .text("log", row -> row.log().tag())
        .text("species", row -> row.log().traits().species())
        .length("length", row -> row.log().length())
        .length("butt", row -> row.log().butt())
        .length("mid", row -> row.log().mid())
        .length("tip", row -> row.log().tip())
        .text("mid_source", row -> row.log().sources().mid().word())
        .textIf("use", row -> row.use().map(use -> use.use().words()))
        .textIf("round", row -> row.placed().map(placed -> String.valueOf(placed.round())))
        .textIf("wall", row -> row.placed().map(placed -> placed.wall().name()))
        .textIf("note", row -> row.use().map(use -> use.note().in(Sentences.english())));
  }

  private PlainTable logs() {
    return logs(decimals)
        .table(
            "logs",
            plan.uses().stream().map(use -> new TalliedLog(use.log(), Optional.of(use))).toList());
  }

  private PlainTable rounds() {
    Wall first = plan.job().building().walls().stream().filter(Wall::laidFirst).findFirst().get();
    Wall crossing = plan.job().building().before(first);
    return new PlainColumns<Course>(decimals)
        .number("round", Course::round)
        .length("mean", course -> course.size().mean())
        .length("size", course -> course.notch().size())
        .length("lower", course -> course.notch().lower())
        .length("upper", course -> course.notch().upper())
        .length("upper_outside", course -> course.notch().upperOutside(first.thickness()))
        .length("lower_corner", course -> course.notch().lowerCorner(crossing.thickness()))
        .length("neck", course -> course.notch().neckHeight())
        .length("first_height", course -> plan.stack().firstHeights().get(course.round() - 1))
        .length("second_height", course -> plan.stack().secondHeights().get(course.round() - 1))
        .length("spread", Course::spread)
        .text("butts_run", course -> course.clockwise() ? "clockwise" : "counterclockwise")
        .table("rounds", plan.stack().courses());
  }

  private PlainTable pieces() {
    return new PlainColumns<Lying>(decimals)
        .number("round", row -> row.placed().round())
        .text("wall", row -> row.placed().wall().name())
        .text("log", row -> row.piece().log().tag())
        .text("butt_at", Lying::buttAt)
        .length("cut_off_butt", row -> row.piece().cutOffButt())
        .length("trimmed", row -> row.piece().trimmed())
        .lengthIf("near_shoulder", Lying::near)
        .lengthIf("far_shoulder", Lying::far)
        .length("falls_off", row -> row.piece().fallsOff())
        .length("butt", row -> row.piece().butt())
        .length("mid", row -> row.piece().mid())
        .length("tip", row -> row.piece().tip())
        .length("centre_height", Lying::centre)
        .text(decimals.metric() ? "weight_kg" : "weight_lb", row -> decimals.weight(row.weight()))
        .length("balance", row -> row.weight().balance())
        .textIf("stem", row -> plan.job().stems().of(row.piece().log()).map(Stem::tag))
        .table("pieces", plan.pieces().stream().flatMap(Lying::of).toList());
  }

  /**
   * A log as it lies; a short one beside an opening has one shoulder only.
   *
   * @param placed the log in its place
   * @param buttAt the corner at which its butt lies, or the opening
   * @param near distance of the near shoulder from the trimmed butt
   * @param far distance of the far shoulder from the trimmed butt
   * @param centre height of its centre
   * @param weight its weight and balance
   */
  private record Lying(
      PlacedLog placed,
      String buttAt,
      Optional<Length> near,
      Optional<Length> far,
      Length centre,
      Weight weight) {
    static Stream<Lying> of(PiecePlan plan) {
      if (!plan.halves().isEmpty()) {
        return plan.halves().stream().map(half -> of(plan, half));
      }
      return Stream.of(
          new Lying(
              plan.placed().first(),
              plan.buttAt(),
              Optional.of(plan.nearShoulder()),
              Optional.of(plan.farShoulder()),
              plan.centre(),
              plan.weight()));
    }

    private static Lying of(PiecePlan plan, PiecePlan.Half half) {
      Optional<Length> shoulder = Optional.of(half.shoulder());
      boolean out = half.buttOut();
      return new Lying(
          half.placed(),
          out ? half.corner() : "opening",
          shoulder.filter(near -> out),
          shoulder.filter(far -> !out),
          plan.centre(),
          half.weight());
    }

    Piece piece() {
      return placed.piece();
    }
  }

  private PlainTable gaps() {
    return new PlainColumns<Joint>(decimals)
        .text("wall", joint -> joint.lower().wall().name())
        .number("lower_round", joint -> joint.lower().round())
        .number("upper_round", joint -> joint.upper().round())
        .text("lower_log", joint -> joint.lower().tags())
        .text("upper_log", joint -> joint.upper().tags())
        .length("left", Joint::left)
        .length("middle", Joint::middle)
        .length("right", Joint::right)
        .length("least", Joint::least)
        .length("most", Joint::most)
        .text("flag", joint -> joint.flag(plan.job().rules()).symbol())
        .table("gaps", plan.stack().joints());
  }

  /**
   * Gaps are off as the root of the mean square; at least, where faults and waste weigh no more.
   * What is not known is blank.
   */
  private PlainTable nearness(Nearness told) {
    return new PlainColumns<Nearness>(decimals)
        .textIf("better_at_most_percent", near -> near.known().map(String::valueOf))
        .length("gap_off", Nearness::gapOff)
        .lengthIf("gap_off_at_least", near -> near.known().map(percent -> near.leastGapOff()))
        .text("ended_by", near -> near.ended() ? "itself" : "stopped")
        .table("nearness", List.of(told));
  }

  private PlainTable materials() {
    QuantityWords words = new QuantityWords(Words.of("en"));
    return new PlainColumns<Quantity>(decimals)
        .text("section", Quantity::section)
        .text("item", words::item)
        .text("quantity", quantity -> Decimals.plain(quantity.amount()))
        .text("unit", Quantity::unit)
        .text("note", words::note)
        .table("materials", plan.quantities());
  }

  private PlainTable order() {
    return new PlainColumns<OrderLine>(decimals)
        .number("count", OrderLine::count)
        .length("length", OrderLine::least)
        .length("mid_from", OrderLine::midFrom)
        .length("mid_to", OrderLine::midTo)
        .text("walls", OrderLine::walls)
        .text("for", line -> line.purpose().word())
        .length("butt_ask_length", line -> line.butt().ask())
        .length("butt_mid_at", line -> line.butt().midAt())
        .length("second_ask_length", line -> line.second().ask())
        .length("second_mid_at", line -> line.second().midAt())
        .length("least_tip", line -> line.tips().least())
        .length("better_tip", line -> line.tips().better())
        .table("order", plan.order());
  }
}
