package roundbook.report.round;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.notch.NeckFit;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveEnds;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMath;
import roundbook.units.Length;

/** The line that says what the ends of a round's logs lose under their marks. */
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
   * Puts the line in the current row, so many columns wide; it turns black when an end is flagged
   * or a log wrong.
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
        live.plan().round(round).stream().map(ends::sentenceNow).collect(Collectors.joining());
    return said.isEmpty() ? normalNow() : live.text("round.ends", said);
  }

  private String normalNow() {
    List<NeckFit> ends =
        live.plan().round(round).stream()
            .flatMap(piece -> Stream.of(piece.buttFit(), piece.tipFit()))
            .toList();
    long wane = ends.stream().filter(NeckFit::hasWaneyTail).count();
    int share = ends.stream().mapToInt(NeckFit::bearingPercent).min().orElseThrow();
    Length over = ends.stream().map(NeckFit::woodAboveUpper).reduce(Length::least).orElseThrow();
    String face = live.formats().mark(over) + " " + live.unit().symbol();
    return normal(share + "", face, wane + "");
  }

  /** Returns what is told of ends of which none is flagged. */
  private String normal(String share, String face, String wane) {
    int count = 2 * live.plan().round(round).size();
    return live.text("round.ends_normal", share, face, wane, count);
  }

  /** Returns the longest that the line is likely to say: every tip is flagged. */
  String likely() {
    String tip = live.text("live.tip") + " " + LiveEnds.likely(live);
    String said =
        live.walls().stream()
            .map(wall -> live.text("live.ends", wall.name(), tip))
            .collect(Collectors.joining());
    return live.text("round.ends", said);
  }

  /** Returns the formula of the line. */
  private String formula() {
    String said =
        live.plan().round(round).stream()
            .map(piece -> live.map().piece(round, piece.placed().wall(), PieceColumn.SAID))
            .collect(Collectors.joining("&"));
    String flagged = LiveMath.literal(live.text("round.ends", "")) + "&" + said;
    return "IF(" + said + "=\"\"," + normal() + "," + flagged + ")";
  }

  /** Returns the formula of what is told where no end is flagged. */
  private String normal() {
    String share = least(PieceColumn.BUTT_BEARS, PieceColumn.TIP_BEARS);
    String face = new LiveEnds(live).face(least(PieceColumn.BUTT_OVER, PieceColumn.TIP_OVER));
    String wane = "SUM(" + live.map().pieces(round, PieceColumn.WANE) + ")";
    String[] parts = normal("\u0001", "\u0001", "\u0001").split("\u0001", -1);
    return Stream.of(
            LiveMath.literal(parts[0]),
            LiveEnds.percent(share),
            LiveMath.literal(parts[1]),
            face,
            LiveMath.literal(parts[2]),
            wane,
            LiveMath.literal(parts[3]))
        .collect(Collectors.joining("&"));
  }

  private String least(PieceColumn butt, PieceColumn tip) {
    return "MIN(" + live.map().pieces(round, butt) + "," + live.map().pieces(round, tip) + ")";
  }
}
