package roundbook.picture.full;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.letter.Lettering;
import roundbook.picture.letter.Paragraph;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * The heights of all rounds on paper strips at full size, to be cut out and joined into a pole.
 *
 * <p>A page holds four strips of nine inches (225 mm in metric work), the lowest at the left.
 */
public final class StoryPole {
  private static final int ACROSS = 4;
  private static final double STRIP = Canvas.points(0.6);
  private static final double PITCH = SlopeTemplate.WIDTH / ACROSS;
  private static final double TOP = 38;

  /** The least lettering. */
  private static final double SMALL = 9;

  private static final double HEIGHT = Canvas.points(9.75);

  private final Stack stack;
  private final Wording wording;
  private final Length high;

  /**
   * Creates the pole of a stack.
   *
   * @param stack gives the heights of the rounds
   * @param wording how lengths and words are printed
   */
  public StoryPole(Stack stack, Wording wording) {
    this.stack = stack;
    this.wording = wording;
    this.high = stack.rules().metric() ? Length.ofMillimetres(225) : Length.ofInches(9);
  }

  /**
   * One mark on the pole.
   *
   * @param height above the underside of the first bed
   * @param name the round and its walls
   * @param seat whether it is a neck's top at the inside shoulder, not a centre line
   */
  private record Mark(Length height, String name, boolean seat) {}

  /** Returns how many pages there are. */
  public int pages() {
    return (strips() + ACROSS - 1) / ACROSS;
  }

  /** Returns a page, counted from nought. */
  public Canvas draw(int page) {
    Canvas canvas = new Canvas(SlopeTemplate.WIDTH, HEIGHT, SMALL);
    for (int i = 0; i < ACROSS && page * ACROSS + i < strips(); i++) {
      strip(canvas, page * ACROSS + i, 6 + i * PITCH);
    }
    double room = SlopeTemplate.WIDTH - 12;
    List<String> head =
        Paragraph.lines(wording.say("pole.head"), new Lettering(SMALL, false), room);
    for (int line = 0; line < head.size(); line++) {
      canvas.write(Label.of(head.get(line), SMALL, new Spot(6, 6 + 11 * line)).within(room));
    }
    return canvas;
  }

  /** Returns the words for those who cannot see a page. */
  public String altText(int page) {
    return wording.say("pole.alt", page + 1, pages());
  }

  /** Returns how many strips reach over the highest mark. */
  private int strips() {
    long top = marks().stream().mapToLong(mark -> mark.height().nanometres()).max().orElse(0);
    return (int) (top / high.nanometres()) + 1;
  }

  /** Draws a strip with its number, the heights of its two ends and its marks. */
  private void strip(Canvas canvas, int number, double left) {
    Length foot = high.times(number);
    double bottom = TOP + Canvas.points(high.inches());
    canvas.outline(Line.NORMAL, new Box(left, TOP, left + STRIP, bottom));
    end(canvas, foot.plus(high), new Spot(left, TOP - 9));
    end(canvas, foot, new Spot(left, bottom + 9));
    String name = wording.say("pole.strip", number + 1);
    canvas.write(
        Label.of(name, 11, new Spot(left + STRIP + 6, TOP - 9)).bold().within(PITCH - STRIP - 22));
    for (Mark mark : marks()) {
      Length above = mark.height().minus(foot);
      if (!above.isNegative() && above.isLessThan(high)) {
        mark(canvas, mark, new Spot(left, bottom - Canvas.points(above.inches())));
      }
    }
  }

  private void end(Canvas canvas, Length height, Spot at) {
    Label label = Label.of(wording.tape(height), 10, at.plus(STRIP / 2, 0));
    canvas.write(label.centred().within(STRIP).uncut());
  }

  /** Draws a mark across its strip and says what it is. */
  private void mark(Canvas canvas, Mark mark, Spot at) {
    Line line = mark.seat() ? Line.HEAVY : Line.CENTRE;
    canvas.line(line, at, at.plus(STRIP + 4, 0));
    Spot from = at.plus(STRIP + 8, 0);
    double room = PITCH - STRIP - 22;
    String height = wording.tape(mark.height());
    String kind = wording.say(mark.seat() ? "pole.seat" : "pole.centre");
    canvas.writeIfFree(Label.of(mark.name(), 12, from.plus(0, -7)).bold().within(room));
    canvas.writeIfFree(Label.of(height, 12, from.plus(0, 7)).within(room).uncut());
    canvas.writeIfFree(Label.of(kind, 9, from.plus(0, 20)).within(room));
  }

  /** Returns three marks a round: both centre lines and the second-laid necks. */
  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < stack.courses().size(); i++) {
      marks.add(new Mark(stack.firstHeights().get(i), name(i, true), false));
      marks.add(new Mark(stack.secondHeights().get(i), name(i, false), false));
      marks.add(new Mark(stack.levelHeight(i + 1), name(i, false), true));
    }
    return marks;
  }

  private String name(int index, boolean first) {
    String walls =
        stack.building().walls().stream()
            .filter(wall -> wall.laidFirst() == first)
            .map(Wall::name)
            .collect(Collectors.joining(" "));
    return wording.say("wall.round", index + 1) + " " + walls;
  }
}
