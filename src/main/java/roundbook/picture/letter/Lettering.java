package roundbook.picture.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.picture.raster.Spot;

/**
 * Text of one size and weight, measured and turned into strokes of the pen.
 *
 * <p>A fraction such as {@code 11/16} is built from small digits about a slanting bar, so that 1
 * 1/16 cannot be read as 11/16.
 *
 * @param size the size in points; capitals and digits are seven tenths of it high
 * @param bold whether the pen is broad
 */
public record Lettering(double size, boolean bold) {
  private static final double CAPITAL = 0.7;
  private static final double GRID = 10;
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d/.,])(\\d{1,2})/(\\d{1,3})(?![\\d/])");

  /** Returns the height of capitals and digits in points. */
  double capital() {
    return size * CAPITAL;
  }

  /** Returns half the width of the pen in points. */
  public double reach() {
    return size * (bold ? 0.056 : 0.038);
  }

  /** Returns the strokes of a text, from the left end of its base line, downwards positive. */
  public List<Glyph.Stroke> strokes(String text) {
    Run run = new Run(true);
    set(text, run);
    return run.strokes;
  }

  /** Returns the width of a text in points, pen included. */
  double width(String text) {
    Run run = new Run(false);
    set(text, run);
    return run.end() + 2 * reach();
  }

  /** Returns the same lettering in another size. */
  Lettering sized(double other) {
    return new Lettering(other, bold);
  }

  /** Returns a text cut at its end, with an ellipsis, to be no wider than so many points. */
  String cut(String text, double width) {
    String cut = text;
    for (int end = text.length(); end > 0 && width(cut) > width; ) {
      end = text.offsetByCodePoints(end, -1);
      cut = text.substring(0, end).stripTrailing() + "…";
    }
    return cut;
  }

  /** Sets a text letter by letter, whole fractions apart. */
  private static void set(String text, Run run) {
    if (text.indexOf('/') < 0) {
      run.plain(text);
      return;
    }
    Matcher fraction = FRACTION.matcher(text);
    int from = 0;
    while (fraction.find(from)) {
      String before = text.substring(from, fraction.start());
      run.plain(before);
      run.tighten(before.endsWith(" "));
      run.built(fraction.group(1), fraction.group(2));
      from = fraction.end();
    }
    run.plain(text.substring(from));
  }

  /** A text while its letters are set one after the other. */
  private final class Run {
    private final List<Glyph.Stroke> strokes = new ArrayList<>();
    private final double unit = capital() / GRID;
    private final double space = (bold ? 2.7 : 2.2) * unit;
    private final double small = size < 12 ? 0.74 : 0.66;
    private final boolean drawn;
    private double at;

    /** Begins a text, of which the strokes or only the width are wanted. */
    Run(boolean drawn) {
      this.drawn = drawn;
    }

    /** Sets letters in full size. */
    void plain(String text) {
      letters(text, 1, 0);
    }

    private void letters(String text, double scale, double raised) {
      for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
        letter(text.codePointAt(i), scale, raised);
      }
    }

    /** Draws a fraction nearer to its whole number. */
    void tighten(boolean after) {
      at -= after && size > 12 ? 1.6 * unit : 0;
    }

    /** Sets a fraction as small digits above and below a slanting bar. */
    void built(String numerator, String denominator) {
      letters(numerator, small, GRID * (1 - small));
      at -= space * small / 2;
      letter('⁄', 1, 0);
      at -= space * (1 + small) / 2;
      letters(denominator, small, 0);
    }

    /** Sets one letter, so large and so far raised above the base line. */
    void letter(int character, double scale, double raised) {
      if (Character.isWhitespace(character) || Character.isISOControl(character)) {
        at += 3.4 * unit * scale;
        return;
      }
      Glyph glyph = Alphabet.standard().glyph(character);
      if (drawn) {
        for (Glyph.Stroke stroke : glyph.strokes()) {
          strokes.add(set(stroke, scale * unit, raised * unit));
        }
      }
      at += glyph.width() * unit * scale + space * scale;
    }

    double end() {
      return Math.max(0, at - space);
    }

    /** Scales a stroke, raises it, turns it downwards and moves it to the place reached. */
    private Glyph.Stroke set(Glyph.Stroke stroke, double scale, double raised) {
      List<Spot> path = new ArrayList<>(stroke.path().size());
      for (Spot spot : stroke.path()) {
        path.add(new Spot(at + spot.x() * scale, -(spot.y() * scale + raised)));
      }
      return new Glyph.Stroke(path, stroke.filled());
    }
  }
}
