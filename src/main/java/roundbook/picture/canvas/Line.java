package roundbook.picture.canvas;

/** The kinds of line, told apart by weight and dash and never by colour. */
public enum Line {
  /** Dimensions, leaders and the hatching's edge. */
  THIN(0.6),
  /** Outlines of wood. */
  NORMAL(1.1),
  /** What must be found first: shoulders, openings, frames. */
  HEAVY(2.2),
  /** Long and short strokes: a centre line. */
  CENTRE(0.8, 13, 3, 3, 3),
  /** Even strokes: a line to be marked that is no cut. */
  DASHED(1, 5, 3.5),
  /** Short strokes. */
  DOTTED(1.2, 1.5, 3),
  /** Long strokes. */
  LONG(1.2, 11, 4);

  private final double width;
  private final double[] dashes;

  Line(double width, double... dashes) {
    this.width = width;
    this.dashes = dashes;
  }

  /** Returns the width in points. */
  double width() {
    return width;
  }

  /** Returns the lengths of stroke and blank in turn, in points; empty for an unbroken line. */
  double[] dashes() {
    return dashes.clone();
  }
}
