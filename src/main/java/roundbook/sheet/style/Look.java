package roundbook.sheet.style;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * How a cell looks, free of the workbook it came from.
 *
 * <p>Colours are six hexadecimal digits, red, green, blue; empty means the spreadsheet's own.
 *
 * @param font the letters
 * @param ground the fill
 * @param edges the borders
 * @param place where the content stands
 * @param format the number format's code
 * @param unlocked whether the cell can be typed in on a locked sheet
 */
public record Look(
    Font font,
    Ground ground,
    Edges edges,
    ContentAlignment place,
    String format,
    boolean unlocked) {

  static final String BLACK = "000000";
  static final String WHITE = "FFFFFF";

  /** Letters: the font's name, its size in points, and how it is drawn. */
  public record Font(String name, double size, boolean bold, boolean italic, String colour) {
    /** Compares as any record does, without what a record must first link to do so. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Font font
          && size == font.size
          && bold == font.bold
          && italic == font.italic
          && name.equals(font.name)
          && colour.equals(font.colour);
    }

    @Override
    public int hashCode() {
      return (name.hashCode() * 31 + colour.hashCode()) * 31 + (int) size;
    }
  }

  /** A fill: its pattern, the colour of the pattern or of a solid fill, and the colour behind. */
  record Ground(FillPatternType pattern, String colour, String behind) {
    static final Ground NONE = new Ground(FillPatternType.NO_FILL, "", "");

    static Ground solid(String colour) {
      return new Ground(FillPatternType.SOLID_FOREGROUND, colour, "");
    }
  }

  /** Borders, clockwise from the top. */
  record Edges(BorderStyle top, BorderStyle right, BorderStyle bottom, BorderStyle left) {
    static final Edges NONE = all(BorderStyle.NONE);

    static Edges all(BorderStyle style) {
      return new Edges(style, style, style, style);
    }

    /** Returns these borders with another style on the sides of a mask (1 top, 2, 4, 8). */
    Edges with(BorderStyle style, int sides) {
      return new Edges(
          (sides & 1) == 0 ? top : style,
          (sides & 2) == 0 ? right : style,
          (sides & 4) == 0 ? bottom : style,
          (sides & 8) == 0 ? left : style);
    }
  }

  /** Where the content stands, whether it is broken into lines, and its indent. */
  record ContentAlignment(
      HorizontalAlignment across, VerticalAlignment up, boolean wrap, int indent) {}

  Look font(Font other) {
    return new Look(other, ground, edges, place, format, unlocked);
  }

  Look size(double points) {
    return font(new Font(font.name, points, font.bold, font.italic, font.colour));
  }

  Look bold() {
    return font(new Font(font.name, font.size, true, font.italic, font.colour));
  }

  Look colour(String colour) {
    return font(new Font(font.name, font.size, font.bold, font.italic, colour));
  }

  Look ground(Ground other) {
    return new Look(font, other, edges, place, format, unlocked);
  }

  Look edges(Edges other) {
    return new Look(font, ground, other, place, format, unlocked);
  }

  Look place(ContentAlignment other) {
    return new Look(font, ground, edges, other, format, unlocked);
  }

  Look across(HorizontalAlignment across) {
    return place(new ContentAlignment(across, place.up, place.wrap, place.indent));
  }

  Look up(VerticalAlignment up) {
    return place(new ContentAlignment(place.across, up, place.wrap, place.indent));
  }

  Look wrapped() {
    return place(new ContentAlignment(place.across, place.up, true, place.indent));
  }

  Look indented(int indent) {
    return place(new ContentAlignment(place.across, place.up, place.wrap, indent));
  }

  Look format(String code) {
    return new Look(font, ground, edges, place, code, unlocked);
  }

  Look unlock() {
    return new Look(font, ground, edges, place, format, true);
  }
}
