package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.job.Pair.Half;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * Checks pairs of short logs from first principles, in binary inches.
 *
 * <p>Each is long enough, cut to what its side of the opening asks, and long enough past its notch;
 * an opening for which short logs were asked cuts through their place; and the place's diameters
 * are those of the two logs, each the way round that it lies.
 */
final class PairCheck {
  private static final double TOLERANCE = 1e-6;
  private static final int SAMPLES = 16;

  private final Job job;
  private final Stack stack;
  private final List<String> faults = new ArrayList<>();

  PairCheck(Job job, Stack stack) {
    this.job = job;
    this.stack = stack;
  }

  List<String> faults() {
    stack.courses().stream()
        .flatMap(course -> course.logs().stream())
        .filter(placed -> placed.piece().log().pair().isPresent())
        .forEach(this::pair);
    return faults;
  }

  private void pair(PlacedLog placed) {
    List<Half> halves = placed.piece().log().pair().orElseThrow().halves();
    double trimmed = placed.wall().outside().inches() + 2 * inches(Setting.OVERHANG);
    boolean open = job.built().held(placed.round(), placed.wall().name()).isEmpty();
    for (Half half : halves) {
      diameters(placed, half, trimmed);
      check(!open || longEnough(half), placed, half, "is too short");
      check(!open || holdsNotch(placed, half), placed, half, "is too short past its notch");
    }
    double from = halves.get(0).piece().trimmed().inches();
    double to = trimmed - halves.get(1).piece().trimmed().inches();
    boolean cut = job.openings().stream().anyMatch(each -> cuts(each, placed, from, to));
    check(!open || cut, placed, halves.get(0), "lies where no opening cuts through");
  }

  private boolean longEnough(Half half) {
    Piece piece = half.piece();
    double least = inches(Setting.SQUARING_ALLOWANCE) - TOLERANCE;
    double left =
        piece.log().length().inches() - piece.cutOffButt().inches() - piece.trimmed().inches();
    return piece.cutOffButt().inches() > least && left > least;
  }

  private boolean holdsNotch(PlacedLog placed, Half half) {
    int at = job.building().walls().indexOf(placed.wall());
    int crossing = Math.floorMod(half.left() ? at + 1 : at - 1, job.building().walls().size());
    Wall other = job.building().walls().get(crossing);
    double least =
        other.thickness().inches() + inches(Setting.OVERHANG) + inches(Setting.PIECE_LEAST);
    return half.piece().trimmed().inches() > least - TOLERANCE;
  }

  private boolean cuts(Opening opening, PlacedLog placed, double from, double to) {
    double left = opening.left().inches() + inches(Setting.OVERHANG);
    boolean here =
        opening.shortLogs()
            && opening.wall().equalsIgnoreCase(placed.wall().name())
            && Math.abs(left - from) < TOLERANCE
            && Math.abs(left + opening.width().inches() - to) < TOLERANCE;
    double centre = stack.centre(placed).inches();
    double half = Math.max(fromLeft(placed, from), fromLeft(placed, to)) / 2;
    double bottom = isFlat(placed) ? lowerMark() : half;
    return here
        && opening.head().inches() > centre + half - TOLERANCE
        && opening.sill().inches() < centre - Math.min(half, bottom) + TOLERANCE;
  }

  private boolean isFlat(PlacedLog placed) {
    String bed = job.rules().text(Setting.FIRST_BED);
    return placed.round() == 1
        && (placed.wall().laidFirst() ? !bed.equals("starter") : bed.equals("flat"));
  }

  private double lowerMark() {
    return stack.courses().get(0).notch().lower().inches();
  }

  private void diameters(PlacedLog placed, Half half, double trimmed) {
    double length = half.piece().trimmed().inches();
    PlacedLog own =
        new PlacedLog(half.piece(), placed.wall(), placed.round(), half.buttOut() != half.left());
    for (int i = 0; i <= SAMPLES; i++) {
      double along = length * i / SAMPLES;
      double fromButt = own.buttAtStart() ? length - along : along;
      double at = half.left() ? along : trimmed - length + along;
      double differs = StackCheck.diameter(own, fromButt) - fromLeft(placed, at);
      check(Math.abs(differs) < TOLERANCE, placed, half, "has another diameter in its place");
    }
  }

  private double fromLeft(PlacedLog placed, double left) {
    double trimmed = placed.piece().trimmed().inches();
    return StackCheck.diameter(placed, placed.buttAtStart() ? trimmed - left : left);
  }

  private double inches(Setting setting) {
    return job.rules().length(setting).inches();
  }

  private void check(boolean holds, PlacedLog placed, Half half, String what) {
    if (!holds) {
      faults.add(
          "short log "
              + half.piece().log().tag()
              + " of round "
              + placed.round()
              + " on wall "
              + placed.wall().name()
              + " "
              + what);
    }
  }
}
