package roundbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Margins;
import roundbook.page.Sheet;
import roundbook.sheet.style.StandardLooks;
import roundbook.units.LengthUnit;

/** How large a sheet's letters come out on paper, by its paper, margins and fit. */
public final class PrintedSize {
  private final Sheet sheet;
  private final Margins margins;

  private PrintedSize(Sheet sheet) {
    this.sheet = sheet;
    this.margins = sheet.page().kind().margins();
  }

  /** Returns a line for each sheet on which something prints smaller than so many points. */
  public static List<String> under(double points, List<Sheet> sheets) {
    List<String> small = new ArrayList<>();
    for (Sheet sheet : sheets) {
      PrintedSize size = new PrintedSize(sheet);
      if (!sheet.view().hidden() && Math.min(size.cells(), size.pictures()) < points) {
        small.add(size.toString());
      }
    }
    return small;
  }

  /** Returns the part of its size at which the sheet prints, 1 at the most. */
  double scale() {
    PageSetup.Fit fit = sheet.page().fit();
    if (fit.isFullSize()) {
      return 1;
    }
    Area area = sheet.print().area().orElseThrow();
    Figure.Size size = Figure.Size.of(area, sheet.heights(), sheet.widths());
    double across = paper(true) - margins.left() - margins.right();
    double down = paper(false) - margins.top() - margins.bottom();
    double wide = across / size.width().in(LengthUnit.INCH);
    double tall = fit.tall() == 0 ? 1 : fit.tall() * down / size.height().in(LengthUnit.INCH);
    return Math.min(1, Math.min(wide, tall));
  }

  /** Letter is 8 1/2 by 11 in; A4 is 210 by 297 mm (ISO 216). */
  private double paper(boolean across) {
    boolean letter = sheet.page().paper() == PageSetup.Paper.LETTER;
    boolean longSide = across == sheet.page().landscape();
    return letter ? longSide ? 11 : 8.5 : (longSide ? 297 : 210) / 25.4;
  }

  /** Returns the smallest letters of any cell that is printed, in points on paper. */
  double cells() {
    Area printed = sheet.print().area().orElse(new Area(1, 1, 10_000, 200));
    return scale()
        * sheet.rows().subMap(printed.top(), printed.bottom() + 1).values().stream()
            .flatMap(row -> row.subMap(printed.left(), printed.right() + 1).values().stream())
            .filter(cell -> !(cell.value() instanceof Cell.Blank))
            .mapToDouble(cell -> StandardLooks.looks().get(cell.role()).font().size())
            .min()
            .orElse(99);
  }

  /** Returns the smallest letters of any drawing, in points on paper. */
  double pictures() {
    return scale()
        * sheet.figures().stream()
            .filter(Figure.Picture.class::isInstance)
            .mapToDouble(figure -> ((Figure.Picture) figure).letters())
            .min()
            .orElse(99);
  }

  @Override
  public String toString() {
    String text = "%s prints at %.2f: letters of %.1f pt, in drawings %.1f pt";
    return String.format(Locale.ROOT, text, sheet.name(), scale(), cells(), pictures());
  }
}
