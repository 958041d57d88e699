package roundbook.report.list;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PickOrder;
import roundbook.plan.PiecePlan.Weight;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.stack.PlacedLog;
import roundbook.takeoff.PieceWood;
import roundbook.units.Bulk;
import roundbook.units.Length;
import roundbook.wood.Species;

/**
 * The lifts in the order in which logs are needed, with balance points and the usual cautions;
 * before them what sling legs pull, what there is to haul, and how a pile is laid.
 *
 * <p>The spread of a weight runs from wood all of heart to wood all of sap at the published
 * moistures of its species; where those are not known, as wide as they lie for the softwoods.
 */
public final class LiftingSheet {
  private static final double[] WIDTHS = {4, 9, 7, 6, 10, 10, 13, 13, 10, 12, 11};

  private static final int[] ONE_EACH = {1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1};
  private static final String STAND_IN = "▲ ";

  private LiftingSheet() {}

  /** Returns the sheet. */
  public static List<Sheet> sheets(CrewContext context) {
    ListSheet list =
        new ListSheet(context, Tab.LIFTING, context.page(PageKind.TABLE), WIDTHS)
            .title(Tab.LIFTING);
    cautions(context, list);
    List<PieceWood> lifts = lifts(context);
    Cells cells = new Cells(context);
    list.text(Role.PLAIN_BOLD, most(cells, lifts));
    standIns(context, lifts).forEach(line -> list.text(Role.PLAIN_BOLD, line));
    YardPart yard = new YardPart(context, list);
    yard.slings(lifts.stream().mapToDouble(PieceWood::roundPoundsAtMost).max().orElse(0));
    yard.crane();
    yard.hauling();
    list.heading(context.text("lifting.every"));
    list.spans(ONE_EACH).text(Role.NOTE, context.text("lifting.note"));
    yard.piles();
    list.headOf("lifting.head");
    list.sheet().printTitles(list.next() - 1, list.next() - 1);
    for (int index = 0; index < lifts.size(); index++) {
      list.row(row(cells, index + 1, lifts.get(index)));
    }
    return List.of(list.build());
  }

  /** Returns the logs that are not cut yet in the order in which they are needed. */
  private static List<PieceWood> lifts(CrewContext context) {
    List<PlacedLog> needed = PickOrder.of(context.plan()).logs();
    return context.plan().takeoff().wood().stream()
        .filter(wood -> needed.contains(wood.log()))
        .sorted(Comparator.comparingInt((PieceWood wood) -> needed.indexOf(wood.log())))
        .toList();
  }

  /** Says what the gear must lift: the most that any log may weigh, hewn and while still round. */
  private static String most(Cells cells, List<PieceWood> wood) {
    double hewn = wood.stream().mapToDouble(each -> each.weights().most()).max().orElse(0);
    double round = wood.stream().mapToDouble(PieceWood::roundPoundsAtMost).max().orElse(0);
    boolean metric = cells.context().rules().metric();
    Bulk bulk = new Bulk(metric);
    String unit = metric ? "kg" : "lb";
    String said =
        cells
            .context()
            .text("lifting.most", whole(bulk.weight(hewn)), unit, whole(bulk.weight(round)));
    return (standIns(cells.context(), wood).isEmpty() ? "" : STAND_IN) + said;
  }

  /** Returns what weights rest on where they only stand in, a line for each species. */
  private static List<String> standIns(CrewContext context, List<PieceWood> wood) {
    return wood.stream()
        .map(PieceWood::species)
        .distinct()
        .flatMap(match -> standIns(context, match))
        .toList();
  }

  private static Stream<String> standIns(CrewContext context, Species.Match match) {
    String name = match.species().name();
    Stream<String> kind =
        match.standIn() ? Stream.of(context.text("lifting.stand_in.kind", name)) : Stream.of();
    String more = factor(context, Species.WETTER);
    String less = factor(context, Species.DRIER);
    Stream<String> wet =
        match.species().spreadStandsIn()
            ? Stream.of(context.text("lifting.stand_in.moisture", name, more, less))
            : Stream.of();
    return Stream.concat(kind, wet);
  }

  private static String factor(CrewContext context, double factor) {
    return String.valueOf(factor).replace('.', context.formats().decimalMark());
  }

  private static long whole(double weight) {
    return Math.round(weight);
  }

  /** Writes the cautions in full, in a heavy box. */
  public static void cautions(CrewContext context, ListSheet list) {
    String head = context.text("caution.head");
    List<String> lines = context.words().lines("caution");
    list.block().text(Role.CAUTION_HEAD, head);
    lines.forEach(line -> list.text(Role.CAUTION, line));
  }

  private static List<Cell> row(Cells cells, int number, PieceWood wood) {
    PieceWood.Weights weights = wood.weights();
    return List.of(
        cells.count(number),
        cells.bold(wood.log().piece().log().tag()).align(Cell.Align.CENTRE),
        cells.count(wood.log().round()),
        cells.centre(wood.log().wall().name()),
        pounds(cells, weights.green()).role(Role.NUMBER_BOLD),
        pounds(cells, weights.least()),
        mayWeigh(cells, wood, weights.most()).role(Role.NUMBER_BOLD),
        mayWeigh(cells, wood, wood.roundPoundsAtMost()),
        pounds(cells, weights.service()),
        cells.about(wood.balance()),
        cells.tape(wood.log().piece().trimmed()));
  }

  private static Cell mayWeigh(Cells cells, PieceWood wood, double pounds) {
    return cells.mayWeigh(new Weight(pounds, pounds, wood.standsIn(), Length.ZERO));
  }

  private static Cell pounds(Cells cells, double pounds) {
    return cells.weight(new Weight(pounds, Length.ZERO));
  }
}
