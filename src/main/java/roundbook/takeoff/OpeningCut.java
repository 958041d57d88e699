package roundbook.takeoff;

import java.util.List;
import java.util.Optional;
import roundbook.job.Job;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.units.Length;

/**
 * One opening inside its wall, clear of both corners, with every log of its wall, its header and
 * its frame.
 *
 * @param opening the opening
 * @param wall its wall
 * @param cuts what it does to each log of the wall, from the lowest up
 * @param header the log over it, whole and straight: the lowest that reaches above its head and
 *     loses no more than half of its height; where there is none such, the lowest that it does not
 *     cut through; empty when no log reaches over
 * @param frame its buck
 */
public record OpeningCut(
    Opening opening, Wall wall, List<LogCut> cuts, Optional<FilledPlace> header, Frame frame) {
  /** Copies the list. */
  public OpeningCut {
    cuts = List.copyOf(cuts);
  }

  /** Returns every opening of a job that lies inside its wall, with what it cuts of a stack. */
  public static List<OpeningCut> of(Job job, Stack stack) {
    return new OpeningCutter(job, stack, Settling.of(job, stack)).cuts();
  }

  /** Returns the log over each opening that has one, opening by opening. */
  public static List<FilledPlace> headers(Job job, Stack stack) {
    return of(job, stack).stream().flatMap(cut -> cut.header().stream()).distinct().toList();
  }

  /**
   * Returns the rough opening that would hold its leaf: width, and head above the first bed, no
   * less than they are; empty where no leaf is told or it fits.
   */
  public Optional<Leaf> wanted() {
    return opening.leaf().filter(leaf -> !frame.holds(leaf)).map(this::wanted);
  }

  private Leaf wanted(Leaf leaf) {
    Length more = leaf.width().minus(frame.clearWidth()).most(Length.ZERO);
    Length lacks = leaf.height().minus(frame.clearHeight()).most(Length.ZERO);
    Length high = opening.head().minus(opening.sill().most(Length.ZERO));
    Length left = high.minus(frame.most());
    Length higher = lacks.timesRatio(high.nanometres(), left.nanometres());
    return new Leaf(opening.width().plus(more), opening.head().plus(higher));
  }

  /** Returns the logs of a kind. */
  public List<LogCut> of(CutExtent kind) {
    return cuts.stream().filter(cut -> cut.kind() == kind).toList();
  }

  /** Returns the logs that lose wood, from the lowest up. */
  public List<LogCut> cut() {
    return cuts.stream().filter(LogCut::isCut).toList();
  }

  /**
   * The buck of an opening and the room over it.
   *
   * <p>The wall comes down past a frame that does not: over it stays {@code f (z_head − z_stand)},
   * with z_stand the height of what it stands on, a log cut under it or the foundation. Bucks here
   * are a head piece and, over a log, a sill piece, both across the opening, with legs between
   * them; a key on each leg slides in a slot of the log ends (common practice).
   *
   * @param clearance room for the mean of radial and tangential shrinkage
   * @param most room for tangential shrinkage, the most to expect; this is what is left
   * @param leg length of the two legs
   * @param across length of the head piece, and of the sill piece where there is one
   * @param clearWidth what remains between the legs
   * @param sillPiece whether the frame has a sill piece
   * @param pinLeft no pin between this distance from the left corner, as it is told, and {@link
   *     #pinRight}
   * @param pinRight the end of that stretch
   */
  public record Frame(
      Length clearance,
      Length most,
      Length leg,
      Length across,
      Length clearWidth,
      boolean sillPiece,
      Length pinLeft,
      Length pinRight) {
    /**
     * Returns what remains between the head piece and the sill piece or the sill, now and after
     * settling: the wall comes down past the frame, which keeps its height.
     */
    public Length clearHeight() {
      return leg;
    }

    /** Returns the largest leaf that goes between the bucks. */
    public Leaf clear() {
      return new Leaf(clearWidth, clearHeight());
    }

    /** Returns whether a leaf has room between the bucks. */
    public boolean holds(Leaf leaf) {
      return !leaf.width().isMoreThan(clearWidth) && !leaf.height().isMoreThan(clearHeight());
    }

    /** Returns the length of buck board: two legs, a head piece and the sill piece. */
    public Length board() {
      return leg.times(2).plus(across.times(sillPiece ? 2 : 1));
    }

    /** Returns the length of key stock: one on each leg. */
    public Length keys() {
      return leg.times(2);
    }
  }
}
