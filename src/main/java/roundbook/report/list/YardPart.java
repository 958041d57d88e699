package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.plan.Haul;
import roundbook.plan.PickOrder;
import roundbook.plan.PickOrder.Layer;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.SlingPair;
import roundbook.units.Bulk;

/** What the yard does before the walls: hauling, piling, picking, and what sling legs pull. */
final class YardPart {
  private static final int[] ANGLES = {60, 45, 30};
  private static final int[] PILES = {2, 3, 4};
  private static final double TESTED = 1000;

  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;
  private final Bulk bulk;

  YardPart(CrewContext context, ListSheet list) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = list;
    this.bulk = new Bulk(context.rules().metric());
  }

  /** Writes how much there is to haul. */
  void hauling() {
    Haul haul = Haul.of(context.plan());
    list.heading(context.text("lifting.haul"));
    list.text(
        Role.PLAIN_BOLD,
        context.text("lifting.haul.all", haul.logs(), weight(haul.usual()), weight(haul.most())));
    haul.loads().ifPresent(loads -> list.text(Role.PLAIN, loads(loads.loads().size())));
    if (haul.isRefused(context.rules())) {
      list.text(Role.PLAIN_BOLD, context.text("lifting.haul.refused"));
    }
  }

  private String loads(int count) {
    String most = context.rules().number(Setting.LOAD_MOST).toPlainString();
    return context.text("lifting.haul.loads", count, most + " " + unit());
  }

  /** Writes which logs are needed when, and how a pile is laid from which they are picked. */
  void picking() {
    PickOrder order = PickOrder.of(context.plan());
    if (order.logs().isEmpty()) {
      return;
    }
    List<List<Cell>> rows = rows(order);
    list.room(ListSheet.tableHeight(rows.size()));
    list.heading(context.text("lifting.pick"));
    list.spans(2, 1, 4, 4).headOf("lifting.pick.head");
    rows.forEach(list::row);
    StringBuilder piles = new StringBuilder();
    for (int high : PILES) {
      List<Layer> layers = order.layers(high);
      piles.append(context.text("lifting.pick.pile", high, layers(layers)));
    }
    list.text(Role.PLAIN, context.text("lifting.pick.note", order.logs().size()) + piles);
  }

  private static String layers(List<Layer> layers) {
    return layers.stream()
        .map(layer -> layer.from() + "–" + layer.to())
        .collect(Collectors.joining(", "));
  }

  private List<List<Cell>> rows(PickOrder order) {
    List<List<Cell>> rows = new ArrayList<>();
    int before = 0;
    int last = order.logs().get(order.logs().size() - 1).round();
    for (int round = order.logs().get(0).round(); round <= last; round++) {
      int here = round;
      List<PlacedLog> logs = order.logs().stream().filter(log -> log.round() == here).toList();
      rows.add(
          List.of(
              cells.centre((before + 1) + "–" + (before + logs.size())),
              cells.centre("" + round),
              cells.text(tags(logs, true)),
              cells.text(tags(logs, false))));
      before += logs.size();
    }
    return rows;
  }

  private static String tags(List<PlacedLog> logs, boolean laidFirst) {
    return logs.stream()
        .filter(log -> log.wall().laidFirst() == laidFirst)
        .map(log -> log.wall().name() + " " + log.piece().log().tag())
        .collect(Collectors.joining(" · "));
  }

  /** Writes what each of two sling legs pulls, for a round load and for the heaviest log. */
  void slings(double heaviest) {
    list.room(ListSheet.tableHeight(ANGLES.length));
    list.heading(context.text("lifting.sling"));
    list.spans(3, 3, 3, 2).headOf("lifting.sling.head", plain(TESTED) + " " + unit());
    for (int degrees : ANGLES) {
      SlingPair legs = new SlingPair(degrees);
      list.row(
          cells.centre(degrees + "°"),
          Cell.number(hundredths(legs.legOfSpan())).format(Cell.Format.DECIMAL_2),
          cells.count(Math.round(legs.pull(TESTED))),
          cells.count(Math.round(bulk.weight(legs.pull(heaviest)))));
    }
    list.text(Role.CAUTION, context.text("lifting.sling.note"));
  }

  private static double hundredths(double number) {
    return Math.round(number * 100) / 100.0;
  }

  private static String plain(double number) {
    return "" + Math.round(number);
  }

  private String weight(double pounds) {
    return plain(bulk.weight(pounds)) + " " + unit();
  }

  private String unit() {
    return context.rules().metric() ? "kg" : "lb";
  }
}
