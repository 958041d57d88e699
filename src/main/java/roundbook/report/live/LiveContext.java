package roundbook.report.live;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Saddle;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Role;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * What the live sheets share: the plan, where its numbers stand, and cells in the job's unit.
 *
 * @param context what the workbook is made from
 * @param map where the numbers of the working sheet stand
 */
public record LiveContext(CrewContext context, LiveMap map) {
  private static final int FOUR = 4;
  private static final int NAMES_MOST = 11;

  private static final String WORKING = "tab.working";

  /** Returns what the live sheets of a workbook share. */
  public static LiveContext of(CrewContext context) {
    return new LiveContext(context, new LiveMap(context.text(WORKING), context.plan()));
  }

  /** Returns the plan. */
  public Plan plan() {
    return context.plan();
  }

  /** Returns the rules of the job. */
  public BuildRules rules() {
    return context.rules();
  }

  /** Returns the walls in clockwise order. */
  public List<Wall> walls() {
    return map.walls();
  }

  /** Returns the unit of the numbers in cells. */
  public LengthUnit unit() {
    return rules().unit();
  }

  /** Returns how the program prints lengths. */
  public LengthFormat formats() {
    return context.formats();
  }

  /** Returns how formulas print lengths. */
  public LiveMath math() {
    return new LiveMath(formats());
  }

  /** Returns a text of the workbook's language with values filled in. */
  public String text(String key, Object... values) {
    return context.text(key, values);
  }

  /** Returns the round of a number. */
  public Course course(int round) {
    return plan().choice().courses().get(round - 1);
  }

  /** Returns the log of a round on a wall. */
  public PiecePlan piece(int round, Wall wall) {
    return plan().round(round).stream()
        .filter(each -> each.placed().wall().equals(wall))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the piece of a placed log as it was expected before hewing. */
  public Piece expected(PlacedLog placed) {
    Piece piece = placed.piece();
    Log log = plan().job().built().beforeHewing(piece.log());
    return new Piece(log, piece.cutOffButt(), piece.trimmed());
  }

  /** Returns a place as its logs were expected before hewing. */
  FilledPlace expected(FilledPlace placed) {
    List<PlacedLog> logs = placed.logs().stream().map(log -> log.with(expected(log))).toList();
    return new FilledPlace(placed.wall(), placed.round(), placed.buttAtStart(), logs);
  }

  /** Returns how a pen among several is called, or the house and its wing; blank for pen 0. */
  public String pen(int pen) {
    boolean wing = map().building().hasWing();
    String key = !wing ? "pen" : pen > 1 ? "pen.wing" : "pen.house";
    return pen == 0 ? "" : text(key, pen);
  }

  /**
   * Returns the names of the walls of one laying order, such as {@code N S}; what they have in
   * common where there are more of them than a head holds.
   */
  public String names(boolean first) {
    String names =
        String.join(
            " ",
            walls().stream().filter(wall -> wall.laidFirst() == first).map(Wall::name).toList());
    boolean many = names.length() > NAMES_MOST && walls().size() > FOUR;
    return many ? text(first ? "names.first" : "names.second") : names;
  }

  /**
   * Returns at which face a wall is read where sides of a wing die in it: of a half-dovetail one
   * face is lower, and there the shoulder is outside. Nothing where no side does.
   */
  public Optional<String> readFaces() {
    Building building = map().building();
    List<Saddle> tees = building.saddles().stream().filter(Saddle::inward).toList();
    return tees.stream()
        .map(tee -> tee.through().name())
        .findFirst()
        .map(
            through ->
                text(
                    rules().drains() ? "read_faces.drain" : "read_faces.hook",
                    told(tees, building::corner),
                    through,
                    told(tees, tee -> tee.partition().name())));
  }

  private static String told(List<Saddle> tees, Function<Saddle, String> name) {
    return tees.stream().map(name).collect(Collectors.joining(" "));
  }

  /** Returns a number in the job's unit. */
  public double number(Length length) {
    return length.in(unit());
  }

  /** Returns the format of marks and other lengths printed to the step. */
  public Format markFormat() {
    return switch (unit()) {
      case MILLIMETRE -> Format.WHOLE;
      case CENTIMETRE, METRE -> Format.DECIMAL_1;
      default -> Format.FRACTION;
    };
  }

  /** Returns a cell that is typed in, with what is known already. */
  public Cell typed(Optional<Length> known, String name) {
    Cell cell =
        known
            .map(new Cells(context)::exact)
            .orElseGet(() -> Cell.blank(Role.TYPED_IN).format(typedFormat()));
    return cell.role(Role.TYPED_IN).named(name);
  }

  /** Metric numbers show as they are typed; those in inches as the fractions they mostly are. */
  private Format typedFormat() {
    return unit().metric() ? Format.GENERAL : Format.FRACTION;
  }

  /** Returns a live length in the format of marks. */
  public Cell mark(String formula, Length now, Role role) {
    return Cell.formula(formula, number(now)).role(role).format(markFormat());
  }

  /** Returns a live length rounded to the printed step. */
  public Cell printed(String formula, Length now, Role role) {
    return mark(toStep(formula), now.roundedTo(rules().printStep()), role);
  }

  /** Returns a live tape distance as text, rounded to the printed step. */
  public Cell tape(String formula, Length now, Role role) {
    return Cell.formula(math().tape(formula), math().tapeNow(now)).role(role);
  }

  /** Returns a formula rounded to the printed step. */
  public String toStep(String formula) {
    return LiveMath.rounded(formula, rules().printStep(), map.rule(RuleLine.PRINT_STEP));
  }
}
