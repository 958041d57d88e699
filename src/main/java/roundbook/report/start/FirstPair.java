package roundbook.report.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.picture.canvas.Picture;
import roundbook.plan.Junction;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Note;
import roundbook.plan.Plan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Drawn;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMath;
import roundbook.report.mark.LowerMarks;
import roundbook.report.mark.PieceCells;
import roundbook.report.mark.PieceCells.LiveLength;
import roundbook.report.mark.Squareness;
import roundbook.report.proof.ProofSheet;
import roundbook.units.Length;

/**
 * The part of the first page on what comes next: the foundation and the first two logs, or, where
 * rounds are cut, the round in hand and its first pair.
 */
final class FirstPair {
  private static final double FOUNDATION = 114;
  private static final double FOUNDATION_WIDE = 2.95;
  private static final int BESIDE = 14;

  /** Room for two lines, for a mark may come to differ from end to end. */
  private static final double ROW_HEIGHT = 22;

  /** Room for three lines, where one end is level on top. */
  private static final double LEVEL_HEIGHT = 36;

  private final CrewContext context;
  private final Plan plan;
  private final Cells cells;
  private final ListSheet list;
  private final int round;
  private int step;

  FirstPair(CrewContext context, ListSheet list) {
    this.context = context;
    this.plan = context.plan();
    this.cells = new Cells(context);
    this.list = list;
    this.round = plan.job().built().rounds() + 1;
  }

  void write() {
    steps();
    if (round <= plan.rounds()) {
      pickUp();
    }
    square();
  }

  /**
   * Writes before anything else, until a round is cut, how high the foundation is under each wall,
   * with a drawing that has the numbers at all four corners.
   */
  void foundation() {
    if (round > 1) {
      return;
    }
    Length step = plan.takeoff().bed().orElseThrow().step();
    boolean held = context.rules().optionalLength(Setting.FOUNDATION_STEP).isPresent();
    String key = step.isZero() ? "level" : held ? "held" : "step";
    String heights =
        context.text(
            "start.foundation." + key,
            walls(true),
            walls(false),
            cells.withUnit(step),
            Tab.SETTINGS.in(context.words()));
    list.heading(context.text("start.foundation"));
    Drawn drawn = new Drawn(context, list.sheet());
    List<Picture> pictures = drawn.made(() -> List.of(drawn.drawings().foundation(step)));
    if (pictures.isEmpty()) {
      list.text(Role.PLAIN_BOLD, heights).text(Role.PLAIN, bed());
      return;
    }
    Cell text = Cell.text(heights + "\n" + bed()).role(Role.PLAIN_BOLD);
    list.spans(BESIDE, 24 - BESIDE).row(FOUNDATION, List.of(text, Cell.blank(Role.PLAIN)));
    drawn.layAt(pictures.get(0), Area.cell(list.next() - 1, BESIDE + 1), FOUNDATION_WIDE);
  }

  private void steps() {
    list.heading(context.text("start.steps"));
    list.spans(2, 17, 5).headOf("start.steps.head");
    step(context.text("step.cautions"), "");
    step(context.text("step.problems"), cells.word("start.above"));
    if (round == 1) {
      step(context.text("step.square"), "");
      if (ProofSheet.has(plan)) {
        step(context.text("step.proof"), Tab.PROOF.in(context.words()));
      }
    } else if (!plan.job().built().isRead(round - 1, plan.job().building())) {
      step(context.text("step.corners", round - 1), Tab.ofRound(context.words(), round - 1));
    }
    if (round <= plan.rounds()) {
      cutAndSet();
    } else {
      step(context.text("step.done"), Tab.HEIGHTS.in(context.words()));
    }
  }

  private void cutAndSet() {
    if (isMeasured()) {
      ahead("step.ahead.then").ifPresent(then -> step(then, Tab.HEWING.in(context.words())));
    } else {
      String tags = tags(plan.round(round));
      step(context.text("step.hew", tags, round), Tab.HEWING.in(context.words()));
      String ahead = ahead("step.ahead").map(" "::concat).orElse("");
      step(context.text("step.measure") + ahead, page());
    }
    step(context.text("step.mark", tags(firstPair())), page());
    boolean last = round == plan.rounds();
    step(context.text(last ? "step.last" : "step.next", round, round + 1), page());
  }

  /** Returns whether the middles of all logs of the round are known as hewn. */
  private boolean isMeasured() {
    return plan.round(round).stream()
        .allMatch(piece -> piece.placed().isMeasured(plan.job().built()));
  }

  /** Returns what hewing the next round too is worth; nothing where there is none. */
  private Optional<String> ahead(String key) {
    return Optional.of(round + 1)
        .filter(next -> next <= plan.rounds())
        .map(next -> context.text(key, next, Tab.LOG_LIST.in(context.words())));
  }

  private String page() {
    return Tab.ofRound(context.words(), round);
  }

  private void step(String what, String tab) {
    step(what, tab.isEmpty() ? cells.word("start.below") : cells.linkForCrew(tab));
  }

  private void step(String what, Cell where) {
    step++;
    list.row(cells.count(step), cells.text(what), where);
  }

  /** Returns what stands under the first logs, and by how much the second pair lies higher. */
  private String bed() {
    String bed = context.rules().text(Setting.FIRST_BED).toLowerCase(Locale.ROOT);
    Notch notch = plan.stack().courses().get(0).notch();
    Length filler = notch.lower().plus(context.rules().gap().dividedBy(2));
    return context.text(
        "step.bed." + (List.of("starter", "level").contains(bed) ? bed : "flat"),
        walls(true),
        walls(false),
        cells.withUnit(plan.stack().foundationStep()),
        cells.withUnit(filler));
  }

  private String walls(boolean laidFirst) {
    return plan.job().building().walls().stream()
        .filter(wall -> wall.laidFirst() == laidFirst)
        .map(Wall::name)
        .collect(Collectors.joining(context.text("and")));
  }

  private static String tags(List<PiecePlan> pieces) {
    return pieces.stream()
        .map(piece -> piece.placed().wall().name() + " = " + piece.placed().tags())
        .collect(Collectors.joining(", "));
  }

  /** Returns the placed logs of the walls that are laid first in the round in hand. */
  private List<PiecePlan> firstPair() {
    return plan.round(round).stream().filter(piece -> piece.placed().wall().laidFirst()).toList();
  }

  private void pickUp() {
    list.heading(context.text("start.first"));
    list.spans(2, 2, 2, 2, 2, 3, 3, 2, 2, 2, 2).headOf("start.first.head");
    for (PiecePlan piece : firstPair()) {
      list.row(hasLevelEnd(piece) ? LEVEL_HEIGHT : ROW_HEIGHT, pickUp(piece));
    }
    list.text(Role.PLAIN, context.text("start.first.note", context.rules().slope(), round));
    notes();
  }

  private List<Cell> pickUp(PiecePlan piece) {
    PieceCells live = new PieceCells(LiveContext.of(context), piece);
    LowerMarks lower = new LowerMarks(LiveContext.of(context), piece);
    return List.of(
        cells.bold(piece.placed().wall().name()).align(Cell.Align.CENTRE),
        live.tag(Role.BODY_BOLD),
        cells.bold("● " + piece.buttAt()).align(Cell.Align.CENTRE),
        live.offButt(Role.BODY_CENTRE),
        cells.tape(piece.nearShoulder()),
        cells.tape(piece.farShoulder()),
        cells.bold(cells.formats().feetInches(piece.placed().trimmed())).align(Cell.Align.CENTRE),
        live.printed(live.upperInside()),
        outside(live),
        lower(lower, lower.shoulder(true), lower.shoulder(false)),
        live.flatBed()
            ? cells.word("start.flat")
            : lower(lower, lower.cornerLine(true), lower.cornerLine(false)));
  }

  private boolean hasLevelEnd(PiecePlan piece) {
    return new PieceCells(LiveContext.of(context), piece).levelEnds().size() == 1;
  }

  /** Returns the upper mark on the outside face; under it that of an end which is level on top. */
  private Cell outside(PieceCells live) {
    if (live.levelEnds().size() != 1) {
      return live.printed(live.upperOutside());
    }
    String level = context.text("start.level", live.levelEnds().get(0));
    String formula =
        String.join(
            "&CHAR(10)&",
            mark(live, live.upperOutside()),
            LiveMath.literal(level),
            mark(live, live.upperInside()));
    String now =
        String.join(
            "\n",
            cells.formats().mark(live.upperOutside().now()),
            level,
            cells.formats().mark(live.upperInside().now()));
    return Cell.formula(formula, now).role(Role.BODY_CENTRE);
  }

  private static String mark(PieceCells live, LiveLength length) {
    return live.live().math().mark(live.live().toStep(length.formula()));
  }

  /**
   * Returns where the upper marks of a log differ from its row: a level end, its saddles; blank for
   * most.
   */
  private String alongTop(PiecePlan piece) {
    List<String> said = new ArrayList<>();
    if (hasLevelEnd(piece)) {
      PieceCells live = new PieceCells(LiveContext.of(context), piece);
      said.add(context.text("start.level.note", live.levelEnds().get(0)));
    }
    for (Junction junction :
        Junction.crossings(plan.stack(), plan.stack().courses().get(round - 1))) {
      if (piece.placed().logs().contains(junction.through())) {
        said.add(
            context.text(
                "start.saddle",
                junction.wall().wall().name(),
                cells.formats().feetInches(junction.from()),
                cells.formats().feetInches(junction.to())));
      }
    }
    if (!said.isEmpty()) {
      said.add(context.text("start.saddle.page", page()));
    }
    return String.join(" ", said);
  }

  /** Returns a lower mark: one, or one for each end where they differ, one over the other. */
  private static Cell lower(LowerMarks marks, LiveLength butt, LiveLength tip) {
    return Cell.formula(marks.both(butt, tip, "CHAR(10)"), marks.bothNow(butt, tip, "\n"))
        .role(Role.BODY_CENTRE);
  }

  /** Writes what is special about the first logs, what is of the same logs together. */
  private void notes() {
    Map<String, List<PiecePlan>> logs = new LinkedHashMap<>();
    for (PiecePlan piece : firstPair()) {
      String along = alongTop(piece);
      if (!along.isEmpty()) {
        logs.computeIfAbsent(along, of -> new ArrayList<>()).add(piece);
      }
      for (Note note : piece.notes()) {
        logs.computeIfAbsent(said(piece, note), said -> new ArrayList<>()).add(piece);
      }
    }
    Map<String, String> lines = new LinkedHashMap<>();
    logs.forEach((said, of) -> lines.merge(tags(of), said, (one, more) -> one + " " + more));
    lines.forEach((of, said) -> list.text(Role.PLAIN, context.text("start.note", of, said)));
  }

  private String said(PiecePlan piece, Note note) {
    String said = context.end(piece, note == Note.BUTT_THIN);
    return context.text("note." + note.name().toLowerCase(Locale.ROOT), said);
  }

  private void square() {
    list.heading(context.text("start.square"));
    List<Squareness> squares = Squareness.of(plan.job().building());
    if (squares.isEmpty()) {
      list.text(Role.PLAIN, context.text("start.square.corners"));
      return;
    }
    list.spans(6, 4, 4, 4, 6).headOf("start.square.head");
    for (Squareness square : squares) {
      diagonal("outside", square.pen(), square.outside());
      diagonal("inside", square.pen(), square.inside());
    }
    list.text(Role.PLAIN, context.text("start.square.note", cells.unitWord()));
  }

  private void diagonal(String which, int pen, Length length) {
    String name = "Diagonal_" + which + (pen > 1 ? "_of_" + pen : "");
    String one = name + "_1";
    String other = name + "_2";
    String difference = "ABS(" + one + "-" + other + ")";
    list.row(
        cells.bold(
            (context.text("start.square." + which) + " " + LiveContext.of(context).pen(pen))
                .strip()),
        cells.tape(length),
        Cell.blank(Role.TYPED_IN).named(one),
        Cell.blank(Role.TYPED_IN).named(other),
        Cell.formula("IF(COUNT(" + one + "," + other + ")=2," + difference + ",\"\")", "")
            .role(Role.RESULT)
            .format(LiveContext.of(context).markFormat())
            .named(name + "_difference"));
  }
}
