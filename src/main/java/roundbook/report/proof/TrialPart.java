package roundbook.report.proof;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.notch.TrialCorner;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.TypedBox;
import roundbook.report.frame.Cells;
import roundbook.report.frame.ListSheet;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.units.Length;

/** The part on a corner from an offcut: what to saw, and what it must measure. */
final class TrialPart {
  private static final String OFFCUT = "Trial_offcut";
  private static final List<String> BLOCKS = List.of("A1", "B1", "A2", "B2");

  private final LiveContext live;
  private final Cells cells;
  private final ListSheet list;
  private final Wall wall;
  private final Wall crossing;
  private final TrialCorner corner;

  TrialPart(LiveContext live, ListSheet list) {
    this.live = live;
    this.cells = new Cells(live.context());
    this.list = list;
    Building building = live.map().building();
    this.wall = live.walls().stream().filter(Wall::laidFirst).findFirst().orElseThrow();
    this.crossing = building.after(wall);
    this.corner = TrialCorner.of(live.course(1).notch(), wall, crossing, live.rules());
  }

  void write() {
    list.heading(live.text("proof.trial"));
    list.text(
        Role.PLAIN,
        live.text(
            "proof.trial.how",
            cells.withUnit(corner.offcut()),
            each(corner::block),
            each(ofCrossing -> (ofCrossing ? crossing : wall).thickness()),
            each(corner::neck)));
    list.spans(3, 4, 5, 4, 5, 3).headOf("proof.trial.head");
    for (int block = 0; block < BLOCKS.size(); block++) {
      block(block);
    }
    list.spans(12, 4, 5, 3);
    gap();
    check("top", falls(this::topFall));
    check("lower", falls(this::lowerFall));
    check("tight", live.text("proof.trial.is_tight"));
    list.text(Role.PLAIN, pass());
  }

  private void block(int block) {
    boolean ofCrossing = block % 2 == 1;
    String neck = live.map().round(1, RoundColumn.NECK);
    String centre = live.map().round(1, RoundColumn.LOWER) + "+" + block + "*" + neck;
    list.row(
        cells.bold(BLOCKS.get(block)).align(Cell.Align.CENTRE),
        cells.centre(cells.withUnit(corner.block(ofCrossing))),
        live.mark(centre, corner.centre(block), Role.BODY_CENTRE),
        Cell.blank(Role.TICK),
        live.mark((block + 1) + "*" + neck, corner.neckTop(block), Role.BODY_CENTRE),
        Cell.blank(Role.TICK));
  }

  /** The gap between two blocks of one wall: what two necks leave of the offcut's diameter. */
  private void gap() {
    String twice = "2*" + live.map().round(1, RoundColumn.NECK);
    String now = live.math().markNow(corner.gap(Length.ZERO)) + " − Ø";
    String left = live.math().mark(twice + "-" + OFFCUT);
    String formula =
        "IF(ISNUMBER(" + OFFCUT + ")," + left + "," + live.math().mark(twice) + "&\" − Ø\")";
    Area box = Area.cell(list.next(), 13);
    list.row(
        cells.text(live.text("proof.trial.gap")),
        Cell.blank(Role.TYPED_IN).format(live.markFormat()).named(OFFCUT),
        Cell.formula(formula, now).role(Role.BODY_CENTRE),
        Cell.blank(Role.TICK));
    double most = live.number(TypedBox.Entry.DIAMETER.most(live.rules().metric()));
    String text = live.text("proof.trial.box");
    Rule.Advice refusing = Rule.Advice.refusing("Ø", text).prompt(text);
    list.sheet().rule(new Rule.Between(box, 0, most, refusing));
  }

  private void check(String key, String wanted) {
    list.row(
        cells.text(live.text("proof.trial." + key)),
        cells.text(""),
        cells.centre(wanted),
        Cell.blank(Role.TICK));
  }

  /** Returns a length of both kinds of blocks, as one where they are alike. */
  private String each(Function<Boolean, Length> length) {
    return Stream.of(false, true)
        .map(length)
        .map(cells::withUnit)
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  private String falls(Function<Boolean, String> fall) {
    return Stream.of(false, true).map(fall).distinct().collect(Collectors.joining(" / "));
  }

  private String topFall(boolean ofCrossing) {
    Length run = (ofCrossing ? crossing : wall).thickness();
    return fall(corner.topFall(ofCrossing), run);
  }

  private String lowerFall(boolean ofCrossing) {
    return fall(corner.lowerFall(ofCrossing), corner.neck(ofCrossing));
  }

  private String fall(Length fall, Length run) {
    return live.text("proof.trial.fall", live.formats().mark(fall), live.formats().mark(run));
  }

  /** Returns what passes, and what marks that are a little off come to after some contacts. */
  private String pass() {
    boolean metric = live.rules().metric();
    Length height = metric ? Length.ofMillimetres(3) : Length.ofInchFraction(1, 8);
    double mark = metric ? 1.5 : 1.0 / 16;
    int top = 2 * live.plan().rounds() - 1;
    String off = metric ? live.context().words().number("1.5") : "1/16";
    return live.text(
        "proof.trial.pass",
        cells.withUnit(height),
        off + " " + live.unit().symbol(),
        out(mark, 1),
        out(mark, TrialCorner.BLOCKS - 1),
        out(mark, top));
  }

  private String out(double mark, int contacts) {
    boolean metric = live.rules().metric();
    String pattern = metric ? "%.1f" : "%.2f";
    double out = TrialCorner.heightOut(mark, contacts);
    return live.context().words().number(String.format(java.util.Locale.ROOT, pattern, out));
  }
}
