package roundbook.report.live;

import java.util.Map;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.stack.EndFit;
import roundbook.stack.Levelling;
import roundbook.units.Length;

/** The rules and walls that the formulas of the crew workbook refer to. */
final class LiveRules {
  private static final Map<RuleLine, Setting> LENGTHS =
      Map.of(
          RuleLine.GAP, Setting.CHINKING_GAP,
          RuleLine.SIZE_STEP, Setting.SIZE_STEP,
          RuleLine.PRINT_STEP, Setting.PRINT_STEP,
          RuleLine.OVERHANG, Setting.OVERHANG,
          RuleLine.SQUARING, Setting.SQUARING_ALLOWANCE,
          RuleLine.GAP_LEAST, Setting.GAP_LEAST,
          RuleLine.GAP_MOST, Setting.GAP_MOST,
          RuleLine.TOLERANCE, Setting.LEVEL_TOLERANCE,
          RuleLine.SHOULDER_LEAST, Setting.SHOULDER_LEAST,
          RuleLine.NECK_LEAST, Setting.NECK_LEAST);

  private final LiveContext live;

  LiveRules(LiveContext live) {
    this.live = live;
  }

  /** Puts both tables on the working sheet. */
  void put(SheetBuilder sheet) {
    for (RuleLine line : RuleLine.values()) {
      sheet.row(live.map().ruleRow(line)).add(Cell.text(label(line))).add(value(line));
    }
    sheet.row(live.map().wallHeadRow());
    for (WallColumn column : WallColumn.values()) {
      sheet.add(LiveHeads.of(live, "wall", column));
    }
    for (Wall wall : live.walls()) {
      wall(sheet.nextRow(), wall);
    }
  }

  /** Returns what stands before a rule. */
  private String label(RuleLine line) {
    Setting setting = LENGTHS.get(line);
    if (setting != null) {
      return setting.label();
    }
    return line == RuleLine.MOST_CHANGE
        ? live.text("working.most_change")
        : Setting.valueOf(line.name()).label();
  }

  /** Returns a rule's value in the job's unit. */
  private Cell value(RuleLine line) {
    Cell cell =
        switch (line) {
          case SLOPE_RUN -> Cell.number(live.rules().number(Setting.SLOPE_RUN).doubleValue());
          case BEARING_LOOK -> Cell.number(EndFit.limits(live.rules()).look());
          case BEARING_STOP -> Cell.number(EndFit.limits(live.rules()).stop());
          case MOST_CHANGE -> Cell.length(Levelling.mostChange(live.rules()), live.unit());
          default -> Cell.length(live.rules().length(LENGTHS.get(line)), live.unit());
        };
    return cell.role(Role.HELPER);
  }

  /** Writes one wall: name, thickness, drop of its necks rounded once, trimmed length. */
  private void wall(SheetBuilder sheet, Wall wall) {
    Length trimmed = live.map().building().trimmed(wall, live.rules().overhang());
    String drop =
        live.map().wall(wall, WallColumn.THICKNESS) + "/" + live.map().rule(RuleLine.SLOPE_RUN);
    Length now = live.rules().slope().dropOver(wall.thickness());
    sheet
        .add(Cell.text(wall.name()))
        .add(Cell.length(wall.thickness(), live.unit()).role(Role.HELPER))
        .add(live.printed(drop, now, Role.HELPER))
        .add(Cell.length(trimmed, live.unit()).role(Role.HELPER));
  }
}
