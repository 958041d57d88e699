package roundbook.picture.stem;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Stem;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.units.Length;

/** Stems of a page, one under another, butts at the left, all to one scale. */
public final class StemDrawing {
  /** How wide a page is, in points. */
  public static final double WIDTH = Canvas.points(9.6);

  private static final double SMALL = 9;
  private static final double NAME = 52;
  private static final double ROW = 48;
  private static final double HEAD = 6;

  private final Wording wording;
  private final Length longest;

  /**
   * A stretch of a stem as it is drawn.
   *
   * @param from its distance from the butt
   * @param to where it ends
   * @param tag what is written under it; empty where it is sawn off
   * @param isKept whether it is not hatched
   */
  public record Stretch(Length from, Length to, String tag, boolean isKept) {}

  /**
   * A stem as it is drawn.
   *
   * @param stem the stem
   * @param stretches its stretches from the butt up
   */
  public record Drawn(Stem stem, List<Stretch> stretches) {
    /** Copies the list. */
    public Drawn {
      stretches = List.copyOf(stretches);
    }
  }

  /**
   * Creates drawings of one scale.
   *
   * @param longest the longest stem that is drawn
   * @param wording how lengths and words are printed
   */
  public StemDrawing(Length longest, Wording wording) {
    this.longest = longest;
    this.wording = wording;
  }

  /** Returns the drawing of some stems. */
  public Canvas draw(List<Drawn> stems) {
    Canvas canvas = new Canvas(WIDTH, HEAD + ROW * stems.size(), SMALL);
    for (int i = 0; i < stems.size(); i++) {
      stem(canvas, stems.get(i), HEAD + ROW * i + 16);
    }
    return canvas;
  }

  /** Returns the words for those who cannot see them. */
  public String altText(List<Drawn> stems) {
    return wording.say(
        "stems.alt", String.join(", ", stems.stream().map(each -> each.stem().tag()).toList()));
  }

  private double x(Length fromButt) {
    return NAME + (WIDTH - NAME - 6) * fromButt.inches() / longest.inches();
  }

  private double half(Stem stem, Length at) {
    return (WIDTH - NAME - 6) * stem.profile().at(at).inches() / longest.inches() / 2;
  }

  private void stem(Canvas canvas, Drawn drawn, double axis) {
    canvas.write(Label.of(drawn.stem().tag(), 11, new Spot(4, axis)).bold().within(NAME - 8));
    for (Stretch stretch : drawn.stretches()) {
      List<Spot> outline = outline(drawn.stem(), stretch, axis);
      canvas.shape(Line.NORMAL, outline, stretch.isKept() ? Ink.WHITE : Ink.HATCH);
      Spot end = new Spot(x(stretch.to()), axis + 14);
      canvas.line(Line.HEAVY, new Spot(end.x(), axis - 12), new Spot(end.x(), axis + 12));
      if (!stretch.tag().isEmpty()) {
        double middle = (x(stretch.from()) + end.x()) / 2;
        double room = end.x() - x(stretch.from());
        canvas.writeIfFree(
            Label.of(stretch.tag(), SMALL, new Spot(middle, axis + 20)).centred().within(room));
      }
    }
  }

  /** Returns the outline of a stretch: its upper edge from the butt up and back along the lower. */
  private List<Spot> outline(Stem stem, Stretch stretch, double axis) {
    List<Length> at = new ArrayList<>();
    at.add(stretch.from());
    Optional.of(stem.profile()).map(DiameterProfile::stations).stream()
        .flatMap(List::stream)
        .map(Station::fromButt)
        .filter(each -> each.isMoreThan(stretch.from()) && each.isLessThan(stretch.to()))
        .forEach(at::add);
    at.add(stretch.to());
    List<Spot> upper = at.stream().map(each -> new Spot(x(each), axis - half(stem, each))).toList();
    List<Spot> lower =
        new ArrayList<>(
            at.stream().map(each -> new Spot(x(each), axis + half(stem, each))).toList());
    Collections.reverse(lower);
    return Stream.concat(upper.stream(), lower.stream()).toList();
  }
}
