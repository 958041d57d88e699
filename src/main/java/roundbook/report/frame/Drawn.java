package roundbook.report.frame;

import java.util.List;
import java.util.function.Supplier;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.picture.Drawings;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.canvas.Picture;
import roundbook.picture.words.Wording;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Puts drawings on sheets; where one cannot be made the sheet says so and goes on. */
public final class Drawn {
  private static final double POINTS_AN_INCH = 72;
  private static final double INSIDE = 0.04;

  private final CrewContext context;
  private final SheetBuilder sheet;
  private final Drawings drawings;

  public Drawn(CrewContext context, SheetBuilder sheet) {
    this.context = context;
    this.sheet = sheet;
    this.drawings = drawings(context);
  }

  /** Returns the drawings of a plan in the words of its workbook. */
  public static Drawings drawings(CrewContext context) {
    return new Drawings(
        context.plan().stack(), new Wording(context.formats(), context.words()::text));
  }

  public Drawings drawings() {
    return drawings;
  }

  /** Makes drawings; none where pictures are not wanted, or, said on the sheet, not possible. */
  public List<Picture> made(Supplier<List<Picture>> making) {
    if (!context.issue().pictures()) {
      return List.of();
    }
    try {
      return making.get();
    } catch (DrawingFault fault) {
      sheet.put(
          "A" + sheet.row(),
          Cell.text(context.text("picture.missing", fault.getMessage())).role(Role.NOTE));
      return List.of();
    }
  }

  /** Lays a drawing in the current row, so wide, from a distance right of the first column. */
  public double lay(Picture picture, double right, double down, double width) {
    double height = width * picture.heightInches() / picture.widthInches();
    Area corner = Area.of("A" + sheet.row());
    put(
        picture,
        new Figure.At(corner, inches(right), inches(down), inches(width), inches(height)),
        width);
    return height;
  }

  /** Lays a drawing with its corner just inside a cell, so wide. */
  public void layAt(Picture picture, Area cell, double width) {
    double height = width * picture.heightInches() / picture.widthInches();
    Length in = inches(INSIDE);
    put(picture, new Figure.At(cell, in, in, inches(width), inches(height)), width);
  }

  /** Puts a drawing in its place; its letters grow or shrink with it. */
  private void put(Picture picture, Figure.At place, double width) {
    double letters = picture.smallestPoints() * width / picture.widthInches();
    sheet.figure(new Figure.Picture(picture.png(), place, picture.altText(), letters));
  }

  /** Makes the current row so many inches high; a sheet's row holds at most 409 points. */
  public void room(double high) {
    sheet.height(Math.min(409, high * POINTS_AN_INCH));
  }

  private static Length inches(double inches) {
    return Length.of(inches, LengthUnit.INCH);
  }
}
