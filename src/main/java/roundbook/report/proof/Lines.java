package roundbook.report.proof;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Wall;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.proof.Pencil.Term;
import roundbook.report.proof.Pencil.Value;
import roundbook.units.Length;

/** The sums of round 1 line by line, as a pencil does them. */
final class Lines {
  static final String PLUS = "{0} + {1}";
  static final String MINUS = "{0} − {1}";

  private final LiveContext live;
  private final Pencil pencil;
  private final List<Line> all = new ArrayList<>();
  private int number;

  private Lines(LiveContext live) {
    this.live = live;
    this.pencil = new Pencil(live);
  }

  /**
   * One line of a sum.
   *
   * @param number which sum it is of, counted from 1
   * @param what what it gives, in words
   * @param sum the terms
   * @param result what the program has for it
   */
  record Line(int number, String what, Term sum, Term result) {}

  /** Returns the lines of all sums in their order. */
  static List<Line> of(LiveContext live) {
    Lines lines = new Lines(live);
    new MarkSums(lines).add();
    new HeightSums(lines).add();
    return List.copyOf(lines.all);
  }

  LiveContext live() {
    return live;
  }

  Pencil pencil() {
    return pencil;
  }

  /** Begins the next sum. */
  void begin() {
    number++;
  }

  /** Adds a line to the sum in hand, its words by their key. */
  void add(String key, Term sum, Term result, Object... values) {
    all.add(new Line(number, live.text("proof.sum." + key, values), sum, result));
  }

  /** Returns a value of round 1. */
  Value of(RoundColumn column, Length now) {
    return new Value(live.map().round(1, column), now);
  }

  /** Returns the middle of a place. */
  Value mid(int round, Wall wall) {
    Length now = live.piece(round, wall).placed().mid();
    return new Value(live.map().piece(round, wall, PieceColumn.MID), now);
  }
}
