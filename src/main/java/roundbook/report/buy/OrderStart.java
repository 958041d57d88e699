package roundbook.report.buy;

import java.util.List;
import roundbook.buying.Line;
import roundbook.buying.Loads;
import roundbook.buying.Order;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.PassagePlates;
import roundbook.report.frame.Tab;

/** The first page of an order: what for, how much, what next, and the usual cautions. */
final class OrderStart {
  private static final double[] WIDTHS = ListSheet.grid(12, 7.6);

  private final BuyCells buy;
  private final Order order;
  private final ListSheet list;

  private OrderStart(BuyCells buy) {
    this.buy = buy;
    this.order = buy.purchase().order();
    PageSetup page = buy.context().page(PageKind.TABLE).fit(PageSetup.Fit.ONE_PAGE);
    this.list = new ListSheet(buy.context(), Tab.START, page, WIDTHS).spans(4, 8);
  }

  static Sheet of(BuyCells buy, List<Sheet> told) {
    return new OrderStart(buy).sheet(told);
  }

  private Sheet sheet(List<Sheet> told) {
    list.title(buy.text("buy.title"), buy.context().jobName());
    list.text(Role.PLAIN, buy.text("buy.what")).headOf("buy.start.head");
    walls();
    amounts();
    list.heading(buy.text("buy.sheets"));
    told.forEach(sheet -> list.row(link(sheet.name()), told(sheet)));
    list.row(link("Logs"), buy.cells().text(buy.text("buy.sheet.logs")));
    list.row(link("Prices"), buy.cells().text(buy.text("buy.sheet.prices")));
    list.row(link("Job"), buy.cells().text(buy.text("buy.sheet.job")));
    list.heading(buy.text("buy.next"));
    buy.context().words().lines("buy.next").forEach(line -> list.text(Role.PLAIN, line));
    list.text(Role.CAUTION_HEAD, buy.text("caution.head"));
    buy.context().words().lines("caution").forEach(line -> list.text(Role.CAUTION, line));
    return list.build();
  }

  private Cell link(String tab) {
    return buy.cells().link(tab);
  }

  private Cell told(Sheet sheet) {
    return buy.cells().text(buy.text("buy.sheet." + sheet.id()));
  }

  private void walls() {
    fact(
        "buy.walls", String.join(", ", order.building().walls().stream().map(this::wall).toList()));
    PassagePlates.words(buy.context()).ifPresent(words -> fact("plates", words));
    if (order.isWhole()) {
      rounds();
    }
  }

  private void rounds() {
    fact(
        "buy.height",
        buy.text(
            "buy.height.is",
            order.sizes().count(),
            buy.cells().formats().feetInches(order.sizes().height()),
            buy.cells().formats().feetInches(order.sizes().firstLaidHeight())));
    fact(
        "buy.sizes",
        buy.text(
            "buy.sizes.are",
            String.join(
                ", ", order.sizes().rounds().stream().map(buy.cells().formats()::mark).toList()),
            buy.context().rules().unit().symbol()));
  }

  private String wall(Wall wall) {
    return wall.name() + " " + buy.cells().formats().feetInches(order.building().told(wall));
  }

  private void amounts() {
    int other = order.count() - order.logs() - order.spares();
    String key = other == 0 ? "buy.logs.are" : "buy.logs.are.other";
    fact("buy.logs", buy.text(key, order.count(), order.logs(), order.spares(), other));
    fact(
        "buy.weight",
        buy.text(
            order.species().standIn() ? "buy.weight.stand_in" : "buy.weight.is",
            buy.weightText(order.total(Line::pounds)),
            buy.weightText(order.total(Line::poundsAtMost)),
            order.species().species().name()));
    fact(
        "buy.loads",
        buy.purchase().loads().map(this::loads).orElseGet(() -> buy.text("buy.loads.unknown")));
    boolean priced = !buy.purchase().cost().lines().isEmpty();
    fact(
        "buy.cost",
        priced ? buy.money(buy.purchase().cost().total()) : buy.text("buy.cost.unknown"));
  }

  private String loads(Loads loads) {
    String count = String.valueOf(loads.loads().size());
    String left = buy.unhauled();
    return left.isEmpty() ? count : buy.text("buy.loads.left", count, left);
  }

  private void fact(String key, String value) {
    list.row(buy.cells().bold(buy.text(key)), buy.cells().text(value));
  }
}
