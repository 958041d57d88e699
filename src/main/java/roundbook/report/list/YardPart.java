package roundbook.report.list;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.buying.Loads.Load;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.plan.Haul;
import roundbook.plan.PickOrder;
import roundbook.plan.PickOrder.Layer;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.takeoff.Reach;
import roundbook.takeoff.Reach.Hook;
import roundbook.takeoff.SlingPair;
import roundbook.units.Bulk;
import roundbook.units.Length;

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
    int loads = haul.loads().map(all -> all.loads().size()).orElse(0);
    list.heading(context.text("lifting.haul"));
    list.text(
        Role.PLAIN_BOLD,
        context.text(
            "lifting.haul.all", haul.logs().size(), weight(haul.usual()), weight(haul.most())));
    if (!haul.left().isEmpty()) {
      String tags = haul.left().stream().map(Log::tag).collect(Collectors.joining(", "));
      list.text(Role.PLAIN_BOLD, context.text("lifting.haul.left", tags));
    }
    haul.loads().ifPresent(all -> loads(haul, all.loads()));
  }

  private void loads(Haul haul, List<Load> loads) {
    list.text(Role.PLAIN, loads(loads.size()));
    list.spans(1, 1, 5, 2, 2).headOf("lifting.haul.head");
    int number = 0;
    for (Load load : loads) {
      number++;
      String tags = haul.logs(load).stream().map(Log::tag).collect(Collectors.joining(" · "));
      list.row(
          cells.count(number),
          cells.count(load.items().size()),
          cells.text(tags),
          cells.tape(load.longest()),
          cells.count(Math.round(bulk.weight(load.pounds()))));
    }
  }

  /** Writes how far and how high a crane's hook must reach, where its place is named. */
  void crane() {
    List<Reach> reaches =
        Reach.of(
            context.rules(), context.plan().stack().building(), context.plan().takeoff().wood());
    if (reaches.isEmpty()) {
      return;
    }
    list.heading(context.text("lifting.crane"));
    list.text(
        Role.PLAIN,
        context.text(
            "lifting.crane.place",
            tape(context.rules().length(Setting.CRANE_OFF)),
            context.rules().text(Setting.CRANE_WALL).strip()));
    list.spans(2, 4, 5).headOf("lifting.crane.head");
    for (Reach reach : reaches) {
      list.row(
          cells.centre(reach.wall().name()),
          cells.centre(tape(reach.radius())),
          cells.centre(weight(reach.pounds())));
    }
    Hook exact = Hook.of(context.plan().stack(), context.plan().takeoff());
    Hook hook = new Hook(up(exact.walls()), exact.clear(), up(exact.log()), up(exact.slings()));
    String key = hook.slings().isZero() ? "lifting.crane.hook.bare" : "lifting.crane.hook";
    list.text(
        Role.PLAIN_BOLD,
        context.text(
            key,
            tape(hook.height()),
            tape(hook.walls()),
            tape(hook.clear()),
            tape(hook.log()),
            tape(hook.slings())));
    list.text(Role.CAUTION, context.text("lifting.crane.caution"));
  }

  /** Returns a length up to the next inch or centimetre: a hook that reaches less is too short. */
  private Length up(Length length) {
    Length step = context.rules().unit().coarseStep();
    return step.times(-Math.floorDiv(-length.nanometres(), step.nanometres()));
  }

  private String tape(Length length) {
    return cells.formats().feetInches(up(length));
  }

  private String loads(int count) {
    String most = context.rules().number(Setting.LOAD_MOST).toPlainString();
    return context.text("lifting.haul.loads", count, most + " " + unit());
  }

  /** Says how a pile is laid from which logs are picked in their order. */
  void piles() {
    PickOrder order = PickOrder.of(context.plan());
    if (order.logs().isEmpty()) {
      return;
    }
    StringBuilder piles = new StringBuilder();
    for (int high : PILES) {
      List<Layer> layers = order.layers(high);
      long extra = Math.round(order.extraLifts(high));
      piles.append(context.text("lifting.pick.pile", high, layers(layers), extra));
    }
    list.text(Role.PLAIN, context.text("lifting.pick.note", order.logs().size()) + piles);
  }

  private static String layers(List<Layer> layers) {
    return layers.stream()
        .map(layer -> layer.from() + "–" + layer.to())
        .collect(Collectors.joining(", "));
  }

  /** Writes what each of two sling legs pulls, for a round load and for the heaviest log. */
  void slings(double heaviest) {
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
