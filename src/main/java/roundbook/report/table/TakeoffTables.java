package roundbook.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.page.PlainTable;
import roundbook.plan.Plan;
import roundbook.report.words.Decimals;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
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
    return new PlainTable(
        "openings",
        decimals.header(
            "name,wall,left_#,width_#,sill_#,head_#,built,remarks,header_log,clearance_#,"
                + "leave_#,leg_#,keys_#,pin_left_#,pin_right_#"),
        plan.job().openings().stream().map(this::opening).toList());
  }

  private List<String> opening(Opening opening) {
    List<String> row = new ArrayList<>(List.of(opening.name(), opening.wall()));
    row.addAll(decimals.of(opening.left(), opening.width(), opening.sill(), opening.head()));
    row.add(opening.shortLogs() ? "short logs" : "cut after stacking");
    row.add(opening.remarks());
    Optional<OpeningCut> cut =
        plan.takeoff().openings().stream().filter(each -> each.opening() == opening).findFirst();
    row.addAll(cut.map(this::frame).orElse(List.of("", "", "", "", "", "", "")));
    return row;
  }

  private List<String> frame(OpeningCut cut) {
    OpeningCut.Frame frame = cut.frame();
    List<String> row = new ArrayList<>();
    row.add(cut.header().map(FilledPlace::tags).orElse(""));
    row.addAll(
        decimals.of(
            frame.clearance(),
            frame.most(),
            frame.leg(),
            frame.keys(),
            frame.pinLeft(),
            frame.pinRight()));
    return row;
  }

  /** Returns what each opening does to each log of its wall, untouched ones too. */
  PlainTable cuts() {
    List<List<String>> rows = new ArrayList<>();
    for (OpeningCut opening : plan.takeoff().openings()) {
      opening.cuts().forEach(cut -> rows.add(cut(opening, cut)));
    }
    String header = "opening,wall,round,log,cut,depth_#,left_piece_#,right_piece_#,short";
    return new PlainTable("cuts", decimals.header(header), rows);
  }

  private List<String> cut(OpeningCut opening, LogCut cut) {
    List<String> row = new ArrayList<>();
    row.add(opening.opening().name());
    row.addAll(place(cut.log().wall(), cut.log().round(), cut.log().tags()));
    row.add(cut.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    row.add(decimals.one(cut.depth()));
    row.add(cut.sides().map(sides -> decimals.one(sides.left().length())).orElse(""));
    row.add(cut.sides().map(sides -> decimals.one(sides.right().length())).orElse(""));
    row.add(cut.sides().filter(RemainingPieces::tooShort).map(sides -> "short").orElse(""));
    return row;
  }

  private static List<String> place(Wall wall, int round, String tags) {
    return List.of(wall.name(), String.valueOf(round), tags);
  }

  /** Returns the filling of every joint; strip is the chinking of both faces. */
  PlainTable chinking() {
    String header =
        "wall,lower_round,upper_round,run_#,face_least_#,face_most_#,section_#2,face_area_$2,"
            + "gap_$3,strip_$3,widest_#,backer_#";
    return new PlainTable(
        "chinking",
        decimals.header(header.replace("$", bulk.symbol())),
        plan.takeoff().chinking().joints().stream().map(this::fill).toList());
  }

  private List<String> fill(Chinking.Fill fill) {
    Joint joint = fill.joint();
    double side = new Bulk(true).length(1) * 1000;
    double section = decimals.metric() ? fill.section() * side * side : fill.section();
    List<String> row = new ArrayList<>();
    row.add(joint.lower().wall().name());
    row.add(String.valueOf(joint.lower().round()));
    row.add(String.valueOf(joint.upper().round()));
    row.addAll(inches(fill.run(), fill.faceLeast(), fill.faceMost()));
    row.add(Decimals.plain(section));
    row.add(Decimals.plain(bulk.area(fill.faceArea())));
    row.add(Decimals.plain(bulk.volume(fill.gapVolume())));
    row.add(Decimals.plain(bulk.volume(fill.stripVolume())));
    row.addAll(inches(fill.widest()));
    row.add(stock(fill.backer()));
    return row;
  }

  private static String stock(OptionalDouble size) {
    return size.isPresent() ? Decimals.plain(size.getAsDouble()) : "";
  }

  private List<String> inches(double... inches) {
    Length[] lengths = new Length[inches.length];
    for (int i = 0; i < inches.length; i++) {
      lengths[i] = Length.of(inches[i], LengthUnit.INCH);
    }
    return decimals.of(lengths);
  }

  /** Returns the wood of every placed log and its weights. */
  PlainTable wood() {
    String weight = decimals.metric() ? "kg" : "lb";
    String header =
        "wall,round,log,species,sureness,round_$3,sawn_$3,finished_$3,green_%,least_%,most_%,"
            + "service_%,balance_#";
    return new PlainTable(
        "wood",
        decimals.header(header.replace("$", bulk.symbol()).replace("%", weight)),
        plan.takeoff().wood().stream().map(this::piece).toList());
  }

  private List<String> piece(PieceWood wood) {
    List<String> row =
        new ArrayList<>(
            place(wood.log().wall(), wood.log().round(), wood.log().piece().log().tag()));
    row.add(wood.species().species().name());
    row.add(wood.species().sureness().name().toLowerCase(Locale.ROOT));
    for (double volume : new double[] {wood.round(), wood.sawn(), wood.finished()}) {
      row.add(Decimals.plain(bulk.volume(volume)));
    }
    PieceWood.Weights weights = wood.weights();
    for (double pounds :
        new double[] {weights.green(), weights.least(), weights.most(), weights.service()}) {
      row.add(Decimals.plain(bulk.weight(pounds)));
    }
    row.add(decimals.one(wood.balance()));
    return row;
  }

  /** Returns the mill's scale of every log of the tally, a column a rule. */
  PlainTable scale() {
    List<String> header = new ArrayList<>(List.of("log"));
    for (LogRule rule : LogRule.values()) {
      String unit = rule.unit() == LogRule.Unit.BOARD_FEET ? "_bd_ft" : "_ft3";
      header.add(rule.name().toLowerCase(Locale.ROOT) + unit);
    }
    return new PlainTable(
        "scale",
        header,
        plan.takeoff().scale().logs().stream().map(TakeoffTables::scaled).toList());
  }

  private static List<String> scaled(Scaled scaled) {
    List<String> row = new ArrayList<>(List.of(scaled.log().tag()));
    for (LogRule rule : LogRule.values()) {
      row.add(Decimals.plain(scaled.byRule().get(rule)));
    }
    return row;
  }
}
