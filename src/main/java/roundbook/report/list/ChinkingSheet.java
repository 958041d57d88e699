package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.stack.Joint;
import roundbook.takeoff.Chinking;
import roundbook.units.Bulk;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** The filling of every joint, wall by wall, with totals. */
final class ChinkingSheet {
  private static final double[] WIDTHS = {8, 10, 13, 12, 12, 12, 13, 13, 13};

  private final CrewContext context;
  private final Cells cells;
  private final Bulk bulk;
  private final ListSheet list;

  private ChinkingSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.bulk = new Bulk(context.rules().metric());
    this.list = new ListSheet(context, Tab.CHINKING, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet; it says so when there are no joints. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new ChinkingSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.CHINKING);
    Chinking all = context.plan().takeoff().chinking();
    if (all.joints().isEmpty()) {
      return list.text(Role.PLAIN, context.text("chinking.none")).build();
    }
    list.text(Role.NOTE, context.text("chinking.note", cells.unitWord()));
    list.headOf("chinking.head", bulk.symbol()).repeatHead();
    for (Wall wall : context.plan().job().building().walls()) {
      Chinking own = all.of(wall);
      list.block();
      own.joints().forEach(fill -> list.row(row(fill)));
      list.row(total(context.text("chinking.wall", wall.name()), own));
    }
    list.row(total(context.text("chinking.all"), all));
    context.words().lines("chinking.how").forEach(line -> list.text(Role.PLAIN, line));
    return list.build();
  }

  private List<Cell> row(Chinking.Fill fill) {
    Joint joint = fill.joint();
    return List.of(
        cells.centre(joint.lower().wall().name()),
        cells.centre(joint.upper().round() + " / " + below(joint)),
        number(bulk.length(fill.run()), Role.BODY_CENTRE, Format.DECIMAL_1),
        high(fill.faceLeast()),
        high(fill.faceMost()),
        backer(fill.backer()),
        number(bulk.area(fill.faceArea()), Role.BODY_CENTRE, Format.DECIMAL_2),
        number(bulk.volume(fill.stripVolume()), Role.BODY_CENTRE, Format.DECIMAL_3),
        number(bulk.volume(fill.gapVolume()), Role.BODY_CENTRE, Format.DECIMAL_3));
  }

  private String below(Joint joint) {
    int round = joint.lower().round();
    return round == 0 ? context.text("chinking.starter") : "" + round;
  }

  private Cell high(double inches) {
    return cells.printed(Length.of(inches, LengthUnit.INCH));
  }

  private Cell backer(OptionalDouble size) {
    if (size.isEmpty()) {
      return Cell.text(context.text("chinking.no_backer")).role(Role.FLAG);
    }
    LengthUnit unit = bulk.metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    return cells
        .exact(Length.of(size.getAsDouble(), unit))
        .role(Role.BODY_BOLD)
        .align(Cell.Align.CENTRE);
  }

  private List<Cell> total(String name, Chinking part) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.text(name).role(Role.TOTAL));
    row.add(Cell.text("").role(Role.TOTAL));
    row.add(number(bulk.length(part.run()), Role.TOTAL, Format.DECIMAL_1));
    for (int i = 0; i < 3; i++) {
      row.add(Cell.text("").role(Role.TOTAL));
    }
    row.add(number(bulk.area(part.faceArea()), Role.TOTAL, Format.DECIMAL_2));
    row.add(number(bulk.volume(part.stripVolume()), Role.TOTAL, Format.DECIMAL_3));
    row.add(number(bulk.volume(part.gapVolume()), Role.TOTAL, Format.DECIMAL_3));
    return row;
  }

  private static Cell number(double number, Role role, Format format) {
    return Cell.number(Math.round(number * 1000) / 1000.0)
        .role(role)
        .format(format)
        .align(Cell.Align.CENTRE);
  }
}
