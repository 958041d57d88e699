package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Figure.Look;
import roundbook.page.Sheet;

/** Writes the rows of bars and the lines of a chart, each with the values that the book knows. */
final class ChartSeries {
  private static final String BAR_EDGE = "9525";
  private static final String LINE_WIDTH = "28575";
  private static final String LIMIT = "808080";

  private final Xml xml;
  private final Book book;

  ChartSeries(Xml xml, Book book) {
    this.xml = xml;
    this.book = book;
  }

  void bar(Figure.Series row, int index) throws XMLStreamException {
    xml.element(
        "c:ser",
        () -> {
          begin(row, index);
          xml.val("c:invertIfNegative", "0");
          data(row);
        });
  }

  void line(Figure.Series row, int index) throws XMLStreamException {
    xml.element(
        "c:ser",
        () -> {
          begin(row, index);
          xml.element("c:marker", () -> xml.val("c:symbol", "none"));
          data(row);
          xml.val("c:smooth", "0");
        });
  }

  private void begin(Figure.Series row, int index) throws XMLStreamException {
    xml.val("c:idx", String.valueOf(index));
    xml.val("c:order", String.valueOf(index));
    xml.element("c:tx", () -> xml.text("c:v", row.name()));
    xml.element(
        "c:spPr",
        () -> {
          if (!row.look().isLine()) {
            fill(row.look());
          }
          line(row.look() == Look.LINE_LIMIT ? LIMIT : "000000", row.look());
        });
  }

  private void fill(Look look) throws XMLStreamException {
    if (look == Look.BAR_HATCHED) {
      xml.element(
          "a:pattFill",
          new String[] {"prst", "wdUpDiag"},
          () -> {
            xml.element("a:fgClr", () -> xml.val("a:srgbClr", "000000"));
            xml.element("a:bgClr", () -> xml.val("a:srgbClr", "FFFFFF"));
          });
    } else {
      solid(look == Look.BAR_DARK ? "404040" : "D9D9D9");
    }
  }

  private void solid(String colour) throws XMLStreamException {
    xml.element("a:solidFill", () -> xml.val("a:srgbClr", colour));
  }

  /** Writes the shape of something that is only a line. */
  void outline(String colour, Look look) throws XMLStreamException {
    xml.element("c:spPr", () -> line(colour, look));
  }

  private void line(String colour, Look look) throws XMLStreamException {
    xml.element(
        "a:ln",
        new String[] {"w", look.isLine() && look != Look.LINE_LIMIT ? LINE_WIDTH : BAR_EDGE},
        () -> {
          solid(colour);
          if (look == Look.LINE_DASHED) {
            xml.val("a:prstDash", "dash");
          } else if (look == Look.LINE_DOTTED) {
            xml.val("a:prstDash", "sysDot");
          } else if (look == Look.LINE_CHAIN) {
            xml.val("a:prstDash", "lgDashDot");
          }
        });
  }

  private void data(Figure.Series row) throws XMLStreamException {
    xml.element(
        "c:cat",
        () ->
            xml.element(
                "c:strRef",
                () -> {
                  xml.text("c:f", row.categories().on(row.sheet()));
                  xml.element("c:strCache", () -> points(words(row)));
                }));
    xml.element(
        "c:val",
        () ->
            xml.element(
                "c:numRef",
                () -> {
                  xml.text("c:f", row.values().on(row.sheet()));
                  xml.element(
                      "c:numCache",
                      () -> {
                        xml.text("c:formatCode", "General");
                        points(numbers(row));
                      });
                }));
  }

  /** Writes points; an empty one is left out, so that the chart shows a gap. */
  private void points(List<String> points) throws XMLStreamException {
    xml.val("c:ptCount", String.valueOf(points.size()));
    for (int index = 0; index < points.size(); index++) {
      String point = points.get(index);
      if (!point.isEmpty()) {
        String[] position = {"idx", String.valueOf(index)};
        xml.element("c:pt", position, () -> xml.text("c:v", point));
      }
    }
  }

  private List<String> words(Figure.Series row) {
    List<String> words = new ArrayList<>();
    for (Cell.Value value : values(row.sheet(), row.categories())) {
      words.add(value instanceof Cell.Text text ? text.text() : number(value));
    }
    return words;
  }

  private List<String> numbers(Figure.Series row) {
    return values(row.sheet(), row.values()).stream().map(ChartSeries::number).toList();
  }

  private static String number(Cell.Value value) {
    return value instanceof Cell.Number number ? CellNumber.text(number.number()) : "";
  }

  private List<Cell.Value> values(String name, Area area) {
    Sheet sheet = sheet(name);
    List<Cell.Value> values = new ArrayList<>();
    for (int row = area.top(); row <= area.bottom(); row++) {
      for (int column = area.left(); column <= area.right(); column++) {
        values.add(sheet.cell(row, column).map(ChartSeries::now).orElse(new Cell.Blank()));
      }
    }
    return values;
  }

  private Sheet sheet(String name) {
    return book.sheets().stream()
        .filter(sheet -> sheet.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("chart of no sheet: " + name));
  }

  private static Cell.Value now(Cell cell) {
    return cell.value() instanceof Cell.Formula formula ? formula.result() : cell.value();
  }
}
