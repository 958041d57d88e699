package roundbook.plan;

import roundbook.notch.NeckFit;
import roundbook.problem.Phrase;
import roundbook.problem.Value;
import roundbook.units.LengthFormat;

/** What is told of a log's end: how much of its bearing is left and what face over the mark. */
public final class EndPhrase {
  /** The key where there is no sawn face at the corner. */
  public static final String NONE = "end.none";

  /** The key where the upper mark is off the face; names {@code share}. */
  public static final String OFF = "end.off";

  /** The key of any other end; names {@code share} and {@code over}. */
  public static final String BEARS = "end.bears";

  /** The key of an end over which nothing crosses; names {@code share}. */
  public static final String BEARS_LOWER = "end.bears-lower";

  private EndPhrase() {}

  /** Returns what is told of a place's end. */
  public static Phrase of(PiecePlan piece, boolean butt, LengthFormat formats) {
    return of(butt ? piece.buttFit() : piece.tipFit(), formats);
  }

  /** Returns what is told of an end, whatever its grade. */
  static Phrase of(NeckFit fit, LengthFormat formats) {
    if (fit.hasNoFace()) {
      return Phrase.of(NONE);
    }
    if (fit.corner().marks() == NeckFit.Marks.LOWER) {
      return Phrase.of(BEARS_LOWER).with("share", fit.bearingPercent());
    }
    boolean off = fit.isUpperOff();
    Phrase said = Phrase.of(off ? OFF : BEARS).with("share", fit.bearingPercent());
    return off ? said : said.with("over", Value.measure(fit.woodAboveUpper(), formats));
  }
}
