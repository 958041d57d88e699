package roundbook.report.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundbook.job.Setting;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.live.Readings;
import roundbook.report.mark.BoxRules;
import roundbook.report.mark.ShoulderFall;
import roundbook.stack.Levelling;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * A round's corners, one a row in the order of work: LOWER of the first-laid log, what its top
 * reads, LOWER of the second-laid log, what its top reads; then what a pencil does with them.
 */
final class RoundLevels {
  private static final int LEFT = 25;
  private static final int NAME = 2;
  private static final int LOWER = 2;
  private static final int READ = 3;
  private static final int TICK = 2;
  private static final int ASKED = 4;
  private static final String HOLE = "\u0001";
  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;
  private final List<String> corners;

  RoundLevels(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
    this.corners = live.map().building().corners();
  }

  /** Returns how many corners are read, one a row. */
  int rows() {
    return corners.size();
  }

  /** Puts the boxes right of the table whose heading stands in a row. */
  void put(int top) {
    sheet.merge(across(top, 0, NAME), Cell.text(live.text("round.corner")).role(Role.COLUMN_HEAD));
    head(top, true);
    head(top, false);
    for (int index = 0; index < corners.size(); index++) {
      int row = top + 1 + index;
      String corner = corners.get(index);
      sheet.merge(across(row, 0, NAME), Cell.text(corner).role(Role.COLUMN_HEAD));
      lower(row, corner, true);
      reading(row, corner, true);
      lower(row, corner, false);
      reading(row, corner, false);
    }
    for (boolean first : isLast() ? List.of(true) : List.of(true, false)) {
      int left = LEFT + from(first) + LOWER;
      Area area = new Area(top + 1, left, top + corners.size(), left);
      sheet.rule(BoxRules.of(live, box(first), area));
    }
  }

  /** Returns whether no upper mark is cut on the logs laid second: nothing crosses them. */
  private boolean isLast() {
    return round == live.plan().rounds();
  }

  /** Returns cells of a row, counted from the left edge of the table. */
  private static Area across(int row, int from, int wide) {
    return Area.cell(row, LEFT + from).sized(1, wide);
  }

  /** Returns how far from the left edge the part of one laying order begins. */
  private static int from(boolean first) {
    return first ? NAME : NAME + LOWER + READ;
  }

  /** Puts for which logs a part is, and the height planned for their tops. */
  private void head(int row, boolean first) {
    RoundColumn column = first ? RoundColumn.FIRST_LEVEL : RoundColumn.LEVEL_HEIGHT;
    Stack stack = live.plan().stack();
    Length now = first ? stack.firstLevelHeight(round) : stack.levelHeight(round);
    if (isLast() && !first) {
      String none = live.text("round.corner.head.last", live.names(false));
      Cell head = Cell.text(none).role(Role.COLUMN_HEAD_SHADED);
      sheet.merge(across(row, from(false), LOWER + READ), head);
      return;
    }
    String key = "round.corner.head" + (first ? isLast() ? ".top" : ".first" : "");
    String[] around = live.text(key, live.names(first), HOLE, live.unit().symbol()).split(HOLE, -1);
    String formula =
        String.join(
            "&",
            LiveMath.literal(around[0]),
            live.math().mark(live.map().round(round, column)),
            LiveMath.literal(around[1]));
    Cell cell = Cell.formula(formula, around[0] + live.math().markNow(now) + around[1]);
    sheet.merge(across(row, from(first), LOWER + READ), cell.role(Role.COLUMN_HEAD_SHADED));
  }

  /** Puts the lower mark that a log gets at a corner by the readings before, as text. */
  private void lower(int row, String corner, boolean first) {
    CornerColumn column = first ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    String change = live.map().corner(round, corner, column);
    ShoulderFall fall = new ShoulderFall(live, first, corner);
    String lower = live.map().round(round, RoundColumn.LOWER) + "+" + change + fall.plus();
    String formula = live.math().mark(lower);
    Length chart = live.course(round).notch().lower().plus(fall.more());
    Length now = chart.plus(live.plan().stack().corners().change(round, first, corner));
    Area area = across(row, from(first), LOWER);
    Cell cell = Cell.formula(formula, live.math().markNow(now)).role(Role.RESULT);
    sheet.merge(area, first ? cell : cell.named(CellNames.secondLower(round, corner)));
    sheet.rule(new Rule.LooksLike(area, change + "<>0", Role.CHANGED));
  }

  private void reading(int row, String corner, boolean first) {
    var built = live.plan().job().built();
    Optional<Length> known =
        first ? built.firstReading(round, corner) : built.reading(round, corner);
    Area area = across(row, from(first) + LOWER, READ);
    Cell cell = live.typed(known, box(first).named(round, corner));
    sheet.merge(area, isLast() && !first ? cell.role(Role.SHADED) : cell);
  }

  private static TypedBox box(boolean first) {
    return first ? TypedBox.FIRST_READING : TypedBox.READING;
  }

  /** Puts the rule for a pencil, and the box that says the round is cut. */
  void putRule() {
    int wide = RoundSheets.COLUMNS - ASKED - TICK;
    double width = wide * RoundSheets.COLUMN_WIDTH;
    sheet.nextRow().height(TextHeight.of(pencil(), Role.PLAIN, width));
    sheet.addAcross(wide, Cell.formula(action(), actionNow()).role(Role.PLAIN));
    sheet.addAcross(ASKED, Cell.text(live.text("round.all_cut")).role(Role.LABEL_SMALL));
    int row = sheet.row();
    Area tick = new Area(row, RoundSheets.COLUMNS - TICK + 1, row, RoundSheets.COLUMNS);
    sheet.merge(tick, tick().named(TypedBox.CUT.named(round)));
    sheet.rule(BoxRules.of(live, TypedBox.CUT, Area.cell(row, tick.left())));
  }

  private String pencil() {
    return String.join(" ", pencilLines());
  }

  /** Returns the rule for a pencil in texts short enough for a formula. */
  private List<String> pencilLines() {
    Length tolerance = live.rules().length(Setting.LEVEL_TOLERANCE);
    String most = live.formats().mark(Levelling.mostChange(live.rules()));
    String half = live.formats().mark(tolerance.dividedBy(2));
    int walls = live.walls().size();
    List<String> lines = new ArrayList<>();
    lines.add(
        isLast()
            ? live.text(
                "round.pencil.read.last",
                live.names(true),
                live.names(false),
                walls + corners.size(),
                walls,
                corners.size())
            : live.text(
                "round.pencil.read",
                live.names(false),
                walls + corners.size(),
                walls,
                corners.size()));
    live.readFaces().ifPresent(lines::add);
    lines.add(live.text("round.pencil.level"));
    lines.add(
        isLast()
            ? live.text("round.pencil.lower.last", live.names(false), most, half)
            : live.text("round.pencil.lower", most, half)
                + " "
                + live.text("round.pencil.pare", live.formats().mark(tolerance), half));
    return lines;
  }

  /** Returns the rule for a pencil until all corners are read, then what is to be done. */
  private String action() {
    String rule =
        pencilLines().stream().map(LiveMath::literal).collect(Collectors.joining("&\" \"&"));
    String amounts = live.map().corners(round, CornerColumn.PARE);
    String each = corners.stream().map(this::pared).collect(Collectors.joining("&"));
    String read =
        corners.stream()
            .map(corner -> TypedBox.READING.named(round, corner))
            .collect(Collectors.joining(","));
    return "IF(COUNT("
        + read
        + ")<"
        + corners.size()
        + ","
        + rule
        + ",IF(MAX("
        + amounts
        + ")=0,"
        + LiveMath.literal(live.text("round.pare.none"))
        + "&"
        + new Readings(live, round).height()
        + ","
        + LiveMath.literal(live.text("round.pare", live.names(false)))
        + "&"
        + each
        + "&"
        + LiveMath.literal(live.text("round.pare.again"))
        + ")&"
        + new ReplanAdvice(live, round).formula()
        + ")";
  }

  private String pared(String corner) {
    String amount = live.map().corner(round, corner, CornerColumn.PARE);
    String text = LiveMath.literal(" " + corner + " ") + "&" + live.math().mark(amount);
    return "IF(" + amount + ">0," + text + "&\",\",\"\")";
  }

  private String actionNow() {
    Readings readings = new Readings(live, round);
    if (!readings.complete()) {
      return pencil();
    }
    String each =
        IntStream.range(0, corners.size())
            .filter(index -> !readings.pare(corners.get(index)).isZero())
            .mapToObj(
                index ->
                    " "
                        + corners.get(index)
                        + " "
                        + live.math().markNow(readings.pare(corners.get(index)))
                        + ",")
            .collect(Collectors.joining());
    String pare =
        each.isEmpty()
            ? live.text("round.pare.none") + readings.heightNow()
            : live.text("round.pare", live.names(false)) + each + live.text("round.pare.again");
    return pare + new ReplanAdvice(live, round).now();
  }

  /** Returns the box that says the round is cut. */
  private Cell tick() {
    boolean cut = live.plan().job().built().isCut(round);
    return cut ? Cell.text("x").role(Role.TYPED_IN_TEXT) : Cell.blank(Role.TYPED_IN_TEXT);
  }
}
