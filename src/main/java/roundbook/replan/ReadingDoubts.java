package roundbook.replan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.TypedBox;
import roundbook.plan.Plan;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.site.SiteReport;
import roundbook.stack.Corners;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * Doubts corner readings by what they say of the wood.
 *
 * <p>A corner is expected where the one below stood, with the marks that were cut since. Four marks
 * err between two readings; three quarters of an inch (20 mm) is more than they make, and where
 * rounds were left unread their errors add like squares. What is off by two inches (50 mm), or lets
 * two logs run into each other, is no reading of this corner: then nothing is planned.
 */
final class ReadingDoubts {
  private final SiteReport site;
  private final Plan plan;
  private final BuildRules rules;
  private final Building building;
  private final LengthFormat formats;

  ReadingDoubts(SiteReport site, Plan plan) {
    this.site = site;
    this.plan = plan;
    this.rules = plan.job().rules();
    this.building = plan.job().building();
    this.formats = LengthFormat.forJob(rules.unit(), rules.printStep());
  }

  /** Returns what is doubted, and where walls that were read now stand as a whole. */
  List<Problem> all() {
    List<Problem> problems = new ArrayList<>();
    doubt(problems, site.typed().firstReadings(), true);
    doubt(problems, site.typed().readings(), false);
    pare().ifPresent(problems::add);
    stand().ifPresent(problems::add);
    return problems;
  }

  private void doubt(List<Problem> problems, Map<Corner, Length> readings, boolean first) {
    readings.forEach((corner, read) -> doubt(corner, read, first).ifPresent(problems::add));
  }

  private Optional<Problem> doubt(Corner corner, Length read, boolean first) {
    Stack stack = plan.stack();
    int round = corner.round();
    Length planned = first ? stack.firstLevelHeight(round) : stack.levelHeight(round);
    Corners corners = stack.corners();
    Length expected = planned.plus(corners.expected(round, first, corner.name(), building, rules));
    Length off = read.minus(expected).absolute();
    if (!off.isMoreThan(most(corner, 20, 3, 4))) {
      return Optional.empty();
    }
    Optional<Phrase> closed = closed(corner);
    boolean refused = closed.isPresent() || !off.isLessThan(most(corner, 50, 2, 1));
    ProblemCode code = refused ? ProblemCode.OUT_OF_RANGE : ProblemCode.DOUBTFUL_VALUE;
    String name = (first ? TypedBox.FIRST_READING : TypedBox.READING).named(round, corner.name());
    Value gap = closed.<Value>map(each -> each).orElse(Value.NONE);
    Problem said =
        Problem.of(code, "reading", site.where(name))
            .with("corner", corner.name())
            .with("read", Value.mark(read, formats))
            .with("expected", mark(expected))
            .found(Value.mark(read, formats));
    return Optional.of((refused ? said.with("gap", gap) : said).remedyOf("read-again-or-marks"));
  }

  /** Returns the most that is not doubted, more where rounds below were not read. */
  private Length most(Corner corner, long millimetres, long inches, long part) {
    Length one =
        rules.metric() ? Length.ofMillimetres(millimetres) : Length.ofInchFraction(inches, part);
    AsBuilt built = plan.job().built();
    int rounds = 1;
    while (rounds < corner.round()
        && built.reading(corner.round() - rounds, corner.name()).isEmpty()) {
      rounds++;
    }
    return one.timesRatio(StrictMath.round(StrictMath.sqrt(rounds) * 1000), 1000);
  }

  /** Returns the joint under a round's logs that would have no gap at a corner, if there is one. */
  private Optional<Phrase> closed(Corner corner) {
    for (Wall wall : building.walls()) {
      boolean left = building.endCorner(wall).equals(corner.name());
      boolean right = building.startCorner(wall).equals(corner.name());
      if (corner.round() > 1 && (left || right)) {
        Joint joint = plan.stack().joints(wall).get(corner.round() - 2);
        Length gap = left ? joint.left() : joint.right();
        if (gap.isNegative()) {
          return Optional.of(
              Phrase.of("reading.gap").with("wall", wall.name()).with("gap", mark(gap)));
        }
      }
    }
    return Optional.empty();
  }

  /** Says which tops are to be pared before the round over the last one that was read is laid. */
  private Optional<Problem> pare() {
    int last = lastRead(plan.job().built());
    if (last == 0 || plan.job().built().isBegun(last + 1)) {
      return Optional.empty();
    }
    Map<String, Length> high = plan.stack().corners().pared(last, building);
    String tops =
        high.entrySet().stream()
            .map(top -> top.getKey() + " " + formats.mark(top.getValue()))
            .collect(Collectors.joining(", "));
    return high.keySet().stream()
        .findFirst()
        .map(
            corner ->
                Problem.of(ProblemCode.PARE_TOP, site.where(TypedBox.READING.named(last, corner)))
                    .with("round", last)
                    .with("tops", tops)
                    .found(tops));
  }

  /** Says once, when the walls were read, that they stand low or high as a whole. */
  private Optional<Problem> stand() {
    int last = lastRead(plan.job().built());
    if (last <= lastRead(site.recorded()) || rules.holdsHeight()) {
      return Optional.empty();
    }
    Length by = Length.ZERO;
    for (int round = 1; round <= last; round++) {
      by = by.plus(plan.stack().corners().common(round, building));
    }
    Length half = rules.length(Setting.LEVEL_TOLERANCE).dividedBy(2);
    String name = TypedBox.READING.named(last, building.corners().get(0));
    return Optional.of(by)
        .filter(off -> off.absolute().isMoreThan(half))
        .map(
            off ->
                Problem.of(
                        ProblemCode.WALLS_STAND, off.isNegative() ? "under" : "", site.where(name))
                    .with("round", last)
                    .with("by", Value.measure(off.absolute(), formats))
                    .found(mark(off)));
  }

  /** Returns the last round all of whose corners were read. */
  private int lastRead(AsBuilt built) {
    int last = 0;
    for (int round = 1; round <= plan.rounds(); round++) {
      last = built.isRead(round, building) ? round : last;
    }
    return last;
  }

  private Value mark(Length length) {
    return Value.mark(length.roundedTo(rules.printStep()), formats);
  }
}
