package roundbook.report.round;

import java.util.List;
import roundbook.picture.Drawings;
import roundbook.picture.canvas.Picture;
import roundbook.report.frame.Drawn;
import roundbook.report.live.LiveContext;

/**
 * The drawings of one round, each made when it is first asked for.
 *
 * <p>A page that turns out too small to be read is laid out again with the same drawings, which
 * take longer to make than all the rest of it.
 */
final class RoundDrawings {
  private final Drawings drawings;
  private final int round;
  private List<Picture> faces;
  private List<Picture> plans;

  RoundDrawings(LiveContext live, int round) {
    this.drawings = Drawn.drawings(live.context());
    this.round = round;
  }

  /** Returns both faces of each kind of log in the round. */
  List<Picture> faces() {
    if (faces == null) {
      faces = drawings.faces(round);
    }
    return faces;
  }

  /** Returns the plan of the round. */
  List<Picture> plans() {
    if (plans == null) {
      plans = List.of(drawings.plan(round));
    }
    return plans;
  }
}
