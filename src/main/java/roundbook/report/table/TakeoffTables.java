package roundbook.report.table;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.page.PlainTable;
import roundbook.plan.Plan;
import roundbook.report.words.Decimals;
import roundbook.stack.FilledPlace;
import roundbook.takeoff.Chinking;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.RemainingPieces;
import roundbook.takeoff.LogScale.Scaled;
import roundbook.takeoff.OpeningCut;
import roundbook.takeoff.PieceWood;
import roundbook.units.Bulk;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.LogRule;

/** The plain tables of openings, their cuts, chinking, wood and the mill's scale. */
final class TakeoffTables {
  private static final double CUBIC_FOOT = 1728;
  private final Plan plan;
  private final Decimals decimals;
  private final Bulk bulk;

  TakeoffTables(Plan plan) {
    this.plan = plan;
    this.decimals = new Decimals(plan.job().rules().metric());
    this.bulk = new Bulk(decimals.metric());
  }

  /** Returns the openings with their frames; left, sill and head as they were asked for. */
  PlainTable openings() {
    return new PlainColumns<Opening>(decimals)
        .text("name", Opening::name)
        .text("wall", Opening::wall)
        .length("left", opening -> opening.toldLeft(plan.job().building()))
        .length("width", Opening::width)
        .length("sill", Opening::sill)
        .length("head", Opening::head)
        .text("built", opening -> opening.shortLogs() ? "short logs" : "cut after stacking")
        .text("remarks", Opening::remarks)
        .textIf(
            "header_log",
            opening -> cut(opening).flatMap(OpeningCut::header).map(FilledPlace::tags))
        .lengthIf("clearance", opening -> frame(opening).map(OpeningCut.Frame::clearance))
        .lengthIf("leave", opening -> frame(opening).map(OpeningCut.Frame::most))
        .lengthIf("leg", opening -> frame(opening).map(OpeningCut.Frame::leg))
        .lengthIf("clear_width", opening -> frame(opening).map(OpeningCut.Frame::clearWidth))
        .lengthIf("clear_height", opening -> frame(opening).map(OpeningCut.Frame::clearHeight))
        .lengthIf("leaf_width", opening -> opening.leaf().map(Leaf::width))
        .lengthIf("leaf_height", opening -> opening.leaf().map(Leaf::height))
        .lengthIf("keys", opening -> frame(opening).map(OpeningCut.Frame::keys))
        .lengthIf("pin_left", opening -> frame(opening).map(OpeningCut.Frame::pinLeft))
        .lengthIf("pin_right", opening -> frame(opening).map(OpeningCut.Frame::pinRight))
        .table("openings", plan.job().openings());
  }

  private Optional<OpeningCut> cut(Opening opening) {
    return plan.takeoff().openings().stream().filter(each -> each.opening() == opening).findFirst();
  }

  private Optional<OpeningCut.Frame> frame(Opening opening) {
    return cut(opening).map(OpeningCut::frame);
  }

  /** What an opening does to a log of its wall. */
  private record Cutting(Opening opening, LogCut cut) {
    Optional<RemainingPieces> sides() {
      return cut.sides();
    }
  }

  /** Returns what each opening does to each log of its wall, untouched ones too. */
  PlainTable cuts() {
    return new PlainColumns<Cutting>(decimals)
        .text("opening", row -> row.opening().name())
        .text("wall", row -> row.cut().log().wall().name())
        .count("round", row -> row.cut().log().round())
        .text("log", row -> row.cut().log().tags())
        .text("cut", row -> row.cut().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
        .length("depth", row -> row.cut().depth())
        .lengthIf("left_piece", row -> row.sides().map(sides -> sides.left().length()))
        .lengthIf("right_piece", row -> row.sides().map(sides -> sides.right().length()))
        .textIf("short", row -> row.sides().filter(RemainingPieces::tooShort).map(sides -> "short"))
        .table(
            "cuts",
            plan.takeoff().openings().stream()
                .flatMap(each -> each.cuts().stream().map(cut -> new Cutting(each.opening(), cut)))
                .toList());
  }

  /** Returns the filling of every joint; strip is the chinking of both faces. */
  PlainTable chinking() {
    double side = decimals.metric() ? new Bulk(true).length(1) * 1000 : 1;
    String area = "_" + bulk.symbol() + "2";
    String volume = "_" + bulk.symbol() + "3";
    return new PlainColumns<Chinking.Fill>(decimals)
        .text("wall", fill -> fill.joint().lower().wall().name())
        .count("lower_round", fill -> fill.joint().lower().round())
        .count("upper_round", fill -> fill.joint().upper().round())
        .length("run", fill -> inches(fill.run()))
        .length("face_least", fill -> inches(fill.faceLeast()))
        .length("face_most", fill -> inches(fill.faceMost()))
        .text(
            "section_" + decimals.symbol() + "2",
            fill -> Decimals.plain(fill.section() * side * side))
        .text("face_area" + area, fill -> Decimals.plain(bulk.area(fill.faceArea())))
        .text("gap" + volume, fill -> Decimals.plain(bulk.volume(fill.gapVolume())))
        .text("strip" + volume, fill -> Decimals.plain(bulk.volume(fill.stripVolume())))
        .length("widest", fill -> inches(fill.widest()))
        .text("backer_" + decimals.symbol(), fill -> stock(fill.backer()))
        .table("chinking", plan.takeoff().chinking().joints());
  }

  private static String stock(OptionalDouble size) {
    return size.isPresent() ? Decimals.plain(size.getAsDouble()) : "";
  }

  private static Length inches(double inches) {
    return Length.of(inches, LengthUnit.INCH);
  }

  /** Returns the wood of every placed log and its weights. */
  PlainTable wood() {
    String weight = decimals.metric() ? "_kg" : "_lb";
    String volume = "_" + bulk.symbol() + "3";
    return new PlainColumns<PieceWood>(decimals)
        .text("wall", wood -> wood.log().wall().name())
        .count("round", wood -> wood.log().round())
        .text("log", wood -> wood.log().piece().log().tag())
        .text("species", wood -> wood.species().species().name())
        .text("sureness", wood -> wood.species().sureness().name().toLowerCase(Locale.ROOT))
        .text("round" + volume, wood -> Decimals.plain(bulk.volume(wood.round())))
        .text("sawn" + volume, wood -> Decimals.plain(bulk.volume(wood.sawn())))
        .text("finished" + volume, wood -> Decimals.plain(bulk.volume(wood.finished())))
        .text("green" + weight, wood -> Decimals.plain(bulk.weight(wood.weights().green())))
        .text("least" + weight, wood -> Decimals.plain(bulk.weight(wood.weights().least())))
        .text("most" + weight, wood -> Decimals.plain(bulk.weight(wood.weights().most())))
        .text("service" + weight, wood -> Decimals.plain(bulk.weight(wood.weights().service())))
        .length("balance", PieceWood::balance)
        .table("wood", plan.takeoff().wood());
  }

  /** Returns the mill's scale of every log of the tally, a column a rule. */
  PlainTable scale() {
    PlainColumns<Scaled> columns =
        new PlainColumns<Scaled>(decimals).text("log", scaled -> scaled.log().tag());
    for (LogRule rule : LogRule.values()) {
      boolean board = rule.unit() == LogRule.Unit.BOARD_FEET;
      double one = board ? 1 : bulk.volume(CUBIC_FOOT);
      columns.text(
          rule.name().toLowerCase(Locale.ROOT) + (board ? "_bd_ft" : "_" + bulk.symbol() + "3"),
          scaled -> Decimals.plain(scaled.byRule().get(rule) * one, 4));
    }
    return columns.table("scale", plan.takeoff().scale().logs());
  }
}
