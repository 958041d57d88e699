package roundbook.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** A picture or a native chart that lies on a sheet. */
public sealed interface Figure {

  /** Returns where it lies. */
  FigureAnchor place();

  /** Returns the words for those who cannot see it. */
  String altText();

  /**
   * How large something is on a sheet that is not scaled.
   *
   * @param width how wide
   * @param height how high
   */
  record Size(Length width, Length height) {
    /** The width of a column whose width is not set, in characters. */
    public static final double USUAL_WIDTH = 9.14;

    /** The height of a row whose height is not set, in points. */
    public static final double USUAL_HEIGHT = 15;

    private static final double CHARACTERS_AN_INCH = 96 / 7.0;
    private static final double POINTS_AN_INCH = 72;

    /**
     * Returns the size of an area: a character of width is 7/96 in, a point of height 1/72 in.
     *
     * @param area the area
     * @param heights the heights of rows in points, where set
     * @param widths the widths of columns in characters, where set
     */
    public static Size of(Area area, Map<Integer, Double> heights, Map<Integer, Double> widths) {
      double high = sum(area.top(), area.bottom(), heights, USUAL_HEIGHT) / POINTS_AN_INCH;
      double wide = sum(area.left(), area.right(), widths, USUAL_WIDTH) / CHARACTERS_AN_INCH;
      return new Size(Length.of(wide, LengthUnit.INCH), Length.of(high, LengthUnit.INCH));
    }

    /** Returns the width in points. */
    public double wide() {
      return POINTS_AN_INCH * width.inches();
    }

    private static double sum(int first, int last, Map<Integer, Double> set, double usual) {
      return IntStream.rangeClosed(first, last)
          .mapToDouble(index -> set.getOrDefault(index, usual))
          .sum();
    }
  }

  /** Where a figure lies on its sheet. */
  sealed interface FigureAnchor {}

  /**
   * Stretched over cells; the caller keeps the aspect.
   *
   * @param area the cells it covers
   */
  record Over(Area area) implements FigureAnchor {}

  /**
   * At its own size, with its top left corner in a cell.
   *
   * @param cell the cell
   * @param right how far right of the cell's left edge
   * @param down how far below the cell's top edge
   * @param width how wide
   * @param height how high
   */
  record At(Area cell, Length right, Length down, Length width, Length height)
      implements FigureAnchor {
    /** Returns the place of a figure whose corner is the cell's own. */
    public static At corner(String cell, Length width, Length height) {
      return new At(Area.of(cell), Length.ZERO, Length.ZERO, width, height);
    }
  }

  /**
   * A drawing in PNG form; equal drawings are stored once in the file.
   *
   * @param png the file's bytes, not to be changed afterwards
   * @param place where it lies
   * @param altText the words for those who cannot see it
   * @param letters the size of its smallest letters in points as it lies at 100 percent, 0 if none
   */
  record Picture(byte[] png, FigureAnchor place, String altText, double letters) implements Figure {
    /** A picture without letters. */
    public Picture(byte[] png, FigureAnchor place, String altText) {
      this(png, place, altText, 0);
    }

    /** Copies the bytes. */
    public Picture {
      png = png.clone();
      Objects.requireNonNull(altText);
    }

    /** Returns a copy of the bytes. */
    @Override
    public byte[] png() {
      return png.clone();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Picture picture
          && Arrays.equals(png, picture.png)
          && place.equals(picture.place)
          && altText.equals(picture.altText);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Arrays.hashCode(png), place, altText);
    }
  }

  /**
   * A chart that the spreadsheet draws itself, so that it follows what is typed.
   *
   * @param title the chart's title
   * @param axes the titles of its axes and its direction
   * @param series what is drawn, in this order
   * @param place where it lies
   * @param altText the words for those who cannot see it
   */
  record Chart(String title, Axes axes, List<Series> series, FigureAnchor place, String altText)
      implements Figure {
    /** Copies the list. */
    public Chart {
      series = List.copyOf(series);
    }
  }

  /**
   * The axes of a chart.
   *
   * @param categories the title of the axis of names
   * @param values the title of the axis of numbers
   * @param level whether bars lie level, the first name on top; lines are then not possible
   * @param stacked whether bars stand on each other instead of side by side
   */
  record Axes(String categories, String values, boolean level, boolean stacked) {
    /** Returns the axes of upright bars side by side. */
    public static Axes upright(String categories, String values) {
      return new Axes(categories, values, false, false);
    }
  }

  /**
   * One row of bars or one line of a chart.
   *
   * @param name what the legend says
   * @param sheet the sheet with the cells
   * @param categories the cells with the names
   * @param values the cells with the numbers, as many
   * @param look how it is drawn
   */
  record Series(String name, String sheet, Area categories, Area values, Look look) {}

  /** How a row of bars or a line is drawn; all differ without colour. */
  enum Look {
    /** Dark bars. */
    BAR_DARK,
    /** Pale bars with a dark outline. */
    BAR_PALE,
    /** Hatched bars with a dark outline. */
    BAR_HATCHED,
    /** A heavy line. */
    LINE,
    /** A dashed line, for a limit. */
    LINE_DASHED,
    /** A dotted line, for a second limit. */
    LINE_DOTTED,
    /** A line of dashes and dots. */
    LINE_CHAIN,
    /** A thin grey line, for a limit beside other lines. */
    LINE_LIMIT;

    /** Returns whether this is a line and not bars. */
    public boolean isLine() {
      return name().startsWith("LINE");
    }
  }
}
