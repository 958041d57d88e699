package roundbook.report.round;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.notch.NeckFit.Fault;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveEnds;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMath;

/** The line that says which ends of a round's logs do not hold all their marks. */
final class RoundEnds {
  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;

  RoundEnds(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
  }

  /**
   * Puts the line in the current row, so many columns wide; it turns black when an end is weak or a
   * log wrong.
   */
  void put(int columns) {
    Area line = Area.cell(sheet.row(), 1).sized(1, columns);
    sheet.merge(line, Cell.formula(formula(), now()).role(Role.BODY));
    String weak = "SUM(" + live.map().pieces(round, PieceColumn.WEAK) + ")>0";
    String wrong = "MIN(" + live.map().pieces(round, PieceColumn.SOURCE) + ")<0";
    sheet.rule(new Rule.LooksLike(line, "OR(" + weak + "," + wrong + ")", Role.FLAG));
  }

  /** Returns what the line says as planned. */
  String now() {
    LiveEnds ends = new LiveEnds(live);
    String said =
        live.plan().round(round).stream().map(ends::saidNow).collect(Collectors.joining());
    return said.isEmpty() ? live.text("round.ends_hold") : live.text("round.ends", said);
  }

  /** Returns the longest that the line is likely to say: every tip lacks wood for every mark. */
  String likely() {
    String faults =
        Stream.of(Fault.SHOULDER_THIN, Fault.BEARING_WANEY, Fault.TAIL_WANEY)
            .map(fault -> LiveEnds.words(live.context(), fault))
            .collect(Collectors.joining(" + "));
    String tip = live.text("live.tip") + " " + faults;
    String said =
        live.walls().stream()
            .map(wall -> live.text("live.ends", wall.name(), tip))
            .collect(Collectors.joining());
    return live.text("round.ends", said);
  }

  /** Returns the formula of the line. */
  private String formula() {
    List<PiecePlan> pieces = live.plan().round(round);
    String said =
        pieces.stream()
            .map(piece -> live.map().piece(round, piece.placed().wall(), PieceColumn.SAID))
            .collect(Collectors.joining("&"));
    return "IF("
        + said
        + "=\"\","
        + LiveMath.literal(live.text("round.ends_hold"))
        + ","
        + LiveMath.literal(live.text("round.ends", ""))
        + "&"
        + said
        + ")";
  }
}
