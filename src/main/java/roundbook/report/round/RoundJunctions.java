package roundbook.report.round;

import java.util.List;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.plan.Junction;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.units.Length;

/**
 * What is marked where a partition crosses a log in mid-wall: the saddle from the squared butt, and
 * which lines are level. A row for each crossing of the round.
 */
final class RoundJunctions {
  private static final double HEAD_HEIGHT = 42;
  private static final double ROW_HEIGHT = 20;
  private static final int NAME = 3;
  private static final int LOG = 5;
  private static final int SADDLE = 8;
  private static final int MARK = 3;

  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;

  RoundJunctions(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
  }

  /** Puts the table under the current row; nothing where no partition stands. */
  void put() {
    List<Junction> crossings = Junction.crossings(live.plan().stack(), live.course(round));
    if (crossings.isEmpty()) {
      return;
    }
    sheet.nextRow().height(HEAD_HEIGHT);
    head(NAME, "place");
    head(LOG, "through");
    head(SADDLE, "saddle");
    head(MARK, "upper_inside");
    head(MARK, "upper_outside");
    head(MARK, "lower");
    head(LOG, "partition");
    head(MARK, "upper_level");
    head(MARK, "lower_shoulder");
    crossings.forEach(this::row);
    String note = note(crossings);
    double wide = RoundSheets.COLUMNS * RoundSheets.COLUMN_WIDTH;
    sheet.nextRow().height(TextHeight.of(note, Role.CAUTION, wide));
    sheet.addAcross(RoundSheets.COLUMNS, Cell.text(note).role(Role.CAUTION));
  }

  /** Returns what is sawn, and of a wing's ends which way they fall. */
  private String note(List<Junction> crossings) {
    String note = live.text("junction.note");
    boolean tee = crossings.stream().anyMatch(each -> each.kind() == Junction.Kind.TEE);
    String key = live.rules().drains() ? "junction.note.drain" : "junction.note.hook";
    return tee ? note + " " + live.text(key) : note;
  }

  private void head(int span, String what) {
    sheet.addAcross(
        span, Cell.text(live.text("junction.head." + what)).role(Role.COLUMN_HEAD_SHADED));
  }

  private void row(Junction junction) {
    Wall through = junction.through().wall();
    Wall partition = junction.wall().wall();
    String upper = live.map().round(round, RoundColumn.UPPER);
    String drop = live.map().wall(through, WallColumn.DROP);
    sheet.nextRow().height(ROW_HEIGHT);
    sheet.addAcross(
        NAME, Cell.text(junction.corner()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE));
    sheet.addAcross(LOG, log(through, junction.through().piece().log().tag()));
    String saddle =
        live.text(
            "junction.saddle",
            live.math().tapeNow(junction.from()),
            live.math().tapeNow(junction.to()));
    sheet.addAcross(SADDLE, Cell.text(saddle).role(Role.BODY_BOLD).align(Cell.Align.CENTRE));
    boolean tee = junction.kind() == Junction.Kind.TEE;
    boolean hooks = tee && !live.rules().drains();
    String fallen = through.isPartition() ? upper : upper + "-" + drop;
    boolean none = junction.upper().isEmpty();
    mark(none, hooks ? fallen : upper, junction.upper().orElse(Length.ZERO));
    mark(none, hooks ? upper : fallen, junction.upperOutside().orElse(Length.ZERO));
    mark(
        junction.lower().isEmpty(),
        lower(through, junction.corner()),
        junction.lower().orElse(Length.ZERO));
    sheet.addAcross(LOG, log(partition, junction.wall().piece().log().tag()));
    boolean last = round == live.plan().rounds() && !partition.laidFirst();
    mark(last, upper, live.course(round).notch().upper());
    boolean flat =
        live.piece(round, partition).notes().contains(roundbook.plan.PiecePlan.Note.BED_FLAT);
    boolean deeper = tee && !hooks;
    Length more = deeper ? live.course(round).notch().drop(through.thickness()) : Length.ZERO;
    mark(
        flat,
        lower(partition, junction.corner()) + (deeper ? "+" + drop : ""),
        lowerNow(partition, junction.corner()).plus(more));
  }

  /**
   * Returns the lower mark of a log at a corner: the chart's and what the corner is put right by.
   */
  private String lower(Wall wall, String corner) {
    CornerColumn column = wall.laidFirst() ? CornerColumn.CHANGE : CornerColumn.SECOND_CHANGE;
    return live.map().round(round, RoundColumn.LOWER)
        + "+"
        + live.map().corner(round, corner, column);
  }

  private Length lowerNow(Wall wall, String corner) {
    Length change = live.plan().stack().corners().change(round, wall.laidFirst(), corner);
    return live.course(round).notch().lower().plus(change);
  }

  private Cell log(Wall wall, String tag) {
    return Cell.text(wall.name() + " = " + tag).role(Role.BODY_CENTRE);
  }

  private void mark(boolean none, String formula, Length now) {
    sheet.addAcross(
        MARK,
        none
            ? Cell.text("–").role(Role.BODY_CENTRE)
            : live.printed(formula, now, Role.BODY_CENTRE));
  }
}
