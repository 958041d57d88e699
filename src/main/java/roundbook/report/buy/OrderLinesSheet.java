package roundbook.report.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import roundbook.buying.Cost;
import roundbook.buying.Line;
import roundbook.buying.Order;
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
import roundbook.plan.OtherLogs;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.mark.OtherLogOrder;
import roundbook.units.Length;
import roundbook.wood.LogRule;

/** The page for the yard: every line of the order, what it comes to, and what has arrived. */
final class OrderLinesSheet {
  private static final double[] WIDTHS = {
    5.5, 8.5, 9, 13, 12, 11, 12.5, 8.5, 8.5, 11, 8, 8.5, 8, 7.5, 8
  };
  private static final double CHART_HEIGHT = 130;

  private static final int[] SCALED = {1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2};
  private static final int[] UNSCALED = {1, 2, 2, 2, 2, 2, 2, 2};
  private static final int MOST_LARGE = 8;
  private static final int ARRIVED = 15;
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
    chart(first, last);
    comesTo();
    OtherLogOrder.write(
        buy.context(),
        list,
        OtherLogs.toOrder(
            buy.context().rules(), Order.unmeasured(buy.context().plan().job().others())),
        3,
        2,
        2,
        2,
        2,
        1,
        1,
        2);
    return list.build();
  }

  private List<Cell> row(Line line) {
    return List.of(
        buy.cells().count(line.number()).role(isLong() ? Role.BODY_CENTRE : Role.LARGE_NUMBER),
        buy.cells().count(line.count().all()).role(isLong() ? Role.BODY_CENTRE : Role.LARGE),
        buy.cells().count(line.count().spares()),
        buy.cells().centre(buy.from(line)),
        buy.cells().tape(line.lengths().least()),
        buy.cells().tape(line.lengths().ask()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        buy.cells().tape(line.lengths().delivered()),
        buy.cells().printed(line.band().from()),
        buy.cells().printed(line.band().to()),
        buy.cells().tape(line.lengths().midAt()),
        tip(line.tips().least()),
        tip(line.tips().better()),
        buy.cells().centre(line.isOfWalls() ? line.roundsText() : "–"),
        buy.cells().centre(line.use()),
        Cell.blank(Role.TYPED_IN)
            .format(Format.WHOLE)
            .named(Book.nameOf("Arrived", line.number())));
  }

  private Cell tip(Length least) {
    return least.isZero() ? buy.cells().centre("–") : buy.cells().printed(least);
  }

  /** Returns whether rows are kept low, so that the lines fit on one page under their headings. */
  private boolean isLong() {
    return buy.purchase().order().lines().size() > MOST_LARGE;
  }

  private void chart(int first, int last) {
    Area area = list.block().free(CHART_HEIGHT);
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
    list.heading(buy.text("buy.comes.heading"));
    List<String> heads = new ArrayList<>();
    String cubic = buy.text(buy.metric() ? "buy.cubic.metres" : "buy.cubic.feet");
    heads.addAll(buy.context().words().lines("buy.comes.head", cubic));
    if (isScaled()) {
      heads.addAll(buy.context().words().lines("buy.comes.scale"));
    }
    heads.add(buy.text("buy.comes.cost"));
    list.spans(isScaled() ? SCALED : UNSCALED).head(heads.toArray(String[]::new));
    lines.forEach(line -> list.row(comesTo(line)));
    list.row(all(lines));
    list.text(Role.NOTE, buy.text("buy.comes.rule"));
    if (isScaled()) {
      String taper =
          buy.text(buy.metric() ? "buy.comes.scale.taper.metric" : "buy.comes.scale.taper");
      list.text(Role.NOTE, buy.text("buy.comes.scale.rule", taper));
    }
  }

  /** Returns whether board feet are told: in inch work, and where somebody sells by them. */
  private boolean isScaled() {
    return !buy.metric()
        || buy.purchase().prices().stream().anyMatch(price -> price.basis().isBoardFoot());
  }

  private List<Cell> comesTo(Line line) {
    int count = line.count().all();
    Quantities one = Quantities.of(line, scaledMost());
    List<Cell> cells = new ArrayList<>();
    cells.add(buy.cells().count(line.number()));
    cells.add(buy.cells().count(count));
    cells.add(buy.volume(line.cubicFeet()));
    cells.add(buy.volume(count * line.cubicFeet()));
    cells.add(buy.weight(line.pounds()));
    cells.add(buy.weight(line.poundsAtMost()));
    cells.add(buy.weight(count * line.pounds()));
    scaled(cells, rule -> count * one.scale(rule));
    cells.add(money(buy.purchase().cost().of(line).map(Cost.LineCost::cost)));
    return cells;
  }

  private List<Cell> all(List<Line> lines) {
    Order order = buy.purchase().order();
    Cell empty = Cell.text("").role(Role.BODY);
    boolean priced = !buy.purchase().cost().lines().isEmpty();
    List<Cell> cells = new ArrayList<>();
    cells.add(buy.cells().bold(buy.text("buy.all")));
    cells.add(buy.cells().count(lines.stream().mapToInt(line -> line.count().all()).sum()));
    cells.add(empty);
    cells.add(buy.volume(order.total(Line::cubicFeet)));
    cells.add(empty);
    cells.add(empty);
    cells.add(buy.weight(order.total(Line::pounds)));
    scaled(cells, rule -> order.total(line -> Quantities.of(line, scaledMost()).scale(rule)));
    cells.add(money(Optional.of(buy.purchase().cost().logs()).filter(cost -> priced)));
    return cells;
  }

  /** Adds board feet by each rule where they are told. */
  private void scaled(List<Cell> cells, ToDoubleFunction<LogRule> boardFeet) {
    if (isScaled()) {
      RULES.forEach(rule -> cells.add(scaled(boardFeet.applyAsDouble(rule))));
    }
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
