package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.List;
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

  void bar(Figure.Series row, int index) {
    begin(row, index);
    xml.val("c:invertIfNegative", 0);
    data(row);
    xml.close();
  }

  void line(Figure.Series row, int index) {
    begin(row, index);
    xml.open("c:marker").val("c:symbol", "none").close();
    data(row);
    xml.val("c:smooth", 0).close();
  }

  private void begin(Figure.Series row, int index) {
    xml.open("c:ser").val("c:idx", index).val("c:order", index);
    xml.open("c:tx").text("c:v", row.name()).close().open("c:spPr");
    if (!row.look().isLine()) {
      fill(row.look());
    }
    line(row.look() == Look.LINE_LIMIT ? LIMIT : "000000", row.look());
    xml.close();
  }

  private void fill(Look look) {
    if (look == Look.BAR_HATCHED) {
      xml.open("a:pattFill").with("prst", "wdUpDiag");
      xml.open("a:fgClr").val("a:srgbClr", "000000").close();
      xml.open("a:bgClr").val("a:srgbClr", "FFFFFF").close().close();
    } else {
      solid(look == Look.BAR_DARK ? "404040" : "D9D9D9");
    }
  }

  private void solid(String colour) {
    xml.open("a:solidFill").val("a:srgbClr", colour).close();
  }

  /** Writes the shape of something that is only a line. */
  void outline(String colour, Look look) {
    xml.open("c:spPr");
    line(colour, look);
    xml.close();
  }

  private void line(String colour, Look look) {
    boolean thick = look.isLine() && look != Look.LINE_LIMIT;
    xml.open("a:ln").with("w", thick ? LINE_WIDTH : BAR_EDGE);
    solid(colour);
    if (look == Look.LINE_DASHED) {
      xml.val("a:prstDash", "dash");
    } else if (look == Look.LINE_DOTTED) {
      xml.val("a:prstDash", "sysDot");
    } else if (look == Look.LINE_CHAIN) {
      xml.val("a:prstDash", "lgDashDot");
    }
    xml.close();
  }

  private void data(Figure.Series row) {
    xml.open("c:cat").open("c:strRef").text("c:f", row.categories().on(row.sheet()));
    xml.open("c:strCache");
    points(words(row));
    xml.close().close().close();
    xml.open("c:val").open("c:numRef").text("c:f", row.values().on(row.sheet()));
    xml.open("c:numCache").text("c:formatCode", "General");
    points(numbers(row));
    xml.close().close().close();
  }

  /** Writes points; an empty one is left out, so that the chart shows a gap. */
  private void points(List<String> points) {
    xml.val("c:ptCount", points.size());
    for (int index = 0; index < points.size(); index++) {
      if (!points.get(index).isEmpty()) {
        xml.open("c:pt").with("idx", index).text("c:v", points.get(index)).close();
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
