package roundbook.sheet.write;

import java.util.List;
import roundbook.page.Book;
import roundbook.page.Figure;
import roundbook.page.Figure.Look;

/** Writes the part of one native chart of bars, lines, or both on the same axes. */
final class ChartPart {
  private static final String NAMES = "1";
  private static final String NUMBERS = "2";
  private static final String TEXT_SIZE = "1100";
  private static final String TITLE_SIZE = "1400";

  private final Xml xml = Xml.part();
  private final ChartSeries series;

  ChartPart(Book book) {
    series = new ChartSeries(xml, book);
  }

  Xml written(Figure.Chart chart) {
    xml.open("c:chartSpace").with("xmlns:c", DrawingPart.CHART);
    xml.with("xmlns:a", DrawingPart.MAIN).with("xmlns:r", DrawingPart.RELATIONS);
    xml.val("c:roundedCorners", 0).open("c:chart");
    chart(chart);
    xml.close();
    usualText();
    return xml.close();
  }

  private void chart(Figure.Chart chart) {
    title(chart.title(), TITLE_SIZE);
    xml.val("c:autoTitleDeleted", chart.title().isEmpty() ? 1 : 0);
    xml.open("c:plotArea").open("c:layout").close();
    bars(chart);
    lines(chart);
    names(chart.axes());
    numbers(chart.axes());
    xml.close();
    xml.open("c:legend").val("c:legendPos", "b").val("c:overlay", 0).close();
    xml.val("c:plotVisOnly", 1).val("c:dispBlanksAs", "gap");
  }

  private void bars(Figure.Chart chart) {
    List<Figure.Series> rows = rows(chart, false);
    if (rows.isEmpty()) {
      return;
    }
    boolean stacked = chart.axes().stacked();
    xml.open("c:barChart").val("c:barDir", chart.axes().level() ? "bar" : "col");
    xml.val("c:grouping", stacked ? "stacked" : "clustered").val("c:varyColors", 0);
    rows.forEach(row -> series.bar(row, chart.series().indexOf(row)));
    xml.val("c:gapWidth", 60).val("c:overlap", stacked ? 100 : 0);
    xml.val("c:axId", NAMES).val("c:axId", NUMBERS).close();
  }

  private void lines(Figure.Chart chart) {
    List<Figure.Series> rows = rows(chart, true);
    if (rows.isEmpty()) {
      return;
    }
    xml.open("c:lineChart").val("c:grouping", "standard").val("c:varyColors", 0);
    rows.forEach(row -> series.line(row, chart.series().indexOf(row)));
    xml.val("c:marker", 1).val("c:axId", NAMES).val("c:axId", NUMBERS).close();
  }

  private static List<Figure.Series> rows(Figure.Chart chart, boolean lines) {
    return chart.series().stream().filter(row -> row.look().isLine() == lines).toList();
  }

  private void names(Figure.Axes axes) {
    xml.open("c:catAx").val("c:axId", NAMES);
    scaling(axes.level() ? "maxMin" : "minMax");
    xml.val("c:axPos", axes.level() ? "l" : "b");
    title(axes.categories(), TEXT_SIZE);
    ticks(NUMBERS);
    xml.val("c:crosses", "autoZero").val("c:auto", 0).val("c:lblAlgn", "ctr");
    xml.val("c:lblOffset", 100).val("c:noMultiLvlLbl", 1).close();
  }

  private void numbers(Figure.Axes axes) {
    xml.open("c:valAx").val("c:axId", NUMBERS);
    scaling("minMax");
    xml.val("c:axPos", axes.level() ? "b" : "l").open("c:majorGridlines");
    series.outline("D9D9D9", Look.BAR_PALE);
    xml.close();
    title(axes.values(), TEXT_SIZE);
    xml.open("c:numFmt").with("formatCode", "General").with("sourceLinked", 0).close();
    ticks(NAMES);
    xml.val("c:crosses", axes.level() ? "max" : "autoZero");
    xml.val("c:crossBetween", "between").close();
  }

  private void scaling(String orientation) {
    xml.open("c:scaling").val("c:orientation", orientation).close().val("c:delete", 0);
  }

  private void ticks(String crossing) {
    xml.val("c:majorTickMark", "out").val("c:minorTickMark", "none");
    xml.val("c:tickLblPos", "low").val("c:crossAx", crossing);
  }

  private void title(String text, String size) {
    if (text.isEmpty()) {
      return;
    }
    xml.open("c:title").open("c:tx").open("c:rich").open("a:bodyPr").close();
    xml.open("a:p").open("a:r").open("a:rPr").with("lang", "en-US").with("sz", size).with("b", 1);
    xml.close().text("a:t", text).close().close().close().close();
    xml.val("c:overlay", 0).close();
  }

  private void usualText() {
    xml.open("c:txPr").open("a:bodyPr").close().open("a:p");
    xml.open("a:pPr").open("a:defRPr").with("sz", TEXT_SIZE).close().close();
    xml.open("a:endParaRPr").with("lang", "en-US").close().close().close();
  }
}
