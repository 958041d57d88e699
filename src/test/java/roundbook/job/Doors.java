package roundbook.job;

import java.util.List;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/** Doors three feet wide, from the foundation up. */
public final class Doors {
  private Doors() {}

  /**
   * Returns a door.
   *
   * @param wall the wall's name
   * @param left where its left side is, in inches
   * @param head where its head is, in inches over the foundation
   * @param shortStock whether short logs may lie beside it
   */
  public static Opening door(String wall, long left, long head, boolean shortStock) {
    return new Opening(
        "Door",
        wall,
        Length.ofInches(left),
        Length.ofInches(36),
        Length.ZERO,
        Length.ofInches(head),
        shortStock,
        "",
        new CellRef("job.xlsx", "Openings", 2, 0));
  }

  /** Returns a job with a door as its only opening, and without pins. */
  public static Job with(Job job, Opening door) {
    return new Job(job.rules(), job.building(), job.logs(), List.of(door), List.of());
  }
}
