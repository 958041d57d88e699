package roundbook.report.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import roundbook.buying.Cost;
import roundbook.buying.Cost.LineCost;
import roundbook.buying.Line;
import roundbook.buying.Loads.Item;
import roundbook.buying.Loads.Load;
import roundbook.buying.Purchase;
import roundbook.page.PlainTable;
import roundbook.report.words.Decimals;
import roundbook.units.Bulk;

/**
 * An order as plain tables for other programs: order, cost and loads.
 *
 * <p>Volume, weight and cost of a line are those of all its logs, spares among them; the weight is
 * the usual one in {@code order} and the most in {@code loads}. Lengths are in inches or
 * millimetres, volumes in cubic feet or metres, weights in pounds or kilograms, as the headings
 * say.
 *
 * <pre>{@code
 * line,walls,rounds,from,logs,spares,least_length_in,ask_length_in,mid_from_in,…
 * 1,N S,1-7,butt,7,2,274,288,11,…
 * }</pre>
 */
public final class OrderTables {
  private static final double CUBIC_FOOT = 1728;

  private final Purchase purchase;
  private final Decimals decimals;
  private final Bulk bulk;

  private OrderTables(Purchase purchase) {
    this.purchase = purchase;
    this.decimals = new Decimals(purchase.rules().metric());
    this.bulk = new Bulk(purchase.rules().metric());
  }

  /** Returns the tables order, cost and loads; the last two may have no row. */
  public static List<PlainTable> of(Purchase purchase) {
    OrderTables tables = new OrderTables(purchase);
    return List.of(tables.order(), tables.cost(), tables.loads());
  }

  private PlainTable order() {
    String volume = decimals.metric() ? "volume_m3,weight_kg" : "volume_ft3,weight_lb";
    return new PlainTable(
        "order",
        decimals.header(
            "line,walls,rounds,from,logs,spares,least_length_#,ask_length_#,mid_from_#,mid_to_#,"
                + "mid_at_#,least_tip_#,better_tip_#,"
                + volume
                + ",cost"),
        purchase.order().lines().stream().map(this::orderRow).toList());
  }

  private List<String> orderRow(Line line) {
    int count = line.count().all();
    List<String> row = new ArrayList<>();
    row.add(String.valueOf(line.number()));
    row.add(line.wallNames());
    row.add(line.rounds().toString());
    row.add(line.from().word());
    row.add(String.valueOf(line.count().logs()));
    row.add(String.valueOf(line.count().spares()));
    row.addAll(
        decimals.of(
            line.lengths().least(),
            line.lengths().ask(),
            line.band().from(),
            line.band().to(),
            line.lengths().midAt(),
            line.tips().least(),
            line.tips().better()));
    row.add(Decimals.plain(bulk.volume(count * line.cubicFeet() * CUBIC_FOOT)));
    row.add(Decimals.plain(bulk.weight(count * line.pounds())));
    row.add(purchase.cost().of(line).map(LineCost::cost).map(OrderTables::plain).orElse(""));
    return row;
  }

  private PlainTable cost() {
    List<List<String>> rows = new ArrayList<>();
    for (LineCost line : purchase.cost().lines()) {
      rows.add(
          List.of(
              String.valueOf(line.line().number()),
              line.of().basis().words(),
              line.quantity().stripTrailingZeros().toPlainString(),
              plain(line.of().price()),
              plain(line.cost())));
    }
    purchase.cost().delivery().ifPresent(each -> rows.add(delivery(each)));
    return new PlainTable("cost", List.of("line", "basis", "quantity", "price", "cost"), rows);
  }

  private static List<String> delivery(Cost.Delivery delivery) {
    return List.of(
        "delivery",
        "load",
        String.valueOf(delivery.loads()),
        plain(delivery.each()),
        plain(delivery.cost()));
  }

  private PlainTable loads() {
    List<List<String>> rows = new ArrayList<>();
    int number = 0;
    for (Load load : purchase.loads().map(all -> all.loads()).orElse(List.of())) {
      number++;
      for (List<Item> alike : load.byLine().values()) {
        rows.add(loadRow(number, alike));
      }
    }
    String weight = decimals.metric() ? "weight_kg" : "weight_lb";
    return new PlainTable(
        "loads", decimals.header("load,line,logs," + weight + ",longest_#"), rows);
  }

  private List<String> loadRow(int number, List<Item> alike) {
    double pounds = alike.stream().mapToDouble(Item::pounds).sum();
    return List.of(
        String.valueOf(number),
        String.valueOf(alike.get(0).line()),
        String.valueOf(alike.size()),
        Decimals.plain(bulk.weight(pounds)),
        decimals.one(alike.get(0).length()));
  }

  private static String plain(BigDecimal money) {
    return money.toPlainString();
  }
}
