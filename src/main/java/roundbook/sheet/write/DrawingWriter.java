package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundbook.page.Book;
import roundbook.page.Figure;

/** Adds pictures and charts to the sheets of a workbook; equal pictures become one part. */
final class DrawingWriter {
  private static final String XML = ".xml";

  private final Parts parts;
  private final Book book;
  private final Map<Integer, List<Stored>> pictures = new HashMap<>();
  private int drawings;

  private record Stored(byte[] png, String part) {}

  DrawingWriter(Parts parts, Book book) {
    this.parts = parts;
    this.book = book;
  }

  /** Adds the figures of one sheet, in order; returns by what the sheet's part refers to them. */
  String write(List<Figure> figures, String sheet) {
    String drawing = "xl/drawings/drawing" + ++drawings + XML;
    List<String> relations = new ArrayList<>();
    for (Figure figure : figures) {
      relations.add(parts.relate(drawing, content(figure)));
    }
    parts.add(Part.DRAWING, drawing, new DrawingPart().written(figures, relations).bytes());
    return parts.relate(sheet, drawing);
  }

  /** Returns the part with what a figure shows. */
  private String content(Figure figure) {
    return figure instanceof Figure.Chart chart
        ? parts.add(Part.CHART, "xl/charts/chart", XML, new ChartPart(book).written(chart).bytes())
        : picture(((Figure.Picture) figure).png());
  }

  private String picture(byte[] png) {
    List<Stored> alike = pictures.computeIfAbsent(Arrays.hashCode(png), key -> new ArrayList<>());
    for (Stored stored : alike) {
      if (Arrays.equals(stored.png, png)) {
        return stored.part;
      }
    }
    String part = parts.add(Part.PICTURE, "xl/media/image", Parts.PICTURE, png);
    alike.add(new Stored(png, part));
    return part;
  }
}
