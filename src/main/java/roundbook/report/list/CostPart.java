package roundbook.report.list;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.CellNames;
import roundbook.page.Role;
import roundbook.plan.LogCost;
import roundbook.plan.Plan;
import roundbook.plan.Plan.Use;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.units.Bulk;

/** What the logs cost by each of the builder's prices, live from the sheet Settings. */
final class CostPart {
  private static final int CENTS = 2;

  private final CrewContext context;
  private final Plan plan;
  private final Cells cells;
  private final ListSheet list;
  private final Bulk bulk;

  CostPart(CrewContext context, ListSheet list) {
    this.context = context;
    this.plan = context.plan();
    this.cells = new Cells(context);
    this.list = list;
    this.bulk = new Bulk(context.rules().metric());
  }

  /** Writes the sums, and what they come to by the round, the length and the wall. */
  void write() {
    List<LogCost> costs = LogCost.of(plan);
    if (costs.isEmpty()) {
      return;
    }
    list.heading(context.text("materials.cost"));
    list.spans(7, 3, 3, 4, 4, 3).headOf("materials.cost.head");
    costs.forEach(cost -> list.row(sums(cost, price(costs.indexOf(cost)))));
    list.spans(7, 4, 4, 5, 4).headOf("materials.cost.parts", bulk.symbol());
    costs.forEach(cost -> list.row(parts(cost, price(costs.indexOf(cost)))));
    list.text(Role.NOTE, context.text("materials.cost.note"));
  }

  private static String price(int index) {
    return CellNames.item("Selling", index + 1, "price");
  }

  private List<Cell> sums(LogCost cost, String price) {
    return List.of(
        basis(cost),
        Cell.number(cost.all().doubleValue()).format(Format.GENERAL),
        Cell.formula(price, cost.price().price().doubleValue()).format(Format.GENERAL),
        money(cost.all(), price, cost),
        money(cost.byUse().get(Use.PLACED), price, cost),
        money(cost.byUse().get(Use.SPARE), price, cost));
  }

  private List<Cell> parts(LogCost cost, String price) {
    BigDecimal placed = cost.byUse().get(Use.PLACED);
    return List.of(
        basis(cost),
        part(placed, BigDecimal.valueOf(plan.rounds()), price, cost),
        part(cost.all(), hundredths(bulk.length(lengths())), price, cost),
        part(placed, hundredths(bulk.area(LogCost.wallArea(plan))), price, cost),
        money(cost.waste(), price, cost));
  }

  private Cell basis(LogCost cost) {
    String basis = cost.price().basis().name().toLowerCase(Locale.ROOT);
    return cells.bold(context.text("buy.basis." + basis));
  }

  private double lengths() {
    return plan.uses().stream().mapToDouble(use -> use.log().length().inches()).sum();
  }

  private static BigDecimal hundredths(double number) {
    return BigDecimal.valueOf(number).setScale(CENTS, RoundingMode.HALF_UP);
  }

  private Cell part(BigDecimal quantity, BigDecimal by, String price, LogCost cost) {
    if (by.signum() == 0) {
      return cells.centre("–");
    }
    BigDecimal now =
        quantity.multiply(cost.price().price()).divide(by, CENTS, RoundingMode.HALF_UP);
    String formula =
        "ROUND(" + quantity.toPlainString() + "*" + price + "/" + by.toPlainString() + ",2)";
    return Cell.formula(formula, now.doubleValue()).format(Format.DECIMAL_2);
  }

  private Cell money(BigDecimal quantity, String price, LogCost cost) {
    return part(quantity, BigDecimal.ONE, price, cost);
  }
}
