package roundbook.report.buy;

import java.util.List;
import roundbook.buying.Loads;
import roundbook.buying.Loads.Item;
import roundbook.buying.Loads.Load;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;

/** Every load that is driven, the longest and heaviest logs first. */
final class LoadsSheet {
  private static final double[] WIDTHS = {10, 10, 10, 18, 22, 22};

  private LoadsSheet() {}

  static Sheet of(BuyCells buy, Loads loads) {
    ListSheet list =
        new ListSheet(buy.context(), Tab.LOADS, buy.context().page(PageKind.TABLE), WIDTHS);
    list.title(buy.text("buy.loads.title"), buy.context().jobName());
    double all = loads.loads().stream().mapToDouble(Load::pounds).sum();
    double most = buy.context().rules().number(Setting.LOAD_MOST).doubleValue();
    long least = (long) Math.ceil(buy.bulk().weight(all) / most);
    list.text(
        Role.PLAIN_BOLD,
        buy.text("buy.loads.count", loads.loads().size(), buy.weightText(all), least));
    if (!buy.unhauled().isEmpty()) {
      list.text(Role.PLAIN_BOLD, buy.text("buy.loads.none", buy.unhauled()));
    }
    list.text(Role.CAUTION_HEAD, buy.text("buy.loads.caution.head"));
    buy.context().words().lines("buy.loads.caution").forEach(line -> list.text(Role.CAUTION, line));
    list.headOf("buy.loads.head");
    list.sheet().printTitles(list.next() - 1, list.next() - 1);
    int number = 0;
    for (Load load : loads.loads()) {
      number++;
      list.together(rows(buy, number, load));
    }
    return list.build();
  }

  private static List<List<Cell>> rows(BuyCells buy, int number, Load load) {
    List<List<Cell>> rows = new java.util.ArrayList<>();
    for (List<Item> alike : load.byLine().values()) {
      double each = alike.get(0).pounds();
      rows.add(
          List.of(
              buy.cells().count(number),
              buy.cells().count(alike.get(0).line()),
              buy.cells().count(alike.size()),
              buy.cells().tape(alike.get(0).length()),
              buy.weight(each),
              buy.weight(each * alike.size())));
    }
    rows.add(
        List.of(
            buy.cells().count(number).role(Role.LARGE),
            buy.cells().bold(buy.text("buy.all")),
            buy.cells().count(load.items().size()).role(Role.LARGE),
            buy.cells().tape(load.longest()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
            Cell.text("").role(Role.BODY),
            buy.weight(load.pounds()).role(Role.LARGE)));
    return rows;
  }
}
