package roundbook.report.mark;

import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.units.Length;

/**
 * What a lower mark at a shoulder is more than the chart's: the fall of the notch where a wing's
 * side drains, and nothing anywhere else.
 *
 * @param live what the live sheets share
 * @param first whether the log is one of those laid first
 * @param corner the place where it ends
 */
public record ShoulderFall(LiveContext live, boolean first, String corner) {
  /** Returns whether the log is deeper at its shoulder than at its corner line. */
  public boolean isDeeper() {
    Building building = live.map().building();
    Wall wall = building.wallAt(corner, first);
    return building.drains(wall, building.startCorner(wall).equals(corner), live.rules());
  }

  /** Returns what a formula of the mark goes on with. */
  public String plus() {
    return isDeeper() ? "+" + live.map().wall(crossing(), WallColumn.DROP) : "";
  }

  /** Returns by how much the mark is larger. */
  public Length more() {
    Length drop = live.rules().slope().dropOver(crossing().thickness());
    return isDeeper() ? drop.roundedTo(live.rules().printStep()) : Length.ZERO;
  }

  private Wall crossing() {
    return live.map().building().wallAt(corner, !first);
  }
}
