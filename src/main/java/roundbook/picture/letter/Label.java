package roundbook.picture.letter;

import java.util.ArrayList;
import java.util.List;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;

/**
 * A text with its place and look, ready to be written on a drawing.
 *
 * <p>Across, nought sets the text to the right of its place, one half about it and one to the left
 * of it; upright it is centred by its capitals.
 *
 * @param text the text
 * @param lettering its size and weight
 * @param at its place
 * @param across which part of its width lies left of the place, nought to one
 * @param room the most width it may take; more is first made smaller, then cut
 * @param whole whether it is never cut, only made smaller: numbers
 * @param ground what lies behind it
 */
public record Label(
    String text,
    Lettering lettering,
    Spot at,
    double across,
    double room,
    boolean whole,
    Ground ground) {
  private static final double SMALLEST = 0.72;
  private static final double PADDING = 1.6;

  /** What lies behind a text. */
  public enum Ground {
    /** Whatever is drawn there. */
    OPEN,
    /** A white field that keeps lines off the text. */
    CLEAR,
    /** A black field; the text is white. */
    REVERSED
  }

  /** Returns a plain text that begins at a place. */
  public static Label of(String text, double size, Spot at) {
    return new Label(text, new Lettering(size, false), at, 0, Double.MAX_VALUE, false, Ground.OPEN);
  }

  /** Returns the same text in a broad pen. */
  public Label bold() {
    Lettering broad = new Lettering(lettering.size(), true);
    return new Label(text, broad, at, across, room, whole, ground);
  }

  /** Returns the same text centred about its place. */
  public Label centred() {
    return new Label(text, lettering, at, 0.5, room, whole, ground);
  }

  /** Returns the same text ending at its place. */
  public Label ending() {
    return new Label(text, lettering, at, 1, room, whole, ground);
  }

  /** Returns the same text set to the right of its place, about it or to the left of it. */
  public Label across(double part) {
    return new Label(text, lettering, at, part, room, whole, ground);
  }

  /** Returns the same text at another place. */
  public Label to(Spot place) {
    return new Label(text, lettering, place, across, room, whole, ground);
  }

  /** Returns the same text kept to a width. */
  public Label within(double width) {
    return new Label(text, lettering, at, across, width, whole, ground);
  }

  /** Returns the same text, never to be cut however small it gets: for numbers. */
  public Label uncut() {
    return new Label(text, lettering, at, across, room, true, ground);
  }

  /** Returns the same text on another ground. */
  public Label on(Ground other) {
    return new Label(text, lettering, at, across, room, whole, other);
  }

  /** Returns the same text small enough, or cut short enough, for its room. */
  public Label fitted() {
    return fitted(0);
  }

  /** Returns the same; only numbers, which are never cut, get smaller than so many points. */
  public Label fitted(double least) {
    Lettering smaller = shrunk(shrunk(lettering, least), least);
    String cut = whole ? text : smaller.cut(text, room);
    return new Label(cut, smaller, at, across, room, whole, ground);
  }

  /** Returns a lettering as much smaller as the room asks for and the text bears. */
  private Lettering shrunk(Lettering from, double least) {
    double wanted = from.size() * Math.min(1, room / from.width(text));
    double smallest = Math.max(lettering.size() * SMALLEST, Math.min(least, lettering.size()));
    return from.sized(whole ? wanted : Math.max(smallest, wanted));
  }

  /** Returns the left end of the base line. */
  public Spot base() {
    double left = at.x() - across * lettering.width(text) + lettering.reach();
    return new Spot(left, at.y() + lettering.capital() / 2);
  }

  /** Returns the ink's box, its ground included. */
  public Box box() {
    Spot base = base();
    List<Spot> spots = new ArrayList<>();
    for (Glyph.Stroke stroke : lettering.strokes(text)) {
      spots.addAll(stroke.moved(1, base).path());
    }
    return Box.around(spots).grown(lettering.reach() + (ground == Ground.OPEN ? 0 : PADDING));
  }
}
