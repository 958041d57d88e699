package roundbook.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.LogCut.RemainingPiece;
import roundbook.takeoff.LogCut.RemainingPieces;
import roundbook.units.Length;

/** Cuts the logs of the walls for the openings. */
final class OpeningCutter {
  private static final Comparator<Length> NATURAL = Comparator.naturalOrder();

  private final Job job;
  private final Stack stack;
  private final Settling settling;

  OpeningCutter(Job job, Stack stack, Settling settling) {
    this.job = job;
    this.stack = stack;
    this.settling = settling;
  }

  /** Returns the openings that lie inside their walls; of any other nothing can be reckoned. */
  List<OpeningCut> cuts() {
    return job.openings().stream().flatMap(each -> cut(each).stream()).toList();
  }

  private Optional<OpeningCut> cut(Opening opening) {
    return job.building()
        .wall(opening.wall())
        .filter(wall -> opening.fits(job.building(), job.rules()))
        .map(wall -> cut(opening, wall));
  }

  private OpeningCut cut(Opening opening, Wall wall) {
    List<LogCut> cuts = logs(wall).stream().map(log -> cut(opening, log)).toList();
    List<LogCut> over =
        cuts.stream().filter(each -> !each.through() && reachesOver(each, opening)).toList();
    Optional<FilledPlace> header =
        over.stream()
            .filter(each -> !each.losesMoreThan(2))
            .findFirst()
            .or(() -> over.stream().findFirst())
            .map(LogCut::log);
    return new OpeningCut(opening, wall, cuts, header, frame(opening));
  }

  private List<FilledPlace> logs(Wall wall) {
    return stack.courses().stream().flatMap(course -> course.on(wall).stream()).toList();
  }

  private boolean reachesOver(LogCut cut, Opening opening) {
    boolean overhead = cut.kind() == CutExtent.UNTOUCHED || cut.kind() == CutExtent.FROM_BELOW;
    return overhead && top(cut.log(), opening).isMoreThan(opening.head());
  }

  private LogCut cut(Opening opening, FilledPlace log) {
    Length depth = depth(opening, log);
    CutExtent kind = kind(opening, log);
    Optional<RemainingPieces> sides =
        kind == CutExtent.THROUGH ? Optional.of(sides(opening, log)) : Optional.empty();
    Length height = top(log, opening).minus(bottom(log, opening));
    return new LogCut(log, kind, height, kind == CutExtent.UNTOUCHED ? Length.ZERO : depth, sides);
  }

  private Length depth(Opening opening, FilledPlace log) {
    Length upper = opening.head().least(top(log, opening));
    return upper.minus(opening.sill().most(bottom(log, opening)));
  }

  private CutExtent kind(Opening opening, FilledPlace log) {
    boolean over = opening.head().isLessThan(top(log, opening));
    boolean under = opening.sill().isMoreThan(bottom(log, opening));
    if (!depth(opening, log).isMoreThan(Length.ZERO)) {
      return CutExtent.UNTOUCHED;
    }
    if (over) {
      return under ? CutExtent.INSIDE : CutExtent.FROM_BELOW;
    }
    return under ? CutExtent.FROM_ABOVE : CutExtent.THROUGH;
  }

  private Length top(FilledPlace log, Opening opening) {
    return stack.centre(log).plus(thickest(log, opening).dividedBy(2));
  }

  /** A log of the first round that is sawn flat ends at the lower mark. */
  private Length bottom(FilledPlace log, Opening opening) {
    Length round = stack.centre(log).minus(thickest(log, opening).dividedBy(2));
    Length bed = stack.centre(log).minus(stack.courses().get(0).notch().lower());
    return Bed.isFlat(job.rules(), log.round(), log.wall()) ? round.most(bed) : round;
  }

  private Length thickest(FilledPlace log, Opening opening) {
    Length from = opening.left().plus(job.rules().overhang());
    return WallProfiles.thickest(log, from, from.plus(opening.width()));
  }

  private RemainingPieces sides(Opening opening, FilledPlace log) {
    Wall wall = log.wall();
    List<Opening> others =
        job.openings().stream()
            .filter(each -> each.wall().equalsIgnoreCase(wall.name()) && !each.equals(opening))
            .filter(each -> each.fits(job.building(), job.rules()))
            .filter(each -> kind(each, log) == CutExtent.THROUGH)
            .toList();
    Length near = opening.left();
    Length far = right(opening);
    Optional<Length> before =
        others.stream().map(OpeningCutter::right).filter(x -> !x.isMoreThan(near)).max(NATURAL);
    Optional<Length> after =
        others.stream().map(Opening::left).filter(x -> !x.isLessThan(far)).min(NATURAL);
    Length end = wall.outside().minus(far);
    RemainingPiece left =
        before.map(x -> between(near.minus(x))).orElse(side(near, job.building().after(wall)));
    RemainingPiece right =
        after.map(x -> between(x.minus(far))).orElse(side(end, job.building().before(wall)));
    return new RemainingPieces(left, right);
  }

  private static Length right(Opening opening) {
    return opening.left().plus(opening.width());
  }

  private RemainingPiece between(Length length) {
    return new RemainingPiece(length, job.rules().length(Setting.PIECE_LEAST), false);
  }

  private RemainingPiece side(Length toCorner, Wall crossing) {
    Length overhang = job.rules().overhang();
    Length neck = crossing.thickness().plus(overhang);
    Length least = neck.plus(job.rules().length(Setting.PIECE_LEAST));
    return new RemainingPiece(toCorner.plus(overhang), least, true);
  }

  private OpeningCut.Frame frame(Opening opening) {
    BuildRules rules = job.rules();
    Length stand = opening.sill().most(Length.ZERO);
    Length high = opening.head().minus(stand);
    Length room = roundedUp(settling.tangential().lost(high.inches()));
    boolean sill = stand.isMoreThan(Length.ZERO);
    Length buck = rules.length(Setting.BUCK_THICKNESS);
    Length pin = rules.length(Setting.PIN_CLEAR);
    Length left = opening.toldLeft(job.building());
    return new OpeningCut.Frame(
        WallProfiles.inches(settling.mean().clearance(opening.head().inches(), stand.inches())),
        room,
        high.minus(room).minus(buck.times(sill ? 2 : 1)),
        opening.width(),
        opening.width().minus(buck.times(2)),
        sill,
        left.minus(pin),
        left.plus(opening.width()).plus(pin));
  }

  /** Returns decimal inches rounded up to the print step: a little more room does no harm. */
  private Length roundedUp(double inches) {
    Length exact = WallProfiles.inches(inches);
    Length near = exact.roundedTo(job.rules().printStep());
    return near.isLessThan(exact) ? near.plus(job.rules().printStep()) : near;
  }
}
