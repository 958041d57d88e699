package roundbook.report.list;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMath;
import roundbook.units.Length;

/** Heights of every round for a story pole, the highest on top as on the pole. */
final class StoryPoleSheet {
  private static final double[] WIDTHS = {10, 21, 21, 21, 21};

  private StoryPoleSheet() {}

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    ListSheet list =
        new ListSheet(context, Tab.STORY_POLE, context.page(PageKind.TABLE), WIDTHS)
            .title(Tab.STORY_POLE)
            .text(Role.PLAIN, context.text("story_pole.note"));
    LiveContext live = LiveContext.of(context);
    live.readFaces().ifPresent(faces -> list.text(Role.PLAIN, faces));
    list.head(
        context.text("story_pole.round"),
        context.text("story_pole.centre", walls(context, true)),
        context.text("story_pole.centre", walls(context, false)),
        context.text("story_pole.seat", walls(context, false)),
        context.text("story_pole.marked"));
    for (int round = context.plan().rounds(); round >= 1; round--) {
      list.row(row(live, new Cells(context), round));
    }
    return List.of(list.build());
  }

  private static List<Cell> row(LiveContext live, Cells cells, int round) {
    Length first = live.plan().stack().firstHeights().get(round - 1);
    Length second = live.plan().stack().secondHeights().get(round - 1);
    Length seat = live.plan().stack().levelHeight(round);
    return List.of(
        cells.count(round).role(Role.LARGE),
        live.tape(live.map().round(round, RoundColumn.FIRST_HEIGHT), first, Role.BODY_CENTRE),
        live.tape(live.map().round(round, RoundColumn.SECOND_HEIGHT), second, Role.BODY_CENTRE),
        round == live.plan().rounds()
            ? firstSeat(live, round)
            : live.tape(live.map().round(round, RoundColumn.LEVEL_HEIGHT), seat, Role.BODY_BOLD)
                .align(Cell.Align.CENTRE),
        Cell.blank(Role.TICK));
  }

  /** Returns what is read in the last round: the seats of the logs laid first, with their walls. */
  private static Cell firstSeat(LiveContext live, int round) {
    String walls = walls(live.context(), true) + " ";
    String seat = live.math().tape(live.map().round(round, RoundColumn.FIRST_LEVEL));
    Length now = live.plan().stack().firstLevelHeight(round);
    return Cell.formula(LiveMath.literal(walls) + "&" + seat, walls + live.math().tapeNow(now))
        .role(Role.BODY_BOLD)
        .align(Cell.Align.CENTRE);
  }

  private static String walls(CrewContext context, boolean first) {
    return context.plan().job().building().walls().stream()
        .filter(wall -> wall.laidFirst() == first)
        .map(Wall::name)
        .collect(Collectors.joining(" "));
  }
}
