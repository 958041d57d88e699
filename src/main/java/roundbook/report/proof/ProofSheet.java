package roundbook.report.proof;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Setting;
import roundbook.notch.NeckFit;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.WrongTally;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.proof.Lines.Line;
import roundbook.report.proof.Pencil.Term;
import roundbook.rounds.Verifier.Subject;
import roundbook.rounds.Verifier.Verdict;

/** The sheet to check the plan by with a pencil and an offcut, before the first cut. */
public final class ProofSheet {
  private static final double[] WIDTHS = ListSheet.grid(24, 4.2);

  private final CrewContext context;
  private final Plan plan;
  private final Cells cells;
  private final ListSheet list;
  private final LiveContext live;

  private ProofSheet(CrewContext context) {
    this.context = context;
    this.plan = context.plan();
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.PROOF, context.page(PageKind.TABLE), WIDTHS);
    this.live = LiveContext.of(context);
  }

  /** Returns whether a plan has the sheet: round 1 stands in it and no log of it is cut. */
  public static boolean has(Plan plan) {
    return plan.rounds() > 0 && plan.job().built().cutSize(1).isEmpty();
  }

  /** Returns the sheet; none once a log of round 1 is cut. */
  public static List<Sheet> sheets(CrewContext context) {
    return has(context.plan()) ? List.of(new ProofSheet(context).sheet()) : List.of();
  }

  private Sheet sheet() {
    list.title(Tab.PROOF);
    list.text(Role.PLAIN, context.text("proof.what"));
    sums();
    if (plan.rounds() > 1) {
      tally();
    }
    new TrialPart(live, list).write();
    checks();
    list.heading(context.text("proof.unknown"));
    context.words().lines("proof.unknown").forEach(line -> list.text(Role.PLAIN, line));
    if (plan.rounds() > 1) {
      list.text(Role.PLAIN, context.text("proof.after"));
    }
    return list.build();
  }

  private void sums() {
    list.heading(context.text("proof.sums"));
    list.spans(1, 11, 6, 3, 3).headOf("proof.sums.head");
    int last = 0;
    for (Line line : Lines.of(live)) {
      Cell number = line.number() == last ? cells.text("") : cells.count(line.number());
      list.row(
          number,
          cells.text(line.what()),
          shown(line.sum(), Role.BODY_CENTRE),
          Cell.blank(Role.TICK),
          shown(line.result(), Role.BODY_CENTRE));
      last = line.number();
    }
    new MiddleSum(live).words().ifPresent(middle -> list.text(Role.PLAIN, middle));
    String step = cells.withUnit(context.rules().printStep());
    list.text(
        Role.PLAIN,
        context.text(
            "proof.sums.note",
            new Pencil(live).decimals(),
            step,
            Tab.ofRound(context.words(), 1),
            Tab.NOTCH_CHART.in(context.words()),
            gapOn()));
  }

  /** Returns where the gap of the last sum stands; nothing where there is none. */
  private String gapOn() {
    String wall = Tab.ofWall(context.words(), live.walls().get(0));
    return plan.rounds() > 1 ? context.text("proof.sums.gap_on", wall) : "";
  }

  /** Returns a cell of a text; of one that nothing changes no formula is made. */
  private static Cell shown(Term term, Role role) {
    boolean fixed = term.equals(Term.of(term.now()));
    Cell cell = fixed ? Cell.text(term.now()) : Cell.formula(term.formula(), term.now());
    return cell.role(role);
  }

  /** How many checks were made of what. */
  private void checks() {
    Verdict verdict = plan.verdict();
    list.heading(context.text("proof.checks"));
    int faults = verdict.faults().size();
    String counts =
        verdict.counts().entrySet().stream()
            .map(each -> context.text(key(each.getKey()), each.getValue()))
            .collect(Collectors.joining(" · "));
    list.text(Role.PLAIN, context.text("proof.checks.what", verdict.checks(), faults));
    list.text(Role.PLAIN, counts + " · " + ends());
  }

  /** Returns how many ends bear in full, how many less, how many are to be looked at. */
  private String ends() {
    List<NeckFit> fits =
        plan.pieces().stream()
            .flatMap(piece -> Stream.of(piece.buttFit(), piece.tipFit()))
            .toList();
    long full = fits.stream().filter(fit -> fit.bearingPercent() == 100).count();
    long flagged = fits.stream().filter(NeckFit::isFlagged).count();
    return context.text("proof.ends", fits.size(), full, flagged);
  }

  private static String key(Subject subject) {
    return "proof.checks." + subject.name().toLowerCase(Locale.ROOT);
  }

  /** What diameters that are off do to the gaps as they are planned. */
  private void tally() {
    List<WrongTally> tallies = WrongTally.usual(plan.stack());
    list.heading(context.text("proof.tally"));
    int gaps = tallies.get(0).gaps();
    String least = cells.formats().mark(context.rules().length(Setting.GAP_LEAST));
    String most = cells.withUnit(context.rules().length(Setting.GAP_MOST));
    list.text(Role.PLAIN, context.text("proof.tally.what", gaps, least, most));
    list.spans(14, 5, 5).headOf("proof.tally.head");
    List<String> kinds = context.words().lines("proof.tally.kind");
    for (int index = 0; index < tallies.size(); index++) {
      WrongTally tally = tallies.get(index);
      String outside = String.format(Locale.ROOT, "%.1f", tally.outside());
      list.row(
          cells.text(kinds.get(index)),
          cells.centre(cells.withUnit(tally.spread())),
          cells.centre(context.words().number(outside)));
    }
  }
}
