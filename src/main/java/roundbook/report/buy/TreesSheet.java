package roundbook.report.buy;

import java.util.Optional;
import roundbook.buying.Trees;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.units.Length;

/** How thick trees are at breast height that hold such logs: a help for marking them. */
final class TreesSheet {
  private static final double[] WIDTHS = {9, 14, 13, 13, 13, 13, 13};

  private TreesSheet() {}

  static Sheet of(BuyCells buy, Trees trees) {
    ListSheet list =
        new ListSheet(buy.context(), Tab.TREES, buy.context().page(PageKind.TABLE), WIDTHS);
    list.title(buy.text("buy.trees.title"), buy.context().jobName());
    list.text(Role.CAUTION, buy.text("buy.trees.caution"));
    String model = buy.text("buy.model." + trees.model().name().toLowerCase(java.util.Locale.ROOT));
    String height = buy.cells().formats().feetInches(trees.height());
    list.text(
        Role.PLAIN_BOLD,
        buy.text(trees.certain() ? "buy.trees.model" : "buy.trees.stand_in", model, height));
    list.headOf("buy.trees.head", buy.context().rules().unit().symbol());
    for (Trees.Mark mark : trees.marks()) {
      list.row(
          buy.cells().count(mark.line().number()),
          buy.cells().centre(buy.from(mark.line())),
          buy.cells().printed(mark.line().band().from()),
          buy.cells().printed(mark.line().band().to()),
          breast(buy, mark.thin()),
          breast(buy, mark.middle()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
          breast(buy, mark.thick()));
    }
    buy.context().words().lines("buy.trees.rule").forEach(line -> list.text(Role.NOTE, line));
    return list.build();
  }

  /** Returns a diameter to the half inch or centimetre: a model knows no better. */
  private static Cell breast(BuyCells buy, Optional<Length> diameter) {
    Length step = buy.metric() ? Length.ofMillimetres(10) : Length.ofInchFraction(1, 2);
    return diameter
        .map(each -> buy.cells().exact(each.roundedTo(step)))
        .orElseGet(() -> buy.cells().centre(buy.text("buy.trees.none")));
  }
}
