package roundbook.report.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import roundbook.buying.Cost;
import roundbook.buying.Cost.LineCost;
import roundbook.buying.Line;
import roundbook.buying.Loads.Item;
import roundbook.buying.Loads.Load;
import roundbook.buying.Purchase;
import roundbook.page.PlainTable;
import roundbook.report.table.PlainColumns;
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
    return new PlainColumns<Line>(decimals)
        .count("line", Line::number)
        .text("walls", Line::use)
        .text("rounds", Line::roundsText)
        .text("from", line -> line.from().word())
        .count("logs", line -> line.count().logs())
        .count("spares", line -> line.count().spares())
        .length("least_length", line -> line.lengths().least())
        .length("ask_length", line -> line.lengths().ask())
        .length("mid_from", line -> line.band().from())
        .length("mid_to", line -> line.band().to())
        .length("mid_at", line -> line.lengths().midAt())
        .length("least_tip", line -> line.tips().least())
        .length("better_tip", line -> line.tips().better())
        .text(
            decimals.metric() ? "volume_m3" : "volume_ft3",
            line -> Decimals.plain(bulk.volume(all(line) * line.cubicFeet() * CUBIC_FOOT)))
        .text(weight(), line -> Decimals.plain(bulk.weight(all(line) * line.pounds())))
        .textIf(
            "cost", line -> purchase.cost().of(line).map(LineCost::cost).map(OrderTables::plain))
        .table("order", purchase.order().lines());
  }

  private static int all(Line line) {
    return line.count().all();
  }

  private String weight() {
    return decimals.metric() ? "weight_kg" : "weight_lb";
  }

  /** What is paid: a line of the order, or the delivery of all loads. */
  private record Paid(
      String line, String basis, String quantity, BigDecimal price, BigDecimal cost) {
    static Paid of(LineCost line) {
      return new Paid(
          String.valueOf(line.line().number()),
          line.of().basis().words(),
          line.quantity().stripTrailingZeros().toPlainString(),
          line.of().price(),
          line.cost());
    }

    static Paid of(Cost.Delivery delivery) {
      String loads = String.valueOf(delivery.loads());
      return new Paid("delivery", "load", loads, delivery.each(), delivery.cost());
    }
  }

  private PlainTable cost() {
    Stream<Paid> lines = purchase.cost().lines().stream().map(Paid::of);
    Stream<Paid> delivery = purchase.cost().delivery().stream().map(Paid::of);
    return new PlainColumns<Paid>(decimals)
        .text("line", Paid::line)
        .text("basis", Paid::basis)
        .text("quantity", Paid::quantity)
        .text("price", paid -> plain(paid.price()))
        .text("cost", paid -> plain(paid.cost()))
        .table("cost", Stream.concat(lines, delivery).toList());
  }

  /** Logs of one line of the order on one load, counted from 1. */
  private record Loaded(int load, List<Item> alike) {
    Item first() {
      return alike.get(0);
    }

    double pounds() {
      return alike.stream().mapToDouble(Item::pounds).sum();
    }
  }

  private PlainTable loads() {
    List<Load> loads = purchase.loads().map(all -> all.loads()).orElse(List.of());
    List<Loaded> rows = new ArrayList<>();
    for (int load = 1; load <= loads.size(); load++) {
      for (List<Item> alike : loads.get(load - 1).byLine().values()) {
        rows.add(new Loaded(load, alike));
      }
    }
    return new PlainColumns<Loaded>(decimals)
        .count("load", Loaded::load)
        .count("line", row -> row.first().line())
        .count("logs", row -> row.alike().size())
        .text(weight(), row -> Decimals.plain(bulk.weight(row.pounds())))
        .length("longest", row -> row.first().length())
        .table("loads", rows);
  }

  private static String plain(BigDecimal money) {
    return money.toPlainString();
  }
}
