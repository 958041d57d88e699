package roundbook.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Pin;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup.Kind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.units.Length;

/**
 * Every setting with its source, the walls, the pins, and what made the workbook.
 *
 * <p>Together with the log list and the openings it is enough to plan again without the files that
 * were read. Each value's cell has the setting's own name.
 */
final class SettingsSheet {
  private static final double[] WIDTHS = {21, 16, 6, 11, 47};
  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;

  private SettingsSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.SETTINGS, context.page(Kind.TABLE), WIDTHS);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new SettingsSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.SETTINGS).text(Role.NOTE, context.text("settings.note"));
    list.headOf("settings.head").repeatHead();
    for (Setting setting : Setting.values()) {
      list.row(setting(setting));
    }
    walls();
    pins();
    made();
    return list.build();
  }

  private List<Cell> setting(Setting setting) {
    boolean length = setting.kind() == SettingKind.LENGTH;
    return List.of(
        cells.bold(setting.label()),
        value(setting).named(setting.label()),
        cells.centre(length ? context.rules().unit().symbol() : ""),
        cells.word("origin." + origin(setting).name().toLowerCase(Locale.ROOT)),
        cells.told(setting.meaning()));
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

  private Origin origin(Setting setting) {
    return context.rules().value(setting).map(BuildRules.Value::origin).orElse(Origin.DEFAULT);
  }

  private void walls() {
    list.heading(context.text("settings.walls", cells.unitWord()));
    list.headOf("settings.walls.head");
    for (Wall wall : context.plan().job().building().walls()) {
      list.row(
          cells.bold(wall.name()),
          cells.exact(wall.outside()),
          cells.word(wall.laidFirst() ? "yes" : "no"),
          cells.exact(wall.thickness()),
          cells.text(wall.remarks()));
    }
  }

  private void pins() {
    List<Pin> pins = context.plan().job().pins();
    if (pins.isEmpty()) {
      return;
    }
    list.heading(context.text("settings.pins")).headOf("settings.pins.head");
    for (Pin pin : pins) {
      list.row(
          cells.centre(pin.round().isPresent() ? "" + pin.round().getAsInt() : ""),
          cells.centre(pin.log()),
          cells.centre(pin.wall()),
          cells.centre(pin.buttAt()),
          cells.text(pin.why()));
    }
  }

  private void made() {
    list.heading(context.text("settings.made")).spans(1, 4).headOf("settings.made.head");
    made("settings.version", cells.text(context.issue().version()).named("Made_by_version"));
    made("settings.revision", cells.count(context.issue().revision()).named("Made_revision"));
    made("settings.from", cells.text(context.issue().input()).named("Made_from"));
  }

  private void made(String key, Cell value) {
    list.row(cells.bold(context.text(key)), value.align(Cell.Align.LEFT));
  }
}
