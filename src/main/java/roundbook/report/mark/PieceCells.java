package roundbook.report.mark;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Note;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.live.LiveSpot;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * The cells of one placed log on the lists, which follow what is typed on its round's page.
 *
 * @param live what the live sheets share
 * @param piece the place
 * @param spot the log that lies there, or the one of two
 */
public record PieceCells(LiveContext live, PiecePlan piece, LiveSpot spot) {
  private static final String HOLE = "\u0001";

  /** The cells of a log that fills its place alone, and of marks that are those of the place. */
  public PieceCells(LiveContext live, PiecePlan piece) {
    this(live, piece, LiveSpot.whole(piece));
  }

  /**
   * A length that follows what is typed.
   *
   * @param formula where it comes from
   * @param now what it is now
   */
  public record LiveLength(String formula, Length now) {}

  /** Returns the log's tag, or that of the log used instead. */
  public Cell tag(Role role) {
    boolean whole = spot.place().side() == PlacePart.WHOLE;
    String tag = whole ? piece.placed().tags() : spot.piece().log().tag();
    return Cell.formula(at(PieceColumn.TAG), tag).role(role).align(Cell.Align.CENTRE);
  }

  /** Returns how much is squared off the butt. */
  public Cell offButt(Role role) {
    return live.tape(at(PieceColumn.OFF_BUTT), spot.piece().cutOffButt(), role);
  }

  /** Returns a text of the bundle with values in it, and last what is squared off the butt. */
  public Cell aroundOffButt(String key, String first, String second) {
    String[] around = live.text(key, first, second, HOLE).split(HOLE, -1);
    String formula = LiveMath.literal(around[0]) + "&" + live.math().tape(at(PieceColumn.OFF_BUTT));
    String now = live.math().tapeNow(spot.piece().cutOffButt());
    return Cell.formula(formula + "&" + LiveMath.literal(around[1]), around[0] + now + around[1]);
  }

  /** Returns the diameter at the trimmed butt end. */
  public LiveLength butt() {
    return new LiveLength(at(PieceColumn.BUTT), spot.piece().butt());
  }

  /** Returns the diameter at the middle. */
  public LiveLength mid() {
    return new LiveLength(at(PieceColumn.MID), spot.piece().mid());
  }

  /** Returns the diameter at the trimmed tip end. */
  public LiveLength tip() {
    return new LiveLength(at(PieceColumn.TIP), spot.piece().tip());
  }

  /** Returns what is hewn off each side where the log is so thick: {@code (d − T) / 2}. */
  public LiveLength slab(LiveLength diameter) {
    Length thickness = piece.placed().wall().thickness();
    Length rest = diameter.now().minus(thickness).dividedBy(2).most(Length.ZERO);
    String wall = live.map().wall(piece.placed().wall(), WallColumn.THICKNESS);
    return new LiveLength("MAX(0,(" + diameter.formula() + "-" + wall + ")/2)", rest);
  }

  /** Returns the upper mark on the inside face. */
  public LiveLength upperInside() {
    return new LiveLength(round(RoundColumn.UPPER), notch().upper());
  }

  /** Returns the upper mark on the outside face; the top of a partition's log is level. */
  public LiveLength upperOutside() {
    Wall wall = piece.placed().wall();
    if (levelEnds().size() == 2) {
      return upperInside();
    }
    return new LiveLength(
        round(RoundColumn.UPPER) + "-" + drop(wall), notch().upperOutside(wall.thickness()));
  }

  /** Returns the names of the places where an end is level on top, for it lies in mid-wall. */
  public List<String> levelEnds() {
    Building building = live.map().building();
    Wall wall = piece.placed().wall();
    return Stream.of(true, false)
        .flatMap(start -> building.saddle(wall, start).stream())
        .map(building::corner)
        .toList();
  }

  /** Returns the lower mark at the shoulder. */
  public LiveLength lower() {
    return new LiveLength(round(RoundColumn.LOWER), notch().lower());
  }

  /** Returns the lower mark at the corner line: one, or butt then tip where they differ. */
  public List<LiveLength> lowerCorner() {
    Building building = live.map().building();
    FilledPlace placed = piece.placed();
    Wall atButt = placed.crossingAtButt(building);
    Wall atTip = placed.crossingAtTip(building);
    boolean same = atButt.thickness().equals(atTip.thickness());
    return (same ? Stream.of(atButt) : Stream.of(atButt, atTip)).map(this::lowerCorner).toList();
  }

  /** Returns the lower mark at the corner line of a short log, which has one corner only. */
  public LiveLength lowerCorner(PiecePlan.Half half) {
    Building building = live.map().building();
    Wall wall = piece.placed().wall();
    return lowerCorner(half.left() ? building.after(wall) : building.before(wall));
  }

  private LiveLength lowerCorner(Wall crossing) {
    return new LiveLength(
        round(RoundColumn.LOWER) + "+" + drop(crossing), notch().lowerCorner(crossing.thickness()));
  }

  /** Returns whether the lower mark is sawn along the whole log, without a corner line. */
  public boolean flatBed() {
    return piece.notes().contains(Note.BED_FLAT);
  }

  /** Returns a length as a number that is printed to the step. */
  public Cell printed(LiveLength spot) {
    return live.printed(spot.formula(), spot.now(), Role.BODY_CENTRE);
  }

  /** Returns a text of the bundle with marks in it, which follow what is typed. */
  public Cell text(String key, LiveLength... spots) {
    Object[] now = Stream.of(spots).map(spot -> live.formats().mark(spot.now())).toArray();
    StringBuilder formula = new StringBuilder();
    String pattern = live.context().words().pattern(key);
    int from = 0;
    for (int hole = pattern.indexOf('{'); hole >= 0; hole = pattern.indexOf('{', from)) {
      int end = pattern.indexOf('}', hole);
      int index = Integer.parseInt(pattern.substring(hole + 1, end));
      formula.append(LiveMath.literal(pattern.substring(from, hole))).append('&');
      formula.append(live.math().mark(live.toStep(spots[index].formula()))).append('&');
      from = end + 1;
    }
    formula.append(LiveMath.literal(pattern.substring(from)));
    return Cell.formula(formula.toString(), live.text(key, now));
  }

  private Notch notch() {
    return live.course(piece.placed().round()).notch();
  }

  private String at(PieceColumn column) {
    return live.map().at(spot.place(), column);
  }

  private String round(RoundColumn column) {
    return live.map().round(piece.placed().round(), column);
  }

  private String drop(Wall wall) {
    return live.map().wall(wall, WallColumn.DROP);
  }
}
