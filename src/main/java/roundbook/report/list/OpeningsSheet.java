package roundbook.report.list;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.rounds.PairMiss;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.LogCut.RemainingPiece;
import roundbook.takeoff.LogCut.RemainingPieces;
import roundbook.takeoff.OpeningCut;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;

/** Doors and windows: as asked for, what they cut, their frames, and short stock beside them. */
final class OpeningsSheet {
  private static final double[] WIDTHS = ListSheet.grid(32, 5.2);

  private final CrewContext context;
  private final Takeoff takeoff;
  private final Cells cells;
  private final ListSheet list;

  private OpeningsSheet(CrewContext context) {
    this.context = context;
    this.takeoff = context.plan().takeoff();
    this.cells = new Cells(context);
    this.list =
        new ListSheet(context, Tab.OPENINGS, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.OPENINGS);
  }

  /** Returns the sheet; it says so when there are no openings. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new OpeningsSheet(context).sheet());
  }

  private Sheet sheet() {
    if (context.plan().job().openings().isEmpty()) {
      return list.text(Role.PLAIN, context.text("openings.none")).build();
    }
    asked();
    if (!takeoff.openings().isEmpty()) {
      list.text(Role.CAUTION, context.text("openings.caution"));
      cuts();
      frames();
      shortStock();
    }
    return list.build();
  }

  private void asked() {
    list.text(Role.NOTE, context.text("openings.note", cells.unitWord()));
    Building building = context.plan().job().building();
    context.plan().job().openings().stream()
        .flatMap(opening -> building.wall(opening.wall()).stream())
        .filter(wall -> building.isTee(wall, false))
        .distinct()
        .forEach(
            wall -> {
              String into = building.after(wall).name();
              list.text(Role.NOTE, context.text("openings.left_in", wall.name(), into));
            });
    list.spans(5, 2, 3, 3, 3, 3, 5, 8).headOf("openings.head");
    for (Opening opening : context.plan().job().openings()) {
      list.row(
          cells.bold(opening.name()),
          cells.centre(opening.wall()),
          cells.exact(opening.toldLeft(building)),
          cells.exact(opening.width()),
          cells.exact(opening.sill()),
          cells.exact(opening.head()),
          cells.word(opening.shortLogs() ? "openings.short" : "openings.after"),
          cells.text(remarks(opening)));
    }
  }

  /** Returns the heights over the floor and the leaf, where they are told, and the remarks. */
  private String remarks(Opening opening) {
    Stream<String> floor =
        context.rules().optionalLength(Setting.FLOOR_HEIGHT).stream()
            .map(
                height ->
                    context.text(
                        "openings.over_floor",
                        over(opening.sill(), height),
                        over(opening.head(), height)));
    Stream<String> leaf =
        opening.leaf().stream().map(each -> context.text("openings.leaf", sides(each)));
    return Stream.of(floor, leaf, Stream.of(opening.remarks()))
        .flatMap(parts -> parts)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private String over(Length height, Length floor) {
    Length over = height.minus(floor);
    return (over.isNegative() ? "−" : "") + cells.withUnit(over.absolute());
  }

  private String sides(Leaf leaf) {
    return cells.formats().mark(leaf.width()) + " × " + cells.withUnit(leaf.height());
  }

  private void cuts() {
    list.heading(context.text("openings.cuts"));
    list.text(Role.NOTE, context.text("openings.cuts.note"));
    list.spans(5, 2, 4, 6, 3, 4, 4, 4).headOf("openings.cuts.head");
    for (OpeningCut opening : takeoff.openings()) {
      opening.cut().forEach(cut -> list.row(cut(opening, cut)));
      untouched(opening);
    }
  }

  private List<Cell> cut(OpeningCut opening, LogCut cut) {
    Optional<RemainingPieces> sides = cut.sides();
    boolean header = opening.header().filter(cut.log()::equals).isPresent();
    return List.of(
        cells.text(named(opening)),
        cells.count(cut.log().round()),
        cells.bold(cut.log().tags()).align(Cell.Align.CENTRE),
        cells.text(kind(cut)),
        cells.printed(cut.depth()),
        sides.map(each -> side(each.left())).orElseGet(() -> cells.centre("–")),
        sides.map(each -> side(each.right())).orElseGet(() -> cells.centre("–")),
        header ? cells.word("openings.is_header") : cells.text(""));
  }

  private Cell side(RemainingPiece side) {
    String tape = cells.formats().feetInches(side.length());
    return side.tooShort()
        ? Cell.text("▲ " + tape).role(Role.FLAG)
        : cells.bold(tape).align(Cell.Align.CENTRE);
  }

  private String kind(LogCut cut) {
    return context.text("openings.kind." + cut.kind().name().toLowerCase(Locale.ROOT));
  }

  private String named(OpeningCut opening) {
    return context.text("openings.named", opening.opening().name(), opening.wall().name());
  }

  private void untouched(OpeningCut opening) {
    String rounds =
        opening.of(CutExtent.UNTOUCHED).stream()
            .map(cut -> String.valueOf(cut.log().round()))
            .collect(Collectors.joining(", "));
    if (!rounds.isEmpty()) {
      list.text(Role.PLAIN, context.text("openings.untouched", named(opening), rounds));
    }
  }

  private void frames() {
    list.heading(context.text("openings.frames"));
    list.text(Role.NOTE, context.text("openings.frames.note"));
    list.spans(5, 4, 3, 3, 3, 3, 3, 8).headOf("openings.frames.head");
    takeoff.openings().forEach(opening -> list.row(frame(opening)));
  }

  private List<Cell> frame(OpeningCut opening) {
    OpeningCut.Frame frame = opening.frame();
    return List.of(
        cells.text(named(opening)),
        opening
            .header()
            .map(log -> cells.bold(context.text("openings.header", log.tags(), log.round())))
            .orElseGet(() -> Cell.text(context.text("openings.no_header")).role(Role.FLAG)),
        cells.centre(cells.withUnit(frame.clearance())),
        cells.bold(cells.withUnit(frame.most())).align(Cell.Align.CENTRE),
        cells.tape(frame.leg()),
        cells.centre(
            (frame.sillPiece() ? "2 × " : "1 × ") + cells.formats().feetInches(frame.across())),
        clear(opening),
        cells.text(
            context.text(
                "openings.pins",
                cells.formats().feetInches(frame.pinLeft()),
                cells.formats().feetInches(frame.pinRight()))));
  }

  /** Returns what is left between the bucks; it stands out where the leaf does not go in. */
  private Cell clear(OpeningCut opening) {
    Cell cell = cells.bold(sides(opening.frame().clear())).align(Cell.Align.CENTRE);
    return opening.wanted().isPresent() ? cell.role(Role.FLAG) : cell;
  }

  private void shortStock() {
    boolean asked = context.plan().job().openings().stream().anyMatch(Opening::shortLogs);
    if (!asked) {
      return;
    }
    List<PiecePlan> pairs =
        context.plan().pieces().stream().filter(each -> !each.halves().isEmpty()).toList();
    list.heading(context.text("openings.stock"));
    if (!pairs.isEmpty()) {
      list.text(Role.NOTE, context.text("openings.stock.note"));
      list.spans(7, 3, 5, 6, 5, 6).headOf("openings.stock.head");
      pairs.forEach(pair -> list.row(stock(pair)));
    }
    takeoff.openings().stream().filter(each -> each.opening().shortLogs()).forEach(this::whole);
  }

  /** Says where whole logs lie all the same, to be cut after stacking. */
  private void whole(OpeningCut opening) {
    String rounds =
        opening.of(CutExtent.THROUGH).stream()
            .filter(cut -> !cut.log().isShared())
            .map(cut -> String.valueOf(cut.log().round()))
            .collect(Collectors.joining(", "));
    if (!rounds.isEmpty()) {
      String near = near(opening).map(this::near).orElse(context.text("openings.near.none"));
      list.text(Role.PLAIN, context.text("openings.stock.whole", named(opening), rounds, near));
    }
  }

  /** Returns the pair that comes nearest at an opening; empty where there are no two logs. */
  private Optional<PairMiss> near(OpeningCut opening) {
    return context.plan().nearPairs().stream()
        .filter(
            miss ->
                opening.of(CutExtent.THROUGH).stream()
                    .anyMatch(cut -> cut.log().place().equals(miss.pair().place())))
        .min(Comparator.naturalOrder());
  }

  private String near(PairMiss miss) {
    String kept = miss.flagged() ? "openings.near.end" : "openings.near.keeps";
    String what = miss.gap().map(gap -> gap(gap, miss.pair())).orElseGet(() -> context.text(kept));
    return context.text("openings.near", miss.pair().tags(), miss.pair().round(), what);
  }

  private String gap(PairMiss.Gap gap, FilledPlace pair) {
    Joint.Beyond beyond = gap.beyond();
    PlacedLog left = pair.first();
    PlacedLog right = pair.logs().get(1);
    String where =
        !beyond.at().isMoreThan(left.to())
            ? "left"
            : beyond.at().isLessThan(right.fromLeft()) ? "middle" : "right";
    return context.text(
        "openings.near." + (gap.over() ? "over" : "under") + (beyond.under() ? ".least" : ".most"),
        context.text("openings.near." + where),
        cells.withUnit(beyond.by()));
  }

  private List<Cell> stock(PiecePlan pair) {
    PiecePlan.Half left = pair.halves().get(0);
    PiecePlan.Half right = pair.halves().get(1);
    String wall = left.placed().wall().name();
    return List.of(
        cells.text(context.text("openings.named", left.opening(), wall)),
        cells.count(left.placed().round()),
        tag(left),
        half(left),
        tag(right),
        half(right));
  }

  private Cell tag(PiecePlan.Half half) {
    return cells.bold(half.placed().piece().log().tag()).align(Cell.Align.CENTRE);
  }

  private Cell half(PiecePlan.Half half) {
    String key = half.buttOut() ? "openings.butt_out" : "openings.butt_in";
    String length = cells.formats().feetInches(half.placed().piece().trimmed());
    return cells.centre(context.text(key, length));
  }
}
