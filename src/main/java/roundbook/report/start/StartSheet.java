package roundbook.report.start;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Stems;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.CrossCuts;
import roundbook.plan.Plan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.PassagePlates;
import roundbook.report.frame.PrintSet;
import roundbook.report.frame.Tab;
import roundbook.report.list.LiftingSheet;
import roundbook.report.list.ListSheets;
import roundbook.report.proof.ProofSheet;
import roundbook.rounds.Shortage;
import roundbook.stack.Joint;
import roundbook.takeoff.Top;
import roundbook.takeoff.Top.WantedHeight;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** The first page: what this workbook is, what to do first, what to pick up first. */
public final class StartSheet {
  private static final double[] WIDTHS = ListSheet.grid(24, 4.7);

  private final CrewContext context;
  private final Plan plan;
  private final Cells cells;
  private final ListSheet list;

  private StartSheet(CrewContext context) {
    this.context = context;
    this.plan = context.plan();
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.START, context.page(PageKind.TABLE), WIDTHS);
  }

  /** Returns the sheet. */
  public static List<Sheet> sheets(CrewContext context) {
    return List.of(new StartSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(Tab.START);
    list.text(Role.PLAIN, context.text("start.what", context.jobName(), context.issue().input()));
    String others = context.replan().isEmpty() ? "start.void" : "start.void.partly";
    list.text(Role.PLAIN_BOLD, context.text(others, context.revision()));
    Optional<ChangesTable> changes = context.replan().map(each -> new ChangesTable(context, each));
    changes.ifPresent(each -> each.write(list));
    FirstPair first = new FirstPair(context, list);
    if (plan.rounds() > 0) {
      first.foundation();
    }
    glance();
    warnings();
    sets();
    if (plan.rounds() > 0) {
      first.write();
    }
    LiftingSheet.cautions(context, list);
    changes.ifPresent(each -> each.writeAll(list));
    list.endPrint();
    contents();
    return list.build();
  }

  private void glance() {
    list.heading(context.text("start.glance")).spans(6, 18).headOf("start.glance.head");
    fact("start.rounds", rounds());
    fact(
        "start.logs",
        context.text(
                "start.logs.text",
                plan.count(Plan.Use.PLACED),
                plan.count(Plan.Use.SPARE),
                plan.count(Plan.Use.LEFT_OUT))
            + taken());
    if (!plan.job().stems().isEmpty()) {
      fact("start.stems", stems());
    }
    new NearWords(context.words(), context.replan().isPresent())
        .told(plan)
        .ifPresent(words -> fact("start.near", words));
    fact("start.walls", walls());
    PassagePlates.words(context).ifPresent(words -> fact("plates", words));
    if (plan.rounds() > 0) {
      fact("start.tops", tops());
    }
    fact(
        "start.notch",
        context.text(
            "start.notch.text",
            cells.withUnit(context.rules().thickness()),
            cells.withUnit(context.rules().gap()),
            context.rules().slope(),
            cells.withUnit(context.rules().overhang())));
  }

  /** Returns how many stems are cut, and what choosing the cuts with the plan saved. */
  private String stems() {
    long used =
        CrossCuts.of(plan).stems().stream()
            .filter(stem -> stem.firstRound() <= plan.rounds())
            .count();
    long flagged =
        plan.stack().joints().stream()
            .filter(joint -> joint.flag(context.rules()) != Joint.Flag.NONE)
            .count();
    int all = plan.job().stems().all().size();
    String cut = context.text("start.stems.text", used, all);
    Optional<Stems.ByRule> rule = plan.job().stems().byRule();
    if (rule.isEmpty()) {
      return cut;
    }
    return cut
        + " "
        + context.text(
            "start.stems.saved", rule.get().rounds(), rule.get().flagged(), plan.rounds(), flagged);
  }

  private String taken() {
    long taken = plan.count(Plan.Use.TAKEN);
    return taken == 0 ? "" : context.text("start.logs.taken", taken);
  }

  private void fact(String key, String text) {
    list.row(cells.bold(context.text(key)), cells.text(text));
  }

  private String rounds() {
    int wanted = plan.choice().shortage().map(Shortage::wanted).orElse(plan.rounds());
    String enough = plan.job().asksHeight() ? "start.rounds.all" : "start.rounds.logs";
    String key = wanted > plan.rounds() ? "start.rounds.short" : enough;
    return context.text(key, plan.rounds(), wanted);
  }

  private String walls() {
    Building building = plan.job().building();
    Stream<String> walls =
        building.walls().stream()
            .map(wall -> wall.name() + " " + cells.formats().feetInches(building.told(wall)));
    Stream<String> passages =
        building.pens().stream()
            .flatMap(pen -> building.passage(pen).stream())
            .map(wide -> context.text("start.passage", cells.formats().feetInches(wide)));
    return Stream.concat(walls, passages).collect(Collectors.joining(" · "));
  }

  private String tops() {
    String heights =
        plan.job().building().walls().stream().map(this::top).collect(Collectors.joining(" · "));
    String wanted = plan.takeoff().top().flatMap(Top::wanted).map(this::wanted).orElse("");
    return context.text("start.tops.text", heights) + wanted;
  }

  private String wanted(WantedHeight wanted) {
    Length step = context.rules().printStep();
    Length gap = Length.of(wanted.gap(), LengthUnit.INCH).roundedTo(step);
    String height = context.text("start.tops.wanted", cells.formats().feetInches(wanted.height()));
    String key = wanted.allowed() ? "start.tops.gap" : "start.tops.no_gap";
    String now = cells.formats().feetInches(wanted.now());
    return height + context.text(key, now, cells.withUnit(gap));
  }

  private String top(Wall wall) {
    Length top = plan.stack().top(wall);
    return wall.name() + " " + cells.formats().feetInches(top);
  }

  private void warnings() {
    Warnings warnings = new Warnings(context);
    List<List<Cell>> rows = warnings.rows();
    list.heading(context.text("start.warnings"));
    if (rows.isEmpty()) {
      list.text(Role.PLAIN, context.text("start.warnings.none"));
    } else {
      list.spans(3, 10, 6, 5).headOf("start.warnings.head");
      rows.forEach(list::row);
    }
    if (!warnings.counted().isEmpty()) {
      list.text(Role.PLAIN, context.text("start.warnings.counted", warnings.counted()));
    }
  }

  /** Writes what is printed for whom, by the numbers of pages. */
  private void sets() {
    if (context.sets().isEmpty()) {
      return;
    }
    String heading = context.replan().isEmpty() ? "start.print" : "start.print.again";
    list.heading(context.text(heading)).spans(5, 3, 5, 11).headOf("start.print.head");
    for (PrintSet set : context.sets()) {
      String kind = set.kind().name().toLowerCase(Locale.ROOT);
      list.row(
          cells.bold(context.text("start.print." + kind)),
          cells.count(set.pages()),
          cells.centre(set.numbers()),
          cells.text(set.sheets()));
    }
    list.text(Role.NOTE, context.text("start.print.later"));
  }

  private void contents() {
    list.heading(context.text("start.contents")).spans(6, 18).headOf("start.contents.head");
    if (ProofSheet.has(plan)) {
      content(Tab.PROOF.in(context.words()), Tab.PROOF.id());
    }
    content(Tab.NOTCH_CHART.in(context.words()), Tab.NOTCH_CHART.id());
    if (plan.rounds() > 0) {
      content(Tab.ofRound(context.words(), 1), "round");
    }
    plan.job().building().walls().stream()
        .limit(1)
        .forEach(wall -> content(Tab.ofWall(context.words(), wall), "wall"));
    Tab.lists().stream()
        .filter(tab -> ListSheets.has(context, tab))
        .forEach(tab -> content(tab.in(context.words()), tab.id()));
  }

  private void content(String tab, String about) {
    list.row(cells.link(tab), cells.text(context.text("about." + about)));
  }
}
