package roundbook.report.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import roundbook.buying.Cost;
import roundbook.buying.Cost.LineCost;
import roundbook.buying.Line;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;

/**
 * What the order costs, by formulas from the prices on the sheet Prices.
 *
 * <p>A row a line: the cost of all its logs, and how much of that is for spares and for what is
 * sawn off in length. Under them bringing the loads, the total, and what that is for a round, a
 * foot of log and a square foot of wall.
 */
final class CostSheet {
  private static final double[] WIDTHS = {7, 9, 24, 12, 11, 13, 13, 13};
  private static final String COST = "F";
  private static final int CENTS = 2;

  private final BuyCells buy;
  private final Cost cost;
  private final ListSheet list;

  CostSheet(BuyCells buy) {
    this.buy = buy;
    this.cost = buy.purchase().cost();
    this.list = new ListSheet(buy.context(), Tab.COST, buy.context().page(PageKind.TABLE), WIDTHS);
  }

  Sheet sheet() {
    list.title(buy.text("buy.cost.title"), buy.context().jobName());
    list.text(Role.PLAIN, buy.text("buy.cost.note")).headOf("buy.cost.head");
    int first = list.next();
    cost.lines().forEach(line -> list.row(row(line)));
    totals(first, list.next() - 1);
    others();
    buy.context().words().lines("buy.cost.rule").forEach(line -> list.text(Role.NOTE, line));
    return list.build();
  }

  private List<Cell> row(LineCost line) {
    int row = list.next();
    return List.of(
        buy.cells().count(line.line().number()),
        buy.cells().count(line.line().count().all()),
        buy.cells()
            .text(
                buy.text(
                    "buy.basis." + line.of().basis().name().toLowerCase(java.util.Locale.ROOT))),
        Cell.number(line.quantity().doubleValue()).format(Format.GENERAL),
        Cell.formula(price(line), line.of().price().doubleValue()).format(Format.GENERAL),
        money("ROUND(D" + row + "*E" + row + ",2)", line.cost()),
        money(share(row, line.spareShare()), line.spares()),
        money(share(row, line.wasteShare()), line.waste()));
  }

  private static String share(int row, BigDecimal share) {
    return "ROUND(" + COST + row + "*" + share.toPlainString() + ",2)";
  }

  /** Returns the name of the cell on the sheet Prices that holds a price. */
  private static String price(LineCost line) {
    return Book.nameOf("Price", line.price() + 1);
  }

  private static Cell money(String formula, BigDecimal now) {
    return Cell.formula(formula, now.doubleValue()).format(Format.DECIMAL_2);
  }

  private void totals(int first, int last) {
    list.spans(5, 1, 1, 1);
    int logs = list.next();
    list.row(
        label("buy.cost.logs"),
        total(sum("F", first, last), cost.logs()),
        total(sum("G", first, last), cost.spares()),
        total(sum("H", first, last), cost.waste()));
    list.spans(5, 1);
    cost.delivery()
        .ifPresent(
            each ->
                list.row(
                    buy.cells().text(buy.text("buy.cost.delivery", each.loads())),
                    money("ROUND(" + each.loads() + "*" + delivery() + ",2)", each.cost())));
    String all = COST + logs + (cost.delivery().isPresent() ? "+" + COST + (logs + 1) : "");
    String total = COST + list.next();
    list.row(label("buy.cost.total"), total(all, cost.total()));
    part(buy.metric() ? "buy.cost.metre" : "buy.cost.foot", total, cost.total(), length());
    if (cost.order().isWhole()) {
      long walls = cost.lines().stream().filter(each -> each.line().isOfWalls()).count();
      int others = first + (int) walls;
      String ofWalls = others > last ? total : "(" + total + "-" + sum("F", others, last) + ")";
      BigDecimal now = cost.total().subtract(cost.others());
      part("buy.cost.round", ofWalls, now, BigDecimal.valueOf(cost.order().sizes().count()));
      part(buy.metric() ? "buy.cost.wall.metre" : "buy.cost.wall.foot", ofWalls, now, wall());
    }
  }

  private static String sum(String column, int first, int last) {
    return "SUM(" + column + first + ":" + column + last + ")";
  }

  private Cell label(String key) {
    return buy.cells().bold(buy.text(key));
  }

  private static Cell total(String formula, BigDecimal now) {
    return money(formula, now).role(Role.NUMBER_BOLD).format(Format.DECIMAL_2);
  }

  /** Returns the name of the cell with the first price for bringing a load. */
  private String delivery() {
    int at = 1;
    while (buy.purchase().prices().get(at - 1).delivery().isEmpty()) {
      at++;
    }
    return Book.nameOf("Delivery", at);
  }

  private void part(String key, String whole, BigDecimal now, BigDecimal by) {
    list.row(
        buy.cells().text(buy.text(key)),
        money(
            "ROUND(" + whole + "/" + by.toPlainString() + ",2)",
            now.divide(by, CENTS, RoundingMode.HALF_UP)));
  }

  /** Returns the length of all logs asked for, in feet or metres to a hundredth. */
  private BigDecimal length() {
    double inches =
        cost.lines().stream()
            .map(LineCost::line)
            .mapToDouble(line -> line.count().all() * line.lengths().ask().inches())
            .sum();
    return hundredths(buy.bulk().length(inches));
  }

  private BigDecimal wall() {
    return hundredths(buy.bulk().area(144 * cost.order().wallSquareFeet()));
  }

  private static BigDecimal hundredths(double number) {
    return BigDecimal.valueOf(number).setScale(CENTS, RoundingMode.HALF_UP);
  }

  /** Writes what the prices that do not count would make of the lines that they are for. */
  private void others() {
    List<LineCost> others = buy.purchase().otherOffers();
    List<Line> unpriced =
        cost.order().lines().stream().filter(line -> cost.of(line).isEmpty()).toList();
    if (!unpriced.isEmpty()) {
      String numbers =
          String.join(", ", unpriced.stream().map(line -> "" + line.number()).toList());
      list.text(Role.PLAIN_BOLD, buy.text("buy.cost.unpriced", numbers));
    }
    if (others.isEmpty()) {
      return;
    }
    list.heading(buy.text("buy.cost.others"));
    list.spans(1, 1, 1, 1, 1, 1, 1, 1).headOf("buy.cost.head");
    others.forEach(line -> list.row(row(line)));
  }
}
