package roundbook.sheet.write;

import java.io.IOException;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import roundbook.page.Book;
import roundbook.page.Figure;
import roundbook.page.Figure.Look;

/** Writes the part of one native chart of bars, lines, or both on the same axes. */
final class ChartPart {
  private static final String[] ROOT = {
    "xmlns:c", DrawingPart.CHART, "xmlns:a", DrawingPart.MAIN, "xmlns:r", DrawingPart.RELATIONS
  };
  private static final String NAMES = "1";
  private static final String NUMBERS = "2";
  private static final String TEXT_SIZE = "1100";
  private static final String TITLE_SIZE = "1400";

  private final Xml xml;
  private final ChartSeries series;

  ChartPart(Xml xml, Book book) {
    this.xml = xml;
    series = new ChartSeries(xml, book);
  }

  void write(Figure.Chart chart) throws IOException {
    xml.part(
        "c:chartSpace",
        ROOT,
        () -> {
          xml.val("c:roundedCorners", "0");
          xml.element("c:chart", () -> chart(chart));
          xml.element("c:txPr", () -> usualText());
        });
  }

  private void chart(Figure.Chart chart) throws XMLStreamException {
    title(chart.title(), TITLE_SIZE);
    xml.val("c:autoTitleDeleted", chart.title().isEmpty() ? "1" : "0");
    xml.element(
        "c:plotArea",
        () -> {
          xml.empty("c:layout");
          bars(chart);
          lines(chart);
          names(chart.axes());
          numbers(chart.axes());
        });
    xml.element(
        "c:legend",
        () -> {
          xml.val("c:legendPos", "b");
          xml.val("c:overlay", "0");
        });
    xml.val("c:plotVisOnly", "1");
    xml.val("c:dispBlanksAs", "gap");
  }

  private void bars(Figure.Chart chart) throws XMLStreamException {
    List<Figure.Series> rows = rows(chart, false);
    if (rows.isEmpty()) {
      return;
    }
    xml.element(
        "c:barChart",
        () -> {
          xml.val("c:barDir", chart.axes().level() ? "bar" : "col");
          xml.val("c:grouping", chart.axes().stacked() ? "stacked" : "clustered");
          xml.val("c:varyColors", "0");
          for (Figure.Series row : rows) {
            series.bar(row, chart.series().indexOf(row));
          }
          xml.val("c:gapWidth", "60");
          xml.val("c:overlap", chart.axes().stacked() ? "100" : "0");
          xml.val("c:axId", NAMES);
          xml.val("c:axId", NUMBERS);
        });
  }

  private void lines(Figure.Chart chart) throws XMLStreamException {
    List<Figure.Series> rows = rows(chart, true);
    if (rows.isEmpty()) {
      return;
    }
    xml.element(
        "c:lineChart",
        () -> {
          xml.val("c:grouping", "standard");
          xml.val("c:varyColors", "0");
          for (Figure.Series row : rows) {
            series.line(row, chart.series().indexOf(row));
          }
          xml.val("c:marker", "1");
          xml.val("c:axId", NAMES);
          xml.val("c:axId", NUMBERS);
        });
  }

  private static List<Figure.Series> rows(Figure.Chart chart, boolean lines) {
    return chart.series().stream().filter(row -> row.look().isLine() == lines).toList();
  }

  private void names(Figure.Axes axes) throws XMLStreamException {
    xml.element(
        "c:catAx",
        () -> {
          xml.val("c:axId", NAMES);
          scaling(axes.level() ? "maxMin" : "minMax");
          xml.val("c:axPos", axes.level() ? "l" : "b");
          title(axes.categories(), TEXT_SIZE);
          ticks(NUMBERS);
          xml.val("c:crosses", "autoZero");
          xml.val("c:auto", "0");
          xml.val("c:lblAlgn", "ctr");
          xml.val("c:lblOffset", "100");
          xml.val("c:noMultiLvlLbl", "1");
        });
  }

  private void numbers(Figure.Axes axes) throws XMLStreamException {
    xml.element(
        "c:valAx",
        () -> {
          xml.val("c:axId", NUMBERS);
          scaling("minMax");
          xml.val("c:axPos", axes.level() ? "b" : "l");
          xml.element("c:majorGridlines", () -> series.outline("D9D9D9", Look.BAR_PALE));
          title(axes.values(), TEXT_SIZE);
          xml.empty("c:numFmt", "formatCode", "General", "sourceLinked", "0");
          ticks(NAMES);
          xml.val("c:crosses", axes.level() ? "max" : "autoZero");
          xml.val("c:crossBetween", "between");
        });
  }

  private void scaling(String orientation) throws XMLStreamException {
    xml.element("c:scaling", () -> xml.val("c:orientation", orientation));
    xml.val("c:delete", "0");
  }

  private void ticks(String crossing) throws XMLStreamException {
    xml.val("c:majorTickMark", "out");
    xml.val("c:minorTickMark", "none");
    xml.val("c:tickLblPos", "low");
    xml.val("c:crossAx", crossing);
  }

  private void title(String text, String size) throws XMLStreamException {
    if (text.isEmpty()) {
      return;
    }
    xml.element(
        "c:title",
        () -> {
          xml.element("c:tx", () -> xml.element("c:rich", () -> words(text, size)));
          xml.val("c:overlay", "0");
        });
  }

  private void words(String text, String size) throws XMLStreamException {
    xml.empty("a:bodyPr");
    xml.element(
        "a:p",
        () ->
            xml.element(
                "a:r",
                () -> {
                  xml.empty("a:rPr", "lang", "en-US", "sz", size, "b", "1");
                  xml.text("a:t", text);
                }));
  }

  private void usualText() throws XMLStreamException {
    xml.empty("a:bodyPr");
    xml.element(
        "a:p",
        () -> {
          xml.element("a:pPr", () -> xml.empty("a:defRPr", "sz", TEXT_SIZE));
          xml.empty("a:endParaRPr", "lang", "en-US");
        });
  }
}
