package roundbook.report.buy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import roundbook.buying.Cost;
import roundbook.buying.Line;
import roundbook.buying.Quantities;
import roundbook.job.Setting;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Figure;
import roundbook.page.Figure.Axes;
import roundbook.page.Figure.Look;
import roundbook.page.Figure.Series;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.wood.LogRule;

/** The page for the yard: every line of the order, what it comes to, and what has arrived. */
final class OrderLinesSheet {
  private static final double[] WIDTHS = {6, 9, 9, 12, 12, 12, 9, 9, 13, 11, 9, 8, 8, 11};
  private static final double CHART_HEIGHT = 190;

  /** Room kept for texts that stand higher than they were reckoned. */
  private static final double DOUBT = 50;

  private static final int ARRIVED = 14;
  private static final List<LogRule> RULES =
      List.of(
          LogRule.DOYLE,
          LogRule.SCRIBNER,
          LogRule.SCRIBNER_DECIMAL_C,
          LogRule.INTERNATIONAL_QUARTER);

  private final BuyCells buy;
  private final ListSheet list;

  private OrderLinesSheet(BuyCells buy) {
    this.buy = buy;
    this.list =
        new ListSheet(buy.context(), Tab.ORDER, buy.context().page(PageKind.TABLE).lying(), WIDTHS);
  }

  static Sheet of(BuyCells buy) {
    return new OrderLinesSheet(buy).sheet();
  }

  private Sheet sheet() {
    list.title(buy.text("buy.order.title"), buy.context().jobName());
    list.text(Role.PLAIN, buy.text("buy.order.note"));
    Line any = buy.purchase().order().lines().get(0);
    list.headOf(
        "buy.order.head",
        buy.context().rules().unit().symbol(),
        buy.cells().withUnit(any.lengths().over()));
    int first = list.next();
    buy.purchase().order().lines().forEach(line -> list.row(row(line)));
    int last = list.next() - 1;
    buy.context().words().lines("buy.order.rule").forEach(line -> list.text(Role.PLAIN, line));
    comesTo();
    chart(first, last);
    return list.build();
  }

  private List<Cell> row(Line line) {
    return List.of(
        buy.cells().count(line.number()).role(Role.LARGE_NUMBER),
        buy.cells().count(line.count().all()).role(Role.LARGE),
        buy.cells().count(line.count().spares()),
        buy.cells().centre(buy.from(line)),
        buy.cells().tape(line.lengths().least()),
        buy.cells().tape(line.lengths().ask()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        buy.cells().printed(line.band().from()),
        buy.cells().printed(line.band().to()),
        buy.cells().tape(line.lengths().midAt()),
        buy.cells().printed(line.tips().least()),
        buy.cells().printed(line.tips().better()),
        buy.cells().centre(line.rounds().toString()),
        buy.cells().centre(line.wallNames()),
        Cell.blank(Role.TYPED_IN)
            .format(Format.WHOLE)
            .named(Book.nameOf("Arrived", line.number())));
  }

  private void chart(int first, int last) {
    list.room(CHART_HEIGHT + DOUBT);
    Area area = list.free(CHART_HEIGHT);
    String tab = list.sheet().name();
    Area names = new Area(first, 1, last, 1);
    list.sheet()
        .figure(
            new Figure.Chart(
                buy.text("buy.chart"),
                Axes.upright(buy.text("buy.chart.line"), buy.text("buy.chart.logs")),
                List.of(
                    new Series(
                        buy.text("buy.chart.wanted"),
                        tab,
                        names,
                        new Area(first, 2, last, 2),
                        Look.BAR_PALE),
                    new Series(
                        buy.text("buy.chart.arrived"),
                        tab,
                        names,
                        new Area(first, ARRIVED, last, ARRIVED),
                        Look.BAR_DARK)),
                new Figure.Over(area),
                buy.text("buy.chart.alt")));
  }

  /** Writes volume, weight, board feet and cost of every line, and of them all. */
  private void comesTo() {
    List<Line> lines = buy.purchase().order().lines();
    list.room(ListSheet.tableHeight(lines.size() + 1));
    list.heading(buy.text("buy.comes.heading"));
    list.spans(1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 1, 2)
        .headOf("buy.comes.head", buy.text(buy.metric() ? "buy.cubic.metres" : "buy.cubic.feet"));
    lines.forEach(line -> list.row(comesTo(line)));
    list.row(all(lines));
    buy.context().words().lines("buy.comes.rule").forEach(line -> list.text(Role.NOTE, line));
  }

  private List<Cell> comesTo(Line line) {
    int count = line.count().all();
    Quantities one = Quantities.of(line, scaledMost());
    return List.of(
        buy.cells().count(line.number()),
        buy.cells().count(count),
        buy.volume(line.cubicFeet()),
        buy.volume(count * line.cubicFeet()),
        buy.weight(line.pounds()),
        buy.weight(line.poundsAtMost()),
        buy.weight(count * line.pounds()),
        scaled(count * one.scale(RULES.get(0))),
        scaled(count * one.scale(RULES.get(1))),
        scaled(count * one.scale(RULES.get(2))),
        scaled(count * one.scale(RULES.get(3))),
        money(buy.purchase().cost().of(line).map(Cost.LineCost::cost)));
  }

  private List<Cell> all(List<Line> lines) {
    List<Double> scaled =
        RULES.stream()
            .map(
                rule ->
                    buy.purchase()
                        .order()
                        .total(line -> Quantities.of(line, scaledMost()).scale(rule)))
            .toList();
    Cell empty = Cell.text("").role(Role.BODY);
    boolean priced = !buy.purchase().cost().lines().isEmpty();
    return List.of(
        buy.cells().bold(buy.text("buy.all")),
        buy.cells().count(lines.stream().mapToInt(line -> line.count().all()).sum()),
        empty,
        buy.volume(buy.purchase().order().total(Line::cubicFeet)),
        empty,
        empty,
        buy.weight(buy.purchase().order().total(Line::pounds)),
        scaled(scaled.get(0)),
        scaled(scaled.get(1)),
        scaled(scaled.get(2)),
        scaled(scaled.get(3)),
        money(Optional.of(buy.purchase().cost().logs()).filter(cost -> priced)));
  }

  private double scaledMost() {
    return buy.context().rules().length(Setting.SCALE_LENGTH_MOST).inches() / 12;
  }

  private static Cell scaled(double boardFeet) {
    return Cell.number(Math.round(boardFeet)).role(Role.BODY_CENTRE).format(Format.THOUSANDS);
  }

  private static Cell money(Optional<BigDecimal> money) {
    return money
        .map(each -> Cell.number(each.doubleValue()).role(Role.NUMBER).format(Format.DECIMAL_2))
        .orElseGet(() -> Cell.text("–").role(Role.BODY_CENTRE));
  }
}
