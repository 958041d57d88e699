package roundbook.takeoff;

import java.util.List;
import java.util.Optional;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.stack.PlacedLog;

/**
 * One opening inside its wall, clear of both corners, with every log of its wall, its header and
 * its frame.
 *
 * @param opening the opening
 * @param wall its wall
 * @param cuts what it does to each log of the wall, from the lowest up
 * @param header the log over it, whole and straight: the lowest that it does not cut through and
 *     that reaches above its head; empty when no log does
 * @param frame its buck
 */
public record OpeningCut(
    Opening opening, Wall wall, List<LogCut> cuts, Optional<PlacedLog> header, Frame frame) {
  /** Copies the list. */
  public OpeningCut {
    cuts = List.copyOf(cuts);
  }

  /** Returns the logs of a kind. */
  public List<LogCut> of(LogCut.Kind kind) {
    return cuts.stream().filter(cut -> cut.kind() == kind).toList();
  }

  /** Returns the logs that lose wood, from the lowest up. */
  public List<LogCut> cut() {
    return cuts.stream().filter(LogCut::isCut).toList();
  }
}
