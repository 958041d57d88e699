package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.exchange.Exchanges;
import roundbook.exchange.Spare;
import roundbook.exchange.Substitute;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ExchangeWords;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;

/** Which spare could stand where, and the best one for each log that is not cut yet. */
final class SparesSheet {
  private static final double[] WIDTHS = ListSheet.grid(24, 4.8);

  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;
  private final ExchangeWords words;
  private final List<String> without = new ArrayList<>();

  private SparesSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.SPARES, context.page(PageKind.TABLE), WIDTHS);
    this.words = new ExchangeWords(context);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new SparesSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.SPARES);
    Exchanges exchanges = context.plan().exchanges();
    int cut = context.plan().job().built().rounds();
    if (exchanges.spares().isEmpty()) {
      boolean all = cut > 0 && cut == context.plan().rounds();
      return list.text(Role.PLAIN_BOLD, context.text(all ? "spares.all_cut" : "spares.none"))
          .build();
    }
    if (cut > 0) {
      list.text(Role.PLAIN_BOLD, context.text("spares.cut", cut));
    }
    list.text(Role.NOTE, context.text("spares.note", cells.unitWord()));
    list.heading(context.text("spares.where"));
    list.spans(3, 4, 3, 7, 7).headOf("spares.where.head");
    exchanges.spares().forEach(spare -> list.row(row(spare)));
    list.heading(context.text("spares.best"));
    list.spans(2, 2, 2, 3, 2, 2, 3, 6, 2).headOf("spares.best.head");
    context.plan().stack().courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(place -> !context.plan().job().built().isCut(place.place()))
        .forEach(this::rows);
    if (!without.isEmpty()) {
      String places = String.join(" · ", without);
      list.text(Role.PLAIN_BOLD, context.text("spares.without", places));
    }
    return list.build();
  }

  private List<Cell> row(Spare spare) {
    String best = spare.bestFor().stream().map(Substitute::out).collect(Collectors.joining(", "));
    return List.of(
        cells.bold(spare.log().tag()).align(Cell.Align.CENTRE),
        cells.tape(spare.log().length()),
        cells.exact(spare.log().mid()),
        cells.text(words.places(spare.places())),
        cells.text(best));
  }

  /** Writes the row of a placed log; two short logs have one for both and one for each. */
  private void rows(FilledPlace placed) {
    row(placed, Optional.empty());
    if (placed.isShared()) {
      placed.logs().forEach(each -> row(placed, Optional.of(each)));
    }
  }

  /** Writes the row of a log with its best spare, or notes that there is none. */
  private void row(FilledPlace placed, Optional<PlacedLog> instead) {
    String tag = instead.map(each -> each.piece().log().tag()).orElseGet(placed::tags);
    context.plan().exchanges().substitutes().stream()
        .filter(each -> each.placed().equals(placed) && each.instead().equals(instead))
        .findFirst()
        .ifPresentOrElse(
            best -> list.row(row(placed, tag, best)),
            () -> without.add(placed.round() + placed.wall().name() + " " + tag));
  }

  private List<Cell> row(FilledPlace placed, String tag, Substitute best) {
    Cell round = cells.count(placed.round());
    Cell wall = cells.centre(placed.wall().name());
    Cell log = cells.bold(tag).align(Cell.Align.CENTRE);
    return List.of(
        round,
        wall,
        log,
        cells.bold(best.in().log().tag()).align(Cell.Align.CENTRE),
        cells.printed(best.effect().least()),
        cells.printed(best.effect().most()),
        cells.tape(best.in().cutOffButt()),
        cells.text(words.verdict(best.effect())),
        cells.centre(words.inThousandths(best.effect().change())));
  }
}
