package roundbook.report.list;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.ClassSupply;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.Quantity;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.words.QuantityWords;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** Logs on hand against logs needed, what the walls come to, and what is bought or left over. */
final class MaterialsSheet {
  private static final double[] WIDTHS = ListSheet.grid(24, 4.8);

  private final CrewContext context;
  private final Plan plan;
  private final Cells cells;
  private final ListSheet list;

  private MaterialsSheet(CrewContext context) {
    this.context = context;
    this.plan = context.plan();
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.MATERIALS, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new MaterialsSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.MATERIALS);
    classes();
    if (plan.rounds() > 0) {
      walls();
    }
    plan.quantities().stream()
        .collect(
            Collectors.groupingBy(
                Quantity::section, java.util.LinkedHashMap::new, Collectors.toList()))
        .forEach(this::section);
    list.text(Role.PLAIN, context.text("materials.sources"));
    new CostPart(context, list).write();
    order();
    return list.build();
  }

  private void classes() {
    list.heading(context.text("materials.classes"));
    list.spans(6, 2, 2, 2, 2, 3, 7).headOf("materials.classes.head");
    for (ClassSupply supply : plan.supply()) {
      list.row(
          cells.bold(className(supply)),
          cells.count(supply.needed()),
          cells.count(supply.placed()),
          cells.count(supply.onHand()),
          cells.count(supply.spare()),
          cells.count(supply.sparesWanted()),
          verdict(supply));
    }
  }

  private String className(ClassSupply supply) {
    String least = cells.formats().feetInches(supply.least());
    return supply.walls().isEmpty()
        ? context.text("materials.class.short")
        : context.text("materials.class", least, supply.walls());
  }

  private Cell verdict(ClassSupply supply) {
    if (supply.missing() > 0) {
      return Cell.text(context.text("materials.short", supply.missing())).role(Role.FLAG);
    }
    int lacking = supply.sparesWanted() - supply.spare();
    if (lacking > 0) {
      return cells.bold(context.text("materials.no_spare", lacking));
    }
    return cells.text(context.text(supply.walls().isEmpty() ? "materials.rest" : "materials.ok"));
  }

  private void walls() {
    list.heading(context.text("materials.walls"));
    list.spans(2, 3, 3, 2, 4, 4, 3, 3).headOf("materials.walls.head");
    plan.job().building().walls().forEach(wall -> list.row(wall(wall)));
  }

  private List<Cell> wall(Wall wall) {
    List<PiecePlan> pieces =
        plan.pieces().stream().filter(piece -> piece.placed().wall().equals(wall)).toList();
    Length trimmed =
        pieces.stream()
            .flatMap(piece -> piece.logs().stream())
            .map(log -> log.piece().trimmed())
            .reduce(Length.ZERO, Length::plus);
    double pounds = pieces.stream().mapToDouble(PiecePlan::pounds).sum();
    PiecePlan heaviest =
        pieces.stream()
            .max(Comparator.comparingDouble(piece -> piece.weight().pounds()))
            .orElseThrow();
    List<Joint> joints = plan.stack().joints(wall);
    return List.of(
        cells.bold(wall.name()).align(Cell.Align.CENTRE).linkTo(Tab.ofWall(context.words(), wall)),
        cells.tape(plan.job().building().told(wall)),
        cells.tape(trimmed),
        cells.count((int) pieces.stream().mapToLong(piece -> piece.logs().size()).sum()),
        cells.weight(new PiecePlan.Weight(pounds, Length.ZERO)),
        cells.weight(heaviest.weight()),
        joints.isEmpty() ? cells.centre("–") : cells.printed(least(joints)),
        joints.isEmpty() ? cells.centre("–") : cells.printed(most(joints)));
  }

  private static Length least(List<Joint> joints) {
    return joints.stream().map(Joint::least).reduce(Length::least).orElseThrow();
  }

  private static Length most(List<Joint> joints) {
    return joints.stream().map(Joint::most).reduce(Length::most).orElseThrow();
  }

  private void section(String section, List<Quantity> lines) {
    list.heading(context.text("section." + section));
    list.spans(8, 4, 2, 10).headOf("materials.head");
    QuantityWords words = new QuantityWords(context.words());
    for (Quantity line : lines) {
      list.row(
          cells.text(words.item(line)),
          Cell.number(rounded(line)).format(format(line)),
          cells.centre(words.unit(line)),
          cells.text(words.note(line)));
    }
  }

  private static double rounded(Quantity line) {
    return Math.round(line.amount() * 1000) / 1000.0;
  }

  private static Format format(Quantity line) {
    boolean whole = List.of("count", "lb", "kg", "bd ft").contains(line.unit());
    boolean fine = List.of("m2", "m3").contains(line.unit());
    return whole ? Format.THOUSANDS : fine ? Format.DECIMAL_2 : Format.DECIMAL_1;
  }

  private void order() {
    list.heading(context.text("materials.order"));
    String key = OrderSheet.nothing(plan).orElse("materials.order.see");
    Cell said = Cell.text(context.text(key, plan.order().size())).role(Role.LINK);
    boolean wanted = OrderSheet.isWanted(context);
    list.spans(24).row(wanted ? said.linkTo(Tab.ORDER.in(context.words())) : said);
  }
}
