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
 * others clockwise, the pens in a row from the left, partitions where they stand.
 *
 * @param building the walls
 * @param box their outline
 */
record GroundPlan(Building building, Box box) {
  private static final int SIDES = 4;
  private static final double PASSAGE = 0.35;

  /** Checks that each pen is a ring of four walls. */
  GroundPlan {
    if (building.pens().stream().anyMatch(pen -> building.ring(pen).size() != SIDES)) {
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
    return wall.isPartition() ? end(wall, building.before(wall)) : corner(wall, 0);
  }

  /** Returns where a wall ends, at its end corner. */
  Spot end(Wall wall) {
    return wall.isPartition() ? end(wall, building.after(wall)) : corner(wall, 1);
  }

  /** Returns the outline of the pen that a wall belongs to. */
  Box pen(Wall wall) {
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

  private Spot corner(Wall wall, int next) {
    int pen = wall.stand().pen();
    int index = building.ring(pen).indexOf(wall) - top(pen) + next;
    return pen(wall).corners().get(Math.floorMod(index, SIDES));
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
