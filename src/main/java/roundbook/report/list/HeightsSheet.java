package roundbook.report.list;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import roundbook.job.Building;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.takeoff.Bed;
import roundbook.takeoff.Takeoff;
import roundbook.takeoff.Top;
import roundbook.takeoff.Top.LevelTop;
import roundbook.takeoff.Top.WallTop;
import roundbook.takeoff.Top.WantedHeight;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.CornerLock;
import roundbook.wood.CornerNeck;

/** What the walls stand on, how they end, and how far they come down. */
final class HeightsSheet {
  private static final double[] WIDTHS = ListSheet.grid(24, 4.8);
  private static final double SQUARE_CENTIMETRES = 2.54 * 2.54;

  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;

  private HeightsSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.HEIGHTS, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet; it says so when nothing stands. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new HeightsSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.HEIGHTS);
    Takeoff takeoff = context.plan().takeoff();
    if (takeoff.bed().isEmpty()) {
      return list.text(Role.PLAIN, context.text("heights.none")).build();
    }
    list.text(Role.NOTE, context.text("heights.note", cells.unitWord()));
    bed(takeoff.bed().get());
    top(takeoff.top().orElseThrow());
    new SettlingPart(context, list).write();
    locks();
    return list.build();
  }

  private void bed(Bed bed) {
    list.heading(context.text("heights.bed"));
    String kind = bed.kind().toLowerCase(Locale.ROOT);
    Length lower = stack().courses().get(0).notch().lower();
    list.text(
        Role.PLAIN,
        context.text(
            "heights.bed." + kind,
            walls(true),
            walls(false),
            cells.withUnit(lower),
            cells.withUnit(stack().foundationStep()),
            cells.withUnit(lower.plus(context.rules().gap().dividedBy(2))),
            cells.withUnit(context.rules().gap().dividedBy(2))));
    list.spans(3, 4, 8, 3, 3, 3).headOf("heights.bed.head");
    bed.logs().forEach(under -> list.row(under(under)));
  }

  private List<Cell> under(Bed.Under under) {
    return List.of(
        cells.bold(under.log().wall().name()).align(Cell.Align.CENTRE),
        cells.bold(under.log().tags()).align(Cell.Align.CENTRE),
        cells.text(context.text(under.flat() ? "heights.flat" : "heights.under")),
        room(under.butt()),
        room(under.mid()),
        room(under.tip()));
  }

  /** A crown lower than the foundation would lift the log off its corners: it stands out. */
  private Cell room(Length length) {
    return length.isNegative() ? cells.printed(length).role(Role.FLAG) : cells.printed(length);
  }

  private void top(Top top) {
    list.heading(context.text("heights.top"));
    list.spans(4, 5, 5, 5, 5).headOf("heights.top.head");
    top.walls().forEach(wall -> list.row(wall(wall)));
    String step = cells.withUnit(top.step());
    list.text(Role.PLAIN, context.text("heights.gable", walls(false), walls(true), step));
    list.text(
        Role.PLAIN,
        top.level().map(this::level).orElseGet(() -> context.text("heights.level.none")));
    top.wanted().ifPresent(wanted -> list.text(Role.PLAIN_BOLD, wanted(wanted)));
    candidates();
  }

  /** Names a spare for each plate and for each part log of a level top. */
  private void candidates() {
    List<TopLogs.Candidate> candidates = TopLogs.of(context.plan());
    list.block().text(Role.PLAIN_BOLD, context.text("heights.over"));
    list.spans(3, 5, 4, 4, 8).headOf("heights.over.head");
    candidates.forEach(candidate -> list.row(candidate(candidate)));
  }

  private List<Cell> candidate(TopLogs.Candidate candidate) {
    Optional<Piece> piece = candidate.piece();
    return List.of(
        cells.bold(candidate.wall().name()).align(Cell.Align.CENTRE),
        cells.word(candidate.plate() ? "heights.over.plate" : "heights.over.part"),
        piece
            .map(each -> cells.bold(each.log().tag()).align(Cell.Align.CENTRE))
            .orElseGet(() -> cells.word("heights.over.none")),
        piece.map(each -> cells.printed(each.mid())).orElseGet(() -> cells.centre("–")),
        piece.map(this::cutFrom).orElseGet(() -> cells.centre("–")));
  }

  private Cell cutFrom(Piece piece) {
    return cells.text(
        context.text(
            "heights.over.cut",
            cells.formats().feetInches(piece.cutOffButt()),
            cells.formats().feetInches(piece.trimmed()),
            cells.formats().feetInches(piece.fallsOff())));
  }

  private List<Cell> wall(WallTop top) {
    return List.of(
        cells.bold(top.wall().name()).align(Cell.Align.CENTRE),
        cells.tape(top.centre()),
        cells.tape(top.left()),
        cells.tape(top.middle()),
        cells.tape(top.right()));
  }

  private String level(LevelTop level) {
    boolean below = level.partLog().isNegative();
    boolean thin = level.left().isLessThan(context.rules().length(Setting.SHOULDER_LEAST));
    return level(level, below) + (thin ? context.text("heights.thin") : "");
  }

  private String level(LevelTop level, boolean below) {
    return context.text(
        "heights.level",
        walls(false),
        walls(true),
        cells.withUnit(level.flat()),
        cells.withUnit(level.partLog().absolute()),
        context.text(below ? "heights.below" : "heights.above"),
        cells.formats().feetInches(level.height()),
        cells.withUnit(level.left()));
  }

  /**
   * With sizes fixed, a gap larger by x lowers LOWER by a quarter of it and lifts UPPER by the
   * rest.
   */
  private String wanted(WantedHeight wanted) {
    Length gap = Length.of(wanted.gap(), LengthUnit.INCH);
    Length change = gap.minus(context.rules().gap());
    Length step = context.rules().printStep();
    return context.text(
        wanted.allowed() ? "heights.wanted" : "heights.wanted.no",
        cells.formats().feetInches(wanted.height()),
        cells.formats().feetInches(wanted.now()),
        cells.withUnit(gap.roundedTo(step)),
        signed(change.dividedBy(4).negated()),
        signed(change.times(3).dividedBy(4)));
  }

  private String signed(Length length) {
    Length printed = length.roundedTo(context.rules().printStep());
    return (printed.isNegative() ? "−" : "+") + cells.withUnit(printed.absolute());
  }

  private String walls(boolean laidFirst) {
    return String.join(
        context.text("and"),
        stack().building().walls().stream()
            .filter(wall -> wall.laidFirst() == laidFirst)
            .map(Wall::name)
            .toList());
  }

  private Stack stack() {
    return context.plan().stack();
  }

  /**
   * Tells what holds a corner of each round at its size, as areas for whoever reckons with them.
   */
  private void locks() {
    list.heading(context.text("heights.locks"));
    list.text(Role.NOTE, context.text("heights.locks.note"));
    boolean metric = context.rules().metric();
    list.spans(4, 6, 7, 7).headOf("heights.locks.head", metric ? "cm²" : "in²");
    Map<List<Length>, String> necks = necks();
    for (Course course : stack().courses()) {
      necks.forEach((thick, walls) -> list.row(lock(course, thick.get(0), thick.get(1), walls)));
    }
  }

  /**
   * Returns the walls by their own thickness and that of a wall that crosses them; no names where
   * all are alike.
   */
  private Map<List<Length>, String> necks() {
    Map<List<Length>, String> necks = new LinkedHashMap<>();
    Building building = stack().building();
    for (Wall wall : building.walls()) {
      for (Wall crossing : List.of(building.before(wall), building.after(wall))) {
        String corner = " " + wall.name() + "×" + crossing.name();
        necks.merge(List.of(wall.thickness(), crossing.thickness()), corner, String::concat);
      }
    }
    return necks.size() > 1 ? necks : Map.of(necks.keySet().iterator().next(), "");
  }

  private List<Cell> lock(Course course, Length thick, Length crossing, String walls) {
    boolean metric = context.rules().metric();
    double neck = course.notch().neckHeight().inches();
    double length = crossing.plus(context.rules().overhang()).inches();
    double slope = context.rules().slope().ratio();
    CornerLock lock =
        new CornerLock(
            new CornerNeck(neck, thick.inches(), length, slope, slope),
            course.notch().size().inches());
    return List.of(
        cells.centre(course.round() + walls),
        cells.printed(course.notch().size()),
        area(lock.shoulders(), metric),
        area(lock.slidingIn(crossing.inches()), metric));
  }

  private static Cell area(double squareInches, boolean metric) {
    double shown = squareInches * (metric ? SQUARE_CENTIMETRES : 1);
    return Cell.number(Math.round(shown * 10) / 10.0)
        .role(Role.BODY_CENTRE)
        .format(Cell.Format.DECIMAL_1);
  }
}
