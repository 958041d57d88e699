package roundbook.report.list;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.rounds.Shortage;
import roundbook.units.Length;

/**
 * Every setting with its source, the walls, the pins, the prices, and under what is printed what
 * made the workbook.
 *
 * <p>Together with the log list and the openings it is enough to plan again without the files that
 * were read. Each value's cell has the setting's own name.
 */
final class SettingsSheet {
  private static final double[] WIDTHS = {21, 14, 6, 11, 10, 11, 9, 40};
  private static final int SPANNED = 3;

  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;

  private SettingsSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.SETTINGS, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new SettingsSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.SETTINGS).text(Role.NOTE, context.text("settings.note"));
    list.spans(1, 1, 1, 1, 1, SPANNED).headOf("settings.head").keepHead();
    for (Setting setting : Setting.values()) {
      List<Cell> row = setting(setting);
      if (!list.holds(row)) {
        list.breakPage().headOf("settings.head");
      }
      list.row(row);
      list.sheet().put(list.next() - 1, WIDTHS.length + 2, setBy(setting));
    }
    // Walls, openings, pins and prices stand for the next revision; other pages print them.
    list.endPrint();
    walls();
    openings();
    pins();
    prices();
    others();
    made();
    return list.build();
  }

  private List<Cell> setting(Setting setting) {
    boolean length = setting.kind() == SettingKind.LENGTH;
    return List.of(
        cells.bold(setting.label()),
        value(setting).named(setting.label()),
        cells.centre(length ? context.rules().unit().symbol() : ""),
        value(setting).role(Role.BODY_CENTRE).named(CellNames.was(setting.label())),
        cells.word("origin." + origin(setting).name().toLowerCase(Locale.ROOT)),
        cells.text(setting.meaning().in(context.sentences())));
  }

  private Cell value(Setting setting) {
    Object value = context.rules().value(setting).map(BuildRules.Value::value).orElse("");
    if (value instanceof Length length) {
      return cells.exact(length).role(Role.TYPED_IN);
    }
    if (value instanceof BigDecimal number) {
      return Cell.number(number.doubleValue()).role(Role.TYPED_IN).format(Cell.Format.GENERAL);
    }
    boolean number = setting.kind() != SettingKind.TEXT && setting.kind() != SettingKind.CHOICE;
    return number
        ? Cell.blank(Role.TYPED_IN)
        : Cell.text(String.valueOf(value)).role(Role.TYPED_IN_TEXT);
  }

  /** Returns the first letter of who set a value, right of the page, for the next revision. */
  private Cell setBy(Setting setting) {
    String letter = origin(setting).name().substring(0, 1);
    return Cell.text(letter).role(Role.HELPER).named(CellNames.setBy(setting.label()));
  }

  private Origin origin(Setting setting) {
    return context.rules().value(setting).map(BuildRules.Value::origin).orElse(Origin.DEFAULT);
  }

  private void walls() {
    list.heading(context.text("settings.walls", cells.unitWord()));
    boolean more =
        context.plan().job().building().walls().stream()
            .anyMatch(wall -> !wall.stand().equals(Stand.RING));
    if (more) {
      list.spans(1, 1, 1, 1, 1, 1, 1, 1).headOf("settings.stands.head");
    } else {
      list.spans(1, 1, 1, 1, 4).headOf("settings.walls.head");
    }
    int number = 0;
    Building building = context.plan().job().building();
    for (Wall wall : building.walls()) {
      number++;
      List<Cell> row = new ArrayList<>();
      row.add(cells.bold(wall.name()).named(CellNames.item("Wall", number, "name")));
      row.add(cells.exact(building.told(wall)).named(CellNames.item("Wall", number, "outside")));
      String first = wall.laidFirst() ? "x" : "";
      row.add(cells.centre(first).named(CellNames.item("Wall", number, "first")));
      row.add(cells.exact(wall.thickness()).named(CellNames.item("Wall", number, "thickness")));
      if (more) {
        row.addAll(stand(wall.stand(), number));
      }
      row.add(cells.text(wall.remarks()).named(CellNames.item("Wall", number, "remarks")));
      list.row(row);
    }
  }

  /** Returns the cells of where a wall stands: its pen, between which walls, and how far along. */
  private List<Cell> stand(Stand stand, int number) {
    String between = String.join(" ", stand.between());
    return List.of(
        Cell.text(String.valueOf(stand.pen()))
            .role(Role.BODY_CENTRE)
            .named(CellNames.item("Wall", number, "pen")),
        cells.centre(between).named(CellNames.item("Wall", number, "between")),
        stand
            .at()
            .map(cells::exact)
            .orElse(cells.text(""))
            .named(CellNames.item("Wall", number, "at")));
  }

  private void openings() {
    List<Opening> openings = context.plan().job().openings();
    if (openings.isEmpty()) {
      return;
    }
    list.heading(context.text("settings.openings", cells.unitWord()));
    list.spans(1, 1, 1, 1, 1, 1, 1, 1).headOf("settings.openings.head");
    int number = 0;
    for (Opening opening : openings) {
      number++;
      list.row(
          cells.bold(opening.name()).named(CellNames.item("Opening", number, "name")),
          cells.centre(opening.wall()).named(CellNames.item("Opening", number, "wall")),
          cells
              .exact(opening.toldLeft(context.plan().job().building()))
              .named(CellNames.item("Opening", number, "left")),
          cells.exact(opening.width()).named(CellNames.item("Opening", number, "width")),
          cells.exact(opening.sill()).named(CellNames.item("Opening", number, "sill")),
          cells.exact(opening.head()).named(CellNames.item("Opening", number, "head")),
          cells
              .centre(opening.shortLogs() ? "x" : "")
              .named(CellNames.item("Opening", number, "short")),
          cells.text(opening.remarks()).named(CellNames.item("Opening", number, "remarks")));
      int here = number;
      opening.leaf().ifPresent(leaf -> leaf(leaf, here));
    }
  }

  /** Puts what is to stand in an opening right of the page, for the next revision. */
  private void leaf(Leaf leaf, int number) {
    int row = list.next() - 1;
    Cell width = cells.exact(leaf.width()).role(Role.HELPER);
    Cell height = cells.exact(leaf.height()).role(Role.HELPER);
    list.sheet()
        .put(row, WIDTHS.length + 2, width.named(CellNames.item("Opening", number, "leaf_width")))
        .put(
            row, WIDTHS.length + 3, height.named(CellNames.item("Opening", number, "leaf_height")));
  }

  private void pins() {
    List<Pin> pins = context.plan().job().pins();
    if (pins.isEmpty()) {
      return;
    }
    list.heading(context.text("settings.pins"));
    list.spans(1, 1, 1, 1, 4).headOf("settings.pins.head");
    int number = 0;
    for (Pin pin : pins) {
      number++;
      String round = pin.round().isPresent() ? "" + pin.round().getAsInt() : "";
      list.row(
          cells.centre(round).named(CellNames.item("Pin", number, "round")),
          cells.centre(pin.log()).named(CellNames.item("Pin", number, "log")),
          cells.centre(pin.wall()).named(CellNames.item("Pin", number, "wall")),
          cells.centre(pin.buttAt()).named(CellNames.item("Pin", number, "butt")),
          cells.text(pin.why()).named(CellNames.item("Pin", number, "why")));
    }
  }

  /** Writes what yards ask; the sheet of materials is worked from these cells. */
  private void prices() {
    List<Price> prices = context.plan().job().prices();
    if (prices.isEmpty()) {
      return;
    }
    list.heading(context.text("settings.prices"));
    list.spans(1, 1, 2, 4).headOf("settings.prices.head");
    int number = 0;
    for (Price price : prices) {
      number++;
      String lines =
          String.join(", ", price.lines().stream().sorted().map(String::valueOf).toList());
      list.row(
          cells.bold(price.basis().words()).named(CellNames.item("Selling", number, "basis")),
          money(price.price()).named(CellNames.item("Selling", number, "price")),
          cells.centre(lines).named(CellNames.item("Selling", number, "lines")),
          price
              .delivery()
              .map(SettingsSheet::money)
              .orElseGet(() -> Cell.blank(Role.TYPED_IN))
              .named(CellNames.item("Selling", number, "delivery")));
    }
  }

  /** Writes the logs for other places than the walls, for a new plan to look for. */
  private void others() {
    List<OtherLog> others = context.plan().job().others();
    if (others.isEmpty()) {
      return;
    }
    list.heading(context.text("settings.others"));
    list.spans(1, 1, 1, 1, 1, 1, 2).headOf("settings.others.head", context.rules().unit().symbol());
    int number = 0;
    for (OtherLog other : others) {
      number++;
      list.row(
          other(number, "name", cells.text(other.name())),
          other(number, "count", cells.count(other.count()).role(Role.TYPED_IN)),
          other(number, "length", cells.exact(other.length())),
          other(number, "mid", least(other.mid())),
          other(number, "tip", least(other.tip())),
          other(number, "sweep", other.sweep().map(cells::exact).orElseGet(() -> cells.text(""))),
          other(number, "remarks", cells.text(other.remarks())));
    }
  }

  private static Cell other(int number, String what, Cell cell) {
    return cell.named(CellNames.item("Other", number, what));
  }

  private Cell least(Length length) {
    return length.isZero() ? cells.text("") : cells.exact(length);
  }

  private static Cell money(BigDecimal money) {
    return Cell.number(money.doubleValue()).role(Role.TYPED_IN).format(Cell.Format.GENERAL);
  }

  private void made() {
    list.heading(context.text("settings.made")).spans(1, 7).headOf("settings.made.head");
    made("settings.version", cells.text(context.issue().version()).named(CellNames.VERSION));
    made("settings.revision", cells.count(context.issue().revision()).named(CellNames.REVISION));
    int wanted =
        context.plan().choice().shortage().map(Shortage::wanted).orElse(context.plan().rounds());
    made("settings.wanted", cells.count(wanted).named(CellNames.WANTED));
    made("settings.layout", cells.count(CellNames.LAYOUT_NOW).named(CellNames.LAYOUT));
    String lost =
        context.plan().job().built().lost().stream()
            .sorted()
            .collect(Collectors.joining(CellNames.BETWEEN_TAGS));
    made("settings.lost", cells.text(lost).named(CellNames.LOST_BEFORE));
    made("settings.from", cells.text(context.issue().input()).named(CellNames.FROM));
  }

  private void made(String key, Cell value) {
    list.row(cells.bold(context.text(key)), value.align(Cell.Align.LEFT));
  }
}
