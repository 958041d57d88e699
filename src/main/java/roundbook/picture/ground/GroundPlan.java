package roundbook.picture.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;

/**
 * Where the walls of a building lie in a box seen from above: the first wall of a pen on top, the
 * others clockwise, the pens in a row from the left, partitions and a wing where they stand.
 *
 * @param building the walls
 * @param box their outline
 */
record GroundPlan(Building building, Box box) {
  private static final int SIDES = 4;
  private static final double PASSAGE = 0.35;

  /** Checks that each pen is a ring of four walls. */
  GroundPlan {
    boolean pens = building.pens().stream().allMatch(pen -> building.ring(pen).size() == SIDES);
    if (!pens && !(building.hasWing() && building.ring(1).size() == SIDES)) {
      throw new DrawingFault("a plan of " + building.walls().size() + " walls", null);
    }
  }

  /** Returns whether a side runs up or down the sheet. */
  static boolean isUpright(Spot start, Spot end) {
    return StrictMath.abs(start.x() - end.x()) < 1;
  }

  /** Returns whether there are more walls than those of one pen. */
  boolean isMore() {
    return building.walls().size() > SIDES;
  }

  /** Returns where a wall begins, at its start corner. */
  Spot start(Wall wall) {
    return wall.isPartition() ? end(wall, building.before(wall)) : corner(wall, 0, true);
  }

  /** Returns where a wall ends, at its end corner. */
  Spot end(Wall wall) {
    return wall.isPartition() ? end(wall, building.after(wall)) : corner(wall, 1, false);
  }

  /** Returns the outline of the pen that a wall belongs to. */
  Box pen(Wall wall) {
    if (building.hasWing()) {
      return wall.stand().pen() > 1 ? wing() : house();
    }
    if (building.pens().size() == 1) {
      return box;
    }
    double all = along(building.pens().size() + 1);
    int pen = wall.stand().pen();
    double left = along(pen) + passage(pen);
    double scale = box.width() / all;
    return new Box(
        box.left() + left * scale, box.top(), box.left() + along(pen + 1) * scale, box.bottom());
  }

  /** Returns the height in the drawing of the middle of a wall's pen. */
  double middle(Wall wall) {
    return pen(wall).middle().y();
  }

  /**
   * Returns the part of a wall at which the longest stretch between its crossings has its middle.
   */
  double free(Wall wall) {
    List<Double> ends = new ArrayList<>(List.of(0.0, 1.0));
    building
        .saddles(wall)
        .forEach(saddle -> ends.add(1 - saddle.from().inches() / wall.outside().inches()));
    Collections.sort(ends);
    double widest = 0;
    double middle = 0.5;
    for (int at = 1; at < ends.size(); at++) {
      if (ends.get(at) - ends.get(at - 1) > widest) {
        widest = ends.get(at) - ends.get(at - 1);
        middle = (ends.get(at) + ends.get(at - 1)) / 2;
      }
    }
    return middle;
  }

  /** Returns how far the pens before one reach, in inches. */
  private double along(int pen) {
    return building.pens().stream()
        .filter(each -> each < pen)
        .mapToDouble(each -> passage(each) + building.ring(each).get(top(each)).outside().inches())
        .sum();
  }

  /** Returns how wide a passage is drawn: wide enough for names, whatever its width. */
  private double passage(int pen) {
    return pen == 1 ? 0 : PASSAGE * building.ring(pen).get(top(pen)).outside().inches();
  }

  /** Returns whether pens stand in a row, which leaves little room in each. */
  boolean isRow() {
    return building.pens().size() > 1;
  }

  /** Returns which wall of a pen's ring lies on top: in a row of pens the one along the row. */
  private int top(int pen) {
    List<Wall> ring = building.ring(pen);
    boolean row = building.pens().size() > 1;
    return row
        ? StrictMath.max(
            0, ring.stream().map(wall -> wall.name().substring(0, 1)).toList().indexOf("N"))
        : 0;
  }

  /** Returns the place of the wall that a wing stands on in its ring: 0 on top, 2 at the foot. */
  private int side() {
    List<Wall> ring = building.ring(1);
    int index = ring.indexOf(building.sharedWall().orElseThrow());
    return Math.floorMod(index - top(1), SIDES);
  }

  /** Returns the outline of the house without its wing, which takes a part of the box by itself. */
  private Box house() {
    double deep = building.wingDepth().inches();
    Wall beside = building.ring(1).get(Math.floorMod(side() + top(1) + 1, SIDES));
    double across = beside.outside().inches();
    double part = StrictMath.min(0.5, StrictMath.max(0.3, deep / (deep + across)));
    double x = part * box.width();
    double y = part * box.height();
    return switch (side()) {
      case 0 -> new Box(box.left(), box.top() + y, box.right(), box.bottom());
      case 1 -> new Box(box.left(), box.top(), box.right() - x, box.bottom());
      case 2 -> new Box(box.left(), box.top(), box.right(), box.bottom() - y);
      default -> new Box(box.left() + x, box.top(), box.right(), box.bottom());
    };
  }

  /** Returns the outline of the wing, from the wall that it stands on to the edge of the box. */
  private Box wing() {
    Wall shared = building.sharedWall().orElseThrow();
    Wall far = building.walls().stream().filter(Wall::isOnWall).findFirst().orElseThrow();
    double at = far.stand().at().orElseThrow().inches() / shared.outside().inches();
    double wide = far.outside().inches() / shared.outside().inches();
    Box house = house();
    Spot right = house.corners().get(side());
    Spot left = house.corners().get((side() + 1) % SIDES);
    Spot one = between(left, right, at);
    Spot other = between(left, right, at + wide);
    double out = side() % 2 == 0 ? box.height() - house.height() : box.width() - house.width();
    double x = side() == 1 ? out : side() == 3 ? -out : 0;
    double y = side() == 2 ? out : side() == 0 ? -out : 0;
    return Box.around(List.of(one, other, one.plus(x, y), other.plus(x, y)));
  }

  private static Spot between(Spot from, Spot to, double part) {
    return from.plus(part * (to.x() - from.x()), part * (to.y() - from.y()));
  }

  private Spot corner(Wall wall, int next, boolean start) {
    if (building.hasWing()) {
      return wingCorner(wall, next, start);
    }
    int pen = wall.stand().pen();
    int index = building.ring(pen).indexOf(wall) - top(pen) + next;
    return pen(wall).corners().get(Math.floorMod(index, SIDES));
  }

  /**
   * Returns an end of a wall of a house with a wing: one that goes on ends at the wing's far wall.
   */
  private Spot wingCorner(Wall wall, int next, boolean start) {
    Wall other = start ? building.before(wall) : building.after(wall);
    boolean goesOn = wall.stand().pen() == 1 && other.isOnWall();
    if (wall.stand().pen() == 1 && !goesOn) {
      int index = building.ring(1).indexOf(wall) - top(1) + next;
      return house().corners().get(Math.floorMod(index, SIDES));
    }
    List<Wall> ring = building.ring(1);
    Wall in = goesOn ? wall : building.sharedWall().orElseThrow();
    int index = Math.floorMod(ring.indexOf(in) - top(1), SIDES);
    int turn = goesOn || wall.isOnWall() ? 0 : isRight(wall) ? -1 : 1;
    return wing().corners().get(Math.floorMod(index + turn + next, SIDES));
  }

  /** Returns whether a side of a wing is its right one, which starts at the wall it dies in. */
  private boolean isRight(Wall side) {
    return building.after(side).isOnWall();
  }

  /** Returns the middle of a partition's end, on the axis of a wall that it crosses. */
  private Spot end(Wall partition, Wall through) {
    double part =
        building.saddles(through).stream()
            .filter(saddle -> saddle.partition().equals(partition))
            .mapToDouble(saddle -> saddle.from().inches() + partition.thickness().inches() / 2)
            .findFirst()
            .orElseThrow();
    double whole = through.outside().inches();
    Spot start = start(through);
    Spot end = end(through);
    double fromStart = 1 - part / whole;
    return start.plus(fromStart * (end.x() - start.x()), fromStart * (end.y() - start.y()));
  }
}
